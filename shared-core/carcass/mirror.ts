import type { Located } from '../document/place.js';
import { standsAcross, type CarcassSaid } from '../job/like.js';
import type { HungWord } from '../job/model.js';
import { mirroredEdges, mirroredKey } from '../job/panel-key.js';
import type { Micrometres } from '../length/units.js';
import { namedStacks, type Asking } from './fronts/asked.js';

type Said<K extends keyof CarcassSaid> = NonNullable<CarcassSaid[K]>;
type ListOf<K extends 'dividers' | 'fixed-shelves'> = Extract<Said<K>, { readonly as: 'list' }>;

/**
 * What is said of a carcass, with left and right changed over: the sides, the places of dividers, the bays, the hands of doors, what
 * is chosen for single panels. Values keep their places in the text. Depths and heights are the same on either hand.
 */
export function mirror(said: CarcassSaid): CarcassSaid {
  const {
    width,
    dividers,
    doors,
    fronts,
    'end-panels': endPanels,
    fillers,
    blind,
    diagonal,
    'row-holes': rowHoles,
  } = said;
  const bays = bayCount(said);
  const other = {
    ...said,
    ...(width && dividers?.as === 'list' && { dividers: acrossWidth(dividers, width.value) }),
    ...(doors && { doors: mirroredDoors(doors, bays) }),
    ...(fronts && {
      fronts: withValue(
        fronts,
        fronts.value.map((one) => withValue(one, inOtherBay(handed(one.value), bays))),
      ),
    }),
    ...(endPanels?.value.on && {
      'end-panels': withValue(endPanels, { ...endPanels.value, on: otherHand(endPanels.value.on) }),
    }),
    ...(fillers && { fillers: withValue(fillers, changedOver(fillers.value)) }),
    ...(blind && { blind: withValue(blind, changedOver(blind.value)) }),
    ...(diagonal && { diagonal: withValue(diagonal, changedOver(diagonal.value)) }),
    ...(rowHoles?.value.bays && {
      'row-holes': withValue(rowHoles, {
        ...rowHoles.value,
        bays: withValue(
          rowHoles.value.bays,
          rowHoles.value.bays.value.map((one) => otherBay(one, bays)),
        ),
      }),
    }),
    ...(said['wardrobe-rails'] && {
      'wardrobe-rails': withValue(
        said['wardrobe-rails'],
        said['wardrobe-rails'].value.map((one) => withValue(one, inOtherBay(one.value, bays))),
      ),
    }),
    ...shelvesInBays(said, 'fixed-shelves', bays),
    ...shelvesInBays(said, 'loose-shelves', bays),
  };
  return said.panels === undefined ? other : { ...other, panels: mirroredPanels(said, other) };
}

function bayCount(said: CarcassSaid): number {
  const { dividers } = said;
  // Across a corner there are no dividers, whatever is said.
  if (dividers === undefined || standsAcross(said)) return 1;
  return 1 + (dividers.as === 'list' ? dividers.is.value.length : dividers.is.value);
}

/** The same value in its place. */
const withValue = <T, U>(one: Located<T>, value: U): Located<U> => ({ ...one, value });

function otherHand<T extends string>(one: Located<T>): Located<T> {
  const other = { left: 'right', right: 'left' }[one.value as string];
  // Whoever takes the one hand takes the other.
  return other === undefined ? one : withValue(one, other as T);
}

/** Dividers stay in the order of their list, so that each keeps its name. */
function acrossWidth(list: ListOf<'dividers'>, width: number): ListOf<'dividers'> {
  const mirrored = list.is.value.map((one) => {
    const { at } = one.value;
    return withValue(one, { ...one.value, at: withValue(at, width - at.value) });
  });
  return { ...list, is: withValue(list.is, mirrored) };
}

function inOtherBay<T extends { readonly bay?: Located<number> }>(one: T, bays: number): T {
  return one.bay === undefined ? one : { ...one, bay: otherBay(one.bay, bays) };
}

/** Bays are counted from the left. One that is not there stays as it is. */
const otherBay = (bay: Located<number>, bays: number): Located<number> =>
  bay.value > bays ? bay : withValue(bay, bays + 1 - bay.value);

/** What is said of the left is said of the right, and the other way round. */
function changedOver<V extends { readonly left?: Located<Micrometres>; readonly right?: Located<Micrometres> }>(
  one: V,
): Omit<V, 'left' | 'right'> & { readonly left?: Located<Micrometres>; readonly right?: Located<Micrometres> } {
  const { left, right, ...rest } = one;
  return { ...rest, ...(right && { left: right }), ...(left && { right: left }) };
}

function shelvesInBays(said: CarcassSaid, key: 'fixed-shelves' | 'loose-shelves', bays: number): CarcassSaid {
  const shelves = said[key];
  if (shelves?.as !== 'list') return {};
  const mirrored = shelves.is.value.map((one) => withValue(one, inOtherBay(one.value, bays)));
  return { [key]: { ...shelves, is: withValue(shelves.is, mirrored) } };
}

function handed<T extends { readonly front: Located<string> }>(one: T): T {
  return { ...one, front: otherHand(one.front) };
}

/** What hangs before each bay comes from the other end; a bay without a word has nothing. */
function mirroredDoors(doors: Said<'doors'>, count: number): Said<'doors'> {
  const { hung, bays } = doors.value;
  const words = (bays?.value ?? []).map(otherHand);
  const none = (): Located<HungWord> => withValue(bays!, 'none');
  const missing = Array.from({ length: Math.max(0, count - words.length) }, none);
  return withValue(doors, {
    ...doors.value,
    ...(hung && { hung: otherHand(hung) }),
    ...(bays && { bays: withValue(bays, [...missing, ...words.slice(0, count).reverse(), ...words.slice(count)]) }),
  });
}

function mirroredPanels(said: CarcassSaid, other: CarcassSaid): Said<'panels'> {
  const panels = said.panels!;
  const names = { bays: bayCount(said), areSpread: said.dividers?.as === 'count', fronts: frontNames(said, other) };
  const diagonal = standsAcross(said);
  const entries = panels.value.map(({ name, value }) => {
    const { bands, 'reference-end': atReference, 'far-end': atFar, ...rest } = value.value;
    const edges = mirroredEdges(name.value, diagonal);
    const [reference, far] = edges.has('far-end') ? [atFar, atReference] : [atReference, atFar];
    const choice = {
      ...rest,
      ...(bands && { bands: mirroredBands(edges, bands) }),
      ...(reference && { 'reference-end': reference }),
      ...(far && { 'far-end': far }),
    };
    return { name: withValue(name, mirroredKey(name.value, names)), value: withValue(value, choice) };
  });
  return withValue(panels, entries);
}

type Bands = NonNullable<Said<'panels'>['value'][number]['value']['value']['bands']>;

function mirroredBands(other: ReadonlyMap<string, string>, bands: Bands): Bands {
  return withValue(
    bands,
    Object.fromEntries(Object.entries(bands.value).map(([edge, band]) => [other.get(edge) ?? edge, band])),
  );
}

/** The keys of doors, drawers and fixed fronts in the one and in the other, which are counted from the left in both. */
function frontNames(said: CarcassSaid, other: CarcassSaid): ReadonlyMap<string, string> {
  const before = namedStacks(asking(said)).toReversed().flat();
  const after = namedStacks(asking(other)).flat();
  return new Map(
    before.flatMap(({ keys }, i) => keys.toReversed().map((key, n) => [key, after[i]!.keys[n]!] as const)),
  );
}

function asking({ doors, dividers, fronts, ...said }: CarcassSaid): Asking {
  const nothing = { ...(said.kind ?? said.width)!, value: 'none' as const };
  return {
    doors: { hung: doors?.value.hung ?? nothing, bays: doors?.value.bays ?? null },
    dividers: { length: bayCount({ ...said, ...(dividers && { dividers }) }) - 1 },
    fronts: fronts ?? null,
  };
}
