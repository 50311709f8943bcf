import type { Shop } from './model.js';

// What is worked out by a shop depends on a part of it. Whoever works something out is given the shop watched, and what he
// asks of it is noted; a shop that answers the same gives the same.

/** Sections of a shop whose things are asked for by name. */
const MAPS = ['boards', 'bands', 'fittings', 'hinges', 'slides', 'pulls', 'machines'] as const;
/** Sections of a shop whose keys are asked for one by one. */
const RECORDS = ['habits', 'changeover', 'handling', 'tolerances', 'labelSheet', 'rates'] as const;

type MapName = (typeof MAPS)[number];
type RecordName = (typeof RECORDS)[number];

const isMap = (key: PropertyKey): key is MapName => (MAPS as readonly PropertyKey[]).includes(key);
const isRecord = (key: PropertyKey): key is RecordName => (RECORDS as readonly PropertyKey[]).includes(key);

/** Which things a section has. */
const NAMES = '*';
const pathIn = (section: string, key: string): string => `${section}/${key}`;

/** Something that is worked out of a shop, of which no more counts than what comes out, as text. */
interface Answer {
  readonly ask: (shop: Shop) => string;
  readonly was: string;
}

/** What was asked of a shop. */
export class ShopReads {
  readonly paths = new Set<string>();
  readonly answers = new Map<string, Answer>();
}

const WATCH = Symbol('watch');

interface Watch {
  readonly shop: Shop;
  readonly reads: ShopReads;
}

const watchOf = (shop: Shop): Watch | undefined => (shop as { readonly [WATCH]?: Watch })[WATCH];

/** The same shop, noting what is asked of it. */
export function watched(shop: Shop, reads: ShopReads): Shop {
  const parts = new Map<string, unknown>();
  const partOf = (key: MapName | RecordName): unknown => {
    const known =
      parts.get(key) ?? (isMap(key) ? new WatchedMap<unknown>(shop[key], key, reads) : record(shop[key], key, reads));
    parts.set(key, known);
    return known;
  };
  return new Proxy(shop, {
    get(of, key: keyof Shop | typeof WATCH): unknown {
      if (key === WATCH) return { shop, reads } satisfies Watch;
      if (isMap(key) || isRecord(key)) return partOf(key);
      if (typeof key === 'string') reads.paths.add(key);
      return of[key];
    },
  });
}

/** The shop itself: nothing that is asked of it is noted. */
export const unwatched = (shop: Shop): Shop => watchOf(shop)?.shop ?? shop;

/**
 * What comes of a shop by an `ask` that reads more of it than bears on what comes out: no more is noted than that.
 * @param name of the question: equal for questions that are the same in every shop
 */
export function answerOf<R>(shop: Shop, name: string, ask: (shop: Shop) => R): R {
  const watch = watchOf(shop);
  if (watch === undefined) return ask(shop);
  const answer = ask(watch.shop);
  if (!watch.reads.answers.has(name)) {
    watch.reads.answers.set(name, { ask: (other) => JSON.stringify(ask(other)), was: JSON.stringify(answer) });
  }
  return answer;
}

/** Notes that every key of a section counts. */
export function noteAll(section: object): void {
  Object.values(section);
}

function record<T extends object>(of: T, section: string, reads: ShopReads): T {
  const note = noteIn(section, reads);
  return new Proxy(of, {
    get(target, key): unknown {
      if (typeof key === 'string') note(key);
      return Reflect.get(target, key);
    },
  });
}

/** Notes the keys of a section. The same are asked for again and again, so a path is made for the first time only. */
function noteIn(section: string, { paths }: ShopReads): (key: string) => void {
  const noted = new Set<string>();
  return (key) => {
    if (noted.has(key)) return;
    noted.add(key);
    paths.add(pathIn(section, key));
  };
}

/** A section of a shop that notes which of its things are asked for. */
class WatchedMap<T> implements ReadonlyMap<string, T> {
  readonly #of: ReadonlyMap<string, T>;
  readonly #note: (key: string) => void;

  constructor(of: ReadonlyMap<string, T>, section: string, reads: ShopReads) {
    this.#of = of;
    this.#note = noteIn(section, reads);
  }

  get(name: string): T | undefined {
    this.#note(name);
    return this.#of.get(name);
  }

  has(name: string): boolean {
    this.#note(NAMES);
    return this.#of.has(name);
  }

  get size(): number {
    this.#note(NAMES);
    return this.#of.size;
  }

  keys(): MapIterator<string> {
    this.#note(NAMES);
    return this.#of.keys();
  }

  /** Those that are not looked at do not count. */
  *entries(): MapIterator<[string, T]> {
    for (const name of this.keys()) yield [name, this.get(name)!];
  }

  *values(): MapIterator<T> {
    for (const [, thing] of this.entries()) yield thing;
  }

  forEach(each: (value: T, key: string, map: ReadonlyMap<string, T>) => void): void {
    for (const [name, thing] of this) each(thing, name, this);
  }

  [Symbol.iterator](): MapIterator<[string, T]> {
    return this.entries();
  }
}

/** In what two shops differ, for whoever has asked the first one. Parts are equal where they are the same object: see `SettledShops`. */
export class ShopChanges {
  readonly #paths: ReadonlySet<string>;
  readonly #answers = new Map<string, string>();

  constructor(
    readonly before: Shop,
    readonly now: Shop,
  ) {
    this.#paths = new Set(before === now ? [] : changedPaths(before, now));
  }

  get areNone(): boolean {
    return this.#paths.size === 0;
  }

  /** Whether anything that was asked would now be answered otherwise. */
  touch({ paths, answers }: ShopReads): boolean {
    if (this.areNone) return false;
    for (const path of this.#paths) if (paths.has(path)) return true;
    for (const [name, { ask, was }] of answers) {
      const known = this.#answers.get(name) ?? ask(this.now);
      this.#answers.set(name, known);
      if (known !== was) return true;
    }
    return false;
  }
}

function* changedPaths(before: Shop, now: Shop): Generator<string> {
  for (const key of new Set([...Object.keys(before), ...Object.keys(now)]) as Set<keyof Shop>) {
    if (isMap(key)) yield* changedThings(key, before[key], now[key]);
    else if (isRecord(key)) yield* changedKeys(key, before[key], now[key]);
    else if (before[key] !== now[key]) yield key;
  }
}

function* changedThings(
  section: string,
  before: ReadonlyMap<string, unknown>,
  now: ReadonlyMap<string, unknown>,
): Generator<string> {
  const names = new Set([...before.keys(), ...now.keys()]);
  for (const name of names) if (before.get(name) !== now.get(name)) yield pathIn(section, name);
  if ([...before.keys()].join('\n') !== [...now.keys()].join('\n')) yield pathIn(section, NAMES);
}

function* changedKeys(section: string, before: object, now: object): Generator<string> {
  const [was, is] = [before, now] as Readonly<Record<string, unknown>>[];
  for (const key of new Set([...Object.keys(before), ...Object.keys(now)])) {
    if (was![key] !== is![key]) yield pathIn(section, key);
  }
}

/** Equal parts of the shops that were read are one object, so that it is told at a glance which are. */
export class SettledShops {
  readonly #parts = new Map<string, Map<string, unknown>>();
  #shops: readonly Shop[] = [];

  /** The shop, of parts that are the same objects wherever earlier ones were equal; where all are, the earlier shop itself. */
  settle(shop: Shop): Shop {
    const settled = Object.fromEntries(
      Object.entries(shop).map(([key, value]: [string, unknown]) => {
        if (isMap(key)) {
          const things = [...shop[key]].map(([name, thing]) => [name, this.#part(pathIn(key, name), thing)] as const);
          return [key, new Map(things)];
        }
        if (!isRecord(key)) return [key, this.#part(key, value)];
        return [key, Object.fromEntries(Object.entries(shop[key]).map(([k, v]) => [k, this.#part(pathIn(key, k), v)]))];
      }),
    ) as unknown as Shop;
    const same = this.#shops.find((one) => new ShopChanges(one, settled).areNone);
    if (same === undefined) this.#shops = [settled, ...this.#shops.slice(0, MOST_KEPT - 1)];
    return same ?? settled;
  }

  /** Where a thing stands in its file does not count: nobody asks the shop of a job for that. */
  #part<T>(path: string, value: T): T {
    if (typeof value !== 'object' || value === null) return value;
    const parts = this.#parts.get(path) ?? new Map<string, unknown>();
    this.#parts.set(path, parts);
    const key = textOf(value);
    const known = parts.get(key) as T | undefined;
    if (known !== undefined) return known;
    if (parts.size >= MOST_KEPT) parts.delete(parts.keys().next().value!);
    parts.set(key, value);
    return value;
  }
}

/** Of so many shops, and values of one part, it is known that they were met. */
const MOST_KEPT = 16;

const textOf = (value: object): string =>
  JSON.stringify(value, (key, part: unknown) => {
    if (key === 'place') return undefined;
    return part instanceof Map || part instanceof Set ? [...(part as Iterable<unknown>)] : part;
  });
