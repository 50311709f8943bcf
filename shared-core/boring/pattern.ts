import { evenCount, evenPlaces } from '../book/even.js';
import { mostMoved } from '../book/pattern.js';
import { extent, type Interval } from '../carcass/interval.js';
import type { SpindleLine } from '../carcass/spindle-line.js';
import type { Micrometres } from '../length/units.js';

export interface PatternWish {
  /** Where the two panels meet, from the carcass front toward the back. */
  readonly overlap: Interval;
  /** What a centre keeps from both ends of the overlap. */
  readonly edge: Micrometres;
  /** Greatest distance between neighbours. */
  readonly spacing: Micrometres;
  /** True where the usual places are taken from the other face of the same panel. */
  readonly stagger: boolean;
  /** How many there are to be, where the job says so. */
  readonly howMany?: number;
}

/**
 * Places for construction bores along the depth, from the carcass front, chosen from the spindles that the vertical head
 * really has: the first and the last that find room, and between them the fewest, evenly spread, that keep neighbours
 * within the spacing. Empty where not even one finds room.
 * A panel that starts whole pitches behind the front takes the same spindles as one at the front, counted from its own
 * front edge. One too narrow for two places, or left with fewer by the end of the line, takes those in front of its first
 * spindle too: the fence is then set nearer. One that is set back keeps clear of what the head for ends cannot bore so near to
 * its front edge, while two places remain.
 * Where the rear would be left open behind a short line, the line goes on as far as fence and stops reach, over twice its length at
 * most: the joint then takes a second set-up.
 * One that lies beyond the last spindle is bored as if the line went on: a rule says that it is past the reach.
 * Where the shop shares one load among all depths, the joint takes what that load bores in its wood, unless that holds it badly.
 * Where the job says how many there are to be, so many are spread evenly instead, as far as there are spindles.
 * Staggered, each place moves to the next free spindle behind it, or in front of it where there is none.
 */
export const patternPlaces = (line: SpindleLine, wish: PatternWish): readonly Micrometres[] =>
  choosePlaces(line, wish).places;

/** The same, and whether they are those of the load that the shop shares. */
export function choosePlaces(line: SpindleLine, wish: PatternWish): Chosen {
  const { first, pitch } = line;
  const room = { from: wish.overlap.from + wish.edge, to: wish.overlap.to - wish.edge };
  if (extent(room) < 0) return NOWHERE;

  const datum = wish.overlap.from % pitch === 0 ? wish.overlap.from / pitch : 0;
  const nearest = Math.ceil((room.from - first) / pitch);
  const furthest = Math.floor((room.to - first) / pitch);
  const onLine = nearest < line.count ? Math.min(furthest, line.count - 1) : furthest;
  const isOpen = wish.overlap.to - first - onLine * pitch > wish.spacing;
  const last = isOpen ? Math.max(onLine, Math.min(furthest, line.reached - 1, 2 * line.count - 1)) : onLine;
  const reached = Math.max(nearest, Math.ceil((wish.overlap.from + line.nearest - first) / pitch));
  const least = reached < last ? reached : nearest;
  const usual = Math.max(least, datum);
  const start = usual < last ? usual : least;
  if (start > last) return NOWHERE;

  const longest = Math.max(1, Math.floor(wish.spacing / pitch));
  if (wish.howMany !== undefined) {
    const even = evenCount(start, last, wish.howMany);
    const places = wish.stagger ? staggered(even, start, last) : even;
    return { places: places.map((k) => first + k * pitch), isShared: false };
  }
  const run: Run = { start, last, longest, tail: wish.overlap.to - wish.spacing - first };
  const onLoad = placesOnLoad(line, run, datum, wish.stagger);
  const places = onLoad.taken ?? ownPlaces(onLoad.unmoved ?? evenPlaces(start, last, longest), run, wish.stagger);
  return { places: places.map((k) => first + k * pitch), isShared: onLoad.taken !== null };
}

interface Chosen {
  readonly places: readonly Micrometres[];
  readonly isShared: boolean;
}

const NOWHERE: Chosen = { places: [], isShared: false };

/** What a joint asks of the spindles that it has. */
interface Run {
  readonly start: number;
  readonly last: number;
  readonly longest: number;
  /** The last place stands at least so far behind the first place of the line. */
  readonly tail: Micrometres;
}

/** What a joint takes of the shared load, null where that holds it badly; `unmoved` where it would but for the stagger. */
function placesOnLoad(
  { shared, pitch }: SpindleLine,
  { start, last, longest, tail }: Run,
  datum: number,
  stagger: boolean,
): { taken: readonly number[] | null; unmoved: readonly number[] | null } {
  const within = (load: readonly number[]): readonly number[] =>
    load.map((k) => k + datum).filter((k) => start <= k && k <= last);
  const holds = (places: readonly number[]): boolean =>
    places.length >= Math.min(2, last - start + 1) &&
    places.at(-1)! * pitch >= tail &&
    places.every((k, index) => index === 0 || k - places[index - 1]! <= longest);

  const bored = within(shared?.load ?? []);
  const unmoved = bored[0] === start && holds(bored) ? bored : null;
  if (!stagger || unmoved === null) return { taken: stagger ? null : unmoved, unmoved };
  const beside = within(shared?.beside ?? []);
  const isNear = beside.length > 0 && beside[0]! <= start + mostMoved({ longest });
  return { taken: isNear && holds(beside) ? beside : null, unmoved };
}

const ownPlaces = (chosen: readonly number[], { start, last }: Run, stagger: boolean): readonly number[] =>
  stagger ? staggered(chosen, start, last) : chosen;

/** Spindles beside the chosen ones; the chosen ones themselves where all are taken (the bores then collide, and a rule says so). */
function staggered(chosen: readonly number[], start: number, last: number): readonly number[] {
  const free = (k: number): boolean => start <= k && k <= last && !chosen.includes(k);
  const beside = chosen.map((k) => [k + 1, k - 1].find(free)).filter((k) => k !== undefined);
  return beside.length > 0 ? [...new Set(beside)].sort((a, b) => a - b) : chosen;
}
