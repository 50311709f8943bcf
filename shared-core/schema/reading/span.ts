import type { Path, Place } from '../../document/place.js';
import { parseLength } from '../../length/parse.js';
import type { Micrometres } from '../../length/units.js';
import type { Message } from '../../words/message.js';
import { say } from '../messages.js';
import type { Span, SpanSchema } from '../schema.js';
import { subjectAt } from '../subject.js';
import { errorAt, preferred } from '../tell.js';
import { wantedOf } from '../wanted.js';
import { isBounded } from './bounds.js';
import type { Context } from './context.js';

/** Two lengths, `20 to 80`; one alone is a span of no width, or the maximum where the schema says so. */
export function readSpan(context: Context, schema: SpanSchema, text: string, place: Place, path: Path): Span | null {
  const { unit } = context;
  const fault = (message: Message): null => context.fault(errorAt('length-impossible', place, message));
  const parts = text.split(/\s+to\s+/i);
  const [first, second] = parts;
  if (first === undefined || parts.length > 2)
    return fault(say.notASpan({ subject: subjectAt(path), text, wanted: wantedOf(schema) }));
  const dashed = second === undefined ? joinedByDash(context, schema, first, place) : null;
  if (dashed !== null) {
    const repairs = [preferred(say.write({ text: dashed }), context.set(path, dashed))];
    return context.fault(errorAt('length-impossible', place, say.spanWithoutTo({ text, meant: dashed }), { repairs }));
  }
  const last = second ?? first;
  // In `20 to 80 mm` the unit counts for both.
  const unitOfBoth = /mm$/i.test(last) ? 'mm' : /(in|inch|inches|")$/i.test(last) ? 'in' : unit;
  const min = parseLength(first, unitOfBoth);
  const max = parseLength(last, unit);
  if (!min.ok) return fault(say.spanOfNoLengths({ fault: min.fault, unit, max: schema.max }));
  if (!max.ok) return fault(say.spanOfNoLengths({ fault: max.fault, unit, max: schema.max }));
  const least = second === undefined && schema.alone === 'maximum' ? schema.min : min.value;
  if (min.value > max.value) {
    fault(say.spanBackwards({ from: min.value, to: max.value }));
    return mended(context, schema, max.value, min.value);
  }
  if (!isBounded(context, schema, min.value, place, path) || !isBounded(context, schema, max.value, place, path))
    return mended(context, schema, least, max.value);
  return { min: least, max: max.value };
}

/** `0-300` or `0..300` as it is to be written, where that is a span; a whole length such as `1-3/4` is none. */
function joinedByDash(context: Context, schema: SpanSchema, text: string, place: Place): string | null {
  if (text.length > 60 || parseLength(text, context.unit).ok) return null;
  const ends = /^(.*[^\s.–—-])\s*(?:[-–—]|\.\.+|…)\s*(.+)$/.exec(text);
  if (ends === null) return null;
  const meant = ends.slice(1).join(' to ');
  return context.fits(schema, meant, place) ? meant : null;
}

/** What of a span lies within its bounds, where it is wanted. */
function mended({ mendSpans }: Context, schema: SpanSchema, from: Micrometres, to: Micrometres): Span | null {
  const min = Math.max(from, schema.min);
  const max = Math.min(to, schema.max);
  return mendSpans && min <= max ? { min, max } : null;
}
