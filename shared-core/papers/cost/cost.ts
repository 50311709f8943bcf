import type { Micrometres } from '../../length/units.js';
import type { JobCost } from '../../machining/plan/cost.js';
import { sheetPrice } from '../../sheets/board-problem.js';
import type { CutSize } from '../../sheets/cut-list.js';
import type { Part } from '../../sheets/model.js';
import type { Band, Board, PanelSaw, Shop } from '../../shop/model.js';
import type { BuiltCarcass } from '../built.js';
import { edgesOf } from '../banding-list/edges.js';
import type { Needed } from '../hardware-list/paper.js';
import type { BoardLayouts } from '../sheet-layouts/paper.js';
import type { Told } from '../../words/told.js';

/** Kinds of work that a job takes. */
export type WorkKind = 'saw' | 'band' | 'changeover' | 'bore' | 'assemble';

/** Something that a job uses or that is done for it. */
export type CostItem =
  | {
      readonly kind: 'sheet';
      readonly board: string;
      readonly stock: string;
      readonly count: number;
      readonly each: Price;
    }
  | { readonly kind: 'board-unlaid'; readonly board: string; readonly squareMetres: number; readonly each: null }
  | { readonly kind: 'band'; readonly band: string; readonly length: Micrometres; readonly each: Price }
  | { readonly kind: 'fitting'; readonly name: Told; readonly count: number; readonly each: Price }
  | { readonly kind: 'work'; readonly work: WorkKind; readonly seconds: number; readonly each: Price };

/** Of a sheet, a metre, a piece or an hour; null where the shop gives none. */
type Price = number | null;

/** What a job is costed from. */
export interface CostedJob {
  readonly carcasses: readonly BuiltCarcass[];
  /** null where the shop has no saw. */
  readonly layouts: { readonly saw: PanelSaw; readonly boards: readonly BoardLayouts[] } | null;
  readonly hardware: readonly Needed[];
  /** What stands for shelf pins in the hardware. */
  readonly pins: string;
  /** What stands there for screws of drawer fronts. */
  readonly frontScrews: string;
  readonly boring: JobCost;
  readonly shop: Shop;
}

/** All that a job takes; work that takes no time is left out. */
export function costItems(job: CostedJob): readonly CostItem[] {
  return [...sheetItems(job), ...bandItems(job), ...fittingItems(job), ...workItems(job)].filter(
    (item) => item.kind !== 'work' || item.seconds > 0,
  );
}

/** What an item costs in the shop's own money; null where it has no price. */
export function moneyOf(item: CostItem): number | null {
  if (item.each === null) return null;
  switch (item.kind) {
    case 'sheet':
    case 'fitting':
      return item.count * item.each;
    case 'band':
      return (item.length / 1e6) * item.each;
    case 'work':
      return (item.seconds / 3600) * item.each;
  }
}

/** What costs most first; what has no price last, as it came. */
export function dearestFirst(items: readonly CostItem[]): readonly CostItem[] {
  return items.toSorted((a, b) => (moneyOf(b) ?? -1) - (moneyOf(a) ?? -1));
}

function sheetItems({ layouts }: CostedJob): readonly CostItem[] {
  return (layouts?.boards ?? []).flatMap(({ board, sizes, plan }): readonly CostItem[] => {
    if (plan === null) return unlaid(board, sizes, ({ pieces }) => pieces);
    const counts = new Map<string, number>();
    for (const { stock } of plan.sheets) counts.set(stock, (counts.get(stock) ?? 0) + 1);
    const lacking = new Map(plan.lacking.map(({ piece, count }) => [piece, count]));
    return [
      ...[...counts].map(([stock, count]): CostItem => ({
        kind: 'sheet',
        board: board.name,
        stock,
        count,
        each: sheetPrice(board, stock),
      })),
      ...unlaid(board, sizes, ({ pieces }, id) => (plan.misfits.includes(id) ? pieces : (lacking.get(id) ?? 0))),
    ];
  });
}

/** What is cut from no sheet. */
function unlaid(
  board: Board,
  sizes: readonly CutSize[],
  copies: (size: CutSize, id: string) => number,
): readonly CostItem[] {
  const squareMetres = sizes.reduce(
    (sum, one, i) => sum + (one.length / 1e6) * (one.width / 1e6) * copies(one, String(i)),
    0,
  );
  return squareMetres === 0 ? [] : [{ kind: 'board-unlaid', board: board.name, squareMetres, each: null }];
}

function bandItems({ carcasses, shop }: CostedJob): readonly CostItem[] {
  const lengths = new Map<Band, Micrometres>();
  for (const { band, length, pieces } of edgesOf(carcasses))
    lengths.set(band, (lengths.get(band) ?? 0) + pieces * (length + shop.habits.bandAllowance));
  return [...lengths].map(([band, length]) => ({ kind: 'band', band: band.name, length, each: band.price }));
}

/** By name, since the shop has one price for a hinge, whatever its arm and its plate, for a pull, whatever its screws, and for a pair of slides, whatever its length. */
function fittingItems({ hardware, shop, pins, frontScrews }: CostedJob): readonly CostItem[] {
  const priceOf = (name: Told): Price => {
    if (name === pins) return shop.rates.pin;
    if (name === frontScrews) return shop.rates.frontScrew;
    const { fittings, hinges, slides, pulls, brackets, wardrobeRails, feet, angles } = shop;
    const sections = [fittings, hinges, slides, pulls, brackets, wardrobeRails, feet, angles];
    return sections.map((section) => section.get(name)).find((one) => one !== undefined)?.price ?? null;
  };
  const counts = new Map<Told, number>();
  for (const { name, each } of hardware) counts.set(name, (counts.get(name) ?? 0) + countOf(each));
  return [...counts].map(([name, count]) => ({
    kind: 'fitting',
    name,
    count,
    each: priceOf(name),
  }));
}

const countOf = (each: Needed['each']): number => [...each.values()].reduce((sum, count) => sum + count, 0);

function workItems(job: CostedJob): readonly CostItem[] {
  const { carcasses, layouts, hardware, boring, shop, pins } = job;
  const { rates } = shop;
  const sheets = (layouts?.boards ?? []).flatMap(({ plan }) => plan?.sheets ?? []);
  const trims = (layouts?.saw.trim ?? 0) > 0 ? 4 : 0;
  const cuts = sheets.reduce((sum, { part }) => sum + trims + cutsIn(part), 0);
  const edges = edgesOf(carcasses);
  const banded = edges.reduce((sum, { pieces }) => sum + pieces, 0);
  const metres = edges.reduce((sum, { pieces, length }) => sum + (pieces * length) / 1e6, 0);
  const boxes = carcasses.reduce((sum, { carcass }) => sum + carcass.count, 0);
  const fittings = hardware.reduce((sum, { name, each }) => sum + (name === pins ? 0 : countOf(each)), 0);
  const seconds: Readonly<Record<WorkKind, number>> = {
    saw: sheets.length * rates.sheet + cuts * rates.cut,
    band: banded * rates.edge + metres * rates.bandMetre,
    changeover: boring.changeover,
    bore: boring.boring,
    assemble: boxes * rates.carcass + fittings * rates.fitting,
  };
  return (Object.keys(seconds) as WorkKind[]).map((work) => ({
    kind: 'work',
    work,
    seconds: Math.round(seconds[work]),
    each: rates.hour,
  }));
}

/** Between each two parts that lie side by side there is a cut. */
function cutsIn(part: Part): number {
  return part.kind === 'cut' ? part.parts.reduce((sum, inner) => sum + cutsIn(inner), part.parts.length - 1) : 0;
}
