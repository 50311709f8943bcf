import type { Micrometres } from './units.js';

/** Places on a pitch: offset + k * pitch. */
export interface Grid {
  readonly offset: Micrometres;
  readonly pitch: Micrometres;
}

/** The places of a grid for k = 0 .. count - 1. */
export interface GridLine extends Grid {
  readonly count: number;
}

/** The k-th place, counted from 0. */
export function placeAt({ offset, pitch }: Grid, k: number): Micrometres {
  return offset + k * pitch;
}

/** Every place of a line, from the first. */
export function placesOf(line: GridLine): readonly Micrometres[] {
  return Array.from({ length: line.count }, (_, k) => placeAt(line, k));
}

/** The last place of a line. */
export function lastPlace(line: GridLine): Micrometres {
  return placeAt(line, line.count - 1);
}

/** The k of a place; a fraction where the place is not on the grid. */
export function stepsTo({ offset, pitch }: Grid, place: Micrometres): number {
  return (place - offset) / pitch;
}

/** The places of a grid from its offset to a limit, both included. */
export function lineTo({ offset, pitch }: Grid, limit: Micrometres): GridLine {
  return { offset, pitch, count: Math.max(0, Math.floor((limit - offset) / pitch) + 1) };
}
