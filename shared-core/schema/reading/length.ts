import type { Path, Place } from '../../document/place.js';
import { parseLength } from '../../length/parse.js';
import type { Micrometres } from '../../length/units.js';
import { say } from '../messages.js';
import type { LengthSchema } from '../schema.js';
import { errorAt, preferred } from '../tell.js';
import { isBounded, type Meant } from './bounds.js';
import type { Context } from './context.js';

/** One length within its bounds. */
export function readLength(
  context: Context,
  schema: LengthSchema,
  text: string,
  place: Place,
  path: Path,
): Micrometres | null {
  const parsed = parseLength(text, context.unit);
  if (!parsed.ok) {
    const { fault } = parsed;
    const { instead } = fault;
    const repairs =
      instead !== null && context.fits(schema, instead, place)
        ? [preferred(say.write({ text: instead }), context.set(path, instead))]
        : [];
    return context.fault(
      errorAt('length-impossible', place, say.notALength({ fault, unit: context.unit }), { repairs }),
    );
  }
  const meant = inOtherUnit(context, schema, text, place, path);
  return isBounded(context, schema, parsed.value, place, path, meant) ? parsed.value : null;
}

/** What a bare number out of bounds says in the other unit, where it fits; null for any other text. */
function inOtherUnit(context: Context, schema: LengthSchema, text: string, place: Place, path: Path): Meant | null {
  const written = `${text} ${context.unit === 'mm' ? 'in' : 'mm'}`;
  if (!/[\d.]$/.test(text) || !context.fits(schema, written, place)) return null;
  const repair = { title: say.write({ text: written }), changes: [context.set(path, written)], preferred: false };
  return { text: written, repairs: [repair] };
}
