import type { Located } from '../document/place.js';
import { shorthandOf } from './at.js';
import type {
  EitherSchema,
  Entry,
  Fields,
  Infer,
  InferFields,
  ListSchema,
  NamedSchema,
  RecordSchema,
  Schema,
} from './schema.js';

/** Of several forms the map, where one of them is a map. */
export type LongForm<A extends readonly Schema[]> = Extract<A[number], RecordSchema<Fields>>;

/** A value that was read, in its long form: a single value that stands for a map is that map with one key. */
export type Unfolded<S> =
  S extends EitherSchema<infer A>
    ? [LongForm<A>] extends [never]
      ? UnfoldedEither<A>
      : Unfolded<LongForm<A>>
    : S extends ListSchema<infer I>
      ? Located<readonly Unfolded<I>[]>
      : S extends NamedSchema<infer I>
        ? Located<readonly Entry<Unfolded<I>>[]>
        : S extends RecordSchema<infer F>
          ? Located<UnfoldedFields<F>>
          : Infer<S>;

export type UnfoldedFields<F extends Fields> = {
  readonly [K in keyof F as F[K]['required'] extends true ? K : never]: Unfolded<F[K]['schema']>;
} & {
  readonly [K in keyof F as F[K]['required'] extends true ? never : K]?: Unfolded<F[K]['schema']>;
};

type UnfoldedEither<A extends readonly Schema[]> = {
  readonly [I in keyof A]: A[I] extends { readonly type: infer T extends string }
    ? { readonly as: T; readonly is: Unfolded<A[I]> }
    : never;
}[number];

/** The long form of what a map says that was read by the schema. Places and paths stay those of what is written. */
export function unfold<F extends Fields>(schema: RecordSchema<F>, said: InferFields<F>): UnfoldedFields<F> {
  // The step walks the schema as data, as the reading does.
  return fieldsUnfolded(schema, said) as UnfoldedFields<F>;
}

type Values = Readonly<Record<string, unknown>>;

function fieldsUnfolded({ fields }: RecordSchema<Fields>, said: Values): Values {
  return Object.fromEntries(Object.entries(said).map(([key, value]) => [key, longForm(fields[key]!.schema, value)]));
}

interface Choice {
  readonly as: Schema['type'];
  readonly is: Located<unknown>;
}

function longForm(schema: Schema, value: unknown): unknown {
  switch (schema.type) {
    case 'either':
      return longChoice(schema, value as Choice);
    case 'list':
      return within(value, (items: readonly unknown[]) => items.map((item) => longForm(schema.item, item)));
    case 'named':
      return within(value, (entries: readonly Entry<unknown>[]) =>
        entries.map((entry) => ({ ...entry, value: longForm(schema.item, entry.value) })),
      );
    case 'record':
      return within(value, (said: Values) => fieldsUnfolded(schema, said));
    default:
      return value;
  }
}

function longChoice(schema: EitherSchema<readonly Schema[]>, { as, is }: Choice): unknown {
  const taken = longForm(
    schema.of.find(({ type }) => type === as)!,
    is,
  );
  if (recordIn(schema) === null) return { as, is: taken };
  return as === 'record' ? taken : { ...is, value: { [shorthandOf(schema)!]: taken } };
}

function within(located: unknown, change: (value: never) => unknown): unknown {
  const { value, ...where } = located as Located<never>;
  return { ...where, value: change(value) };
}

/** One long form laid over another: a key that the upper one has counts, and maps are laid over each other key by key. */
export function laidOver<F extends Fields, U extends Partial<UnfoldedFields<F>>>(
  schema: RecordSchema<F>,
  upper: U,
  lower: Partial<UnfoldedFields<F>>,
): U {
  return fieldsOver(schema, upper, lower) as U;
}

function fieldsOver({ fields }: RecordSchema<Fields>, above: Values, below: Values): Values {
  const all = Object.entries(fields).map(([key, { schema }]) => [key, over(schema, above[key], below[key])] as const);
  return Object.fromEntries(all.filter(([, value]) => value !== undefined));
}

function over(schema: Schema, upper: unknown, lower: unknown): unknown {
  if (upper === undefined || lower === undefined) return upper ?? lower;
  if (schema.type === 'named')
    return within(upper, (above: Entries) => entriesOver(schema.item, above, (lower as Located<Entries>).value));
  const record = recordIn(schema);
  if (record === null) return upper;
  return within(upper, (above: Values) => fieldsOver(record, above, (lower as Located<Values>).value));
}

type Entries = readonly Entry<unknown>[];

/** The lower ones first, each with the upper one of its name over it. */
function entriesOver(item: Schema, above: Entries, below: Entries): Entries {
  const named = new Map(above.map((entry) => [entry.name.value, entry]));
  const both = below.map((entry) => {
    const upper = named.get(entry.name.value);
    return upper === undefined ? entry : { ...upper, value: over(item, upper.value, entry.value) };
  });
  const known = new Set(below.map(({ name }) => name.value));
  return [...both, ...above.filter(({ name }) => !known.has(name.value))];
}

/** The map that a value of the schema is in its long form; null where it is none. */
export function recordIn(schema: Schema): RecordSchema<Fields> | null {
  if (schema.type === 'record') return schema;
  return (schema.type === 'either' ? schema.of.find((one) => one.type === 'record') : undefined) ?? null;
}
