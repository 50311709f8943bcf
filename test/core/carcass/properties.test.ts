import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { buildCarcass } from '../../../shared-core/carcass/build.js';
import { overlaps, within } from '../../../shared-core/carcass/interval.js';
import type { Axis, Carcass, Panel, Pose } from '../../../shared-core/carcass/model.js';
import { extentsOf, handedness, toCarcass, toPanel, UNIT } from '../../../shared-core/carcass/pose.js';
import { jobArbitrary, type Job } from '../arbitraries.js';

const RUNS = 300;

function built({ spec, shop }: Job): Carcass {
  const { carcass, problems } = buildCarcass(spec, shop);
  expect(problems).toEqual([]);
  return carcass!;
}

function byKey(carcass: Carcass, key: string): Panel {
  return carcass.panels.find((panel) => panel.key === key)!;
}

describe('any box that can be built', () => {
  test('keeps every panel inside its size, and its outer faces flush with it', () => {
    fc.assert(
      fc.property(jobArbitrary, (job) => {
        const carcass = built(job);
        const { width, height, depth } = job.spec;
        const box = {
          x: { from: 0, to: width.value },
          y: { from: 0, to: depth.value },
          z: { from: 0, to: height.value },
        };
        for (const panel of carcass.panels.filter(
          ({ role }) => !['plinth', 'end-panel', 'filler', 'blind-panel'].includes(role),
        )) {
          const { x, y, z } = extentsOf(panel);
          expect([within(x, box.x), within(y, box.y), within(z, box.z)]).toEqual([true, true, true]);
        }
        const [left, right, bottom] = ['left', 'right', 'bottom'].map((key) => extentsOf(byKey(carcass, key)));
        expect([left!.x.from, right!.x.to, bottom!.z.from]).toEqual([0, width.value, 0]);
        expect([left!.y.from, right!.y.from, bottom!.y.from]).toEqual([0, 0, 0]);
        const closing = carcass.panels.filter(({ role }) => role === 'top' || role === 'rail');
        expect(closing.length).toBeGreaterThan(0);
        for (const panel of closing) expect(extentsOf(panel).z.to).toBe(height.value);
      }),
      { numRuns: RUNS },
    );
  });

  test('has panels that share no wood but in grooves', () => {
    fc.assert(
      fc.property(jobArbitrary, (job) => {
        const solid = built(job).panels.filter(({ role }) => role !== 'back');
        for (const [index, a] of solid.entries())
          for (const b of solid.slice(index + 1)) {
            const [one, two] = [extentsOf(a), extentsOf(b)];
            const meet = overlaps(one.x, two.x) && overlaps(one.y, two.y) && overlaps(one.z, two.z);
            expect({ a: a.key, b: b.key, meet }).toEqual({ a: a.key, b: b.key, meet: false });
          }
      }),
      { numRuns: RUNS },
    );
  });

  test('is cut to the finished size less its bands', () => {
    fc.assert(
      fc.property(jobArbitrary, (job) => {
        for (const { length, width, cutLength, cutWidth, bands } of built(job).panels) {
          const thick = (edge: keyof typeof bands): number => bands[edge]?.thickness ?? 0;
          expect(cutWidth + thick('front') + thick('back')).toBe(width);
          expect(cutLength + thick('reference-end') + thick('far-end')).toBe(length);
        }
      }),
      { numRuns: RUNS },
    );
  });

  test('has joints whose end lies flat on the face', () => {
    fc.assert(
      fc.property(jobArbitrary, (job) => {
        const carcass = built(job);
        for (const joint of carcass.joints) {
          const [end, face] = [byKey(carcass, joint.endPanel), byKey(carcass, joint.facePanel)];
          const middle = { u: 0, v: joint.end === 'reference-end' ? 0 : end.length, t: Math.floor(end.thickness / 2) };
          const seen = toPanel(face.pose, toCarcass(end.pose, middle));
          expect(seen.t).toBe(joint.face === 'outside' ? 0 : face.thickness);
          expect(seen.v).toBeGreaterThanOrEqual(0);
          expect(seen.v).toBeLessThanOrEqual(face.length);
        }
      }),
      { numRuns: RUNS },
    );
  });

  test('has bays that fill the clear width with the dividers between them', () => {
    fc.assert(
      fc.property(jobArbitrary, (job) => {
        const carcass = built(job);
        let x = byKey(carcass, 'left').thickness;
        for (const bay of carcass.bays) {
          expect(bay.from).toBe(x);
          expect(bay.to).toBeGreaterThan(bay.from);
          x = bay.to + (bay.right === 'right' ? 0 : byKey(carcass, bay.right).thickness);
        }
        expect(x).toBe(job.spec.width.value - byKey(carcass, 'right').thickness);
      }),
      { numRuns: RUNS },
    );
  });

  test('has a right side whose frame mirrors that of the left', () => {
    fc.assert(
      fc.property(jobArbitrary, (job) => {
        const carcass = built(job);
        const [left, right] = [byKey(carcass, 'left'), byKey(carcass, 'right')];
        expect(handedness(left.pose)).not.toBe(handedness(right.pose));
        expect(right.pose).toEqual({ ...left.pose, t: '-x', origin: { ...left.pose.origin, x: job.spec.width.value } });
      }),
      { numRuns: 100 },
    );
  });
});

describe('pose', () => {
  const axes = Object.keys(UNIT) as Axis[];
  const poses: Pose[] = axes.flatMap((u) =>
    axes.flatMap((v) =>
      axes
        .filter((t) => new Set([u[1], v[1], t[1]]).size === 3)
        .map((t) => ({ origin: { x: 3, y: -5, z: 7 }, u, v, t })),
    ),
  );

  test('there are 48 ways to stand, half of them right-handed', () => {
    expect(poses).toHaveLength(48);
    expect(poses.filter((pose) => handedness(pose) === 'right')).toHaveLength(24);
    expect(handedness({ origin: { x: 0, y: 0, z: 0 }, u: '+x', v: '+y', t: '+z' })).toBe('right');
    expect(handedness({ origin: { x: 0, y: 0, z: 0 }, u: '+x', v: '+y', t: '-z' })).toBe('left');
  });

  test('there and back again, in each of them', () => {
    const point = { u: 11, v: 13, t: 17 };
    for (const pose of poses) {
      expect(toPanel(pose, toCarcass(pose, point))).toEqual(point);
      // A step along u in the panel is a step along its axis in the carcass.
      const [a, b] = [toCarcass(pose, point), toCarcass(pose, { ...point, u: point.u + 1 })];
      expect({ x: b.x - a.x, y: b.y - a.y, z: b.z - a.z }).toEqual(UNIT[pose.u]);
    }
  });
});
