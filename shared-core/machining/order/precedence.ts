/**
 * Which nodes must come before which, closed under "before what comes before". Home (node 0) takes no part: it is
 * before everything by construction.
 */
export interface Precedence {
  readonly size: number;
  /** `before[i * size + j]` is 1 where i must come before j. */
  readonly before: Uint8Array;
  /** For each node, all nodes that must come before it. */
  readonly earlier: readonly (readonly number[])[];
}

/** Pairs [i, j]: i before j. Null where the pairs run in a circle, so that no order obeys them. */
export function closePrecedence(size: number, pairs: Iterable<readonly [number, number]>): Precedence | null {
  const before = new Uint8Array(size * size);
  for (const [i, j] of pairs) before[i * size + j] = 1;
  for (let via = 0; via < size; via += 1) {
    for (let i = 0; i < size; i += 1) {
      if (before[i * size + via] === 0) continue;
      for (let j = 0; j < size; j += 1) if (before[via * size + j] === 1) before[i * size + j] = 1;
    }
  }
  const earlier: number[][] = [];
  for (let j = 0; j < size; j += 1) {
    if (before[j * size + j] === 1) return null;
    const list: number[] = [];
    for (let i = 0; i < size; i += 1) if (before[i * size + j] === 1) list.push(i);
    earlier.push(list);
  }
  return { size, before, earlier };
}

/**
 * Arcs that no obedient route can use: j -> i where i comes before j; i -> k where some j must stand between; home to a
 * node that waits for another; and a node that another waits for to home. Set to Infinity in `cost`.
 */
export function banImpossibleArcs(precedence: Precedence, cost: Float64Array): void {
  const { size, before } = precedence;
  for (let i = 1; i < size; i += 1) {
    for (let j = 1; j < size; j += 1) {
      if (before[i * size + j] === 0) continue;
      cost[j * size + i] = Infinity;
      cost[j] = Infinity;
      cost[i * size] = Infinity;
      for (let k = 1; k < size; k += 1) if (before[j * size + k] === 1) cost[i * size + k] = Infinity;
    }
  }
}

/** The first pair of places (p, q) in the route, p < q, where what stands at q must come before what stands at p. */
export function firstViolation(precedence: Precedence, route: ArrayLike<number>): { p: number; q: number } | null {
  const { size, before } = precedence;
  for (let q = 2; q < size; q += 1) {
    for (let p = q - 1; p > 0; p -= 1) if (before[route[q]! * size + route[p]!] === 1) return { p, q };
  }
  return null;
}
