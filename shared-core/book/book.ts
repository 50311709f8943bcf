import type { Derived } from '../derived/derived.js';
import type { Surroundings } from '../fittings/fitting.js';
import { kindOf, type Fitting } from '../fittings/kinds.js';
import { half, type Micrometres } from '../length/units.js';
import { takenByBack, USUAL_BACK } from '../shop/back.js';
import type { HorizontalHead, Shop, VerticalHead } from '../shop/model.js';
import { besideLoad } from './beside.js';
import { sharedPattern, type Pattern, type PatternTask } from './pattern.js';
import { patternWithRails, railSpan, rearsOfRail, type RailTask } from './rails.js';

/** Spindles that carry a bit, counted from a front edge. */
export interface SharedLoad {
  readonly load: readonly number[];
  /** The same for joints that stand back to back with joints of the load. */
  readonly beside: readonly number[];
}

/**
 * The one load of bits that serves the usual joints of a shop on both of its heads; null where the heads have unlike pitches,
 * or no load serves all.
 * Usual joints are those of the usual fitting in the usual depths, with and without the usual back, and in rails. Where one
 * can be had, it is a load with no bit over the wood behind the last place of a usual joint, one that rear rails meet too where
 * bores may stay empty, and one that leaves a load for the same joints back to back, in this order. A load that the owner wrote
 * is taken as it stands.
 */
export function sharedLoad(faces: VerticalHead, ends: HorizontalHead, shop: Shop, derived: Derived): SharedLoad | null {
  const task = loadTask(faces, ends, shop);
  return task && derived.answer(loadFor, task, JSON.stringify(task));
}

/** All of a shop that bears on its load. */
interface LoadTask {
  readonly own: readonly number[] | null;
  readonly plain: PatternTask;
  readonly behind: readonly number[];
  readonly rails: RailTask;
}

function loadTask(faces: VerticalHead, ends: HorizontalHead, shop: Shop): LoadTask | null {
  const fitting = shop.fittings.get(shop.habits.joint);
  if (faces.pitch !== ends.pitch || fitting === undefined) return null;
  const most = Math.min(faces.spindles, ends.spindles) - 1;
  const measures = measuresOf(fitting, shop);
  const { rooms, deep, behind } = roomsOf(measures, faces.pitch, most, shop);
  const own = shop.habits.sharedLoad?.map((spindle) => spindle - 1).filter((k) => k < ends.spindles);
  const plain: PatternTask = {
    spindles: ends.spindles,
    rooms,
    backToBack: deep,
    longest: Math.max(1, Math.floor(shop.habits.dowelSpacing / faces.pitch)),
    // A last bore is nearer to the back than the spacing also where the wood goes on for all but a pitch.
    tail: Math.max(0, Math.floor((shop.habits.dowelSpacing - measures.edge) / faces.pitch) - 1),
  };
  return {
    own: own?.toSorted((a, b) => a - b) ?? null,
    plain,
    behind,
    rails: railsOf(faces.pitch, most, shop),
  };
}

/**
 * How many spindles the load may lie over, all of the head first. A head whose last spindle would bore wood behind a last place
 * has a load over fewer: the joints still share one line in the faces, but each end has a set-up of its own.
 */
function spansOf({ spindles, rooms, tail }: PatternTask): readonly number[] {
  const least = Math.max(1, Math.max(...rooms) - tail + 1);
  return Array.from({ length: Math.max(1, spindles - least + 1) }, (_, unused) => spindles - unused);
}

function loadFor({ own, plain, behind, rails }: LoadTask): SharedLoad | null {
  if (own) return { load: own, beside: besideLoad(own, plain) };
  const found =
    firstOf(spansOf(plain), (spindles) => cleanLoad({ ...plain, never: behind, spindles }, rails)) ??
    sharedPattern(plain) ??
    sharedPattern({ ...plain, backToBack: [] });
  if (found === null) return null;
  const { load, beside } = found;
  return { load, beside: beside.length > 0 ? beside : besideLoad(load, { ...plain, never: behind }) };
}

/** The best load with no bit over wood behind a last place: one that rails meet, and that leaves one beside it, where it can be had. */
function cleanLoad(task: PatternTask, rails: RailTask): Pattern | null {
  const alone = { ...task, backToBack: [] };
  return patternWithRails(task, rails) ?? patternWithRails(alone, rails) ?? sharedPattern(task) ?? sharedPattern(alone);
}

/** The first answer to any of these. */
function firstOf<T, R>(list: readonly T[], ask: (one: T) => R | null): R | null {
  for (const one of list) {
    const answer = ask(one);
    if (answer !== null) return answer;
  }
  return null;
}

/** What is left of a depth in front of the usual back. */
export function usualClearDepth(depth: Micrometres, { boards, habits }: Shop): Micrometres {
  return depth - takenByBack(USUAL_BACK, boards.get(habits.backBoard)?.thickness ?? 0, habits.backInset);
}

interface Measures {
  /** What a place keeps from the rear end of its joint. */
  readonly edge: Micrometres;
  /** Half the bore that is made there. */
  readonly radius: Micrometres;
}

function measuresOf(fitting: Fitting, { fittings, habits }: Shop): Measures {
  const around: Surroundings = {
    glueGap: habits.glueGap,
    leastWall: habits.leastWall,
    named: (name) => fittings.get(name) ?? fitting,
  };
  const { joint } = kindOf(fitting);
  const anywhere = { side: 'face', index: 0, count: 2, faceThickness: 0, endThickness: 0, depth: null } as const;
  const diameters = joint.holes(fitting, anywhere, around).map(({ diameter }) => diameter);
  return { edge: joint.edgeDistance(fitting, around), radius: half(Math.max(0, ...diameters)) };
}

/**
 * The last places of the usual joints, those of them that are no rails', and the spindles over wood behind them; all at most
 * the last spindle of both heads.
 */
function roomsOf(
  { edge, radius }: Measures,
  pitch: Micrometres,
  most: number,
  shop: Shop,
): { rooms: readonly number[]; deep: readonly number[]; behind: readonly number[] } {
  const { firstDowel, railWidth, sizes } = shop.habits;
  const lastIn = (extent: Micrometres): number => Math.floor((extent - firstDowel) / pitch);
  const depths = Object.values(sizes).map(({ depth }) => depth);
  const clear = depths.map((depth) => [usualClearDepth(depth, shop), depth] as const);
  const whole = [railWidth, ...depths].map((depth) => [depth, depth] as const);
  const behind = [...clear, ...whole].flatMap(([room, wood]) => {
    const [from, to] = [lastIn(room - edge) + 1, lastIn(wood + radius - 1)];
    return Array.from({ length: Math.max(0, Math.min(to, most) - from + 1) }, (_, index) => from + index);
  });
  // A rail always meets the face head in front; a deep panel may end behind the last spindle of either head.
  const within = (extents: readonly Micrometres[]): readonly number[] => {
    const rooms = extents.map((room) => Math.min(lastIn(room - edge), most)).filter((room) => room >= 0);
    return [...new Set(rooms)];
  };
  return {
    rooms: within([...clear.map(([room]) => room), railWidth, ...depths]),
    // Rails never stand back to back.
    deep: within([...clear.map(([room]) => room), ...depths]),
    behind: [...new Set(behind)].filter((k) => k > 0),
  };
}

/** Only where bores may stay empty can a side with rails share its load with one that a full panel meets. */
function railsOf(pitch: Micrometres, most: number, shop: Shop): RailTask {
  const { firstDowel, railWidth, sizes, spareHoles } = shop.habits;
  const depths = spareHoles ? [...new Set([sizes.base.depth, sizes.forDrawers.depth])] : [];
  const span = railSpan(railWidth, firstDowel, pitch);
  const rearsIn = (depth: Micrometres): readonly number[] =>
    rearsOfRail(usualClearDepth(depth, shop), railWidth, pitch).filter((rear) => rear + span <= most);
  return { span, rears: depths.map(rearsIn) };
}
