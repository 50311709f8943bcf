// Layouts of sheets: the published instances of one sheet, and jobs of up to 300 pieces beside the bound on their cost. Each
// time is printed with its ratio to the first of its table, since times mean little from one machine to the next.
import { sequence } from '../../shared-core/machining/order/random.js';
import type { CuttingProblem } from '../../shared-core/sheets/model.js';
import { bedsOf } from '../../shared-core/sheets/staged/lie.js';
import { mostWorth } from '../../shared-core/sheets/staged/most-worth.js';
import { goodPattern } from '../../shared-core/sheets/staged/pattern.js';
import { bestSheet } from '../oracles/one-sheet/best-sheet.js';
import { planCutting } from '../../shared-core/sheets/plan/plan.js';
import type { OneSheet } from '../oracles/one-sheet/problem.js';
import { coverSolver } from '../../server/cover-solver.js';
import { published } from '../core/sheets/published.js';

const LIMIT_MS = 10_000;
const JOBS = [
  { pieces: 40, sizes: 14, turns: true },
  { pieces: 100, sizes: 30, turns: true },
  { pieces: 300, sizes: 60, turns: true },
  { pieces: 300, sizes: 60, turns: false },
];

/** Beginnings that are kept at each strip. */
const BEAMS = [1, 4, 16, 64];
const ROUNDS = 100;

function timed<T>(work: () => T): { readonly ms: number; readonly result: T } {
  const start = performance.now();
  const result = work();
  return { ms: performance.now() - start, result };
}

/** Pieces of random sizes, invented. */
function job({ pieces: total, sizes, turns }: (typeof JOBS)[number]): CuttingProblem {
  const random = sequence(total + sizes);
  const counts = Array.from({ length: sizes }, (_, i) => Math.floor(total / sizes) + (i < total % sizes ? 1 : 0));
  return {
    pieces: counts.map((count, i) => ({
      id: `p${i}`,
      length: (200 + random(1900)) * 1000,
      width: (80 + random(520)) * 1000,
      count,
      turns,
    })),
    stocks: [
      { name: 'full', length: 2_800_000, width: 2_070_000, price: 6000, count: null },
      { name: 'half', length: 2_800_000, width: 1_030_000, price: 3400, count: null },
    ],
    saw: { kerf: 3200, trim: 10_000, stages: 3, rip: null, crosscut: null, first: 'either' },
    offcut: { length: 600_000, width: 200_000 },
  };
}

/** The most valuable pattern of the planner, and what none of three stages is worth more than. */
function inThreeStages({ length, width, rectangles }: OneSheet): { readonly value: number; readonly bound: number } {
  const beds = bedsOf({
    pieces: rectangles.map((one, i) => ({ id: `p${i}`, ...one, count: one.most, turns: false })),
    stocks: [{ name: 'sheet', length, width, price: 1, count: null }],
    saw: { kerf: 0, trim: 0, stages: 3, rip: null, crosscut: null, first: 'either' },
    offcut: { length: 1, width: 1 },
  });
  const wanted = rectangles.map(({ most }) => most);
  const values = rectangles.map(({ value }) => value);
  const worth = (counts: readonly number[]): number => counts.reduce((sum, count, i) => sum + count * values[i]!, 0);
  const random = sequence(1);
  const found = beds.flatMap((bed) => [
    ...BEAMS.map((beam) => goodPattern(bed, wanted, values, beam)),
    // As in a whole job, where pieces are priced anew in every round.
    ...Array.from({ length: ROUNDS }, () => {
      const priced = values.map((value) => value * (0.7 + 0.0006 * random(1000)));
      return goodPattern(bed, wanted, priced, 3);
    }),
  ]);
  return {
    value: Math.max(...found.map(({ counts }) => worth(counts))),
    bound: Math.max(...beds.map((bed) => mostWorth(bed, wanted, values).bound)),
  };
}

async function main(): Promise<void> {
  console.log('\nOne sheet, any number of stages (published instances)');
  const first = timed(() => bestSheet(published[0]!.sheet)).ms;
  for (const { name, sheet, optimum } of published) {
    const { ms, result } = timed(() => bestSheet(sheet));
    const proof = result.bound === result.value ? 'proven' : `at most ${result.bound}`;
    console.log(
      `  ${name.padEnd(20)} best known ${optimum}, found ${result.value}, ${proof}; ${ms.toFixed(0)} ms, ${(ms / first).toFixed(1)} x the first`,
    );
  }
  console.log('\nThe same as the planner fills a sheet, in three stages (fewer than the best known may take)');
  const short = published.map(({ name, sheet, optimum }) => {
    const { ms, result } = timed(() => inThreeStages(sheet));
    const less = (100 * (optimum - result.value)) / optimum;
    console.log(
      `  ${name.padEnd(20)} found ${result.value}, at most ${result.bound}, ${less.toFixed(2)} % under the best known; ${ms.toFixed(0)} ms`,
    );
    return less;
  });
  console.log(`  mean ${(short.reduce((sum, each) => sum + each, 0) / short.length).toFixed(2)} %`);
  console.log(`\nWhole jobs, three stages, ${LIMIT_MS / 1000} s each`);
  const solver = await coverSolver();
  for (const each of JOBS) {
    const start = performance.now();
    const { ms, result } = timed(() =>
      planCutting(job(each), solver, 1, {
        rounds: Infinity,
        mayGoOn: () => performance.now() - start < LIMIT_MS,
        secondsLeft: () => (start + LIMIT_MS - performance.now()) / 1000,
      }),
    );
    const gap = (100 * (result.cost - result.bound)) / result.bound;
    console.log(
      `  ${each.pieces} pieces of ${each.sizes} sizes${each.turns ? ', turned at will' : ', grained'}: ${result.sheets.length} sheets, cost ${result.cost / 100}, at least ${result.bound / 100}, gap ${gap.toFixed(1)} %; ${(ms / 1000).toFixed(1)} s`,
    );
  }
}

await main();
