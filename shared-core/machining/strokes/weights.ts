import type { Row } from './request.js';

/**
 * The things to keep few, each weighing more than all that come after it can sum to: one whole number then stands for
 * the whole list, and sums of it compare as the lists do.
 */
export interface Weights {
  /** A spindle loaded or emptied between two strokes. */
  readonly change: number;
  /** A spindle loaded or emptied before the first stroke; 0 where it is not known how the row finds the head. */
  readonly loading: number;
  /** One pitch of index move. */
  readonly travel: number;
  /** A hole met twice. */
  readonly twice: number;
}

/** The weights for one row, as small as they can be. */
export function weigh(row: Row): Weights {
  const twice = 1;
  const travel = twice * (row.holes.length + 1);
  const loading = travel * (row.starts[row.starts.length - 1]! - row.starts[0]! + 1);
  return { twice, travel, loading: row.loaded === null ? 0 : loading, change: loading * (row.spindles + 1) };
}
