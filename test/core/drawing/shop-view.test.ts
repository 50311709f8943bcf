import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { boxOf, overlap } from '../../../shared-core/drawing/scene/boxes.js';
import { isLegible } from '../../../shared-core/drawing/scene/extent.js';
import { textBox } from '../../../shared-core/drawing/scene/lettering.js';
import type { Box, Point, Shape, TextShape } from '../../../shared-core/drawing/scene/scene.js';
import { factsOf } from '../../../shared-core/drawing/shop-view/facts.js';
import { shopMachineScene, type ShopMachineScene } from '../../../shared-core/drawing/shop-view/scene.js';
import { isBoring, standing } from '../../../shared-core/drawing/shop-view/standing.js';
import { NEUTRAL_SHOP_TEXT } from '../../../shared-core/shop/neutral.js';
import { readShop } from '../../../shared-core/shop/read.js';
import type { Machine } from '../../../shared-core/shop/model.js';
import { demoText } from './demo.js';

const TEXTS = {
  shed: demoText('shed.shop.yaml'),
  yard: readFileSync('test/demo/yard.shop.yaml', 'utf8'),
  neutral: NEUTRAL_SHOP_TEXT,
};
/** A drill with one head whose throat ends where the head stands furthest. */
const DEEP = `
line-drills:
  deep:
    spindles: 13
    heads: 1
    pitch: 32
    fence: far
    from: above
    setback: 37 to 550
    throat: 560
    depth: 0 to 40
    index-pins: row
    stops: { L: { side: left, range: 0 to 150 }, R: { side: right, range: 0 to 150 } }
`;
const machines = Object.entries(TEXTS).flatMap(([shop, text]) => {
  const read = readShop(text).shop;
  return [...read.machines.values()].map((machine) => [`${shop}, ${machine.name}`, machine, read.unit] as const);
});
/** Each with its fence at the far side and at the near one, where it can be at either. */
const BOTH_WAYS = Object.entries({ ...TEXTS, deep: DEEP }).flatMap(([shop, text]) =>
  (['far', 'near'] as const).flatMap((side) => {
    const read = readShop(text.replaceAll(/fence: (far|near)/g, `fence: ${side}`)).shop;
    return [...read.machines.values()]
      .filter(isBoring)
      .map((machine) => [`${shop}, ${side}, ${machine.name}`, machine, read.unit] as const);
  }),
);
const boring = machines.filter(([, machine]) => isBoring(machine));
const shapeOf = (scene: ShopMachineScene, key: string): Shape => scene.shapes.find((shape) => shape.key === key)!;
const pathOf = (shapes: readonly Shape[], key: string): readonly Point[] => {
  const shape = shapes.find((one) => one.key === key);
  if (shape?.kind !== 'path') throw new Error(`${key} is no path`);
  return shape.points;
};
/** The room of a text, but for the tails of letters. */
const capitals = (shape: TextShape, scale: number): Box => ({
  ...textBox(shape, scale),
  height: shape.height * scale,
});
const boxOfPath = (scene: ShopMachineScene, key: string): ReturnType<typeof boxOf> => {
  return boxOf(pathOf(scene.shapes, key), 0);
};

describe('the machines of a shop as their operator sees them', () => {
  test.each(boring)('%s: every stop with all its range, true to scale', (_, machine, unit) => {
    if (!isBoring(machine)) return;
    const scene = shopMachineScene(machine, unit, 140)!;
    expect(machine.stops.length).toBeGreaterThan(0);
    const xs = scene.shapes.flatMap((shape) =>
      shape.class === 'spindle-loaded' && shape.kind === 'circle' ? [shape.cx] : [],
    );
    for (const { name, side, range } of machine.stops) {
      const { x, width } = boxOfPath(scene, `range:${name}`);
      expect(width * 1000).toBeCloseTo(Math.max(range.max - range.min, 0.3 * scene.scale * 1000), 0);
      // From the face of the stop to the nearest spindle on its side.
      const nearest = side === 'left' ? Math.min(...xs) - (x + width) : x - Math.max(...xs);
      expect(nearest * 1000).toBeCloseTo(range.min, 0);
    }
  });

  test.each(boring)('%s: its spindles as many and as far apart as they are written', (_, machine, unit) => {
    const scene = shopMachineScene(machine, unit, 140)!;
    const spindles = scene.shapes.filter((shape) => shape.class === 'spindle-loaded');
    const count = machine.kind === 'cup' ? 1 : 'spindles' in machine ? machine.spindles : 0;
    expect(spindles).toHaveLength(machine.kind === 'line' ? count * machine.heads : count);
    const [a, b] = spindles;
    if (a?.kind !== 'circle' || b?.kind !== 'circle' || !('pitch' in machine)) return;
    expect(Math.hypot(a.cx - b.cx, a.cy - b.cy) * 1000).toBeCloseTo(machine.pitch, 3);
  });

  test.each(boring)('%s: no lettering over other lettering, in panes of any size', (_, machine, unit) => {
    for (const width of [90, 140, 190, 330]) {
      const scene = shopMachineScene(machine, unit, width)!;
      expect(isLegible(scene.shapes, scene.scale), `${width}`).toBe(true);
      expect(scene.frame.width / scene.scale).toBeLessThan(width * (width < 100 ? 1.1 : 1.02));
    }
  });

  test.each(BOTH_WAYS)(
    '%s: the fence is named beside the fence, and nothing is lettered across a line',
    (_, machine, unit) => {
      for (const width of [86, 140, 240]) {
        const { shapes, scale } = shopMachineScene(machine, unit, width)!;
        const boxOfName = (key: string): Box | null => {
          const shape = shapes.find((one) => one.key === key);
          return shape?.kind === 'text' ? capitals(shape, scale) : null;
        };
        // The fence ends where y is 0; its name stands within a little more than the length of a stop from there.
        const fence = boxOfName('fence:name')!;
        expect(Math.max(Math.abs(fence.y), Math.abs(fence.y + fence.height)) / scale, `${width}`).toBeLessThan(13);
        const throat = shapes.find(({ key }) => key === 'throat');
        for (const shape of shapes) {
          if (shape.kind !== 'text') continue;
          const box = capitals(shape, scale);
          if (throat?.kind === 'line')
            expect(box.y < throat.y1 && box.y + box.height > throat.y1, shape.text).toBe(false);
        }
        for (const { key } of shapes.filter((one) => /^range:.*:name$/.test(one.key))) {
          const [name, bar] = [boxOfName(key)!, boxOf(pathOf(shapes, key.replace(':name', '')), 0)];
          expect(overlap(name, bar), key).toBe(false);
          expect(overlap(name, boxOf(pathOf(shapes, 'fence'), 0)), key).toBe(false);
        }
      }
    },
  );

  test.each(BOTH_WAYS)('%s: the name of a stop stands on its own hand, in panes of any size', (_, machine, unit) => {
    for (const width of [86, 90, 140, 240]) {
      const { shapes, scale } = shopMachineScene(machine, unit, width)!;
      const spindles = shapes.flatMap((one) =>
        one.class === 'spindle-loaded' && one.kind === 'circle' ? [one.cx] : [],
      );
      const middle = (Math.min(...spindles) + Math.max(...spindles)) / 2;
      for (const { name, side } of machine.stops) {
        const lettered = shapes.find(({ key }) => key === `range:${name}:name`);
        if (lettered?.kind !== 'text') throw new Error(`${name} has no name`);
        const { x, width: long } = textBox(lettered, scale);
        expect(x + long / 2 < middle ? 'left' : 'right', `${name} at ${width}`).toBe(side);
      }
    }
  });

  test('each of several heads has its number beside it, level with its spindles', () => {
    for (const [name, machine, unit] of BOTH_WAYS) {
      const heads = machine.kind === 'line' && machine.heads > 1 ? machine.heads : 0;
      const { shapes, scale } = shopMachineScene(machine, unit, 90)!;
      const numbers = shapes.filter(({ key }) => key.endsWith(':number'));
      expect(numbers, name).toHaveLength(heads);
      numbers.forEach((number, head) => {
        if (number.kind !== 'text') throw new Error('a number that is no text');
        const box = boxOf(pathOf(shapes, `head-${head}`), 0);
        expect(number.text).toBe(String(head + 1));
        expect(capitals(number, scale).y).toBeLessThan(box.y + box.height);
        expect(number.y).toBeGreaterThan(box.y);
        expect(overlap(capitals(number, scale), box)).toBe(false);
      });
    }
    expect(BOTH_WAYS.some(([, machine]) => machine.kind === 'line' && machine.heads > 1)).toBe(true);
  });

  test('the table lies on the side of the fence that the shop says', () => {
    const text = TEXTS.shed;
    const near = text.replace('fence: far', 'fence: near');
    const tableOf = (of: string): number => {
      const machine = readShop(of).shop.machines.get('borer-up')!;
      const scene = shopMachineScene(machine, 'mm', 140)!;
      return boxOfPath(scene, 'table').y;
    };
    expect(tableOf(text)).toBe(0);
    expect(tableOf(near)).toBeLessThan(0);
  });

  test('the stop of each hand that reaches furthest has its range extended, by as much as the table', () => {
    const machine = readShop(TEXTS.shed).shop.machines.get('borer-up')!;
    const scene = shopMachineScene(machine, 'mm', 140)!;
    const extended = scene.shapes.filter(({ key }) => key.endsWith(':extended')).map(({ key }) => key);
    expect(extended).toEqual(['range:long-left:extended', 'range:long-right:extended']);
    // 1200 mm from the end of its range on, away from the spindles.
    const [range, more] = ['range:long-left', 'range:long-left:extended'].map((key) => boxOfPath(scene, key));
    expect(more!.width).toBeCloseTo(1200, 3);
    expect(more!.x + more!.width).toBeCloseTo(range!.x, 3);
  });

  test('how far a drill reaches is told beyond the line that it reaches to', () => {
    const drill = readShop(TEXTS.shed).shop.machines.get('row-drill')!;
    const scene = shopMachineScene(drill, 'mm', 140)!;
    // The operator stands where y grows; the lettering is 2.5 mm high on paper, its foot at y.
    const [line, name] = ['throat', 'throat:name'].map((key) => shapeOf(scene, key));
    if (line?.kind !== 'line' || name?.kind !== 'text') throw new Error('no line with its name');
    expect(line.y1).toBe(650);
    expect(name.y - 2.5 * scene.scale).toBeGreaterThan(line.y1);
  });

  test('a range that was typed ten times too long is seen: all else shrinks beside it', () => {
    const wrong = readShop(TEXTS.shed.replace('range: 20 to 80 }', 'range: 20 to 8000 }')).shop.machines.get(
      'borer-level',
    )!;
    const right = readShop(TEXTS.shed).shop.machines.get('borer-level')!;
    const [a, b] = [right, wrong].map((machine) => shopMachineScene(machine, 'mm', 140)!);
    expect(boxOfPath(b!, 'range:square-left').width).toBeCloseTo(7980, 3);
    expect(b!.scale).toBeGreaterThan(5 * a!.scale);
  });

  test('machines that bore nothing have no table, and every machine has its figures', () => {
    const others = machines.filter(([, machine]) => !isBoring(machine));
    expect(others.length).toBeGreaterThan(0);
    for (const [, machine, unit] of others) expect(shopMachineScene(machine, unit, 140)).toBeNull();
    for (const [name, machine, unit] of machines) expect(factsOf(machine, unit).length, name).toBeGreaterThan(0);
  });

  test('figures are those of the shop file, in its unit', () => {
    const named = (name: string): Machine => readShop(TEXTS.shed).shop.machines.get(name)!;
    expect(factsOf(named('borer-up'), 'mm')).toContainEqual({ word: 'Spindles', value: '21 at 32 mm' });
    expect(factsOf(named('borer-up'), 'mm')).toContainEqual({ word: 'Depth', value: '2 to 60 mm' });
    const scene = shopMachineScene(named('borer-up'), 'mm', 140)!;
    expect(shapeOf(scene, 'range:long-left:name')).toMatchObject({ text: 'long-left: 60 to 1300' });
    expect(scene.described).toContain('Stop near-right on the right, 0 mm to 60 mm.');
  });
});

test('heads that stand one behind the other, with no distance told, are led back to the setback', () => {
  const [drill] = [...readShop(DEEP.replace('heads: 1', 'heads: 2')).shop.machines.values()].filter(isBoring);
  expect(standing(drill!).heads.map(({ fromFence, path }) => [fromFence, path])).toEqual([
    [{ min: 37_000, max: 550_000 }, ['setback']],
    [{ min: 37_000, max: 550_000 }, ['setback']],
  ]);
});
