import { figure, inOneNotation } from '../../length/show.js';
import type { Micrometres, Unit } from '../../length/units.js';
import { COINS } from '../../sheets/board-problem.js';
import type { CutSize } from '../../sheets/cut-list.js';
import type { CuttingPlan, Part, SheetLayout } from '../../sheets/model.js';
import type { Board, PanelSaw } from '../../shop/model.js';
import { counted } from '../../words/english.js';
import { letters } from '../letters.js';
import { sheetScene } from './scene.js';
import { panelsNamed } from '../pieces.js';
import { column, figuresColumn, heading, paragraph, type Block, type Paper } from '../paper.js';

/** All pieces of one board. */
export interface BoardLayouts {
  readonly board: Board;
  readonly sizes: readonly CutSize[];
  /** null where no size of sheet is known. */
  readonly plan: CuttingPlan | null;
}

/** The cut list of a job, and the sheets that it is cut from in the order of their cuts; each size has a letter. */
export function layoutsPaper(boards: readonly BoardLayouts[], saw: PanelSaw, unit: Unit): Paper {
  const inUnit = unit === 'mm' ? 'millimetres' : 'inches';
  return {
    title: '',
    blocks: [
      paragraph(
        `Sizes as cut, bands taken off, in ${inUnit}. Saw: ${saw.name}, kerf ${figure(saw.kerf, unit)}, ${saw.stages} stages.`,
      ),
      {
        kind: 'cautions',
        items: [
          'Guards and riving knife stay on the saw; hands stay clear of the blade. The saw’s manual and local rules decide.',
        ],
      },
      ...boards.flatMap((each) => boardBlocks(each, unit)),
    ],
  };
}

function boardBlocks({ board, sizes, plan }: BoardLayouts, unit: Unit): readonly Block[] {
  const figures = sizes.flatMap((one) => [one.length, one.width, one.finishedLength, one.finishedWidth]);
  const write = inOneNotation(figures, unit);
  const size = (length: Micrometres, width: Micrometres): string => `${write(length)} x ${write(width)}`;
  const list: Block = {
    kind: 'table',
    columns: [column(''), column('Cut'), column('Finished'), figuresColumn('Pieces'), column('Panels')],
    rows: sizes.map(({ length, width, finishedLength, finishedWidth, pieces, panels }, i) => [
      letters(i),
      size(length, width),
      size(finishedLength, finishedWidth),
      String(pieces),
      panelsNamed(panels),
    ]),
  };
  if (plan === null)
    return [heading(2, board.name), list, paragraph('No layout: the shop file gives no size of sheet for this board.')];
  return [
    heading(2, board.name, costWords(plan)),
    list,
    ...plan.misfits.map((id) => paragraph(`${letters(Number(id))} comes out of no sheet on this saw.`)),
    ...alike(plan.sheets).flatMap(({ sheet, copies }): readonly Block[] => [
      heading(
        3,
        `${copies} of ${sheet.stock}, first cuts ${sheet.part.kind === 'cut' ? sheet.part.cuts : 'along'} the sheet`,
      ),
      {
        kind: 'picture',
        name: `${copies} of ${sheet.stock}`,
        about: `${sheet.stock} with its pieces; the table under it tells them in the order of the cuts.`,
        scene: sheetScene(sheet, sizes, unit),
        file: null,
      },
      cutsTable(sheet.part, size),
    ]),
  ];
}

function costWords({ cost, bound, sheets }: CuttingPlan): string {
  const count = `${counted(sheets.length, 'sheet')}, cost ${cost / COINS}`;
  return cost === bound ? `${count}: no layout costs less` : `${count}; no layout costs under ${bound / COINS}`;
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
function cutsTable(part: Part, size: (length: Micrometres, width: Micrometres) => string): Block {
  const rows: string[][] = [];
  const tell = (each: Part, number: string): void => {
    const turned = each.kind === 'piece' && each.turned ? 'turned' : '';
    const what =
      each.kind === 'piece'
        ? letters(Number(each.piece))
        : each.kind === 'cut'
          ? 'part'
          : each.kept
            ? 'offcut, kept'
            : 'waste';
    rows.push([number, what, size(each.size.length, each.size.width), turned]);
    if (each.kind === 'cut') each.parts.forEach((inner, i) => tell(inner, `${number}.${i + 1}`));
  };
  if (part.kind === 'cut') part.parts.forEach((each, i) => tell(each, String(i + 1)));
  return { kind: 'table', columns: [column('Cut'), column('Gives'), column('Along x across'), column('')], rows };
}
