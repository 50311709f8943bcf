import fc from 'fast-check';
import { expect, test } from 'vitest';
import { boreCarcass } from '../../../shared-core/boring/bores.js';
import { boreCollisions, grooveCollisions } from '../../../shared-core/boring/collisions.js';
import { matings } from '../../../shared-core/boring/matings.js';
import { buildCarcass } from '../../../shared-core/carcass/build.js';
import { overlaps, within } from '../../../shared-core/carcass/interval.js';
import { extentsOf } from '../../../shared-core/carcass/pose.js';
import { mm, shopOf, specOf, type Standing } from '../specs.js';
import { inWords } from '../../in-words.js';

const length = (low: number, high: number) =>
  fc.oneof(fc.integer({ min: mm(low), max: mm(high) }), fc.constantFrom(mm(low), mm(high)));
const boards = fc.constantFrom('board-16', 'board-19', 'back-3', 'thick', 'unknown');
const standing: fc.Arbitrary<Standing> = fc
  .record({
    at: length(1, 900),
    bay: fc.option(fc.integer({ min: 1, max: 20 })),
    setback: length(0, 500),
    board: boards,
  })
  .map(({ bay, ...rest }) => (bay === null ? rest : { ...rest, bay }));
const list = fc.array(standing, { maxLength: 6 });
const joint = fc.constantFrom('dowel-8x30', 'dowel-10x40', 'screw-7x50', 'cam-15', 'unknown');
const rows = fc.constantFrom('none', 'front', 'both');
const places = fc.option(fc.array(length(1, 3000), { maxLength: 5 }));

/** Everything that the language lets through, sensible or not. */
const wish = fc.record({
  width: length(50, 5000),
  height: length(50, 5000),
  depth: length(50, 3000),
  board: fc.constantFrom('board-16', 'board-19', 'thick'),
  joint,
  top: fc.constantFrom('between', 'over', 'rails'),
  bottom: fc.constantFrom('between', 'under'),
  railWidth: length(40, 400),
  plinth: length(0, 400),
  back: fc.constantFrom('grooved', 'rebated', 'applied', 'none'),
  backBoard: boards,
  groove: length(1, 30),
  inset: length(0, 100),
  rows,
  rowOffset: length(1, 500),
  rowSetback: length(5, 300),
  rearRow: fc.option(length(20, 3000)),
  dowels: places,
  dividers: list,
  fixedShelves: list,
  looseShelves: list,
  panels: fc
    .dictionary(
      fc.constantFrom('left', 'bottom', 'top', 'rail-back', 'divider-1', 'shelf-1', 'shelf-1-bay-2', 'nothing'),
      fc.record({
        board: boards,
        joint,
        rows,
        faceDepth: length(1, 100),
        endDepth: length(1, 200),
        dowels: fc.array(length(1, 3000), { maxLength: 4 }),
      }),
    )
    .map((all) => ({ ...all })),
});

test('whatever the job asks for, nothing throws, and what is built shares no wood and stays inside', () => {
  const shop = shopOf();
  const boardsWithThick = new Map(shop.boards).set('thick', {
    ...shop.boards.get('board-16')!,
    name: 'thick',
    thickness: mm(100),
  });
  const odd = { ...shop, boards: boardsWithThick };
  let [built, refused] = [0, 0];
  fc.assert(
    fc.property(wish, (asked) => {
      const spec = specOf(odd, asked);
      const { carcass, problems } = buildCarcass(spec, odd);
      for (const { message } of problems) expect(inWords(message)).toMatch(/\d.*\.$/);
      if (carcass === null) {
        refused++;
        expect(problems.length).toBeGreaterThan(0);
        return;
      }
      built++;
      const box = {
        x: { from: 0, to: asked.width },
        y: { from: 0, to: asked.depth },
        z: { from: -asked.plinth, to: asked.height },
      };
      const solids = carcass.panels.map((panel) => ({ key: panel.key, role: panel.role, ...extentsOf(panel) }));
      for (const [index, a] of solids.entries()) {
        expect([a.key, within(a.x, box.x), within(a.y, box.y), within(a.z, box.z)]).toEqual([a.key, true, true, true]);
        for (const b of solids.slice(index + 1)) {
          // The back stands in its grooves.
          const grooved = a.role === 'back' || b.role === 'back';
          const meet = !grooved && overlaps(a.x, b.x) && overlaps(a.y, b.y) && overlaps(a.z, b.z);
          expect([a.key, b.key, meet]).toEqual([a.key, b.key, false]);
        }
      }
      const boreMap = boreCarcass(spec, carcass, odd);
      for (const { u, v, depth, diameter } of boreMap.bores)
        expect([u, v, depth, diameter].every(Number.isSafeInteger)).toBe(true);
      const ids = boreMap.bores.map(({ id }) => id);
      expect(new Set(ids).size).toBe(ids.length);
      matings(carcass, boreMap);
      boreCollisions(carcass, boreMap, odd.habits.leastWall);
      grooveCollisions(carcass, boreMap, odd.habits.leastWall);
    }),
    { numRuns: 500 },
  );
  // Both ends of the range are really met.
  expect(Math.min(built, refused)).toBeGreaterThan(20);
});
