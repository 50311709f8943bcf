import type { Finding } from '../document/finding.js';
import type { Place } from '../document/place.js';
import { readTree } from '../document/read.js';
import type { TreeNode } from '../document/tree.js';
import { isUnknownUnit, sayUnit, unitEntry, unitOf } from '../schema/file-unit.js';
import { readBySchema } from '../schema/read.js';
import { syntaxFinding } from '../schema/tell.js';
import { habitsOf } from './habits.js';
import { machinesOf } from './machines.js';
import { bandsOf, boardsOf, checkDowels, fittingsOf } from './materials.js';
import type { Shop } from './model.js';
import { Names } from './names.js';
import { shopSchema, type ShopInput } from './schema.js';
import { hidesNames, unreadOf, withAllStops, writtenNames } from './unread.js';

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
  const unitUnknown = isUnknownUnit(unitAt);
  const judged = read.findings.filter(({ rule }) => !unitUnknown || rule !== 'length-impossible');
  findings.push(...judged.map((one) => sayUnit(one, unitAt)));
  const said: ShopInput['value'] = read.value?.value ?? {};
  const input = unitUnknown ? withoutFigures(said) : said;
  checkDowels(input, unit, findings);
  const names = new Names(findings, base === null);
  const written = writtenNames(root);
  const stock = {
    boards: filled(boardsOf(input, names), written.boards, base?.boards),
    bands: filled(bandsOf(input, names), written.bands, base?.bands),
    fittings: filled(fittingsOf(input, names), written.fittings, base?.fittings),
    machines: filled(withAllStops(machinesOf(input, names), root), written.machines, base?.machines),
  };
  const unread = unreadOf(written, stock);
  const shop: Shop = {
    title: input.title?.value ?? '',
    unit,
    neutral: base === null,
    ...stock,
    unread,
    unusable: broken.length > 0 || unitUnknown || hidesNames(root),
    bits: input.bits?.value.map((bit) => bit.value) ?? base?.bits ?? null,
    ...habitsOf(input, { ...stock, unread }, base, habitsPlace(root) ?? place, findings),
  };
  // What a broken text seems to say is not worth telling.
  return { shop, findings: broken.length > 0 ? broken : findings, root };
}

/** A sort of things comes wholly from the file, or wholly from the base where the file writes none of it. */
function filled<T>(
  own: ReadonlyMap<string, T>,
  { size: written }: { readonly size: number },
  base: ReadonlyMap<string, T> | undefined,
): ReadonlyMap<string, T> {
  return own.size + written > 0 ? own : (base ?? own);
}

/** What a shop says where no figure of it can be trusted: the names of its habits. */
function withoutFigures({ title, habits }: ShopInput['value']): ShopInput['value'] {
  if (habits === undefined) return { ...(title && { title }) };
  const { board, band, joint, machines, 'back-board': back } = habits.value;
  const value = {
    ...(board && { board }),
    ...(back && { 'back-board': back }),
    ...(band && { band }),
    ...(joint && { joint }),
    ...(machines && { machines }),
  };
  return { ...(title && { title }), habits: { ...habits, value } };
}

function habitsPlace(root: TreeNode | null): Place | undefined {
  return root?.kind === 'map' ? root.entries.find(({ key }) => key === 'habits')?.keyPlace : undefined;
}
