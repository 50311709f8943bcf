import { CARCASSES_KEY } from '../document/outline.js';
import type { Path, Place } from '../document/place.js';
import type { MapEntry, TreeNode } from '../document/tree.js';
import type { LongForm } from '../schema/unfold.js';
import type { EitherSchema, Fields, ListSchema, NamedSchema, RecordSchema, Schema } from '../schema/schema.js';
import { carcassSchema, type jobSchema } from './schema.js';
import { shorthandAt } from '../schema/at.js';
import { messages, type Message } from '../words/message.js';

// Where a value does something: the one table that the finding, completion, hovers and the JSON Schema read.

/** What must be so for a value to do anything, as it stands behind 'It counts only'. */
export const CIRCUMSTANCES = {
  rails: 'with `top: rails`',
  back: 'where the carcass has a back',
  recess: 'with a back that is grooved or rebated',
  groove: 'with a grooved back',
  bays: 'where dividers part the carcass into bays',
  rows: 'where rows are bored',
  'rows-asked': 'where rows are asked for',
  'rows-in-bays': 'where rows are asked for and dividers part the carcass into bays',
  grid: 'where rows are bored, doors hang on hinges, fronts are screwed on with angles, or shelves are spread by their number',
  'own-grid': 'where rows are bored, or plates of hinges or angles of fronts',
  'rear-rows': 'where rear rows are bored (`rows: both`)',
  doors: 'where doors hang before the carcass',
  fronts: 'where doors, drawers or fixed fronts close the carcass',
  'overlay-fronts': 'with overlay doors and fronts',
  'front-gaps': 'with inset doors and fronts, or two of them side by side or one over the other',
  'whole-front': 'where neither `bays` nor `fronts` says what hangs before each bay',
  'no-fronts': 'where `fronts` does not say what closes each bay',
  'shared-heights': 'where two fronts or more before one bay have no height of their own',
  'stepped-fronts':
    'with `front-heights: stepped`, where two fronts or more before one bay have no height of their own',
  'no-height': 'where `height` does not say it',
  drawers: 'where the carcass has drawers',
  'pulled-here': 'where a door or a drawer has no other pull of its own',
  'pulled-drawers': 'where a drawer has no other pull of its own',
  'front-place': 'where something stands, and has no pull of its own under `panels`',
  'door-pulls': 'where doors have pulls',
  'long-door-pulls': 'where doors have pulls with two screws',
  'pulls-by-end': 'where pulls stand near an end of a door',
  'drawer-pulls': 'where drawer fronts or fixed fronts have pulls',
  like: 'with `like`',

  hanging: 'where the carcass hangs above the floor',
  standing: 'where the carcass stands on the floor',
  still: 'where there are fixed fronts, blind panels or fillers',
  'on-plinth': 'where the carcass stands on a plinth',
  'end-panels': 'where there are end panels',
  'end-panels-beside-plinth': 'where end panels stand beside a plinth',
  fillers: 'where there are fillers',
  blind: 'where `left` or `right` says how much is covered',

  upright: 'on a side or a divider',
  joined: 'on a panel with a joint that does not say it itself',
  'deep-in-face': 'on a panel with dowel bores in its face',
  'own-pull': 'on a door, a fixed front or the front of a drawer',
  'own-door-pull': 'on a door with a pull',
  'own-long-pull': 'on a front with a pull of two screws',
  'own-pull-by-end': 'on a door whose pull stands near an end',
  'own-lying-pull': 'on the front of a drawer, or a fixed front, with a pull',
  'end-joined': 'on a panel with a joint at an end that does not say it itself',
  'reference-end-joined': 'on a panel whose bottom or left end stands against another',
  'far-end-joined': 'on a panel whose top or right end stands against another',
  'deep-in-end': 'on a panel with dowel bores in its ends',
} as const;

export type Circumstance = keyof typeof CIRCUMSTANCES;

export const say = messages('reach', {
  only: ({ circumstance }: { readonly circumstance: Circumstance }) => `It counts only ${CIRCUMSTANCES[circumstance]}.`,
});

/** `always`: it does something wherever it may be written. */
export type Reach = 'always' | Circumstance;

/** A key that holds keys of its own. */
interface Nest<F extends Fields> {
  readonly own: Reach;
  readonly inside: ReachTable<F>;
}

type ReachTable<F extends Fields> = { readonly [K in keyof F]: ReachOf<F[K]['schema']> };

type ReachOf<S> =
  S extends RecordSchema<infer F>
    ? Nest<F>
    : S extends NamedSchema<infer I>
      ? I extends RecordSchema<infer F>
        ? Nest<F>
        : Reach
      : S extends EitherSchema<infer A>
        ? [LongForm<A>] extends [never]
          ? ReachOfItems<Extract<A[number], ListSchema<Schema>>>
          : ReachOf<LongForm<A>>
        : S extends ListSchema<Schema>
          ? ReachOfItems<S>
          : Reach;

type ReachOfItems<L> =
  L extends ListSchema<EitherSchema<infer A>> ? (LongForm<A> extends RecordSchema<infer F> ? Nest<F> : Reach) : Reach;

/** The same without the types of the schema, for walking the table as data. */
type AnyTable = Readonly<Record<string, Reach | AnyNest>>;
interface AnyNest {
  readonly own: Reach;
  readonly inside: AnyTable;
}

const always = 'always';
const bands = {
  own: always,
  inside: { front: always, back: always, 'reference-end': always, 'far-end': always },
} as const;
const shelf = { own: always, inside: { at: always, bay: 'bays', board: always, setback: always } } as const;

type SharedFields = (typeof jobSchema.fields.defaults)['schema']['fields'];

const SHARED: ReachTable<SharedFields> = {
  height: always,
  depth: always,
  board: always,
  band: always,
  joint: always,
  top: always,
  bottom: always,
  'rail-width': 'rails',
  plinth: always,
  back: {
    own: always,
    inside: { how: always, board: 'back', groove: 'recess', inset: 'groove', 'open-from': 'back', 'open-to': 'back' },
  },
  doors: {
    own: always,
    inside: {
      hung: 'whole-front',
      bays: 'no-fronts',
      how: 'fronts',
      board: 'fronts',
      band: 'fronts',
      hinge: 'doors',
      gap: 'front-gaps',
      reveal: 'overlay-fronts',
      'top-reveal': 'overlay-fronts',
      'bottom-reveal': 'overlay-fronts',
      buffer: 'overlay-fronts',
    },
  },
  'front-heights': { own: always, inside: { how: 'shared-heights', step: 'stepped-fronts' } },
  drawers: {
    own: always,
    inside: {
      slide: 'drawers',
      board: 'drawers',
      band: 'drawers',
      bottom: 'drawers',
      'bottom-board': 'drawers',
      joint: 'drawers',
      height: 'drawers',
    },
  },
  pulls: {
    own: always,
    inside: {
      pull: 'pulled-here',
      'on-drawers': 'pulled-drawers',
      lies: 'long-door-pulls',
      end: 'door-pulls',
      'from-edge': 'door-pulls',
      'from-end': 'pulls-by-end',
      'from-top': 'drawer-pulls',
    },
  },
  feet: 'on-plinth',
  angles: 'still',
  brackets: 'hanging',
  'end-panels': {
    own: always,
    inside: { on: always, board: 'end-panels', band: 'end-panels', 'to-floor': 'end-panels-beside-plinth' },
  },
  fillers: { own: always, inside: { left: always, right: always, board: 'fillers', band: 'fillers' } },
  load: {
    own: always,
    inside: {
      'on-shelf': always,
      'at-middle': always,
      standard: always,
      ends: always,
      back: always,
      lipping: always,
    },
  },
  rows: always,
  'row-holes': {
    own: always,
    inside: { bays: 'rows-in-bays', from: 'rows-asked', to: 'rows-asked', 'round-shelves': 'rows-asked' },
  },
  'row-offset': 'grid',
  'row-setback': 'rows',
  'rear-row': 'rear-rows',
  dowels: always,
  machines: { own: always, inside: { faces: always, ends: always, rows: 'rows', clamp: always } },
};

/** Where each key of a carcass does something. A key that the schema has and this has not does not compile. */
export const REACH: ReachTable<(typeof carcassSchema)['fields']> = {
  ...SHARED,
  kind: always,
  count: always,
  width: always,
  like: always,
  mirrored: 'like',
  place: { own: always, inside: { at: always, wall: always, 'above-floor': always } },
  dividers: { own: always, inside: { at: always, board: always } },
  'fixed-shelves': shelf,
  'loose-shelves': shelf,
  fronts: {
    own: always,
    inside: { front: always, pull: 'front-place', height: always, pitches: 'no-height', bay: 'bays' },
  },
  blind: { own: always, inside: { left: always, right: always, strip: 'blind', board: 'blind', band: 'blind' } },
  diagonal: { own: always, inside: { left: always, right: always } },
  'wardrobe-rails': { own: always, inside: { at: always, bay: 'bays', 'from-front': always, rail: always } },
  panels: {
    own: always,
    inside: {
      board: always,
      rows: 'upright',
      'row-offset': 'own-grid',
      joint: 'joined',
      dowels: 'joined',
      'end-dowels': 'end-joined',
      'reference-end': { own: 'reference-end-joined', inside: { joint: always, dowels: always } },
      'far-end': { own: 'far-end-joined', inside: { joint: always, dowels: always } },
      'face-depth': 'deep-in-face',
      'end-depth': 'deep-in-end',
      bands,
      pull: 'own-pull',
      'pull-lies': 'own-long-pull',
      'pull-end': 'own-door-pull',
      'pull-from-edge': 'own-door-pull',
      'pull-from-end': 'own-pull-by-end',
      'pull-from-top': 'own-lying-pull',
    },
  },
  note: always,
};

/** The same of the job's defaults: what hangs has a plinth only where it is its own. */
const IN_DEFAULTS: AnyTable = { ...SHARED, plinth: 'standing' };

/** A written value that counts only in some circumstance. */
export interface ConditionalValue {
  readonly path: Path;
  /** Of its key. */
  readonly place: Place;
  readonly circumstance: Circumstance;
  /** The panel that it is written for, by its key under `panels`; null where it is of the carcass as a whole. */
  readonly panel: string | null;
}

/** The values under a carcass that count only in some circumstance; in the order of the text. */
export function conditionalValues(node: TreeNode | null): readonly ConditionalValue[] {
  return node?.kind === 'map' ? inMap(node.entries, REACH, [], null) : [];
}

/** The same of those under `defaults`. */
export function conditionalDefaults(node: TreeNode | null): readonly ConditionalValue[] {
  return node?.kind === 'map' ? inMap(node.entries, IN_DEFAULTS, [], null) : [];
}

function inMap(
  entries: readonly MapEntry[],
  table: AnyTable,
  path: Path,
  panel: string | null,
): readonly ConditionalValue[] {
  return entries.flatMap(({ key, keyPlace, value }) => {
    const reach = Object.hasOwn(table, key) ? table[key]! : always;
    const here = [...path, key];
    const own = typeof reach === 'string' ? reach : reach.own;
    if (own !== always) return [{ path: here, place: keyPlace, circumstance: own, panel }];
    if (typeof reach === 'string' || value === null) return [];
    const single = value.kind === 'scalar' ? singleValue(reach.inside, here) : always;
    if (single !== always) return [{ path: here, place: keyPlace, circumstance: single, panel }];
    return inside(value, reach.inside, here, panel);
  });
}

/** Where a single value that stands for one key of a map does something. */
function singleValue(table: AnyTable, path: Path): Reach {
  const key = shorthandAt(carcassSchema, path);
  const reach = key !== null && Object.hasOwn(table, key) ? table[key]! : always;
  return typeof reach === 'string' ? reach : reach.own;
}

function inside(node: TreeNode, table: AnyTable, path: Path, panel: string | null): readonly ConditionalValue[] {
  if (node.alias !== undefined) return [];
  if (node.kind === 'list')
    return node.items.flatMap((item, i) =>
      item.kind === 'map' ? inMap(item.entries, table, [...path, i], panel) : [],
    );
  if (node.kind !== 'map') return [];
  if (!arePanels(path)) return inMap(node.entries, table, path, panel);
  return node.entries.flatMap(({ key, value }) =>
    value?.kind === 'map' && value.alias === undefined ? inMap(value.entries, table, [...path, key], key) : [],
  );
}

/** The circumstance in which the value at a path of a carcass counts; `always`, also for a path that leads nowhere. */
export function reachAt(path: Path): Reach {
  return reachIn(REACH, path);
}

/** The same of a value at a path of the defaults. */
export function reachInDefaults(path: Path): Reach {
  return reachIn(IN_DEFAULTS, path);
}

function reachIn(all: AnyTable, path: Path): Reach {
  let table = all;
  let reach: Reach = always;
  path.forEach((step, i) => {
    // Numbers of items and names of panels are the owner's.
    if (typeof step === 'number' || arePanels(path.slice(0, i))) return;
    const found: Reach | AnyNest = Object.hasOwn(table, step) ? table[step]! : always;
    reach = typeof found === 'string' ? found : found.own;
    table = typeof found === 'string' ? {} : found.inside;
  });
  return reach;
}

function arePanels(path: Path): boolean {
  return path.length === 1 && path[0] === 'panels';
}

/** 'It counts only with `top: rails`.' Null where it counts wherever it may be written. */
export function reachWords(reach: Reach): Message | null {
  return reach === always ? null : say.only({ circumstance: reach });
}

/** The same for a path from the root of a job file. */
export function reachInJob([first, ...rest]: Path): Message | null {
  if (first === 'defaults') return reachWords(reachInDefaults(rest));
  return first === CARCASSES_KEY ? reachWords(reachAt(rest.slice(1))) : null;
}
