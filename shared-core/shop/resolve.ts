import type { Finding } from '../document/finding.js';
import type { Place } from '../document/place.js';
import { readTree } from '../document/read.js';
import type { TreeNode } from '../document/tree.js';
import type { Unit } from '../length/units.js';
import { readBySchema, syntaxFinding } from '../schema/read.js';
import { habitsOf } from './habits.js';
import { machinesOf } from './machines.js';
import { bandsOf, boardsOf, checkDowels, fittingsOf } from './materials.js';
import type { Shop } from './model.js';
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
  const unit = unitOf(root);
  const read = readBySchema(shopSchema, root, { unit, part: 'shop', path: [], place });
  findings.push(...read.findings);
  const input: ShopInput['value'] = read.value?.value ?? {};
  checkDowels(input, unit, findings);
  const names = new Names(findings, base === null);
  const stock = {
    boards: filled(boardsOf(input, names), base?.boards),
    bands: filled(bandsOf(input, names), base?.bands),
    fittings: filled(fittingsOf(input, names), base?.fittings),
    machines: filled(machinesOf(input, names), base?.machines),
  };
  const shop: Shop = {
    title: input.title?.value ?? '',
    unit,
    neutral: base === null,
    ...stock,
    bits: input.bits?.value.map((bit) => bit.value) ?? base?.bits ?? null,
    ...habitsOf(input, stock, base, habitsPlace(root) ?? place, findings),
  };
  // What a broken text seems to say is not worth telling.
  return { shop, findings: broken.length > 0 ? broken : findings, root };
}

/** A sort of things comes wholly from the file, or wholly from the base where the file has none of it. */
function filled<T>(own: ReadonlyMap<string, T>, base: ReadonlyMap<string, T> | undefined): ReadonlyMap<string, T> {
  return own.size > 0 ? own : (base ?? own);
}

function habitsPlace(root: TreeNode | null): Place | undefined {
  return root?.kind === 'map' ? root.entries.find(({ key }) => key === 'habits')?.keyPlace : undefined;
}

function unitOf(root: TreeNode | null): Unit {
  const entry = root?.kind === 'map' ? root.entries.find(({ key }) => key === 'unit') : undefined;
  return entry?.value?.kind === 'scalar' && entry.value.text.trim() === 'in' ? 'in' : 'mm';
}
