/** What a pattern of spindles has to serve; all in whole pitches from the first place of a joint. */
export interface PatternTask {
  /** Spindles of the head for ends. */
  readonly spindles: number;
  /** Last spindle over wood, joint by joint of those that are usual; 0 where there is room for one alone. */
  readonly rooms: readonly number[];
  /** Greatest distance between neighbours. */
  readonly longest: number;
  /** Greatest distance from the last bore of a joint to the last spindle over wood. */
  readonly tail: number;
}

/** Dowels in all usual joints, then pitches behind their last bores. Sums of costs compare as their parts do. */
type Cost = readonly [dowels: number, behind: number];

/**
 * The spindles that carry a bit, so that one load serves every room from either hand: what lies over wood is bored, what lies
 * over air does nothing, and the load reads the same from both ends of the head. Spindle 0 carries one. A room for two gets two.
 * Of all such loads it has the fewest dowels in the rooms together, then the fewest pitches behind the last ones.
 * A shortest path: each step of the near half is made in the far half too, and what both cost depends on the step alone.
 * @returns null where no load serves all rooms.
 */
export function sharedPattern({ spindles, rooms, longest, tail }: PatternTask): readonly number[] | null {
  if (spindles < 1) return null;
  const last = spindles - 1;
  const reached = rooms.map((room) => Math.min(room, last));

  const bit = (k: number): number => reached.filter((room) => k <= room).length;
  const bits = (k: number): number => bit(k) + (k === last - k ? 0 : bit(last - k));
  /** Pitches left open where a room ends between two neighbours; null where a room cannot have these neighbours. */
  const behind = (a: number, b: number): number | null => {
    let sum = 0;
    for (const room of reached) {
      if (room < a) continue;
      if (room >= b && b - a > longest) return null;
      if (room >= b) continue;
      if (room - a > tail || (a === 0 && room > 0)) return null;
      sum += room - a;
    }
    return sum;
  };
  const bothBehind = (a: number, b: number): number | null => {
    const [near, far] = [behind(a, b), behind(last - b, last - a)];
    return near === null || far === null ? null : near + far;
  };

  const best: ({ cost: Cost; path: readonly number[] } | null)[] = [{ cost: [bits(0), 0], path: [0] }];
  for (let k = 1; k <= last - k; k++) {
    best.push(null);
    for (let from = 0; from < k; from++) {
      const before = best[from];
      const open = bothBehind(from, k);
      if (!before || open === null) continue;
      const cost: Cost = [before.cost[0] + bits(k), before.cost[1] + open];
      if (isLess(cost, best[k]?.cost)) best[k] = { cost, path: [...before.path, k] };
    }
  }

  let chosen: { cost: Cost; path: readonly number[] } | null = null;
  for (const [k, way] of best.entries()) {
    const open = k === last - k ? 0 : behind(k, last - k);
    if (way === null || open === null) continue;
    const cost: Cost = [way.cost[0], way.cost[1] + open];
    if (isLess(cost, chosen?.cost)) chosen = { cost, path: way.path };
  }
  return chosen && [...new Set([...chosen.path, ...chosen.path.map((k) => last - k)])].sort((a, b) => a - b);
}

function isLess(a: Cost, b: Cost | undefined): boolean {
  return b === undefined || a[0] < b[0] || (a[0] === b[0] && a[1] < b[1]);
}
