import type { MapEntry, TreeNode } from '../document/tree.js';
import type { Fitting, Machine, MachineKind, Shop, Unread } from './model.js';

type Stock = Pick<Shop, 'boards' | 'bands' | 'fittings' | 'machines'>;

const FITTINGS: Readonly<Record<string, Fitting['kind']>> = { dowels: 'dowel', screws: 'screw', cams: 'cam' };
const MACHINES: Readonly<Record<string, MachineKind>> = {
  'vertical-heads': 'vertical',
  'horizontal-heads': 'horizontal',
  'line-drills': 'line',
  'cup-borers': 'cup',
  'panel-saws': 'saw',
  'edge-banders': 'bander',
  'case-clamps': 'clamp',
};
const SECTIONS = ['boards', 'bands', ...Object.keys(FITTINGS), ...Object.keys(MACHINES)];

const entriesOf = (node: TreeNode | null | undefined): readonly MapEntry[] =>
  node?.kind === 'map' ? node.entries : [];
const isNothing = (node: TreeNode | null): boolean =>
  node === null || (node.kind === 'scalar' && node.text.trim() === '');

/** The names that a text writes, be what stands under them readable or not. */
export function writtenNames(root: TreeNode | null): Unread {
  const names = (section: string): readonly string[] =>
    entriesOf(entriesOf(root).find(({ key }) => key === section)?.value).map(({ key }) => key);
  const byKind = <K>(kinds: Readonly<Record<string, K>>): ReadonlyMap<string, K> =>
    new Map(Object.entries(kinds).flatMap(([section, kind]) => names(section).map((name) => [name, kind] as const)));
  return {
    boards: new Set(names('boards')),
    bands: new Set(names('bands')),
    fittings: byKind(FITTINGS),
    machines: byKind(MACHINES),
  };
}

/** The machines of which every stop could be read: without one that it has, a machine would seem to lack reach. */
export function withAllStops(
  machines: ReadonlyMap<string, Machine>,
  root: TreeNode | null,
): ReadonlyMap<string, Machine> {
  const sections = entriesOf(root).filter(({ key }) => Object.hasOwn(MACHINES, key));
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
export function unreadOf(written: Unread, { boards, bands, fittings, machines }: Stock): Unread {
  const without = <K>(all: ReadonlyMap<string, K>, read: ReadonlyMap<string, unknown>): ReadonlyMap<string, K> =>
    new Map([...all].filter(([name]) => !read.has(name)));
  return {
    boards: new Set([...written.boards].filter((name) => !boards.has(name))),
    bands: new Set([...written.bands].filter((name) => !bands.has(name))),
    fittings: without(written.fittings, fittings),
    machines: without(written.machines, machines),
  };
}

/** True where the text does not even tell the names: it is no map, or something else stands where things are named. */
export function hidesNames(root: TreeNode | null): boolean {
  if (root?.kind !== 'map') return !isNothing(root);
  return root.entries.some(({ key, value }) => SECTIONS.includes(key) && !isNothing(value) && value?.kind !== 'map');
}
