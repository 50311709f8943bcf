import type { Board, PanelSaw, Shop } from '../shop/model.js';
import type { CutSize } from './cut-list.js';
import type { CuttingProblem, Stock } from './model.js';

/** Smallest coins in one of the shop's money: prices are whole numbers in the search. */
export const COINS = 100;
/** What a square metre counts, in coins, where the shop does not price every size: then least cost is least area. */
const COINS_PER_SQUARE_METRE = 100;

/** The saw that the shop cuts its panels with: the usual one, else the first; null where it has none. */
export function sawOf({ habits, machines }: Shop): PanelSaw | null {
  const saws = [...machines.values()].filter((machine) => machine.kind === 'saw');
  return saws.find(({ name }) => name === habits.machines.saw) ?? saws[0] ?? null;
}

/** The cutting of all pieces of one board; null where no size of sheet is known. The id of a piece is its place in the list. */
export function boardProblem(
  board: Board,
  sizes: readonly CutSize[],
  saw: PanelSaw,
  shop: Shop,
): CuttingProblem | null {
  const stocks = stocksOf(board).filter(
    ({ length, width, count }) => count !== 0 && length > 2 * saw.trim && width > 2 * saw.trim,
  );
  if (stocks.length === 0) return null;
  return {
    pieces: sizes.map(({ length, width, pieces }, i) => ({
      id: String(i),
      length,
      width,
      count: pieces,
      turns: board.grain === 'none',
    })),
    stocks,
    saw: {
      kerf: saw.kerf,
      trim: saw.trim,
      stages: saw.stages === 2 ? 2 : 3,
      rip: saw.rip,
      crosscut: saw.crosscut,
      first: saw.first,
    },
    offcut: { length: shop.habits.offcutLength, width: shop.habits.offcutWidth },
  };
}

const area = ({ length, width }: { length: number; width: number }): number => (length / 1e6) * (width / 1e6);

/** What one sheet of a board costs in the shop's own money, by its area where only the usual sheet has a price; null where none has. */
export function sheetPrice(board: Board, stock: string): number | null {
  const { sheetLength, sheetWidth, price } = board;
  const own = board.sheets.find(({ name }) => name === stock);
  if (own === undefined) return price;
  if (own.price !== null || price === null || sheetLength === null || sheetWidth === null) return own.price;
  return (price * area(own)) / area({ length: sheetLength, width: sheetWidth });
}

/** The usual size of a board’s sheets; null where the shop gives none. */
const usualSize = ({ sheetLength, sheetWidth }: Board): { length: number; width: number } | null =>
  sheetLength !== null && sheetWidth !== null ? { length: sheetLength, width: sheetWidth } : null;

/** Whether every size of a board has a price, its own or by its area; money and square metres cannot be weighed against each other. */
export function isPriced(board: Board): boolean {
  return usualSize(board) === null ? board.sheets.every(({ price }) => price !== null) : board.price !== null;
}

/**
 * Every size in which the board is had. A size with no price costs as much as its area does at the price of the usual sheet; where
 * that has none either, all count by their area.
 */
function stocksOf(board: Board): readonly Stock[] {
  const { price } = board;
  const usual = usualSize(board);
  const inMoney = isPriced(board);
  const perSquareMetre = usual !== null && price !== null ? (price * COINS) / area(usual) : COINS_PER_SQUARE_METRE;
  const coins = (size: { length: number; width: number }, said: number | null): number =>
    Math.max(1, Math.round(inMoney && said !== null ? said * COINS : area(size) * perSquareMetre));
  return [
    ...(usual === null ? [] : [{ name: board.name, ...usual, price: coins(usual, price), count: null }]),
    ...board.sheets.map(({ name, length, width, price: said, count }) => ({
      name,
      length,
      width,
      price: coins({ length, width }, said),
      count,
    })),
  ];
}
