import fc from 'fast-check';
import { expect, test } from 'vitest';
import { bookFor } from '../../../shared-core/book/loads.js';
import type { Cost } from '../../../shared-core/book/pattern.js';
import type { LoadTask, UsualDepth } from '../../../shared-core/book/usual.js';
import { judged, leastOfAll } from './judged.js';
import '../../seed.js';

/** A depth with rails or none, its back one pitch in front of its whole depth. */
const depthsArbitrary = (spindles: number): fc.Arbitrary<readonly UsualDepth[]> =>
  fc
    .uniqueArray(fc.record({ room: fc.integer({ min: 1, max: spindles + 2 }), hasBehind: fc.boolean() }), {
      minLength: 1,
      maxLength: 3,
      selector: ({ room }) => room,
    })
    .map((list) =>
      list.map(({ room, hasBehind }, index) => ({
        depth: index,
        room: Math.min(room, spindles - 1),
        rooms: [Math.min(room, spindles - 1)],
        deep: [],
        behind: hasBehind && room + 1 < spindles ? [room + 1] : [],
        rears: null,
        rearmost: null,
        hasRails: false,
        ends: { full: 4, rails: 0 },
      })),
    );

const taskArbitrary: fc.Arbitrary<LoadTask> = fc.integer({ min: 3, max: 10 }).chain((spindles) =>
  fc.record({
    places: fc.constant({ edge: 0, radius: 0, first: 0, pitch: 1, most: spindles - 1 }),
    own: fc.constant(null),
    spindles: fc.constant(spindles),
    longest: fc.integer({ min: 1, max: 6 }),
    tail: fc.nat({ max: 3 }),
    span: fc.constant(0),
    railRoom: fc.constant(-1),
    depths: depthsArbitrary(spindles),
    times: fc.constant(null),
  }),
);

/** Every load over up to all spindles that reads the same from both of its ends. */
function palindromes(spindles: number): readonly { readonly over: number; readonly load: readonly number[] }[] {
  const all = Array.from({ length: 2 ** spindles }, (_, bits) =>
    Array.from({ length: spindles }, (_unused, k) => k).filter((k) => bits & (1 << k)),
  );
  return all.flatMap((load) => {
    const over = (load.at(-1) ?? -1) + 1;
    return load[0] === 0 && load.every((k) => load.includes(over - 1 - k)) ? [{ over, load }] : [];
  });
}

/** Whether a load serves one depth, by the definition, and bores nothing behind its last place from either end. */
function serves({ over, load }: { over: number; load: readonly number[] }, depth: UsualDepth, task: LoadTask): boolean {
  const isClear = depth.behind.every((k) => !load.includes(k) && !load.includes(over - 1 - k));
  // Where the load ends before the wood does, the last bore still stands near its end.
  const isHeld = depth.room - (over - 1) <= task.tail;
  return (
    isClear && isHeld && judged(new Set(load), new Set(), { ...task, spindles: over, rooms: depth.rooms }) !== null
  );
}

/** The fewest loads of which each depth has one; null where a depth has none. */
function fewestBySearch(task: LoadTask): number | null {
  const served = palindromes(task.spindles).map((one) => task.depths.filter((depth) => serves(one, depth, task)));
  let covered: ReadonlySet<UsualDepth>[] = [new Set()];
  for (let count = 1; count <= task.depths.length; count += 1) {
    const next = new Map<string, ReadonlySet<UsualDepth>>();
    for (const before of covered)
      for (const more of served) {
        const all = new Set([...before, ...more]);
        next.set(
          [...all]
            .map(({ depth }) => depth)
            .sort()
            .join(),
          all,
        );
      }
    covered = [...next.values()];
    if (covered.some(({ size }) => size === task.depths.length)) return count;
  }
  return null;
}

test('the loads of a small head are the fewest that serve every usual depth from both ends', () => {
  const counted = new Map<number, number>();
  fc.assert(
    fc.property(taskArbitrary, (task) => {
      const fewest = fewestBySearch(task);
      const book = bookFor(task);
      if (fewest === null) return;
      expect(book?.loads.length).toBe(fewest);
      for (const { load, depths } of book!.loads)
        for (const depth of depths) {
          const over = load.at(-1)! + 1;
          expect([
            load,
            serves(
              { over, load },
              task.depths.find((one) => one.depth === depth)!,
              task,
            ),
          ]).toEqual([load, true]);
        }
      counted.set(fewest, (counted.get(fewest) ?? 0) + 1);
    }),
    { numRuns: 300 },
  );
  // Cases that need two loads are rarer, but there.
  expect(counted.get(1)).toBeGreaterThan(100);
  expect(counted.get(2)).toBeGreaterThan(3);
});

/** Every way to share out depths among so many groups. */
function groupings(depths: readonly UsualDepth[], count: number): readonly (readonly UsualDepth[])[][] {
  const all = Array.from({ length: count ** depths.length }, (_, code) =>
    Array.from({ length: count }, (_unused, group) =>
      depths.filter((_depth, index) => Math.floor(code / count ** index) % count === group),
    ),
  );
  return all.filter((groups) => groups.every(({ length }) => length > 0));
}

const roomsOf = (depths: readonly UsualDepth[]): readonly number[] => [
  ...new Set(depths.flatMap(({ rooms }) => rooms)),
];

/** What the best load for some depths costs, over as many spindles as one can lie; null where there is none. */
function leastFor(depths: readonly UsualDepth[], task: LoadTask): Cost | null {
  const rooms = roomsOf(depths);
  for (let spindles = task.spindles; Math.max(...rooms) - (spindles - 1) <= task.tail && spindles > 0; spindles -= 1) {
    const cost = leastOfAll({ ...task, spindles, rooms, never: depths.flatMap(({ behind }) => behind) });
    if (cost !== null) return cost;
  }
  return null;
}

type Sum = readonly [dowels: number, behind: number];
const summed = (costs: readonly Cost[]): Sum =>
  costs.reduce<Sum>(([dowels, behind], cost) => [dowels + cost[0], behind + cost[1]], [0, 0]);
const byParts = (a: Sum, b: Sum): number => a[0] - b[0] || a[1] - b[1];

test('of ways to share out depths among as few loads, it is one with the fewest dowels, and then with the least wood behind', () => {
  let chosen = 0;
  fc.assert(
    fc.property(taskArbitrary, (task) => {
      const book = bookFor(task);
      if (book === null || fewestBySearch(task) === null) return;
      const sums = groupings(task.depths, book.loads.length).flatMap((groups) => {
        const costs = groups.map((group) => leastFor(group, task)).filter((cost) => cost !== null);
        return costs.length === groups.length ? [summed(costs)] : [];
      });
      const least = sums.toSorted(byParts)[0];
      const costs = book.loads.map(({ load, depths }) => {
        const rooms = roomsOf(task.depths.filter(({ depth }) => depths.includes(depth)));
        return judged(new Set(load), new Set(), { ...task, spindles: load.at(-1)! + 1, rooms })!;
      });
      expect(summed(costs)).toEqual(least);
      chosen += Number(sums.some((sum) => String(sum) !== String(least)));
    }),
    { numRuns: 2000 },
  );
  // Ways that differ are rare.
  expect(chosen).toBeGreaterThan(10);
});
