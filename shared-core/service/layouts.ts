import type { JobAnalysis } from '../engine.js';
import type { Reader } from '../length/reader.js';
import { cutListPaper } from '../papers/cut-list/paper.js';
import type { Paper } from '../papers/paper.js';
import { asText } from '../papers/render/text.js';
import { layoutsPaper, type BoardLayouts } from '../papers/sheet-layouts/paper.js';
import { boardProblem, COINS, isPriced, sawOf } from '../sheets/board-problem.js';
import { cutList } from '../sheets/cut-list.js';
import type { Part } from '../sheets/model.js';
import type { CoverSolver } from '../sheets/plan/cover.js';
import { planCutting, type Effort } from '../sheets/plan/plan.js';
import type { PanelSaw } from '../shop/model.js';
import { asItIs } from '../words/told.js';
import type { Answer } from './answer.js';
import { mm } from './mm.js';

/** Rounds of improvement and their chance: always the same, so that the same job gives the same layouts. */
const ROUNDS = 120;
const SEED = 1;

/**
 * How long the layouts of a board are sought, and who is told of each better one. Asked once of each board that there are sheets
 * of, in their order: `index` of `boards`. What is found is in money where the shop prices every size, else in square metres.
 */
export type EffortOn = (board: string, index: number, boards: number, priced: boolean) => Effort;

/** The same layouts each time. */
export const usualEffort: EffortOn = () => ({ rounds: ROUNDS, mayGoOn: () => true });

/** How the panels of a job are cut from sheets, with its cut list. */
export interface Layouts extends Answer {
  readonly saw: PanelSaw;
  readonly boards: readonly BoardLayouts[];
  /** For a reader, in the language that is spoken when it is asked for. */
  readonly paper: (reader: Reader) => Paper;
}

/**
 * The layouts of a job; null where its shop has no panel saw to cut them on.
 * @param solver called only where there is something to lay out
 */
export async function layoutsOf(
  { carcasses, shop, reader }: JobAnalysis,
  solver: () => Promise<CoverSolver>,
  effortOn: EffortOn = usualEffort,
): Promise<Layouts | null> {
  const saw = sawOf(shop);
  if (saw === null) return null;
  const built = carcasses.flatMap(({ name, carcass }) => (carcass === null ? [] : [{ name, carcass }]));
  const problems = [...cutList(built)].map(([board, sizes]) => ({
    board,
    sizes,
    problem: boardProblem(board, sizes, saw, shop),
  }));
  const count = problems.filter(({ problem }) => problem !== null).length;
  const lp = count === 0 ? null : await solver();
  let index = 0;
  const boards = problems.map(({ board, sizes, problem }): BoardLayouts => {
    if (problem === null) return { board, sizes, plan: null };
    const effort = effortOn(board.name, index, count, isPriced(board));
    index += 1;
    return { board, sizes, plan: planCutting(problem, lp, SEED, effort) };
  });
  const paper = (one: Reader): Paper => layoutsPaper(boards, saw, shop, one);
  return {
    saw,
    boards,
    paper,
    inWords: () => asText(paper(reader)),
    asData: () => ({ boards: boards.map(boardData) }),
  };
}

/** The cut list alone, where no saw says how sheets are parted; as data it has the form of layouts, without their sheets. */
export function cutListOf({ carcasses, shop, reader }: JobAnalysis): Answer {
  const built = carcasses.flatMap(({ name, carcass }) => (carcass === null ? [] : [{ name, carcass }]));
  const list = cutList(built);
  return {
    inWords: () => asText(cutListPaper(list, shop, asItIs(''), reader)),
    asData: () => ({ boards: [...list].map(([board, sizes]) => boardData({ board, sizes, plan: null })) }),
  };
}

function boardData({ board, sizes, plan }: BoardLayouts): object {
  return {
    board: board.name,
    thickness: mm(board.thickness),
    pieces: sizes.map(({ length, width, finishedLength, finishedWidth, pieces, panels }, i) => ({
      id: String(i),
      length: mm(length),
      width: mm(width),
      finishedLength: mm(finishedLength),
      finishedWidth: mm(finishedWidth),
      count: pieces,
      panels,
    })),
    ...(plan !== null && {
      // In money, or in square metres where the shop does not price every size.
      [isPriced(board) ? 'cost' : 'squareMetres']: plan.cost / COINS,
      atLeast: plan.bound / COINS,
      misfits: plan.misfits,
      lacking: plan.lacking,
      sheets: plan.sheets.map(({ stock, part }) => ({ sheet: stock, ...partData(part) })),
    }),
  };
}

function partData(part: Part): object {
  const where = { x: mm(part.at.x), y: mm(part.at.y), length: mm(part.size.length), width: mm(part.size.width) };
  switch (part.kind) {
    case 'piece':
      return { piece: part.piece, turned: part.turned, ...where };
    case 'offcut':
      return { offcut: part.kept ? 'kept' : 'waste', ...where };
    case 'cut':
      return { cuts: part.cuts, ...where, parts: part.parts.map(partData) };
  }
}
