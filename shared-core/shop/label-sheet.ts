import type { Finding } from '../document/finding.js';
import type { Micrometres } from '../length/units.js';
import { errorAt } from '../schema/tell.js';
import { messages } from '../words/message.js';
import type { LabelSheet } from './model.js';
import type { ShopInput } from './schema.js';

/** A4: ISO 216. Letter: 8 1/2 by 11 inches (ANSI/ASME Y14.1, size A). */
export const LABEL_PAGES: Readonly<
  Record<LabelSheet['page'], { readonly width: Micrometres; readonly height: Micrometres }>
> = {
  a4: { width: 210_000, height: 297_000 },
  letter: { width: 215_900, height: 279_400 },
};

export const say = messages('label-sheet', {
  beyondPage: (
    {
      labels,
      along,
      reach,
      page,
    }: {
      readonly labels: number;
      readonly along: 'across' | 'down';
      readonly reach: Micrometres;
      readonly page: Micrometres;
    },
    show,
  ) =>
    `${labels} labels reach ${show.exact(reach)} ${along} the page, which is ${show.exact(page)} ${along === 'across' ? 'wide' : 'high'}. Write the figures of your label sheets; until then the built-in sheet is used.`,
});

/** Where the labels of a sheet begin and how far they reach, in one direction. */
export interface LabelRun {
  readonly from: Micrometres;
  readonly to: Micrometres;
}

/** The labels across a sheet and down it; where no margin is given they stand in the middle of the page. */
export function labelRuns(sheet: LabelSheet): Readonly<Record<'across' | 'down', LabelRun>> {
  const { columns, rows, labelWidth, labelHeight, gapAcross, gapDown, marginLeft, marginTop } = sheet;
  const page = LABEL_PAGES[sheet.page];
  const run = (count: number, size: Micrometres, gap: Micrometres, margin: Micrometres | null, room: Micrometres) => {
    const length = count * size + (count - 1) * gap;
    const from = margin ?? Math.trunc((room - length) / 2);
    return { from, to: from + length };
  };
  return {
    across: run(columns, labelWidth, gapAcross, marginLeft, page.width),
    down: run(rows, labelHeight, gapDown, marginTop, page.height),
  };
}

/** The sheet as the shop has it; one whose labels run over its page is told, and `instead` is taken. */
export function soundLabelSheet(
  sheet: LabelSheet,
  written: ShopInput['value']['label-sheet'],
  instead: LabelSheet | null,
  findings: Finding[],
): LabelSheet {
  const runs = labelRuns(sheet);
  const page = LABEL_PAGES[sheet.page];
  const beyond = (['across', 'down'] as const).filter(
    (along) => runs[along].from < 0 || runs[along].to > (along === 'across' ? page.width : page.height),
  );
  if (instead === null || written === undefined || beyond.length === 0) return sheet;
  const along = beyond[0]!;
  const { from, to } = runs[along];
  const message = say.beyondPage({
    labels: along === 'across' ? sheet.columns : sheet.rows,
    along,
    reach: to - Math.min(0, from),
    page: along === 'across' ? page.width : page.height,
  });
  findings.push(errorAt('length-impossible', written.place, message));
  return instead;
}
