import type { StrokeRequest } from '../../../../shared-core/machining/strokes/index.js';

/** The list that plans are compared by: strokes, changes, loading, travel, met twice, not centred, and then the starts. */
export type Score = readonly number[];

/**
 * The best score over every plan there is, by building them all: every ascending set of starts with the fewest strokes,
 * and in each stroke every set of spindles over wanted holes. Shares nothing with the planner but the request.
 */
export function bestScore(request: StrokeRequest & { starts: readonly number[] }): Score | null {
  const holes = [...new Set(request.holes)].sort((a, b) => a - b);
  for (let strokes = 1; strokes <= holes.length; strokes += 1) {
    let best: Score | null = null;
    for (const starts of subsets(
      [...new Set(request.starts)].sort((a, b) => a - b),
      strokes,
    )) {
      for (const loads of loadings(holes, request.spindles, starts, request.meetsHolesTwice === true)) {
        const own = score(holes, request, starts, loads);
        if (best === null || compare(own, best) < 0) best = own;
      }
    }
    if (best !== null) return best;
  }
  return null;
}

function compare(a: Score, b: Score): number {
  for (let i = 0; i < Math.max(a.length, b.length); i += 1) if (a[i] !== b[i]) return (a[i] ?? 0) - (b[i] ?? 0);
  return 0;
}

/** The score of a plan, from its starts and its loaded spindles (bit s of a number: spindle s) alone. */
export function score(
  holes: readonly number[],
  request: StrokeRequest,
  starts: readonly number[],
  loads: readonly number[],
): Score {
  const { spindles, loaded } = request;
  let changes = 0;
  for (let i = 1; i < loads.length; i += 1) changes += ones(loads[i - 1]! ^ loads[i]!);
  const found = loaded?.reduce((bits, is, spindle) => bits + (is ? 2 ** spindle : 0), 0);
  const bored = loads.reduce((sum, load) => sum + ones(load), 0);
  const ends = holes[0]! + holes[holes.length - 1]!;
  const centred =
    spindles % 2 === 1 &&
    ends % 2 === 0 &&
    starts.every((start, i) => start + starts[starts.length - 1 - i]! + spindles - 1 === ends);
  return [
    starts.length,
    changes,
    found === undefined ? 0 : ones(found ^ loads[0]!),
    starts[starts.length - 1]! - starts[0]!,
    bored - holes.length,
    centred ? 0 : 1,
    ...starts,
  ];
}

function ones(bits: number): number {
  let count = 0;
  for (let rest = bits; rest !== 0; rest &= rest - 1) count += 1;
  return count;
}

function* subsets(of: readonly number[], size: number, from = 0): Generator<number[]> {
  if (size === 0) {
    yield [];
    return;
  }
  for (let i = from; i + size <= of.length; i += 1) {
    for (const rest of subsets(of, size - 1, i + 1)) yield [of[i]!, ...rest];
  }
}

function* loadings(
  holes: readonly number[],
  spindles: number,
  starts: readonly number[],
  twice: boolean,
): Generator<number[]> {
  const all = 2 ** holes.length - 1;
  // For each stroke: every load over wanted holes, with the set of holes that it bores.
  const ways = starts.map((start) => {
    const list: { load: number; bored: number }[] = [{ load: 0, bored: 0 }];
    for (let spindle = 0; spindle < spindles; spindle += 1) {
      const hole = holes.indexOf(start + spindle);
      if (hole < 0) continue;
      for (const { load, bored } of [...list]) list.push({ load: load | (1 << spindle), bored: bored | (1 << hole) });
    }
    return list;
  });
  // All that a stroke and those after it can bore: where that leaves a hole over, there is nothing to look for.
  const rest = [0];
  for (const list of [...ways].reverse()) rest.unshift(rest[0]! | list.reduce((sum, { bored }) => sum | bored, 0));
  yield* from(0, 0, []);

  function* from(stroke: number, done: number, loads: number[]): Generator<number[]> {
    if ((done | rest[stroke]!) !== all) return;
    if (stroke === ways.length) {
      if (done === all) yield loads;
      return;
    }
    for (const { load, bored } of ways[stroke]!) {
      if (!twice && (bored & done) !== 0) continue;
      yield* from(stroke + 1, done | bored, [...loads, load]);
    }
  }
}
