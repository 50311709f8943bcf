import type { Place } from '../../document/place.js';
import { parseLength } from '../../length/parse.js';
import { showLength } from '../../length/show.js';
import type { Micrometres } from '../../length/units.js';
import { expected, spanExample } from '../expected.js';
import type { Span, SpanSchema } from '../schema.js';
import { errorAt, quoted } from '../tell.js';
import { isBounded } from './bounds.js';
import type { Context } from './context.js';

/** Two lengths, `20 to 80`; one alone is a span of no width. */
export function readSpan(context: Context, schema: SpanSchema, text: string, place: Place): Span | null {
  const { unit } = context;
  const fault = (message: string): null => context.fault(errorAt('length-impossible', place, message));
  const parts = text.split(/\s+to\s+/i);
  const [first, second] = parts;
  if (first === undefined || parts.length > 2)
    return fault(`${quoted(text)} is not a span. ${expected(schema, unit)}.`);
  const last = second ?? first;
  // In `20 to 80 mm` the unit counts for both.
  const unitOfBoth = /mm$/i.test(last) ? 'mm' : /(in|inch|inches|")$/i.test(last) ? 'in' : unit;
  const min = parseLength(first, unitOfBoth);
  const max = parseLength(last, unit);
  if (!min.ok || !max.ok) {
    const message = !min.ok ? min.message : !max.ok ? max.message : '';
    return fault(`${message} A span is two of them: ${spanExample(schema, unit)}.`);
  }
  if (min.value > max.value) {
    fault(
      `The span runs from ${showLength(min.value, unit)} down to ${showLength(max.value, unit)}. Write the smaller length first.`,
    );
    return mended(context, schema, max.value, min.value);
  }
  if (!isBounded(context, schema, min.value, place) || !isBounded(context, schema, max.value, place))
    return mended(context, schema, min.value, max.value);
  return { min: min.value, max: max.value };
}

/** What of a span lies within its bounds, where it is wanted. */
function mended({ mendSpans }: Context, schema: SpanSchema, from: Micrometres, to: Micrometres): Span | null {
  const min = Math.max(from, schema.min);
  const max = Math.min(to, schema.max);
  return mendSpans && min <= max ? { min, max } : null;
}
