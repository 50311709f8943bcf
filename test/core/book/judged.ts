import type { Cost, PatternTask } from '../../../shared-core/book/pattern.js';

/** What a load bores into a panel whose last spindle over wood is `room`, with its front edge at the left or the right stop. */
function boredBy(load: ReadonlySet<number>, spindles: number, room: number, hand: 'left' | 'right'): number[] {
  const places = Array.from({ length: Math.min(room, spindles - 1) + 1 }, (_, place) => place);
  return places.filter((place) => load.has(hand === 'left' ? place : spindles - 1 - place));
}

/**
 * Dowels and pitches behind the last ones, in all rooms; null where a room is bored unlike from left and right, or held badly.
 * @param mostInFront spindles that the first bore may stand behind the first place
 */
function judgedIn(
  rooms: readonly number[],
  weights: readonly number[] | undefined,
  load: ReadonlySet<number>,
  { spindles, longest, tail }: PatternTask,
  mostInFront: number,
): [number, number] | null {
  let [dowels, behind] = [0, 0];
  for (const [index, room] of rooms.entries()) {
    const bored = boredBy(load, spindles, room, 'left');
    if (String(bored) !== String(boredBy(load, spindles, room, 'right'))) return null;
    if (bored.length < (room > 0 && spindles > 1 ? 2 : 1) || bored[0]! > mostInFront) return null;
    const open = Math.min(room, spindles - 1) - bored.at(-1)!;
    if (open > tail || bored.some((place, at) => at > 0 && place - bored[at - 1]! > longest)) return null;
    dowels += bored.length * (weights?.[index] ?? 1);
    behind += open;
  }
  return [dowels, behind];
}

/** What two loads cost by the definition of the task; null where they do not serve it. */
export function judged(load: ReadonlySet<number>, beside: ReadonlySet<number>, task: PatternTask): Cost | null {
  const own = judgedIn(task.rooms, task.weights, load, task, 0);
  const backToBack = task.backToBack ?? [];
  if (own === null || backToBack.length === 0) return own && [...own, 0, 0];
  const other = [...beside].some((k) => load.has(k))
    ? null
    : judgedIn(backToBack, undefined, beside, task, Math.max(1, Math.floor(task.longest / 2)));
  return other && [...own, ...other];
}

/** The least cost of all loads that read the same from both ends, keep what is pinned, and suit, each tried. */
export function leastOfAll(task: PatternTask, suits: (load: ReadonlySet<number>) => boolean = () => true): Cost | null {
  const never = (load: ReadonlySet<number>): boolean => (task.never ?? []).some((k) => load.has(k));
  const keepsPins = (load: ReadonlySet<number>): boolean =>
    [...(task.pinned ?? [])].every(([k, there]) => load.has(k) === there);
  const halves = Array.from({ length: 2 ** Math.ceil(task.spindles / 2) }, (_, bits) => bits);
  const all = halves.map((bits) => loadOf(bits, task.spindles)).filter((load) => !never(load));
  let least: Cost | null = null;
  for (const load of all.filter((one) => one.has(0) && keepsPins(one) && suits(one)))
    for (const beside of task.backToBack?.length ? all : [new Set<number>()]) {
      const cost = judged(load, beside, task);
      if (cost && (!least || isBefore(cost, least))) least = cost;
    }
  return least;
}

/** The load that reads the same from both ends, by the bits of its near half. */
const loadOf = (bits: number, spindles: number): ReadonlySet<number> =>
  new Set(Array.from({ length: spindles }, (_, k) => k).filter((k) => bits & (1 << Math.min(k, spindles - 1 - k))));

function isBefore(a: Cost, b: Cost): boolean {
  for (const [index, part] of a.entries()) if (part !== b[index]) return part < b[index]!;
  return false;
}
