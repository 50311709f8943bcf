import type { Located, Path, Place } from '../document/place.js';
import type { Micrometres } from '../length/units.js';
import { shorthandOf } from '../schema/at.js';
import { camel, type Camel } from '../schema/model.js';
import type { EitherSchema, Entry, Fields, ListSchema, NamedSchema, RecordSchema, Schema } from '../schema/schema.js';
import { recordIn, type LongForm, type Unfolded, type UnfoldedFields } from '../schema/unfold.js';
import {
  LEFT_OUT,
  type Each,
  type Items,
  type LeftOut,
  type LeftOutTable,
  type Parts,
  type Usage,
} from './left-out.js';
import { carcassSchema } from './schema.js';

/**
 * What a map says with every default filled in, under names in camel case: all keys of the schema, and nothing besides.
 * What the carcass works out, and what may be missing, is null where it is left out.
 */
export type FilledFields<F extends Fields, L> = {
  readonly [K in keyof F & keyof L & string as Camel<K>]: Filled<F[K]['schema'], L[K]>;
};

type Filled<S, L> = L extends { readonly as: 'maybe' | 'worked-out' }
  ? Unfolded<S> | null
  : L extends Each<infer LF>
    ? FilledFields<FieldsOf<S>, LF>
    : L extends Items<infer LF>
      ? Counted<FilledFields<ItemFieldsOf<S>, LF>> | null
      : L extends Parts
        ? ReadonlyMap<string, Choice<S>>
        : Unfolded<S>;

/** How many there are, with what each is at a place that is found for it; or a list of them. */
export type Counted<T> =
  | { readonly as: 'count'; readonly count: Located<number>; readonly each: (at: Located<Micrometres>) => T }
  | { readonly as: 'list'; readonly items: readonly Located<T>[] };

type FieldsOf<S> =
  S extends RecordSchema<infer F> ? F : S extends EitherSchema<infer A> ? FieldsOf<LongForm<A>> : never;

type ItemFieldsOf<S> =
  S extends EitherSchema<infer A>
    ? Extract<A[number], ListSchema<Schema>> extends ListSchema<infer I>
      ? FieldsOf<I>
      : never
    : never;

/** What is different on one panel: what is written, and no default. */
type Choice<S> =
  S extends NamedSchema<RecordSchema<infer F>>
    ? { readonly key: Located<string> } & {
        readonly [K in keyof F & string as Camel<K>]?: Unfolded<F[K]['schema']>;
      }
    : never;

interface Around {
  readonly usage: Usage;
  /** Blamed for what nobody wrote. */
  readonly place: Place;
  /** Path of the map, under which a default would be written. */
  readonly path: Path;
  /** The key that a single value in the place of the map would stand for; null where the map is written. */
  readonly shorthand: string | null;
}

type CarcassFields = typeof carcassSchema.fields;

/** All that a carcass has by its schema and `LEFT_OUT`. */
export type FilledCarcass = FilledFields<CarcassFields, typeof LEFT_OUT>;

/** Fills a carcass in. `place` is blamed for what nobody wrote. */
export function fillIn(said: UnfoldedFields<CarcassFields>, usage: Usage, place: Place): FilledCarcass {
  // The step walks table and schema as data; that the two belong together is in the type of the table.
  return filled(LEFT_OUT, carcassSchema, said, { usage, place, path: [], shorthand: null }) as FilledCarcass;
}

type Values = Readonly<Record<string, unknown>>;

function filled(table: LeftOutTable, { fields }: RecordSchema<Fields>, said: Values, around: Around): Values {
  return Object.fromEntries(
    Object.entries(table).map(([key, leftOut]) => [
      camel(key),
      filledField(leftOut, fields[key]!.schema, said[key], key, around),
    ]),
  );
}

function filledField(leftOut: LeftOut, schema: Schema, said: unknown, key: string, around: Around): unknown {
  const path = key === around.shorthand ? around.path : [...around.path, key];
  switch (leftOut.as) {
    case 'must':
      return said;
    case 'usual':
    case 'maybe':
    case 'worked-out': {
      if (said !== undefined) return said;
      const value = leftOut.value(around.usage);
      return value === null ? null : { value, place: around.place, path, written: false };
    }
    case 'each': {
      const written = said as Located<Values> | undefined;
      // Only a map in the carcass's own text can take another key.
      const shorthand = written?.place.part === 'self' || schema.type !== 'either' ? null : shorthandOf(schema);
      return filled(leftOut.fields, recordIn(schema)!, written?.value ?? {}, { ...around, path, shorthand });
    }
    case 'items':
      return said === undefined ? null : filledItems(leftOut, schema, said as Forms, around);
    case 'parts':
      return choices(said as Located<readonly Entry<Located<Values>>[]> | undefined);
  }
}

type Forms =
  | { readonly as: 'count'; readonly is: Located<number> }
  | { readonly as: 'list'; readonly is: Located<readonly Located<Values>[]> };

function filledItems({ item }: Items<LeftOutTable>, schema: Schema, said: Forms, around: Around): Counted<Values> {
  const record = recordIn((schema as EitherSchema<readonly Schema[]>).of.find((one) => one.type === 'list')!.item)!;
  const [first = ''] = Object.keys(item).filter((key) => item[key]!.as === 'must');
  const one = (values: Values, path: Path): Values => {
    const { place } = values[first] as Located<unknown>;
    return filled(item, record, values, { ...around, place, path, shorthand: null });
  };
  if (said.as === 'count') return { as: 'count', count: said.is, each: (at) => one({ [first]: at }, at.path) };
  return { as: 'list', items: said.is.value.map((given) => ({ ...given, value: one(given.value, given.path) })) };
}

function choices(said: Located<readonly Entry<Located<Values>>[]> | undefined): ReadonlyMap<string, Values> {
  return new Map(
    (said?.value ?? []).map(({ name, value }) => [
      name.value,
      { key: name, ...Object.fromEntries(Object.entries(value.value).map(([key, one]) => [camel(key), one])) },
    ]),
  );
}
