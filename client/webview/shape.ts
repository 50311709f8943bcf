// What comes over a message channel or out of a kept state is not trusted to be what its type says. A shape is the guard of
// a type and the type itself, from one telling: `const isPoint = object({ x: number })`, `type Point = Of<typeof isPoint>`.
// Where the type is told elsewhere, `const isPoint: Shape<Point> = ...` compiles only if both say the same. Knows no page
// and no editor: both sides check with it.

export interface Shape<T> {
  (value: unknown): value is T;
  /** For the compiler alone: a shape that lets more or less pass is not this one. */
  readonly exactly?: (value: T) => T;
}
/** The type that a shape lets pass. */
export type Of<S> = S extends Shape<infer T> ? T : never;

type Shapes<T> = { readonly [K in keyof T]: Shape<T[K]> };
type OneOf<Tag extends string, V> = {
  readonly [K in keyof V & string]: Readonly<Record<Tag, K> & V[K]>;
}[keyof V & string];

export const text: Shape<string> = (value): value is string => typeof value === 'string';
export const flag: Shape<boolean> = (value): value is boolean => typeof value === 'boolean';
export const number: Shape<number> = (value): value is number => typeof value === 'number' && !Number.isNaN(value);
export const whole: Shape<number> = (value): value is number => Number.isInteger(value);
/** A place in a list: 0, 1, 2 … */
export const index: Shape<number> = (value): value is number => whole(value) && value >= 0;

export const oneOf =
  <const T extends string | number>(...values: readonly T[]): Shape<T> =>
  (value): value is T =>
    values.some((one) => one === value);

export const orNull =
  <T>(shape: Shape<T>): Shape<T | null> =>
  (value): value is T | null =>
    value === null || shape(value);

export const list =
  <T>(item: Shape<T>): Shape<readonly T[]> =>
  (value): value is readonly T[] =>
    Array.isArray(value) && value.every((one) => item(one));

export const dictionary =
  <T>(item: Shape<T>): Shape<Readonly<Record<string, T>>> =>
  (value): value is Readonly<Record<string, T>> =>
    isMap(value) && Object.values(value).every((one) => item(one));

export const object =
  <T extends object>(fields: Shapes<T>): Shape<Readonly<T>> =>
  (value): value is Readonly<T> =>
    hasFields(value, fields);

/** One of several objects, told apart by the word under `tag`. */
export const variants =
  <const Tag extends string, V extends object>(
    tag: Tag,
    byWord: { readonly [K in keyof V]: Shapes<V[K]> },
  ): Shape<OneOf<Tag, V>> =>
  (value): value is OneOf<Tag, V> => {
    if (!isMap(value)) return false;
    const word = value[tag];
    return typeof word === 'string' && Object.hasOwn(byWord, word) && hasFields(value, byWord[word as keyof V]);
  };

/** An object of which only the lists and maps that hold it together are looked at, since we make it and only draw it. */
export const outline =
  <T>(lists: readonly (keyof T & string)[], maps: readonly (keyof T & string)[] = []): Shape<T> =>
  (value): value is T =>
    isMap(value) && lists.every((key) => Array.isArray(value[key])) && maps.every((key) => isMap(value[key]));

function isMap(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function hasFields(value: unknown, fields: object): boolean {
  return (
    isMap(value) && Object.entries(fields as Shapes<Record<string, unknown>>).every(([key, shape]) => shape(value[key]))
  );
}
