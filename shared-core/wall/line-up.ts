import { frontLine } from '../carcass/diagonal.js';
import type { Interval } from '../carcass/interval.js';
import { extentsOf, type Extents } from '../carcass/pose.js';
import type { Carcass, Point3 } from '../carcass/model.js';
import { isOfBox } from '../carcass/roles.js';
import type { CarcassSpec } from '../carcass/spec.js';
import type { Spot } from '../carcass/turn.js';
import { Derived } from '../derived/derived.js';
import { isAboveFloor } from '../job/above-floor.js';
import type { Micrometres } from '../length/units.js';
import type { Habits } from '../shop/model.js';

// The frame of a wall: x to the right from its left end, y to the back with the wall at 0, so that what stands before it has
// negative y, z up from the floor.

const LEVELS = ['floor', 'above'] as const;

/** A carcass that is to stand along a wall. */
export interface ToStand {
  readonly spec: CarcassSpec;
  readonly carcass: Carcass;
}

/** Where a carcass stands: the origin of its frame in that of the wall, for each of the equal ones that are made. */
export interface Stand<T extends ToStand> {
  readonly one: T;
  readonly at: readonly Point3[];
  /** What all of them take up along the wall. */
  readonly run: Interval;
  /** And above the floor. */
  readonly high: Interval;
  /** How high above the floor its box ends, where a worktop would lie. */
  readonly top: Micrometres;
}

/** What stands along a wall, in the order of the file. */
export interface Line<T extends ToStand> {
  readonly number: number;
  readonly stands: readonly Stand<T>[];
}

export interface Wall<T extends ToStand> extends Line<T> {
  /** Each over neighbours of one height and depth without a gap, from the left. */
  readonly worktops: readonly Worktop[];
}

/** In the frame of the wall. */
export interface Worktop {
  /** Seen from above, its corners one after the other. */
  readonly outline: readonly Spot[];
  readonly z: Interval;
}

/**
 * The walls of a job in the order of their numbers. A carcass without a place stands right of the last one at its level: on the
 * floor or above it. One that stands on the floor and reaches up to where wall carcasses hang is at both.
 * @param derived keeps what a carcass takes up, for the next asking
 */
export function linesOf<T extends ToStand>(
  all: readonly T[],
  { hangHeight }: Habits,
  derived: Derived = new Derived(),
): readonly Line<T>[] {
  const numbers = [...new Set(all.map(({ spec }) => spec.place.wall.value))].sort((a, b) => a - b);
  return numbers.map((number) => {
    const here = all.filter(({ spec }) => spec.place.wall.value === number);
    return { number, stands: sideBySide(here, hangHeight, derived) };
  });
}

/** The same, with the worktops that lie on what stands there. */
export function lineUp<T extends ToStand>(all: readonly T[], habits: Habits): readonly Wall<T>[] {
  return linesOf(all, habits).map((line) => ({
    ...line,
    worktops: worktopsOver(line.stands, habits.worktopThickness),
  }));
}

function sideBySide<T extends ToStand>(
  all: readonly T[],
  hangHeight: Micrometres,
  derived: Derived,
): readonly Stand<T>[] {
  const next = { floor: 0, above: 0 };
  return all.map((one) => {
    const { spec, carcass } = one;
    const { x, y, z, top } = derived.get(roomOf, carcass);
    const width = x.to - x.from;
    const isTall = !isAboveFloor(spec) && z.to - z.from > hangHeight;
    const levels = isTall ? LEVELS : isAboveFloor(spec) ? (['above'] as const) : (['floor'] as const);
    // The place of a carcass is that of its left side; what stands beside that begins before it.
    const from =
      spec.place.at === null ? Math.max(...levels.map((level) => next[level])) : spec.place.at.value + x.from;
    const low = spec.place.aboveFloor.value;
    const at = Array.from({ length: carcass.count }, (_, i): Point3 => ({
      x: from - x.from + i * width,
      y: 0 - y.to,
      z: low - z.from,
    }));
    const to = from + carcass.count * width;
    for (const level of levels) next[level] = to;
    return { one, at, run: { from, to }, high: { from: low, to: low + z.to - z.from }, top: low + top - z.from };
  });
}

/** What the box and what stands under it and beside it take up in the carcass frame, and where the box ends; doors hang before it. */
function roomOf({ panels }: Carcass): Extents & { readonly top: Micrometres } {
  const standing = panels.filter((panel) => panel.role !== 'door').map((panel) => ({ panel, box: extentsOf(panel) }));
  const run = (axis: keyof Extents) => ({
    from: Math.min(...standing.map(({ box }) => box[axis].from)),
    to: Math.max(...standing.map(({ box }) => box[axis].to)),
  });
  const top = Math.max(...standing.map(({ panel, box }) => (isOfBox(panel) ? box.z.to : -Infinity)));
  return { x: run('x'), y: run('y'), z: run('z'), top };
}

/** Whether a worktop lies on it. */
export function bearsWorktop(spec: CarcassSpec): boolean {
  return (spec.kind.value === 'base' || spec.kind.value === 'for-drawers') && !isAboveFloor(spec);
}

/** Those that a worktop lies on, from the left. */
export function underWorktop<T extends ToStand>(stands: readonly Stand<T>[]): readonly Stand<T>[] {
  return stands.filter(({ one }) => bearsWorktop(one.spec)).toSorted((a, b) => a.run.from - b.run.from);
}

function worktopsOver<T extends ToStand>(stands: readonly Stand<T>[], thickness: Micrometres): readonly Worktop[] {
  if (thickness === 0) return [];
  const under = underWorktop(stands);
  const tops: { front: readonly Spot[]; readonly low: Micrometres }[] = [];
  for (const stand of under) {
    const low = stand.top;
    for (const front of frontsOf(stand)) {
      const last = tops.at(-1);
      const end = last?.front.at(-1);
      if (last?.low === low && end?.x === front[0]!.x && end.y === front[0]!.y)
        last.front = straightened([...last.front.slice(0, -1), ...front]);
      else tops.push({ front, low });
    }
  }
  return tops.map(({ front, low }) => ({
    outline: [...front, { x: front.at(-1)!.x, y: 0 }, { x: front[0]!.x, y: 0 }],
    z: { from: low, to: low + thickness },
  }));
}

/** The front edge of what lies over a carcass, from the left: one for all equal ones, but for each one across a corner. */
function frontsOf<T extends ToStand>({ one, at, run }: Stand<T>): readonly (readonly Spot[])[] {
  const { diagonal } = one.carcass;
  const { y } = at[0]!;
  if (diagonal !== null)
    return at.map((origin) =>
      frontLine(diagonal, one.spec.width.value).map((spot) => ({ x: origin.x + spot.x, y: y + spot.y })),
    );
  return [
    [
      { x: run.from, y },
      { x: run.to, y },
    ],
  ];
}

/** The same line without the points between two stretches that are parallel to the wall. */
function straightened(line: readonly Spot[]): readonly Spot[] {
  return line.filter(({ y }, i) => line[i - 1]?.y !== y || line[i + 1]?.y !== y);
}
