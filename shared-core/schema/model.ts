import type { Place } from '../document/place.js';
import type { Micrometres } from '../length/units.js';
import type {
  ChoiceSchema,
  CountSchema,
  Entry,
  Field,
  Fields,
  FlagSchema,
  Infer,
  LengthSchema,
  ListSchema,
  NamedSchema,
  NameSchema,
  NumberSchema,
  RecordSchema,
  Schema,
  Span,
  SpanSchema,
  TextSchema,
} from './schema.js';

/** What every named thing of a model has: its name, and where that is written. */
export interface Named {
  readonly name: string;
  readonly place: Place;
}

/**
 * What a value that was read is to the rest of the core: plain values under names in camel case, nothing missing. A key that
 * may be left out has what its field says for that case.
 */
export type Model<S> = S extends LengthSchema
  ? Micrometres
  : S extends SpanSchema
    ? Span
    : S extends CountSchema | NumberSchema
      ? number
      : S extends FlagSchema
        ? boolean
        : S extends TextSchema | NameSchema
          ? string
          : S extends ChoiceSchema<infer K>
            ? K
            : S extends ListSchema<infer I>
              ? readonly Model<I>[]
              : S extends NamedSchema<infer I, infer T>
                ? readonly (Named & Model<I> & Kind<T>)[]
                : S extends RecordSchema<infer F>
                  ? ModelFields<F>
                  : never;

type Kind<T> = T extends { readonly kind: infer K extends string } ? { readonly kind: K } : unknown;

/** The things of one sort in the model of a record: those of all its maps. */
export type Things<F extends Fields, O extends string> = {
  [K in keyof F]: F[K]['schema'] extends NamedSchema<Schema, { readonly of: O; readonly kind: string | null }>
    ? Model<F[K]['schema']>[number]
    : never;
}[keyof F];

export type ModelFields<F extends Fields> = { readonly [K in keyof F & string as Camel<K>]: ModelField<F[K]> };

type ModelField<F> =
  F extends Field<infer S, infer R, infer L>
    ? R extends true
      ? Model<S>
      : L extends { readonly as: 'nothing' }
        ? Model<S> | null
        : Model<S>
    : never;

/** 'fence-offset' as 'fenceOffset'. */
export type Camel<K extends string> = K extends `${infer A}-${infer B}` ? `${A}${Capitalize<Camel<B>>}` : K;

/** How named things are given their places, and what keys that say so are where they are left out. */
export interface Modelling<S extends Schema> {
  readonly place: (entry: Entry<unknown>) => Place;
  /** What is read over; null where nothing is, and every key that asks for it must be written. */
  readonly before: Partial<Model<S>> | null;
}

/**
 * The model of a value that was read by the schema; a value of null is one that is not written. Throws only where nothing is
 * read over and a key is left out that is then needed: a fault of ours, not of a text.
 */
export function modelOf<S extends Schema>(schema: S, value: Infer<S> | null, modelling: Modelling<S>): Model<S> {
  // The step walks the schema as data, as the reading does.
  return valueOf(schema, value, { place: modelling.place, name: '' }, modelling.before) as Model<S>;
}

/** The things of one sort in a model, map by map in the order of the schema. */
export function thingsOf<F extends Fields, const O extends string>(
  { fields }: RecordSchema<F>,
  model: ModelFields<F>,
  sort: O,
): readonly Things<F, O>[] {
  const maps = Object.entries(fields).filter(([, { schema }]) => schema.type === 'named' && schema.sort?.of === sort);
  return maps.flatMap(([key]) => (model as Readonly<Record<string, unknown>>)[camel(key)] as readonly Things<F, O>[]);
}

interface Around {
  readonly place: (entry: Entry<unknown>) => Place;
  /** Of the innermost named thing. */
  readonly name: string;
}

interface Read {
  readonly value: unknown;
}

function valueOf(schema: Schema, read: unknown, around: Around, before: unknown): unknown {
  const value = (read as Read | null)?.value;
  switch (schema.type) {
    case 'record':
      return recordOf(schema, (value ?? {}) as Readonly<Record<string, unknown>>, around, before);
    case 'named':
      return ((value ?? []) as readonly Entry<unknown>[]).map((entry) => ({
        ...(typeof schema.sort?.kind === 'string' && { kind: schema.sort.kind }),
        name: entry.name.value,
        place: around.place(entry),
        ...(valueOf(schema.item, entry.value, { ...around, name: entry.name.value }, null) as object),
      }));
    case 'list':
      return ((value ?? []) as readonly unknown[]).map((item) => valueOf(schema.item, item, around, null));
    case 'either':
      throw new Error('A value of several forms has no model of one form.');
    default:
      return value;
  }
}

function recordOf(
  { fields, noun }: RecordSchema<Fields>,
  values: Readonly<Record<string, unknown>>,
  around: Around,
  before: unknown,
): unknown {
  const model = Object.entries(fields).map(([key, field]) => {
    const name = camel(key);
    const old = (before as Readonly<Record<string, unknown>> | null)?.[name];
    const read = values[key];
    return [
      name,
      read === undefined
        ? leftOut(field, `\`${key}\` of ${noun}`, around, old)
        : valueOf(field.schema, read, around, old ?? null),
    ];
  });
  return Object.fromEntries(model);
}

function leftOut({ schema, leftOut: instead }: Fields[string], what: string, around: Around, before: unknown): unknown {
  switch (instead.as) {
    case 'nothing':
      return null;
    case 'value':
      return instead.value;
    case 'empty':
      return valueOf(schema, null, around, before ?? null);
    case 'own-name':
      return around.name;
    case 'before':
      if (before === undefined) throw new Error(`Nothing says ${what}.`);
      return before;
  }
}

export function camel<K extends string>(key: K): Camel<K> {
  // A type of template literals cannot be worked out at run time; the pattern does what it says.
  return key.replace(/-(.)/g, (_, letter: string) => letter.toUpperCase()) as Camel<K>;
}
