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
