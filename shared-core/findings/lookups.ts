import { isFace } from '../boring/surface.js';
import { groupBy, modulo } from '../machining/plan/numbers.js';
import type { Bore, BoreMap, Row } from '../boring/model.js';
import { boredHoles } from '../boring/rows.js';
import type { Span } from '../schema/schema.js';
import type { Carcass, Panel } from '../carcass/model.js';
import type { CarcassSpec, ShelfSpec } from '../carcass/spec.js';
import { means } from '../job/panel-key.js';
import { SHOWN_WITHIN } from '../length/show.js';
import type { Micrometres, Unit } from '../length/units.js';
import type { CaseClamp, HorizontalHead, LineDrill, Shop, VerticalHead } from '../shop/model.js';
import { borerOf } from '../hung/hang.js';
import type { BoringMachine } from '../machining/plan/operation.js';
import { taskOf } from '../machining/plan/operations.js';
import { KIND_FOR_USE } from '../shop/habits.js';
import type { CarcassContext } from './rule.js';

interface MachineForUse {
  faces: VerticalHead;
  ends: HorizontalHead;
  rows: LineDrill;
  clamp: CaseClamp;
}

/** The machine that the carcass is sent to for a use; null where none is named or the name is wrong (another rule says so). */
export function machineFor<U extends keyof MachineForUse>(context: CarcassContext, use: U): MachineForUse[U] | null {
  const name = context.spec.machines[use];
  const machine = name === null ? undefined : context.shop.machines.get(name.value);
  return machine?.kind === KIND_FOR_USE[use] ? (machine as MachineForUse[U]) : null;
}

/** The machine that a bore is planned on; null where none is named or the name is wrong (another rule says so). */
export function machineThatBores(context: CarcassContext, bore: Bore): BoringMachine | null {
  const task = taskOf(bore);
  return task === 'cups' ? borerOf(context.shop) : machineFor(context, task);
}

const panelsByKey = ({ panels }: Carcass): ReadonlyMap<string, Panel> =>
  new Map(panels.map((panel) => [panel.key, panel]));

/** The panel of a key. */
export function panelOf({ carcass, derived }: CarcassContext, key: string): Panel | undefined {
  return derived.get(panelsByKey, carcass).get(key);
}

const boresByPanel = ({ bores }: BoreMap): ReadonlyMap<string, readonly Bore[]> => groupBy(bores, ({ panel }) => panel);

/** The bores of a panel, in the order of the bore map. */
export function boresOfPanel({ boring, derived }: CarcassContext, key: string): readonly Bore[] {
  return derived.get(boresByPanel, boring).get(key) ?? [];
}

/** The panels that one shelf of the job makes: one, or one in every bay. */
export function panelsOfShelf(context: CarcassContext, shelf: ShelfSpec): readonly Panel[] {
  return context.carcass.panels.filter((panel) => means(shelf.key, panel.key));
}

/** Ids of the bores of some joints or rows, in the order of the bore map. */
export function boresOfGroups(context: CarcassContext, groups: ReadonlySet<string>): readonly string[] {
  return context.boring.bores.filter((bore) => groups.has(bore.group)).map((bore) => bore.id);
}

/** The panels on the left and the right of the bay that a shelf panel stands in. */
export function bayOf(
  context: CarcassContext,
  shelf: Panel,
): { readonly left: string; readonly right: string } | undefined {
  const x = shelf.pose.origin.x;
  return context.carcass.bays.find((bay) => bay.from <= x && x <= bay.to);
}

/** Rows whose holes open into the bay that lies on that hand of the panel. */
export function rowsTowards(context: CarcassContext, key: string, bayLies: 'left' | 'right'): readonly Row[] {
  const panel = panelOf(context, key);
  if (panel === undefined) return [];
  const insideLooks = panel.role === 'left-side' || panel.pose.t === '+x' ? 'right' : 'left';
  return context.boring.rows.filter(
    (row) => row.panel === key && (row.through || (row.face === 'inside') === (insideLooks === bayLies)),
  );
}

/** The panels on either hand of a shelf panel, with the rows that open towards it. */
export function besides(
  context: CarcassContext,
  panel: Panel,
): readonly { readonly side: string; readonly rows: readonly Row[] }[] {
  const bay = bayOf(context, panel);
  if (bay === undefined) return [];
  return [
    { side: bay.left, rows: rowsTowards(context, bay.left, 'right') },
    { side: bay.right, rows: rowsTowards(context, bay.right, 'left') },
  ];
}

/** Height of the first hole of a row above the bottom end of the sides, as `at` of a shelf is counted. */
export function rowStart(context: CarcassContext, row: Row): Micrometres {
  const base = panelOf(context, 'left')?.pose.origin.z ?? 0;
  return (panelOf(context, row.panel)?.pose.origin.z ?? base) - base + row.offset;
}

/** Heights of the first and the last hole of a row that are bored, as `at` of a shelf is counted. */
export function boredSpan(context: CarcassContext, row: Row): Span {
  const holes = boredHoles(row);
  const at = (k: number): Micrometres => rowStart(context, row) + k * row.pitch;
  return { min: at(holes[0]!), max: at(holes.at(-1)!) };
}

/** What is said of end panels, fillers and blind panels, where there are any. */
export function besideNamed({
  endPanels,
  fillers,
  blind,
}: CarcassSpec): readonly CarcassSpec['fillers' | 'endPanels' | 'blind'][] {
  return [
    ...(endPanels.on.value === 'none' ? [] : [endPanels]),
    ...(fillers.left === null && fillers.right === null ? [] : [fillers]),
    ...(blind.left === null && blind.right === null ? [] : [blind]),
  ];
}

/** Things with one key, in the order in which the keys first come. */
export function grouped<T>(items: readonly T[], key: (item: T) => string): readonly (readonly T[])[] {
  return [...groupBy(items, key).values()];
}

/** Each once, in the order in which they first come. */
export function distinct<T>(items: readonly T[]): readonly T[] {
  return [...new Set(items)];
}

/**
 * Whether a row lies evenly between the ends of its panel, so that one stop setting serves both: (length - 2 x offset) is a
 * whole number of pitches, as nearly as a stop of the shop is set.
 */
export function isBalanced({ length }: Panel, { offset, pitch }: Row, { tolerances }: Shop): boolean {
  const between = length - 2 * offset;
  // A little too short, and the row ends a whole pitch sooner.
  return onPitch(between, pitch) || modulo(between, pitch) <= tolerances.stop;
}

/** Whether a distance is on the pitch, as nearly as one that is shown in this unit tells. */
export function onPitch(distance: Micrometres, pitch: Micrometres, unit: Unit = 'mm'): boolean {
  const rest = modulo(distance, pitch);
  return Math.min(rest, pitch - rest) <= SHOWN_WITHIN[unit];
}

export const onFace = (bore: Bore): boolean => isFace(bore.face);
