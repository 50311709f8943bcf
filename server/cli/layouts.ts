import type { JobAnalysis } from '../../shared-core/engine.js';
import type { PanelSaw } from '../../shared-core/shop/model.js';
import type { Micrometres } from '../../shared-core/length/units.js';
import { MICROMETRES_PER_MM } from '../../shared-core/length/units.js';
import { asText } from '../../shared-core/papers/render/text.js';
import { layoutsPaper, type BoardLayouts } from '../../shared-core/papers/sheet-layouts/paper.js';
import { boardProblem, COINS, sawOf } from '../../shared-core/sheets/board-problem.js';
import { cutList } from '../../shared-core/sheets/cut-list.js';
import type { Part } from '../../shared-core/sheets/model.js';
import { planCutting } from '../../shared-core/sheets/plan/plan.js';
import { coverSolver } from '../cover-solver.js';
import { openJob } from './files.js';
import { troubles } from './panels.js';
import type { Outcome } from './run.js';
import { asJson, CouldNotRun, readArguments, readFormat } from './run.js';

/** Rounds of improvement and their chance: always the same, so that the same job gives the same layouts. */
const ROUNDS = 120;
const SEED = 1;

/** `borewright layouts FILE [--format text|json]`: the cut list of a job, and how its panels are cut from sheets. */
export async function layouts(args: readonly string[]): Promise<Outcome> {
  const { options, rest } = readArguments(args, ['format']);
  const format = readFormat(options.format);
  const [path, ...more] = rest;
  if (path === undefined || more.length > 0) throw new CouldNotRun('Name one job file: borewright layouts FILE.');
  const job = openJob(path);
  const { shop, unit } = job.analysis;
  const saw = sawOf(shop);
  if (saw === null)
    throw new CouldNotRun('The shop has no panel saw, so nothing can be laid out. Add one under `panel-saws`.');
  const cuts = await layoutsOf(job.analysis, saw);
  const output = format === 'json' ? asJson({ boards: cuts.map(cutJson) }) : asText(layoutsPaper(cuts, saw, unit));
  return { output, ...troubles(path, job) };
}

/** Every board of a job with its pieces and their sheets; always the same for the same job. */
export async function layoutsOf({ carcasses, shop }: JobAnalysis, saw: PanelSaw): Promise<readonly BoardLayouts[]> {
  const built = carcasses.flatMap(({ name, carcass }) => (carcass === null ? [] : [{ name, carcass }]));
  const solver = await coverSolver();
  return [...cutList(built)].map(([board, sizes]): BoardLayouts => {
    const problem = boardProblem(board, sizes, saw, shop);
    const effort = { rounds: ROUNDS, mayGoOn: () => true };
    return { board, sizes, plan: problem === null ? null : planCutting(problem, solver, SEED, effort) };
  });
}

const mm = (length: Micrometres): number => length / MICROMETRES_PER_MM;

function cutJson({ board, sizes, plan }: BoardLayouts): object {
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
      cost: plan.cost / COINS,
      atLeast: plan.bound / COINS,
      misfits: plan.misfits,
      sheets: plan.sheets.map(({ stock, part }) => ({ sheet: stock, ...partJson(part) })),
    }),
  };
}

function partJson(part: Part): object {
  const where = { x: mm(part.at.x), y: mm(part.at.y), length: mm(part.size.length), width: mm(part.size.width) };
  switch (part.kind) {
    case 'piece':
      return { piece: part.piece, turned: part.turned, ...where };
    case 'offcut':
      return { offcut: part.kept ? 'kept' : 'waste', ...where };
    case 'cut':
      return { cuts: part.cuts, ...where, parts: part.parts.map(partJson) };
  }
}
