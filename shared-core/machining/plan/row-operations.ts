import type { Bore, Row } from '../../boring/model.js';
import type { Panel } from '../../carcass/model.js';
import type { Derived } from '../../derived/derived.js';
import type { Micrometres } from '../../length/units.js';
import type { LineDrill } from '../../shop/model.js';
import type { Blank } from '../set-up.js';
import { headsOver } from './heads.js';
import { standsAlone } from './batch.js';
import { travelFor, type Found, type Obstacle } from './lines.js';
import { say } from './messages.js';
import { groupBy } from './numbers.js';
import { within } from '../../schema/in-span.js';
import type { Operation, Unreachable } from './operation.js';
import { waysFrom, type Lane, type RowWays, type Setting } from './row-ways.js';

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
  allowance: Micrometres,
  derived: Derived,
): Found {
  const operations: Operation[] = [];
  const unreachable: Unreachable[] = [];
  for (const lane of lanesOf(bores, rows)) {
    const all = lane.lines.flatMap((line) => [...line.bores.values()]);
    const cannot = (of: readonly Bore[], { parameter, needed, reason }: Obstacle) =>
      unreachable.push({ panel: panel.key, bores: of, machine: drill.name, parameter, needed, reason });
    if (lane.row.pitch !== drill.pitch) {
      const needed = lane.row.pitch;
      const reason = say.pitch({ machine: drill.name, has: drill.pitch, needed });
      cannot(all, { parameter: 'pitch', needed, reason });
      continue;
    }
    const depth = travelFor(lane.row, allowance);
    if (!within(depth, drill.depth)) {
      const reason = say.rowDepth({ machine: drill.name, range: drill.depth, needed: depth });
      cannot(all, { parameter: 'depth', needed: depth, reason });
      continue;
    }
    for (const { lines, heads } of headsFor(lane, drill, usualSetback)) {
      const boresHere = lines.flatMap((line) => [...line.bores.values()]);
      if ('parameter' in heads) {
        cannot(boresHere, heads);
        continue;
      }
      const made = operationsFor(carcass, { panel, blank, drill, row: lane.row, depth, lines, derived, ...heads });
      if ('parameter' in made) cannot(boresHere, made);
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

type Made = { readonly operations: readonly Operation[] } | Obstacle;

/**
 * The operations of one lane under heads that are set: one where all strokes carry the same bits. They are set out from the
 * reference end wherever a stop allows, so that the rows of left and right panels stay level whatever their lengths; from
 * both ends only where a row is too long for one stroke and the panel cannot be moved along, or its stop not be lowered.
 */
function operationsFor(carcass: string, setting: Setting): Made {
  const reference = waysFrom(setting, 'reference-end');
  const found = [reference, waysFrom(setting, 'far-end')].flatMap((one) => ('ways' in one ? [one] : []));
  const tries = found.map((ways) => operationsOf(carcass, setting, ways));
  const good = tries.find((operations) => operations.every(standsAlone));
  if (good) return { operations: good };
  let split: readonly Operation[] | undefined;
  for (const ways of fromBothEnds(setting)) {
    const operations = operationsOf(carcass, setting, ways);
    if (operations.every(standsAlone)) return { operations };
    split ??= operations;
  }
  const held = tries[0] ?? split;
  if (held) return { operations: held };
  return 'ways' in reference ? { operations: [] } : reference;
}

function operationsOf(carcass: string, setting: Setting, { ways, other }: RowWays): readonly Operation[] {
  const operations: Operation[] = [];
  for (const way of ways) {
    // A run that begins at the stop bores holes for the pins of those after it that lie as it does.
    const first = operations.find(({ ways: [earlier] }) => earlier?.end === way.end);
    const onPins = setting.drill.indexPins === 'row' && way.strokes[0]?.moved !== 0;
    operations.push({
      carcass,
      panel: setting.panel.key,
      blank: setting.blank,
      machine: setting.drill,
      fence: setting.fence,
      height: null,
      depth: setting.depth,
      through: setting.row.through,
      pinsIn: onPins ? (first ?? null) : null,
      ways: other === null ? [way] : [way, other],
    });
  }
  return operations;
}

/** Some of the row from the reference end and the rest from the far end, wherever both go: the most even shares first. */
function* fromBothEnds(setting: Setting): Generator<RowWays> {
  const places = [...(setting.lines[0]?.bores.keys() ?? [])].sort((a, b) => a - b);
  const only = (kept: readonly Micrometres[]): Setting => ({
    ...setting,
    lines: setting.lines.map(({ u, bores }) => ({
      u,
      bores: new Map([...bores].filter(([place]) => kept.includes(place))),
    })),
  });
  const half = Math.ceil(places.length / 2);
  const shares = Array.from({ length: places.length - 1 }, (_, index) => index + 1);
  for (const near of shares.sort((a, b) => Math.abs(a - half) - Math.abs(b - half))) {
    const own = waysFrom(only(places.slice(0, near)), 'reference-end');
    if (!('ways' in own)) continue;
    const rest = waysFrom(only(places.slice(near)), 'far-end');
    if ('ways' in rest) yield { ways: [...own.ways, ...rest.ways], other: null };
  }
}
