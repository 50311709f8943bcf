import type { Micrometres } from '../length/units.js';

/** How a carcass holds its back. */
export type BackHow = 'grooved' | 'rebated' | 'applied' | 'none';

/** How it does where nobody says. */
export const USUAL_BACK = 'grooved' satisfies BackHow;

/**
 * How much of the depth of a carcass a back takes from what stands in front of it.
 * @param inset from the back edge to a groove; only a grooved back stands in from there
 */
export function takenByBack(how: BackHow, thickness: Micrometres, inset: Micrometres): Micrometres {
  switch (how) {
    case 'none':
      return 0;
    case 'grooved':
      return thickness + inset;
    case 'rebated':
    case 'applied':
      return thickness;
  }
}
