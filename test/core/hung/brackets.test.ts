import { expect, test } from 'vitest';
import { analyse } from '../findings/jobs.js';
import { inWords } from '../../in-words.js';
import { papersOf } from '../../../shared-core/service.js';
import { coverSolver } from '../../../server/cover-solver.js';
import type { Paper } from '../../../shared-core/papers/paper.js';

const SHOP = `brackets:
  hook: { holes: [{ from-top: 40, from-back: 60 }, { from-top: 90, from-back: 44 }], diameter: 10, depth: 12, rating: 80, price: 2 }
  stronger: { holes: [{ from-top: 60, from-back: 60 }], diameter: 10, depth: 12, rating: 150 }
  row: { holes: [{ from-top: 72, from-back: 101 }], diameter: 5, depth: 12 }
`;
const job = (lines: string, shop = SHOP) =>
  analyse(`shop: s.shop.yaml\ncarcasses:\n  a:\n    ${lines.replaceAll('\n', '\n    ')}\n`, { 's.shop.yaml': shop });
const bored = (lines: string, shop = SHOP) =>
  job(lines, shop)
    .carcasses[0]!.boring!.bores.filter(({ purpose }) => purpose === 'bracket')
    .map(({ panel, face, u, v, diameter, depth }) => [panel, face, u / 1000, v / 1000, diameter / 1000, depth / 1000]);

test('both sides are bored from their upper end and their back edge', () => {
  // A wall carcass is 720 high and 330 deep.
  expect(bored('kind: wall\nwidth: 600\nbrackets: hook')).toEqual(
    ['left', 'right'].flatMap((side) => [
      [side, 'inside', 330 - 44, 720 - 90, 10, 12],
      [side, 'inside', 330 - 60, 720 - 40, 10, 12],
    ]),
  );
  // Under a top that lies over them the sides end lower.
  expect(bored('kind: wall\nwidth: 600\ntop: over\nheight: 720\nbrackets: hook').map(([, , , v]) => v)).toEqual([
    614, 664, 614, 664,
  ]);
});

test('only what hangs is bored, by the habit of the shop too', () => {
  const usual = `${SHOP}habits: { bracket: hook }\n`;
  expect(bored('kind: wall\nwidth: 600', usual)).toHaveLength(4);
  expect(bored('kind: wall\nwidth: 600\nbrackets: none', usual)).toEqual([]);
  expect(bored('kind: base\nwidth: 600', usual)).toEqual([]);
  expect(bored('kind: open\nwidth: 600\nplace: { above-floor: 1200 }', usual)).toHaveLength(4);
});

test('a hole of a row that takes the screw is bored once', () => {
  const lines = 'kind: wall\nwidth: 600\nbrackets: row';
  const rear = job(lines).carcasses[0]!.boring!.rows.find(({ id }) => id === 'left:row-rear')!;
  const shop = (fromBack: number) => SHOP.replace('from-back: 101', `from-back: ${fromBack}`);
  const onRow = shop(330 - rear.u / 1000);
  expect((720_000 - 72_000 - rear.offset) % rear.pitch).toBe(0);
  expect(bored(lines, onRow)).toEqual([]);
  expect(bored(lines, shop(330 - rear.u / 1000 + 12))).toHaveLength(2);
});

test('they are planned, replayed, listed to be bought and told of when the box is put together', async () => {
  const made = job('kind: wall\nwidth: 600\ncount: 2\nbrackets: hook');
  expect(made.findings().filter(({ finding }) => finding.rule === 'plan-replay-differs')).toEqual([]);
  const ids = new Set(
    made.carcasses[0]!.operations!.operations.flatMap(({ ways }) =>
      ways.flatMap(({ strokes }) => strokes.flatMap(({ wanted }) => wanted.map(({ bore }) => bore.id))),
    ),
  );
  for (const side of ['left', 'right']) expect(ids.has(`${side}:bracket:1`)).toBe(true);
  const printed = papersOf(made, coverSolver);
  const words = (paper: Paper | null): string => JSON.stringify(paper);
  expect(words(await printed('hardware-list'))).toContain('one in each side, a pair for 80 kg');
  expect(words(await printed('hardware-list'))).toContain('"a 4"');
  expect(words(await printed('assembly'))).toContain('Let someone competent judge the wall');
});

test('a carcass that is too heavy is offered the bracket that carries it', () => {
  const heavy = job('kind: wall\nwidth: 900\nback: none\nload: 45\nfixed-shelves: 1\nbrackets: hook');
  const [entry] = heavy.findings().filter(({ finding }) => finding.rule === 'hangs-too-heavy');
  expect(entry!.finding.repairs.map(({ title }) => inWords(title))).toEqual(['Hang it on ‘stronger’']);
});
