import type { Finding } from '../document/finding.js';
import type { Place } from '../document/place.js';
import { readTree } from '../document/read.js';
import type { TreeNode } from '../document/tree.js';
import { isUnknownUnit, sayUnit, unitEntry, unitOf } from '../schema/file-unit.js';
import { readBySchema, syntaxFinding } from '../schema/read.js';
import { habitsOf } from './habits.js';
import { machinesOf } from './machines.js';
import { bandsOf, boardsOf, checkDowels, fittingsOf } from './materials.js';
import type { Machine, MachineKind, Shop } from './model.js';
import { Names } from './names.js';
import { shopSchema, type ShopInput } from './schema.js';

export interface ReadShop {
  /** Always usable: what could not be read is filled in from the built-in shop. */
  readonly shop: Shop;
  readonly findings: readonly Finding[];
  readonly root: TreeNode | null;
}

/** Reads a shop text; `base` fills its gaps, and is null for the built-in shop, whose text has none. */
export function readOver(text: string, base: Shop | null): ReadShop {
  const { root, problems } = readTree(text, 'shop');
  const broken = problems.map(syntaxFinding);
  const findings: Finding[] = [];
  const place: Place = { part: 'shop', start: 0, end: Math.min(text.length, text.search(/[\r\n]|$/)) };
  // The unit is read first: it decides what every bare number of the file means.
  const unitAt = unitEntry(root?.kind === 'map' ? root.entries : []);
  const unit = unitOf(unitAt);
  const read = readBySchema(shopSchema, root, { unit, part: 'shop', path: [], place, mendSpans: true });
  const judged = read.findings.filter(({ rule }) => !isUnknownUnit(unitAt) || rule !== 'length-impossible');
  findings.push(...judged.map((one) => sayUnit(one, unitAt)));
  const input: ShopInput['value'] = read.value?.value ?? {};
  checkDowels(input, unit, findings);
  const names = new Names(findings, base === null);
  const stock = {
    boards: filled(boardsOf(input, names), base?.boards),
    bands: filled(bandsOf(input, names), base?.bands),
    fittings: filled(fittingsOf(input, names), base?.fittings),
    machines: filled(machinesOf(input, names), hasMachines(root) ? undefined : base?.machines),
  };
  const unread = unreadMachines(root, stock.machines);
  const shop: Shop = {
    title: input.title?.value ?? '',
    unit,
    neutral: base === null,
    ...stock,
    unread,
    bits: input.bits?.value.map((bit) => bit.value) ?? base?.bits ?? null,
    ...habitsOf(input, { ...stock, unread }, base, habitsPlace(root) ?? place, findings),
  };
  // What a broken text seems to say is not worth telling.
  return { shop, findings: broken.length > 0 ? broken : findings, root };
}

/** A sort of things comes wholly from the file, or wholly from the base where the file has none of it. */
function filled<T>(own: ReadonlyMap<string, T>, base: ReadonlyMap<string, T> | undefined): ReadonlyMap<string, T> {
  return own.size > 0 ? own : (base ?? own);
}

const KIND_OF_SECTION: Readonly<Record<string, MachineKind>> = {
  'vertical-heads': 'vertical',
  'horizontal-heads': 'horizontal',
  'line-drills': 'line',
  'cup-borers': 'cup',
  'panel-saws': 'saw',
  'edge-banders': 'bander',
  'case-clamps': 'clamp',
};

/** The names of all machines that a text writes, with their kinds, be they readable or not. */
function writtenMachines(root: TreeNode | null): ReadonlyMap<string, MachineKind> {
  const written = new Map<string, MachineKind>();
  for (const { key, value } of root?.kind === 'map' ? root.entries : []) {
    if (!Object.hasOwn(KIND_OF_SECTION, key) || value?.kind !== 'map') continue;
    for (const entry of value.entries) written.set(entry.key, KIND_OF_SECTION[key]!);
  }
  return written;
}

function hasMachines(root: TreeNode | null): boolean {
  return writtenMachines(root).size > 0;
}

function unreadMachines(root: TreeNode | null, read: ReadonlyMap<string, Machine>): ReadonlyMap<string, MachineKind> {
  return new Map([...writtenMachines(root)].filter(([name]) => !read.has(name)));
}

function habitsPlace(root: TreeNode | null): Place | undefined {
  return root?.kind === 'map' ? root.entries.find(({ key }) => key === 'habits')?.keyPlace : undefined;
}
