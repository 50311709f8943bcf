import type { BoreMap } from '../../boring/model.js';
import type { Carcass, Panel } from '../../carcass/model.js';
import { grooveNotes, ownNote } from '../../drawing/bore-map/bore-map.js';
import { holeGroups, tableCells, tableHeads } from '../../drawing/bore-map/hole-table.js';
import { endWord } from '../../drawing/words.js';
import type { CarcassSpec } from '../../carcass/spec.js';
import type { Unit } from '../../length/units.js';
import { tell, tellerIn } from '../../words/message.js';
import { carcassNamed } from '../pieces.js';
import { say } from './messages.js';
import { column, heading, list, paragraph, type Block, type Paper, type Table } from '../paper.js';

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
  const told = tellerIn(unit);
  if (spec === null || carcass === null || boring === null)
    return [heading(2, told(say.notWorkedOut({ carcass: name })))];
  const box = [spec.width.value, spec.height.value, spec.depth.value];
  return [
    heading(2, told(say.carcass({ carcass: carcassNamed(name, carcass.count), kind: spec.kind.value, box }))),
    ...ownNote(spec).map(paragraph),
    ...carcass.panels.flatMap((panel) => panelBlocks(panel, carcass, boring, unit)),
  ];
}

function panelBlocks(panel: Panel, carcass: Carcass, boring: BoreMap, unit: Unit): readonly Block[] {
  const { length, width, thickness, cutLength, cutWidth, board } = panel;
  const size = [length, width, thickness];
  return [
    heading(3, tell(say.panel({ panel: panel.key, size, cut: [cutLength, cutWidth], board: board.name }), unit)),
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
      columns: heads.map(column),
      rows: groups.map(({ line }) => tableCells(line)),
    },
  ];
}
