import type { Micrometres } from '../length/units.js';
import type { JobCarcass } from './model.js';

/** No higher is a plinth that runs through under several carcasses (common practice, no source). */
const HIGHEST_PLINTH: Micrometres = 250_000;

/** Whether it hangs. One of a kind that stands on the floor may stand on a plinth that is not its own. */
export function isAboveFloor({ kind, place }: Pick<JobCarcass, 'kind' | 'place'>): boolean {
  const hangs = kind.value === 'wall' || kind.value === 'open';
  return place.aboveFloor.value > (hangs ? 0 : HIGHEST_PLINTH);
}
