import { describe, expect, test } from 'vitest';
import { extentsOf } from '../../../shared-core/carcass/pose.js';
import { neutralShop } from '../../../shared-core/shop/neutral.js';
import { lineUp } from '../../../shared-core/wall/line-up.js';
import { analyse } from '../findings/jobs.js';

/** Where the panels beside a carcass stand, in millimetres: x, y and z, each from and to. */
function beside(lines: string): Readonly<Record<string, readonly number[]>> {
  const { carcass } = analyse(`carcasses:\n  sink:\n    ${lines.replaceAll('\n', '\n    ')}\n`).carcasses[0]!;
  const found = carcass!.panels.filter(({ key }) => /^(end|filler)-/.test(key));
  return Object.fromEntries(
    found.map((panel) => {
      const { x, y, z } = extentsOf(panel);
      return [panel.key, [x.from, x.to, y.from, y.to, z.from, z.to].map((value) => value / 1000)];
    }),
  );
}

// Worked by hand: 600 × 720 × 560 of 16, doors of 16 on buffers of 2.
describe('what stands beside a carcass', () => {
  test('an end panel is as deep as carcass and doors, and reaches down beside a plinth', () => {
    const lines = 'kind: base\nwidth: 600\nplinth: 100\ndoors: { hung: pair, reveal: 3 }\nend-panels: both';
    expect(beside(lines)).toEqual({
      'end-left': [-16, 0, -18, 560, -100, 720],
      'end-right': [600, 616, -18, 560, -100, 720],
    });
    expect(beside(lines.replace('both', '{ on: left, to-floor: no, board: board-19 }'))).toEqual({
      'end-left': [-19, 0, -18, 560, 0, 720],
    });
    // Without doors before it, or with inset ones, it is flush with the front edges.
    expect(beside('kind: base\nwidth: 600\nend-panels: right')).toEqual({ 'end-right': [600, 616, 0, 560, 0, 720] });
  });

  test('a filler stands in the plane of the doors and is as high as they are, outside of an end panel', () => {
    const lines = 'kind: base\nwidth: 600\ndoors: { hung: pair, reveal: 3 }\nfillers: { left: 40, right: 25 }';
    expect(beside(lines)).toEqual({
      'filler-left': [-40, 0, -18, -2, 0, 717],
      'filler-right': [600, 625, -18, -2, 0, 717],
    });
    expect(beside(`${lines}\nend-panels: left`)['filler-left']).toEqual([-56, -16, -18, -2, 0, 717]);
    expect(beside('kind: base\nwidth: 600\nfillers: { left: 40 }')).toEqual({ 'filler-left': [-40, 0, 0, 16, 0, 720] });
  });

  test('carcasses along a wall leave it its room, and the worktop lies over it', () => {
    const job = analyse(
      'carcasses:\n  a: { kind: base, width: 600, fillers: { left: 40 } }\n  b: { kind: base, width: 400, end-panels: both }\n  c: { kind: base, width: 300 }\n',
    );
    const [wall] = lineUp(
      job.carcasses.map(({ spec, carcass }) => ({ spec: spec!, carcass: carcass! })),
      neutralShop.habits,
    );
    // A filler of 40, 600, an end panel of 16, 400, another one of 16, 300.
    expect(wall!.stands.map(({ at, run }) => [at[0]!.x / 1000, run.from / 1000, run.to / 1000])).toEqual([
      [40, 0, 640],
      [656, 640, 1072],
      [1072, 1072, 1372],
    ]);
    const ends = wall!.worktops.map(({ outline }) => [outline[0]!, outline[1]!].map(({ x }) => x / 1000));
    expect(ends).toEqual([[0, 1372]]);
  });

  test('its place along a wall is that of its left side', () => {
    const job = analyse('carcasses:\n  a: { kind: base, width: 600, fillers: { left: 40 }, place: 100 }\n');
    const { spec, carcass } = job.carcasses[0]!;
    const [wall] = lineUp([{ spec: spec!, carcass: carcass! }], neutralShop.habits);
    expect(wall!.stands.map(({ at, run }) => [at[0]!.x, run.from])).toEqual([[100_000, 60_000]]);
  });
});
