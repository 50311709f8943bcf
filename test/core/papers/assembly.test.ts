import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { boreCarcass } from '../../../shared-core/boring/bores.js';
import { buildCarcass } from '../../../shared-core/carcass/build.js';
import type { Carcass, Joint, Panel } from '../../../shared-core/carcass/model.js';
import { extentsOf, UNIT } from '../../../shared-core/carcass/pose.js';
import { outerSize } from '../../../shared-core/carcass/outer-size.js';
import { assemblyOrder } from '../../../shared-core/papers/assembly/order.js';
import { explodedScene } from '../../../shared-core/papers/assembly/exploded.js';
import { fittingsIn } from '../../../shared-core/papers/hardware-list/paper.js';
import { jobArbitrary } from '../arbitraries.js';
import { mm, shopOf, specOf } from '../specs.js';

const shop = shopOf();
const built = (wish: Parameters<typeof specOf>[1]): Carcass => buildCarcass(specOf(shop, wish), shop).carcass!;
const names = (carcass: Carcass): string[] =>
  assemblyOrder(carcass).map(({ panels }) => panels.map(({ key }) => key).join('+'));

/** The way that an end panel is pushed as it goes on, from where both panels stand and nothing else. */
function pushed({ facePanel, endPanel, face }: Joint, panels: ReadonlyMap<string, Panel>): string {
  const { pose } = panels.get(facePanel)!;
  const t = UNIT[pose.t];
  // Into the face: against t where the joint is on the inside face, which t runs to.
  const sign = face === 'inside' ? -1 : 1;
  expect(panels.has(endPanel)).toBe(true);
  return [t.x * sign, t.y * sign, t.z * sign].map((part) => part + 0).join(' ');
}
const against = (way: string): string =>
  way
    .split(' ')
    .map((part) => 0 - Number(part))
    .join(' ');

describe('the order of assembly', () => {
  test('a plain box: one side lies down, what stands between goes on it, the other side closes it', () => {
    expect(names(built({ width: mm(600) }))).toEqual(['left', 'bottom', 'top', 'back', 'right']);
  });

  test('on random boxes every joint closes once, by one straight move against what stands already', () => {
    fc.assert(
      fc.property(jobArbitrary, ({ spec, shop }) => {
        const { carcass } = buildCarcass(spec, shop);
        if (!carcass) return;
        const panels = new Map(carcass.panels.map((panel) => [panel.key, panel]));
        const steps = assemblyOrder(carcass);
        expect(steps.flatMap(({ joints }) => joints.map(({ id }) => id)).sort()).toEqual(
          carcass.joints.map(({ id }) => id).sort(),
        );
        const standing = new Set<string>();
        for (const { panels: added, joints, straight } of steps) {
          const own = new Set(added.map(({ key }) => key));
          expect(straight).toBe(true);
          expect(added).toHaveLength(1);
          const ways = new Set(
            joints.map((joint) => {
              const way = pushed(joint, panels);
              expect(standing.has(own.has(joint.endPanel) ? joint.facePanel : joint.endPanel)).toBe(true);
              return own.has(joint.endPanel) ? way : against(way);
            }),
          );
          expect(ways.size).toBeLessThanOrEqual(1);
          for (const key of own) standing.add(key);
        }
      }),
    );
  });

  test('fittings are as many as there are ends bored for them', () => {
    fc.assert(
      fc.property(jobArbitrary, ({ spec, shop }) => {
        const { carcass } = buildCarcass(spec, shop);
        if (!carcass) return;
        const boring = boreCarcass(spec, carcass, shop);
        const counted = [...fittingsIn({ carcass, boring }).values()].reduce((sum, count) => sum + count, 0);
        const inEnds = boring.bores.filter(({ face }) => face === 'reference-end' || face === 'far-end');
        expect(counted).toBe(inEnds.length);
      }),
      { numRuns: 60 },
    );
  });
});

describe('the drawing of a box drawn apart', () => {
  test('has three faces of each panel, those behind before those that cover them', () => {
    const carcass = built({ width: mm(600) });
    const scene = explodedScene('box', carcass.panels, new Map(carcass.panels.map(({ key }, i) => [key, i + 1])), 'mm');
    const faces = scene.shapes.filter(({ kind }) => kind === 'path').map(({ panel }) => panel);
    for (const { key } of carcass.panels) expect(faces.filter((one) => one === key)).toHaveLength(3);
    const order = [...new Set(faces)];
    const before = (a: string, b: string): void =>
      expect(order.indexOf(a), `${a} before ${b}`).toBeLessThan(order.indexOf(b));
    before('left', 'bottom');
    before('bottom', 'right');
    before('back', 'right');
    before('bottom', 'top');
    expect(new Set(scene.shapes.map(({ key }) => key)).size).toBe(scene.shapes.length);
  });
});

test('the outside of a box is its width, height and depth', () => {
  const carcass = built({ width: mm(600) });
  const { width, height, depth } = outerSize(carcass);
  const left = extentsOf(carcass.panels.find(({ key }) => key === 'left')!);
  expect([width, height, depth]).toEqual([mm(600), left.z.to - left.z.from, left.y.to - left.y.from]);
});
