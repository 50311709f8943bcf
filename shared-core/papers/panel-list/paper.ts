import { wingsOf, writtenSize } from '../../carcass/outer-size.js';
import type { BoreMap } from '../../boring/model.js';
import type { Carcass, Panel } from '../../carcass/model.js';
import { cornerNotes, grooveNotes, ownNote } from '../../drawing/bore-map/bore-map.js';
import { holeGroups, tableCells, tableHeads } from '../../drawing/bore-map/hole-table.js';
import { edgeWord, endWord } from '../../drawing/words.js';
import type { CarcassSpec } from '../../carcass/spec.js';
import type { Reader } from '../../length/reader.js';
import { tell, tellerTo } from '../../words/message.js';
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
export function panelList(carcasses: readonly ListedCarcass[], reader: Reader): Paper {
  return { title: '', blocks: carcasses.flatMap((one) => carcassBlocks(one, reader)) };
}

function carcassBlocks({ name, spec, carcass, boring }: ListedCarcass, reader: Reader): readonly Block[] {
  const told = tellerTo(reader);
  if (spec === null || carcass === null || boring === null)
    return [heading(2, told(say.notWorkedOut({ carcass: name })))];
  return [
    heading(
      2,
      told(
        say.carcass({
          carcass: carcassNamed(name, carcass.count),
          kind: spec.kind.value,
          box: writtenSize(spec),
          wings: wingsOf(spec),
        }),
      ),
    ),
    ...ownNote(spec).map(paragraph),
    ...carcass.panels.flatMap((panel) => panelBlocks(panel, carcass, boring, reader)),
  ];
}

function panelBlocks(panel: Panel, carcass: Carcass, boring: BoreMap, reader: Reader): readonly Block[] {
  const { length, width, thickness, cutLength, cutWidth, board } = panel;
  const size = [length, width, thickness];
  const isBored = boring.bores.some((bore) => bore.panel === panel.key);
  return [
    heading(3, tell(say.panel({ panel: panel.key, size, cut: [cutLength, cutWidth], board: board.name }), reader)),
    ...list([...grooveNotes(panel, reader), ...cornerNotes(panel, isBored, reader)]),
    ...holeTable(panel, carcass, boring, reader),
  ];
}

/** Nothing for a panel without holes. */
function holeTable(panel: Panel, carcass: Carcass, boring: BoreMap, reader: Reader): readonly Table[] {
  const groups = holeGroups(carcass, boring, panel, reader);
  if (groups.length === 0) return [];
  const onEnds = groups.some(({ bores }) => bores.some(({ face }) => face === 'reference-end' || face === 'far-end'));
  const heads = tableHeads(reader, [edgeWord(panel, 'front')], endWord(panel, 'reference-end'), onEnds);
  return [
    {
      kind: 'table',
      columns: heads.map(column),
      rows: groups.map(({ line }) => tableCells(line)),
    },
  ];
}
