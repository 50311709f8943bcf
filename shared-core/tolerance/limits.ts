import type { Micrometres } from '../length/units.js';
import type { Tolerances } from '../shop/model.js';
import type { FigureName } from './assemble.js';
import type { Cause } from './spread.js';
import type { JointTolerance } from './tolerance.js';

/** A figure that can pass what the shop allows. */
export interface OverLimit {
  readonly joint: string;
  readonly figure: FigureName;
  readonly limit: Micrometres;
  /** Whole micrometres. */
  readonly worst: Micrometres;
  readonly rootSumSquare: Micrometres;
  /** True where it is passed even by independent errors as they combine; else only where all fall the same way at once. */
  readonly asARule: boolean;
  /** What it comes from, the greatest first. */
  readonly causes: readonly Cause[];
}

/**
 * Which figures of a joint can pass the shop's limits. Offsets and steps count only where the panels are flush as drawn: a
 * shelf has no outside face that anything must be level with.
 */
export function overLimits(tolerance: JointTolerance, tolerances: Tolerances): readonly OverLimit[] {
  const limits: readonly (readonly [FigureName, Micrometres, boolean])[] = [
    ['front', tolerances.frontLimit, tolerance.frontFlush],
    ['step', tolerances.stepLimit, tolerance.stepFlush],
    ['gap', tolerances.gapLimit, true],
    ['play', tolerances.dowelPlay, true],
  ];
  return limits.flatMap(([figure, limit, counts]): OverLimit[] => {
    const { worst, rootSumSquare, causes } = tolerance[figure];
    if (!counts || worst <= limit) return [];
    const figures = { worst: Math.round(worst), rootSumSquare: Math.round(rootSumSquare) };
    return [{ joint: tolerance.joint, figure, limit, ...figures, asARule: rootSumSquare > limit, causes }];
  });
}
