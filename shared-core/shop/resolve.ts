import type { Finding } from '../document/finding.js';
import type { Place } from '../document/place.js';
import { readTree } from '../document/read.js';
import type { TreeNode } from '../document/tree.js';
import { judgedFittings } from '../fittings/read.js';
import { isUnknownUnit, sayUnit, unitEntry, unitOf } from '../schema/file-unit.js';
import { readBySchema } from '../schema/read.js';
import type { Fields } from '../schema/schema.js';
import { syntaxFinding } from '../schema/tell.js';
import { modelOf } from '../schema/model.js';
import { emptyShop } from './empty.js';
import { habits as habitSchema } from './habit-schemas.js';
import { checkCompanions, namedHabits } from './habits.js';
import { soundLabelSheet } from './label-sheet.js';
import type { Shop } from './model.js';
import { shopSchema, type ShopInput } from './schema.js';
import { STOCK_LISTS, stockOf, type Stock, type StockList } from './stock.js';
import { unusedValues } from './unused.js';
import { hidesNames, unreadOf, withAllStops, writtenNames } from './unread.js';

const NOWHERE: Place = { part: 'shop', start: 0, end: 0 };

export interface ReadShop {
  /** Always usable: what could not be read is filled in from the built-in shop. */
  readonly shop: Shop;
  /** The lists of which the file writes nothing, so that those of the built-in shop stand for them. */
  readonly leftOut: readonly StockList[];
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
  const input = judgedFittings(unitUnknown ? withoutFigures(said) : said, findings);
  const model = modelOf(
    shopSchema,
    { value: input, place, path: [], written: true },
    // The built-in shop's things have no place: the owner has no file that writes them.
    { place: ({ name }) => (base === null ? NOWHERE : name.place), before: base && filling(base) },
  );
  const written = writtenNames(root);
  const stocked = stockOf(model, findings);
  const own = { ...stocked, machines: withAllStops(stocked.machines, root) };
  // A list comes wholly from the file, or wholly from the base where the file writes nothing of it.
  const leftOut = base === null ? [] : STOCK_LISTS.filter((list) => own[list].size + written[list].size === 0);
  const stock: Stock = { ...own, ...Object.fromEntries(leftOut.map((list) => [list, base![list]])) };
  const unread = unreadOf(written, stock);
  const known = { ...stock, unread };
  const blamed = habitsPlace(root) ?? place;
  const usual = base?.habits.machines ?? null;
  const habits = namedHabits(model.habits, input.habits?.value ?? {}, usual, known, blamed, findings);
  checkCompanions(input, known, blamed, findings);
  const { title, bits, changeover, handling, tolerances, rates } = model;
  const labelSheet = soundLabelSheet(model.labelSheet, input['label-sheet'], base?.labelSheet ?? null, findings);
  findings.push(...unusedValues(root, habits));
  if (root === null && base !== null) findings.push(emptyShop(text, place));
  const unusable = broken.length > 0 || unitUnknown || hidesNames(root);
  const shop: Shop = {
    title,
    unit,
    neutral: base === null,
    ...known,
    unusable,
    bits,
    habits,
    changeover,
    handling,
    tolerances,
    labelSheet,
    rates,
  };
  // What a broken text seems to say is not worth telling.
  return { shop, leftOut, findings: broken.length > 0 ? broken : findings, root };
}

/** What stands for the keys that a shop leaves out. */
function filling({ habits, changeover, handling, tolerances, labelSheet, rates }: Shop) {
  return { habits, changeover, handling, tolerances, labelSheet, rates };
}

/** What a shop says where no figure of it can be trusted: its title and the names of its habits. */
function withoutFigures({ title, habits }: ShopInput['value']): ShopInput['value'] {
  const names = Object.entries(habits?.value ?? {}).filter(([key]) => !holdsFigures(habitSchema.fields, key));
  return {
    ...(title && { title }),
    ...(habits && { habits: { ...habits, value: Object.fromEntries(names) } }),
  };
}

function holdsFigures(fields: Fields, key: string): boolean {
  const schema = fields[key]!.schema;
  return schema.type === 'record'
    ? Object.keys(schema.fields).some((inner) => holdsFigures(schema.fields, inner))
    : schema.type !== 'name';
}

function habitsPlace(root: TreeNode | null): Place | undefined {
  return root?.kind === 'map' ? root.entries.find(({ key }) => key === 'habits')?.keyPlace : undefined;
}
