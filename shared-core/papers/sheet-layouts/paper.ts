import { inOneNotation } from '../../length/show.js';
import type { Reader } from '../../length/reader.js';
import type { Micrometres } from '../../length/units.js';
import { COINS, isPriced } from '../../sheets/board-problem.js';
import type { CutSize } from '../../sheets/cut-list.js';
import type { CuttingPlan, Part } from '../../sheets/model.js';
import type { Board, PanelSaw, Shop } from '../../shop/model.js';
import { tell, tellerTo, type Message } from '../../words/message.js';
import { asItIs, type Told } from '../../words/told.js';
import { milledWords } from '../cut-list/milled.js';
import { letters } from '../letters.js';
import { HEADS, PARTS, say } from './messages.js';
import { numbered, type NumberedSheets } from './numbered.js';
import { sheetScene } from './scene.js';
import { panelsNamed } from '../pieces.js';
import { UNNAMED, column, figuresColumn, heading, paragraph, type Block, type Paper } from '../paper.js';

/** All pieces of one board. */
export interface BoardLayouts {
  readonly board: Board;
  readonly sizes: readonly CutSize[];
  /** null where no size of sheet is known. */
  readonly plan: CuttingPlan | null;
}

/** The cut list of a job, and the sheets that it is cut from in the order of their cuts; each size has a letter. */
export function layoutsPaper(boards: readonly BoardLayouts[], saw: PanelSaw, shop: Shop, reader: Reader): Paper {
  const told = tellerTo(reader);
  return {
    title: '',
    blocks: [
      paragraph(told(say.about({ saw: saw.name, kerf: saw.kerf, stages: saw.stages }))),
      ...milledWords(shop, reader),
      { kind: 'cautions', items: [told(say.caution())] },
      ...boards.flatMap((each) => boardBlocks(each, reader)),
    ],
  };
}

function boardBlocks({ board, sizes, plan }: BoardLayouts, reader: Reader): readonly Block[] {
  const figures = sizes.flatMap((one) => [one.length, one.width, one.finishedLength, one.finishedWidth]);
  const write = inOneNotation(figures, reader);
  const size = (length: Micrometres, width: Micrometres): Told => asItIs(`${write(length)} × ${write(width)}`);
  const told = tellerTo(reader);
  const list: Block = {
    kind: 'table',
    columns: [UNNAMED, column(HEADS.cut), column(HEADS.finished), figuresColumn(HEADS.pieces), column(HEADS.panels)],
    rows: sizes.map(({ length, width, finishedLength, finishedWidth, pieces, panels }, i) => [
      letters(i),
      size(length, width),
      size(finishedLength, finishedWidth),
      asItIs(String(pieces)),
      panelsNamed(panels),
    ]),
  };
  const name = asItIs(board.name);
  if (plan === null) return [heading(2, name), list, paragraph(told(say.noSize()))];
  return [
    heading(2, name, told(costOf(plan, isPriced(board)))),
    list,
    ...plan.misfits.map((id) => paragraph(told(say.misfit({ letter: letters(Number(id)) })))),
    ...plan.lacking.map(({ piece, count }) => paragraph(told(say.lacking({ letter: letters(Number(piece)), count })))),
    ...numbered(plan.sheets).flatMap((one) => sheetBlocks(one, plan.sheets.length, sizes, size, reader)),
    ...keptBlocks(board.name, numbered(plan.sheets), size, reader),
  ];
}

type SizeWords = (length: Micrometres, width: Micrometres) => Told;

function sheetBlocks(
  one: NumberedSheets,
  sheets: number,
  sizes: readonly CutSize[],
  size: SizeWords,
  reader: Reader,
): readonly Block[] {
  const { sheet, first, last, offcuts } = one;
  const told = tellerTo(reader);
  const which = { first, last, sheets, stock: sheet.stock };
  return [
    heading(3, told(say.firstCuts({ ...which, cuts: firstCuts(sheet.part) }))),
    {
      kind: 'picture',
      name: told(say.sheet(which)),
      about: told(say.picture({ stock: sheet.stock })),
      scene: sheetScene(one, sizes, reader),
      file: null,
    },
    cutsTable(sheet.part, size, (part) => told(say.offcut({ names: offcuts.get(part) ?? [] }))),
  ];
}

/** What is kept of all sheets of a board, by its names. */
function keptBlocks(
  board: string,
  sheets: readonly NumberedSheets[],
  size: SizeWords,
  reader: Reader,
): readonly Block[] {
  const rows = sheets.flatMap(({ first, offcuts }) =>
    [...offcuts].flatMap(([part, names]) =>
      names.map((name, i) => [asItIs(name), size(part.size.length, part.size.width), asItIs(String(first + i))]),
    ),
  );
  if (rows.length === 0) return [];
  return [
    paragraph(tell(say.keep({ board }), reader)),
    { kind: 'table', columns: [column(HEADS.offcut), column(HEADS.size), figuresColumn(HEADS.sheet)], rows },
  ];
}

const firstCuts = (part: Part): 'along' | 'across' => (part.kind === 'cut' ? part.cuts : 'along');

function costOf({ cost, bound, sheets, lacking }: CuttingPlan, priced: boolean): Message {
  const figures = { sheets: sheets.length, cost: cost / COINS, priced };
  if (lacking.length > 0) return say.tooFew(figures);
  return cost === bound ? say.least(figures) : say.notLeast({ ...figures, bound: bound / COINS });
}

/** The cuts in the order of the saw: under each part what it is cut into. What falls off and is not kept goes unsaid. */
function cutsTable(part: Part, size: SizeWords, offcut: (part: Part) => Told): Block {
  const rows: (Told | '')[][] = [];
  const tellPart = (each: Part, number: string): void => {
    if (each.kind === 'offcut' && !each.kept) return;
    const turned = each.kind === 'piece' && each.turned ? PARTS.turned : '';
    rows.push([asItIs(number), named(each), size(each.size.length, each.size.width), turned]);
    if (each.kind === 'cut') each.parts.forEach((inner, i) => tellPart(inner, `${number}.${i + 1}`));
  };
  const named = (each: Part): Told =>
    each.kind === 'piece' ? letters(Number(each.piece)) : each.kind === 'cut' ? PARTS.part : offcut(each);
  if (part.kind === 'cut') part.parts.forEach((each, i) => tellPart(each, String(i + 1)));
  return {
    kind: 'table',
    columns: [column(HEADS.number), column(HEADS.gives), column(HEADS.size), UNNAMED],
    rows,
  };
}
