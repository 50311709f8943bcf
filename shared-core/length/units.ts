/** A length, an angle-free distance or a position: a whole number of micrometres (1 mm = 1000). */
export type Micrometres = number;

/** Unit in which a file writes bare numbers and in which lengths are shown back to its owner. */
export type Unit = 'mm' | 'in';

export const MICROMETRES_PER_MM = 1000;
/** The international inch is exactly 25.4 mm (International Yard and Pound agreement, 1959; ISO 80000-3). */
export const MICROMETRES_PER_INCH = 25400;

/**
 * Half of a thickness, rounded down to a whole micrometre. Every half-thickness in the core comes from here, so the two
 * bores of a joint are rounded alike and meet exactly.
 */
export function half(length: Micrometres): Micrometres {
  return Math.floor(length / 2);
}
