import fc from 'fast-check';
import { afterEach, expect, test } from 'vitest';
import { wayOut, type ShelfRoom, type ShelfSize, type WayOut } from '../../shared-core/hung/bring-in.js';
import { clear, thinner } from './solids.js';

afterEach(clear);

const mm = (length: number): number => length * 1000;
const between = (least: number, most: number) => fc.integer({ min: least, max: most }).map(mm);
/** Between two angles half a degree apart a corner strays so far from what is clear at both, in micrometres, on a shelf of a metre. */
const STRAYS = 60;
const BLOCK = mm(16);
const FAR = mm(3000);

const drawn = fc
  .record({
    width: between(500, 1300),
    deep: between(300, 600),
    height: between(60, 800),
    play: fc.constantFrom(0, 1, 2, 10, 30).map(mm),
    behind: fc.constantFrom(0, 1, 10).map(mm),
    thickness: fc.constantFrom(mm(16), mm(19)),
    opening: between(200, 700),
    before: between(0, 400),
    isInset: fc.boolean(),
    side: fc.constantFrom('left', 'right', 'both', 'both'),
  })
  .map(({ width, deep, height, play, behind, thickness, opening, before, isInset, side }) => {
    const face = isInset ? BLOCK : -mm(2);
    const whole = Math.min(opening, width);
    const from = side === 'left' ? width - whole : side === 'right' ? 0 : Math.min(before, width - whole);
    const room: ShelfRoom = {
      width,
      y: { from: face, to: face + deep },
      outer: face - BLOCK,
      edge: 0,
      height,
      open: { from, to: from + whole },
    };
    const shelf: ShelfSize = { length: width - 2 * play, width: deep - behind, thickness };
    return { room, shelf };
  });

type Three = [number, number, number];
const block = (name: string, min: Three, max: Three) => thinner({ name, box: { min, max } }, 0);

/** What stands about the place, far beyond it where it ends nowhere. */
function around({ width, y, outer, edge, height, open }: ShelfRoom) {
  return [
    block('left', [-BLOCK, edge, 0], [0, y.to, height]),
    block('right', [width, edge, 0], [width + BLOCK, y.to, height]),
    block('back', [-FAR, y.to, 0], [FAR, y.to + BLOCK, height]),
    block('floor', [-FAR, -FAR, -BLOCK], [FAR, FAR, 0]),
    block('ceiling', [-FAR, -FAR, height], [FAR, FAR, height + BLOCK]),
    ...(open.from > 0 ? [block('blind-left', [-BLOCK, outer, 0], [open.from, y.from, height])] : []),
    ...(open.to < width ? [block('blind-right', [open.to, outer, 0], [width + BLOCK, y.from, height])] : []),
  ];
}

interface Pose {
  readonly roll: number;
  readonly pitch: number;
  readonly yaw: number;
  readonly x: number;
  readonly y: number;
}

/** Its rear left corner seen from above at (x, y), on the floor. */
function solidAt({ length, width, thickness }: ShelfSize, { roll, pitch, yaw, x, y }: Pose) {
  const s = STRAYS;
  const flat = thinner({ name: 'shelf', box: { min: [s, s - width, s], max: [length - s, -s, thickness - s] } }, 0);
  const rad = Math.PI / 180;
  return flat.solid
    .rotate([-roll, 0, 0])
    .translate([0, -thickness * Math.sin(roll * rad), 0])
    .rotate([0, -pitch, 0])
    .translate([thickness * Math.sin(pitch * rad), 0, 0])
    .rotate([0, 0, -yaw])
    .translate([x, y, 0]);
}

/** Every pose of a way, sampled finely enough to meet a block of 16. */
function posesOf(way: WayOut, { y, open, outer, edge }: ShelfRoom): readonly Pose[] {
  const blend = (a: Pose, b: Pose, steps: number): readonly Pose[] =>
    Array.from({ length: steps }, (_, i) => {
      const part = (i + 1) / steps;
      const mid = (key: keyof Pose): number => a[key] + (b[key] - a[key]) * part;
      return { roll: mid('roll'), pitch: mid('pitch'), yaw: mid('yaw'), x: mid('x'), y: mid('y') };
    });
  const rest: Pose = { roll: 0, pitch: 0, yaw: 0, x: 0, y: y.to };
  if (way.how === 'end-up') {
    const up = { ...rest, pitch: way.pitch };
    const before = { ...up, x: open.from };
    return [
      ...blend(rest, up, 40),
      ...blend(up, before, 10),
      ...blend(before, { ...before, y: Math.min(outer, edge) - mm(1) }, 60),
    ];
  }
  let at: Pose = { ...rest, roll: way.roll };
  const poses = [...blend(rest, at, 40)];
  for (const { x, y: deep, yaw } of way.steps) {
    const beside = { ...at, x, y: deep };
    const turned = { ...beside, yaw };
    poses.push(...blend(at, beside, 2), ...blend(beside, turned, 2));
    at = turned;
  }
  const rad = (at.yaw * Math.PI) / 180;
  const out = (at.y - Math.min(outer, edge) + mm(1)) / Math.sin(rad);
  return [...poses, ...blend(at, { ...at, x: at.x + out * Math.cos(rad), y: at.y - out * Math.sin(rad) }, 200)];
}

const mirrored = (room: ShelfRoom): ShelfRoom => ({
  ...room,
  open: { from: room.width - room.open.to, to: room.width - room.open.from },
});

test('a shelf comes out of its place on the way that is found, without touching anything', () => {
  const count = { 'end-up': 0, 'edge-up': 0, none: 0, turned: 0 };
  fc.assert(
    fc.property(drawn, ({ room, shelf }) => {
      const way = wayOut(shelf, room);
      count[way?.how ?? 'none'] += 1;
      if (way === null) return;
      const seen = way.how === 'edge-up' && way.mirrored ? mirrored(room) : room;
      if (way.how === 'edge-up') count.turned += way.steps.some(({ yaw }) => yaw > 1) ? 1 : 0;
      const blocks = around(seen);
      const poses = posesOf(way, seen);
      for (const pose of poses) {
        const solid = solidAt(shelf, pose);
        const { min, max } = solid.boundingBox();
        for (const { name, solid: other, box } of blocks) {
          const isApart = [0, 1, 2].some((i) => max[i]! <= box.min[i]! || min[i]! >= box.max[i]!);
          // A cubic millimetre is what rounding makes.
          if (!isApart) expect(solid.intersect(other).volume(), `${name} ${JSON.stringify(pose)}`).toBeLessThan(1e9);
        }
      }
      // It is out in the end.
      expect(solidAt(shelf, poses.at(-1)!).boundingBox().max[1]).toBeLessThan(Math.min(seen.outer, seen.edge));
      clear();
    }),
    { numRuns: 600 },
  );
  expect(Math.min(count['end-up'], count['edge-up'], count.none, count.turned)).toBeGreaterThan(10);
});

/** Whether a rod seen from above finds a way out by steps on a grid: tried at every place that it gets to, and nothing known of phases. */
function getsOut(rod: { readonly long: number; readonly across: number }, room: ShelfRoom): boolean {
  const [step, turn] = [mm(20), 3];
  const { width, y, outer, edge, open } = room;
  const walls = [
    [-FAR, 0, edge, FAR],
    [width, FAR, edge, FAR],
    [-FAR, FAR, y.to, FAR],
    ...(open.from > 0 ? [[-FAR, open.from, outer, y.from]] : []),
    ...(open.to < width ? [[open.to, FAR, outer, y.from]] : []),
  ].map(([x0, x1, y0, y1]) => [
    [x0!, y0!],
    [x1!, y0!],
    [x1!, y1!],
    [x0!, y1!],
  ]);
  const cornersAt = (x: number, at: number, yaw: number): number[][] => {
    const [cos, sin] = [Math.cos((yaw * Math.PI) / 180), Math.sin((yaw * Math.PI) / 180)];
    return [
      [0, 0],
      [rod.long, 0],
      [rod.long, rod.across],
      [0, rod.across],
    ].map(([l, w]) => [x + l! * cos - w! * sin, at - l! * sin - w! * cos]);
  };
  const parted = (a: number[][], b: number[][], axes: number[][]): boolean =>
    axes.some(([ax, ay]) => {
      const [pa, pb] = [a, b].map((shape) => shape.map((point) => point[0]! * ax! + point[1]! * ay!));
      return Math.max(...pa!) <= Math.min(...pb!) || Math.max(...pb!) <= Math.min(...pa!);
    });
  const isFree = (corners: number[][]): boolean => {
    const along = [corners[1]![0]! - corners[0]![0]!, corners[1]![1]! - corners[0]![1]!];
    const axes = [[1, 0], [0, 1], along, [-along[1]!, along[0]!]];
    return walls.every((wall) => parted(corners, wall, axes));
  };
  const start = [(width - rod.long) / 2, y.to, 0] as const;
  const seen = new Set<string>(['0 0 0']);
  const next: (readonly [number, number, number])[] = [[0, 0, 0]];
  while (next.length > 0) {
    const [i, j, k] = next.pop()!;
    for (const [di, dj, dk] of [
      [1, 0, 0],
      [0, -1, 0],
      [0, 0, 1],
      [0, 0, -1],
      [-1, 0, 0],
      [0, 1, 0],
    ] as const) {
      const place = [i + di, j + dj, k + dk] as const;
      const key = place.join(' ');
      if (seen.has(key) || Math.abs(place[2] * turn) > 90) continue;
      seen.add(key);
      const corners = cornersAt(start[0] + place[0] * step, start[1] + place[1] * step, place[2] * turn);
      if (!isFree(corners)) continue;
      if (corners.every((corner) => corner[1]! < Math.min(outer, edge))) return true;
      next.push(place);
    }
  }
  return false;
}

test('where no way is found for a shelf that cannot be lifted, a search of its whole floor finds none', () => {
  const count = { both: 0, neither: 0, planned: 0, turned: 0 };
  fc.assert(
    fc.property(drawn, between(10, 300), ({ room, shelf }, width) => {
      // No higher than it is thick, and so narrow that it has room to turn.
      const low = { ...room, height: shelf.thickness };
      const rod = { ...shelf, length: shelf.length - mm(30), width: Math.min(width, shelf.width) };
      const way = wayOut(rod, low);
      // A step of the grid may cut a corner; what is so much larger has it to spare.
      const found = getsOut({ long: rod.length + mm(20), across: rod.width + mm(20) }, low);
      if (found) expect(way, JSON.stringify([rod, low])).not.toBeNull();
      count[found ? 'both' : way === null ? 'neither' : 'planned'] += 1;
      count.turned += found && way?.how === 'edge-up' ? 1 : 0;
    }),
    { numRuns: 100 },
  );
  expect(count.turned).toBeGreaterThan(5);
  expect(count.neither).toBeGreaterThan(5);
  // The grid is coarse, and misses little of what is found.
  expect(count.planned).toBeLessThan(count.both);
});

test('it goes out where the opening is a millimetre wider, and not where it is one narrower', () => {
  const place = (from: number, to: number): ShelfRoom => ({
    width: mm(1000),
    y: { from: 0, to: mm(500) },
    outer: -BLOCK,
    edge: 0,
    height: mm(16),
    open: { from: mm(from), to: mm(to) },
  });
  // Flat, turned by a right angle: 250 of it cross the opening, at either end and between two blind panels.
  const shelf = { length: mm(400), width: mm(250), thickness: mm(16) };
  expect(wayOut(shelf, place(749, 1000))).toMatchObject({ how: 'edge-up', roll: 0 });
  expect(wayOut(shelf, place(751, 1000))).toBeNull();
  expect(wayOut(shelf, place(0, 251))).toMatchObject({ how: 'edge-up', roll: 0 });
  expect(wayOut(shelf, place(0, 249))).toBeNull();
  expect(wayOut(shelf, place(450, 701))).not.toBeNull();
  expect(wayOut(shelf, place(450, 699))).toBeNull();
  // Longer than the room is deep, so that its end must come into the opening before all of it is turned.
  const middle = { ...place(179, 379), width: mm(500), y: { from: -mm(2), to: mm(298) }, outer: -mm(18) };
  expect(wayOut({ length: mm(468), width: mm(10), thickness: mm(16) }, middle)).not.toBeNull();
});
