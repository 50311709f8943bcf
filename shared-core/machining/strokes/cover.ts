import type { Row } from './request.js';

/** The fewest strokes that reach every hole, and between which starts each of them lies in any such plan. */
export interface Cover {
  readonly strokes: number;
  /** Counted along the row: the least and the greatest start of stroke i in any plan with this number of strokes. */
  readonly earliest: readonly number[];
  readonly latest: readonly number[];
}

/**
 * From the front: the first hole not yet reached must be reached, and the farthest start that still does reaches most of
 * what follows; so this gives the fewest strokes, each as late as it can be. From the rear, each as early as it can be.
 */
export function fewestStrokes(row: Row): Cover {
  const { holes, spindles, starts } = row;
  const latest: number[] = [];
  for (let reached = -Infinity; ;) {
    const hole = holes.find((place) => place > reached);
    if (hole === undefined) break;
    const start = starts.findLast((place) => place <= hole)!;
    latest.push(start);
    reached = start + spindles - 1;
  }
  const earliest: number[] = [];
  for (let reached = Infinity; ;) {
    const hole = holes.findLast((place) => place < reached);
    if (hole === undefined) break;
    const start = starts.find((place) => place > hole - spindles)!;
    earliest.unshift(start);
    reached = start;
  }
  return { strokes: latest.length, earliest, latest };
}
