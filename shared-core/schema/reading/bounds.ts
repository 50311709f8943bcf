import type { Repair } from '../../document/finding.js';
import type { Place } from '../../document/place.js';
import { showLength } from '../../length/show.js';
import type { Micrometres } from '../../length/units.js';
import { expected } from '../expected.js';
import type { LengthSchema, SpanSchema } from '../schema.js';
import { errorAt } from '../tell.js';
import type { Context } from './context.js';

/** What was most likely meant, in words and as repairs. */
export interface Meant {
  readonly words: string;
  readonly repairs: readonly Repair[];
}

/** True where a length lies within the bounds of its schema; else that is told. */
export function isBounded(
  context: Context,
  schema: LengthSchema | SpanSchema,
  value: Micrometres,
  place: Place,
  meant: Meant | null = null,
): boolean {
  if (value >= schema.min && value <= schema.max) return true;
  const { unit } = context;
  const side = value < schema.min ? 'less than' : 'more than';
  const bound =
    value < schema.min ? `the least, ${showLength(schema.min, unit)}` : `the greatest, ${showLength(schema.max, unit)}`;
  const message = `${showLength(value, unit)} is ${side} ${bound}. ${expected(schema, unit)}.${meant === null ? '' : ` ${meant.words}`}`;
  context.fault(errorAt('length-impossible', place, message, { repairs: meant?.repairs ?? [] }));
  return false;
}
