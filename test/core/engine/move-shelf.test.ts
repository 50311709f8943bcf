import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { Engine, type JobAnalysis } from '../../../shared-core/engine.js';
import { applyEdits } from '../../../shared-core/document/pieces.js';
import { moveShelf } from '../../../shared-core/engine/move-shelf.js';
import { demoText } from '../drawing/demo.js';

const engine = new Engine({
  readShop: () => ({ ok: true, uri: 'file:///shed.shop.yaml', text: demoText('shed.shop.yaml') }),
});
const analyse = (text: string): JobAnalysis => engine.analyse('file:///x.carcass.yaml', text);
const moved = (text: string, shelf: string, holes: number, carcass = 'box'): string =>
  applyEdits(text, moveShelf(analyse(text), carcass, shelf, holes));
const box = (shelves: string, more = ''): string =>
  `carcasses:\n  box: # mine\n    kind: base\n    width: 800\n${more}    loose-shelves: ${shelves} # pots\n  other:\n    kind: base\n    width: 300\n`;

describe('a loose shelf moved along the grid', () => {
  test('in a list its height alone changes', () => {
    // Rows begin half a board, 8 mm, from the bottom end and have a pitch of 32 mm: 328 = 8 + 10 × 32.
    expect(moved(box('[328, 520]'), 'loose-1', 2)).toBe(box('[392, 520]'));
    expect(moved(box('[328, 520]'), 'loose-2', -1)).toBe(box('[328, 488]'));
  });

  test('one that says more keeps what else it says', () => {
    expect(moved(box('[{ at: 328, setback: 40 }]'), 'loose-1', 1)).toBe(box('[{ at: 360, setback: 40 }]'));
  });

  test('of a number of shelves, all heights are written', () => {
    const before = analyse(box('2')).carcasses[0]!.spec!.looseShelves.map(({ at }) => at.value / 1000);
    expect(moved(box('2'), 'loose-1', -1)).toBe(box(`[${before[0]! - 32}, ${before[1]!}]`));
  });

  test('in every bay, or in the one that it is written for', () => {
    const more = '    dividers: 1\n';
    expect(moved(box('[328]', more), 'loose-1-bay-2', 1)).toBe(box('[360]', more));
    const both = '[{ at: 328, bay: 1 }, { at: 328, bay: 2 }]';
    expect(moved(box(both, more), 'loose-2-bay-2', 1)).toBe(box('[{ at: 328, bay: 1 }, { at: 360, bay: 2 }]', more));
  });

  test('from between two holes to the next one that way', () => {
    expect(moved(box('[330]'), 'loose-1', 1)).toBe(box('[360]'));
    expect(moved(box('[330]'), 'loose-1', -1)).toBe(box('[328]'));
  });

  test('no further than the row, and not where nothing is there to move', () => {
    const held = moved(box('[328]'), 'loose-1', 1000);
    expect(moved(held, 'loose-1', 1)).toBe(held);
    for (const [shelf, holes] of [
      ['loose-2', 1],
      ['left', 1],
      ['loose-1', 0],
      ['loose-1', 0.5],
      ['loose-1', NaN],
    ] as const)
      expect(moved(box('[328]'), shelf, holes)).toBe(box('[328]'));
    expect(moved(box('[328]'), 'loose-1', 1, 'nobody')).toBe(box('[328]'));
  });

  test('in a file in inches it stays exact', () => {
    const text = `unit: in\n${box('[12 1/2]').replace('800', '30')}`;
    const { carcasses } = analyse(moved(text, 'loose-1', 3));
    const start = carcasses[0]!.boring!.rows[0]!.offset;
    const at = carcasses[0]!.spec!.looseShelves[0]!.at.value;
    expect((at - start) % 32_000).toBe(0);
  });

  test('up and down again is where it was, for every loose shelf of the demo', () => {
    const text = demoText('kitchen.carcass.yaml');
    const analysis = analyse(text);
    const shelves = analysis.carcasses.flatMap(({ name, spec, carcass }, index) =>
      (spec?.looseShelves ?? []).flatMap(({ key }) =>
        carcass!.panels.some((panel) => panel.key === key) ? [{ index, name, key }] : [],
      ),
    );
    expect(shelves.length).toBeGreaterThan(5);
    fc.assert(
      fc.property(fc.constantFrom(...shelves), fc.integer({ min: 1, max: 3 }), ({ index, name, key }, holes) => {
        const heights = (of: string): number[] =>
          analyse(of).carcasses[index]!.spec!.looseShelves.map(({ at }) => at.value);
        const up = moved(text, key, holes, name);
        const back = moved(up, key, -holes, name);
        expect(heights(back)).toEqual(heights(text));
        const rise = heights(up).reduce((sum, at) => sum + at, 0) - heights(text).reduce((sum, at) => sum + at, 0);
        expect(rise).toBe(holes * 32_000);
      }),
      { numRuns: 40 },
    );
  });
});

describe('of a carcass that is like another', () => {
  const like = (shelves: string, more = ''): string =>
    `carcasses:\n  a:\n    kind: base\n    width: 600\n    loose-shelves: ${shelves}\n  b:\n    like: a # taller\n    height: 784\n${more}`;

  test('a shelf that moves takes the heights of all over, and leaves the other carcass as it is', () => {
    expect(moved(like('[200, 424]'), 'loose-1', 1, 'b')).toBe(like('[200, 424]', '    loose-shelves: [232, 424]\n'));
  });

  test('nothing is taken over that says more than heights', () => {
    const text = like('[{ at: 200, setback: 30 }, 424]');
    expect(moved(text, 'loose-1', 1, 'b')).toBe(text);
  });
});
