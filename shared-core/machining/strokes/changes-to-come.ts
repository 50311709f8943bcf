import type { Cover } from './cover.js';
import type { Row } from './request.js';

/**
 * For each stroke and each start it may have: spindles that must change in the strokes after it, at least. Counts, for
 * each pair of strokes, the columns where one spindle is loaded and the other empty whatever the other strokes are, and
 * takes the cheapest way along the row.
 */
export function changesToCome(row: Row, cover: Cover): ReadonlyMap<number, number>[] {
  const { holes, spindles, starts } = row;
  const wanted = new Set(holes);
  const come: Map<number, number>[] = Array.from({ length: cover.strokes }, () => new Map<number, number>());
  for (let i = cover.strokes - 1; i >= 0; i -= 1) {
    for (const start of starts) {
      if (start < cover.earliest[i]! || start > cover.latest[i]!) continue;
      if (i === cover.strokes - 1) {
        come[i]!.set(start, 0);
        continue;
      }
      const nextHole = holes.find((hole) => hole >= start + spindles) ?? -Infinity;
      let least = Infinity;
      for (const [next, after] of come[i + 1]!) {
        if (next <= start || next > nextHole || after >= least) continue;
        least = Math.min(least, after + certainChanges(i, start, next));
      }
      if (least < Infinity) come[i]!.set(start, least);
    }
  }
  return come;

  function certainChanges(i: number, start: number, next: number): number {
    const ownFrom = i === 0 ? -Infinity : cover.latest[i - 1]! + spindles;
    const ownTo = i + 2 === cover.strokes ? Infinity : cover.earliest[i + 2]!;
    let changes = 0;
    for (let column = 0; column < spindles; column += 1) {
      const a = start + column;
      const b = next + column;
      const aLoaded = wanted.has(a) ? a >= ownFrom && a < next : false;
      const bLoaded = wanted.has(b) ? b >= start + spindles && b < ownTo : false;
      if ((aLoaded && !wanted.has(b)) || (bLoaded && !wanted.has(a))) changes += 1;
    }
    return changes;
  }
}
