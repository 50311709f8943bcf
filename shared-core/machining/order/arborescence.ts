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
  // A group lives in the slot of one of its nodes; into[slot * size + s] is its cheapest arc from the group in slot s.
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
  const parent = new Int32Array(most).fill(-1);
  const price = new Float64Array(most);
  const arcTail = new Int32Array(most).fill(-1);
  const arcHead = new Int32Array(most).fill(-1);
  const members: number[][] = [];
  let groups = size;
  const groupIn = Int32Array.from({ length: size }, (_, slot) => slot);
  // The slots of groups that are not melted away: the first `slots` of these.
  const active = Int32Array.from({ length: size }, (_, slot) => slot);
  let slots = size;
  const state = new Uint8Array(size); // 0 untouched, 1 on the path, 2 joined to the root
  state[0] = 2;

  let total = 0;
  for (let start = 1; start < size; start += 1) {
    if (state[start] !== 0) continue;
    const path = [start];
    state[start] = 1;
    while (path.length > 0) {
      const top = path[path.length - 1]!;
      const row = top * size;
      let source = -1;
      let paid = Infinity;
      for (let at = 0; at < slots; at += 1) {
        const slot = active[at]!;
        if (into[row + slot]! < paid && slot !== top) {
          source = slot;
          paid = into[row + slot]!;
        }
      }
      if (source < 0) return null;
      const group = groupIn[top]!;
      price[group] = paid;
      total += paid;
      arcTail[group] = tail[row + source]!;
      arcHead[group] = head[row + source]!;
      if (paid !== 0) for (let at = 0; at < slots; at += 1) into[row + active[at]!]! -= paid;

      if (state[source] === 2) {
        for (const slot of path) state[slot] = 2;
        path.length = 0;
      } else if (state[source] === 0) {
        state[source] = 1;
        path.push(source);
      } else {
        melt(path.splice(path.indexOf(source)));
        path.push(source);
      }
    }
  }

  function melt(circle: readonly number[]): void {
    const keep = circle[0]!;
    const made = groups;
    groups += 1;
    members[made] = circle.map((slot) => groupIn[slot]!);
    for (const slot of circle) parent[groupIn[slot]!] = made;
    for (let c = 1; c < circle.length; c += 1) {
      const gone = circle[c]!;
      const where = active.indexOf(gone);
      active.copyWithin(where, where + 1, slots);
      slots -= 1;
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
    groupIn[keep] = made;
  }

  const from = new Int32Array(size).fill(-1);
  for (let group = groups - 1; group >= size; group -= 1) {
    // The member that the group's arc enters gives up its own arc for it.
    let entered = arcHead[group]!;
    while (parent[entered] !== group) entered = parent[entered]!;
    arcTail[entered] = arcTail[group]!;
    arcHead[entered] = arcHead[group]!;
  }
  for (let node = 1; node < size; node += 1) from[node] = arcTail[node]!;

  return {
    from,
    cost: total,
    reducedCosts: () => {
      const reduced = new Float64Array(size * size).fill(Infinity);
      const holds = new Uint8Array(most);
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
    },
  };
}
