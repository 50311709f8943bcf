import type { Micrometres } from '../length/units.js';
import { besideLoad } from './beside.js';
import { combined } from './combined.js';
import { isLess, sharedPattern, type Cost, type Pattern, type PatternTask } from './pattern.js';
import { patternWithRails, rearOnLoad } from './rails.js';
import type { LoadTask, UsualDepth } from './usual.js';
import { inBatch, secondsOf, secondsOfOwn, type Part } from './weigh.js';

/** Spindles that carry a bit, counted from a front edge. */
export interface SharedLoad {
  readonly load: readonly number[];
  /** The same for joints that stand back to back with joints of the load. */
  readonly beside: readonly number[];
}

/** A load with the usual depths that it is for. */
export interface BookLoad extends SharedLoad {
  readonly depths: readonly Micrometres[];
  /** Whether some of these usually have rails. */
  readonly hasRails: boolean;
}

/** The loads of a shop. */
export interface Book {
  /** None where each joint takes its own places, since that takes a batch less time. */
  readonly loads: readonly BookLoad[];
  /** Seconds of a batch: with these loads, and with those that take the fewest set-ups; null where no batch is told. */
  readonly weighed: { readonly seconds: number; readonly fewestSetUps: number } | null;
}

/**
 * The fewest loads that serve all usual joints, each in both ends and with no bit over the wood behind a last place; of as few
 * those that rear rails meet, then those that leave a load for the same joints back to back, then those with the fewest dowels.
 * Where no loads serve, one that may bore behind the last places.
 * Where the task has times, what takes a batch of the shop clearly less of them: places of each joint's own, or of all ways to
 * share out the depths of the batch among loads, each the one with the fewest dowels, the one that takes least.
 * @returns null where there is none
 */
export function bookFor(task: LoadTask): Book | null {
  const { own, depths, times } = task;
  if (own) {
    const load = { load: own, beside: besideLoad(own, task), depths: depths.map(({ depth }) => depth), hasRails: true };
    return { loads: [load], weighed: null };
  }
  const few = leastOf(choicesOf({ ...task, times: null }), byNumber) ?? lastResort(task);
  if (few === null) return null;
  const bookOf = (parts: readonly Part[], weighed: Book['weighed']): Book => ({
    loads: parts.map((part) => loadOf(part, task)),
    weighed,
  });
  if (times === null) return bookOf(few, null);

  const seconds = (parts: readonly Part[]): number => secondsOf(parts, task, times);
  const fewestSetUps = seconds(few);
  const other = leastOf(choicesOf(forBatch(task)), (parts) => [seconds(parts), ...byNumber(parts)]);
  const least = Math.min(other ? seconds(other) : Infinity, secondsOfOwn(task, times));
  if (least > WORTHWHILE * fewestSetUps) return bookOf(few, { seconds: fewestSetUps, fewestSetUps });
  const isOwn = other === null || seconds(other) > least;
  return bookOf(isOwn ? [] : other, { seconds: least, fewestSetUps });
}

/** The time of a batch is an estimate: what takes hardly less of it is not worth more set-ups. */
const WORTHWHILE = 0.95;

/** The task of the joints that a batch has: with the usual back, and in rails. */
function forBatch(task: LoadTask): LoadTask {
  const rooms = ({ room, hasRails }: UsualDepth): readonly number[] =>
    hasRails && task.railRoom >= 0 ? [room, task.railRoom] : [room];
  return { ...task, depths: inBatch(task).map((depth) => ({ ...depth, rooms: rooms(depth), deep: [depth.room] })) };
}

/** Of equal ones the first. */
function leastOf(
  choices: readonly (readonly Part[])[],
  rank: (parts: readonly Part[]) => readonly number[],
): readonly Part[] | null {
  let least: { parts: readonly Part[]; key: readonly number[] } | undefined;
  for (const parts of choices) {
    const key = rank(parts);
    if (isLess(key, least?.key)) least = { parts, key };
  }
  return least?.parts ?? null;
}

/** Loads, then sides with a line of their own for rails, then loads that leave none beside them, then dowels. */
function byNumber(parts: readonly Part[]): readonly number[] {
  const counted = (is: (part: Part) => boolean): number => parts.filter(is).length;
  const cost = (index: 0 | 1 | 2 | 3): number => parts.reduce((sum, { pattern }) => sum + pattern.cost[index], 0);
  return [
    parts.length,
    counted(({ railsMeet }) => !railsMeet),
    counted(({ pattern }) => pattern.beside.length === 0),
    ...([0, 1, 2, 3] as const satisfies readonly (keyof Cost)[]).map(cost),
  ];
}

/** Every way to serve the usual depths by loads. Where no times are told, of ways that take more loads than others none. */
function choicesOf(task: LoadTask): readonly (readonly Part[])[] {
  const known = new Map<string, readonly Part[]>();
  const partsFor = (group: readonly UsualDepth[]): readonly Part[] => {
    const key = group.map(({ depth }) => depth).join();
    const before = known.get(key);
    if (before) return before;
    const parts = waysToServe(group, task);
    known.set(key, parts);
    return parts;
  };
  const found: (readonly Part[])[] = [];
  const all = partitions(task.depths).sort((a, b) => a.length - b.length);
  for (const groups of all) {
    if (task.times === null && found.length > 0 && groups.length > found[0]!.length) break;
    found.push(...combined(groups.map(partsFor)));
  }
  return found;
}

/** The loads of least cost for some depths, over as many spindles as can be: one that rear rails meet, and one regardless. */
function waysToServe(depths: readonly UsualDepth[], task: LoadTask): readonly Part[] {
  const joints = patternTask(depths, task);
  const rears = depths.flatMap((one) => (one.rears ? [one.rears] : []));
  for (const spindles of spansOf(joints)) {
    const both = { ...joints, spindles, never: depths.flatMap(({ behind }) => behind) };
    const alone = { ...both, backToBack: [] };
    const rails = { span: task.span, rears };
    const met = patternWithRails(both, rails) ?? patternWithRails(alone, rails);
    const free = sharedPattern(both) ?? sharedPattern(alone);
    const parts = [
      met && { depths, pattern: met, railsMeet: true },
      free && { depths, pattern: free, railsMeet: meets(free) },
    ];
    if (met || free) return parts.filter((part) => part !== null);
  }
  return [];

  function meets({ load }: Pattern): boolean {
    return rears.every((places) => rearOnLoad(load, places, task.span) !== null);
  }
}

function patternTask(
  depths: readonly UsualDepth[],
  { spindles, longest, tail, railRoom, times }: LoadTask,
): PatternTask {
  const rooms = [...new Set(depths.flatMap((one) => one.rooms))];
  const inBatch = (room: number): number =>
    depths.reduce(
      (sum, { room: own, ends }) => sum + (own === room ? ends.full : 0) + (railRoom === room ? ends.rails : 0),
      0,
    );
  return {
    spindles,
    longest,
    tail,
    rooms,
    ...(times && { weights: rooms.map(inBatch) }),
    backToBack: [...new Set(depths.flatMap(({ deep }) => deep))],
  };
}

/**
 * How many spindles a load may lie over, all of the head first. A head whose last spindle would bore wood behind a last place
 * has a load over fewer: the joints still share one line in the faces, but each end has a set-up of its own.
 */
function spansOf({ spindles, rooms, tail }: PatternTask): readonly number[] {
  const least = Math.max(1, Math.max(...rooms) - tail + 1);
  return Array.from({ length: Math.max(1, spindles - least + 1) }, (_, unused) => spindles - unused);
}

/** One load for all depths that may bore wood behind the last places. */
function lastResort(task: LoadTask): readonly Part[] | null {
  const { depths } = task;
  const joints = patternTask(depths, task);
  const pattern = sharedPattern(joints) ?? sharedPattern({ ...joints, backToBack: [] });
  return pattern && [{ depths, pattern, railsMeet: false }];
}

function loadOf({ depths, pattern: { load, beside } }: Part, task: LoadTask): BookLoad {
  const never = depths.flatMap(({ behind }) => behind);
  return {
    load,
    beside: beside.length > 0 ? beside : besideLoad(load, { ...task, never }),
    depths: depths.map(({ depth }) => depth),
    hasRails: depths.some(({ hasRails }) => hasRails),
  };
}

/** Every way to share things out among groups. */
function partitions<T>(things: readonly T[]): (readonly (readonly T[])[])[] {
  return things.reduce<(readonly (readonly T[])[])[]>(
    (ways, thing) =>
      ways.flatMap((groups) => [
        ...groups.map((group, index) => groups.with(index, [...group, thing])),
        [...groups, [thing]],
      ]),
    [[]],
  );
}
