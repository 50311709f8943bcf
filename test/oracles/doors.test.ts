import fc from 'fast-check';
import type { Box } from 'manifold-3d';
import { afterEach, expect, test } from 'vitest';
import { boreCarcass } from '../../shared-core/boring/bores.js';
import { buildCarcass } from '../../shared-core/carcass/build.js';
import type { Carcass } from '../../shared-core/carcass/model.js';
import { jobWithDoorsArbitrary, type Job } from '../core/arbitraries.js';
import { assemble, clear, interferences, leftOpen, type Assembly } from './solids.js';

afterEach(clear);

interface Hung extends Job {
  readonly carcass: Carcass;
  readonly assembly: Assembly;
}

function hung(job: Job): Hung {
  const { carcass, problems } = buildCarcass(job.spec, job.shop);
  expect(problems).toEqual([]);
  const { bores } = boreCarcass(job.spec, carcass!, job.shop);
  return { ...job, carcass: carcass!, assembly: assemble(carcass!, bores, job.shop) };
}

const boxOf = ({ assembly }: Hung, key: string): Box => assembly.panels.find(({ name }) => name === key)!.box;

/** Doors from left to right; `bay` counts from 0, and is null where they close the whole front. */
function doorsIn(one: Hung): readonly { readonly key: string; readonly box: Box; readonly bay: number | null }[] {
  const count = { none: 0, left: 1, right: 1, pair: 2 };
  const { bays } = one.wish.doors!;
  const owners = bays === undefined ? null : bays.flatMap((word, i) => Array<number>(count[word]).fill(i));
  return one.carcass.doors.map(({ key }, i) => ({ key, box: boxOf(one, key), bay: owners?.[i] ?? null }));
}

/** Throws where solids of carcass and doors interfere, or a gap or reveal is not the one that is asked for. */
function expectGapsAsAsked(one: Hung): void {
  const { wish, carcass, assembly } = one;
  const { how, gap, reveal, topReveal, bottomReveal, buffer } = wish.doors! as Required<NonNullable<typeof wish.doors>>;
  expect(interferences(assembly)).toEqual([]);
  const doors = doorsIn(one);
  doors.forEach(({ box, bay }, i) => {
    const before = doors[i - 1];
    // Neighbours: side by side in one opening, or on both sides of one divider.
    const meets = before !== undefined && (before.bay === bay || (how === 'overlay' && before.bay! + 1 === bay));
    if (meets) {
      const found = box.min[0] - before.box.max[0];
      // Where two doors of one size share an odd micrometre it goes to the gap.
      expect(found - gap).toBeGreaterThanOrEqual(0);
      expect(found - gap).toBeLessThanOrEqual(before.bay === bay ? 1 : 0);
    }
    const [left, right] = bay === null ? ['left', 'right'] : [carcass.bays[bay]!.left, carcass.bays[bay]!.right];
    if (how === 'inset') {
      if (!meets) expect(box.min[0] - boxOf(one, left).max[0]).toBe(gap);
      if (doors[i + 1]?.bay !== bay) expect(boxOf(one, right).min[0] - box.max[0]).toBe(gap);
      expect(box.min[2] - boxOf(one, 'bottom').max[2]).toBe(gap);
      expect(boxOf(one, wish.top === 'rails' ? 'rail-front' : 'top').min[2] - box.max[2]).toBe(gap);
      expect(box.min[1]).toBe(0);
      return;
    }
    if (left === 'left' && !meets) expect(box.min[0]).toBe(reveal);
    if (right === 'right' && i === doors.length - 1) expect(wish.width! - box.max[0]).toBe(reveal);
    expect([box.min[2], wish.height! - box.max[2], 0 - box.max[1]]).toEqual([bottomReveal, topReveal, buffer]);
  });
}

/** What an opening must be left open, seen from the front: of an overlay door only the gap between two. */
function expectClosed(one: Hung): void {
  const { wish, carcass, assembly } = one;
  const { how, gap } = wish.doors! as Required<NonNullable<typeof wish.doors>>;
  const doors = doorsIn(one);
  const above = boxOf(one, wish.top === 'rails' ? 'rail-front' : 'top').min[2];
  carcass.bays.forEach(({ left, right }, index) => {
    const own = doors.filter(({ bay }) => bay === null || bay === index);
    if (own.length === 0) return;
    const room: Box = {
      min: [boxOf(one, left).max[0], 0, boxOf(one, 'bottom').max[2]],
      max: [boxOf(one, right).min[0], 1000, above],
    };
    const [width, height] = [room.max[0] - room.min[0], room.max[2] - room.min[2]];
    const open = leftOpen(
      room,
      assembly.panels.filter(({ name }) => own.some(({ key }) => key === name)),
    );
    const between = own.slice(1).map(({ box }, i) => {
      const [from, to] = [Math.max(own[i]!.box.max[0], room.min[0]), Math.min(box.min[0], room.max[0])];
      return Math.max(0, to - from);
    });
    const slits = between.reduce((sum, run) => sum + run, 0);
    const closed = how === 'inset' ? (width - 2 * gap - slits) * (height - 2 * gap) : (width - slits) * height;
    expect(Math.abs(open / 1000 - (width * height - closed))).toBeLessThan(1);
  });
}

// In parts, so that a slow machine does not meet the time limit of one.
test.each([1, 2, 3])('doors on random carcasses keep the gaps asked for and close their openings (%i of 3)', () => {
  let doors = 0;
  fc.assert(
    fc.property(jobWithDoorsArbitrary, (job) => {
      const one = hung(job);
      expectGapsAsAsked(one);
      expectClosed(one);
      doors += one.carcass.doors.length;
      clear();
    }),
    { numRuns: 40 },
  );
  expect(doors).toBeGreaterThan(25);
});

test('the check fails where a door is moved or made larger by a micrometre', () => {
  const [job] = fc.sample(
    jobWithDoorsArbitrary.filter(({ wish }) => wish.doors!.hung === 'pair' && wish.doors!.how === 'overlay'),
    { numRuns: 1, seed: 7 },
  );
  const right = hung(job!);
  const change = (how: (panel: Carcass['panels'][number]) => Carcass['panels'][number]): Hung => {
    const panels = right.carcass.panels.map((panel) => (panel.key === 'door-1' ? how(panel) : panel));
    const carcass = { ...right.carcass, panels };
    return { ...right, carcass, assembly: assemble(carcass, [], right.shop) };
  };
  expect(() => expectGapsAsAsked(change((panel) => panel))).not.toThrow();
  expect(() => expectGapsAsAsked(change((panel) => ({ ...panel, width: panel.width + 2 })))).toThrow();
  expect(() => expectGapsAsAsked(change((panel) => ({ ...panel, length: panel.length - 1 })))).toThrow();
  for (const axis of ['x', 'y', 'z'] as const)
    expect(() =>
      expectGapsAsAsked(
        change(({ pose, ...panel }) => ({
          ...panel,
          pose: { ...pose, origin: { ...pose.origin, [axis]: pose.origin[axis] + 1 } },
        })),
      ),
    ).toThrow();
});
