import Module, { type Manifold, type ManifoldToplevel } from 'manifold-3d';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Pose } from '../../../../shared-core/carcass/model.js';
import { handedness, toCarcass } from '../../../../shared-core/carcass/pose.js';
import type { Side } from '../../../../shared-core/machining/replay/solid.js';
import { bore, type Hole } from '../../../../shared-core/machining/replay/bore.js';
import { strokesOf } from '../../../../shared-core/machining/replay/replay.js';
import type { StrayKind } from '../../../../shared-core/machining/replay/stray.js';
import type { Blank, SetUp, Step } from '../../../../shared-core/machining/set-up.js';
import { HORIZONTAL, mm, setUp, step, VERTICAL } from './set-ups.js';
import { inWords } from '../../../in-words.js';

/**
 * The outside check of the replay: a solid modeller (manifold-3d, a general library) holds the panel as a real brick in the
 * carcass frame with a mark on each side, turns it about by angles, and pushes it home by its bounding box. Drills are taken
 * out of it where the machine's spindles stand, and it is turned back. The wood that is left must be the panel with the
 * replayed holes, set out in the carcass by the panel's pose. Angles only turn, so no mirror image can slip in. The same for
 * real panels, too long, too narrow and too thick, on machines set for the nominal one.
 */

let M: ManifoldToplevel;
beforeAll(async () => {
  M = await Module();
  M.setup();
});

type XYZ = [number, number, number];
const [LENGTH, WIDTH, THICK] = [200, 120, 16];
const POSES: Readonly<Record<string, Pose>> = {
  'left side': { origin: { x: 0, y: 0, z: 0 }, u: '+y', v: '+z', t: '+x' },
  'right side': { origin: { x: mm(600), y: 0, z: 0 }, u: '+y', v: '+z', t: '-x' },
  bottom: { origin: { x: mm(16), y: 0, z: 0 }, u: '+y', v: '+x', t: '+z' },
  top: { origin: { x: mm(16), y: 0, z: mm(720) }, u: '+y', v: '+x', t: '-z' },
};
const MARKS: Readonly<Record<Side, XYZ>> = {
  front: [-9, LENGTH / 2, THICK / 2],
  back: [WIDTH + 9, LENGTH / 2, THICK / 2],
  'reference-end': [WIDTH / 2, -9, THICK / 2],
  'far-end': [WIDTH / 2, LENGTH + 9, THICK / 2],
  outside: [WIDTH / 2, LENGTH / 2, -9],
  inside: [WIDTH / 2, LENGTH / 2, THICK + 9],
};

const placed = (pose: Pose, [u, v, t]: XYZ): XYZ => {
  const { x, y, z } = toCarcass(pose, { u: mm(u), v: mm(v), t: mm(t) });
  return [x / 1000, y / 1000, z / 1000];
};

function block(p: XYZ, q: XYZ): Manifold {
  const low = p.map((x, i) => Math.min(x, q[i]!)) as XYZ;
  return M.Manifold.cube(p.map((x, i) => Math.abs(x - q[i]!)) as XYZ).translate(low);
}

/** A drill from one point to another along an axis; its facets repeat every quarter turn. */
function drill(from: XYZ, to: XYZ, diameter: number): Manifold {
  const axis = from.findIndex((x, i) => Math.abs(x - to[i]!) > 1e-9);
  const upright = M.Manifold.cylinder(Math.abs(to[axis]! - from[axis]!), diameter / 2, diameter / 2, 32);
  const turned = axis === 0 ? upright.rotate([0, 90, 0]) : axis === 1 ? upright.rotate([-90, 0, 0]) : upright;
  return turned.translate(from.map((x, i) => Math.min(x, to[i]!)) as XYZ);
}

const asDrill = (pose: Pose, [, length, thick]: XYZ, hole: Hole): Manifold => {
  const [u, v, depth] = [hole.u / 1000, hole.v / 1000, hole.depth / 1000];
  const ends: Record<Hole['face'], [XYZ, XYZ]> = {
    outside: [
      [u, v, -1],
      [u, v, depth],
    ],
    inside: [
      [u, v, thick + 1],
      [u, v, thick - depth],
    ],
    'reference-end': [
      [u, -1, v],
      [u, depth, v],
    ],
    'far-end': [
      [u, length + 1, v],
      [u, length - depth, v],
    ],
  };
  const [from, to] = ends[hole.face];
  return drill(placed(pose, from), placed(pose, to), hole.diameter / 1000);
};

const middle = (mark: Manifold): XYZ => {
  const { min, max } = mark.boundingBox();
  return min.map((x, i) => (x + max[i]!) / 2) as XYZ;
};

const QUARTERS = [0, 90, 180, 270];
const TURNS = QUARTERS.flatMap((a) => QUARTERS.flatMap((b) => QUARTERS.map((c): XYZ => [a, b, c])));

interface Lying {
  readonly down: Side;
  readonly away: Side;
  readonly left: Side;
  readonly right: Side;
  readonly home: (wood: Manifold, stop: { side: 'left' | 'right'; face: number }) => { wood: Manifold; shift: XYZ };
}

function lieDown(pose: Pose, turn: XYZ): Lying {
  const marks = (Object.keys(MARKS) as Side[]).map((side) => {
    const centre = placed(pose, MARKS[side]);
    const mark = M.Manifold.cube([1, 1, 1], true).translate(centre);
    return { side, at: middle(mark.rotate(turn)) };
  });
  const extreme = (axis: number, sign: 1 | -1): Side =>
    marks.reduce((best, mark) => (sign * mark.at[axis]! > sign * best.at[axis]! ? mark : best)).side;
  return {
    down: extreme(2, -1),
    away: extreme(1, 1),
    left: extreme(0, -1),
    right: extreme(0, 1),
    home: (wood, stop) => {
      const { min, max } = wood.boundingBox();
      const x = stop.side === 'left' ? -stop.face - min[0] : stop.face - max[0];
      const shift: XYZ = [x, -max[1], -min[2]];
      return { wood: wood.translate(shift), shift };
    },
  };
}

const turnBack = (wood: Manifold, [a, b, c]: XYZ): Manifold =>
  wood.rotate([0, 0, -c]).rotate([0, -b, 0]).rotate([-a, 0, 0]);
const apart = (a: Manifold, b: Manifold): number => a.subtract(b).volume() + b.subtract(a).volume();

const isFace = (side: Side): side is Step['down'] => side === 'inside' || side === 'outside';
const isEdge = (side: Side): side is Step['edge'] => side === 'front' || side === 'back';
const isEnd = (side: Side): side is Step['end'] => side === 'reference-end' || side === 'far-end';

/** Width, length and thickness of the real panel beyond the nominal one, in millimetres. */
const ERRORS: Readonly<Record<string, XYZ>> = { nominal: [0, 0, 0], real: [-1.5, 2, 0.75] };
const CASES = Object.keys(POSES).flatMap((name) => Object.keys(ERRORS).map((how) => [how, name] as const));

describe.each(CASES)('a %s %s', (how, name) => {
  const pose = POSES[name]!;
  const error = ERRORS[how]!;
  const real: XYZ = [WIDTH + error[0], LENGTH + error[1], THICK + error[2]];
  const stray = (kind: StrayKind): number =>
    kind === 'width' ? mm(error[0]) : kind === 'length' ? mm(error[1]) : kind === 'thickness' ? mm(error[2]) : 0;
  const replay = (given: SetUp): readonly Hole[] => {
    const read = strokesOf([given], 'box', 'p', of);
    if (!read.ok) throw new Error(inWords(read.problems[0]!.message));
    return read.strokes.flatMap((stroke) => bore(stroke, stray));
  };
  const of: Blank = { length: mm(LENGTH), width: mm(WIDTH), thickness: mm(THICK), hand: handedness(pose) };

  it.each(['left', 'right'] as const)('lies on a vertical head at a %s stop as a brick would', (hand) => {
    const done = new Set<string>();
    for (const turn of TURNS) {
      const lying = lieDown(pose, turn);
      const end = lying[hand];
      if (!isFace(lying.down) || !isEdge(lying.away) || !isEnd(end)) continue;
      // Several chains of angles end in the same turn.
      const way = `${lying.down} ${lying.away} ${end}`;
      if (done.has(way)) continue;
      done.add(way);
      const stroke = step({ down: lying.down, edge: lying.away, end, stop: `near-${hand}` }, [0, 2], 8);
      const given = setUp(VERTICAL, { fence: [21], stops: { [`near-${hand}`]: 34 }, depth: 11 }, { p: [stroke] });
      const holes = replay(given);

      const brick = block(placed(pose, [0, 0, 0]), placed(pose, real));
      const home = lying.home(brick.rotate(turn), { side: hand, face: 34 });
      const drills = [21, 21 + 64].map((fromFence) =>
        drill([0, -fromFence, real[2] + 1], [0, -fromFence, THICK - 11], 8),
      );
      const bored = drills.reduce((wood, bit) => wood.subtract(bit), home.wood);
      const back = turnBack(bored.translate(home.shift.map((x) => -x) as XYZ), turn);
      const replayed = holes.reduce((wood, hole) => wood.subtract(asDrill(pose, real, hole)), brick);
      expect(brick.volume() - replayed.volume()).toBeGreaterThan(1000);
      expect(apart(back, replayed)).toBeLessThan(0.01);
    }
    // Two faces down, two edges on the fence; the end is then settled.
    expect(done.size).toBe(4);
  });

  it.each(['left', 'right'] as const)(
    'stands against a horizontal head at a %s squaring stop as a brick would',
    (hand) => {
      const done = new Set<string>();
      for (const turn of TURNS) {
        const lying = lieDown(pose, turn);
        const edge = lying[hand];
        if (!isFace(lying.down) || !isEnd(lying.away) || !isEdge(edge)) continue;
        const way = `${lying.down} ${edge} ${lying.away}`;
        if (done.has(way)) continue;
        done.add(way);
        const spindles = hand === 'left' ? [0, 2] : [20, 18];
        const stroke = step({ down: lying.down, edge, end: lying.away, stop: `square-${hand}` }, spindles, 8);
        const given = setUp(HORIZONTAL, { height: 6, stops: { [`square-${hand}`]: 37 }, depth: 19 }, { p: [stroke] });
        const holes = replay(given);

        const brick = block(placed(pose, [0, 0, 0]), placed(pose, real));
        const home = lying.home(brick.rotate(turn), { side: hand, face: hand === 'left' ? 37 : 20 * 32 + 37 });
        const drills = spindles.map((spindle) => drill([spindle * 32, 1, 6], [spindle * 32, -19, 6], 8));
        const bored = drills.reduce((wood, bit) => wood.subtract(bit), home.wood);
        const back = turnBack(bored.translate(home.shift.map((x) => -x) as XYZ), turn);
        const replayed = holes.reduce((wood, hole) => wood.subtract(asDrill(pose, real, hole)), brick);
        expect(brick.volume() - replayed.volume()).toBeGreaterThan(1800);
        expect(apart(back, replayed)).toBeLessThan(0.01);
      }
      expect(done.size).toBe(4);
    },
  );
});
