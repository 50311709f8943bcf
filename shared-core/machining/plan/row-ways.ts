import type { Bore, Row } from '../../boring/model.js';
import type { Panel } from '../../carcass/model.js';
import type { EndName } from '../../job/model.js';
import type { Derived } from '../../derived/derived.js';
import type { Micrometres } from '../../length/units.js';
import type { LineDrill } from '../../shop/model.js';
import type { Blank } from '../set-up.js';
import type { HeadPlaces } from './heads.js';
import type { Obstacle } from './lines.js';
import { loadFor } from './load.js';
import { say } from './messages.js';
import { modulo, outside } from './numbers.js';
import type { PlannedStroke, WantedSpindle, Way } from './operation.js';
import { handOfEnd } from './orientation.js';
import { rowStrokes, type RowStroke } from './row-strokes.js';

/** Rows of one face that the heads bore side by side: same places along the panel, same depth. */
export interface Lane {
  readonly row: Row;
  readonly lines: readonly Line[];
}
export interface Line {
  readonly u: Micrometres;
  /** By their place along the panel. */
  readonly bores: ReadonlyMap<Micrometres, Bore>;
}

/** A lane under heads that are set. */
export interface Setting extends HeadPlaces {
  readonly panel: Panel;
  readonly blank: Blank;
  readonly drill: LineDrill;
  readonly row: Row;
  /** How deep the depth stop lets the bits go. */
  readonly depth: Micrometres;
  readonly lines: readonly Line[];
  readonly derived: Derived;
}

/**
 * A row from one end of the panel: one way for each run of strokes that carry the same bits. Where one run makes all of it,
 * `other` may be another way to make it all, with other bits.
 */
export interface RowWays {
  readonly ways: readonly Way[];
  readonly other: Way | null;
}

/** The strokes from one end of the panel. */
export function waysFrom(setting: Setting, end: EndName): RowWays | Obstacle {
  const approach = approachFrom(setting, end);
  const { side, nearest } = approach;
  const contact = contactStarts(approach);
  const [leastStart = Infinity] = contact;
  if (leastStart > 0) {
    const reason = say.rowStops({ machine: setting.drill.name, side, needed: nearest });
    return { parameter: 'stops', needed: nearest, reason };
  }
  return setting.drill.indexPins === 'none' ? fromStops(approach, contact) : alongPins(approach, contact);
}

/** A lane as it lies with one end at a stop. */
interface Approach {
  readonly setting: Setting;
  readonly end: EndName;
  readonly down: Way['down'];
  /** The hand on which the end lies. */
  readonly side: Way['side'];
  /** From that end to the hole nearest to it. */
  readonly nearest: Micrometres;
  /** The holes in pitches from there, ascending. */
  readonly holes: readonly number[];
}

function approachFrom(setting: Setting, end: EndName): Approach {
  const { panel, blank, drill, row, lines } = setting;
  const down = (drill.from === 'above') === (row.face === 'inside') ? 'outside' : 'inside';
  const places = [...(lines[0]?.bores.keys() ?? [])].map((v) => fromEnd(panel, end, v)).sort((a, b) => a - b);
  const nearest = places[0] ?? 0;
  const holes = places.map((place) => (place - nearest) / drill.pitch);
  return { setting, end, down, side: handOfEnd(end, down, blank.hand, drill.fence), nearest, holes };
}

/** From a distance along v to the distance from an end, and back. */
function fromEnd(panel: Panel, end: EndName, v: Micrometres): Micrometres {
  return end === 'reference-end' ? v : panel.length - v;
}

/** How far a place, in pitches from the nearest hole, lies beyond the ends of the panel; 0 over it. */
function beside({ setting: { panel, drill }, nearest }: Approach, place: number): Micrometres {
  return outside(nearest + place * drill.pitch, panel.length);
}

/** Each stroke from a stop of its own. */
function fromStops(approach: Approach, contact: readonly number[]): RowWays | Obstacle {
  const found = strokesAt(approach, contact);
  if ('kind' in found) {
    const { name: machine, spindles } = approach.setting.drill;
    const reason = say.noIndexPins({ machine, holes: approach.holes.length, spindles });
    return { parameter: 'index-pins', needed: null, reason };
  }
  const [strokes = []] = found;
  return { ways: strokes.map((stroke) => wayOf(approach, [stroke], stroke.start)), other: null };
}

/**
 * The first stroke at a stop, the others after index moves. Where the plan with the fewest strokes and changes of bits would
 * move the panel further than it can be moved, one with other bits that does not.
 */
function alongPins(approach: Approach, contact: readonly number[]): RowWays | Obstacle {
  const { setting, holes } = approach;
  const { pitch, spindles, indexRange } = setting.drill;
  const last = holes.at(-1) ?? 0;
  const most = indexRange === null ? Infinity : Math.floor(indexRange / pitch);
  const tooFar = (pitches: number): Obstacle => {
    const needed = pitches * pitch;
    const figures = { machine: setting.drill.name, holes: holes.length, spindles, most: indexRange, needed };
    return { parameter: 'index-range', needed, reason: say.indexRange(figures) };
  };

  // The first stroke bores the nearest hole, so it starts there or before it: it alone must lie at a stop.
  const starts = [...contact, ...Array.from({ length: last }, (_, k) => k + 1)];
  const usual = strokesAt(approach, starts);
  if ('kind' in usual) return tooFar(last);
  const firsts = contact.filter((start) => start <= 0);
  // Whoever starts at the nearest stop has the least way to the last hole.
  const nearest = firsts.at(-1) ?? 0;
  const least = last - spindles + 1 - nearest;
  const [plan = []] = usual;
  if (travelOf(plan) > most && least > most) return tooFar(least);
  const found =
    travelOf(plan) <= most ? usual : (within(approach, firsts, starts, most) ?? [shortMove(approach, nearest)]);
  const [strokes = [], full = null] = found;
  const first = Math.min(...strokes.map(({ start }) => start));
  const ways = runsOfEqualLoad(strokes).map((run) => wayOf(approach, run, first));
  // The other begins at the nearest hole, and may go on further than the panel can be moved.
  const goes = full !== null && travelOf(full) <= most;
  return { ways, other: goes ? wayOf(approach, full, 0) : null };
}

/** The best plan that moves the panel no further than `most` pitches from one of the `firsts`; null where none is found so. */
function within(
  approach: Approach,
  firsts: readonly number[],
  starts: readonly number[],
  most: number,
): readonly (readonly RowStroke[])[] | null {
  return bestOf(
    firsts.map((first) =>
      strokesAt(
        approach,
        starts.filter((start) => start >= first && start <= first + most),
      ),
    ),
  );
}

/** One stroke at the stop, and one moved along from there until the last spindle is over the last hole. */
function shortMove({ setting, holes }: Approach, first: number): readonly RowStroke[] {
  const { spindles } = setting.drill;
  const bored = (hole: number): boolean => hole < first + spindles;
  return [
    { start: first, bores: holes.filter(bored) },
    { start: (holes.at(-1) ?? 0) - spindles + 1, bores: holes.filter((hole) => !bored(hole)) },
  ].map(({ start, bores }) => ({
    start,
    bores,
    loaded: Array.from({ length: spindles }, (_, spindle) => bores.includes(start + spindle)),
  }));
}

/** How far the panel is moved along in all, in pitches. */
function travelOf(strokes: readonly RowStroke[]): number {
  const starts = strokes.map(({ start }) => start);
  return Math.max(...starts) - Math.min(...starts);
}

/** Of several plans of one row one with the fewest strokes, then changes of bits, then the least travel; null where none goes. */
function bestOf(plans: readonly RowStrokes[]): readonly (readonly RowStroke[])[] | null {
  const going = plans.flatMap((plan) => ('kind' in plan ? [] : [plan]));
  const cost = ([strokes = []]: (typeof going)[number]): readonly number[] => [
    strokes.length,
    runsOfEqualLoad(strokes).length,
    bitChanges(strokes),
    travelOf(strokes),
  ];
  const order = (a: readonly number[], b: readonly number[]): number =>
    a.map((one, i) => one - b[i]!).find((d) => d !== 0) ?? 0;
  return going.toSorted((a, b) => order(cost(a), cost(b)))[0] ?? null;
}

/** Spindles that are loaded or emptied between strokes. */
function bitChanges(strokes: readonly RowStroke[]): number {
  return strokes
    .slice(1)
    .reduce((sum, { loaded }, i) => sum + loaded.filter((one, k) => one !== strokes[i]!.loaded[k]).length, 0);
}

type RowStrokes = ReturnType<typeof rowStrokes>;

function strokesAt(approach: Approach, starts: readonly number[]): RowStrokes {
  const { setting, holes } = approach;
  const { spindles, meetsHolesTwice } = setting.drill;
  const isAir = (place: number): boolean => 2 * beside(approach, place) >= setting.row.diameter;
  return rowStrokes({ holes, spindles, starts, meetsHolesTwice, isAir }, setting.derived);
}

/** Strokes with one load, as one way: the panel lies against its stop as for a stroke at `contactStart`. */
function wayOf(approach: Approach, run: readonly RowStroke[], contactStart: number): Way {
  const { setting, end, down, side, nearest } = approach;
  const { panel, drill, fence } = setting;
  const strokes = run.map((stroke) => plannedStroke(approach, stroke, contactStart));
  const load = loadFor(
    drill,
    strokes.flatMap(({ wanted }) => wanted),
    ({ head, spindle }) =>
      Math.max(
        outside(fence[head] ?? Infinity, panel.width),
        Math.min(...run.map(({ start }) => beside(approach, start + fromStop(approach, spindle)))),
      ),
  );
  const position = nearest + contactStart * drill.pitch;
  return { down, edge: 'front', end, side, position, strokes, extent: panel.length, load };
}

function plannedStroke(approach: Approach, { start, bores }: RowStroke, contactStart: number): PlannedStroke {
  const { setting, end, side, nearest } = approach;
  const { panel, drill, lines, over } = setting;
  const along = (start - contactStart) * drill.pitch;
  const wanted: WantedSpindle[] = [];
  for (const [index, line] of lines.entries()) {
    const head = over[index] ?? 0;
    for (const place of bores) {
      const bore = line.bores.get(fromEnd(panel, end, nearest + place * drill.pitch));
      if (bore !== undefined) wanted.push({ head, spindle: fromStop(approach, place - start), bore });
    }
  }
  return { moved: along === 0 ? 0 : side === 'left' ? -along : along, wanted };
}

/** Spindles are counted from the left: that number to the number from the stop, and back. */
function fromStop({ side, setting }: Approach, spindle: number): number {
  return side === 'left' ? spindle : setting.drill.spindles - 1 - spindle;
}

/** Starts, in pitches from the nearest hole, at which the panel can lie in contact with a stop of this side. */
function contactStarts({ setting: { drill }, side, nearest }: Approach): number[] {
  const starts = new Set<number>();
  for (const stop of drill.stops) {
    if (stop.side !== side) continue;
    const rest = modulo(nearest - stop.range.min, drill.pitch);
    for (let position = stop.range.min + rest; position <= stop.range.max; position += drill.pitch) {
      const start = (position - nearest) / drill.pitch;
      if (start > -drill.spindles) starts.add(start);
    }
  }
  return [...starts].sort((a, b) => a - b);
}

function runsOfEqualLoad(strokes: readonly RowStroke[]): RowStroke[][] {
  const runs: RowStroke[][] = [];
  for (const stroke of strokes) {
    const run = runs.at(-1);
    if (run && run[0]?.loaded.join() === stroke.loaded.join()) run.push(stroke);
    else runs.push([stroke]);
  }
  return runs;
}
