import { clearDepth } from '../carcass/panel.js';
import type { Row } from '../boring/model.js';
import { chosen } from '../carcass/choices.js';
import type { Located, Place } from '../document/place.js';
import type { Micrometres } from '../length/units.js';
import { headsOver } from '../machining/plan/heads.js';
import type { LineDrill } from '../shop/model.js';
import { counted } from '../words/english.js';
import { messages } from '../words/message.js';
import { ownText, remove, setLength, setWord } from './changes.js';
import type { Repair } from './finding.js';
import { half } from '../length/units.js';
import { distinct, grouped, panelOf } from './lookups.js';
import type { CarcassContext } from './rule.js';

export const rowReachMessages = messages('row-reach', {
  set: ({ at }: { readonly at: Micrometres }, show) => `Set the front row ${show.exact(at)} from the front edge`,
  setUsual: ({ at }: { readonly at: Micrometres }, show) =>
    `Set the front row ${show.exact(at)} from the front edge, the usual row setback`,
  moveRear: ({ at, pitches }: { readonly at: Micrometres; readonly pitches: number }, show) =>
    `Move the rear row to ${show.exact(at)} from the front edge, ${counted(pitches, 'pitch', 'pitches')} behind the front row`,
  leaveOut: () => 'Leave the rear row out',
});

/** The rows of one carcass that stand on one line for one reason: the same side of the panel, the same setback. */
export interface RowLine {
  readonly line: Row['line'];
  readonly u: Micrometres;
  readonly rows: readonly Row[];
  readonly panels: readonly string[];
  readonly place: Place;
}

/** The rows of a carcass, line by line. */
export function rowLines(context: CarcassContext): readonly RowLine[] {
  return grouped(context.boring.rows, (row) => `${row.line} ${row.u}`).map((rows) => ({
    line: rows[0]!.line,
    u: rows[0]!.u,
    rows,
    panels: distinct(rows.map((row) => row.panel)),
    place: blame(context, rows[0]!.line).place,
  }));
}

/** The value that puts the line where it is. */
function blame({ spec }: CarcassContext, line: Row['line']): Located<unknown> {
  if (line === 'front') return spec.rowSetback;
  if (spec.rearRow !== null) return spec.rearRow;
  return spec.depth.written ? spec.depth : spec.rowSetback;
}

/** Why the heads of a drill do not stand over a line with the others. */
export interface OutOfHeads {
  readonly reason: 'setback' | 'distance' | 'one-head';
  /** True where the line can still be bored in a set-up of its own. */
  readonly alone: boolean;
}

/**
 * What keeps the drill from boring the line with the panel's other one; a rear row never stands without a front row. null for nothing, and past the throat or the panel's
 * back edge: another rule's matter.
 */
export function outOfHeads(context: CarcassContext, drill: LineDrill, line: RowLine): OutOfHeads | null {
  const { boring, shop, spec } = context;
  const isInWood = line.panels.some((key) => line.u < (panelOf(context, key)?.width ?? 0));
  if (line.u > drill.throat || !isInWood) return null;
  const alone = !('parameter' in headsOver([line.u], drill, shop.habits.setback));
  if (line.line === 'front') {
    if (line.u >= drill.setback.min && line.u <= drill.setback.max) return null;
    const hasRear = boring.rows.some((row) => row.line === 'rear' && line.panels.includes(row.panel));
    return alone && !hasRear ? null : { reason: 'setback', alone };
  }
  if (drill.heads < 2) return alone ? null : { reason: 'one-head', alone };
  const distance = line.u - spec.rowSetback.value;
  return standApart(drill, distance) ? null : { reason: 'distance', alone: alone && distance > 0 };
}

/** Whether any two heads, those between left empty, can stand so far apart. */
function standApart({ heads, headDistance: range }: LineDrill, distance: Micrometres): boolean {
  if (range === null) return distance > 0;
  return Array.from({ length: heads - 1 }, (_, k) => k + 1).some(
    (gaps) => distance >= gaps * range.min && distance <= gaps * range.max,
  );
}

/** Offers to bring a line to places that the drill reaches; the nearest first. */
export function reachRepairs(context: CarcassContext, drill: LineDrill, line: RowLine): readonly Repair[] {
  return line.line === 'front' ? frontRepairs(context, drill, line) : rearRepairs(context, drill, line);
}

function frontRepairs(context: CarcassContext, drill: LineDrill, line: RowLine): readonly Repair[] {
  const { spec, shop } = context;
  const least = drill.setback.min;
  const most = Math.min(drill.setback.max, drill.throat);
  if (least > most) return [];
  const nearest = Math.min(Math.max(line.u, least), most);
  const usual = shop.habits.setback;
  const places = distinct(usual >= least && usual <= most ? [nearest, usual] : [nearest]);
  return places.map((u, index) => ({
    title: (u === usual ? rowReachMessages.setUsual : rowReachMessages.set)({ at: u }),
    changes:
      u === usual && ownText(spec.rowSetback)
        ? [remove(spec.rowSetback.path)]
        : [setLength(context, ['row-setback'], u)],
    preferred: index === 0,
  }));
}

/** Never to a place in the front half of the clear depth: a shelf on pins there would tip. */
function rearRepairs(context: CarcassContext, drill: LineDrill, line: RowLine): readonly Repair[] {
  const start = context.spec.rowSetback.value;
  const panels = line.panels.map((key) => panelOf(context, key)).filter((panel) => panel !== undefined);
  const clear = Math.min(...panels.map(clearDepth));
  const last = Math.min(drill.throat, clear - context.shop.habits.rearMargin);
  const pitch = context.shop.habits.pitch;
  const places: Micrometres[] = [];
  for (let u = start + pitch; u <= last; u += pitch) {
    if (u >= half(clear) && outOfHeads(context, drill, { ...line, u }) === null) places.push(u);
  }
  const below = places.filter((u) => u < line.u).at(-1);
  const above = places.find((u) => u > line.u);
  const near = [below, above]
    .filter((u) => u !== undefined)
    .sort((a, b) => Math.abs(a - line.u) - Math.abs(b - line.u));
  const moved = near.map((u, index) => ({
    title: rowReachMessages.moveRear({ at: u, pitches: (u - start) / pitch }),
    changes: [setLength(context, ['rear-row'], u)],
    preferred: index === 0,
  }));
  return [...moved, ...leaveOut(context, line)];
}

/** Offers to bore the front row only; where a loose shelf needs both, trying it shows that it does not do. */
function leaveOut({ spec }: CarcassContext, line: RowLine): readonly Repair[] {
  if (line.panels.some((key) => chosen(spec, key, 'rows') !== undefined)) return [];
  const { rearRow } = spec;
  // Its place says nothing of a row that is not there.
  const place = rearRow !== null && ownText(rearRow) ? [remove(rearRow.path)] : [];
  return [{ title: rowReachMessages.leaveOut(), changes: [setWord(['rows'], 'front'), ...place], preferred: false }];
}
