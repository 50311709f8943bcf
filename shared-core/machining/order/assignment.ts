/**
 * The assignment problem: give every row its own column at least total cost.
 *
 * Shortest augmenting paths with dual prices (Kuhn 1955, Munkres 1957; in the form of Jonker and Volgenant 1987),
 * O(n^3). `cost` is size x size, row by row, Infinity where a pair is not allowed. With whole costs all prices are whole.
 *
 * The prices prove the result: `rowPrice[i] + columnPrice[j] <= cost[i][j]` everywhere, with equality on the pairs
 * chosen. Dropping the demand that a round trip be connected leaves this problem, so its cost is a lower bound.
 * Null where no assignment exists.
 */
export function assign(
  size: number,
  cost: Float64Array,
): { columnOf: Int32Array; rowPrice: Float64Array; columnPrice: Float64Array; cost: number } | null {
  const rowPrice = new Float64Array(size);
  const columnPrice = new Float64Array(size);
  const rowOf = new Int32Array(size).fill(-1);
  const columnOf = new Int32Array(size).fill(-1);
  const distance = new Float64Array(size);
  const via = new Int32Array(size);
  const reached = new Uint8Array(size);

  for (let start = 0; start < size; start += 1) {
    distance.fill(Infinity);
    reached.fill(0);
    let row = start;
    let entered = 0;
    let free = -1;
    while (free < 0) {
      let nearest = -1;
      for (let column = 0; column < size; column += 1) {
        if (reached[column] === 1) continue;
        const total = entered + cost[row * size + column]! - rowPrice[row]! - columnPrice[column]!;
        if (total < distance[column]!) {
          distance[column] = total;
          via[column] = row;
        }
        if (nearest < 0 || distance[column]! < distance[nearest]!) nearest = column;
      }
      if (nearest < 0 || distance[nearest] === Infinity) return null;
      reached[nearest] = 1;
      entered = distance[nearest]!;
      if (rowOf[nearest]! < 0) free = nearest;
      else row = rowOf[nearest]!;
    }
    rowPrice[start]! += entered;
    for (let column = 0; column < size; column += 1) {
      if (reached[column] === 0 || column === free) continue;
      columnPrice[column]! -= entered - distance[column]!;
      rowPrice[rowOf[column]!]! += entered - distance[column]!;
    }
    for (let column = free; ;) {
      const from = via[column]!;
      const next = columnOf[from]!;
      rowOf[column] = from;
      columnOf[from] = column;
      if (from === start) break;
      column = next;
    }
  }

  let total = 0;
  for (let row = 0; row < size; row += 1) total += cost[row * size + columnOf[row]!]!;
  return { columnOf, rowPrice, columnPrice, cost: total };
}
