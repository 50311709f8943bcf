import type { Hole } from './bore.js';

/** Puts holes that stand at one place together; others may fall in with them. */
const placeOf = ({ u, v }: Hole): number => u * 4_194_304 + v;

/** Two holes are one where all of this is equal; how deep a through one is drawn does not count. */
const areOne = (a: Hole, b: Hole): boolean =>
  a.u === b.u &&
  a.v === b.v &&
  a.face === b.face &&
  a.diameter === b.diameter &&
  a.through === b.through &&
  (a.through || a.depth === b.depth);

/** A hole with what it has, and the next one that stands at the same place. */
interface Entry<V> {
  readonly hole: Hole;
  value: V;
  readonly next: Entry<V> | undefined;
}

/** Holes as drawn, each with something; one that is the same as another has what that has. */
export class HoleMap<V> {
  readonly #places = new Map<number, Entry<V>>();

  /** @param entries where two are one hole, the last counts */
  constructor(entries: Iterable<readonly [Hole, V]> = []) {
    for (const [hole, value] of entries) this.set(hole, value);
  }

  get(hole: Hole): V | undefined {
    return this.#entryOf(hole)?.value;
  }

  has(hole: Hole): boolean {
    return this.#entryOf(hole) !== undefined;
  }

  set(hole: Hole, value: V): void {
    const known = this.#entryOf(hole);
    if (known !== undefined) {
      known.value = value;
      return;
    }
    const place = placeOf(hole);
    this.#places.set(place, { hole, value, next: this.#places.get(place) });
  }

  #entryOf(hole: Hole): Entry<V> | undefined {
    let entry = this.#places.get(placeOf(hole));
    while (entry !== undefined && !areOne(entry.hole, hole)) entry = entry.next;
    return entry;
  }
}
