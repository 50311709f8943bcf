import fc from 'fast-check';
import type { Box } from 'manifold-3d';
import { afterEach, expect, test } from 'vitest';
import { boreCarcass } from '../../shared-core/boring/bores.js';
import type { Bore } from '../../shared-core/boring/model.js';
import { buildCarcass } from '../../shared-core/carcass/build.js';
import type { Carcass } from '../../shared-core/carcass/model.js';
import { movesOf } from '../../shared-core/drawing/box-view/moves.js';
import type { HungDoor } from '../../shared-core/hung/model.js';
import { densityOf } from '../../shared-core/loads/boards.js';
import { balanceOf, tips } from '../../shared-core/loads/tipping.js';
import { checkCarcass } from '../../shared-core/findings/registry.js';
import { contextOf } from '../core/findings/contexts.js';
import { analyse } from '../core/findings/jobs.js';
import { jobWithDrawersArbitrary, type Job } from '../core/arbitraries.js';
import { assemble, axisOf, clear, interferences, pegInto, standsClearOf, travelHits, type Assembly } from './solids.js';

afterEach(clear);

interface Made extends Job {
  readonly carcass: Carcass;
  readonly bores: readonly Bore[];
  readonly hung: readonly HungDoor[];
  readonly assembly: Assembly;
}

function made(job: Job): Made {
  const { carcass, problems } = buildCarcass(job.spec, job.shop);
  expect(problems.map(({ message }) => message)).toEqual([]);
  const { bores, hung } = boreCarcass(job.spec, carcass!, job.shop);
  return { ...job, carcass: carcass!, bores, hung, assembly: assemble(carcass!, bores, job.shop) };
}

const boxOf = ({ assembly }: Made, key: string): Box => assembly.panels.find(({ name }) => name === key)!.box;

/** The fronts of each bay from the top down, by what the job asks for. */
function stacks({ wish, carcass }: Made): readonly (readonly string[])[] {
  const count = { drawer: 0, fixed: 0, door: 0 };
  return carcass.bays.map((_, bay) =>
    wish
      .fronts!.filter((one) => one.bay === undefined || one.bay === bay + 1)
      .map(({ front }) => {
        if (front === 'drawer') return `drawer-${++count.drawer}-front`;
        if (front === 'fixed') return `fixed-${++count.fixed}`;
        return front === 'open' ? '' : `door-${++count.door}`;
      }),
  );
}

/** Throws where solids interfere, or a gap between fronts is not the one that is asked for. */
function expectFrontsAsAsked(one: Made): void {
  const { wish } = one;
  const { how, gap, reveal, topReveal, bottomReveal, buffer } = wish.doors! as Required<NonNullable<typeof wish.doors>>;
  expect(interferences(one.assembly)).toEqual([]);
  for (const [bay, keys] of stacks(one).entries()) {
    const shown = keys.map((key) => (key === '' ? null : boxOf(one, key)));
    const floor = boxOf(one, 'bottom').max[2];
    const ceiling = boxOf(one, wish.top === 'rails' ? 'rail-front' : 'top').min[2];
    const [top, foot] = how === 'inset' ? [ceiling - gap, floor + gap] : [wish.height! - topReveal, bottomReveal];
    if (shown[0] !== null && shown[0] !== undefined) expect(shown[0].max[2]).toBe(top);
    const last = shown.at(-1);
    if (last !== null && last !== undefined) expect(last.min[2]).toBe(foot);
    shown.forEach((box, i) => {
      if (box === null) return;
      const above = shown[i - 1];
      if (above !== null && above !== undefined) expect(above.min[2] - box.max[2]).toBe(gap);
      expect(box.max[1]).toBe(how === 'inset' ? box.max[1] - box.min[1] : 0 - buffer);
      const { left, right } = one.carcass.bays[bay]!;
      if (how === 'inset') expect(box.min[0] - boxOf(one, left).max[0]).toBe(gap);
      else if (left === 'left') expect(box.min[0]).toBe(reveal);
      if (how === 'inset') expect(boxOf(one, right).min[0] - box.max[0]).toBe(gap);
      else if (right === 'right') expect(wish.width! - box.max[0]).toBe(reveal);
    });
    // Those that are given no height are equal, but for the tenths of a millimetre that cannot be shared.
    const asked = wish.fronts!.filter(({ bay: own }) => own === undefined || own === bay + 1);
    const heights = shown.flatMap((box, i) =>
      box === null || asked[i]!.height !== undefined ? [] : [box.max[2] - box.min[2]],
    );
    if (asked.every(({ front }) => front !== 'open'))
      expect(Math.max(0, ...heights) - Math.min(Infinity, ...heights)).toBeLessThan(100 * Math.max(1, heights.length));
    asked.forEach(({ height }, i) => {
      const box = shown[i];
      if (height !== undefined && box) expect(box.max[2] - box.min[2]).toBe(height);
    });
  }
}

// In parts, so that a slow machine does not meet the time limit of one.
test.each([1, 2])('on random carcasses fronts keep the gaps asked for, and boxes close (%i of 2)', () => {
  let drawers = 0;
  fc.assert(
    fc.property(jobWithDrawersArbitrary, (job) => {
      const one = made(job);
      expectFrontsAsAsked(one);
      drawers += one.carcass.drawers.length;
      clear();
    }),
    { numRuns: 40 },
  );
  expect(drawers).toBeGreaterThan(40);
});

// The very moves that the box view is given.
test('a drawer slides its whole travel, and never touches carcass, fronts or other drawers', () => {
  let drawers = 0;
  fc.assert(
    fc.property(jobWithDrawersArbitrary, (job) => {
      const { assembly, carcass, hung } = made(job);
      const pulls = movesOf(carcass, hung).filter((move) => move.kind === 'pull');
      expect(pulls).toHaveLength(carcass.drawers.length);
      pulls.forEach(({ parts, travel }, i) => {
        const moved = assembly.panels.filter(({ name }) => parts.includes(name));
        const rest = assembly.panels.filter((part) => !moved.includes(part));
        expect(moved.map(({ name }) => name).every((name) => name.startsWith(`drawer-${i + 1}-`))).toBe(true);
        expect(moved).toHaveLength(6);
        expect(travel).toBe(carcass.drawers[i]!.length.length);
        expect(travelHits(moved, rest, [0, -travel, 0], 12)).toEqual([]);
        drawers += 1;
      });
      clear();
    }),
    { numRuns: 40 },
  );
  expect(drawers).toBeGreaterThan(20);
});

// Weights and places from the modeller's own boxes; only densities and the line of tipping are the core's data.
test('with its drawers open a carcass has its moments where the solids have them', () => {
  let tipped = 0;
  fc.assert(
    fc.property(jobWithDrawersArbitrary, (job) => {
      const { assembly, carcass, hung } = made(job);
      const balance = balanceOf(carcass);
      if (balance?.doors === 0) {
        const pulls = movesOf(carcass, hung).filter((move) => move.kind === 'pull');
        const plinth = assembly.blanks.find(({ name }) => name === 'plinth');
        const line = plinth?.box.min[1] ?? 0;
        const moment = assembly.blanks.reduce((sum, { name, solid, box }) => {
          const density = densityOf(carcass.panels.find(({ key }) => key === name)!.board);
          const out = pulls.find(({ parts }) => parts.includes(name))?.travel ?? 0;
          return sum + solid.volume() * 1e-18 * density * ((box.min[1] + box.max[1]) / 2 - out - line);
        }, 0);
        const own = balance.weight * balance.behind - balance.open * balance.before;
        // Arms are told in whole micrometres.
        expect(Math.abs(own - moment)).toBeLessThan(balance.weight + balance.open);
        expect(tips(balance)).toBe(own < 0);
        tipped += own < 0 ? 1 : 0;
      }
      clear();
    }),
    { numRuns: 60 },
  );
  expect(tipped).toBeGreaterThan(2);
});

test('the check of travel fails where a drawer is wider or higher than its place', () => {
  const [job] = fc.sample(
    jobWithDrawersArbitrary.filter(({ wish }) => wish.fronts!.some(({ front }) => front === 'drawer')),
    { numRuns: 1, seed: 11 },
  );
  const { carcass, shop } = made(job!);
  const wide = carcass.panels.map((panel) =>
    panel.key === 'drawer-1-right'
      ? { ...panel, pose: { ...panel.pose, origin: { ...panel.pose.origin, x: panel.pose.origin.x + 40_000 } } }
      : panel,
  );
  const { panels } = assemble({ ...carcass, panels: wide }, [], shop);
  const moved = panels.filter(({ name }) => name.startsWith('drawer-1-'));
  const rest = panels.filter((part) => !moved.includes(part));
  expect(travelHits(moved, rest, [0, -300_000, 0], 12)).not.toEqual([]);
});

// The modeller places every bore by its panel alone; nothing here asks the core where a slide is.
test('the screws of a slide stand at one height in both uprights and on both sides of the drawer, and those of fronts on one axis', () => {
  let [slides, shared, fronts] = [0, 0, 0];
  fc.assert(
    fc.property(jobWithDrawersArbitrary, (job) => {
      const { carcass, bores, shop } = made(job);
      const panel = (key: string) => carcass.panels.find((one) => one.key === key)!;
      const axis = (bore: Bore) => axisOf(panel(bore.panel), bore);
      const slide = shop.slides.values().next().value!;
      for (const { key, left, right, length } of carcass.drawers) {
        for (const upright of [left, right]) {
          const behind = job.wish.doors!.how === 'inset' ? panel(`${key}-front`).thickness : 0;
          const floor = Math.min(...[panel(`${key}-left`)].map((one) => one.pose.origin.z - one.width));
          const low = job.wish.drawers!.bottom === 'applied' ? panel(`${key}-bottom`).thickness : 0;
          const z = floor - low + slide.heightOffset;
          const holes = bores.filter(
            ({ panel: on, purpose, face, through }) =>
              on === upright &&
              (purpose === 'slide' || purpose === 'row') &&
              (through || face === (upright === right && upright.startsWith('divider') ? 'outside' : 'inside')),
          );
          for (const at of length.holes) {
            const here = holes.filter((bore) => {
              const { at: mouth } = axis(bore);
              return mouth[2] === z && mouth[1] === at + behind;
            });
            expect(here.length).toBeGreaterThan(0);
            shared += here.some(({ purpose }) => purpose === 'row') ? 1 : 0;
            slides += 1;
          }
          for (const part of [`${key}-left`, `${key}-right`])
            for (const bore of bores.filter((one) => one.panel === part && one.purpose === 'slide-in-box'))
              expect(axis(bore).at[2]).toBe(floor - low + slide.boxOffset);
        }
        const through = bores.filter((one) => one.panel === `${key}-box-front` && one.purpose === 'front-clearance');
        const into = bores.filter((one) => one.panel === `${key}-front` && one.purpose === 'front-pilot');
        expect(through.length).toBe(into.length);
        expect(into.length).toBeGreaterThan(0);
        through.forEach((bore, i) => {
          const [a, b] = [axis(bore), axis(into[i]!)];
          expect([a.at[0], a.at[2], a.along]).toEqual([b.at[0], b.at[2], 1]);
          fronts += 1;
        });
      }
      clear();
    }),
    { numRuns: 60 },
  );
  expect(slides).toBeGreaterThan(80);
  expect(shared).toBeGreaterThan(5);
  expect(fronts).toBeGreaterThan(40);
});

// The screws are set out from the holes in the front alone; what they meet is left to the solids.
test('the screws of pulls go through the front, and the box where it is bored, and their heads meet nothing, or it is told', () => {
  const screws = { fronts: 0, boxes: 0, told: 0 };
  fc.assert(
    fc.property(jobWithDrawersArbitrary, (job) => {
      const { carcass, bores, assembly, shop } = made(job);
      const pull = shop.pulls.get('pull')!;
      const told = new Set(
        checkCarcass(contextOf(job)!)
          .quick.filter(({ rule }) => rule === 'pull-screw-meets')
          .map(({ panel }) => panel),
      );
      const part = (key: string) => assembly.panels.find(({ name }) => name === key);
      const isOfPull = (bore: Bore): boolean => bore.purpose === 'pull' && bore.through;
      for (const bore of bores.filter((one) => isOfPull(one) && !one.panel.endsWith('box-front'))) {
        const front = carcass.panels.find(({ key }) => key === bore.panel)!;
        const [x, , z] = axisOf(front, bore).at;
        const box = carcass.panels.find(({ key }) => key === bore.panel.replace(/front$/, 'box-front'));
        const goesOn = bores.some((one) => {
          if (!isOfPull(one) || one.panel !== box?.key) return false;
          const { at } = axisOf(box, one);
          return at[0] === x && at[2] === z;
        });
        const outside = part(front.key)!.box.min[1];
        const inside = part(goesOn ? box!.key : front.key)!.box.max[1];
        const screw = pegInto([x, inside, z], '-y', bore.diameter, inside - outside);
        const head = pegInto([x, inside + pull.headHeight, z], '-y', pull.head, pull.headHeight);
        const isClear = [screw, head].every((peg) => standsClearOf(peg, assembly.panels));
        expect([bore.id, isClear || told.has(front.key)]).toEqual([bore.id, true]);
        screws.fronts += Number(isClear);
        screws.boxes += Number(isClear && goesOn);
        screws.told += Number(!isClear);
      }
      clear();
    }),
    { numRuns: 60 },
  );
  expect(screws.fronts).toBeGreaterThan(60);
  expect(screws.boxes).toBeGreaterThan(15);
  expect(screws.told).toBeGreaterThan(5);
});

const text = fc
  .record({
    width: fc.integer({ min: 300, max: 1100 }),
    board: fc.constantFrom('board-16', 'board-18', 'board-19'),
    how: fc.constantFrom('overlay', 'inset'),
    rows: fc.constantFrom('none', 'front', 'both'),
    bottom: fc.constantFrom('grooved', 'applied'),
    fronts: fc.constantFrom(
      '[drawer, drawer, drawer]',
      '[{ front: drawer, height: 140 }, drawer, drawer]',
      '[drawer, pair]',
      '[{ front: fixed, height: 100 }, drawer, left]',
    ),
  })
  .map(
    ({ width, board, how, rows, bottom, fronts }) =>
      `carcasses:\n  box:\n    kind: base\n    width: ${width}\n    board: ${board}\n    rows: ${rows}\n    doors: { how: ${how} }\n    fronts: ${fronts}\n    drawers: { bottom: ${bottom} }\n`,
  );

test('every bore of random drawers comes out of the set-ups as the bore map has it, or is told', () => {
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
      for (const { id, panel, purpose } of boring!.bores) {
        if (!panel.startsWith('drawer-') && purpose !== 'slide') continue;
        expect([id, made.has(id) || told.has(id)]).toEqual([id, true]);
        bored += made.has(id) ? 1 : 0;
      }
    }),
    { numRuns: 30 },
  );
  expect(bored).toBeGreaterThan(500);
});
