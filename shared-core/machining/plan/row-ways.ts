import type { Bore, Row } from '../../boring/model.js';
import type { Panel } from '../../carcass/model.js';
import type { Micrometres } from '../../length/units.js';
import type { LineDrill } from '../../shop/model.js';
import type { Blank } from '../setup-sheet.js';
import type { HeadPlaces } from './heads.js';
import type { Obstacle } from './lines.js';
import { loadFor } from './load.js';
import { modulo, outside } from './numbers.js';
import type { PlannedStroke, Way } from './operation.js';
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
  readonly lines: readonly Line[];
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
export function waysFrom(setting: Setting, end: Way['end']): RowWays | Obstacle {
  const { panel, blank, drill, row, lines, fence, over } = setting;
  const { pitch, spindles, indexPins, indexRange } = drill;
  const down = (drill.from === 'above') === (row.face === 'inside') ? 'outside' : 'inside';
  const side = handOfEnd(end, down, blank.hand, drill.fence);
  // Distances from the end at the stop; the grid of holes is counted from the nearest one.
  const fromStop = (v: Micrometres): Micrometres => (end === 'reference-end' ? v : panel.length - v);
  const places = [...(lines[0]?.bores.keys() ?? [])].map(fromStop).sort((a, b) => a - b);
  const nearest = places[0] ?? 0;
  const holes = places.map((place) => (place - nearest) / pitch);
  const last = holes.at(-1) ?? 0;
  const diameter = row.diameter;
  const beside = (place: number): Micrometres => outside(nearest + place * pitch, panel.length);

  const contact = contactStarts(drill, side, nearest, last);
  const [leastStart = Infinity] = contact;
  if (leastStart > 0) {
    const reason = `no stop on the ${side} puts a spindle over the first hole from there`;
    return { parameter: 'stops', needed: nearest, reason };
  }
  const travel = Math.floor((indexRange ?? panel.length) / pitch);
  const moved = Array.from({ length: last + travel }, (_, k) => leastStart + k);
  const found = rowStrokes({
    holes,
    spindles,
    starts: indexPins === 'none' ? contact : moved,
    meetsHolesTwice: drill.meetsHolesTwice,
    isAir: (place) => 2 * beside(place) >= diameter,
  });
  const tooFar = (pitches: number): Obstacle => ({
    parameter: 'index-range',
    needed: pitches * pitch,
    reason: `${holes.length} holes take more than one stroke of its ${spindles} spindles, and the panel cannot be moved along so far`,
  });
  if ('kind' in found) {
    if (indexPins !== 'none') return tooFar(last - spindles + 1);
    const reason = `${holes.length} holes are more than its ${spindles} spindles bore from the stops, and it has no index pins to go on from there`;
    return { parameter: 'index-pins', needed: null, reason };
  }
  const [strokes = [], others = null] = found;
  const first = Math.min(...strokes.map((stroke) => stroke.start));
  const greatest = Math.max(...strokes.map((stroke) => stroke.start));
  if (indexPins !== 'none' && (greatest - first) * pitch > (indexRange ?? Infinity)) return tooFar(greatest - first);
  if (indexPins !== 'none' && !contact.includes(first)) {
    const reason = `no stop on the ${side} can be set where the first stroke needs it`;
    return { parameter: 'stops', needed: nearest + first * pitch, reason };
  }

  const counted = (spindle: number): number => (side === 'left' ? spindle : spindles - 1 - spindle);
  const strokeOf = (stroke: RowStroke, contactStart: number): PlannedStroke => {
    const along = (stroke.start - contactStart) * pitch;
    return {
      moved: along === 0 ? 0 : side === 'left' ? -along : along,
      wanted: lines.flatMap((line, index) =>
        stroke.bores.flatMap((place) => {
          const bore = line.bores.get(fromStop(nearest + place * pitch));
          return bore ? [{ head: over[index] ?? 0, spindle: counted(place - stroke.start), bore }] : [];
        }),
      ),
    };
  };
  const wayOf = (run: readonly RowStroke[], contactStart: number): Way => {
    const planned = run.map((stroke) => strokeOf(stroke, contactStart));
    return {
      down,
      end,
      side,
      position: nearest + contactStart * pitch,
      strokes: planned,
      extent: panel.length,
      load: loadFor(
        drill,
        planned.flatMap((stroke) => stroke.wanted),
        ({ head, spindle }) =>
          Math.max(
            outside(fence[head] ?? Infinity, panel.width),
            Math.min(...run.map(({ start }) => beside(start + counted(spindle)))),
          ),
      ),
    };
  };
  if (indexPins === 'none') return { ways: strokes.map((stroke) => wayOf([stroke], stroke.start)), other: null };
  const ways = runsOfEqualLoad(strokes).map((run) => wayOf(run, first));
  // The other begins and ends at the row's own ends, which may lie further apart than the panel can be moved.
  const start = others?.[0]?.start ?? 0;
  const travelled = ((others?.at(-1)?.start ?? start) - start) * pitch;
  const goes = ways.length === 1 && contact.includes(start) && travelled <= (indexRange ?? Infinity);
  return { ways, other: others !== null && goes ? wayOf(others, start) : null };
}

/** Starts, in pitches from the nearest hole, at which the panel can lie in contact with a stop of this side. */
function contactStarts(drill: LineDrill, side: 'left' | 'right', nearest: Micrometres, last: number): number[] {
  const starts = new Set<number>();
  for (const stop of drill.stops) {
    if (stop.side !== side) continue;
    const rest = modulo(nearest - stop.range.min, drill.pitch);
    for (let position = stop.range.min + rest; position <= stop.range.max; position += drill.pitch) {
      const start = (position - nearest) / drill.pitch;
      if (start > -drill.spindles && start <= last) starts.add(start);
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
