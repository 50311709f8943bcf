import type { Bore, Row } from '../../boring/model.js';
import type { Panel } from '../../carcass/model.js';
import type { Micrometres } from '../../length/units.js';
import type { LineDrill } from '../../shop/model.js';
import type { Blank } from '../setup-sheet.js';
import type { Stroke } from '../strokes/index.js';
import { headsOver } from './heads.js';
import { strokesFor } from './known-strokes.js';
import type { Found, Obstacle } from './lines.js';
import { loadFor } from './load.js';
import { groupBy, modulo, outside, within } from './numbers.js';
import type { Operation, PlannedStroke, Unreachable, Way } from './operation.js';
import { handOfEnd } from './orientation.js';

/** Rows of one face that the heads bore side by side: same places along the panel, same depth. */
interface Lane {
  readonly row: Row;
  readonly lines: readonly { readonly u: Micrometres; readonly bores: ReadonlyMap<Micrometres, Bore> }[];
}

/**
 * Rows on a line drill. Front and rear rows that share their places along the panel are bored in one stroke where the heads
 * can stand so far apart; otherwise each by itself. A row longer than the spindle line goes on by index moves of whole
 * pitches, in the fewest strokes and, of these, with the fewest changes of bits.
 */
export function rowOperations(
  carcass: string,
  panel: Panel,
  blank: Blank,
  bores: readonly Bore[],
  rows: readonly Row[],
  drill: LineDrill,
  usualSetback: Micrometres,
): Found {
  const operations: Operation[] = [];
  const unreachable: Unreachable[] = [];
  for (const lane of lanesOf(bores, rows)) {
    const all = lane.lines.flatMap((line) => [...line.bores.values()]);
    const cannot = (of: readonly Bore[], parameter: string | null, needed: Micrometres | null, reason: string) =>
      unreachable.push({ panel: panel.key, bores: of, machine: drill.name, parameter, needed, reason });
    if (lane.row.pitch !== drill.pitch) {
      cannot(all, 'pitch', lane.row.pitch, 'its spindles stand on another pitch');
      continue;
    }
    if (!within(lane.row.depth, drill.depth)) {
      cannot(all, 'depth', lane.row.depth, 'its depth range does not take this depth');
      continue;
    }
    for (const { lines, heads } of headsFor(lane, drill, usualSetback)) {
      const boresHere = lines.flatMap((line) => [...line.bores.values()]);
      if ('parameter' in heads) {
        cannot(boresHere, heads.parameter, heads.needed, heads.reason);
        continue;
      }
      const setting = { carcass, panel, blank, drill, row: lane.row, lines, ...heads };
      const made = strokesFrom(setting);
      if ('parameter' in made) cannot(boresHere, made.parameter, made.needed, made.reason);
      else operations.push(...made.operations);
    }
  }
  return { operations, unreachable };
}

function lanesOf(bores: readonly Bore[], rows: readonly Row[]): Lane[] {
  const boresOf = groupBy(bores, (bore) => bore.group);
  const lanes = groupBy(rows, (row) => {
    const places = (boresOf.get(row.id) ?? []).map((bore) => bore.v).sort((a, b) => a - b);
    return `${row.face}|${row.depth}|${row.through}|${row.pitch}|${places.join()}`;
  });
  return [...lanes.values()].flatMap((lane) => {
    const [row] = lane;
    if (!row) return [];
    const lines = [...lane]
      .sort((a, b) => a.u - b.u)
      .map(({ id, u }) => ({ u, bores: new Map((boresOf.get(id) ?? []).map((bore) => [bore.v, bore] as const)) }))
      .filter((line) => line.bores.size > 0);
    return lines.length > 0 ? [{ row, lines }] : [];
  });
}

/** All lines of a lane under the heads at once, or, where the heads cannot stand so, line by line. */
function headsFor(lane: Lane, drill: LineDrill, usualSetback: Micrometres) {
  const together = headsOver(
    lane.lines.map((line) => line.u),
    drill,
    usualSetback,
  );
  if (!('parameter' in together) || lane.lines.length === 1) return [{ lines: lane.lines, heads: together }];
  return lane.lines.map((line) => ({ lines: [line], heads: headsOver([line.u], drill, usualSetback) }));
}

interface Setting {
  readonly carcass: string;
  readonly panel: Panel;
  readonly blank: Blank;
  readonly drill: LineDrill;
  readonly row: Row;
  readonly lines: Lane['lines'];
  /** Fence to each head, and the head over each of the lines. */
  readonly fence: readonly Micrometres[];
  readonly over: readonly number[];
}

type Made = { readonly operations: Operation[] } | Obstacle;

/**
 * The operations of one lane under heads that are set: one where all strokes carry the same bits. They are set out from the
 * reference end wherever a stop allows, so that the rows of left and right panels stay level whatever their lengths.
 */
function strokesFrom(setting: Setting): Made {
  const reference = waysFrom(setting, 'reference-end');
  const found = 'ways' in reference ? reference : waysFrom(setting, 'far-end');
  if (!('ways' in found)) return found;
  return {
    operations: found.ways.map((way) => ({
      carcass: setting.carcass,
      panel: setting.panel.key,
      blank: setting.blank,
      machine: setting.drill,
      fence: setting.fence,
      height: null,
      depth: setting.row.depth,
      through: setting.row.through,
      ways: [way],
    })),
  };
}

/** The strokes from one end of the panel, as one way for each run of strokes that carry the same bits. */
function waysFrom(setting: Setting, end: Way['end']): { ways: Way[] } | Obstacle {
  const { panel, blank, drill, row, lines, fence, over } = setting;
  const { pitch, spindles } = drill;
  const down = (drill.from === 'above') === (row.face === 'inside') ? 'outside' : 'inside';
  const side = handOfEnd(end, down, blank.hand, drill.fence);
  // Distances from the end at the stop; the grid of holes is counted from the nearest one.
  const fromStop = (v: Micrometres): Micrometres => (end === 'reference-end' ? v : panel.length - v);
  const places = [...(lines[0]?.bores.keys() ?? [])].map(fromStop).sort((a, b) => a - b);
  const nearest = places[0] ?? 0;
  const contact = contactStarts(drill, side, nearest, places.length);
  const [firstContact] = contact;
  const lastContact = contact.at(-1);
  if (firstContact === undefined || lastContact === undefined) {
    return {
      parameter: 'stops',
      needed: nearest,
      reason: `no stop on the ${side} puts a spindle over the holes from there`,
    };
  }
  const travel = drill.indexPins === 'none' ? 0 : Math.floor((drill.indexRange ?? panel.length) / pitch);
  const further = Array.from({ length: travel }, (_, k) => lastContact + k + 1);
  const between = Array.from({ length: lastContact - firstContact + 1 }, (_, k) => firstContact + k);
  const planned = strokesFor({
    holes: places.map((place) => (place - nearest) / pitch),
    spindles,
    starts: drill.indexPins === 'none' ? contact : [...between, ...further],
    meetsHolesTwice: drill.meetsHolesTwice,
  });
  if (planned.kind === 'problem') {
    const parameter = drill.indexPins === 'none' ? 'index-pins' : 'index-range';
    return {
      parameter,
      needed: (places.at(-1) ?? 0) - nearest,
      reason: `its strokes do not reach every hole: ${planned.message}`,
    };
  }
  const starts = planned.strokes.map((stroke) => stroke.start);
  const first = Math.min(...starts);
  if (drill.indexPins !== 'none') {
    if (!contact.includes(first)) {
      return {
        parameter: 'stops',
        needed: nearest + first * pitch,
        reason: `no stop on the ${side} can be set where the first stroke needs it`,
      };
    }
    if (drill.indexRange !== null && (Math.max(...starts) - first) * pitch > drill.indexRange) {
      return {
        parameter: 'index-range',
        needed: (Math.max(...starts) - first) * pitch,
        reason: 'the panel cannot be moved along so far',
      };
    }
  }
  const counted = (spindle: number): number => (side === 'left' ? spindle : spindles - 1 - spindle);
  const strokeOf = (stroke: Stroke, contactStart: number): PlannedStroke => {
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
  const wayOf = (run: readonly Stroke[], contactStart: number): Way => {
    const strokes = run.map((stroke) => strokeOf(stroke, contactStart));
    return {
      down,
      end,
      side,
      position: nearest + contactStart * pitch,
      strokes,
      extent: panel.length,
      load: loadFor(drill, strokes[0]?.wanted ?? [], ({ head, spindle }) =>
        Math.max(
          outside(fence[head] ?? Infinity, panel.width),
          Math.min(...run.map(({ start }) => outside(nearest + (start + counted(spindle)) * pitch, panel.length))),
        ),
      ),
    };
  };
  if (drill.indexPins === 'none') return { ways: planned.strokes.map((stroke) => wayOf([stroke], stroke.start)) };
  return { ways: runsOfEqualLoad(planned.strokes).map((run) => wayOf(run, first)) };
}

/** Starts, in pitches from the nearest hole, at which the panel can lie in contact with a stop of this side. */
function contactStarts(drill: LineDrill, side: 'left' | 'right', nearest: Micrometres, holes: number): number[] {
  const starts = new Set<number>();
  for (const stop of drill.stops) {
    if (stop.side !== side) continue;
    const rest = modulo(nearest - stop.range.min, drill.pitch);
    for (let position = stop.range.min + rest; position <= stop.range.max; position += drill.pitch) {
      const start = (position - nearest) / drill.pitch;
      if (start > -drill.spindles && start < holes) starts.add(start);
    }
  }
  return [...starts].sort((a, b) => a - b);
}

function runsOfEqualLoad(strokes: readonly Stroke[]): Stroke[][] {
  const runs: Stroke[][] = [];
  for (const stroke of strokes) {
    const run = runs.at(-1);
    if (run && run[0]?.loaded.join() === stroke.loaded.join()) run.push(stroke);
    else runs.push([stroke]);
  }
  return runs;
}
