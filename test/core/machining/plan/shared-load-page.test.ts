import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { sharedLoadOf } from '../../../../shared-core/service.js';
import { setUpsOf } from '../../../../shared-core/machining/plan/set-ups.js';
import { readShop } from '../../../../shared-core/shop/read.js';
import { readJob } from './jobs.js';
import { batchOf } from '../../book/batch-seconds.js';
import { tableUnder } from '../../../reference-table.js';

const read = (path: string): string => readFileSync(new URL(`../../../../${path}`, import.meta.url), 'utf8');
const page = read('server/reference/shared-load.md');
const SHED = read('test/fixtures/shed.shop.yaml');
const withHabits = (...habits: readonly string[]): string =>
  SHED.replace(/^habits:$/m, ['habits:', ...habits.map((one) => `  ${one}`)].join('\n'));

const table = (heading: string): string[][] => tableUnder(page, heading);

const numbersIn = (line: string | undefined): string => (line?.match(/\d+/g) ?? []).join(', ');

describe('the load worked by hand', () => {
  const lines = sharedLoadOf(SHED, null).split('\n');

  test.each(table('The load, worked by hand'))('%s: %s', (wood, places) => {
    const line = lines.find((one) =>
      wood === 'load' ? one.startsWith('The load') : one.includes(wood.replace('rail ', 'rails ')),
    );
    const [, figures] = line?.split(/: at|spindles/) ?? [];
    expect(numbersIn(figures)).toBe(places);
  });

  test.each(table('What it saves'))('%s: %s set-ups and %s bores', (habits, setUps, dowels) => {
    const { shop } = readShop(withHabits(...habits.split(', ')));
    const widths = Array.from({ length: 10 }, (_, i) => 300 + Math.round((700 * i) / 9));
    const units = widths.map((width, i) => `  unit-${i}: { kind: base, width: ${width} }`);
    const carcasses = readJob(['unit: mm', 'carcasses:', ...units].join('\n'), shop);
    const bored = carcasses.flatMap(({ boring }) => boring.bores).filter(({ purpose }) => purpose === 'dowel');
    expect([setUpsOf(carcasses.map(({ operations }) => operations)).length, bored.length].map(String)).toEqual([
      setUps,
      dowels,
    ]);
  });
});

describe('dowels against set-ups', () => {
  const told = (base: number, wall: number): string => `sizes: { base: { batch: ${base} }, wall: { batch: ${wall} } }`;

  test.each(table('Dowels against set-ups'))('%s, %s', (units, batch, ...figures) => {
    const [base = 0, wall = 0] = numbersIn(units).split(', ').map(Number);
    const { shop } = readShop(withHabits(...(batch === 'told' ? [told(base, wall)] : [])));
    const { setUps, dowels, changing } = batchOf(shop, [base, wall]);
    expect([setUps, dowels, changing, dowels * shop.rates.fitting + changing].map(String)).toEqual(figures);
  });

  test.each([
    [1, 'The load with the fewest set-ups takes the least time'],
    [3, 'Chosen by the time of a batch: about 19 min 48 s'],
    [20, 'For carcasses 330 mm deep: spindles 1, 7, 15 and 21.'],
  ])('%i of each, as it is told', (count, words) => {
    expect(sharedLoadOf(withHabits(told(count, count)), null)).toContain(words);
  });
});

describe('what is told of an earlier version', () => {
  const last = (text: string, earlier: string): string => sharedLoadOf(text, earlier).trimEnd().split('\n').at(-1)!;

  test('the same load', () => {
    expect(last(SHED, SHED)).toBe('The earlier file has the same load: what was bored by it is remade by this one.');
  });

  test('another load, by one that the owner wrote', () => {
    const own = withHabits('shared-load: [1, 2, 6, 11, 16, 20, 21]');
    expect(sharedLoadOf(own, null)).toContain('spindles 1, 2, 6, 11, 16, 20 and 21.');
    expect(last(own, SHED)).toContain(
      'spindles 1, 3, 6, 8, 14, 16, 19 and 21 before, spindles 1, 2, 6, 11, 16, 20 and 21 now',
    );
  });

  test('other places of the same spindles', () => {
    const own = 'shared-load: [1, 2, 6, 11, 16, 20, 21]';
    expect(last(withHabits(own, 'first-dowel: 53'), withHabits(own))).toContain('first bore at 21 mm');
  });

  test('no load at all', () => {
    expect(sharedLoadOf(withHabits('share-places: no'), null)).toBe(
      'This shop shares no load of bits (`share-places: no`): each joint takes its own places.\n',
    );
  });
});
