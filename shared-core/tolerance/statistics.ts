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
 * The value that the part p of all values do not pass, between two neighbours in proportion (type 7 of R. J. Hyndman and
 * Y. Fan, "Sample quantiles in statistical packages", The American Statistician 50 (1996)).
 * @param p From 0 to 1.
 */
export function quantile(values: readonly number[], p: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  const place = (sorted.length - 1) * p;
  const below = sorted[Math.floor(place)]!;
  const above = sorted[Math.ceil(place)]!;
  return below + (place - Math.floor(place)) * (above - below);
}
