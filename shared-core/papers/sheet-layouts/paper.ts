import { inOneNotation } from '../../length/show.js';
import type { Reader } from '../../length/reader.js';
import type { Micrometres } from '../../length/units.js';
import { COINS } from '../../sheets/board-problem.js';
import type { CutSize } from '../../sheets/cut-list.js';
import type { CuttingPlan, Part, SheetLayout } from '../../sheets/model.js';
import type { Board, PanelSaw, Shop } from '../../shop/model.js';
import { tellerTo, type Message } from '../../words/message.js';
import { asItIs, type Told } from '../../words/told.js';
import { milledWords } from '../cut-list/milled.js';
import { letters } from '../letters.js';
import { HEADS, PARTS, say } from './messages.js';
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
  const size = (length: Micrometres, width: Micrometres): Told => asItIs(`${write(length)} x ${write(width)}`);
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
    heading(2, name, told(costOf(plan))),
    list,
    ...plan.misfits.map((id) => paragraph(told(say.misfit({ letter: letters(Number(id)) })))),
    ...alike(plan.sheets).flatMap(({ sheet, copies }): readonly Block[] => [
      heading(3, told(say.firstCuts({ copies, stock: sheet.stock, cuts: firstCuts(sheet.part) }))),
      {
        kind: 'picture',
        name: told(say.copies({ copies, stock: sheet.stock })),
        about: told(say.picture({ stock: sheet.stock })),
        scene: sheetScene(sheet, sizes, reader),
        file: null,
      },
      cutsTable(sheet.part, size),
    ]),
  ];
}

const firstCuts = (part: Part): 'along' | 'across' => (part.kind === 'cut' ? part.cuts : 'along');

function costOf({ cost, bound, sheets }: CuttingPlan): Message {
  const figures = { sheets: sheets.length, cost: cost / COINS };
  return cost === bound ? say.least(figures) : say.notLeast({ ...figures, bound: bound / COINS });
}

/** Sheets that are cut alike are told once. */
function alike(sheets: readonly SheetLayout[]): readonly { readonly sheet: SheetLayout; readonly copies: number }[] {
  const seen = new Map<string, { sheet: SheetLayout; copies: number }>();
  for (const sheet of sheets) {
    const key = JSON.stringify(sheet);
    const same = seen.get(key) ?? { sheet, copies: 0 };
    same.copies += 1;
    seen.set(key, same);
  }
  return [...seen.values()];
}

/** The cuts in the order of the saw: under each part what it is cut into. */
function cutsTable(part: Part, size: (length: Micrometres, width: Micrometres) => Told): Block {
  const rows: (Told | '')[][] = [];
  const tellPart = (each: Part, number: string): void => {
    const turned = each.kind === 'piece' && each.turned ? PARTS.turned : '';
    rows.push([asItIs(number), partNamed(each), size(each.size.length, each.size.width), turned]);
    if (each.kind === 'cut') each.parts.forEach((inner, i) => tellPart(inner, `${number}.${i + 1}`));
  };
  if (part.kind === 'cut') part.parts.forEach((each, i) => tellPart(each, String(i + 1)));
  return {
    kind: 'table',
    columns: [column(HEADS.number), column(HEADS.gives), column(HEADS.size), UNNAMED],
    rows,
  };
}

function partNamed(part: Part): Told {
  switch (part.kind) {
    case 'piece':
      return letters(Number(part.piece));
    case 'cut':
      return PARTS.part;
    case 'offcut':
      return part.kept ? PARTS.kept : PARTS.waste;
  }
}
