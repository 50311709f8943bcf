import fc from 'fast-check';
import { expect, test } from 'vitest';
import { extentsOf } from '../../../shared-core/carcass/pose.js';
import { analyse } from '../findings/jobs.js';

const drawn = fc.record({
  width: fc.integer({ min: 450, max: 900 }),
  board: fc.constantFrom('board-16', 'board-18', 'board-19'),
  how: fc.constantFrom('overlay', 'inset'),
  height: fc.integer({ min: 380, max: 700 }),
  under: fc.integer({ min: 200, max: 560 }),
  bays: fc.integer({ min: 1, max: 2 }),
});

test('an appliance stands on a shelf flush with the edge of its place, joined and bored as any other, and every bore is replayed', () => {
  let shelves = 0;
  fc.assert(
    fc.property(drawn, ({ width, board, how, height, under, bays }) => {
      const fronts = `[left, { front: appliance, height: ${height} }, { front: drawer, height: ${under} }]`;
      const [one] = analyse(
        `carcasses:\n  a: { kind: tall, width: ${width * bays}, board: ${board}, back: none, dividers: ${bays - 1}, doors: { how: ${how} }, fronts: ${fronts} }\n`,
      ).carcasses;
      const { carcass, boring, findings, operations } = one!;
      expect(findings.filter(({ rule }) => rule === 'size-impossible' || rule === 'plan-replay-differs')).toEqual([]);
      expect(carcass!.appliances).toHaveLength(bays);
      carcass!.appliances.forEach(({ x, z }, i) => {
        expect(z.to - z.from).toBe(height * 1000);
        const panel = carcass!.panels.filter(({ role }) => role === 'fixed-shelf')[i]!;
        const run = extentsOf(panel);
        expect([run.z.to, run.x.from, run.x.to]).toEqual([z.from, x.from, x.to]);
        // The drawer under it comes out under it.
        const drawer = extentsOf(carcass!.panels.find(({ key }) => key === `drawer-${i + 1}-left`)!);
        expect(drawer.z.to).toBeLessThan(run.z.from);
        const joints = carcass!.joints.filter(({ endPanel }) => endPanel === panel.key);
        expect(joints).toHaveLength(2);
        const bores = boring!.bores.filter(({ group }) => joints.some(({ id }) => id === group));
        const made = new Set(
          operations!.operations.flatMap(({ ways }) =>
            ways[0]!.strokes.flatMap(({ wanted }) => wanted.map(({ bore }) => bore.id)),
          ),
        );
        const told = new Set(operations!.unreachable.flatMap((group) => group.bores.map(({ id }) => id)));
        expect(bores.length).toBeGreaterThan(3);
        expect(bores.filter(({ id }) => !made.has(id) && !told.has(id))).toEqual([]);
        shelves += 1;
      });
    }),
    { numRuns: 25 },
  );
  expect(shelves).toBeGreaterThan(25);
});

test('an appliance at an end of the stack has the whole height that is asked for between the panels there', () => {
  const ends = fc.record({
    kind: fc.constantFrom('base', 'tall'),
    how: fc.constantFrom('overlay', 'inset'),
    top: fc.constantFrom('rails', 'between', 'over'),
    bottom: fc.constantFrom('between', 'under'),
    at: fc.constantFrom('top', 'bottom', 'both'),
    height: fc.integer({ min: 300, max: 600 }),
    thickRail: fc.boolean(),
  });
  fc.assert(
    fc.property(ends, ({ kind, how, top, bottom, at, height, thickRail }) => {
      const appliance = at === 'both' ? 'appliance' : `{ front: appliance, height: ${height} }`;
      const fronts = { top: `[${appliance}, left]`, bottom: `[left, ${appliance}]`, both: '[appliance]' }[at];
      const panels = thickRail && top === 'rails' ? ', panels: { rail-back: { board: board-19 } }' : '';
      const [one] = analyse(
        `carcasses:\n  a: { kind: ${kind}, width: 600, back: none, top: ${top}, bottom: ${bottom}, doors: { how: ${how} }, fronts: ${fronts}${panels} }\n`,
      ).carcasses;
      const { panels: all, appliances } = one!.carcass!;
      const [{ z }] = appliances as [(typeof appliances)[number]];
      const runs = all.filter(({ role }) => role !== 'door').map((panel) => extentsOf(panel).z);
      // Nothing reaches into it, and a panel bounds it at the end where it stands.
      expect(runs.filter((run) => run.to > z.from && run.from < z.to && run.to - run.from < 30_000)).toEqual([]);
      if (at !== 'top') expect(runs.map(({ to }) => to)).toContain(z.from);
      if (at !== 'bottom') expect(runs.map(({ from }) => from)).toContain(z.to);
      if (at !== 'both') expect(z.to - z.from).toBe(height * 1000);
      const door = all.find(({ role }) => role === 'door');
      if (at === 'bottom') expect(extentsOf(door!).z.from).toBe(z.to + 3000);
    }),
    { numRuns: 40 },
  );
});

test('no second shelf is put in where one of the job stands, nor under what stands on the bottom', () => {
  const shelvesOf = (lines: string): readonly string[] => {
    const [one] = analyse(`carcasses:\n  a: { kind: tall, width: 600, back: none, ${lines} }\n`).carcasses;
    // One that ran into another would be told, and left out.
    expect(one!.findings.filter(({ rule }) => rule === 'size-impossible')).toEqual([]);
    return one!
      .carcass!.panels.filter(({ role }) => role === 'fixed-shelf')
      .map(({ key, pose }) => `${key} ${pose.origin.z / 1000}`);
  };
  // The front under it is 560 and 3 high: 563 is its floor, and 555 the middle of a shelf under that.
  const fronts = 'fronts: [left, { front: appliance, height: 595 }, { front: drawer, height: 560 }]';
  expect(shelvesOf(fronts)).toEqual(['shelf-1 547']);
  expect(shelvesOf(`fixed-shelves: [552, 1560], ${fronts}`)).toEqual(['shelf-1 544', 'shelf-2 1552']);
  expect(shelvesOf(`fixed-shelves: [1560], ${fronts}`)).toEqual(['shelf-2 547', 'shelf-1 1552']);
  expect(shelvesOf('fronts: [left, { front: appliance, height: 595 }]')).toEqual([]);
});
