import { expect, test } from 'vitest';
import { sheetPrice } from '../../../shared-core/sheets/board-problem.js';
import type { Board } from '../../../shared-core/shop/model.js';
import { board, mm } from '../specs.js';

const white = board('white', mm(16));
const { place } = white;
const sheets = [
  { name: 'half', place, length: mm(1400), width: mm(2000), price: null, count: null },
  { name: 'left-over', place, length: mm(700), width: mm(500), price: 3, count: 1 },
];
const usual: Board = { ...white, sheetLength: mm(2800), sheetWidth: mm(2000), price: 56, sheets };

test.each([
  ['the usual sheet has its own', usual, 'white', 56],
  ['a further sheet has its own where it has one', usual, 'left-over', 3],
  ['a further sheet without one costs as much as its share of the usual sheet', usual, 'half', 28],
  ['nobody knows, where the usual sheet has none', { ...usual, price: null }, 'half', null],
  ['nobody knows, where the usual sheet has no size', { ...usual, sheetLength: null }, 'half', null],
  ['nobody knows, where the usual sheet has no width', { ...usual, sheetWidth: null }, 'half', null],
])('of prices of sheets %s', (_, of, stock, price) => {
  expect(sheetPrice(of, stock)).toBe(price);
});
