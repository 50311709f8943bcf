import type { Path, Place } from '../../document/place.js';
import { parseLength } from '../../length/parse.js';
import type { Micrometres } from '../../length/units.js';
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
    const { message, instead } = parsed;
    const repairs =
      instead !== undefined && context.fits(schema, instead, place)
        ? [preferred(`Write ${instead}`, context.set(path, instead))]
        : [];
    return context.fault(errorAt('length-impossible', place, message, { repairs }));
  }
  const meant = inOtherUnit(context, schema, text, place, path);
  return isBounded(context, schema, parsed.value, place, meant) ? parsed.value : null;
}

/** What a bare number out of bounds says in the other unit, where it fits; null for any other text. */
function inOtherUnit(context: Context, schema: LengthSchema, text: string, place: Place, path: Path): Meant | null {
  const [other, name] = context.unit === 'mm' ? (['in', 'inches'] as const) : (['mm', 'millimetres'] as const);
  const written = `${text} ${other}`;
  if (!/[\d.]$/.test(text) || !context.fits(schema, written, place)) return null;
  const repair = { title: `Write ${written}`, changes: [context.set(path, written)], preferred: false };
  return { words: `If ${name} are meant, write ${written}.`, repairs: [repair] };
}
