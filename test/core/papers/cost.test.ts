import fc from 'fast-check';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { coverSolver } from '../../../server/cover-solver.js';
import { costItems, dearestFirst, moneyOf, type CostItem } from '../../../shared-core/papers/cost/cost.js';
import { costPaper } from '../../../shared-core/papers/cost/paper.js';
import { asText } from '../../../shared-core/papers/render/text.js';
import type { Paper, Table } from '../../../shared-core/papers/paper.js';
import { sheetPrice } from '../../../shared-core/sheets/board-problem.js';
import { NEUTRAL_SHOP_TEXT } from '../../../shared-core/shop/neutral-text.js';
import { papersOf } from '../../../shared-core/service.js';
import { readShop } from '../../../shared-core/shop/read.js';
import { asItIs } from '../../../shared-core/words/told.js';
import { analyse } from '../findings/jobs.js';
import { expectClear, print, readBack } from './read-pdf.js';

const demo = (name: string): string => readFileSync(join(import.meta.dirname, '../../demo', name), 'utf8');
const tables = ({ blocks }: Paper): readonly Table[] =>
  blocks.filter((block): block is Table => block.kind === 'table');
const costOf = async (job: string, shops: Readonly<Record<string, string>>): Promise<Paper> =>
  (await papersOf(analyse(job, shops), coverSolver)('cost'))!;
const rowsOf = (paper: Paper): Readonly<Record<string, readonly unknown[]>> =>
  Object.fromEntries(tables(paper)[0]!.rows.map(([name, ...rest]): [string, readonly unknown[]] => [name ?? '', rest]));

// One open box, 500 wide, 300 high, 300 deep, without back or plinth, of a 16 board in sheets of 1000 by 1000 that are not trimmed.
const BOX =
  'shop: s.shop.yaml\ncarcasses:\n  box: { kind: open, width: 500, height: 300, depth: 300, back: none, rows: none, count: 2 }\n';
const SHOP = `boards: { white-16: { thickness: 16, sheet-length: 1000, sheet-width: 1000, price: 20 } }
bands: { tape: { thickness: 1, price: 0.5 } }
dowels: { d8: { diameter: 8, length: 30, in-face: 12, price: 0.1 } }
panel-saws: { saw: { kerf: 4, trim: 0 } }
habits: { board: white-16, back-board: white-16, band: tape, joint: d8, band-allowance: 50 }
rates: { hour: 36, sheet: 100, cut: 10, edge: 5, band-metre: 3, carcass: 600, fitting: 7 }
`;

describe('cost and time', () => {
  test('as worked by hand', async () => {
    const rows = rowsOf(await costOf(BOX, { 's.shop.yaml': SHOP }));
    // Four sides of 300 and four horizontals of 468, 299 deep: three strips go on a sheet, of two long or three short pieces each, so
    // seven pieces at most, and there are eight.
    expect(rows['sheets of white-16']!.slice(0, 3)).toEqual(['2', '20.00', '40.00']);
    // Front edges: 2 x (2 x 300 + 2 x 468) = 3072 mm, and 8 edges of 50 allowance: 3.472 m at 0.50.
    expect(rows['band tape']!.slice(0, 3)).toEqual(['3.47 m', '0.50', '1.74']);
    // 8 edges of 5 s and 3.072 m of 3 s: 49 s, at 36 an hour a hundredth a second.
    expect(rows.banding!.slice(0, 3)).toEqual(['49 s', '36.00', '0.49']);
    const dowels = Number(rows.d8![0]);
    expect(dowels).toBeGreaterThanOrEqual(16);
    expect(rows.d8![2]).toBe((dowels / 10).toFixed(2));
    // Two boxes of 600 s and 7 s a dowel.
    const seconds = 1200 + 7 * dowels;
    expect(rows['putting together']![2]).toBe((seconds / 100).toFixed(2));
  });

  test('what no sheet is left for is in no sum, and is told', async () => {
    const shop = SHOP.replace(
      'sheet-length: 1000, sheet-width: 1000, price: 20',
      'sheets: { left-over: { length: 1000, width: 600, count: 1, price: 5 } }',
    );
    const rows = rowsOf(await costOf(BOX, { 's.shop.yaml': shop }));
    expect(rows['sheets of white-16, left-over']!.slice(0, 3)).toEqual(['1', '5.00', '5.00']);
    // Eight pieces of 300 or 468 by 299, of which one side at least goes on a sheet of 1000 by 600.
    const area = Number(/^([\d.]+) m²$/.exec(String(rows['white-16 without a sheet']![0]))![1]);
    expect(area).toBeGreaterThan(0.9183 - 0.6);
    expect(area).toBeLessThan(0.9183 - 0.0897);
    const layouts = (await papersOf(analyse(BOX, { 's.shop.yaml': shop }), coverSolver)('sheet-layouts'))!;
    expect(asText(layouts)).toMatch(/1 sheet, cost 5\.00, and pieces that have no sheet/);
    expect(asText(layouts)).toMatch(/\d of B ha(?:s|ve) no sheet/);
    expect(asText(layouts)).not.toMatch(/no layout costs/);
  });

  test.each([
    ['no size has a price', 'sheet-length: 1000, sheet-width: 1000', /2 sheets, 2\.00 m²: no layout takes less/],
    [
      'only a further size has a price, however dear it is or cheap',
      'sheet-length: 1000, sheet-width: 1000, sheets: { half: { length: 1000, width: 500, price: 0.01 } }',
      /\d sheets, (?:1\.50|2\.00) m²[:;] no layout takes/,
    ],
    [
      'the usual size has a price',
      'sheet-length: 1000, sheet-width: 1000, price: 20',
      /2 sheets, cost 40\.00: no layout/,
    ],
  ])('layouts are counted in money only where every size has a price: %s', async (_, board, said) => {
    const shop = SHOP.replace('sheet-length: 1000, sheet-width: 1000, price: 20', board);
    const layouts = (await papersOf(analyse(BOX, { 's.shop.yaml': shop }), coverSolver)('sheet-layouts'))!;
    expect(asText(layouts)).toMatch(said);
  });

  test('cuts are those of the layout: between each two parts that lie side by side, and four trims a sheet', async () => {
    // To part eight pieces that lie on two sheets takes six cuts at least, and offcuts take more.
    const seconds = async (saw: string): Promise<number> => {
      const shop = SHOP.replace('{ kerf: 4, trim: 0 }', saw)
        .replace('sheet: 100', 'sheet: 0')
        .replace('hour: 36', 'hour: 3600');
      return Number(rowsOf(await costOf(BOX, { 's.shop.yaml': shop }))['cutting on the panel saw']![2]);
    };
    const plain = await seconds('{ kerf: 4, trim: 0 }');
    expect(plain % 10).toBe(0);
    expect(plain / 10).toBeGreaterThanOrEqual(6);
    expect(plain / 10).toBeLessThanOrEqual(20);
  });

  test('adds up, and what costs most comes first', async () => {
    const paper = await costOf(demo('kitchen.carcass.yaml'), { 'yard.shop.yaml': demo('yard.shop.yaml') });
    const [items, times] = tables(paper);
    const costs = items!.rows
      .map((row) => row[3]!)
      .filter((cost) => cost !== 'no price')
      .map(Number);
    expect(costs).toEqual(costs.toSorted((a, b) => b - a));
    const said = Number(/In all ([\d.]+)/.exec(asText(paper))![1]);
    expect(said).toBeCloseTo(
      costs.reduce((sum, one) => sum + one, 0),
      1,
    );
    expect(items!.rows.slice(costs.length).every((row) => row[3] === 'no price')).toBe(true);
    expect(times!.rows).toHaveLength(5);
    const hardware = (await papersOf(
      analyse(demo('kitchen.carcass.yaml'), { 'yard.shop.yaml': demo('yard.shop.yaml') }),
      coverSolver,
    )('hardware-list'))!;
    // Hinges have a line for each arm and plate there, and one in all here.
    const counts = new Map<string, number>();
    for (const [count, name] of tables(hardware)[0]!.rows) counts.set(name!, (counts.get(name!) ?? 0) + Number(count));
    for (const [name, count] of counts) expect(rowsOf(paper)[name]![0], name).toBe(String(count));
  });

  test('hinges are one line, whatever their arms and plates, at the price of the shop', async () => {
    const text = demo('office.carcass.yaml');
    const shops = { 'yard.shop.yaml': demo('yard.shop.yaml') };
    const hardware = (await papersOf(analyse(text, shops), coverSolver)('hardware-list'))!;
    const hinges = tables(hardware)[0]!.rows.filter(([, name]) => name === 'hinge-110');
    expect(hinges.length).toBeGreaterThan(1);
    const count = hinges.reduce((sum, [each]) => sum + Number(each), 0);
    const lines = tables(await costOf(text, shops))[0]!.rows.filter(([name]) => name === 'hinge-110');
    expect(lines).toEqual([['hinge-110', String(count), '', 'no price', '']]);
    const priced = NEUTRAL_SHOP_TEXT.replace('    body-depth: 80', '    body-depth: 80\n    price: 3.5');
    expect(priced).not.toBe(NEUTRAL_SHOP_TEXT);
    const rows = rowsOf(await costOf(`shop: own.shop.yaml\n${text}`, { 'own.shop.yaml': priced }));
    expect(rows['hinge-110']!.slice(1, 3)).toEqual(['3.50', (Number(rows['hinge-110']![0]) * 3.5).toFixed(2)]);
  });

  test('pairs of slides and screws of drawer fronts have prices', async () => {
    const text = 'shop: own.shop.yaml\ncarcasses:\n  a: { kind: base, width: 600, fronts: [drawer, drawer] }\n';
    const priced = NEUTRAL_SHOP_TEXT.replace('    rating: 30\n', '    rating: 30\n    price: 14\n').replace(
      'rates:\n',
      'rates:\n  front-screw: 0.05\n',
    );
    const rows = rowsOf(await costOf(text, { 'own.shop.yaml': priced }));
    expect(rows['slide-45']!.slice(0, 3)).toEqual(['2', '14.00', '28.00']);
    const [screws, each, money] = rows['screws of drawer fronts']!;
    expect([each, money]).toEqual(['0.050', (Number(screws) * 0.05).toFixed(2)]);
  });

  test('without prices it tells time alone, without a saw no sheets', async () => {
    const bare = await costOf(BOX, { 's.shop.yaml': SHOP.replace(/, price: [\d.]+/g, '').replace('hour: 36, ', '') });
    expect(asText(bare)).toMatch(/In all [\dhmins ]+ of work\./);
    expect(tables(bare)[0]!.rows.every((row) => row[3] === 'no price')).toBe(true);
    const items: readonly CostItem[] = costItems({
      carcasses: [],
      layouts: null,
      hardware: [],
      pins: 'pins',
      frontScrews: asItIs('screws'),
      boring: {
        changeover: 0,
        boring: 0,
        work: { panels: 0, lays: 0, strokes: 0, indexMoves: 0 },
        changes: [],
        carcasses: [],
      },
      shop: readShop(SHOP).shop,
    });
    expect(items).toEqual([]);
    expect(asText(costPaper(items, false, asItIs('Cost')))).toContain('nothing to make');
  });

  test('feet that the job names are counted, and the paper does not say that they are not', async () => {
    const job = 'carcasses:\n  a: { kind: base, width: 600, plinth: 120, feet: level-foot }\n';
    const paper = await costOf(job, {});
    // At 60 mm from either side, one in front and one behind.
    expect(rowsOf(paper)['level-foot']?.[0]).toBe('4');
    expect(asText(paper)).not.toMatch(/feet[^.]*not counted/);
  });

  test('a sheet that has no price of its own costs as much as its area does at the price of the usual one', () => {
    const { shop } = readShop(
      'boards:\n  b:\n    thickness: 16\n    sheet-length: 2000\n    sheet-width: 1000\n    price: 40\n    sheets: { half: { length: 1000, width: 1000 }, left: { length: 500, width: 400, price: 1 } }\n  c: { thickness: 16, sheet-length: 1000, sheet-width: 1000, sheets: { d: { length: 300, width: 300 } } }\n',
    );
    const [b, c] = [shop.boards.get('b')!, shop.boards.get('c')!];
    expect(['b', 'half', 'left'].map((stock) => sheetPrice(b, stock))).toEqual([40, 20, 1]);
    expect(['c', 'd'].map((stock) => sheetPrice(c, stock))).toEqual([null, null]);
  });

  test('of any names: sorted, legible, and nothing leaves its page', async () => {
    const word = fc.string({
      minLength: 1,
      maxLength: 60,
      unit: fc.constantFrom('a', 'W', '-', 'Ł', 'ö', '5', ' ', '/'),
    });
    const price = fc.option(fc.double({ min: 0.001, max: 100_000, noNaN: true }));
    const item: fc.Arbitrary<CostItem> = fc.oneof(
      fc.record({ kind: fc.constant('sheet' as const), board: word, stock: word, count: fc.nat(9999), each: price }),
      fc.record({ kind: fc.constant('band' as const), band: word, length: fc.nat(1e9), each: price }),
      fc.record({ kind: fc.constant('fitting' as const), name: word.map(asItIs), count: fc.nat(9999), each: price }),
      fc.record({
        kind: fc.constant('work' as const),
        work: fc.constantFrom('saw', 'bore', 'assemble'),
        seconds: fc.nat(1e6),
        each: price,
      }),
    );
    await fc.assert(
      fc.asyncProperty(fc.array(item, { minLength: 1, maxLength: 30 }), async (items) => {
        const money = dearestFirst(items).map((one) => moneyOf(one) ?? -1);
        expect(money).toEqual(money.toSorted((a, b) => b - a));
        for (const page of await readBack(await print(costPaper(items, true, asItIs('Cost'))))) expectClear(page);
      }),
      { numRuns: 15 },
    );
  });
});
