import { describe, expect, test } from 'vitest';
import type { CarcassSpec } from '../../../shared-core/carcass/spec.js';
import type { Carcass } from '../../../shared-core/carcass/model.js';
import { lineUp } from '../../../shared-core/wall/line-up.js';
import { analyse } from '../findings/jobs.js';

function walls(...carcasses: readonly string[]) {
  const { carcasses: all, shop } = analyse(`carcasses:\n${carcasses.map((one) => `  ${one}\n`).join('')}`);
  const standing = all.map(({ name, spec, carcass }) => {
    expect(carcass, name).not.toBeNull();
    return { name, spec: spec as CarcassSpec, carcass: carcass as Carcass };
  });
  return lineUp(standing, shop.habits);
}
/** Name, and where it begins in millimetres: along the wall, from the floor. */
const placesOf = ([wall]: ReturnType<typeof walls>) =>
  wall!.stands.flatMap(({ one, at }) => at.map(({ x, z }) => [one.name, x / 1000, z / 1000]));

describe('carcasses along a wall', () => {
  test('stand in the order of the file, those on the floor and those above it each in a line of their own', () => {
    const found = walls(
      'a: { kind: base, width: 600, plinth: 100 }',
      'b: { kind: wall, width: 800 }',
      'c: { kind: for-drawers, width: 450, plinth: 100 }',
      'd: { kind: wall, width: 300 }',
    );
    // z is that of the lower end of the sides: on the plinth, or as high as the shop hangs wall carcasses.
    expect(placesOf(found)).toEqual([
      ['a', 0, 100],
      ['b', 0, 1450],
      ['c', 600, 100],
      ['d', 800, 1450],
    ]);
  });

  test('stand where the job says, and the next goes on from there', () => {
    const found = walls(
      'a: { kind: base, width: 600, place: 250 }',
      'b: { kind: tall, width: 500 }',
      'c: { kind: open, width: 400, place: { at: 0, above-floor: 1800 } }',
    );
    expect(placesOf(found)).toEqual([
      ['a', 250, 0],
      ['b', 850, 0],
      ['c', 0, 1800],
    ]);
  });

  test('a tall one is passed on both levels, whichever comes first', () => {
    const found = walls(
      'a: { kind: wall, width: 800 }',
      'b: { kind: tall, width: 500 }',
      'c: { kind: wall, width: 300 }',
      'd: { kind: base, width: 600 }',
    );
    expect(placesOf(found).map(([name, x]) => [name, x])).toEqual([
      ['a', 0],
      ['b', 800],
      ['c', 1300],
      ['d', 1300],
    ]);
  });

  test('equal ones stand side by side', () => {
    expect(placesOf(walls('a: { kind: base, width: 400, count: 3 }', 'b: { kind: base, width: 600 }'))).toEqual([
      ['a', 0, 0],
      ['a', 400, 0],
      ['a', 800, 0],
      ['b', 1200, 0],
    ]);
  });

  test('stand with their backs at the wall, however deep they are, with or without doors', () => {
    const [wall] = walls(
      'a: { kind: base, width: 600, doors: left }',
      'b: { kind: base, width: 600, depth: 400, back: applied }',
    );
    for (const { one, at } of wall!.stands) {
      const back = Math.max(
        ...one.carcass.panels.map(({ pose, width, thickness }) =>
          Math.max(pose.origin.y, pose.origin.y + (pose.u === '+y' ? width : 0) + (pose.t === '+y' ? thickness : 0)),
        ),
      );
      expect(at[0]!.y + back).toBe(0);
    }
  });

  test('each wall has its own', () => {
    const found = walls(
      'a: { kind: base, width: 600 }',
      'b: { kind: base, width: 500, place: { wall: 2 } }',
      'c: { kind: base, width: 400 }',
    );
    expect(
      found.map(({ number, stands }) => [number, stands.map(({ one, run }) => [one.name, run.from / 1000])]),
    ).toEqual([
      [
        1,
        [
          ['a', 0],
          ['c', 600],
        ],
      ],
      [2, [['b', 0]]],
    ]);
  });
});

describe('the worktop', () => {
  const outlines = ([wall]: ReturnType<typeof walls>) =>
    wall!.worktops.map(({ outline }) => outline.map(({ x, y }) => [x / 1000, y / 1000]));
  /** Of those that are rectangles. */
  const tops = ([wall]: ReturnType<typeof walls>) =>
    wall!.worktops.map(({ outline, z }) => {
      expect(outline).toHaveLength(4);
      const [left, right] = [outline[0]!, outline[2]!];
      return [left.x, right.x, left.y, right.y, z.from, z.to].map((one) => one / 1000);
    });

  test('lies over neighbours of one height in one piece, and not over tall carcasses', () => {
    const found = walls(
      'a: { kind: base, width: 600, plinth: 100 }',
      'b: { kind: for-drawers, width: 450, plinth: 100 }',
      'c: { kind: tall, width: 500, plinth: 100 }',
      'd: { kind: base, width: 300, plinth: 100 }',
    );
    // 22 pitches of 32 mm and a board of 16 mm on a plinth of 100 mm, with a worktop of 38 mm, 560 mm deep.
    expect(tops(found)).toEqual([
      [0, 1050, -560, 0, 820, 858],
      [1550, 1850, -560, 0, 820, 858],
    ]);
  });

  test('is broken by a gap and by another height', () => {
    const found = walls(
      'a: { kind: base, width: 600 }',
      'b: { kind: base, width: 600, place: 640 }',
      'c: { kind: base, width: 600, plinth: 80 }',
    );
    expect(tops(found).map(([from, to, , , low]) => [from, to, low])).toEqual([
      [0, 600, 720],
      [640, 1240, 720],
      [1240, 1840, 800],
    ]);
  });

  test('lies in one piece over a carcass across a corner that stands on the plinth of its neighbours', () => {
    const found = walls(
      'a: { kind: base, width: 900, height: 720, diagonal: { left: 1000 }, place: { above-floor: 120 } }',
      'b: { kind: base, width: 600, plinth: 120 }',
      'c: { kind: wall, width: 600 }',
    );
    expect(placesOf(found)).toEqual([
      ['a', 0, 120],
      ['b', 900, 120],
      ['c', 0, 1450],
    ]);
    expect(outlines(found)).toHaveLength(1);
    // Higher up it hangs, with nothing on it.
    const hung = walls('a: { kind: base, width: 600, place: { above-floor: 251 } }', 'b: { kind: wall, width: 600 }');
    expect(placesOf(hung).map(([, x]) => x)).toEqual([0, 600]);
    expect(hung[0]!.worktops).toEqual([]);
  });

  test('covers both wings of a carcass across a corner, in one piece with its neighbours', () => {
    const left = walls(
      'a: { kind: base, width: 900, diagonal: { left: 1000 } }',
      'b: { kind: base, width: 600, height: 752 }',
    );
    expect(outlines(left)).toEqual([
      [
        [0, -1000],
        [560, -1000],
        [900, -560],
        [1500, -560],
        [1500, 0],
        [0, 0],
      ],
    ]);
    const right = walls(
      'b: { kind: base, width: 600, height: 752 }',
      'a: { kind: base, width: 900, diagonal: { right: 1000 } }',
      'c: { kind: base, width: 300, height: 752 }',
    );
    expect(outlines(right)).toEqual([
      [
        [0, -560],
        [600, -560],
        [940, -1000],
        [1500, -1000],
        [1500, 0],
        [0, 0],
      ],
      [
        [1500, -560],
        [1800, -560],
        [1800, 0],
        [1500, 0],
      ],
    ]);
  });
});
