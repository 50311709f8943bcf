import type { Bore, Row } from '../boring/model.js';
import { boredHoles } from '../boring/rows.js';
import type { Panel } from '../carcass/model.js';
import type { Micrometres } from '../length/units.js';
import { blankOf } from '../machining/blank.js';
import { secondsOf, workOf } from '../machining/plan/cost.js';
import type { Operation } from '../machining/plan/operation.js';
import { secondsToChange } from '../machining/plan/plan.js';
import { rowOperations } from '../machining/plan/row-operations.js';
import { setUpsOf } from '../machining/plan/set-ups.js';
import type { LineDrill } from '../shop/model.js';
import { counted, listed } from '../words/english.js';
import { timeWords } from '../words/time.js';
import { machineFor } from './lookups.js';
import type { CarcassContext } from './rule.js';

/** What the rows of a carcass ask of the line drill, by itself: set-ups, strokes, and seconds by the shop's own times. */
export interface RowWork {
  readonly setUps: number;
  readonly strokes: number;
  readonly seconds: number;
}

/** How the rows of some panels lie: from their first hole on, on a panel of some length. */
export interface RowsLaid {
  readonly panels: ReadonlySet<string>;
  readonly offset: Micrometres;
  readonly count: number;
  readonly length: Micrometres;
}

/** What one way to lay rows takes more than another; null where it takes no more set-ups and no more strokes. */
export function workMore(one: RowWork, other: RowWork): RowWork | null {
  const more = (of: keyof RowWork): number => Math.max(0, one[of] - other[of]);
  const found = { setUps: more('setUps'), strokes: more('strokes'), seconds: more('seconds') };
  return found.setUps > 0 || found.strokes > 0 ? found : null;
}

/** '2 set-ups, 1 stroke and 6 min 30 s' */
export function workWords({ setUps, strokes, seconds }: RowWork): string {
  return listed([
    ...(setUps > 0 ? [counted(setUps, 'set-up')] : []),
    ...(strokes > 0 ? [counted(strokes, 'stroke')] : []),
    ...(seconds > 0 ? [timeWords(seconds)] : []),
  ]);
}

/** The work of all rows of a carcass with those of some panels laid so; null where a row cannot be bored, or no drill is known. */
export function rowWork(context: CarcassContext, laid: RowsLaid): RowWork | null {
  const drill = machineFor(context, 'rows');
  if (drill === null) return null;
  const operations: Operation[] = [];
  for (const panel of context.carcass.panels) {
    const found = laidOn(context, panel, drill, laid);
    if (found === null) return null;
    operations.push(...found);
  }
  const { changeover, handling } = context.shop;
  const setUps = setUpsOf([{ operations, unreachable: [], count: 1 }], context.derived);
  const work = workOf({ runs: setUps.flatMap(({ setUp }) => setUp.runs) });
  return {
    setUps: setUps.length,
    strokes: work.strokes,
    seconds: secondsToChange(setUps, changeover) + secondsOf(work, handling),
  };
}

function laidOn(
  { boring, shop, derived }: CarcassContext,
  panel: Panel,
  drill: LineDrill,
  { panels, offset, count, length }: RowsLaid,
): readonly Operation[] | null {
  const isLaid = panels.has(panel.key);
  const rows = boring.rows.filter((row) => row.panel === panel.key);
  if (rows.length === 0) return [];
  const own = isLaid ? { ...panel, length } : panel;
  const rowsHere = isLaid ? rows.map(({ holes: _, ...row }): Row => ({ ...row, offset, count })) : rows;
  const bores = rowsHere.flatMap((row) => boresOf(row, boring.bores));
  const made = rowOperations(
    '',
    own,
    blankOf(own),
    bores,
    rowsHere,
    drill,
    shop.habits.setback,
    shop.habits.throughAllowance,
    derived,
  );
  return made.unreachable.length > 0 ? null : made.operations;
}

/** The bores of a row, all alike; a row without a bore in the map has none here. */
function boresOf(row: Row, all: readonly Bore[]): readonly Bore[] {
  const like = all.find((bore) => bore.group === row.id);
  if (like === undefined) return [];
  return boredHoles(row).map((k) => ({
    ...like,
    id: `${row.id}/${k}`,
    v: row.offset + k * row.pitch,
  }));
}
