// Layouts of sheets: the published instances of one sheet, and jobs of up to 300 pieces beside the bound on their cost. Each
// time is printed with its ratio to the first of its table, since times mean little from one machine to the next.
import { sequence } from '../../shared-core/machining/order/random.js';
import type { CuttingProblem } from '../../shared-core/sheets/model.js';
import { bestSheet } from '../oracles/one-sheet/best-sheet.js';
import { planCutting } from '../../shared-core/sheets/plan/plan.js';
import { coverSolver } from '../../server/cover-solver.js';
import { published } from '../core/sheets/published.js';

const LIMIT_MS = 10_000;
const JOBS = [
  { pieces: 40, sizes: 14, turns: true },
  { pieces: 100, sizes: 30, turns: true },
  { pieces: 300, sizes: 60, turns: true },
  { pieces: 300, sizes: 60, turns: false },
];

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
