import type { Carcass, Panel } from '../carcass/model.js';
import type { CarcassSpec } from '../carcass/spec.js';
import { means } from '../job/panel-key.js';
import { stepsTo } from '../length/grid.js';
import type { Micrometres } from '../length/units.js';
import type { BuiltCarcass } from './built.js';

/** A hole of the rows of one upright, counted from 1 at its bottom end. */
export interface PinHole {
  readonly upright: string;
  readonly number: number;
}

/** The holes that the pins of loose shelves stand in, one for each upright beside them; none where a shelf is off the grid. */
export function pinHoles(
  { carcass, spec, boring }: Pick<BuiltCarcass, 'carcass' | 'spec' | 'boring'>,
  panels: readonly Panel[],
): readonly PinHole[] {
  const side = carcass.panels.find(({ role }) => role === 'left-side');
  const found = panels.flatMap((panel) => {
    const shelf = shelfOf(spec, panel);
    return carcass.panels.flatMap((upright): PinHole[] => {
      const row = boring.rows.find((one) => one.panel === upright.key);
      if (shelf === undefined || side === undefined || row === undefined) return [];
      if (!isBeside(carcass, panel, upright.key)) return [];
      // Heights of shelves are counted from the bottom end of the sides; a divider stands higher.
      const steps = stepsTo(row, shelf.at.value - (upright.pose.origin.z - side.pose.origin.z));
      return Number.isInteger(steps) && steps >= 0 && steps < row.count
        ? [{ upright: upright.key, number: steps + 1 }]
        : [];
    });
  });
  return [...new Map(found.map((one) => [`${one.upright} ${one.number}`, one])).values()];
}

/** What the job says of a loose shelf. */
const shelfOf = (spec: CarcassSpec, panel: Panel): CarcassSpec['looseShelves'][number] | undefined =>
  spec.looseShelves.find(({ key }) => means(key, panel.key));

function isBeside({ bays }: Carcass, { pose, length }: Panel, upright: string): boolean {
  const [from, to] = [pose.origin.x, pose.origin.x + length];
  return bays.some((bay) => bay.from <= from && to <= bay.to && (bay.left === upright || bay.right === upright));
}

/** Holes by their numbers, with the uprights that have each. */
export type NumberedHoles = readonly { readonly number: number; readonly uprights: readonly string[] }[];

export function pinNumbers(holes: readonly PinHole[]): NumberedHoles {
  const byNumber = new Map<number, string[]>();
  for (const { number, upright } of holes) byNumber.set(number, [...(byNumber.get(number) ?? []), upright]);
  return [...byNumber].map(([number, uprights]) => ({ number, uprights }));
}

/** A loose shelf, and where its pins stand. */
export interface ShelfOnPins {
  readonly panel: string;
  /** Of the pins, from the bottom end of the sides. */
  readonly at: Micrometres;
  readonly holes: NumberedHoles;
}

/** Every loose shelf of a carcass on its pins. */
export function shelvesOnPins(one: BuiltCarcass): readonly ShelfOnPins[] {
  return one.carcass.panels.flatMap((panel) => {
    if (panel.role !== 'loose-shelf') return [];
    const shelf = shelfOf(one.spec, panel);
    return shelf === undefined
      ? []
      : [{ panel: panel.key, at: shelf.at.value, holes: pinNumbers(pinHoles(one, [panel])) }];
  });
}
