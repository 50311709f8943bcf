/**
 * Moves places as little as can be (least sum of squares) so that neighbours stand at least `gap` apart, keeping their
 * order. `wanted` ascending. Pooling of neighbours that violate the order (isotonic regression), over wanted - index * gap.
 */
export function spread(wanted: readonly number[], gap: number): number[] {
  const pools: { sum: number; count: number }[] = [];
  wanted.forEach((place, index) => {
    pools.push({ sum: place - index * gap, count: 1 });
    for (;;) {
      const last = pools.at(-1)!;
      const before = pools.at(-2);
      if (before === undefined || before.sum / before.count <= last.sum / last.count) break;
      before.sum += last.sum;
      before.count += last.count;
      pools.pop();
    }
  });
  return pools
    .flatMap(({ sum, count }) => Array.from({ length: count }, () => sum / count))
    .map((place, index) => place + index * gap);
}
