import type { HighsSolution } from 'highs';
import { isPackedBeside, packedBeside } from './beside.js';
import type { CoverProgram, CoverSolver } from '../shared-core/service.js';

/** Branches after which the best whole solution so far is taken. */
const MOST_NODES = 2000;
/** With less time the solver would not come as far as a first solution. */
const LEAST_SECONDS = 0.2;

const COMPILED = 'highs.wasm';

/**
 * How the library takes its compiled code from elsewhere than a plain file: the hook that Emscripten, which made it, asks for.
 * The `wasmBinary` that its types speak of is not looked at.
 */
const PACKED: object = {
  instantiateWasm(imports: WebAssembly.Imports, done: (instance: WebAssembly.Instance) => void): object {
    done(new WebAssembly.Instance(new WebAssembly.Module(packedBeside(COMPILED)), imports));
    return {};
  },
};

/** The covering programs of sheet layouts, solved by HiGHS (an open linear programming library). Loaded when first asked for. */
export async function coverSolver(): Promise<CoverSolver> {
  const { default: loadHighs } = await import('highs');
  const highs = await loadHighs(isPackedBeside(COMPILED) ? PACKED : {});
  return {
    relaxed(program) {
      const solution = highs.solve(written(program, false));
      if (solution.Status !== 'Optimal') return null;
      const prices = program.needs.map(() => 0);
      const scarcity = program.scarce.map(() => 0);
      for (const row of solution.Rows) {
        if (!('Dual' in row)) continue;
        (row.Name.startsWith('n') ? prices : scarcity)[Number(row.Name.slice(1))] = row.Dual;
      }
      return { amounts: amountsOf(program, solution), prices, scarcity };
    },
    whole(program, seconds) {
      const limit = seconds === null ? {} : { time_limit: Math.max(LEAST_SECONDS, seconds) };
      const solution = highs.solve(written(program, true), { mip_max_nodes: MOST_NODES, ...limit });
      const amounts = amountsOf(program, solution);
      return amounts.every((amount) => Number.isFinite(amount)) && isCovered(program, amounts) ? amounts : null;
    },
  };
}

function amountsOf({ columns }: CoverProgram, solution: HighsSolution): readonly number[] {
  return columns.map((_, i) => {
    const column = solution.Columns[`x${i}`];
    return column !== undefined && 'Primal' in column && column.Primal !== null ? column.Primal : NaN;
  });
}

/** A solution that was broken off may hold nothing useful: it is looked at before it is believed. */
function isCovered({ columns, needs }: CoverProgram, amounts: readonly number[]): boolean {
  const given = needs.map(() => 0);
  columns.forEach(({ gives }, i) => {
    for (const [row, amount] of gives) given[row] = given[row]! + amount * Math.round(amounts[i]!);
  });
  return needs.every((need, row) => given[row]! >= need);
}

/** The program in the text form that the library reads. */
function written({ columns, needs, scarce }: CoverProgram, whole: boolean): string {
  const terms = needs.map((): string[] => []);
  const uses = scarce.map((): string[] => []);
  columns.forEach(({ gives, uses: used }, i) => {
    for (const [row, amount] of gives) terms[row]!.push(`${amount} x${i}`);
    if (used !== null) uses[used]!.push(`x${i}`);
  });
  const rows = [
    ...needs.flatMap((need, i) =>
      need > 0 && terms[i]!.length > 0 ? [` n${i}: ${terms[i]!.join(' + ')} >= ${need}`] : [],
    ),
    ...scarce.flatMap((count, i) => (uses[i]!.length > 0 ? [` s${i}: ${uses[i]!.join(' + ')} <= ${count}`] : [])),
  ];
  const names = columns.map((_, i) => `x${i}`);
  const goal = columns.map(({ cost }, i) => `${cost} x${i}`).join(' + ');
  const kinds = whole ? `General\n ${names.join(' ')}\n` : '';
  return `Minimize\n obj: ${goal}\nSubject To\n${rows.join('\n')}\n${kinds}End\n`;
}
