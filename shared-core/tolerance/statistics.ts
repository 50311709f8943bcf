/** Of a list with at least one value. */
export function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

/** Standard deviation of the values themselves: the mean square is taken over all of them. */
export function deviation(values: readonly number[]): number {
  const middle = mean(values);
  return Math.sqrt(mean(values.map((value) => (value - middle) ** 2)));
}

/**
 * The least value that at least the part p of all values do not pass (the inverse of the empirical distribution; type 1 of
 * Hyndman and Fan, "Sample quantiles in statistical packages", The American Statistician 50 (1996)).
 * @param p Over 0, at most 1.
 */
export function quantile(values: readonly number[], p: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.max(0, Math.ceil(p * sorted.length) - 1)]!;
}
