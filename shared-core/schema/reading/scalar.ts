import type { Repair } from '../../document/finding.js';
import type { Path, Place } from '../../document/place.js';
import type { TreeNode } from '../../document/tree.js';
import { say } from '../messages.js';
import { nearestName } from '../nearest.js';
import type { ChoiceSchema, CountSchema, NumberSchema, Schema } from '../schema.js';
import { subjectAt } from '../subject.js';
import { wantedOf } from '../wanted.js';
import { located, type At, type Context } from './context.js';
import { replacedBy } from './formerly.js';
import { readLength } from './length.js';
import { firstLineOf, isNothing } from './shape.js';
import { readSpan } from './span.js';

type ScalarSchema = Exclude<Schema, { type: 'either' | 'record' | 'named' | 'list' }>;

const YES: ReadonlySet<string> = new Set(['yes', 'true', 'on']);
const NO: ReadonlySet<string> = new Set(['no', 'false', 'off']);

/** One value, be it written or not. */
export function readScalar(context: Context, schema: ScalarSchema, node: TreeNode | null, at: At): unknown {
  if (node === null || isNothing(node)) {
    if (schema.type === 'text') return located('', node?.place ?? at.place, at.path);
    return context.wrong(
      node !== null && node.place.end > node.place.start ? node.place : at.place,
      say.noValue({ subject: subjectAt(at.path), wanted: wantedOf(schema) }),
    );
  }
  if (node.kind !== 'scalar') {
    const asked = { subject: subjectAt(at.path), wanted: wantedOf(schema) };
    return context.wrong(firstLineOf(node), node.kind === 'map' ? say.mapForValue(asked) : say.listForValue(asked));
  }
  const value = valueOf(context, schema, node.text.trim(), node.place, at.path);
  return value === null ? null : located(value, node.place, at.path);
}

function valueOf(context: Context, schema: ScalarSchema, text: string, place: Place, path: Path): unknown {
  switch (schema.type) {
    case 'length':
      return readLength(context, schema, text, place, path);
    case 'span':
      return readSpan(context, schema, text, place, path);
    case 'count':
    case 'number':
      return readNumber(context, schema, text, place, path);
    case 'flag':
      if (YES.has(text.toLowerCase())) return true;
      if (NO.has(text.toLowerCase())) return false;
      return context.wrong(place, say.notValid({ subject: subjectAt(path), text, wanted: wantedOf(schema) }));
    case 'choice':
      return readChoice(context, schema, text, place, path);
    case 'text':
    case 'name':
      return text;
  }
}

function readNumber(
  context: Context,
  schema: CountSchema | NumberSchema,
  text: string,
  place: Place,
  path: Path,
): number | null {
  const form = schema.type === 'count' ? /^[-+]?\d{1,15}$/ : /^[-+]?(?:\d{1,15}(?:\.\d{0,15})?|\.\d{1,15})$/;
  const { type, min, max } = schema;
  const of = schema.type === 'number' ? schema.of : null;
  const subject = subjectAt(path);
  if (!form.test(text)) {
    const figures = { subject, text, wanted: wantedOf(schema) };
    return context.wrong(place, type === 'count' ? say.notAWholeNumber(figures) : say.notANumber(figures));
  }
  const value = Number(text);
  if (value < min) return context.wrong(place, say.numberBelow({ subject, text, min, max, of }));
  if (value > max) return context.wrong(place, say.numberAbove({ subject, text, min, max, of }));
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
  const repairs = meantBy(schema, text).map((word, _, { length }): Repair => ({
    title: say.write({ text: word }),
    changes: [context.set(path, word)],
    preferred: length === 1,
  }));
  return context.wrong(place, say.notValid({ subject: subjectAt(path), text, wanted: wantedOf(schema) }), repairs);
}

/** The words that a word which is none of them most likely stands for. */
function meantBy({ options, tried = {} }: ChoiceSchema<string>, text: string): readonly string[] {
  const word = text.toLowerCase();
  if (Object.hasOwn(tried, word)) return tried[word]!;
  const near = nearestName(text, Object.keys(options));
  return near === null ? [] : [near];
}
