import type { Finding } from '../document/finding.js';
import { thingsOf, type Model, type Named } from '../schema/model.js';
import { errorAt } from '../schema/tell.js';
import { say, type NamedSort } from './messages.js';
import type { Board, Shop } from './model.js';
import { shopSchema } from './schema.js';

type ShopModel = Model<typeof shopSchema>;
export type Stock = Pick<
  Shop,
  | 'boards'
  | 'bands'
  | 'fittings'
  | 'hinges'
  | 'slides'
  | 'pulls'
  | 'brackets'
  | 'wardrobeRails'
  | 'feet'
  | 'angles'
  | 'machines'
>;

/** Where a shop keeps the things of each sort: in one list, be it of one section of the file or of several. */
export const STOCKED = {
  board: 'boards',
  band: 'bands',
  fitting: 'fittings',
  hinge: 'hinges',
  slide: 'slides',
  pull: 'pulls',
  bracket: 'brackets',
  'wardrobe-rail': 'wardrobeRails',
  foot: 'feet',
  angle: 'angles',
  machine: 'machines',
} as const satisfies Readonly<Record<NamedSort, keyof Stock>>;

export type StockList = keyof Stock;

export const STOCK_LISTS: readonly StockList[] = Object.values(STOCKED);

const isStocked = (of: string): of is NamedSort => Object.hasOwn(STOCKED, of);

/** The list that things of a sort are in; null for what is no thing of a shop. */
export const listOf = (sort: string): StockList | null => (isStocked(sort) ? STOCKED[sort] : null);

/** The keys of a shop file that hold the things of a list, in the order of the schema. */
export function sectionsOf(list: StockList): readonly string[] {
  return Object.entries(shopSchema.fields).flatMap(([section, { schema }]) =>
    schema.type === 'named' && listOf(schema.sort.of) === list ? [section] : [],
  );
}

/** The named things of a shop, each sort by name; a name that is taken is told, and the first thing keeps it. */
export function stockOf(shop: ShopModel, findings: Finding[]): Stock {
  return {
    boards: byName(
      shop.boards.map((board) => boardOf(board, findings)),
      'board',
      findings,
    ),
    bands: byName(shop.bands, 'band', findings),
    fittings: byName(thingsOf(shopSchema, shop, 'fitting'), 'fitting', findings),
    hinges: byName(shop.hinges, 'hinge', findings),
    slides: byName(shop.slides, 'slide', findings),
    pulls: byName(shop.pulls, 'pull', findings),
    brackets: byName(shop.brackets, 'bracket', findings),
    wardrobeRails: byName(shop.wardrobeRails, 'wardrobe-rail', findings),
    feet: byName(shop.feet, 'foot', findings),
    angles: byName(shop.angles, 'angle', findings),
    machines: byName(thingsOf(shopSchema, shop, 'machine'), 'machine', findings),
  };
}

function boardOf({ measured, thickness, ...board }: ShopModel['boards'][number], findings: Finding[]): Board {
  const { name, sheetLength, sheetWidth } = board;
  // The usual sheet goes by the name of its board.
  const clash =
    sheetLength !== null && sheetWidth !== null ? board.sheets.find((sheet) => sheet.name === name) : undefined;
  if (clash !== undefined) findings.push(errorAt('name-duplicate', clash.place, say.sheetLikeBoard({ name })));
  const sheets = board.sheets.filter((sheet) => sheet !== clash);
  return { ...board, sheets, thickness: measured ?? thickness, nominal: thickness };
}

function byName<T extends Named>(things: readonly T[], sort: NamedSort, findings: Finding[]): ReadonlyMap<string, T> {
  const map = new Map<string, T>();
  for (const thing of things) {
    const taken = map.get(thing.name);
    if (taken === undefined) {
      map.set(thing.name, thing);
      continue;
    }
    const related = [{ place: taken.place, message: say.first({ name: thing.name }) }];
    const message = say.twice({ name: thing.name, sort });
    findings.push(errorAt('name-duplicate', thing.place, message, { related }));
  }
  return map;
}
