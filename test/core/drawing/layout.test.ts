import { readFileSync } from 'node:fs';
import * as fontkit from 'fontkit';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { widestRoom, within } from '../../../shared-core/drawing/scene/dimensions.js';
import { crosses } from '../../../shared-core/drawing/scene/boxes.js';
import { figure, showLength } from '../../../shared-core/length/show.js';
import { listFigures } from '../../../shared-core/drawing/bore-map/hole-table.js';
import { fitText, textWidth } from '../../../shared-core/drawing/scene/lettering.js';
import { scaleFor } from '../../../shared-core/drawing/scene/scale.js';
import { spread } from '../../../shared-core/drawing/scene/spread.js';
import { um } from './panels.js';

describe('spread', () => {
  const places = fc
    .array(fc.integer({ min: 0, max: 1000 }), { minLength: 1, maxLength: 12 })
    .map((list) => list.sort((a, b) => a - b));

  it('keeps the order and the gap', () => {
    fc.assert(
      fc.property(places, fc.integer({ min: 1, max: 80 }), (wanted, gap) => {
        const found = spread(wanted, gap);
        expect(found).toHaveLength(wanted.length);
        for (let index = 1; index < found.length; index += 1)
          expect(found[index]! - found[index - 1]!).toBeGreaterThan(gap - 1e-6);
      }),
    );
  });

  it('leaves alone what has room', () => {
    expect(spread([0, 50, 200], 40)).toEqual([0, 50, 200]);
  });

  it('moves no less than it must: no single step of a group makes it better', () => {
    const cost = (wanted: readonly number[], found: readonly number[]): number =>
      wanted.reduce((sum, at, index) => sum + (found[index]! - at) ** 2, 0);
    fc.assert(
      fc.property(
        places,
        fc.integer({ min: 1, max: 80 }),
        fc.nat(11),
        fc.nat(11),
        fc.constantFrom(-0.5, 0.5),
        (wanted, gap, a, b, by) => {
          const found = spread(wanted, gap);
          const moved = found.map((at, index) => (index >= Math.min(a, b) && index <= Math.max(a, b) ? at + by : at));
          const lawful = moved.every((at, index) => index === 0 || at - moved[index - 1]! >= gap - 1e-9);
          if (lawful) expect(cost(wanted, moved)).toBeGreaterThan(cost(wanted, found) - 1e-6);
        },
      ),
    );
  });
});

describe('within', () => {
  it('moves back what goes too far, and what is then too close, on either hand', () => {
    expect(within(100, [0, 60, 98, 108], 10, 1)).toEqual([0, 60, 90, 100]);
    expect(within(100, [0, 85, 91, 101], 10, 1)).toEqual([0, 80, 90, 100]);
    expect(within(-100, [-108, -60, 0], 10, -1)).toEqual([-100, -60, 0]);
  });

  it('leaves alone what goes no further', () => {
    expect(within(100, [0, 40], 10, 1)).toEqual([0, 40]);
  });
});

describe('widestRoom', () => {
  it('takes the room nearest to the middle that is wide enough', () => {
    expect(widestRoom(0, 100, [], 20)).toBe(50);
    expect(widestRoom(0, 100, [50], 20)).toBe(39);
    expect(widestRoom(0, 100, [45, 55], 20)).toBe(34);
    expect(widestRoom(0, 100, [10, 90], 200)).toBe(50);
  });
});

describe('figures', () => {
  it('round inches once, from the length itself', () => {
    // 712 mm = 28.031496... in; rounding by way of 28.0315 would give 28.032.
    expect(figure(um(712), 'in')).toBe('28.031');
    expect(figure(25_400, 'in')).toBe('1');
    expect(figure(um(600.075), 'in')).toBe('23 5/8');
    expect(showLength(um(12.5), 'mm')).toBe('12.5 mm');
  });

  it('write long series by their step', () => {
    expect(listFigures([8, 40, 72, 104].map(um), 'mm')).toBe('8 to 104 by 32');
    expect(listFigures([8, 40, 72].map(um), 'mm')).toBe('8, 40, 72');
    expect(listFigures([8, 40, 72, 105].map(um), 'mm')).toBe('8, 40, 72, 105');
  });
});

describe('lettering', () => {
  it('has the widths of the font: 556 thousandths a figure', () => {
    // Adobe Core 14 font metrics, Helvetica.afm: C 48 ; WX 556 ; N zero; CapHeight 718. The face is made to them, in 2048ths of an em.
    expect(textWidth('720', 2.5, false)).toBeCloseTo((3 * 0.556 * 2.5) / 0.718, 2);
  });

  it.each(['Regular', 'Bold'])('has the widths of letters and marks of German and French in the font: %s', (face) => {
    const file = readFileSync(`node_modules/pdfjs-dist/standard_fonts/LiberationSans-${face}.ttf`);
    const font = fontkit.create(file) as fontkit.Font;
    for (const letter of 'äöüÄÖÜßàâçéèêëîïôœùûÀÇÉÈ°·²³«»×Ø–‘’“”„…\u00a0') {
      const { advanceWidth } = font.layout(letter);
      const width = (advanceWidth / font.unitsPerEm / 0.718) * 2.5;
      expect(textWidth(letter, 2.5, face === 'Bold'), letter).toBeCloseTo(width, 9);
    }
  });

  it('cuts off what has no room', () => {
    expect(fitText('short', 2.5, false, 100)).toBe('short');
    const cut = fitText('a very long name of a panel', 2.5, false, 20);
    expect(cut.endsWith('…')).toBe(true);
    expect(textWidth(cut, 2.5, false)).toBeLessThanOrEqual(20);
  });
});

describe('scales', () => {
  it('are those of ISO 5455', () => {
    expect([100, 300, 720, 1064, 2064, 5000, 90_000].map((size) => scaleFor(size, 220))).toEqual([
      1, 2, 5, 5, 10, 50, 50,
    ]);
  });
});

describe('crosses', () => {
  const box = { x: 0, y: 0, width: 10, height: 10 };
  it('tells lines that run through a box from those that pass it', () => {
    expect(crosses({ x: -5, y: 5 }, { x: 15, y: 5 }, box)).toBe(true);
    expect(crosses({ x: 5, y: 5 }, { x: 6, y: 6 }, box)).toBe(true);
    expect(crosses({ x: -5, y: 11 }, { x: 15, y: 11 }, box)).toBe(false);
    expect(crosses({ x: -5, y: 8 }, { x: 3, y: 16 }, box)).toBe(false);
    expect(crosses({ x: -5, y: 5 }, { x: -1, y: 5 }, box)).toBe(false);
  });
});
