import type { Located } from '../../document/place.js';
import type { HungWord } from '../../job/model.js';
import type { Micrometres } from '../../length/units.js';
import type { Board, Hand, Shop } from '../../shop/model.js';
import { keyBeside, keyInDrawer, keyOf, wholeOf } from '../../job/panel-key.js';
import { boardFor } from '../choices.js';
import type { CarcassSpec } from '../spec.js';
import { blindHands } from './blind.js';

/** What stands in one place before a bay. */
export type FrontKind = Exclude<HungWord, 'none'> | 'drawer' | 'fixed' | 'open' | 'appliance';

/** Whether the place stays open. */
export const staysOpen = (kind: FrontKind): boolean => kind === 'open' || kind === 'appliance';

/** One front as the job asks for it. */
export interface AskedFront {
  readonly kind: FrontKind;
  /** null with `pitches` null: it shares what is left with its like. */
  readonly height: Located<Micrometres> | null;
  /** Its height in pitches, with the gap under it; `height` comes first. */
  readonly pitches: Located<number> | null;
  /** The pull that the item names for it; null where it names none. */
  readonly pull: Located<string> | null;
  /** The text that asks for it. */
  readonly cause: Located<unknown>;
}

/** What closes one bay, or the whole front. */
export interface AskedStack {
  /** Counted from 0; null for the whole front. */
  readonly bay: number | null;
  /** From the top down. */
  readonly fronts: readonly AskedFront[];
}

/** What of a carcass says what is to close it. */
export interface Asking {
  readonly doors: Pick<CarcassSpec['doors'], 'hung' | 'bays'>;
  readonly dividers: { readonly length: number };
  readonly fronts: CarcassSpec['fronts'];
}

/** What is to close the carcass, from the left; bays that it has not are left out. */
export function stacksAsked({ doors, dividers, fronts }: Asking): readonly AskedStack[] {
  const bays = dividers.length + 1;
  if (fronts !== null)
    return Array.from({ length: bays }, (_, bay) => ({
      bay,
      fronts: fronts.value
        .filter(({ value }) => value.bay === undefined || value.bay.value === bay + 1)
        .map(({ value: { front, height, pitches, pull } }) => ({
          kind: front.value,
          height: height ?? null,
          pitches: pitches ?? null,
          pull: pull ?? null,
          cause: front,
        })),
    }));
  const hung = (bay: number | null, word: Located<HungWord>): AskedStack => ({
    bay,
    fronts: word.value === 'none' ? [] : [{ kind: word.value, height: null, pitches: null, pull: null, cause: word }],
  });
  return doors.bays === null
    ? [hung(null, doors.hung)]
    : doors.bays.value.slice(0, bays).map((word, bay) => hung(bay, word));
}

/** The hands of the doors that a word hangs, from the left. */
export const HANDS: Readonly<Record<FrontKind, readonly Hand[]>> = {
  left: ['left'],
  right: ['right'],
  pair: ['left', 'right'],
  drawer: [],
  fixed: [],
  open: [],
  appliance: [],
};

const allFronts = (spec: Asking): readonly AskedFront[] => stacksAsked(spec).flatMap(({ fronts }) => fronts);

/** A front of the job, and the keys of the doors, the drawer or the fixed front that it becomes. */
interface NamedFront {
  readonly front: AskedFront;
  readonly keys: readonly string[];
}

/** What the fronts of each stack become, from the left. */
export function namedStacks(spec: Asking): readonly (readonly NamedFront[])[] {
  const count = { door: 0, drawer: 0, fixed: 0 };
  const next = (thing: keyof typeof count): string => keyOf(thing, (count[thing] += 1));
  const named = (front: AskedFront): NamedFront => {
    const { kind } = front;
    if (kind === 'open' || kind === 'appliance') return { front, keys: [] };
    return { front, keys: kind === 'drawer' || kind === 'fixed' ? [next(kind)] : HANDS[kind].map(() => next('door')) };
  };
  return stacksAsked(spec).map(({ fronts }) => fronts.map(named));
}

const namedFronts = (spec: Asking): readonly NamedFront[] => namedStacks(spec).flat();

/** What of the job gives the front of a key, or the front of a drawer’s panel, its height; null where nothing does. */
export function heightGiven(spec: Asking, panel: string): Located<unknown> | null {
  const front = namedFronts(spec).find(({ keys }) => keys.includes(wholeOf(panel)))?.front;
  return front?.height ?? front?.pitches ?? null;
}

/** The pulls that items of `fronts` name, by the keys of their doors, drawers and fixed fronts. */
export function pullsGiven(spec: Asking): ReadonlyMap<string, Located<string>> {
  return new Map(
    namedFronts(spec).flatMap(({ front: { pull }, keys }) =>
      pull === null ? [] : keys.map((key) => [key, pull] as const),
    ),
  );
}

/** The keys of the doors that the job asks for. */
export function doorKeys(spec: Asking): readonly string[] {
  return namedFronts(spec).flatMap(({ front, keys }) => (HANDS[front.kind].length > 0 ? keys : []));
}

/** The keys of the drawers, or of the fixed fronts, that the job asks for. */
export function keysOfKind(spec: Asking, kind: 'drawer' | 'fixed'): readonly string[] {
  return namedFronts(spec).flatMap(({ front, keys }) => (front.kind === kind ? keys : []));
}

/** Whether anything is to close the carcass, or any bay of it. */
export const hasFronts = (spec: Asking): boolean => allFronts(spec).some(({ kind }) => !staysOpen(kind));

/**
 * How far back from the front of the carcass inset fronts reach before a bay, counted from 0; 0 where there are none. Where
 * `bay` is null that is before any.
 */
export function insetBefore(spec: CarcassSpec, shop: Shop, bay: number | null): Micrometres {
  const before = stacksAsked(spec).filter((one) => bay === null || one.bay === null || one.bay === bay);
  const isOpen = before.every(({ fronts }) => fronts.every(({ kind }) => staysOpen(kind)));
  if (spec.doors.how.value !== 'inset' || (isOpen && blindHands(spec).length === 0)) return 0;
  return thickestFront(spec, shop);
}

/** The thickness of the thickest of the fronts and blind panels of a carcass; 0 where it has none. */
export function thickestFront(spec: CarcassSpec, shop: Shop): Micrometres {
  const keys = [
    ...blindHands(spec).map((hand) => keyBeside('blind', hand)),
    ...doorKeys(spec),
    ...keysOfKind(spec, 'drawer').map((key) => keyInDrawer(key, 'front')),
    ...keysOfKind(spec, 'fixed'),
  ];
  return Math.max(0, ...keys.map((key) => frontBoard(spec, shop, key).thickness));
}

/** The board of a front. */
export const frontBoard = (spec: CarcassSpec, shop: Shop, key: string): Board =>
  boardFor(spec, shop, key, spec.doors.board);
