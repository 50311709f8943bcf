import { fewestStrokes } from './cover.js';
import { readRow, type Row, type StrokeProblem, type StrokeRequest } from './request.js';
import { StrokeSearch } from './search.js';
import { weigh } from './weights.js';

/** One descent of the head. */
export interface Stroke {
  /** Where the first spindle stands, in pitches on the row's grid. */
  readonly start: number;
  /** For each spindle, whether it carries a bit. */
  readonly loaded: readonly boolean[];
  /** The places bored, ascending. */
  readonly bores: readonly number[];
  /** Index move before this stroke, in pitches; 0 before the first. */
  readonly move: number;
  /**
   * Spindles (counted from 0) to load and to empty before this stroke. Before the first: against what `loaded` of the
   * request says, or against an empty head where it says nothing.
   */
  readonly load: readonly number[];
  readonly empty: readonly number[];
}

export interface StrokePlan {
  readonly kind: 'plan';
  /** In the order to run, along the row. None where no hole is wanted. */
  readonly strokes: readonly Stroke[];
  /** Spindles loaded or emptied between strokes. */
  readonly toolChanges: number;
  /** Spindles loaded or emptied before the first stroke. */
  readonly loading: number;
  readonly indexMoves: number;
  /** All index moves together, in pitches. */
  readonly travel: number;
  /** Holes that two strokes bore, ascending. */
  readonly metTwice: readonly number[];
  /** Whether the strokes lie evenly on both sides of the row's middle hole, so that a centre spindle can stand on it. */
  readonly centred: boolean;
  /** False only where the search was cut short: the strokes are still the fewest, but the rest may not be the best. */
  readonly proven: boolean;
}

/**
 * How to bore a row with a head of S spindles at the row's own pitch.
 *
 * Every wanted hole is bored, nothing else is, and each is bored once unless `meetsHolesTwice`. The strokes go along the
 * row in one direction, away from the end it is measured from. Among all such plans, one with, in this order,
 * 1. the fewest strokes,
 * 2. the fewest spindles loaded or emptied between strokes (`toolChanges`),
 * 3. where `loaded` is given, the fewest loaded or emptied before the first stroke (`loading`),
 * 4. the fewest index moves (one less than the strokes) and the least travel,
 * 5. the fewest holes met twice,
 * 6. strokes that lie evenly about the middle (`centred`): for S odd and a row that has a middle hole,
 * 7. the smallest starts, compared one after the other.
 * All of it is exact; `proven` says so. A pair of heads that bore a front and a rear row in one stroke are both loaded as
 * this plan says.
 *
 * Worked by hand, each checked by a test:
 * - 46 holes, 23 spindles: two strokes at 0 and 23, all loaded, one index move of 23 pitches.
 * - 40 holes, 23 spindles: two strokes of 20, the same 20 spindles, one move of 20 pitches, no tool change. All 23 in
 *   the first stroke would leave 17 for the second and cost six changes.
 * - 41 holes, 23 spindles: 41 is odd, so two equal strokes cannot share it: 21 and 20, one change. Where holes may be
 *   met twice, no change: 21 and 21 from places 0 and 20, with one met twice; or, where the head can stand anywhere, all
 *   23 from 0 and 18, since that is less travel, with five met twice.
 * - 63 holes, 23 spindles: three strokes of 21. Spindles 1 to 21 are loaded (0 and 22 empty), so that the centre
 *   spindle 11 of the second stroke stands on the middle hole 31: starts -1, 20, 41, centred.
 * - 24 holes, 23 spindles: every second spindle is loaded and the head moves on by one pitch: 12 and 12, no change, and
 *   11 pitches less of travel than with 12 neighbouring spindles.
 * - Holes 0 to 9 without 4, five spindles, starts 0 and 5 only: spindle 4 must be loaded for the second stroke: one change.
 * - Holes 0 to 9, five spindles, starts 0 to 4 only: hole 9 is out of reach, which is a problem, not a plan.
 */
export function planStrokes(request: StrokeRequest): StrokePlan | StrokeProblem {
  const row = readRow(request);
  if (row === null) return describe([], [], null, true);
  if ('kind' in row) return row;
  const cover = fewestStrokes(row);
  const search = new StrokeSearch(row, cover, weigh(row));
  let found = search.best();
  const mirror = mirrorOf(row);
  if (mirror !== null && found.proven && !liesEvenly(found.starts, mirror)) {
    const even = search.evenly(mirror, found.cost);
    if (even === 'cut-short') found = { ...found, proven: false };
    else if (even !== 'none') found = even;
  }
  return describe(found.starts, search.loaded(found.starts), row, found.proven);
}

/** What a start and its mirror image about the row's middle hole sum to; null where there is no such hole or spindle. */
function mirrorOf(row: Row): number | null {
  const ends = row.holes[0]! + row.holes[row.holes.length - 1]!;
  return row.spindles % 2 === 1 && ends % 2 === 0 ? ends - (row.spindles - 1) : null;
}

function liesEvenly(starts: readonly number[], mirror: number): boolean {
  return starts.every((start, index) => start + starts[starts.length - 1 - index]! === mirror);
}

function describe(
  starts: readonly number[],
  loaded: readonly (readonly boolean[])[],
  row: Row | null,
  proven: boolean,
): StrokePlan {
  const bored = new Map<number, number>();
  const strokes = starts.map((start, index): Stroke => {
    const now = loaded[index]!;
    const earlier = index > 0 ? loaded[index - 1]! : (row?.loaded ?? []);
    const spindles = now.map((_, spindle) => spindle);
    const bores = spindles.filter((spindle) => now[spindle]).map((spindle) => start + spindle);
    for (const place of bores) bored.set(place, (bored.get(place) ?? 0) + 1);
    return {
      start,
      loaded: now,
      bores,
      move: index > 0 ? start - starts[index - 1]! : 0,
      load: spindles.filter((spindle) => now[spindle] && earlier[spindle] !== true),
      empty: spindles.filter((spindle) => !now[spindle] && earlier[spindle] === true),
    };
  });
  const mirror = row === null ? null : mirrorOf(row);
  const changes = strokes.map(({ load, empty }) => load.length + empty.length);
  return {
    kind: 'plan',
    strokes,
    toolChanges: changes.slice(1).reduce((sum, count) => sum + count, 0),
    loading: changes[0] ?? 0,
    indexMoves: Math.max(0, strokes.length - 1),
    travel: strokes.reduce((sum, { move }) => sum + move, 0),
    metTwice: [...bored].filter(([, times]) => times > 1).map(([place]) => place).sort((a, b) => a - b), // prettier-ignore
    centred: mirror !== null && liesEvenly(starts, mirror),
    proven,
  };
}
