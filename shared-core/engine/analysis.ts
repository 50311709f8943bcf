import { carcassAt } from '../document/carcass-at.js';
import type { JobParts } from '../document/cut.js';
import { depthOf, type Place } from '../document/place.js';
import type { TreeNode } from '../document/tree.js';
import { otherwise, type Finding } from '../findings/finding.js';
import { ALONE, type Lineage } from '../job/lineage.js';
import type { JobHead } from '../job/model.js';
import { readerOf, type Reader } from '../length/reader.js';
import type { Unit } from '../length/units.js';
import type { OrderTask, Plan, SetUpOrder } from '../machining/plan/plan.js';
import { withOwnName } from './stand-in.js';
import type { CarcassAnalysis, FileFinding } from './carcass-analysis.js';
import type { Derived } from '../derived/derived.js';
import type { Planning } from './planning.js';
import type { Wishes } from './wishes.js';
import type { BatchedSetUp } from '../machining/plan/set-ups.js';
import type { Shop } from '../shop/model.js';
import { groupBy } from '../machining/plan/numbers.js';
import { identityOf } from '../words/message.js';
import { jobMessages } from './messages.js';

/** A run of UTF-16 code units [start, end) of a whole file. */
export interface Where {
  readonly file: 'job' | 'shop';
  readonly start: number;
  readonly end: number;
}

/** The shop that a job was analysed with. */
export interface UsedShop {
  readonly shop: Shop;
  /** Null for the built-in shop. */
  readonly uri: string | null;
  /** '' for the built-in shop. */
  readonly text: string;
}

/** All that is known of one text of a job file. Never changed once made; what few ask for is made at the first asking. */
export class JobAnalysis {
  readonly #remembered: ReadonlyMap<string, CarcassAnalysis>;
  /** Where the places begin that carcasses have from the job's defaults. */
  readonly #defaultsBase: number;
  readonly #lineages: readonly Lineage[] | null;

  constructor(
    readonly uri: string,
    readonly text: string,
    readonly parts: JobParts,
    readonly head: JobHead,
    readonly used: UsedShop,
    /** In the order of the text; an object that was there before an edit is the same object while nothing of it changed. */
    readonly carcasses: readonly CarcassAnalysis[],
    /** Findings of the job as a whole: its head, its shop, its carcasses' names. */
    readonly jobFindings: readonly FileFinding[],
    remembered: ReadonlyMap<string, CarcassAnalysis>,
    defaultsBase: number,
    /** What its carcasses ask of the machines together. */
    readonly planning: Planning,
    /** The engine's store: what is worked out of this analysis goes with it, what of a carcass or less outlives an edit. */
    readonly derived: Derived,
    /** What its reader wants. */
    readonly wishes: Wishes,
    /** Which carcasses each is like; null where none is like another. */
    lineages: readonly Lineage[] | null,
  ) {
    this.#remembered = remembered;
    this.#defaultsBase = defaultsBase;
    this.#lineages = lineages;
  }

  /** Which carcasses one is like, and what is wrong with that. */
  lineageOf(carcass: number): Lineage {
    return this.#lineages?.[carcass] ?? ALONE;
  }

  /**
   * The carcasses that set-ups are made for: those that are not broken. Of several with one name it is the first, since a
   * set-up could not tell their panels apart.
   */
  planned(): readonly CarcassAnalysis[] {
    return this.planning.planned();
  }

  isPlanned(carcass: CarcassAnalysis): boolean {
    return this.planning.byName().get(carcass.name) === carcass;
  }

  /** The set-ups of all planned carcasses that are run; the order to run is another matter. */
  setUps(): readonly BatchedSetUp[] {
    return this.planning.setUps();
  }

  /** The set-ups of panels alone that must not be bored. */
  setUpsNotRun(): readonly BatchedSetUp[] {
    return this.planning.notRun();
  }

  /** Works on the set-ups until they are known (true) or `enough` says so. */
  sortSetUps(enough: () => boolean): boolean {
    return this.planning.sort(enough);
  }

  /** Whether the order to run is known, and set-ups have its letters. */
  get isOrdered(): boolean {
    return this.planning.isOrdered;
  }

  /** The set-ups in the order to run; made when it is first asked for, since a good order of many takes a second. */
  plan(): Plan {
    return this.planning.plan();
  }

  /** The same where the order is sought elsewhere meanwhile: with `bestOrder` of the task that it is given. */
  planBy(order: (task: OrderTask) => Promise<SetUpOrder>): Promise<Plan> {
    return this.planning.planBy(order);
  }

  /** The same for a reader who has come to want something else since. */
  readBy(wishes: Wishes): JobAnalysis {
    if (wishes === this.wishes) return this;
    const { uri, text, parts, head, used, carcasses, jobFindings, planning, derived } = this;
    const base = this.#defaultsBase;
    const remembered = this.#remembered;
    return new JobAnalysis(
      uri,
      text,
      parts,
      head,
      used,
      carcasses,
      jobFindings,
      remembered,
      base,
      planning,
      derived,
      wishes,
      this.#lineages,
    );
  }

  get unit(): Unit {
    return this.head.unit;
  }

  get shop(): Shop {
    return this.used.shop;
  }

  /** Who reads what is said of the job. */
  get reader(): Reader {
    return readerOf(this.unit, this.wishes.lengths);
  }

  /** The same where the shop’s machines are spoken of, whose figures are in the unit of its file. */
  get shopReader(): Reader {
    return readerOf(this.shop.unit, this.wishes.lengths);
  }

  /**
   * Where a place of this analysis stands in its file. `carcass` is the index of the carcass that the place comes from, null
   * where it comes from the job as a whole. The result lies in the file whatever is asked.
   */
  locate(place: Place, carcass: number | null): Where {
    const { carcasses, tail } = this.parts;
    const fromDefaults = carcass === null ? 0 : this.#defaultsBase;
    switch (place.part) {
      case 'shop':
        return clamp('shop', place, 0, this.used.text.length);
      case 'self':
        return this.locateWritten(carcass === null ? place : this.#written(place, carcass), carcass);
      case 'head':
        return clamp('job', place, fromDefaults, this.text.length);
      case 'tail':
        return clamp('job', place, tail.start + fromDefaults, this.text.length);
      default: {
        const base = this.#carcassOf(place, carcass);
        return clamp('job', place, base === null ? 0 : carcasses[base]!.origin, this.text.length);
      }
    }
  }

  /** The same for a place that was read from the text of the carcass itself. */
  locateWritten(place: Place, carcass: number | null): Where {
    if (place.part !== 'self') return this.locate(place, carcass);
    return clamp('job', place, carcass === null ? 0 : (this.parts.carcasses[carcass]?.origin ?? 0), this.text.length);
  }

  /** A place of what is known of a carcass, in its own text. */
  #written(place: Place, carcass: number): Place {
    const standIn = this.carcasses[carcass]?.standIn ?? null;
    if (standIn === null) return place;
    return { ...place, start: withOwnName(standIn, place.start), end: withOwnName(standIn, place.end) };
  }

  /** The carcass in whose text a place of this one is, be it its own or of one that it is like; null for no carcass. */
  #carcassOf({ part }: Place, carcass: number | null): number | null {
    const depth = depthOf(part);
    if (carcass === null) return null;
    if (depth === null) return part === 'self' ? carcass : null;
    return this.lineageOf(carcass).bases[depth - 1] ?? null;
  }

  /** Where what a repair writes anew stands in its file. */
  rewritten(place: Place, carcass: number | null): Pick<Where, 'start' | 'end'> {
    if (place.part === 'self') return this.locate(place, carcass);
    const from = place.part === 'tail' ? this.parts.tail.start : 0;
    return { start: from + place.start, end: from + place.end };
  }

  /** Every finding, in the order of the text; one that only repeats another (same rule, words and place) is left out. */
  findings(): readonly FileFinding[] {
    return this.#gather((carcass) => carcass.findings, this.planning.forOne());
  }

  /** The findings that are known without waiting: all of them once `complete` has come to its end. */
  known(): readonly FileFinding[] {
    return this.#gather((carcass) => carcass.known, this.planning.forOneKnown ?? []);
  }

  /** Works out what the slow rules say, carcass by carcass, until all is known (true) or `enough` says so. */
  complete(enough: () => boolean = () => false): boolean {
    for (const carcass of this.carcasses) {
      if (carcass.isComplete) continue;
      if (enough() || !carcass.finish(enough)) return false;
    }
    if (!this.planning.prepareForOne(enough)) return false;
    this.planning.forOne();
    return true;
  }

  #gather(
    of: (carcass: CarcassAnalysis) => readonly Finding[],
    ofSetUps: readonly FileFinding[],
  ): readonly FileFinding[] {
    const seen = new Set<string>();
    const all: Placed[] = [];
    const elsewhere: Placed[] = [];
    const add = (finding: Finding, carcass: number | null): void => {
      const placed = { one: { finding, carcass }, where: this.locate(finding.place, carcass) };
      if (depthOf(finding.place.part) !== null) {
        elsewhere.push(placed);
        return;
      }
      if (finding.place.part !== 'self') {
        const same = identityOfPlaced(placed);
        if (seen.has(same)) return;
        seen.add(same);
      }
      all.push(placed);
    };
    for (const { finding, carcass } of [...this.jobFindings, ...this.planning.alongWalls(), ...ofSetUps])
      add(finding, carcass);
    this.carcasses.forEach((carcass, index) => {
      for (const finding of of(carcass)) add(finding, index);
    });
    if (elsewhere.length > 0) all.push(...this.#ofLikes(elsewhere, all));
    const order = ({ file, start }: Where): number => (file === 'shop' ? -1 : start);
    return all.sort((a, b) => order(a.where) - order(b.where)).map(({ one }) => one);
  }

  /** What is found of carcasses in the text of others that they are like: once, and not where it is so of that one too. */
  #ofLikes(elsewhere: readonly Placed[], told: readonly Placed[]): readonly Placed[] {
    const known = new Set(told.map(identityOfPlaced));
    const same = groupBy(elsewhere, identityOfPlaced);
    return [...same].flatMap(([identity, alike]): readonly Placed[] => {
      if (known.has(identity)) return [];
      const [{ one, where }] = alike as [Placed];
      const carcasses = [...new Set(alike.map(({ one: { carcass } }) => this.carcasses[carcass!]!.name))];
      const message = jobMessages.ofLikes({ carcasses, message: one.finding.message });
      return [{ one: { ...one, finding: otherwise(one.finding, { message }) }, where }];
    });
  }

  /** The carcass whose text holds the offset (its blank and comment lines included), or null. */
  carcassAt(offset: number): number | null {
    return carcassAt(this.parts, this.text.length, offset);
  }

  /**
   * What a drawing shows for a carcass: its own result, or, while its text is broken, the last good one of that name,
   * marked stale. Null where there never was one.
   */
  drawable(index: number): { readonly carcass: CarcassAnalysis; readonly stale: boolean } | null {
    const own = this.carcasses[index];
    if (own === undefined) return null;
    if (own.carcass !== null && own.boring !== null) return { carcass: own, stale: false };
    const last = this.#remembered.get(own.name);
    return last === undefined ? null : { carcass: last, stale: true };
  }

  /** The last good result of every name that was seen since the file was opened; for a file too broken to be cut. */
  lastGood(): ReadonlyMap<string, CarcassAnalysis> {
    return this.#remembered;
  }
}

interface Placed {
  readonly one: FileFinding;
  readonly where: Where;
}

function identityOfPlaced({ one: { finding }, where: { file, start, end } }: Placed): string {
  return [finding.rule, file, start, end, identityOf(finding.message)].join('\n');
}

/** All that is known of one text of a shop file. */
export interface ShopAnalysis {
  readonly uri: string;
  readonly text: string;
  readonly shop: Shop;
  readonly root: TreeNode | null;
  readonly findings: readonly Finding[];
  /** Who reads what is said of it. */
  readonly reader: Reader;
  /** What he wants. */
  readonly wishes: Wishes;
}

function clamp(file: Where['file'], place: Place, base: number, length: number): Where {
  const start = Math.min(Math.max(base + place.start, 0), length);
  return { file, start, end: Math.min(Math.max(base + place.end, start), length) };
}
