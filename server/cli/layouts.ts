import type { Micrometres, Unit } from '../../shared-core/length/units.js';
import { MICROMETRES_PER_MM } from '../../shared-core/length/units.js';
import { figure } from '../../shared-core/length/show.js';
import { boardProblem, COINS, sawOf } from '../../shared-core/sheets/board-problem.js';
import { cutList, type CutSize } from '../../shared-core/sheets/cut-list.js';
import type { CuttingPlan, Part, SheetLayout } from '../../shared-core/sheets/model.js';
import { planCutting } from '../../shared-core/sheets/plan/plan.js';
import type { Board, PanelSaw } from '../../shared-core/shop/model.js';
import { coverSolver } from '../cover-solver.js';
import { columns } from './columns.js';
import { openJob } from './files.js';
import { troubles } from './panels.js';
import type { Outcome } from './run.js';
import { asJson, CouldNotRun, readArguments, readFormat } from './run.js';

/** Rounds of improvement and their chance: always the same, so that the same job gives the same layouts. */
const ROUNDS = 120;
const SEED = 1;

interface Cut {
  readonly board: Board;
  readonly sizes: readonly CutSize[];
  /** null where no size of sheet is known. */
  readonly plan: CuttingPlan | null;
}

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
  const built = job.analysis.carcasses.flatMap(({ name, carcass }) => (carcass === null ? [] : [{ name, carcass }]));
  const solver = await coverSolver();
  const cuts = [...cutList(built)].map(([board, sizes]): Cut => {
    const problem = boardProblem(board, sizes, saw, shop);
    const effort = { rounds: ROUNDS, mayGoOn: () => true };
    return { board, sizes, plan: problem === null ? null : planCutting(problem, solver, SEED, effort) };
  });
  const output = format === 'json' ? asJson({ boards: cuts.map(cutJson) }) : asText(cuts, saw, unit);
  return { output, ...troubles(path, job) };
}

const mm = (length: Micrometres): number => length / MICROMETRES_PER_MM;

function cutJson({ board, sizes, plan }: Cut): object {
  return {
    board: board.name,
    thickness: mm(board.thickness),
    pieces: sizes.map(({ length, width, finishedLength, finishedWidth, panels }, i) => ({
      id: String(i),
      length: mm(length),
      width: mm(width),
      finishedLength: mm(finishedLength),
      finishedWidth: mm(finishedWidth),
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

function asText(cuts: readonly Cut[], saw: PanelSaw, unit: Unit): string {
  const size = (length: Micrometres, width: Micrometres): string => `${figure(length, unit)} x ${figure(width, unit)}`;
  const about = [
    `Sizes in ${unit}, as cut: bands are taken off. Saw: ${saw.name}, kerf ${figure(saw.kerf, unit)}, ${saw.stages} stages.`,
    'Keep hands clear of the blade and follow the saw’s manual: riving knife, guard and pressure beam where it has them.',
    '',
  ];
  const boards = cuts.flatMap(({ board, sizes, plan }) => [
    `${board.name}`,
    ...columns([
      ['', 'Cut', 'Finished', 'Pieces', 'Panels'],
      ...sizes.map(({ length, width, finishedLength, finishedWidth, panels }, i) => [
        letters(i),
        size(length, width),
        size(finishedLength, finishedWidth),
        String(panels.length),
        panels.map(({ carcass, panel }) => `${carcass} ${panel}`).join(', '),
      ]),
    ]),
    ...(plan === null
      ? ['    No layout: the shop file gives no size of sheet for this board.']
      : [
          ...plan.misfits.map((id) => `    ${letters(Number(id))} comes out of no sheet with this saw.`),
          ...alike(plan.sheets).flatMap(({ sheet, copies }) => sheetText(sheet, copies, size)),
          `    ${costText(plan)}`,
        ]),
    '',
  ]);
  return [...about, ...boards].join('\n');
}

function costText({ cost, bound, sheets }: CuttingPlan): string {
  const count = `${sheets.length} ${sheets.length === 1 ? 'sheet' : 'sheets'}`;
  const gap = `no layout costs under ${bound / COINS}`;
  return cost === bound
    ? `${count}, ${cost / COINS}: ${gap}, so none is cheaper.`
    : `${count}, ${cost / COINS}; ${gap}.`;
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

function sheetText(
  { stock, part }: SheetLayout,
  copies: number,
  size: (length: Micrometres, width: Micrometres) => string,
): readonly string[] {
  const lines = [`    ${copies} of ${stock}, first cuts ${part.kind === 'cut' ? part.cuts : 'along'} the sheet`];
  const told = (each: Part, indent: string): void => {
    const measure = size(each.size.length, each.size.width);
    if (each.kind === 'piece')
      lines.push(`${indent}${letters(Number(each.piece))}  ${measure}${each.turned ? ', turned' : ''}`);
    else if (each.kind === 'offcut') lines.push(`${indent}${each.kept ? 'offcut, kept' : 'waste'}  ${measure}`);
    else {
      lines.push(`${indent}part  ${measure}`);
      each.parts.forEach((inner) => told(inner, `${indent}  `));
    }
  };
  if (part.kind === 'cut') part.parts.forEach((each) => told(each, '      '));
  return lines;
}

/** A, B, … Z, AA, AB, …: names of sizes that can be chalked on a piece. */
function letters(index: number): string {
  const last = String.fromCharCode(65 + (index % 26));
  return index < 26 ? last : letters(Math.floor(index / 26) - 1) + last;
}
