/** A cheapest set of arcs that reaches every node from the root, with the prices that prove it cheapest. */
export interface Arborescence {
  /** For each node, the node that it is reached from; -1 at the root. */
  readonly from: Int32Array;
  readonly cost: number;
  /** What each arc costs over what the prices pay for it: never negative. Infinity stays Infinity. */
  reducedCosts(): Float64Array;
}

/**
 * Cheapest arborescence from node 0 (Chu and Liu 1965; Edmonds 1967) over a dense cost table, O(n^2).
 *
 * A path is grown against the arcs: the group on top takes its cheapest arc in and pays that price. If the arc comes
 * from a node already joined to the root, the whole path is joined; if it comes from the path, the circle is melted into
 * one group that carries on. Afterwards the groups are opened again from the outside in, each handing its arc to the
 * member that the arc really enters.
 *
 * `cost[i * size + j]` is the arc i -> j; arcs into node 0 and from a node to itself are not looked at. Costs may be
 * negative. Ties go to the smallest index. Null where some node cannot be reached.
 */
export function cheapestArborescence(size: number, cost: Float64Array): Arborescence | null {
  const groups = singleNodes(size, cost);
  const total = grow(groups);
  if (total === null) return null;
  return { from: opened(groups), cost: total, reducedCosts: () => reducedBy(groups, cost) };
}

/** The nodes, and the groups that circles of them are melted into: group g < size is node g by itself. */
interface Groups {
  readonly size: number;
  /** A group lives in the slot of one of its nodes; into[slot * size + s] is its cheapest arc from the group in slot s... */
  readonly into: Float64Array;
  /** ...and these are the nodes that the arc leaves and enters. */
  readonly tail: Int32Array;
  readonly head: Int32Array;
  readonly groupIn: Int32Array;
  /** The slots of groups that are not melted away: the first `slots` of these. */
  readonly active: Int32Array;
  slots: number;
  /** How many groups were ever made; what follows is by group. */
  made: number;
  /** The group that it was melted into; -1 for none. */
  readonly parent: Int32Array;
  /** What it pays for the arc that it takes in, and that arc. */
  readonly price: Float64Array;
  readonly arcTail: Int32Array;
  readonly arcHead: Int32Array;
}

function singleNodes(size: number, cost: Float64Array): Groups {
  const into = new Float64Array(size * size);
  const tail = new Int32Array(size * size);
  const head = new Int32Array(size * size);
  for (let j = 0; j < size; j += 1) {
    const row = j * size;
    for (let i = 0; i < size; i += 1) {
      into[row + i] = i === j ? Infinity : cost[i * size + j]!;
      tail[row + i] = i;
    }
    head.fill(j, row, row + size);
  }
  const most = Math.max(1, 2 * size);
  return {
    size,
    into,
    tail,
    head,
    groupIn: Int32Array.from({ length: size }, (_, slot) => slot),
    active: Int32Array.from({ length: size }, (_, slot) => slot),
    slots: size,
    made: size,
    parent: new Int32Array(most).fill(-1),
    price: new Float64Array(most),
    arcTail: new Int32Array(most).fill(-1),
    arcHead: new Int32Array(most).fill(-1),
  };
}

const UNTOUCHED = 0;
const ON_THE_PATH = 1;
const JOINED = 2;

/** Joins every group to the root, and gives the sum of the prices paid; null where one cannot be reached. */
function grow(groups: Groups): number | null {
  const { size } = groups;
  const state = new Uint8Array(size);
  state[0] = JOINED;
  let total = 0;
  for (let start = 1; start < size; start += 1) {
    if (state[start] !== UNTOUCHED) continue;
    const path = [start];
    state[start] = ON_THE_PATH;
    while (path.length > 0) {
      const top = path[path.length - 1]!;
      const source = cheapestInto(groups, top);
      if (source < 0) return null;
      total += takeIn(groups, top, source);
      if (state[source] === JOINED) {
        for (const slot of path) state[slot] = JOINED;
        path.length = 0;
      } else if (state[source] === UNTOUCHED) {
        state[source] = ON_THE_PATH;
        path.push(source);
      } else {
        melt(groups, path.splice(path.indexOf(source)));
        path.push(source);
      }
    }
  }
  return total;
}

/** The slot that the cheapest arc into a slot comes from; -1 for none. */
function cheapestInto({ size, into, active, slots }: Groups, top: number): number {
  const row = top * size;
  let source = -1;
  let least = Infinity;
  for (let at = 0; at < slots; at += 1) {
    const slot = active[at]!;
    if (into[row + slot]! < least && slot !== top) {
      source = slot;
      least = into[row + slot]!;
    }
  }
  return source;
}

/** The group in a slot takes in its arc from another, and pays: its other arcs cost so much less from now on. */
function takeIn(groups: Groups, top: number, source: number): number {
  const { size, into, tail, head, active, slots } = groups;
  const row = top * size;
  const paid = into[row + source]!;
  const group = groups.groupIn[top]!;
  groups.price[group] = paid;
  groups.arcTail[group] = tail[row + source]!;
  groups.arcHead[group] = head[row + source]!;
  if (paid !== 0) for (let at = 0; at < slots; at += 1) into[row + active[at]!]! -= paid;
  return paid;
}

/** Makes one group of a circle, in the first of its slots. */
function melt(groups: Groups, circle: readonly number[]): void {
  const { groupIn, parent, active } = groups;
  const keep = circle[0]!;
  const made = groups.made;
  groups.made += 1;
  for (const slot of circle) parent[groupIn[slot]!] = made;
  for (let c = 1; c < circle.length; c += 1) {
    const gone = circle[c]!;
    const where = active.indexOf(gone);
    active.copyWithin(where, where + 1, groups.slots);
    groups.slots -= 1;
    keepCheaper(groups, keep, gone);
  }
  groupIn[keep] = made;
}

/** Of the arcs of two slots, in and out, the first gets the cheaper. */
function keepCheaper({ size, into, tail, head, active, slots }: Groups, keep: number, gone: number): void {
  for (let at = 0; at < slots; at += 1) {
    const slot = active[at]!;
    const a = keep * size + slot;
    const b = gone * size + slot;
    if (into[b]! < into[a]!) {
      into[a] = into[b]!;
      tail[a] = tail[b]!;
      head[a] = head[b]!;
    }
    const p = slot * size + keep;
    const q = slot * size + gone;
    if (into[q]! < into[p]!) {
      into[p] = into[q]!;
      tail[p] = tail[q]!;
      head[p] = head[q]!;
    }
  }
}

/** The node before each node, once the groups are opened again. */
function opened({ size, made, parent, arcTail, arcHead }: Groups): Int32Array {
  for (let group = made - 1; group >= size; group -= 1) {
    // The member that the group's arc enters gives up its own arc for it.
    let entered = arcHead[group]!;
    while (parent[entered] !== group) entered = parent[entered]!;
    arcTail[entered] = arcTail[group]!;
    arcHead[entered] = arcHead[group]!;
  }
  const from = new Int32Array(size).fill(-1);
  for (let node = 1; node < size; node += 1) from[node] = arcTail[node]!;
  return from;
}

/** An arc is paid for by every group that it enters from outside. */
function reducedBy({ size, parent, price }: Groups, cost: Float64Array): Float64Array {
  const reduced = new Float64Array(size * size).fill(Infinity);
  const holds = new Uint8Array(parent.length);
  for (let i = 0; i < size; i += 1) {
    for (let g = i; g >= 0; g = parent[g]!) holds[g] = 1;
    for (let j = 1; j < size; j += 1) {
      if (i === j) continue;
      let left = cost[i * size + j]!;
      for (let g = j; g >= 0 && holds[g] === 0; g = parent[g]!) left -= price[g]!;
      reduced[i * size + j] = left;
    }
    for (let g = i; g >= 0; g = parent[g]!) holds[g] = 0;
  }
  return reduced;
}
