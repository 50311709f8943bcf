import type { Repair } from '../../document/finding.js';
import type { Path, Place } from '../../document/place.js';
import type { Micrometres } from '../../length/units.js';
import { say } from '../messages.js';
import type { LengthSchema, SpanSchema } from '../schema.js';
import { subjectAt } from '../subject.js';
import { errorAt } from '../tell.js';
import type { Context } from './context.js';

/** What was most likely meant, and how to write it. */
export interface Meant {
  readonly text: string;
  readonly repairs: readonly Repair[];
}

/** True where a length lies within the bounds of its schema; else that is told. */
export function isBounded(
  context: Context,
  { min, max }: LengthSchema | SpanSchema,
  value: Micrometres,
  place: Place,
  path: Path,
  meant: Meant | null = null,
): boolean {
  if (value >= min && value <= max) return true;
  const figures = { subject: subjectAt(path), value, min, max, meant: meant?.text ?? null };
  const message = value < min ? say.lengthBelow(figures) : say.lengthAbove(figures);
  context.fault(errorAt('length-impossible', place, message, { repairs: meant?.repairs ?? [] }));
  return false;
}
