import { Heap } from '../heap.js';
import { changesToCome } from './changes-to-come.js';
import type { Cover } from './cover.js';
import { Loading, type Stage } from './loading.js';
import type { Row } from './request.js';
import type { Weights } from './weights.js';

/** Stages looked at before the search settles for a good plan without proof. */
const MOST_STAGES = 20_000;
const BEAM = 24;

/** How far the work on a beginning has got: its costs only added up, or made as small as they get. */
type Progress = 'rough' | 'least';

interface Node {
  readonly stage: Stage;
  /** Where the last stroke of all stands. */
  readonly end: number;
  /** No plan that begins so and ends there costs less. */
  readonly bound: number;
  readonly progress: Progress;
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
  private readonly loading: Loading;
  private readonly toCome: readonly ReadonlyMap<number, number>[];
  /** Changes that no plan escapes: a number of holes that cannot be shared out evenly. */
  private readonly unavoidable: number;

  constructor(
    private readonly row: Row,
    private readonly cover: Cover,
    private readonly weights: Weights,
  ) {
    this.loading = new Loading(row, cover, weights);
    this.toCome = changesToCome(row, cover);
    this.unavoidable = !row.twice && row.holes.length % cover.strokes !== 0 ? 1 : 0;
  }

  best(): Found {
    return this.run(null, Infinity) ?? this.beam();
  }

  /**
   * The best of the plans whose starts lie evenly, stroke i and its counterpart from the far end summing to `mirror`, and
   * that cost at most `limit`. Null where there is none, or where the search was cut short.
   */
  evenly(mirror: number, limit: number): Found | null {
    return this.run(mirror, limit);
  }

  /** Which spindles are loaded in each stroke, given where the strokes stand. */
  loaded(starts: readonly number[]): boolean[][] {
    return this.loading.loaded(starts);
  }

  private run(mirror: number | null, limit: number): Found | null {
    const { cover } = this;
    const open = new Heap<Node>((a, b) => a.bound < b.bound || (a.bound === b.bound && before(a, b)));
    const met = new Map<string, Node>();
    for (const end of this.row.starts) {
      if (end < cover.earliest[cover.strokes - 1]! || end > cover.latest[cover.strokes - 1]!) continue;
      open.push({ stage: this.loading.begin(), end, bound: 0, progress: 'least' });
    }
    for (let stages = 0; ;) {
      const node = open.pop();
      if (node === undefined || stages > MOST_STAGES) return null;
      const { starts } = node.stage;
      if (node.progress === 'rough') {
        const refined = this.refine(node);
        if (refined.bound > limit) continue;
        const name = this.name(refined, mirror);
        const rival = met.get(name);
        if (
          rival !== undefined &&
          (rival.bound < refined.bound || (rival.bound === refined.bound && !before(refined, rival)))
        ) {
          continue;
        }
        met.set(name, refined);
        open.push(refined);
      } else if (starts.length === cover.strokes) {
        return { starts, cost: node.bound, proven: true };
      } else if (starts.length === 0 || met.get(this.name(node, mirror)) === node) {
        for (const next of this.after(node, mirror)) {
          stages += 1;
          if (next.bound <= limit) open.push(next);
        }
      }
    }
  }

  /** Stroke by stroke, going on only from the best few beginnings. Always finds a plan. */
  private beam(): Found {
    const { cover } = this;
    const last = cover.strokes - 1;
    let nodes: Node[] = this.row.starts
      .filter((end) => end >= cover.earliest[last]! && end <= cover.latest[last]!)
      .map((end) => ({ stage: this.loading.begin(), end, bound: 0, progress: 'least' }));
    for (let stroke = 0; stroke <= last; stroke += 1) {
      nodes = nodes
        .flatMap((node) => this.after(node, null))
        .sort(byBound)
        .slice(0, 8 * BEAM)
        .map((node) => this.refine(node))
        .sort(byBound)
        .slice(0, BEAM);
    }
    return { starts: nodes[0]!.stage.starts, cost: nodes[0]!.bound, proven: false };
  }

  /** Every way to add one more stroke. */
  private after(node: Node, mirror: number | null): Node[] {
    const { row, cover } = this;
    const { stage, end } = node;
    const stroke = stage.starts.length;
    const final = stroke === cover.strokes - 1;
    const least = this.loading.leastNext(stage.starts);
    const greatest = this.loading.greatestNext(stage.starts);
    const nodes: Node[] = [];
    for (const start of row.starts) {
      if (start < least || start > greatest) continue;
      if (final ? start !== end : start >= end) continue;
      if (!this.toCome[stroke]!.has(start)) continue;
      if (mirror !== null && !this.liesEvenly(stage.starts, start, end, mirror)) continue;
      const next = this.loading.advance(stage, start);
      const bound = Math.max(node.bound, this.bound(next, end, next.tables.roughLeast()));
      nodes.push({ stage: next, end, bound, progress: 'rough' });
    }
    return nodes;
  }

  private refine(node: Node): Node {
    const { stage, end } = node;
    this.loading.finish(stage);
    const bound = Math.max(
      this.bound(stage, end, stage.tables.least()),
      this.travelled(stage, end) + this.loading.leastWithEnd(stage, end),
    );
    return { stage, end, bound: Math.max(node.bound, bound), progress: 'least' };
  }

  private bound(stage: Stage, end: number, own: number): number {
    const { cover, weights } = this;
    const come = this.toCome[stage.starts.length - 1]!.get(stage.starts.at(-1)!)!;
    // A spindle emptied later is refunded for the strokes that are left, so a change to come is weighed less by that.
    const whole = own + come * (weights.change - cover.strokes * weights.twice);
    return Math.max(whole, this.unavoidable * weights.change) + this.travelled(stage, end);
  }

  private travelled(stage: Stage, end: number): number {
    return (end - stage.starts[0]!) * this.weights.travel;
  }

  private liesEvenly(starts: readonly number[], start: number, end: number, mirror: number): boolean {
    const { strokes } = this.cover;
    const counterpart = strokes - 1 - starts.length;
    if (starts.length === 0) return start + end === mirror;
    const other = counterpart === starts.length ? start : starts[counterpart];
    return other === undefined || other + start === mirror;
  }

  /** Beginnings of one name differ in nothing that matters later but their cost. */
  private name(node: Node, mirror: number | null): string {
    const past = mirror === null ? '' : node.stage.starts.slice(0, Math.ceil(this.cover.strokes / 2)).join();
    return `${node.end}|${past}|${this.loading.name(node.stage)}`;
  }
}

function byBound(a: Node, b: Node): number {
  return a.bound - b.bound || (before(a, b) ? -1 : before(b, a) ? 1 : 0);
}

/** Whether the starts of `a` come before those of `b`, place by place. */
function before(a: Node, b: Node): boolean {
  const p = a.stage.starts;
  const q = b.stage.starts;
  for (let i = 0; i < p.length && i < q.length; i += 1) if (p[i] !== q[i]) return p[i]! < q[i]!;
  return p.length < q.length || (p.length === q.length && a.end < b.end);
}
