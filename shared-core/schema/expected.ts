import { showLength } from '../length/show.js';
import type { Unit } from '../length/units.js';
import type { Fields, RecordSchema, Schema, SpanSchema } from './schema.js';

/** What belongs at a place, as a sentence without its full stop. */
export function expected(schema: Schema, unit: Unit): string {
  switch (schema.type) {
    case 'length':
      return `Here belongs a length from ${showLength(schema.min, unit)} to ${showLength(schema.max, unit)}`;
    case 'span':
      return `Here belong two lengths, such as ${spanExample(schema, unit)}, from ${showLength(schema.min, unit)} to ${showLength(schema.max, unit)}`;
    case 'count':
      return `Here belongs a whole number from ${schema.min} to ${schema.max}`;
    case 'number':
      return `Here belongs a number from ${schema.min} to ${schema.max}`;
    case 'flag':
      return 'Here belongs yes or no';
    case 'text':
      return 'Here belongs a text';
    case 'name':
      return `Here belongs the name of a ${schema.of === 'shop-file' ? 'shop file' : schema.of}`;
    case 'choice':
      return `Here belongs one of: ${Object.keys(schema.options).join(', ')}`;
    case 'list':
      return `Here belongs a list. ${expected(schema.item, unit)}`;
    case 'named':
      return `Here belong names, each with the keys of its ${schema.noun}`;
    case 'record':
      return `Here belong the keys of ${aNoun(schema.noun)}: ${someKeys(schema)}`;
    case 'either':
      return schema.of.map((one) => expected(one, unit)).join('; or: ');
  }
}

/** The keys of a record, those that it needs first, as many as a message can bear. */
export function someKeys(schema: RecordSchema<Fields>): string {
  const keys = Object.keys(schema.fields);
  const first = [
    ...keys.filter((key) => schema.fields[key]!.required),
    ...keys.filter((key) => !schema.fields[key]!.required),
  ];
  return first.length > 6 ? `${first.slice(0, 6).join(', ')} …` : first.join(', ');
}

/** 'a shelf', 'an edge band', 'the habits': what a record is called in a sentence. */
export function aNoun(noun: string): string {
  return noun.endsWith('s') ? `the ${noun}` : `${/^[aeiou]/.test(noun) ? 'an' : 'a'} ${noun}`;
}

/** Two lengths as an owner would write them, within the bounds of the schema. */
export function spanExample(schema: SpanSchema, unit: Unit): string {
  if (unit === 'in') return schema.max < 100_000 ? '1/2 to 1' : '1 to 3 1/8';
  return schema.max < 20_000 ? '0.4 to 2' : '20 to 80';
}
