import type { BoreMap } from '../boring/model.js';
import type { Carcass } from '../carcass/model.js';
import type { CarcassSpec } from '../carcass/spec.js';
import type { Located } from '../document/place.js';
import type { Steps } from '../derived/steps.js';
import type { Finding } from '../findings/finding.js';
import type { CarcassOperations } from '../machining/plan/operations.js';
import type { Shop } from '../shop/model.js';
import type { ShopChanges } from '../shop/watched.js';
import type { StandIn } from './stand-in.js';

/** What reading, building and boring give for one carcass. */
export interface CarcassWork {
  /** As written before the colon; '' where the text has no name. */
  readonly name: string;
  /** Where the name stands; null where the text is too broken to tell. */
  readonly nameAt: Located<string> | null;
  /** Where its places are counted in a text with another name; null where they are in its own. */
  readonly standIn: StandIn | null;
  /** Null where a required value is missing or a value is invalid. */
  readonly spec: CarcassSpec | null;
  /** Null where no box can be made of the spec. */
  readonly carcass: Carcass | null;
  readonly boring: BoreMap | null;
  /** What its machines have to do, and what they cannot. */
  readonly operations: CarcassOperations | null;
}

/** What becomes of a carcass in another shop: see `CarcassAnalysis.in`. */
export type Elsewhere = (changes: ShopChanges, mayTake: boolean) => CarcassAnalysis | 'same' | null;

/**
 * What one carcass's own text gives with the unit and defaults of its file and the shop that it was read with. Never changed
 * once made; the findings of slow rules are made at the first asking.
 */
export class CarcassAnalysis implements CarcassWork {
  readonly name: string;
  readonly nameAt: Located<string> | null;
  readonly standIn: StandIn | null;
  readonly spec: CarcassSpec | null;
  readonly carcass: Carcass | null;
  readonly boring: BoreMap | null;
  readonly operations: CarcassOperations | null;
  readonly #quick: readonly Finding[];
  /** Let go once it was asked: it holds much. */
  #find: (() => Steps<readonly Finding[]>) | null;
  /** What is being found, where it was begun. */
  #finding: Steps<readonly Finding[]> | null = null;
  readonly #elsewhere: Elsewhere | null;
  #all: readonly Finding[] | null = null;
  /** What it became in another shop last, for all that are like it. */
  #other: { readonly shop: Shop; readonly as: CarcassAnalysis } | null = null;

  /**
   * `find` gives every finding; `quick` are those of the rules that take no time. Both in the order of their places. Without
   * `elsewhere` it has to be worked out anew in any other shop.
   */
  constructor(
    work: CarcassWork,
    quick: readonly Finding[],
    find: () => Steps<readonly Finding[]>,
    elsewhere: Elsewhere | null = null,
  ) {
    this.name = work.name;
    this.nameAt = work.nameAt;
    this.standIn = work.standIn;
    this.spec = work.spec;
    this.carcass = work.carcass;
    this.boring = work.boring;
    this.operations = work.operations;
    this.#quick = quick;
    this.#find = find;
    this.#elsewhere = elsewhere;
  }

  /** The same with some of it otherwise, where the findings are the same. */
  like(otherwise: Partial<CarcassWork>): CarcassAnalysis {
    const { name, nameAt, standIn, spec, carcass, boring, operations } = this;
    const work = { name, nameAt, standIn, spec, carcass, boring, operations, ...otherwise };
    const elsewhere = (changes: ShopChanges, mayTake: boolean): CarcassAnalysis | null => {
      const other = this.in(changes, mayTake);
      return other === null || other.carcass !== this.carcass ? null : other.like(otherwise);
    };
    return new CarcassAnalysis(
      work,
      this.#quick,
      () => this.#inSteps(),
      // What is the same there stays the same object.
      (changes, mayTake) => (this.in(changes, false) === this ? 'same' : elsewhere(changes, mayTake)),
    );
  }

  /**
   * The carcass in a shop that differs in so much: itself where nothing of that bears on it, else with what does told anew.
   * @param mayTake false: null where it would take more than a moment
   * @returns null where it has to be worked out anew
   */
  in(changes: ShopChanges, mayTake: boolean): CarcassAnalysis | null {
    if (changes.areNone) return this;
    if (this.#other?.shop === changes.now) return this.#other.as;
    const there = this.#elsewhere?.(changes, mayTake) ?? null;
    const as = there === 'same' ? this : there;
    if (as !== null && as !== this) this.#other = { shop: changes.now, as };
    return as;
  }

  /** Every finding, in the order of their places. */
  get findings(): readonly Finding[] {
    this.finish();
    return this.known;
  }

  /** What is known without waiting: every finding once they have been asked for, those of the quick rules before. */
  get known(): readonly Finding[] {
    return this.#all ?? this.#quick;
  }

  /** Works out what the slow rules say, until all is known (true) or `enough` says so. */
  finish(enough: () => boolean = () => false): boolean {
    while (this.#all === null) {
      if (this.#find === null) this.#all = this.#quick;
      else {
        this.#finding ??= this.#find();
        const { done, value } = this.#finding.next();
        if (done === true) this.#all = value;
        else if (enough()) return false;
      }
    }
    [this.#find, this.#finding] = [null, null];
    return true;
  }

  *#inSteps(): Steps<readonly Finding[]> {
    while (!this.finish(() => true)) yield;
    return this.known;
  }

  get isComplete(): boolean {
    return this.#all !== null;
  }
}

/** A finding of the file, and the carcass in whose text its places are counted; null for the job as a whole. */
export interface FileFinding {
  readonly finding: Finding;
  readonly carcass: number | null;
}
