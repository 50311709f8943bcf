import { describe, expect, test } from 'vitest';
import { boreMapScene } from '../../../shared-core/drawing/bore-map/bore-map.js';
import { SCREEN, type PathShape, type Scene, type SceneShelf } from '../../../shared-core/drawing/scene/scene.js';
import { readShop } from '../../../shared-core/shop/read.js';
import { drawnOf } from './demo.js';

const shop = readShop('').shop;
function drawn(panel: string, more: string): Scene {
  const [only] = drawnOf(`carcasses:\n  box:\n    kind: base\n    width: 900\n${more}`, shop);
  return boreMapScene(only!, panel, SCREEN)!;
}
const outline = (scene: Scene, { key }: SceneShelf): PathShape =>
  scene.shapes.find((shape): shape is PathShape => shape.key === key && shape.kind === 'path')!;

describe('loose shelves on the drawing of an upright', () => {
  const one = '    loose-shelves: [328]\n';

  test('end on, on its hole, half a hole above its middle', () => {
    const scene = drawn('left', one);
    const [shelf] = scene.shelves;
    // 8 + 10 × 32 = 328: the eleventh hole.
    expect(shelf).toMatchObject({ panel: 'loose-1', hole: 11, about: expect.stringContaining('hole 11 of') as string });
    const hole = scene.shapes.find(
      (shape) => shape.kind === 'bore' && shape.purpose === 'row' && shape.mouth.v === 328_000,
    );
    const ys = outline(scene, shelf!).points.map(({ y }) => y);
    const xs = outline(scene, shelf!).points.map(({ x }) => x);
    if (hole?.kind !== 'bore') throw new Error('no hole at 328');
    // The left side lies or stands as its pane wants; the shelf is 16 thick and lies on pins of 5.
    const along = Math.abs(shelf!.step.y) > 0 ? { at: hole.cy, to: ys, sign: -1 } : { at: hole.cx, to: xs, sign: 1 };
    expect(Math.max(...along.to) - Math.min(...along.to)).toBeCloseTo(16, 6);
    const lower = along.sign < 0 ? Math.max(...along.to) : Math.min(...along.to);
    expect(Math.abs(lower - along.at)).toBeCloseTo(2.5, 6);
    expect(Math.hypot(shelf!.step.x, shelf!.step.y)).toBeCloseTo(32, 6);
  });

  test('on the uprights of its bay alone, on the face that is seen', () => {
    const bays = '    dividers: 1\n    loose-shelves: [{ at: 328, bay: 1 }, { at: 424, bay: 2 }]\n';
    expect(drawn('left', bays).shelves.map(({ panel }) => panel)).toEqual(['loose-1-bay-1']);
    expect(drawn('right', bays).shelves.map(({ panel }) => panel)).toEqual(['loose-2-bay-2']);
    expect(drawn('divider-1', bays).shelves).toHaveLength(1);
    expect(drawn('bottom', bays).shelves).toEqual([]);
  });

  test.each(['left', 'right'])(
    'across a corner at the %s, along the edge by which it lies at either side and in the corner',
    (hand) => {
      const [one] = drawnOf(
        `carcasses:\n  box:\n    kind: wall\n    width: 640\n    depth: 320\n    diagonal: { ${hand}: 600 }\n    loose-shelves: [328]\n`,
        shop,
      );
      const { carcass } = one!;
      const shelf = carcass.panels.find(({ key }) => key === 'loose-1')!;
      const { corner, width, length } = shelf;
      for (const [panel, long] of [
        // The wing along the first wall ends at the other side.
        [hand === 'left' ? 'right' : 'left', width - corner!.u],
        [hand, length - corner!.v],
        ['back', length],
      ] as const) {
        const scene = boreMapScene(one!, panel, SCREEN)!;
        expect(scene.shelves).toHaveLength(1);
        const { points } = outline(scene, scene.shelves[0]!);
        const sides = [points[0]!, points[1]!, points[2]!].map(({ x, y }, i, all) =>
          i === 0 ? 0 : Math.hypot(x - all[i - 1]!.x, y - all[i - 1]!.y),
        );
        const [a, b] = sides.slice(1).toSorted((p, q) => p - q);
        expect(a).toBeCloseTo(16, 6);
        expect(b).toBeCloseTo(long / 1000, 6);
      }
      expect(boreMapScene(one!, `back-${hand}`, SCREEN)!.shelves).toEqual([]);
    },
  );

  test('not on paper, where nothing can be moved', () => {
    const [only] = drawnOf(`carcasses:\n  box:\n    kind: base\n    width: 900\n${one}`, shop);
    const scene = boreMapScene(only!, 'left')!;
    expect(scene.shelves).toEqual([]);
    expect(scene.shapes.some((shape) => shape.class === 'loose-shelf')).toBe(false);
  });
});
