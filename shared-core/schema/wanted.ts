import type { Micrometres } from '../length/units.js';
import type { Fields, NameOf, NumberOf, RecordSchema, Schema } from './schema.js';

/** What a schema takes, as figures of a message: no more of it than the message needs. */
export type Wanted =
  | { readonly type: 'length' | 'span'; readonly min: Micrometres; readonly max: Micrometres }
  | { readonly type: 'count'; readonly min: number; readonly max: number }
  | { readonly type: 'number'; readonly min: number; readonly max: number; readonly of: NumberOf | null }
  | { readonly type: 'flag' | 'text' }
  | { readonly type: 'name'; readonly of: NameOf }
  | { readonly type: 'choice'; readonly words: readonly string[] }
  | { readonly type: 'list'; readonly item: Wanted }
  | { readonly type: 'named'; readonly noun: string }
  | { readonly type: 'record'; readonly noun: string; readonly keys: readonly string[] }
  | { readonly type: 'either'; readonly of: readonly Wanted[] };

export function wantedOf(schema: Schema): Wanted {
  switch (schema.type) {
    case 'length':
    case 'span':
      return { type: schema.type, min: schema.min, max: schema.max };
    case 'count':
      return { type: 'count', min: schema.min, max: schema.max };
    case 'number':
      return { type: 'number', min: schema.min, max: schema.max, of: schema.of };
    case 'flag':
    case 'text':
      return { type: schema.type };
    case 'name':
      return { type: 'name', of: schema.of };
    case 'choice':
      return { type: 'choice', words: Object.keys(schema.options) };
    case 'list':
      return { type: 'list', item: wantedOf(schema.item) };
    case 'named':
      return { type: 'named', noun: schema.noun };
    case 'record':
      return { type: 'record', noun: schema.noun, keys: keysOf(schema) };
    case 'either':
      return { type: 'either', of: schema.of.map(wantedOf) };
  }
}

/** The keys of a record, those that it needs first. */
export function keysOf({ fields }: RecordSchema<Fields>): readonly string[] {
  const keys = Object.keys(fields);
  return [...keys.filter((key) => fields[key]!.required), ...keys.filter((key) => !fields[key]!.required)];
}
