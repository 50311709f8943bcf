import type { BoreMap } from '../../boring/model.js';
import type { Carcass, Panel } from '../../carcass/model.js';
import { grooveNotes } from '../../drawing/bore-map/bore-map.js';
import { holeGroups, tableCells, tableHeads } from '../../drawing/bore-map/hole-table.js';
import { endWord } from '../../drawing/words.js';
import type { CarcassSpec } from '../../carcass/spec.js';
import { showSizes } from '../../length/show.js';
import type { Unit } from '../../length/units.js';
import { manyWords } from '../pieces.js';
import { heading, list, paragraph, type Block, type Paper, type Table } from '../paper.js';

/** A carcass of the list; what cannot be worked out is null. */
export interface ListedCarcass {
  readonly name: string;
  readonly spec: CarcassSpec | null;
  readonly carcass: Carcass | null;
  readonly boring: BoreMap | null;
}

/** Every panel of a job with its sizes and its holes. */
export function panelList(carcasses: readonly ListedCarcass[], unit: Unit): Paper {
  return { title: '', blocks: carcasses.flatMap((one) => carcassBlocks(one, unit)) };
}

function carcassBlocks({ name, spec, carcass, boring }: ListedCarcass, unit: Unit): readonly Block[] {
  if (spec === null || carcass === null || boring === null) return [heading(2, `${name}: cannot be worked out`)];
  const box = showSizes([spec.width.value, spec.height.value, spec.depth.value], unit);
  return [
    heading(2, `${name}${manyWords(carcass.count)}: ${spec.kind.value}, ${box}`),
    ...(spec.note === '' ? [] : [paragraph(`Note: ${spec.note}`)]),
    ...carcass.panels.flatMap((panel) => panelBlocks(panel, carcass, boring, unit)),
  ];
}

function panelBlocks(panel: Panel, carcass: Carcass, boring: BoreMap, unit: Unit): readonly Block[] {
  const size = showSizes([panel.length, panel.width, panel.thickness], unit);
  const cut = showSizes([panel.cutLength, panel.cutWidth], unit);
  return [
    heading(3, `${panel.key}: ${size}, to cut ${cut}, ${panel.board.name}`),
    ...list(grooveNotes(panel, unit)),
    ...holeTable(panel, carcass, boring, unit),
  ];
}

/** Nothing for a panel without holes. */
function holeTable(panel: Panel, carcass: Carcass, boring: BoreMap, unit: Unit): readonly Table[] {
  const groups = holeGroups(carcass, boring, panel, unit);
  if (groups.length === 0) return [];
  const onEnds = groups.some(({ bores }) => bores.some(({ face }) => face === 'reference-end' || face === 'far-end'));
  const heads = tableHeads(unit, endWord(panel, 'reference-end'), onEnds);
  return [
    {
      kind: 'table',
      columns: heads.map((head) => ({ head, figures: false })),
      rows: groups.map(({ line }) => tableCells(line)),
    },
  ];
}
