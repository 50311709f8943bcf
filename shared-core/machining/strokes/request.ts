/** A row to bore and the head that bores it. All places count whole pitches along the row's pitch grid. */
export interface StrokeRequest {
  /** The places that want a hole, in any order; a place named twice is one hole. Usually 0..n-1. */
  readonly holes: readonly number[];
  /** Spindles of the head, one pitch apart. */
  readonly spindles: number;
  /**
   * Where the first spindle can stand: a list, or all places from `from` to `to`. Without it the head can stand anywhere
   * over the row, also with spindles past either end of it.
   */
  readonly starts?: readonly number[] | { readonly from: number; readonly to: number };
  /** Whether a hole may be met again by a later stroke. Otherwise each is bored once. */
  readonly meetsHolesTwice?: boolean;
  /** The spindles that carry a bit before the row begins, where that is known. */
  readonly loaded?: readonly boolean[];
}

/** Why a row cannot be bored, or a request cannot be read. */
export interface StrokeProblem {
  readonly kind: 'problem';
  readonly reason: 'no-spindles' | 'not-a-place' | 'row-too-long' | 'loaded-spindles' | 'hole-out-of-reach';
  /** The holes out of reach, ascending; empty for the other reasons. */
  readonly holes: readonly number[];
  readonly message: string;
}

/** A request that has been checked. */
export interface Row {
  /** Ascending, each once, at least one. */
  readonly holes: readonly number[];
  readonly spindles: number;
  /** Ascending, each once; only places from which some wanted hole is reached. */
  readonly starts: readonly number[];
  readonly twice: boolean;
  readonly loaded: readonly boolean[] | null;
}

/** Bounds of what is searched: far more than any machine or panel has. */
export const MOST_SPINDLES = 200;
export const MOST_HOLES = 2000;
export const LONGEST_ROW = 10_000;

/** Checks a request: a row with at least one hole, null where no hole is wanted, or what is wrong. */
export function readRow(request: StrokeRequest): Row | StrokeProblem | null {
  const { spindles, starts, loaded } = request;
  if (!Number.isInteger(spindles) || spindles < 1 || spindles > MOST_SPINDLES) {
    return problem('no-spindles', `a head has 1 to ${MOST_SPINDLES} spindles, not ${spindles}`);
  }
  const named = [
    ...request.holes,
    ...(starts === undefined ? [] : 'from' in starts ? [starts.from, starts.to] : starts),
  ];
  const wrong = named.find((place) => !Number.isSafeInteger(place));
  if (wrong !== undefined)
    return problem('not-a-place', `${wrong} is no place on the pitch grid: places are whole numbers`);
  if (loaded !== undefined && loaded.length !== spindles) {
    return problem(
      'loaded-spindles',
      `${loaded.length} spindles are said to be loaded or empty, but the head has ${spindles}`,
    );
  }
  const holes = ascending(request.holes);
  if (holes.length === 0) return null;
  const first = holes[0]!;
  const last = holes[holes.length - 1]!;
  if (holes.length > MOST_HOLES || last - first >= LONGEST_ROW) {
    return problem(
      'row-too-long',
      `${holes.length} holes over ${last - first} pitches; at most ${MOST_HOLES} over ${LONGEST_ROW} can be planned`,
    );
  }
  const reaching = startsOver(first - spindles + 1, last, starts).filter((start) =>
    holes.some((hole) => hole >= start && hole < start + spindles),
  );
  const missed = holes.filter((hole) => !reaching.some((start) => hole >= start && hole < start + spindles));
  if (missed.length > 0) {
    return {
      ...problem(
        'hole-out-of-reach',
        `no place of the head reaches ${missed.length === 1 ? 'hole' : 'holes'} ${missed.join(', ')}` +
          (reaching.length === 0
            ? ''
            : `; it reaches from ${reaching[0]!} to ${reaching[reaching.length - 1]! + spindles - 1}`),
      ),
      holes: missed,
    };
  }
  return { holes, spindles, starts: reaching, twice: request.meetsHolesTwice === true, loaded: loaded ?? null };
}

function startsOver(least: number, most: number, starts: StrokeRequest['starts']): number[] {
  if (starts !== undefined && !('from' in starts)) return ascending(starts).filter((s) => s >= least && s <= most);
  const from = Math.max(least, starts?.from ?? least);
  const to = Math.min(most, starts?.to ?? most);
  return Array.from({ length: Math.max(0, to - from + 1) }, (_, index) => from + index);
}

function ascending(places: readonly number[]): number[] {
  return [...new Set(places)].sort((a, b) => a - b);
}

function problem(reason: StrokeProblem['reason'], message: string): StrokeProblem {
  return { kind: 'problem', reason, holes: [], message };
}
