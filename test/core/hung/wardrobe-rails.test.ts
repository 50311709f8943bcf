import { expect, test } from 'vitest';
import { papersOf } from '../../../shared-core/service.js';
import { coverSolver } from '../../../server/cover-solver.js';
import { analyse } from '../findings/jobs.js';

const job = (lines: string, shop = 'neutral') =>
  analyse(
    `${shop === 'neutral' ? '' : 'shop: s.shop.yaml\n'}carcasses:\n  a:\n    ${lines.replaceAll('\n', '\n    ')}\n`,
    { 's.shop.yaml': shop },
  );
const madeOf = (lines: string, shop?: string) => job(lines, shop).carcasses[0]!;
const bored = (lines: string, shop?: string) =>
  madeOf(lines, shop)
    .boring!.bores.filter(({ purpose }) => purpose === 'rail-socket')
    .map(({ panel, face, u, v, diameter, depth }) => [panel, face, u / 1000, v / 1000, diameter / 1000, depth / 1000]);

test('sockets stand opposite each other at the height, in the middle of the clear depth', () => {
  // 560 deep, with the back 8 thick in a groove that begins where the panel says.
  const lines = 'kind: tall\nwidth: 800\nrows: none\nback: none\nwardrobe-rails: [1700]';
  expect(bored(lines)).toEqual(
    ['left', 'right'].flatMap((side) => [
      [side, 'inside', 280, 1684, 5, 11],
      [side, 'inside', 280, 1716, 5, 11],
    ]),
  );
  const withBack = madeOf(lines.replace('back: none', 'back: { how: grooved }'));
  const back = withBack.carcass!.panels.find(({ key }) => key === 'back')!;
  const [rail] = withBack.boring!.wardrobeRails;
  expect(rail!.y).toBe(Math.floor((back.pose.origin.y - (back.pose.t === '-y' ? back.thickness : 0)) / 2));
});

test('each bay has a rail of its own length, and sides and dividers are bored on the face that looks at it', () => {
  const lines = 'kind: tall\nwidth: 1000\nrows: none\ndividers: [400]\nwardrobe-rails: [1500]';
  const { boring, carcass } = madeOf(lines);
  const [left, right] = carcass!.bays;
  expect(boring!.wardrobeRails.map(({ key, length }) => [key, length])).toEqual([
    ['wardrobe-rail-1-bay-1', left!.to - left!.from - 4000],
    ['wardrobe-rail-1-bay-2', right!.to - right!.from - 4000],
  ]);
  const faces = boring!.wardrobeRails.flatMap(({ sockets }) => sockets.map(({ upright, face }) => [upright.key, face]));
  expect(faces).toEqual(
    [
      ['left', 'inside'],
      ['divider-1', 'outside'],
      ['divider-1', 'inside'],
      ['right', 'inside'],
    ].map(([key, face]) => [
      key,
      key === 'divider-1' && carcass!.panels.find((one) => one.key === key)!.pose.t === '-x'
        ? face === 'inside'
          ? 'outside'
          : 'inside'
        : face,
    ]),
  );
  expect(madeOf(lines.replace('[1500]', '[{ at: 1500, bay: 2 }]')).boring!.wardrobeRails).toHaveLength(1);
});

test('screws that come on holes of a row are bored once', () => {
  const lines = 'kind: tall\nwidth: 800\nrows: front\nwardrobe-rails: [{ at: 1624, from-front: 37 }]';
  const row = madeOf(lines).boring!.rows.find(({ panel }) => panel === 'left')!;
  const onRow = (row.offset + 48 * row.pitch + row.pitch / 2) / 1000;
  const depth = row.depth / 1000;
  const shop = `wardrobe-rails:\n  tube: { width: 25, height: 25, spacing: 32, diameter: 5, depth: ${depth} }\nhabits: { wardrobe-rail: tube }\n`;
  expect(bored(lines.replace('1624', String(onRow)), shop)).toEqual([]);
  expect(bored(lines.replace('1624', String(onRow + 8)), shop)).toHaveLength(4);
});

test('they are planned, replayed and bought by length', async () => {
  const made = job('kind: tall\nwidth: 800\ncount: 3\nwardrobe-rails: [1700]');
  expect(made.findings().map(({ finding }) => finding.rule)).not.toContain('plan-replay-differs');
  const bores = made.carcasses[0]!.operations!.operations.flatMap(({ ways }) =>
    ways.flatMap(({ strokes }) => strokes.flatMap(({ wanted }) => wanted.map(({ bore }) => bore.purpose))),
  );
  expect(bores).toContain('rail-socket');
  const hardware = JSON.stringify(await papersOf(made, coverSolver)('hardware-list'));
  // 800 less two sides of 16 and two plays of 2.
  expect(hardware).toContain('cut 764 mm long, with two sockets');
  expect(hardware).toContain('"a 3"');
  expect(JSON.stringify(await papersOf(made, coverSolver)('assembly'))).toContain('wardrobe rail');
});
