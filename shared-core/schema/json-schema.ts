import { LENGTH_PATTERN } from '../length/parse.js';
import type { Path } from '../document/place.js';
import type { Micrometres } from '../length/units.js';
import { MICROMETRES_PER_INCH, MICROMETRES_PER_MM } from '../length/units.js';
import type { Fields, RecordSchema, Schema } from './schema.js';

export type Json = string | number | boolean | null | readonly Json[] | { readonly [key: string]: Json };
type JsonObject = Readonly<Record<string, Json>>;

/**
 * A JSON Schema (draft-07) of all that the reading accepts in shape, with the same sentences as descriptions, for editors
 * that know nothing else of these files. It sees neither the file's unit nor names: bounds are those that hold in both units.
 */
export function jsonSchema(schema: Schema, title: string, more: More = () => null): JsonObject {
  return { $schema: 'http://json-schema.org/draft-07/schema#', title, ...convert(schema, [], more) };
}

/**
 * What else the description of a key says. In the path a name of the owner's choosing is '*', and the place in a list 0; null
 * where there is nothing to add.
 */
type More = (path: Path) => string | null;

function convert(schema: Schema, path: Path, more: More): JsonObject {
  const words = more(path);
  return { description: words === null ? schema.about : `${schema.about} ${words}`, ...shape(schema, path, more) };
}

function shape(schema: Schema, path: Path, more: More): JsonObject {
  switch (schema.type) {
    case 'length':
      return { anyOf: [bareNumber(schema.min, schema.max), { type: 'string', pattern: anyCase(LENGTH_PATTERN) }] };
    case 'span': {
      const one = LENGTH_PATTERN.slice(1, -1);
      return {
        anyOf: [
          bareNumber(schema.min, schema.max),
          { type: 'string', pattern: anyCase(`^${one}(?:\\s+to\\s+${one})?$`) },
        ],
      };
    }
    case 'count':
      return quotable({ type: 'integer', minimum: schema.min, maximum: schema.max }, '^[-+]?\\d{1,15}$');
    case 'number':
      return quotable(
        { type: 'number', minimum: schema.min, maximum: schema.max },
        '^[-+]?(?:\\d{1,15}(?:\\.\\d{0,15})?|\\.\\d{1,15})$',
      );
    case 'flag':
      // yes, no, on and off are words to a reader of YAML 1.2 and booleans to one of 1.1.
      return { enum: [true, false, ...['yes', 'no', 'on', 'off'].flatMap(casesOf)] };
    case 'text':
      return { type: ['string', 'number', 'boolean', 'null'] };
    case 'name':
      return { type: ['string', 'number', 'boolean'] };
    case 'choice':
      return { oneOf: Object.entries(schema.options).map(([word, about]) => ({ const: word, description: about })) };
    case 'list':
      return { type: ['array', 'null'], items: convert(schema.item, [...path, 0], more), maxItems: schema.most };
    case 'named':
      return {
        type: ['object', 'null'],
        additionalProperties: convert(schema.item, [...path, '*'], more),
        propertyNames: { minLength: 1 },
      };
    case 'record':
      return recordShape(schema, path, more);
    case 'either':
      return { anyOf: schema.of.map((one) => convert(one, path, more)) };
  }
}

/** A number that may stand in quotes; its bounds are then left to the reading. */
function quotable(number: JsonObject, pattern: string): JsonObject {
  return { anyOf: [number, { type: 'string', pattern }] };
}

/** As people write a word: yes, Yes, YES. */
function casesOf(word: string): readonly string[] {
  return [word, `${word[0]!.toUpperCase()}${word.slice(1)}`, word.toUpperCase()];
}

/** A pattern that takes its units, and `to`, in either case: patterns of JSON Schema have no flags. */
function anyCase(pattern: string): string {
  return pattern.replace(/\b(?:mm|inches|inch|in|ft|to)\b/g, (word) =>
    word.replace(/./g, (letter) => `[${letter}${letter.toUpperCase()}]`),
  );
}

function recordShape(schema: RecordSchema<Fields>, path: Path, more: More): JsonObject {
  const fields = Object.entries(schema.fields);
  const required = fields.filter(([, field]) => field.required).map(([key]) => key);
  // A strict validator wants to see each key that is required among the properties beside.
  const named = (keys: readonly string[]): JsonObject =>
    Object.fromEntries(keys.map((key) => [key, { description: schema.fields[key]!.schema.about }]));
  return {
    type: required.length > 0 ? 'object' : ['object', 'null'],
    properties: Object.fromEntries(fields.map(([key, field]) => [key, convert(field.schema, [...path, key], more)])),
    ...(required.length > 0 &&
      (schema.standIn === undefined
        ? { required }
        : { anyOf: [required, [schema.standIn]].map((keys) => ({ properties: named(keys), required: keys })) })),
    additionalProperties: false,
  };
}

/** A bare number may be of either unit: the least in the larger unit and the greatest in the smaller one hold for both. */
function bareNumber(min: Micrometres, max: Micrometres): JsonObject {
  const least = min > 0 ? min / MICROMETRES_PER_INCH : min / MICROMETRES_PER_MM;
  return { type: 'number', minimum: Math.floor(least * 1000) / 1000, maximum: max / MICROMETRES_PER_MM };
}
