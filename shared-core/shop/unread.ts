import type { FittingKind } from '../fittings/names.js';
import type { MapEntry, TreeNode } from '../document/tree.js';
import type { Machine, MachineKind, Unread } from './model.js';
import { shopSchema } from './schema.js';
import type { Stock } from './stock.js';

/** The sections of a shop file that hold things of one sort, and what kind of thing each holds. */
const sections = (sort: 'fitting' | 'machine'): readonly (readonly [section: string, kind: string])[] =>
  Object.entries(shopSchema.fields).flatMap(([section, { schema }]) =>
    schema.type === 'named' && schema.sort.of === sort ? [[section, schema.sort.kind ?? ''] as const] : [],
  );
const FITTINGS = sections('fitting') as readonly (readonly [string, FittingKind])[];
const MACHINES = sections('machine') as readonly (readonly [string, MachineKind])[];
const SECTIONS = [
  'boards',
  'bands',
  'hinges',
  'slides',
  'pulls',
  'brackets',
  'wardrobe-rails',
  'feet',
  'angles',
  ...[...FITTINGS, ...MACHINES].map(([section]) => section),
];

const entriesOf = (node: TreeNode | null | undefined): readonly MapEntry[] =>
  node?.kind === 'map' ? node.entries : [];
const isNothing = (node: TreeNode | null): boolean =>
  node === null || (node.kind === 'scalar' && node.text.trim() === '');

/** The names that a text writes, be what stands under them readable or not. */
export function writtenNames(root: TreeNode | null): Unread {
  const names = (section: string): readonly string[] =>
    entriesOf(entriesOf(root).find(({ key }) => key === section)?.value).map(({ key }) => key);
  const byKind = <K>(kinds: readonly (readonly [string, K])[]): ReadonlyMap<string, K> =>
    new Map(kinds.flatMap(([section, kind]) => names(section).map((name) => [name, kind] as const)));
  return {
    boards: new Set(names('boards')),
    bands: new Set(names('bands')),
    fittings: byKind(FITTINGS),
    hinges: new Set(names('hinges')),
    slides: new Set(names('slides')),
    pulls: new Set(names('pulls')),
    brackets: new Set(names('brackets')),
    wardrobeRails: new Set(names('wardrobe-rails')),
    feet: new Set(names('feet')),
    angles: new Set(names('angles')),
    machines: byKind(MACHINES),
  };
}

/** The machines of which every stop could be read: without one that it has, a machine would seem to lack reach. */
export function withAllStops(
  machines: ReadonlyMap<string, Machine>,
  root: TreeNode | null,
): ReadonlyMap<string, Machine> {
  const sections = entriesOf(root).filter(({ key }) => MACHINES.some(([section]) => section === key));
  const written = new Map(
    sections.flatMap(({ value }) => entriesOf(value).map((one) => [one.key, one.value] as const)),
  );
  const isWhole = (machine: Machine): boolean => {
    if (!('stops' in machine)) return true;
    const stops = entriesOf(entriesOf(written.get(machine.name)).find(({ key }) => key === 'stops')?.value);
    return stops.every(({ key }) => machine.stops.some(({ name }) => name === key));
  };
  return new Map([...machines].filter(([, machine]) => isWhole(machine)));
}

/** Of the written names those that nothing could be read for. */
export function unreadOf(
  written: Unread,
  { boards, bands, fittings, hinges, slides, pulls, brackets, wardrobeRails, feet, angles, machines }: Stock,
): Unread {
  const without = <K>(all: ReadonlyMap<string, K>, read: ReadonlyMap<string, unknown>): ReadonlyMap<string, K> =>
    new Map([...all].filter(([name]) => !read.has(name)));
  return {
    boards: new Set([...written.boards].filter((name) => !boards.has(name))),
    bands: new Set([...written.bands].filter((name) => !bands.has(name))),
    fittings: without(written.fittings, fittings),
    hinges: new Set([...written.hinges].filter((name) => !hinges.has(name))),
    slides: new Set([...written.slides].filter((name) => !slides.has(name))),
    pulls: new Set([...written.pulls].filter((name) => !pulls.has(name))),
    brackets: new Set([...written.brackets].filter((name) => !brackets.has(name))),
    wardrobeRails: new Set([...written.wardrobeRails].filter((name) => !wardrobeRails.has(name))),
    feet: new Set([...written.feet].filter((name) => !feet.has(name))),
    angles: new Set([...written.angles].filter((name) => !angles.has(name))),
    machines: without(written.machines, machines),
  };
}

/** True where the text does not even tell the names: it is no map, or something else stands where things are named. */
export function hidesNames(root: TreeNode | null): boolean {
  if (root?.kind !== 'map') return !isNothing(root);
  return root.entries.some(({ key, value }) => SECTIONS.includes(key) && !isNothing(value) && value?.kind !== 'map');
}
