import fc from 'fast-check';
import { expect, test } from 'vitest';
import { boreMapScene } from '../../../shared-core/drawing/bore-map/bore-map.js';
import { measure, measuredWords } from '../../../shared-core/drawing/bore-map/measure.js';
import { allPanelsScene } from '../../../shared-core/drawing/bore-map/all-panels.js';
import type { BoreShape, Scene } from '../../../shared-core/drawing/scene/scene.js';
import { handMade } from './panels.js';

const boresOf = (scene: Scene): readonly BoreShape[] =>
  scene.shapes.filter((shape): shape is BoreShape => shape.kind === 'bore');
const drawn = handMade();
const bores = boresOf(allPanelsScene(drawn));

test('along the panel as on the page: on one face, the straight distance is that of the drawing', () => {
  for (const { key } of drawn.carcass.panels) {
    const onFace = boresOf(boreMapScene(drawn, key)!).filter(({ face }) => face === 'inside');
    for (const a of onFace)
      for (const b of onFace) {
        const onPage = Math.hypot(a.cx - b.cx, a.cy - b.cy) * 1000;
        expect(Math.abs(measure(a, b)!.straight - onPage)).toBeLessThanOrEqual(1);
      }
  }
});

test('from the mouth of a bore in one end to that of its fellow in the other it is the length of the panel', () => {
  const ends = bores.filter(({ face }) => face.endsWith('-end'));
  const pairs = ends.flatMap((a) => ends.flatMap((b) => (a.face !== b.face && a.panel === b.panel ? [[a, b]] : [])));
  expect(pairs.length).toBeGreaterThan(0);
  for (const [a, b] of pairs) {
    const { length } = drawn.carcass.panels.find(({ key }) => key === a!.panel)!;
    expect(measure(a!, b!)!.v).toBe(length);
  }
});

test('it is the same both ways, no side is longer than the straight, and two panels have no distance', () => {
  const bore = fc.constantFrom(...bores);
  fc.assert(
    fc.property(bore, bore, (a, b) => {
      const there = measure(a, b);
      expect(measure(b, a)).toEqual(there);
      if (a.panel !== b.panel) {
        expect(there).toBeNull();
        return;
      }
      const { u, v, t, straight } = there!;
      expect(Math.max(u, v, t)).toBeLessThanOrEqual(straight + 1);
      expect(straight).toBeLessThanOrEqual(u + v + t + 1);
    }),
  );
});

test('words are in the unit of the file, one notation for what stands side by side', () => {
  const at = { u: 0, v: 0, t: 0 };
  const [a] = bores;
  const between = (mouth: typeof at): ReturnType<typeof measure> => measure({ ...a!, mouth: at }, { ...a!, mouth });
  // 3, 4, 5: the right triangle of Pythagoras.
  expect(measuredWords(between({ u: 96_000, v: 128_000, t: 0 })!, 'mm')).toEqual([
    { word: 'Front to back', value: '96 mm' },
    { word: 'End to end', value: '128 mm' },
    { word: 'Straight', value: '160 mm' },
  ]);
  expect(measuredWords(between({ u: 25_400, v: 12_700, t: 1_000 })!, 'in').map(({ value }) => value)).toEqual([
    '1 in',
    '0.5 in',
    '0.039 in',
    '1.119 in',
  ]);
});
