import { MICROMETRES_PER_MM, type Micrometres } from '../../length/units.js';

/** Drawings are in millimetres. */
export const mm = (length: Micrometres): number => length / MICROMETRES_PER_MM;

/** Reduction scales of ISO 5455. */
export const SCALES = [1, 2, 5, 10, 20, 50] as const;
/** The scale of ISO 5455 at which `size` millimetres take no more than `room` of paper. */
export function scaleFor(size: number, room: number): number {
  return SCALES.find((scale) => size / scale <= room) ?? SCALES.at(-1)!;
}
