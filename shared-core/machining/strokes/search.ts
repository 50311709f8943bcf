import { Heap } from '../heap.js';
import { changesToCome } from './changes-to-come.js';
import type { Cover } from './cover.js';
import { Loading, type Stage } from './loading.js';
import type { Row } from './request.js';
import type { Weights } from './weights.js';

/** Stages looked at before the search settles for a good plan without proof; fewer where each holds many strokes. */
const MOST_STAGES = 60_000;
const MOST_WORK = 1_200_000;
const BEAM = 24;

interface Node {
  readonly starts: readonly number[];
  /** The loading of these strokes, in each account; while the bound is rough, of all but the last. */
  readonly stages: readonly Stage[];
  readonly rough: boolean;
  /** Where the last stroke of all stands. */
  readonly end: number;
  /** No plan that begins so and ends there costs less. */
  readonly bound: number;
}

/** A beginning whose loading is worked out. */
interface Refined extends Node {
  /** Equal for beginnings that differ in nothing that matters later but what they spent. */
  readonly name: string;
  readonly spent: number;
}

export interface Found {
  readonly starts: readonly number[];
  readonly cost: number;
  readonly proven: boolean;
}

/**
 * Where the strokes stand: best-first over the starts (A*, Hart, Nilsson and Raphael 1968), the last stroke of all first,
 * since it fixes the travel and much of the loading, and then one stroke after the other along the row. The bound of a
 * beginning is its own least cost, exact whatever comes later, and what must at least come. Beginnings that leave the
 * same to compare at the same cost differences are one: only the cheapest goes on. Among equal bounds the smaller starts
 * go first, so the plan found is the first of the best in the order of its starts.
 */
export class StrokeSearch {
  /** The true account first; then those that only bound it. */
  readonly #accounts: readonly Loading[];
  readonly #loading: Loading;
  readonly #toCome: readonly ReadonlyMap<number, number>[];
  /** Changes that no plan escapes: a number of holes that cannot be shared out evenly. */
  readonly #unavoidable: number;

  readonly #row: Row;
  readonly #cover: Cover;
  readonly #weights: Weights;

  constructor(row: Row, cover: Cover, weights: Weights) {
    this.#row = row;
    this.#cover = cover;
    this.#weights = weights;
    // Where every hole is bored once, all strokes together bear as many spindles as there are holes: charging more for each,
    // or less, alters no whole plan, but shows which beginnings bear too many or too few.
    const spread = row.twice || cover.strokes < 3 ? 0 : Math.floor(weights.change / (cover.strokes - 1));
    const units = row.twice ? [weights.twice] : spread === 0 ? [0] : [0, spread, -spread];
    this.#accounts = units.map((unit) => new Loading(row, cover, weights, unit));
    this.#loading = this.#accounts[0]!;
    this.#toCome = changesToCome(row, cover);
    this.#unavoidable = !row.twice && row.holes.length % cover.strokes !== 0 ? 1 : 0;
  }

  best(): Found {
    const found = this.#run(null, Infinity);
    return typeof found === 'string' ? this.#beam() : found;
  }

  /**
   * The best of the plans whose starts lie evenly, stroke i and its counterpart from the far end summing to `mirror`, and
   * that cost at most `limit`: 'none', or 'cut-short' where the search did not come to an end.
   */
  evenly(mirror: number, limit: number): Found | 'none' | 'cut-short' {
    return this.#run(mirror, limit);
  }

  /** Which spindles are loaded in each stroke, given where the strokes stand. */
  loaded(starts: readonly number[]): boolean[][] {
    return this.#loading.loaded(starts);
  }

  #run(mirror: number | null, limit: number): Found | 'none' | 'cut-short' {
    const cover = this.#cover;
    const open = new Heap<Node | Refined>((a, b) => a.bound < b.bound || (a.bound === b.bound && before(a, b)));
    const met = new Map<string, Refined>();
    for (const root of this.#roots()) open.push(root);
    const most = Math.min(MOST_STAGES, MOST_WORK / cover.strokes);
    for (let looked = 0; looked <= most;) {
      const node = open.pop();
      if (node === undefined) return 'none';
      const { starts } = node;
      if (node.rough) {
        const refined = this.#refine(node, mirror);
        if (refined.bound > limit) continue;
        const rival = met.get(refined.name);
        if (
          rival !== undefined &&
          (rival.spent < refined.spent || (rival.spent === refined.spent && !before(refined, rival)))
        ) {
          continue;
        }
        met.set(refined.name, refined);
        open.push(refined);
      } else if (starts.length === cover.strokes) {
        return { starts, cost: node.bound, proven: true };
      } else if (!('name' in node) || met.get(node.name) === node) {
        for (const next of this.#after(node, mirror)) {
          looked += 1;
          if (next.bound <= limit) open.push(next);
        }
      }
    }
    return 'cut-short';
  }

  #roots(): Node[] {
    const row = this.#row;
    const cover = this.#cover;
    const last = cover.strokes - 1;
    return row.starts
      .filter((end) => end >= cover.earliest[last]! && end <= cover.latest[last]!)
      .map((end) => ({
        starts: [],
        stages: this.#accounts.map((account) => account.begin()),
        rough: false,
        end,
        bound: 0,
      }));
  }

  /** Stroke by stroke, going on only from the best few beginnings; where all of them lead nowhere, the latest strokes. */
  #beam(): Found {
    let nodes = this.#roots();
    for (let stroke = 0; stroke < this.#cover.strokes; stroke += 1) {
      nodes = nodes
        .flatMap((node) => this.#after(node, null))
        .sort(byBound)
        .slice(0, 8 * BEAM)
        .map((node) => this.#refine(node, null))
        .sort(byBound)
        .slice(0, BEAM);
    }
    const best = nodes[0];
    return { starts: best?.starts ?? this.#cover.latest, cost: best?.bound ?? Infinity, proven: false };
  }

  /** Every way to add one more stroke. */
  #after(node: Node, mirror: number | null): Node[] {
    const row = this.#row;
    const cover = this.#cover;
    const { starts: past, stages, end } = node;
    const stroke = past.length;
    const final = stroke === cover.strokes - 1;
    const least = this.#loading.leastNext(past);
    const greatest = this.#loading.greatestNext(past);
    const nodes: Node[] = [];
    for (const start of row.starts) {
      if (start < least || start > greatest) continue;
      if (final ? start !== end : start >= end) continue;
      if (!this.#toCome[stroke]!.has(start)) continue;
      if (mirror !== null && !this.#liesEvenly(past, start, end, mirror)) continue;
      const starts = [...past, start];
      let bound = Math.max(node.bound, this.#bound(starts, end, this.#loading.roughly(stages[0]!, start)));
      for (let a = 1; stroke > 0 && a < this.#accounts.length; a += 1) {
        bound = Math.max(bound, this.#travelled(starts, end) + this.#accounts[a]!.roughly(stages[a]!, start));
      }
      nodes.push({ starts, stages, rough: true, end, bound });
    }
    return nodes;
  }

  /** Works out the loading of a beginning. With `mirror`, the starts that fix their counterparts matter later too. */
  #refine({ starts, stages, end, bound: known }: Node, mirror: number | null): Refined {
    const travelled = this.#travelled(starts, end);
    let bound = known;
    const own = this.#accounts.map((account, a) => {
      const stage = account.advance(stages[a]!, starts.at(-1)!);
      account.finish(stage);
      const least = stage.tables.least();
      if (a === 0) bound = Math.max(bound, this.#bound(starts, end, least));
      else if (starts.length > 1) bound = Math.max(bound, travelled + least);
      return stage;
    });
    bound = Math.max(bound, travelled + this.#loading.leastWithEnd(own[0]!, end));
    const past = mirror === null ? '' : starts.slice(0, Math.ceil(this.#cover.strokes / 2)).join();
    const name = `${end}|${past}|${this.#loading.name(own[0]!)}`;
    return { starts, stages: own, rough: false, end, bound, name, spent: travelled + own[0]!.tables.constant };
  }

  #bound(starts: readonly number[], end: number, own: number): number {
    const cover = this.#cover;
    const weights = this.#weights;
    const come = this.#toCome[starts.length - 1]!.get(starts.at(-1)!)!;
    // A spindle emptied later is refunded for the strokes that are left, so a change to come is weighed less by that.
    const whole = own + come * (weights.change - cover.strokes * weights.twice);
    return Math.max(whole, this.#unavoidable * weights.change) + this.#travelled(starts, end);
  }

  #travelled(starts: readonly number[], end: number): number {
    return (end - starts[0]!) * this.#weights.travel;
  }

  #liesEvenly(starts: readonly number[], start: number, end: number, mirror: number): boolean {
    const { strokes } = this.#cover;
    const counterpart = strokes - 1 - starts.length;
    if (starts.length === 0) return start + end === mirror;
    const other = counterpart === starts.length ? start : starts[counterpart];
    return other === undefined || other + start === mirror;
  }
}

function byBound(a: Node, b: Node): number {
  return a.bound - b.bound || (before(a, b) ? -1 : before(b, a) ? 1 : 0);
}

/** Whether the starts of `a` come before those of `b`, place by place. */
function before(a: Node, b: Node): boolean {
  const p = a.starts;
  const q = b.starts;
  for (let i = 0; i < p.length && i < q.length; i += 1) if (p[i] !== q[i]) return p[i]! < q[i]!;
  return p.length < q.length || (p.length === q.length && a.end < b.end);
}
