import fc from 'fast-check';
import { afterEach, expect, test } from 'vitest';
import { boreCarcass } from '../../shared-core/boring/bores.js';
import type { Bore } from '../../shared-core/boring/model.js';
import { buildCarcass } from '../../shared-core/carcass/build.js';
import { analyse } from '../core/findings/jobs.js';
import { jobWithDoorsArbitrary, type Job } from '../core/arbitraries.js';
import { axisOf, assemble, clear, standsClear } from './solids.js';

afterEach(clear);

function hung({ spec, shop }: Job) {
  const carcass = buildCarcass(spec, shop).carcass!;
  return { carcass, ...boreCarcass(spec, carcass, shop) };
}

// The modeller places every bore by its panel alone; nothing here asks the core where a hinge is.
test('on random carcasses the cup and the screws of its plate have one centre line, within a micrometre', () => {
  let [cups, shared] = [0, 0];
  fc.assert(
    fc.property(jobWithDoorsArbitrary, (job) => {
      const { carcass, bores, hung: doors } = hung(job);
      const panel = (key: string) => carcass.panels.find((one) => one.key === key)!;
      const axis = (bore: Bore) => axisOf(panel(bore.panel), bore);
      for (const { door, upright, face, hinge, reach, hinges } of doors)
        for (const one of hinges) {
          const cup = axis(
            bores.find(({ panel: key, group, purpose }) => key === door.key && group === one.id && purpose === 'cup')!,
          );
          const holes = one.screws.map(({ u, v }) => {
            const here = bores.filter((bore) => bore.panel === upright.key && bore.u === u && bore.v === v);
            const own = here.filter(({ group }) => group === one.id);
            // One hole for a screw: its own, or that of the row.
            const taken = here.filter((bore) => bore.purpose === 'row' && (bore.face === face || bore.through));
            expect(own.length > 0 || taken.length > 0).toBe(true);
            shared += own.length === 0 ? 1 : 0;
            // A hole that goes through is entered from the face that the plate is on.
            return axis({ ...(own[0] ?? taken[0]!), face });
          });
          const middle = holes.reduce((sum, { at }) => sum + at[2], 0) / holes.length;
          expect(Math.abs(cup.at[2] - middle)).toBeLessThanOrEqual(1);
          // Cup and screws stand square to each other: the cup looks back, the screws sideways.
          expect([cup.along, ...holes.map(({ along }) => along)]).toEqual([1, 0, 0]);
          // The cup is arm and plate away from the face that the plate is on.
          const foot = holes[0]!.at[0];
          expect(Math.abs(cup.at[0] - foot)).toBe(reach!.arm + reach!.plate);
          expect(holes[0]!.at[1]).toBe(hinge.setback + (job.wish.doors!.how === 'inset' ? door.thickness : 0));
          cups += 1;
        }
    }),
    { numRuns: 400 },
  );
  expect(cups).toBeGreaterThan(100);
  expect(shared).toBeGreaterThan(50);
});

test('a hinge that is said to have room stands clear of every panel but its own two', () => {
  let [clearOnes, met] = [0, 0];
  fc.assert(
    fc.property(jobWithDoorsArbitrary, (job) => {
      const { carcass, hung: doors } = hung(job);
      const assembly = assemble(carcass, [], job.shop);
      for (const { door, upright, hinges } of doors)
        for (const { body, meets } of hinges) {
          const others = assembly.panels.filter(
            ({ name }) => name !== door.key && name !== upright.key && name !== 'back',
          );
          const isClear = standsClear(
            { min: [body.x.from, body.y.from, body.z.from], max: [body.x.to, body.y.to, body.z.to] },
            others,
          );
          if (meets === null) expect(isClear).toBe(true);
          if (meets !== null && carcass.panels.some(({ key }) => key === meets)) expect(isClear).toBe(false);
          clearOnes += meets === null ? 1 : 0;
          met += meets === null ? 0 : 1;
        }
      clear();
    }),
    { numRuns: 160 },
  );
  expect(clearOnes).toBeGreaterThan(50);
  expect(met).toBeGreaterThan(0);
});

const size = (min: number, max: number) => fc.integer({ min: min * 10, max: max * 10 }).map((tenths) => tenths / 10);
const text = fc
  .record({
    width: size(400, 1200),
    pitches: fc.integer({ min: 10, max: 60 }),
    board: fc.constantFrom('board-16', 'board-18', 'board-19'),
    how: fc.constantFrom('overlay', 'inset'),
    dividers: fc.constantFrom(0, 1),
    words: fc.tuple(fc.constantFrom('left', 'right', 'pair', 'none'), fc.constantFrom('left', 'right', 'none')),
    rows: fc.constantFrom('none', 'front', 'both'),
    shelves: fc.constantFrom(0, 1, 2),
    gap: size(2, 4),
  })
  .map(
    ({ width, pitches, board, how, dividers, words, rows, shelves, gap }) =>
      `carcasses:\n  box:\n    kind: wall\n    width: ${width}\n    height: ${pitches * 32 + Number(board.slice(-2))}\n    board: ${board}\n    rows: ${rows}\n    dividers: ${dividers}\n    fixed-shelves: ${shelves}\n    doors: { bays: [${words.slice(0, dividers + 1).join(', ')}], how: ${how}, gap: ${gap} }\n`,
  );

test('every cup and plate bore of random jobs comes out of the set-ups as the bore map has it, or is told', () => {
  let bored = 0;
  fc.assert(
    fc.property(text, (job) => {
      const { boring, operations, findings } = analyse(job).carcasses[0]!;
      expect(findings.filter(({ rule }) => rule === 'plan-replay-differs')).toEqual([]);
      const made = new Set(
        operations!.operations.flatMap(({ ways }) =>
          ways[0]!.strokes.flatMap(({ wanted }) => wanted.map(({ bore }) => bore.id)),
        ),
      );
      const told = new Set(operations!.unreachable.flatMap(({ bores }) => bores.map(({ id }) => id)));
      for (const { id, purpose } of boring!.bores) {
        if (purpose !== 'cup' && purpose !== 'plate') continue;
        expect([id, made.has(id) || told.has(id)]).toEqual([id, true]);
        bored += made.has(id) ? 1 : 0;
      }
    }),
    { numRuns: 60 },
  );
  expect(bored).toBeGreaterThan(100);
});
