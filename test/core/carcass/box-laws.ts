import { expect } from 'vitest';
import { shared, type Interval } from '../../../shared-core/carcass/interval.js';
import type { Carcass, Panel } from '../../../shared-core/carcass/model.js';
import { extentsOf, toPanel } from '../../../shared-core/carcass/pose.js';
import { isInDrawer, isOfBox } from '../../../shared-core/carcass/roles.js';
import type { Located } from '../../../shared-core/document/place.js';
import type { CarcassAnalysis, JobAnalysis } from '../../../shared-core/engine.js';
import { repairEdits } from '../../../shared-core/engine/repairs.js';
import { sizeCause } from '../../../shared-core/findings/size-cause.js';
import type { CarcassContext } from '../../../shared-core/findings/rule.js';
import { writeLength } from '../../../shared-core/length/write.js';
import { applied } from '../findings/after-repair.js';
import { asMessage } from '../../in-words.js';

// What holds of every box, whatever the job that it is made from.

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

const isShelfInDrawer = (a: Panel, b: Panel): boolean => a.role === 'loose-shelf' && isInDrawer(b);

/** No two panels share wood, but for a back in its groove or rebate. Gives the number of those. */
export function expectNoSharedWood({ panels }: Carcass, text: string): number {
  let held = 0;
  for (const [index, a] of panels.entries())
    for (const b of panels.slice(index + 1)) {
      const block = common(a, b);
      // A loose shelf that was put where a drawer runs is told by a rule, as it can be taken out.
      if (block === null || isShelfInDrawer(a, b)) continue;
      // What stands turned is no block along the axes: the solid modeller looks at it.
      if (a.turn !== undefined || b.turn !== undefined) continue;
      held += 1;
      expect(isCutAway(a, block) || isCutAway(b, block), `${a.key} and ${b.key}\n${text}`).toBe(true);
    }
  return held;
}

/** The panels fill the size that is written, to every side. A plinth stands under it, doors before it. */
export function expectToFillSize({ carcass, spec }: CarcassAnalysis, text: string): void {
  // Across a corner the other wing comes forward of the front edges along the first wall.
  const reach = spec!.diagonal.left ?? spec!.diagonal.right ?? spec!.depth;
  const [depth, out] = [spec!.depth.value, reach.value - spec!.depth.value];
  const runsOf = { x: [0, spec!.width.value], y: [0 - out, depth], z: [0, spec!.height.value] } as const;
  for (const axis of AXES) {
    const runs = carcass!.panels.filter(isOfBox).map((panel) => extentsOf(panel)[axis]);
    const hull = { from: Math.min(...runs.map(({ from }) => from)), to: Math.max(...runs.map(({ to }) => to)) };
    expect(hull, `${axis}\n${text}`).toEqual({ from: runsOf[axis][0] + 0, to: runsOf[axis][1] });
  }
}

/** Whether it stands as it is written, so that something can be said of its panels. */
export function stands({ carcass, spec, known }: CarcassAnalysis): boolean {
  return carcass !== null && spec !== null && !known.some(({ rule }) => rule === 'size-impossible');
}

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

const PITCH = 32_000;

/**
 * A panel's size is blamed on a value that makes it larger, and on one of its own where it has one. Every written length of a
 * job of one carcass is made a millimetre larger for that; where that is too little, since drawers stand on the grid, a
 * pitch. Gives the number of sizes that are blamed on a value.
 */
export function expectRightBlame(job: JobAnalysis, analyse: (text: string) => JobAnalysis): number {
  const box = job.carcasses[0]!;
  const growing = growingSizes(job, analyse, 1000);
  const context = { spec: box.spec!, carcass: box.carcass } as CarcassContext;
  let blamed = 0;
  for (const panel of box.carcass!.panels)
    for (const side of ['length', 'width'] as const) {
      const values = growing.get(`${panel.key} ${side}`) ?? [];
      const mine = values.filter(({ path }) => path[0] === 'panels');
      const { place } = sizeCause(context, panel, side);
      // What the size follows from first may be left to the habits of the shop; then nothing written is to blame.
      if (mine.length === 0 && (values.length === 0 || place.start === panel.place.start)) continue;
      blamed += 1;
      const places = (mine.length > 0 ? mine : values).map((value) => value.place);
      if (panel.key.startsWith('drawer-') && !places.some(({ start }) => start === place.start))
        places.push(
          ...(growingSizes(job, analyse, PITCH).get(`${panel.key} ${side}`) ?? []).map((value) => value.place),
        );
      expect(places, `${panel.key} ${side}\n${job.text}`).toContainEqual(place);
    }
  return blamed;
}

/** Of each size of a panel, the written values that make it larger when they are. */
function growingSizes(
  job: JobAnalysis,
  analyse: (text: string) => JobAnalysis,
  by: number,
): ReadonlyMap<string, readonly Located<number>[]> {
  const box = job.carcasses[0]!;
  const was = sidesOf(box);
  const growing = new Map<string, Located<number>[]>();
  for (const value of writtenLengths(box.spec)) {
    const text = writeLength(value.value + by, 'mm');
    const changes = [{ kind: 'set', part: 'self', path: value.path, text }] as const;
    const edits = repairEdits(job, { carcass: 0, repair: { title: asMessage(''), changes, preferred: false } });
    const grown = edits === null ? null : analyse(applied(job.text, edits)).carcasses[0]!;
    if (grown === null || !stands(grown)) continue;
    for (const [side, size] of sidesOf(grown))
      if (size > (was.get(side) ?? Infinity)) growing.set(side, [...(growing.get(side) ?? []), value]);
  }
  return growing;
}
