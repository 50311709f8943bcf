import type { Steps } from '../../derived/steps.js';
import { emptyBatch, join, stopsWith, type Batch } from './batch.js';
import type { Operation } from './operation.js';

/** Pairs of operations beyond which the bound is counted without asking which of them go together. */
const MOST_COMPARED = 250;
/** Tries to put one operation into one batch: what is spent to find fewer, or to prove that there are none. */
const MOST_TRIES = 8000;

/** How few batches some operations need. */
export interface Fewest {
  /** Fewer than the batches that were known; null where none were found. */
  readonly batches: readonly Batch[] | null;
  /** No way to sort these operations into batches needs fewer. */
  readonly least: number;
}

/**
 * Looks for fewer batches than are known, or a proof that there are none. Operations of which none can share a batch with any
 * of the others are counted apart; each such part is bounded by operations of which no two go together and by the stops
 * of each hand, and where that leaves a gap, searched to the end so far as the tries go.
 * @param isRunnable whether batches can run one after the other: of what is found only that is taken
 */
export function* fewest(
  operations: readonly Operation[],
  known: readonly Batch[],
  isRunnable: (batches: readonly Batch[]) => boolean,
): Steps<Fewest> {
  if (known.length <= 1) return { batches: null, least: known.length };
  if (operations.length > MOST_COMPARED) return { batches: null, least: leastByStops(operations) };
  const together = yield* sharing(operations);
  let least = 0;
  let batches = [...known];
  for (const part of partsOf(operations, together)) {
    yield;
    const inPart = new Set(part);
    const own = batches.filter(({ chosen }) => chosen.some(({ operation }) => inPart.has(operation)));
    const apart = apartIn(part, together);
    let bound = Math.max(apart.length, leastByStops(part));
    if (bound < own.length) {
      const search = new Search(apart, together);
      for (let count = bound; count < own.length; count += 1) {
        const found = search.into(count, part);
        if (found === 'none') {
          bound = count + 1;
          continue;
        }
        if (found === 'given-up') break;
        const other = [...batches.filter((batch) => !own.includes(batch)), ...found];
        if (isRunnable(other)) batches = other;
        break;
      }
    }
    least += bound;
  }
  return { batches: batches.length < known.length ? batches : null, least };
}

type Sharing = ReadonlyMap<Operation, ReadonlySet<Operation>>;

/** For each operation those that it can share a batch with, if with nothing else. */
function* sharing(operations: readonly Operation[]): Steps<Sharing> {
  const together = new Map(operations.map((operation) => [operation, new Set<Operation>()]));
  const alone = operations.map((operation) =>
    operation.ways.flatMap((way) => join(emptyBatch(operation), operation, way) ?? []),
  );
  for (const [i, one] of operations.entries()) {
    yield;
    for (const other of operations.slice(i + 1)) {
      if (!alone[i]!.some((batch) => other.ways.some((way) => stopsWith(batch, way) !== null))) continue;
      together.get(one)!.add(other);
      together.get(other)!.add(one);
    }
  }
  return together;
}

/** Operations that hang together by pairs that can share a batch. */
function partsOf(operations: readonly Operation[], together: Sharing): Operation[][] {
  const left = new Set(operations);
  const parts: Operation[][] = [];
  for (const first of operations) {
    if (!left.delete(first)) continue;
    const part = [first];
    for (const one of part) for (const other of together.get(one)!) if (left.delete(other)) part.push(other);
    parts.push(part);
  }
  return parts;
}

/** Operations of which no two can share a batch, as many as going through those with the fewest partners finds. */
function apartIn(part: readonly Operation[], together: Sharing): Operation[] {
  const apart: Operation[] = [];
  const byPartners = [...part].sort((a, b) => together.get(a)!.size - together.get(b)!.size);
  for (const one of byPartners) if (apart.every((other) => !together.get(other)!.has(one))) apart.push(one);
  return apart;
}

/** As many places on a hand as only stops of that hand can serve, over the stops that it has. */
function leastByStops(operations: readonly Operation[]): number {
  const [first] = operations;
  if (first === undefined) return 0;
  const bounds = (['left', 'right'] as const).map((side) => {
    const places = new Set<number>();
    for (const { ways } of operations) {
      const [way] = ways;
      if (way !== undefined && ways.every((one) => one.side === side && one.position === way.position)) {
        places.add(way.position);
      }
    }
    const stops = first.machine.stops.filter((stop) => stop.side === side).length;
    return stops === 0 ? 0 : Math.ceil(places.size / stops);
  });
  return Math.max(1, ...bounds);
}

/** An open batch, and the operations that can share it with each of those in it, if with nothing else. */
interface Open {
  readonly batch: Batch;
  readonly welcome: ReadonlySet<Operation>;
}

/** Depth first through all ways to sort operations into a number of batches. */
class Search {
  #tries = MOST_TRIES;

  readonly #apart: readonly Operation[];
  readonly #together: Sharing;

  constructor(apart: readonly Operation[], together: Sharing) {
    this.#apart = apart;
    this.#together = together;
  }

  /** The batches, or that there are none so few, or that the tries were not enough to tell. */
  into(count: number, operations: readonly Operation[]): Batch[] | 'none' | 'given-up' {
    const found = this.#place(new Set(operations), [], count);
    if (found !== null) return found;
    return this.#tries > 0 ? 'none' : 'given-up';
  }

  #place(left: ReadonlySet<Operation>, open: readonly Open[], count: number): Batch[] | null {
    if (left.size === 0) return open.map(({ batch }) => batch);
    const operation = this.#next(left, open, count);
    if (operation === null) return null;
    const rest = new Set(left);
    rest.delete(operation);
    for (const [index, { batch, welcome }] of open.entries()) {
      if (!welcome.has(operation)) continue;
      for (const way of operation.ways) {
        if (this.#tries <= 0) return null;
        this.#tries -= 1;
        const joined = join(batch, operation, way);
        if (!joined) continue;
        const partners = this.#together.get(operation)!;
        const found = this.#place(
          rest,
          open.with(index, { batch: joined, welcome: new Set([...welcome].filter((one) => partners.has(one))) }),
          count,
        );
        if (found) return found;
      }
    }
    if (open.length === count) return null;
    for (const way of operation.ways) {
      if (this.#tries <= 0) return null;
      this.#tries -= 1;
      const batch = join(emptyBatch(operation), operation, way);
      const found = batch && this.#place(rest, [...open, { batch, welcome: this.#together.get(operation)! }], count);
      if (found) return found;
    }
    return null;
  }

  /** The operation with the least choice; null where one has none, or more than can be need a batch of their own. */
  #next(left: ReadonlySet<Operation>, open: readonly Open[], count: number): Operation | null {
    let found: Operation | null = null;
    let least = Infinity;
    const homeless: Operation[] = [];
    for (const one of left) {
      const homes = open.reduce((sum, { welcome }) => sum + Number(welcome.has(one)), 0);
      if (homes === 0 && homeless.every((other) => !this.#together.get(other)!.has(one))) homeless.push(one);
      // Those of which no two go together begin a batch each, so they come first.
      const choice = this.#apart.includes(one) ? -1 : homes * 1000 + this.#together.get(one)!.size;
      if (choice >= least) continue;
      found = one;
      least = choice;
    }
    return homeless.length > count - open.length ? null : found;
  }
}
