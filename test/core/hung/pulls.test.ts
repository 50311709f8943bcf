import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { toCarcass } from '../../../shared-core/carcass/pose.js';
import { checkCarcass } from '../../../shared-core/findings/registry.js';
import { boreCarcass } from '../../../shared-core/boring/bores.js';
import type { Bore } from '../../../shared-core/boring/model.js';
import { buildCarcass } from '../../../shared-core/carcass/build.js';
import { jobWithDoorsArbitrary, jobWithDrawersArbitrary, type Job } from '../arbitraries.js';
import { analyse } from '../findings/jobs.js';
import { contextOf } from '../findings/contexts.js';

/** The pull bores of a carcass with these lines: panel, u and v in millimetres, face, and depth. */
function bored(lines: string): readonly (readonly [string, number, number, string, number])[] {
  const job = analyse(`carcasses:\n  sink:\n    ${lines.replaceAll('\n', '\n    ')}\n`);
  return job.carcasses[0]!.boring!.bores.filter(({ purpose }) => purpose === 'pull').map(
    ({ panel, u, v, face, depth }) => [panel, u / 1000, v / 1000, face, depth / 1000],
  );
}

describe('the bores of pulls, worked by hand', () => {
  test('on a door of a base carcass they stand 40 from the edge that opens and 60 from the top', () => {
    // 600 less two reveals of 1.5; 720 less 3 at the top.
    expect(bored('kind: base\nwidth: 600\ndoors: left\npulls: bar-160')).toEqual([
      ['door-1', 557, 717 - 60 - 160, 'outside', 16],
      ['door-1', 557, 717 - 60, 'outside', 16],
    ]);
  });

  test('of a pair both stand toward the middle, and both at the same height', () => {
    const [a, b, c, d] = bored('kind: wall\nwidth: 600\ndoors: pair\npulls: bar-160');
    // Each door is (597 - 3) / 2 wide; u counts from its hinge edge, v from its bottom.
    expect([a, b]).toEqual([
      ['door-1', 257, 60, 'outside', 16],
      ['door-1', 257, 220, 'outside', 16],
    ]);
    expect([c, d]).toEqual([a, b].map((one) => ['door-2', ...one!.slice(1)]));
  });

  test('on a tall door they stand about the height of the hand', () => {
    // The door starts 100 above the floor, on the plinth, so 1050 is at 950 of it, and the screws 80 over and under.
    const tall = 'kind: tall\nwidth: 600\nplinth: 100\ndoors: left\npulls: bar-160';
    expect(bored(tall).map(([, , v]) => v)).toEqual([870, 1030]);
    // Of two doors over each other the lower one has it near its top, the upper one near its bottom.
    const two = bored('kind: tall\nwidth: 600\nfronts: [{ front: left, height: 700 }, left]\npulls: knob');
    expect(two.map(([panel, , v]) => [panel, v])).toEqual([
      ['door-1', 60],
      ['door-2', 2061 - 700 - 3 - 60],
    ]);
  });

  test('on the front of a drawer they stand in the middle, and the front of the box is bored on the same axes', () => {
    const lines =
      'kind: base\nwidth: 600\nrear-row: 389\nfronts: [{ front: drawer, height: 140 }, fixed]\npulls: bar-160';
    const [a, b, c, d] = bored(lines);
    expect([a, b]).toEqual([
      ['drawer-1-front', 70, 218.5, 'outside', 16],
      ['drawer-1-front', 70, 378.5, 'outside', 16],
    ]);
    expect([c![0], d![0]]).toEqual(['drawer-1-box-front', 'drawer-1-box-front']);
    const job = analyse(`carcasses:\n  sink:\n    ${lines.replaceAll('\n', '\n    ')}\n`);
    const { carcass, boring } = job.carcasses[0]!;
    const axes = boring!.bores
      .filter(({ purpose }) => purpose === 'pull')
      .map(({ panel, u, v }) => {
        const { x, z } = toCarcass(carcass!.panels.find(({ key }) => key === panel)!.pose, { u, v, t: 0 });
        return `${x} ${z}`;
      });
    expect(new Set(axes).size).toBe(2);
  });

  test('what is said of one front rules what is said of all', () => {
    const all = 'kind: base\nwidth: 600\nrear-row: 389\npulls: { pull: knob, on-drawers: bar-160, from-top: 40 }\n';
    const fronts = 'fronts: [{ front: drawer, height: 140 }, { front: drawer, height: 140, pull: none }, left]';
    expect(bored(`${all}${fronts}`).map(([panel, u]) => (panel.includes('box') ? panel : [panel, u]))).toEqual([
      ['door-1', 557],
      ['drawer-1-front', 40],
      ['drawer-1-front', 40],
      'drawer-1-box-front',
      'drawer-1-box-front',
    ]);
    const own =
      'kind: base\nwidth: 600\ndoors: pair\npulls: knob\npanels: { door-2: { pull: bar-160, pull-lies: level, pull-end: bottom, pull-from-end: 30, pull-from-edge: 50 } }';
    expect(bored(own)).toEqual([
      ['door-1', 257, 657, 'outside', 16],
      ['door-2', 297 - 50 - 160, 30, 'outside', 16],
      ['door-2', 297 - 50, 30, 'outside', 16],
    ]);
  });
});

/** How near the axes of two bores of one panel come that both go in from a face, less their radii; 0 or less where they may meet. */
const between = (a: Bore, b: Bore): number => Math.hypot(a.u - b.u, a.v - b.v) - (a.diameter + b.diameter) / 2;

/** The bores of pulls, each with another that goes in from a face of the same panel and that it meets. */
function meetings({ spec, shop }: Job): readonly (readonly [Bore, Bore])[] {
  const carcass = buildCarcass(spec, shop).carcass!;
  const onFaces = boreCarcass(spec, carcass, shop).bores.filter(({ face }) => face === 'inside' || face === 'outside');
  return onFaces
    .filter(({ purpose }) => purpose === 'pull')
    .flatMap((one) => {
      const thickness = carcass.panels.find(({ key }) => key === one.panel)!.thickness;
      return (
        onFaces
          .filter((other) => other !== one && other.panel === one.panel && between(one, other) < 0)
          // From opposite faces both may end before they meet.
          .filter((other) => one.face === other.face || one.depth + other.depth > thickness)
          .map((other) => [one, other] as const)
      );
    });
}

test('where a pull’s bore meets another bore of a face there is a finding with both', () => {
  let met = 0;
  fc.assert(
    fc.property(fc.oneof(jobWithDoorsArbitrary, jobWithDrawersArbitrary), (job) => {
      const pairs = meetings(job);
      if (pairs.length === 0) return;
      const findings = checkCarcass(contextOf(job)!).quick;
      for (const [one, other] of pairs)
        expect(findings.some(({ bores = [] }) => bores.includes(one.id) && bores.includes(other.id))).toBe(true);
      met += pairs.length;
    }),
    { numRuns: 1500 },
  );
  // The search does bring some about.
  expect(met).toBeGreaterThan(5);
});

test('a pull that is on its front is bored once for each screw, and one that is not is told', () => {
  let off = 0;
  fc.assert(
    fc.property(jobWithDoorsArbitrary, (job) => {
      const context = contextOf(job)!;
      const { boring } = context;
      const findings = checkCarcass(context).quick;
      for (const { id, front, holes, isOn } of boring.pulls) {
        const bores = boring.bores.filter(({ group, panel }) => group === id && panel === front.key);
        expect(bores).toHaveLength(isOn ? holes.length : 0);
        if (isOn) continue;
        off += 1;
        expect(findings.some(({ rule, panel }) => rule === 'pull-off-front' && panel === front.key)).toBe(true);
      }
    }),
    { numRuns: 100 },
  );
  expect(off).toBeGreaterThan(0);
});
