import { described } from '../../machining/described.js';
import type { Row } from '../../boring/model.js';
import type { Panel } from '../../carcass/model.js';
import type { Micrometres } from '../../length/units.js';
import { blankOf } from '../../machining/blank.js';
import { replayPanel, type ReplayedHole } from '../../machining/replay/replay.js';
import type { Run, SetUp, Step } from '../../machining/set-up.js';

/** How the machine makes one row of a panel, seen through the replay. */
export interface RowStrokes {
  readonly strokes: readonly RowStroke[];
  /** Lengths of the index moves, in order. */
  readonly moves: readonly Micrometres[];
  /** Whether the bits change between its strokes, so that it takes more than one set-up. */
  readonly setUps: number;
  /** The strokes lie evenly about the middle hole of the row, so that a centre spindle can stand on it. */
  readonly centred: boolean;
}

export interface RowStroke {
  readonly setUp: SetUp;
  readonly step: Step;
}

/** The strokes that make a row; null where no set-up makes it. Set-ups and steps in the order of the list. */
export function rowStrokes(
  setUps: readonly SetUp[],
  carcass: string,
  panel: Panel,
  row: Row,
  bores: ReadonlySet<string>,
): RowStrokes | null {
  const made = setUps.flatMap((setUp) =>
    setUp.runs
      .filter((run: Run) => run.carcass === carcass && run.panel === panel.key)
      .flatMap(({ steps }) =>
        steps.flatMap((step, index) =>
          step.holes.some(({ bore }) => bores.has(bore)) ? [{ setUp, step, index }] : [],
        ),
      ),
  );
  if (made.length === 0) return null;
  const moves: Micrometres[] = [];
  made.forEach(({ setUp, step }, index) => {
    const before = made[index - 1];
    const from = before?.setUp === setUp && before.step.stop === step.stop ? before.step.moved : 0;
    if (step.moved !== from) moves.push(Math.abs(step.moved - from));
  });
  return {
    strokes: made,
    moves,
    setUps: new Set(made.map(({ setUp }) => setUp)).size,
    centred: isCentred(setUps, carcass, panel, row),
  };
}

/** Where the middle spindle of each stroke stands along the panel, against the middle hole of the row. */
function isCentred(setUps: readonly SetUp[], carcass: string, panel: Panel, row: Row): boolean {
  const replay = replayPanel(setUps, carcass, panel.key, blankOf(panel));
  if (!replay.ok || row.count % 2 === 0) return false;
  const holes = replay.holes.filter(
    ({ face, u, v }) => face === row.face && u === row.u && (v - row.offset) % row.pitch === 0,
  );
  const strokes = new Map<string, ReplayedHole[]>();
  for (const hole of holes) {
    const key = `${hole.setUp} ${hole.step}`;
    strokes.set(key, [...(strokes.get(key) ?? []), hole]);
  }
  const middles: Micrometres[] = [];
  for (const stroke of strokes.values()) {
    const machine = setUps.find(({ id }) => id === stroke[0]!.setUp)!.machine;
    const { manyHeads, onEachHead } = described(machine);
    const middle = manyHeads ? middleOf(stroke, onEachHead, row.pitch) : null;
    if (middle === null) return false;
    middles.push(middle);
  }
  middles.sort((a, b) => a - b);
  const mirror = 2 * row.offset + (row.count - 1) * row.pitch;
  return middles.every((middle, index) => middle + middles[middles.length - 1 - index]! === mirror);
}

/** Null where the head has no middle spindle, or one hole does not tell which way it lies. */
function middleOf(holes: readonly ReplayedHole[], spindles: number, pitch: Micrometres): Micrometres | null {
  const [a, b] = [holes[0]!, holes.at(-1)!];
  if (spindles % 2 === 0 || a.spindle === b.spindle) return null;
  const way = Math.sign((b.v - a.v) * (b.spindle - a.spindle));
  return a.v + way * ((spindles - 1) / 2 - a.spindle) * pitch;
}
