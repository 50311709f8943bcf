import { expect, test } from 'vitest';
import { papersOf } from '../../../shared-core/service.js';
import { coverSolver } from '../../../server/cover-solver.js';
import { analyse } from '../findings/jobs.js';

const SHOP = `feet:
  stub: { range: 90 to 150, from-front: 110, from-back: 70, from-side: 60, apart: 700, spacing: 32, diameter: 8, depth: 11, base: 70, rating: 100, clip: { from-top: 40, spacing: 20, diameter: 3, depth: 10 } }
  peg: { range: 90 to 150, from-front: 110, from-back: 70, from-side: 60, apart: 300, diameter: 10, depth: 12 }
`;
const job = (lines: string) =>
  analyse(`shop: s.shop.yaml\ncarcasses:\n  a:\n    ${lines.replaceAll('\n', '\n    ')}\n`, { 's.shop.yaml': SHOP });
const bored = (lines: string, wanted: string) =>
  job(lines)
    .carcasses[0]!.boring!.bores.filter(({ purpose }) => purpose === wanted)
    .map(({ panel, face, u, v, diameter, depth }) => [panel, face, u / 1000, v / 1000, diameter / 1000, depth / 1000]);

test('feet stand under the bottom, counted from the outside of the carcass', () => {
  // 600 wide with sides of 16: the bottom begins 16 from the outside, so that 60 from there is 44 on it; 560 deep.
  expect(bored('kind: base\nwidth: 600\nplinth: 100\nfeet: peg', 'foot')).toEqual(
    [44, 284, 524].flatMap((v) => [110, 490].map((u) => ['bottom', 'outside', u, v, 10, 12])),
  );
  // A bottom under the sides begins at the outside itself.
  const under = bored('kind: base\nwidth: 600\nbottom: under\nplinth: 100\nfeet: peg', 'foot');
  expect(under.map(([, , , v]) => v)).toEqual([60, 60, 300, 300, 540, 540]);
});

test('there are as many as the width asks for', () => {
  const count = (width: number) =>
    job(`kind: base\nwidth: ${width}\nplinth: 100\nfeet: peg`).carcasses[0]!.boring!.feet.length;
  // Between the outer feet lie the width less twice 60, in parts of 300 at most.
  expect([300, 420, 421, 720, 721, 1020, 1021].map(count)).toEqual([4, 4, 6, 6, 8, 8, 10]);
});

test('a foot with four screws has them in a square, and the clip stands before it on the plinth', () => {
  const lines = 'kind: base\nwidth: 600\nplinth: 100\nfeet: stub';
  expect(bored(lines, 'foot')).toHaveLength(16);
  expect(bored(lines, 'foot').slice(0, 2)).toEqual([
    ['bottom', 'outside', 94, 28, 8, 11],
    ['bottom', 'outside', 126, 28, 8, 11],
  ]);
  // The plinth is as long as the carcass is wide; its u runs down from its upper edge.
  expect(bored(lines, 'plinth-clip')).toEqual([50, 70, 530, 550].map((v) => ['plinth', 'inside', 40, v, 3, 10]));
});

test('without a plinth there are no feet', () => {
  expect(bored('kind: base\nwidth: 600\nfeet: stub', 'foot')).toEqual([]);
  expect(bored('kind: base\nwidth: 600\nplinth: 100', 'foot')).toEqual([]);
});

test('they are planned, replayed and bought by the height that they are set to', async () => {
  const made = job('kind: base\nwidth: 600\ncount: 2\nplinth: 110\nfeet: stub');
  expect(made.findings().map(({ finding }) => finding.rule)).not.toContain('plan-replay-differs');
  const bores = made.carcasses[0]!.operations!.operations.flatMap(({ ways }) =>
    ways.flatMap(({ strokes }) => strokes.flatMap(({ wanted }) => wanted.map(({ bore }) => bore.purpose))),
  );
  expect(bores).toContain('foot');
  const hardware = JSON.stringify(await papersOf(made, coverSolver)('hardware-list'));
  expect(hardware).toContain('to be set to 110 mm, with a clip for the plinth');
  expect(hardware.match(/"a 4"/g)).toHaveLength(2);
  expect(JSON.stringify(await papersOf(made, coverSolver)('assembly'))).toContain('Clip the plinth onto the feet');
});
