import { Session, type Profiler } from 'node:inspector';

// V8 counts only in code that it compiles after it was told to count: import this file before the code to be measured.
const session = new Session();
session.connect();
session.post('Profiler.enable');
session.post('Profiler.startPreciseCoverage', { callCount: true, detailed: true });

/**
 * How many blocks of the project's code (and of the YAML reader's) a piece of work runs through, each as often as it is run:
 * a measure of work that the load of the machine does not change. Searches of a text by the language itself are added, a
 * step for each sign that they pass.
 */
export function stepsOf(work: () => void): number {
  blocksRun();
  const searched = signsSearched(work);
  return searched + blocksRun();
}

/** Since it was asked last. */
function blocksRun(): number {
  let found: readonly Profiler.ScriptCoverage[] = [];
  session.post('Profiler.takePreciseCoverage', (fault, { result }) => {
    if (fault !== null) throw fault;
    found = result;
  });
  const own = found.filter(({ url }) => /\/(?:shared-core|server|node_modules\/yaml)\//.test(url));
  const ranges = own.flatMap(({ functions }) => functions.flatMap((one) => one.ranges));
  return ranges.reduce((sum, { count }) => sum + count, 0);
}

/** How far `indexOf` and `lastIndexOf` of strings look while the work is done. */
function signsSearched(work: () => void): number {
  let signs = 0;
  const { indexOf, lastIndexOf } = Object.getOwnPropertyDescriptors(String.prototype);
  const find = indexOf.value as typeof String.prototype.indexOf;
  const findLast = lastIndexOf.value as typeof String.prototype.lastIndexOf;
  const counted = {
    indexOf: {
      ...indexOf,
      value(this: string, wanted: string, from = 0): number {
        const at = find.call(this, wanted, from);
        signs += Math.max(0, (at === -1 ? this.length : at) - Math.max(0, from));
        return at;
      },
    },
    lastIndexOf: {
      ...lastIndexOf,
      value(this: string, wanted: string, from = Infinity): number {
        const at = findLast.call(this, wanted, from);
        signs += Math.max(0, Math.min(from, this.length) - Math.max(0, at));
        return at;
      },
    },
  };
  Object.defineProperties(String.prototype, counted);
  try {
    work();
  } finally {
    Object.defineProperties(String.prototype, { indexOf, lastIndexOf });
  }
  return signs;
}
