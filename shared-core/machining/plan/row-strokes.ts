import type { Derived } from '../../derived/derived.js';
import { planStrokes, type StrokeProblem } from '../strokes/index.js';

/** One descent along a row, in pitches on the row's grid. */
export interface RowStroke {
  /** Where the first spindle stands. */
  readonly start: number;
  readonly loaded: readonly boolean[];
  /** The places bored, ascending. */
  readonly bores: readonly number[];
}

export interface RowRequest {
  /** Places that want a hole, ascending, the first one 0. */
  readonly holes: readonly number[];
  readonly spindles: number;
  /** Where the first spindle can stand. */
  readonly starts: readonly number[];
  readonly meetsHolesTwice: boolean;
  /** Whether a loaded spindle stands clear of the panel at a place. */
  readonly isAir: (place: number) => boolean;
}

/**
 * The strokes of one row, in one or two ways, the better first. One is the plan with the fewest strokes and changes of bits in
 * which every spindle over no hole is empty. The other, for an unbroken row, keeps every spindle loaded and goes on by whole
 * heads; what is past the row in the last stroke stands in the air past the end of the panel. That has as few strokes as
 * holes by spindles allow and no change, and its bits serve rows of any length: the first is left out where it needs a change.
 */
export function rowStrokes(request: RowRequest, derived: Derived): readonly (readonly RowStroke[])[] | StrokeProblem {
  const { holes, spindles, starts, meetsHolesTwice } = request;
  const wanted = { holes, spindles, starts, meetsHolesTwice };
  // The panels of a job share few rows, and a long row takes milliseconds.
  const plan = derived.answer(planStrokes, wanted, JSON.stringify(wanted));
  const full = fullStrokes(request);
  if (plan.kind !== 'plan') return full === null ? plan : [full];
  if (full === null) return [plan.strokes];
  return plan.toolChanges === 0 ? [plan.strokes, full] : [full];
}

function fullStrokes({ holes, spindles, starts, isAir }: RowRequest): readonly RowStroke[] | null {
  const count = holes.length;
  if (count <= spindles || holes.at(-1) !== count - 1) return null;
  const strokes = Array.from({ length: Math.ceil(count / spindles) }, (_, index) => index * spindles);
  const last = (strokes.at(-1) ?? 0) + spindles;
  for (let place = count; place < last; place += 1) if (!isAir(place)) return null;
  if (strokes.some((start) => !starts.includes(start))) return null;
  return strokes.map((start) => ({
    start,
    loaded: new Array<boolean>(spindles).fill(true),
    bores: holes.slice(start, start + spindles),
  }));
}
