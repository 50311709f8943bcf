/** Every order of 0..n-1, one by one, in the order of the dictionary. */
export function* permutations(n: number): Generator<readonly number[]> {
  const order = Array.from({ length: n }, (_, index) => index);
  for (;;) {
    yield order;
    let i = n - 2;
    while (i >= 0 && order[i]! > order[i + 1]!) i -= 1;
    if (i < 0) return;
    let j = n - 1;
    while (order[j]! < order[i]!) j -= 1;
    [order[i], order[j]] = [order[j]!, order[i]!];
    order.splice(i + 1, n, ...order.slice(i + 1).reverse());
  }
}

/** Cost of an order, summed here by hand and not by the code under test. */
export function costOf(
  cost: readonly (readonly number[])[],
  order: readonly number[],
  options: { closed?: boolean; start?: readonly number[] } = {},
): number {
  let total = order.length > 0 ? (options.start?.[order[0]!] ?? 0) : 0;
  for (let p = 1; p < order.length; p += 1) total += cost[order[p - 1]!]![order[p]!]!;
  if (options.closed === true && order.length > 1) total += cost[order[order.length - 1]!]![order[0]!]!;
  return total;
}

export function obeys(order: readonly number[], before: readonly (readonly [number, number])[]): boolean {
  return before.every(([i, j]) => order.indexOf(i) < order.indexOf(j));
}

/** The first cheapest order, by trying all. Null where none obeys. */
export function cheapest(
  cost: readonly (readonly number[])[],
  options: { closed?: boolean; start?: readonly number[]; before?: readonly (readonly [number, number])[] } = {},
): { order: number[]; cost: number } | null {
  let best: { order: number[]; cost: number } | null = null;
  for (const order of permutations(cost.length)) {
    if (options.closed === true && order[0] !== 0) break;
    if (!obeys(order, options.before ?? [])) continue;
    const total = costOf(cost, order, options);
    if (best === null || total < best.cost) best = { order: [...order], cost: total };
  }
  return best;
}
