import type { Located } from '../document/place.js';
import type { Micrometres } from '../length/units.js';

/**
 * The schema language. One schema value of this kind is the source of the TypeScript type (`Infer`), the reading and its
 * messages, completion, hovers, and the published JSON Schema. `about` is the sentence that an owner reads in a hover.
 */
export type Schema =
  | LengthSchema
  | SpanSchema
  | CountSchema
  | NumberSchema
  | FlagSchema
  | TextSchema
  | NameSchema
  | ChoiceSchema<string>
  | ListSchema<Schema>
  | NamedSchema<Schema>
  | RecordSchema<Fields>
  | EitherSchema<readonly Schema[]>;

/** What a name refers to, so that completion can list and a rule can look up. */
export type NameOf =
  | 'board'
  | 'band'
  | 'fitting'
  | 'hinge'
  | 'slide'
  | 'pull'
  | 'bracket'
  | 'wardrobe-rail'
  | 'foot'
  | 'angle'
  | 'machine'
  | 'shop-file'
  | 'stop'
  | 'panel'
  | 'carcass';

/** A length in the file's unit; both bounds inclusive. */
export interface LengthSchema {
  readonly type: 'length';
  readonly about: string;
  readonly min: Micrometres;
  readonly max: Micrometres;
}
/**
 * Two lengths written `20 to 80`; one length alone is a span of no width, or with `alone: 'maximum'` one from the least that may
 * be written. Both bounds inclusive.
 */
export interface SpanSchema {
  readonly type: 'span';
  readonly alone?: 'maximum';
  readonly about: string;
  readonly min: Micrometres;
  readonly max: Micrometres;
}
/** A whole number. */
export interface CountSchema {
  readonly type: 'count';
  readonly about: string;
  readonly min: number;
  readonly max: number;
}
/** What a number that is no length may count. */
export type NumberOf =
  'kilograms' | 'kilograms per cubic metre' | 'newtons per square millimetre' | 'seconds' | 'degrees';
/** A plain decimal number (seconds, degrees, a factor). */
export interface NumberSchema {
  readonly type: 'number';
  readonly about: string;
  readonly min: number;
  readonly max: number;
  /** What it counts; null for a factor and for money. */
  readonly of: NumberOf | null;
}
/** `yes` or `no`. */
export interface FlagSchema {
  readonly type: 'flag';
  readonly about: string;
}
export interface TextSchema {
  readonly type: 'text';
  readonly about: string;
}
export interface NameSchema {
  readonly type: 'name';
  readonly about: string;
  readonly of: NameOf;
}
/** One word out of a list; each option with its own sentence. */
export interface ChoiceSchema<K extends string> {
  readonly type: 'choice';
  readonly about: string;
  readonly options: Readonly<Record<K, string>>;
  /** Words of earlier versions, and what is written now in their place: they are still read, and told. */
  readonly formerly?: Readonly<Record<string, K>>;
  /** Words that a newcomer tries, and those that he most likely means. */
  readonly tried?: Readonly<Record<string, readonly K[]>>;
}
export interface ListSchema<S extends Schema> {
  readonly type: 'list';
  readonly about: string;
  readonly item: S;
  /** How many items are read at most; a longer list is nobody's, and would only keep the editor busy. */
  readonly most: number;
}
/** A map from names of the owner's choosing to values of one schema (carcasses, boards, machines). */
export interface NamedSchema<S extends Schema, T extends Sort | null = Sort | null> {
  readonly type: 'named';
  readonly about: string;
  /** What one entry is called in messages: 'carcass', 'board'. */
  readonly noun: string;
  readonly item: S;
  /** Where the names of several maps are one room: which room that is, and what kind of thing is in this map. */
  readonly sort: T;
}
/** 'fitting' and 'dowel', 'machine' and 'vertical'; `kind` is null where all things of the sort are of one kind. */
export interface Sort {
  readonly of: string;
  readonly kind: string | null;
}
export type Fields = Readonly<Record<string, Field<Schema, boolean, LeftOut>>>;
export interface Field<S extends Schema, R extends boolean, L extends LeftOut> {
  readonly schema: S;
  readonly required: R;
  readonly leftOut: L;
}
/** What the model holds where the key is left out. */
export type LeftOut =
  /** null. */
  | { readonly as: 'nothing' }
  | { readonly as: 'value'; readonly value: unknown }
  /** What it would be with nothing written under it. */
  | { readonly as: 'empty' }
  /** The name of the thing that it is a key of. */
  | { readonly as: 'own-name' }
  /** What the model that is read over says. */
  | { readonly as: 'before' };
export interface RecordSchema<F extends Fields> {
  readonly type: 'record';
  readonly about: string;
  readonly noun: string;
  readonly fields: F;
  /** Keys of earlier versions, and what is written now in their place: they are still read, and told. */
  readonly formerly?: Readonly<Record<string, keyof F & string>>;
  /** Words that a newcomer tries for a key, or for what no key is for. */
  readonly tried?: Readonly<Record<string, Tried<keyof F & string>>>;
  /** A key that names another such map to take the rest from: where it is written nothing else is required. */
  readonly standIn?: keyof F & string;
  /** Where how many there are is written instead: as items of a list beside this map. */
  readonly counted?: CountedBy;
}
/** A list beside a map, with one item for each. */
export interface CountedBy {
  readonly key: string;
  readonly item: string;
  /** Keys that would say the same, so that the list is not offered beside them. */
  readonly not: readonly string[];
}
/** What a word that is no key was most likely meant to be: one of some keys, or something that cannot be written. */
export type Tried<K extends string> =
  | { readonly keys: readonly K[] }
  /** A key of a map that stands under one of the keys. */
  | { readonly under: readonly [K, string] }
  /** These files have nothing for it. */
  | { readonly nothing: true };
/** The first alternative whose shape (scalar, list, map) and form fit is taken; put the commonest first. */
export interface EitherSchema<A extends readonly Schema[]> {
  readonly type: 'either';
  readonly about: string;
  readonly of: A;
}

/** A span of lengths, `min` not over `max`. */
export interface Span {
  readonly min: Micrometres;
  readonly max: Micrometres;
}
export interface Entry<T> {
  readonly name: Located<string>;
  readonly value: T;
}

/** The value that reading a text by schema S gives. Every level is located. An optional field not written is undefined. */
export type Infer<S> = S extends LengthSchema
  ? Located<Micrometres>
  : S extends SpanSchema
    ? Located<Span>
    : S extends CountSchema | NumberSchema
      ? Located<number>
      : S extends FlagSchema
        ? Located<boolean>
        : S extends TextSchema | NameSchema
          ? Located<string>
          : S extends ChoiceSchema<infer K>
            ? Located<K>
            : S extends ListSchema<infer I>
              ? Located<readonly Infer<I>[]>
              : S extends NamedSchema<infer I>
                ? Located<readonly Entry<Infer<I>>[]>
                : S extends RecordSchema<infer F>
                  ? Located<InferFields<F>>
                  : S extends EitherSchema<infer A>
                    ? InferEither<A>
                    : never;

export type InferFields<F extends Fields> = {
  readonly [K in keyof F as F[K]['required'] extends true ? K : never]: Infer<F[K]['schema']>;
} & {
  readonly [K in keyof F as F[K]['required'] extends true ? never : K]?: Infer<F[K]['schema']>;
};

/** Which alternative was taken, and its value. */
export type InferEither<A extends readonly Schema[]> = {
  readonly [I in keyof A]: A[I] extends { readonly type: infer T extends string }
    ? { readonly as: T; readonly is: Infer<A[I]> }
    : never;
}[number];

// Builders: they exist so that literal types survive into Infer.

const mm = (value: number): Micrometres => Math.round(value * 1000);

/** Bounds in millimetres. */
export const length = (about: string, minMm = 0, maxMm = 10_000): LengthSchema => ({
  type: 'length',
  about,
  min: mm(minMm),
  max: mm(maxMm),
});
export const span = (about: string, minMm = 0, maxMm = 10_000): SpanSchema => ({
  type: 'span',
  about,
  min: mm(minMm),
  max: mm(maxMm),
});

/** The same where nothing could be done with a span of no width, so that one length alone is its maximum. */
export const spanUpTo = (about: string, minMm: number, maxMm: number): SpanSchema => ({
  ...span(about, minMm, maxMm),
  alone: 'maximum',
});
export const count = (about: string, min = 0, max = 100): CountSchema => ({ type: 'count', about, min, max });
export const number = (about: string, min = 0, max = 1_000_000, of: NumberOf | null = null): NumberSchema => ({
  type: 'number',
  about,
  min,
  max,
  of,
});
export const flag = (about: string): FlagSchema => ({ type: 'flag', about });
export const text = (about: string): TextSchema => ({ type: 'text', about });
export const name = (of: NameOf, about: string): NameSchema => ({ type: 'name', about, of });
export const choice = <const K extends string>(
  about: string,
  options: Readonly<Record<K, string>>,
  formerly: Readonly<Record<string, NoInfer<K>>> = {},
  tried: Readonly<Record<string, readonly NoInfer<K>[]>> = {},
): ChoiceSchema<K> => ({
  type: 'choice',
  about,
  options,
  formerly,
  tried,
});
export const list = <S extends Schema>(about: string, item: S, most = 100): ListSchema<S> => ({
  type: 'list',
  about,
  item,
  most,
});
export const named = <S extends Schema>(noun: string, about: string, item: S): NamedSchema<S, null> => ({
  type: 'named',
  about,
  noun,
  item,
  sort: null,
});
/** Things whose names are one room with those of other maps of the sort; the kind becomes a part of each thing's model. */
export const things = <S extends Schema, const O extends string, const K extends string | null>(
  sort: O,
  kind: K,
  noun: string,
  about: string,
  item: S,
): NamedSchema<S, { readonly of: O; readonly kind: K }> => ({
  type: 'named',
  about,
  noun,
  item,
  sort: { of: sort, kind },
});
export const record = <F extends Fields>(
  noun: string,
  about: string,
  fields: F,
  formerly: Readonly<Record<string, keyof F & string>> = {},
  tried: Readonly<Record<string, Tried<keyof F & string>>> = {},
): RecordSchema<F> => ({
  type: 'record',
  about,
  noun,
  fields,
  formerly,
  tried,
});
export const either = <const A extends readonly Schema[]>(about: string, ...of: A): EitherSchema<A> => ({
  type: 'either',
  about,
  of,
});
