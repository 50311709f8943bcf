import { half, type Micrometres } from '../length/units.js';
import type { Habits } from '../shop/model.js';

/** How the two kinds of shelf differ in what `at` means and in the play around them. */
export interface ShelfKind {
  /** From the underside up to the height that the job gives as `at`, for a shelf of this thickness. */
  readonly below: (thickness: Micrometres) => Micrometres;
  /** How far below its underside the holes of its pins reach. */
  readonly pins: Micrometres;
  /** Play at each end and at the back. */
  readonly play: Micrometres;
}

/** Joined to the uprights on its centre line. */
export const FIXED: ShelfKind = { below: half, pins: 0, play: 0 };

/** Lies on its pins: the pin hole's centre is half a hole below its underside. */
export function looseOn({ rowDiameter, shelfGap }: Habits): ShelfKind {
  return { below: () => -half(rowDiameter), pins: rowDiameter, play: shelfGap };
}

/** Where the height that the job gives lies in a shelf: so much of it is below, so much above. */
export interface ShelfBody {
  readonly below: Micrometres;
  /** How far down from there anything of it reaches: its underside, or the holes of its pins. */
  readonly reach: Micrometres;
  readonly above: Micrometres;
}

export function bodyOf(kind: ShelfKind, thickness: Micrometres): ShelfBody {
  const below = kind.below(thickness);
  return { below, reach: below + kind.pins, above: thickness - below };
}
