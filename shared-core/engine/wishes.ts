import type { WantedFindings } from '../findings/wanted.js';
import type { LengthWish } from '../length/reader.js';

/** What the reader of all that is told of a file wants told otherwise than it would be. */
export interface Wishes {
  /** Null for every length in the unit of its file. */
  readonly lengths: LengthWish | null;
  readonly findings: WantedFindings;
}

/** Nothing: everything is told as it is. */
export const NO_WISHES: Wishes = { lengths: null, findings: new Map() };
