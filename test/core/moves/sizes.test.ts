import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { after, carcassOf, comments, offered } from './moves.js';

const box = (lines: string, name = 'a'): string => `  ${name}:\n${lines.replace(/^/gm, '    ')}\n`;
const job = (...boxes: readonly string[]): string => `carcasses:\n${boxes.join('')}`;

describe('equal openings', () => {
  test('of dividers, whatever else is said of them', () => {
    const text = job(
      box('kind: base\nwidth: 1000\ndividers:\n  - 300 # left\n  - { at: 700, board: board-16 } # right'),
    );
    // 1000 less two sides and two dividers of 16 is 936, a third of it 312: centre lines at 336 and 664.
    expect(after(text, 'dividers', 'Give the dividers equal openings: 336 mm and 664 mm')).toBe(
      text.replace('- 300', '- 336').replace('700', '664'),
    );
  });

  test('of shelves on the pitch grid, bay by bay', () => {
    const shelves = '[{ at: 104, bay: 1 }, { at: 136, bay: 2 }, { at: 200, bay: 2 }]';
    const text = job(box(`kind: base\nwidth: 1000\ndividers: 1\nloose-shelves: ${shelves} # pots`));
    const changed = after(text, 'loose-shelves', 'Give the loose shelves equal openings')!;
    const { looseShelves } = carcassOf(changed, 'a').spec!;
    for (const { at } of looseShelves) expect((at.value - 8000) % 32_000).toBe(0);
    expect(looseShelves.map(({ bay }) => bay!.value)).toEqual([1, 2, 2]);
    // One in the middle of the left bay; two at a third and at two thirds of the right one.
    expect(looseShelves.map(({ at }) => at.value / 1000)).toEqual([360, 232, 456]);
    expect(comments(changed)).toEqual(['# pots']);
    expect(offered(changed, 'loose-shelves').some((title) => title.startsWith('Give'))).toBe(false);
  });

  test('are not offered where shelves of every bay and of one would have to make way', () => {
    const text = job(box('kind: base\nwidth: 1000\ndividers: 1\nloose-shelves: [{ at: 104, bay: 1 }, 300]'));
    expect(offered(text, 'loose-shelves').some((title) => title.startsWith('Give'))).toBe(false);
  });
});

describe('another size', () => {
  const SHELVES =
    'kind: base\nwidth: 800\nheight: 720 # low\nfixed-shelves: [360] # the middle\nloose-shelves: [168, 520]';

  test('a pitch more: shelves stay on the grid and keep the proportions', () => {
    const text = job(box(SHELVES));
    expect(after(text, 'height: 720', 'Stretch to 752 mm, a pitch more')).toBe(
      text.replace('720', '752').replace('[360]', '[392]').replace('[168, 520]', '[168, 552]'),
    );
  });

  test('as another carcass: dividers part the width as before', () => {
    const text = job(box('kind: base\nwidth: 1000\ndividers: [258]'), box('kind: base\nwidth: 1400', 'b'));
    // (258 - 16) / 968 of the clear width is 1/4, and 16 + 1368/4 = 358.
    expect(after(text, 'width: 1000', 'Stretch to 1400 mm, as ‘b’')).toBe(
      text.replace('width: 1000', 'width: 1400').replace('258', '358'),
    );
  });

  test('as the next larger and the next smaller carcass, past those of its own size', () => {
    const others = [1400, 1000, 1200, 700, 900].map((width, i) => box(`kind: base\nwidth: ${width}`, `b${i}`));
    const text = job(box('kind: base\nwidth: 1000\ndividers: [258]'), ...others);
    expect(offered(text, 'width: 1000\n    dividers').filter((title) => title.startsWith('Stretch'))).toEqual([
      'Stretch to 1200 mm, as ‘b2’, with what is inside',
      'Stretch to 900 mm, as ‘b4’, with what is inside',
    ]);
  });

  test('of depth: what stands in the rear half keeps its distance from the back', () => {
    const text = job(
      box('kind: base\nwidth: 600\ndepth: 560\nrear-row: 485\ndowels: [21, 85, 437, 501]'),
      box('kind: base\nwidth: 600\ndepth: 500', 'b'),
    );
    expect(after(text, 'depth: 560', 'Stretch to 500 mm, as ‘b’')).toBe(
      text
        .replace('depth: 560', 'depth: 500')
        .replace('485', '425')
        .replace('[21, 85, 437, 501]', '[21, 85, 377, 441]'),
    );
  });

  test('fronts that all have a height fill the new one, and those that share keep theirs', () => {
    const fronts = (heights: string): string =>
      job(box(`kind: for-drawers\nwidth: 600\nheight: 720\nrows: none\nfronts: ${heights}`));
    const all = fronts(
      '[{ front: drawer, height: 237 }, { front: drawer, height: 237 }, { front: drawer, height: 237 }]',
    );
    const changed = after(all, 'height: 720', 'Stretch to 752 mm')!;
    const heights = [...changed.matchAll(/height: ([\d.]+) \}/g)].map(([, height]) => Number(height));
    expect(heights.reduce((sum, height) => sum + height, 0)).toBeCloseTo(237 * 3 + 32, 6);
    expect(Math.max(...heights) - Math.min(...heights)).toBeLessThan(0.2);
    expect(after(fronts('[{ front: drawer, height: 140 }, drawer]'), 'height: 720', 'Stretch')).toBeNull();
  });

  test('is not offered where what follows would come to stand in front of the carcass, or have no height', () => {
    const stretches = (text: string, piece: string) =>
      offered(text, piece).filter((title) => title.startsWith('Stretch'));
    const row = job(
      box('kind: base\nwidth: 600\ndepth: 600\nrear-row: 320'),
      box('kind: base\nwidth: 600\ndepth: 250', 'b'),
    );
    expect(stretches(row, 'depth: 600')).toEqual([]);
    const fronts = 'fronts: [{ front: drawer, height: 150 }, { front: drawer, height: 150 }]';
    const high = job(
      box(`kind: base\nwidth: 600\nheight: 2000\n${fronts}`),
      box('kind: base\nwidth: 600\nheight: 700', 'b'),
    );
    expect(stretches(high, 'height: 2000')).toEqual([
      'Stretch to 2032 mm, a pitch more, with what is inside',
      'Stretch to 1968 mm, a pitch less, with what is inside',
    ]);
  });

  test('is not offered where nothing inside would follow', () => {
    expect(offered(job(box('kind: base\nwidth: 600\nheight: 720\nloose-shelves: 2')), 'height: 720')).toEqual([]);
  });

  test('dividers and shelves stand in one order, and a carcass that can be made can still be made', () => {
    let count = 0;
    const width = fc.integer({ min: 700, max: 1200 });
    const places = fc.uniqueArray(fc.integer({ min: 2, max: 20 }), { minLength: 1, maxLength: 3 });
    fc.assert(
      fc.property(width, width, places, (one, other, holes) => {
        const shelves = holes.toSorted((a, b) => a - b).map((k) => 8 + 32 * k);
        const text = job(
          box(
            `kind: base # mine\nwidth: ${one}\nheight: 720\ndividers: [${Math.round(one / 3)}]\nloose-shelves: [${shelves.join()}]`,
          ),
          box(`kind: base\nwidth: ${other}`, 'b'),
        );
        for (const [piece, title] of [
          [`width: ${one}\n    height`, 'Stretch to'],
          ['height: 720', 'Stretch to 752 mm'],
          ['height: 720', 'Stretch to 688 mm'],
        ] as const) {
          const changed = after(text, piece, title);
          if (changed === null || carcassOf(text, 'a').carcass === null) continue;
          const { spec, carcass } = carcassOf(changed, 'a');
          expect(carcass, changed).not.toBeNull();
          const heights = spec!.looseShelves.map(({ at }) => at.value);
          expect(heights).toEqual(heights.toSorted((a, b) => a - b));
          for (const height of heights) expect((height - 8000) % 32_000, changed).toBe(0);
          expect(comments(changed)).toEqual(comments(text));
          count += 1;
        }
      }),
      { numRuns: 25 },
    );
    expect(count).toBeGreaterThan(30);
  });
});
