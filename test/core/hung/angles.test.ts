import { expect, test } from 'vitest';
import { papersOf } from '../../../shared-core/service.js';
import { coverSolver } from '../../../server/cover-solver.js';
import { analyse } from '../findings/jobs.js';

const SHOP = `angles:
  two: { in-front: 20, behind-front: 39, spacing: 32, from-end: 60, apart: 400, diameter: 5, depth: 11, front-diameter: 3, front-depth: 9 }
  short: { in-front: 20, behind-front: 39, spacing: 32, from-end: 60, apart: 400, diameter: 5, depth: 11, front-diameter: 3, front-depth: 9, reach: 40 }
`;
const job = (lines: string) =>
  analyse(`shop: s.shop.yaml\ncarcasses:\n  a:\n    ${lines.replaceAll('\n', '\n    ')}\n`, { 's.shop.yaml': SHOP });
const bored = (lines: string, purpose: string) =>
  job(lines)
    .carcasses[0]!.boring!.bores.filter((bore) => bore.purpose === purpose)
    .map(({ panel, face, u, v, diameter, depth }) => [panel, face, u / 1000, v / 1000, diameter / 1000, depth / 1000]);

const FIXED = 'kind: base\nwidth: 600\nfronts: [{ front: fixed, height: 140 }, open]\n';

test('screws behind an overlay front find holes of the rows, 39 less the buffers of 2 behind the edge', () => {
  expect(bored(FIXED, 'angle')).toEqual([]);
  // Holes at 8, 40, ... above the side’s lower end; the front reaches from 577 to 717, its middle at 647, and the next pair of holes
  // stands at 616 and 648. From the upper edge of the front that is 101 and 69; 14.5 of the side lie under it, and 20 more.
  expect(bored(FIXED, 'angle-in-front')).toEqual([
    ['fixed-1', 'inside', 69, 34.5, 3, 9],
    ['fixed-1', 'inside', 101, 34.5, 3, 9],
    ['fixed-1', 'inside', 69, 562.5, 3, 9],
    ['fixed-1', 'inside', 101, 562.5, 3, 9],
  ]);
});

test('without a row the uprights are bored there', () => {
  expect(bored(`${FIXED}rows: none`, 'angle')).toEqual(
    ['left', 'right'].flatMap((side) => [616, 648].map((v) => [side, 'inside', 37, v, 5, 11])),
  );
});

test('a filler is held from outside, between the holes of the row on the other face', () => {
  const lines = 'kind: base\nwidth: 600\ndoors: { hung: right, reveal: 3 }\nfillers: { left: 80 }';
  // Of 720 less the reveal of 3 remain 597 between the outer angles: two of at most 400.
  const heights = bored(lines, 'angle').map(([panel, face, u, v]) => {
    expect([panel, face, u]).toEqual(['left', 'outside', 37]);
    return Number(v);
  });
  expect(heights).toHaveLength(6);
  for (const v of heights) expect((v - 8) % 32).toBe(16);
  expect(bored(lines, 'angle-in-front').every(([panel, , u]) => panel === 'filler-left' && u === 20)).toBe(true);
});

test('a filler that the head does not take is not bored, what stands behind it is', () => {
  const lines = (width: number) => `kind: base\nwidth: 600\nfillers: { left: ${width} }\nangles: short`;
  // The built-in head takes panels of 50 and more.
  expect([49, 50].map((width) => bored(lines(width), 'angle-in-front').length > 0)).toEqual([false, true]);
  expect(bored(lines(49), 'angle')).toEqual(bored(lines(50), 'angle'));
});

test('an angle that reaches further than a filler is wide holds it not, and nothing is bored or bought for it', async () => {
  const lines = (width: number) => `kind: base\nwidth: 600\nfillers: { left: ${width} }\nangles: short`;
  expect([39, 40].map((width) => bored(lines(width), 'angle').length > 0)).toEqual([false, true]);
  const bought = async (width: number) =>
    JSON.stringify(await papersOf(job(lines(width)), coverSolver)('hardware-list')).includes('short');
  expect([await bought(39), await bought(40)]).toEqual([false, true]);
});

test('an end panel carries the filler beside it', () => {
  const lines = 'kind: base\nwidth: 600\nend-panels: left\nfillers: { left: 80 }';
  const panels = new Set(bored(lines, 'angle').map(([panel]) => panel));
  expect([...panels]).toEqual(['end-left']);
});

test('the free edge of a blind panel is held to the bottom and to the rail', () => {
  const lines = 'kind: base\nwidth: 1150\nblind: { right: 590, strip: 60 }\ndoors: left';
  // Its free edge stands 650 from the right, at 500; the bottom and the rail begin at 16.
  expect(bored(lines, 'angle')).toEqual(
    ['bottom', 'rail-front'].flatMap((panel) => [528, 560].map((v) => [panel, 'inside', 37, v, 5, 11])),
  );
});

test('`angles: none` bores for none, and a carcass without such fronts has none', () => {
  expect(job(`${FIXED}angles: none`).carcasses[0]!.boring!.angles).toEqual([]);
  expect(job('kind: base\nwidth: 600\ndoors: pair').carcasses[0]!.boring!.angles).toEqual([]);
});

test('they are planned, replayed and bought', async () => {
  const made = job(`${FIXED}rows: none\ncount: 2`);
  expect(made.findings().map(({ finding }) => finding.rule)).not.toContain('plan-replay-differs');
  const bores = made.carcasses[0]!.operations!.operations.flatMap(({ ways }) =>
    ways.flatMap(({ strokes }) => strokes.flatMap(({ wanted }) => wanted.map(({ bore }) => bore.purpose))),
  );
  expect(bores).toContain('angle');
  expect(bores).toContain('angle-in-front');
  const hardware = JSON.stringify(await papersOf(made, coverSolver)('hardware-list'));
  expect(hardware).toContain('for fronts that do not move, with 4 screws each');
  expect(hardware).toContain('"a 4"');
});
