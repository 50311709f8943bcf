import type { Path, Place } from '../../document/place.js';
import type { TreeNode } from '../../document/tree.js';
import { expected } from '../expected.js';
import { nearestName } from '../nearest.js';
import type { ChoiceSchema, CountSchema, NumberSchema, Schema } from '../schema.js';
import { preferred, quoted } from '../tell.js';
import { located, type At, type Context } from './context.js';
import { replacedBy } from './formerly.js';
import { readLength } from './length.js';
import { firstLineOf, isNothing } from './shape.js';
import { readSpan } from './span.js';

type ScalarSchema = Exclude<Schema, { type: 'either' | 'record' | 'named' | 'list' }>;

const YES = new Set(['yes', 'true', 'on']);
const NO = new Set(['no', 'false', 'off']);

/** One value, be it written or not. */
export function readScalar(context: Context, schema: ScalarSchema, node: TreeNode | null, at: At): unknown {
  if (node === null || isNothing(node)) {
    if (schema.type === 'text') return located('', node?.place ?? at.place, at.path);
    return context.wrong(
      node !== null && node.place.end > node.place.start ? node.place : at.place,
      `There is no value here. ${expected(schema, context.unit)}.`,
    );
  }
  if (node.kind !== 'scalar') {
    const what = node.kind === 'map' ? 'a map of keys' : 'a list';
    return context.wrong(
      firstLineOf(node),
      `This is ${what}, where one value belongs. ${expected(schema, context.unit)}.`,
    );
  }
  const value = valueOf(context, schema, node.text.trim(), node.place, at.path);
  return value === null ? null : located(value, node.place, at.path);
}

function valueOf(context: Context, schema: ScalarSchema, text: string, place: Place, path: Path): unknown {
  switch (schema.type) {
    case 'length':
      return readLength(context, schema, text, place, path);
    case 'span':
      return readSpan(context, schema, text, place);
    case 'count':
    case 'number':
      return readNumber(context, schema, text, place);
    case 'flag':
      if (YES.has(text.toLowerCase())) return true;
      if (NO.has(text.toLowerCase())) return false;
      return context.wrong(place, `${quoted(text)} is neither yes nor no. ${expected(schema, context.unit)}.`);
    case 'choice':
      return readChoice(context, schema, text, place, path);
    case 'text':
    case 'name':
      return text;
  }
}

function readNumber(context: Context, schema: CountSchema | NumberSchema, text: string, place: Place): number | null {
  const form = schema.type === 'count' ? /^[-+]?\d{1,15}$/ : /^[-+]?(?:\d{1,15}(?:\.\d{0,15})?|\.\d{1,15})$/;
  const wanted = `${expected(schema, context.unit)}.`;
  if (!form.test(text))
    return context.wrong(
      place,
      `${quoted(text)} is not a ${schema.type === 'count' ? 'whole number' : 'number'}. ${wanted}`,
    );
  const value = Number(text);
  if (value < schema.min) return context.wrong(place, `${text} is less than the least, ${schema.min}. ${wanted}`);
  if (value > schema.max) return context.wrong(place, `${text} is more than the greatest, ${schema.max}. ${wanted}`);
  return value === 0 ? 0 : value;
}

function readChoice(
  context: Context,
  schema: ChoiceSchema<string>,
  text: string,
  place: Place,
  path: Path,
): string | null {
  if (Object.hasOwn(schema.options, text)) return text;
  const now = replacedBy(context, schema.formerly, text, place, (word) => context.set(path, word));
  if (now !== null) return now;
  const words = Object.keys(schema.options);
  const near = nearestName(text, words);
  const repairs = near === null ? [] : [preferred(`Write ${near}`, context.set(path, near))];
  return context.wrong(
    place,
    `${quoted(text)} is none of the words that can stand here: ${words.join(', ')}.`,
    repairs,
  );
}
