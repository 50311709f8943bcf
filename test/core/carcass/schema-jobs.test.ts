import fc from 'fast-check';
import { expect, test } from 'vitest';
import { shared, type Interval } from '../../../shared-core/carcass/interval.js';
import type { Carcass, Panel, Point3 } from '../../../shared-core/carcass/model.js';
import { extentsOf, toPanel } from '../../../shared-core/carcass/pose.js';
import type { Located } from '../../../shared-core/document/place.js';
import type { CarcassAnalysis } from '../../../shared-core/engine.js';
import { repairEdits } from '../../../shared-core/engine/repairs.js';
import { sizeCause } from '../../../shared-core/findings/size-cause.js';
import type { CarcassContext } from '../../../shared-core/findings/rule.js';
import { writeLength } from '../../../shared-core/length/write.js';
import { neutralShop } from '../../../shared-core/shop/neutral.js';
import { applied } from '../findings/after-repair.js';
import { analyse } from '../findings/jobs.js';
import { jobText } from '../job/schema-texts.js';

// Jobs written from the schema alone, so that a key which makes a panel longer, wider or put elsewhere is tried at once.

/** The boxes of the job that stand as they are written. */
function standing(text: string): readonly { readonly carcass: Carcass; readonly size: Point3 }[] {
  return analyse(text).carcasses.flatMap(({ carcass, spec, findings }) =>
    carcass === null || spec === null || findings.some(({ rule }) => rule === 'size-impossible')
      ? []
      : [{ carcass, size: { x: spec.width.value, y: spec.depth.value, z: spec.height.value } }],
  );
}

const AXES = ['x', 'y', 'z'] as const;

/** The wood that two panels have in common as uncut blocks; null where they have none. */
function common(a: Panel, b: Panel): Readonly<Record<(typeof AXES)[number], Interval>> | null {
  const [one, two] = [extentsOf(a), extentsOf(b)];
  const [x, y, z] = AXES.map((axis) => shared(one[axis], two[axis]));
  return x && y && z ? { x, y, z } : null;
}

/** Whether a groove or rebate of the panel takes this block away. */
function isCutAway(panel: Panel, block: NonNullable<ReturnType<typeof common>>): boolean {
  const [p, q] = (['from', 'to'] as const).map((side) =>
    toPanel(panel.pose, { x: block.x[side], y: block.y[side], z: block.z[side] }),
  );
  const run = (axis: 'u' | 'v' | 't'): Interval => ({
    from: Math.min(p![axis], q![axis]),
    to: Math.max(p![axis], q![axis]),
  });
  return panel.grooves.some(
    ({ from, to, depth, along }) =>
      run('u').from >= from &&
      run('u').to <= to &&
      run('t').from >= panel.thickness - depth &&
      (along === undefined || (run('v').from >= along.from && run('v').to <= along.to)),
  );
}

test('no two panels of a random job share wood, but for a back in its groove or rebate', () => {
  let [boxes, held] = [0, 0];
  fc.assert(
    fc.property(jobText(neutralShop, 2), (text) => {
      for (const { carcass } of standing(text)) {
        boxes += 1;
        for (const [index, a] of carcass.panels.entries())
          for (const b of carcass.panels.slice(index + 1)) {
            const block = common(a, b);
            if (block === null) continue;
            held += 1;
            expect(isCutAway(a, block) || isCutAway(b, block), `${a.key} and ${b.key}\n${text}`).toBe(true);
          }
      }
    }),
    { numRuns: 300 },
  );
  expect(boxes).toBeGreaterThan(100);
  expect(held).toBeGreaterThan(20);
});

test('the panels of a random job fill the size that is written, to every side', () => {
  let boxes = 0;
  fc.assert(
    fc.property(jobText(neutralShop, 2), (text) => {
      for (const { carcass, size } of standing(text)) {
        boxes += 1;
        for (const axis of AXES) {
          // A plinth stands under the box.
          const box = carcass.panels.filter(({ role }) => role !== 'plinth');
          const runs = box.map((panel) => extentsOf(panel)[axis]);
          const hull = { from: Math.min(...runs.map(({ from }) => from)), to: Math.max(...runs.map(({ to }) => to)) };
          expect(hull, `${axis}\n${text}`).toEqual({ from: 0, to: size[axis] });
        }
      }
    }),
    { numRuns: 300 },
  );
  expect(boxes).toBeGreaterThan(100);
});

/** No count of the schema comes up to the shortest length that is tried. */
const isLength = (value: unknown): value is number => typeof value === 'number' && value >= 500;

/** Every length that is written in the job, once. */
function writtenLengths(thing: unknown, found = new Map<string, Located<number>>()): readonly Located<number>[] {
  if (typeof thing === 'object' && thing !== null) {
    if ('written' in thing && 'path' in thing && 'value' in thing && thing.written === true && isLength(thing.value))
      found.set(JSON.stringify(thing.path), thing as Located<number>);
    for (const one of thing instanceof Map ? thing.values() : Object.values(thing)) writtenLengths(one, found);
  }
  return [...found.values()];
}

const sidesOf = ({ carcass }: CarcassAnalysis): ReadonlyMap<string, number> =>
  new Map(
    carcass!.panels.flatMap(({ key, length, width }) => [
      [`${key} length`, length],
      [`${key} width`, width],
    ]),
  );

test('a panel’s size is blamed on a value that makes it larger, and on its own one where it has one', () => {
  let [blamed, own] = [0, 0];
  fc.assert(
    fc.property(jobText(neutralShop, 1), (text) => {
      const job = analyse(text);
      const box = job.carcasses[0]!;
      if (box.carcass === null || box.findings.some(({ rule }) => rule === 'size-impossible')) return;
      const was = sidesOf(box);
      /** Of each size, the values that make it larger when they are. */
      const growing = new Map<string, Located<number>[]>();
      for (const value of writtenLengths(box.spec)) {
        const change = {
          kind: 'set',
          part: 'self',
          path: value.path,
          text: writeLength(value.value + 1000, 'mm'),
        } as const;
        const edits = repairEdits(job, { carcass: 0, repair: { title: '', changes: [change], preferred: false } });
        const grown = edits === null ? null : analyse(applied(text, edits.job)).carcasses[0]!;
        if (grown?.carcass == null || grown.findings.some(({ rule }) => rule === 'size-impossible')) continue;
        for (const [side, size] of sidesOf(grown))
          if (size > (was.get(side) ?? Infinity)) growing.set(side, [...(growing.get(side) ?? []), value]);
      }
      const context = { spec: box.spec!, carcass: box.carcass } as CarcassContext;
      for (const panel of box.carcass.panels)
        for (const side of ['length', 'width'] as const) {
          const values = growing.get(`${panel.key} ${side}`) ?? [];
          if (values.length === 0) continue;
          blamed += 1;
          const mine = values.filter(({ path }) => path[0] === 'panels');
          own += mine.length;
          const { place } = sizeCause(context, panel, side);
          expect(
            (mine.length > 0 ? mine : values).map((value) => value.place),
            `${panel.key} ${side}\n${text}`,
          ).toContainEqual(place);
        }
    }),
    { numRuns: 150 },
  );
  expect(blamed).toBeGreaterThan(100);
});
