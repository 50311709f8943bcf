/**
 * Play that the dowels need along the joint: half the difference between any two misses, since the panel can be slid to
 * halve it. The greatest of them is the least that will do.
 */
export function spreads(misses: readonly number[]): number[] {
  return misses.flatMap((miss, i) => misses.slice(0, i).map((other) => (miss - other) / 2));
}

/**
 * Play that they need across it: half of what any three misses depart from a straight line, since the panel can be slid and
 * turned. The greatest of them is the least that will do (the alternation theorem of Chebyshev for a straight line).
 */
export function bends(stations: readonly number[], misses: readonly number[]): number[] {
  const order = [...stations.keys()].sort((i, j) => stations[i]! - stations[j]!);
  const bent: number[] = [];
  for (let i = 0; i < order.length; i += 1) {
    for (let k = i + 2; k < order.length; k += 1) {
      for (let j = i + 1; j < k; j += 1) {
        const [a, b, c] = [order[i]!, order[j]!, order[k]!];
        const part = (stations[b]! - stations[a]!) / (stations[c]! - stations[a]!);
        bent.push((misses[b]! - misses[a]! - part * (misses[c]! - misses[a]!)) / 2);
      }
    }
  }
  return bent;
}
