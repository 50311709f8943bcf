import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { Matrix4, Vector3 } from 'three';
import { describe, expect, test } from 'vitest';
import { boreCarcass } from '../../../shared-core/boring/bores.js';
import { buildCarcass } from '../../../shared-core/carcass/build.js';
import type { Axis, Panel } from '../../../shared-core/carcass/model.js';
import { boxScene } from '../../../shared-core/drawing/box-view/box.js';
import type { Drawn } from '../../../shared-core/drawing/drawn.js';
import { NEUTRAL_SHOP_TEXT } from '../../../shared-core/shop/neutral.js';
import { readShop } from '../../../shared-core/shop/read.js';
import { jobWithDoorsArbitrary } from '../arbitraries.js';
import { analyse } from '../findings/jobs.js';
import { drawnOf } from './demo.js';

const shop = readShop(NEUTRAL_SHOP_TEXT).shop;
const office = (): Drawn[] => drawnOf(readFileSync('test/demo/office.carcass.yaml', 'utf8'), shop);

const VECTOR: Readonly<Record<Axis, Vector3>> = {
  '+x': new Vector3(1, 0, 0),
  '-x': new Vector3(-1, 0, 0),
  '+y': new Vector3(0, 1, 0),
  '-y': new Vector3(0, -1, 0),
  '+z': new Vector3(0, 0, 1),
  '-z': new Vector3(0, 0, -1),
};
/** By a general-purpose library (three), from the pose as its docstring has it. */
function toBox({ pose: { origin, u, v, t } }: Panel): Matrix4 {
  return new Matrix4()
    .makeBasis(VECTOR[u], VECTOR[v], VECTOR[t])
    .setPosition(new Vector3(origin.x, origin.y, origin.z));
}

describe('a carcass in three dimensions', () => {
  test('on random carcasses every panel and bore stands where its pose has it', () => {
    let [bores, opening] = [0, 0];
    fc.assert(
      fc.property(jobWithDoorsArbitrary, ({ spec, shop: own }) => {
        const { carcass } = buildCarcass(spec, own);
        const boring = boreCarcass(spec, carcass!, own);
        const scene = boxScene({ name: 'a', carcass: carcass!, boring, findings: [], reader: 'mm' });
        expect(scene.parts.map(({ key }) => key)).toEqual(carcass!.panels.map(({ key }) => key));
        scene.parts.forEach((part, i) => {
          const panel = carcass!.panels[i]!;
          const matrix = toBox(panel);
          const far = new Vector3(panel.width, panel.length, panel.thickness).applyMatrix4(matrix);
          const near = new Vector3().applyMatrix4(matrix);
          for (const axis of ['x', 'y', 'z'] as const) {
            expect(part.extents[axis].from).toBe(Math.min(near[axis], far[axis]));
            expect(part.extents[axis].to).toBe(Math.max(near[axis], far[axis]));
          }
          for (const drawn of part.bores) {
            const bore = boring.bores.find(({ id }) => id === drawn.id)!;
            const isEnd = bore.face === 'reference-end' || bore.face === 'far-end';
            const entry = isEnd
              ? new Vector3(bore.u, bore.face === 'far-end' ? panel.length : 0, bore.v)
              : new Vector3(bore.u, bore.v, bore.face === 'inside' ? panel.thickness : 0);
            entry.applyMatrix4(matrix);
            expect([drawn.from.x, drawn.from.y, drawn.from.z]).toEqual(entry.toArray());
            // Its floor lies in the panel, its mouth on a face of it.
            const floor = entry.clone().addScaledVector(VECTOR[drawn.along], drawn.depth);
            for (const axis of ['x', 'y', 'z'] as const) {
              expect(floor[axis]).toBeGreaterThanOrEqual(part.extents[axis].from);
              expect(floor[axis]).toBeLessThanOrEqual(part.extents[axis].to);
            }
            bores += 1;
          }
        });
        expect(scene.parts.flatMap((part) => part.bores)).toHaveLength(boring.bores.length);
        opening += scene.moves.length;
      }),
      { numRuns: 60 },
    );
    expect(bores).toBeGreaterThan(500);
    expect(opening).toBeGreaterThan(5);
  });

  test('a dowel stands in both of its bores, with the glue gap shared by its ends', () => {
    const [files] = office();
    const { fittings, parts } = boxScene(files!);
    const dowels = fittings.filter(({ called }) => called === 'dowel-8x30');
    expect(dowels).toHaveLength(24);
    for (const { key, on, solid } of dowels) {
      if (solid.kind !== 'cylinder') throw new Error('a dowel is round');
      const [end, face] = key
        .split('+')
        .map((id) => parts.flatMap(({ bores }) => bores).find((bore) => bore.id === id)!);
      const step = VECTOR[solid.along];
      const from = new Vector3(solid.from.x, solid.from.y, solid.from.z);
      const to = from.clone().addScaledVector(step, solid.length);
      const floorOf = (bore: NonNullable<typeof end>) =>
        new Vector3(bore.from.x, bore.from.y, bore.from.z).addScaledVector(VECTOR[bore.along], bore.depth);
      expect(solid.length).toBe(30_000);
      expect(solid.diameter).toBe(8000);
      // 12 mm and 19 mm of bores for 30 mm of dowel.
      expect(from.distanceTo(floorOf(face!))).toBe(500);
      expect(to.distanceTo(floorOf(end!))).toBe(500);
      expect(parts.find(({ key: part }) => part === on)!.bores).toContain(end);
    }
  });

  test('cams fill their bores, and cups and the room of hinges stand at door and side', () => {
    const [one] = drawnOf('carcasses:\n  a: { kind: wall, width: 600, joint: cam-15, doors: left }\n', shop);
    const { fittings } = boxScene(one!);
    const cams = fittings.filter(({ key, called }) => called === 'cam-15' && !key.includes('+'));
    expect(cams.length).toBe(8);
    for (const { solid } of cams) expect(solid).toMatchObject({ kind: 'cylinder', length: 12_500, diameter: 15_000 });
    const hinges = fittings.filter(({ called }) => called === 'hinge-110');
    expect(hinges.map(({ on, solid }) => [on, solid.kind])).toEqual([
      ['door-1', 'cylinder'],
      ['left', 'room'],
      ['door-1', 'cylinder'],
      ['left', 'room'],
    ]);
  });

  test('doors turn about the line that the shop tells of the hinge, to the side that they hang on', () => {
    const own = (keys: string) => readShop(NEUTRAL_SHOP_TEXT.replace('    opening: 110\n', keys)).shop;
    const text = 'carcasses:\n  a: { kind: wall, width: 800, doors: pair }\n';
    const moves = (keys: string) => boxScene(drawnOf(text, own(keys))[0]!).moves;
    // The outer corners of the doors: 1.5 mm in from the sides, 16 mm thick, 2 mm before the carcass.
    expect(moves('')).toEqual([
      { kind: 'turn', parts: ['door-1'], axis: { x: 1500, y: -18_000 }, way: 'clockwise', degrees: 110 },
      { kind: 'turn', parts: ['door-2'], axis: { x: 798_500, y: -18_000 }, way: 'anticlockwise', degrees: 110 },
    ]);
    const other = moves('    opening: 95\n    axis-from-edge: 4\n    axis-from-front: 7\n');
    expect(other.map((move) => (move.kind === 'turn' ? [move.axis.x, move.axis.y, move.degrees] : null))).toEqual([
      [5500, -11_000, 95],
      [794_500, -11_000, 95],
    ]);
  });

  test('taken apart, every panel goes away from the middle of the box', () => {
    for (const drawn of office()) {
      const { parts, extents } = boxScene(drawn);
      for (const { apart, extents: own } of parts)
        for (const axis of ['x', 'y', 'z'] as const) {
          const off = own[axis].from + own[axis].to - extents[axis].from - extents[axis].to;
          expect(Math.sign(apart[axis])).toBe(Math.sign(Math.round(off * 0.4)));
        }
    }
  });

  test('findings mark the panels and bores that they are about, the gravest first', () => {
    const job = analyse(
      'carcasses:\n  a: { kind: base, width: 600, loose-shelves: [516], panels: { left: { dowels: [21, 40] } } }\n',
    );
    const one = job.carcasses[0]!;
    const { carcass, boring, findings, name } = one;
    const scene = boxScene({ name, carcass: carcass!, boring: boring!, findings, reader: 'mm' });
    expect(scene.findings.length).toBeGreaterThan(0);
    const marked = scene.parts.flatMap((part) => part.bores.filter(({ severity }) => severity !== null));
    const concerned = new Set(scene.findings.flatMap(({ bores }) => bores));
    expect(marked.map(({ id }) => id).sort()).toEqual([...concerned].sort());
    for (const { key, severity, bores, described } of scene.parts) {
      const about = scene.findings.filter(
        (one) => one.panel === key || one.bores.some((id) => bores.some((bore) => bore.id === id)),
      );
      const gravest = (['error', 'warning', 'info'] as const).find((one) =>
        about.some((found) => found.severity === one),
      );
      expect(severity).toBe(gravest ?? null);
      expect(described.includes('Findings')).toBe(about.length > 0);
    }
  });

  test('says in words what is to be seen', () => {
    const { described, parts } = boxScene(office()[0]!);
    expect(described).toMatch(
      /^files, 900 × 2147 × 581 mm with all that is on it: 12 panels \(left, right, .*\), \d+ bores, \d+ fittings\. 2 doors can be opened\. No findings\.$/,
    );
    expect(parts[0]!.described).toBe('Left side ‘left’: 2067 × 560 × 19 mm, board-19. 142 bores.');
    expect(parts.at(-1)!.described).toMatch(/It opens by 110 degrees\./);
  });

  test('shows a pull before its front, which takes it along', () => {
    const [one] = drawnOf(
      'carcasses:\n  a: { kind: base, width: 600, doors: left, pulls: bar-160 }\n',
      readShop(NEUTRAL_SHOP_TEXT).shop,
    );
    const pull = boxScene(one!).fittings.find(({ key }) => key === 'door-1:pull')!;
    // The door is 16 thick and 2 off the front edges; its screws stand 557 and 1.5 from the left, 497 and 657 over its end.
    expect(pull).toMatchObject({
      called: 'bar-160',
      on: 'door-1',
      solid: {
        kind: 'room',
        extents: {
          x: { from: 552_500, to: 564_500 },
          y: { from: -53_000, to: -18_000 },
          z: { from: 487_000, to: 667_000 },
        },
      },
    });
  });

  test('pulls a drawer out with all its panels, by the length of its slide', () => {
    const [chest] = drawnOf(
      'carcasses:\n  a: { kind: base, width: 600, fronts: [drawer, left] }\n',
      readShop(NEUTRAL_SHOP_TEXT).shop,
    );
    const { moves, parts, described } = boxScene(chest!);
    const keys = ['front', 'left', 'right', 'box-front', 'back', 'bottom'].map((part) => `drawer-1-${part}`);
    expect(moves.filter(({ kind }) => kind === 'pull')).toEqual([{ kind: 'pull', parts: keys, travel: 500_000 }]);
    expect(parts.find(({ key }) => key === 'drawer-1-bottom')!.described).toContain('It comes out by 500 mm.');
    expect(described).toContain('1 door and 1 drawer can be opened.');
  });
});

test('its title says that its size is with plinth and doors, which the size of a carcass is without', () => {
  const text = 'carcasses:\n  a: { kind: base, width: 600, plinth: 120, doors: pair }\n';
  const [one] = drawnOf(text, shop);
  expect(boxScene(one!).title).toMatch(/^a, 600 × 840 × \d{3}(?:\.\d)? mm with all that is on it$/);
});
