import { carcassAt } from './document/carcass-at.js';
import type { JobParts } from './document/cut.js';
import { cutJob } from './document/cut.js';
import { Derived } from './derived/derived.js';
import type { Basis } from './engine/basis.js';
import { basisOf } from './engine/basis.js';
import { analyseCarcass } from './engine/carcass.js';
import type { ShopAnalysis, UsedShop } from './engine/analysis.js';
import type { CarcassAnalysis, FileFinding } from './engine/carcass-analysis.js';
import { JobAnalysis } from './engine/analysis.js';
import { likeFindings, unreadBases } from './engine/like-findings.js';
import { incompleteShop, type NamedShop } from './engine/incomplete-shop.js';
import { linedUp, linesIn, type Lined, type Lines } from './engine/lined.js';
import { meanwhile } from './engine/meanwhile.js';
import type { EngineHost } from './engine/host.js';
import { WorkedOut } from './engine/worked-out.js';
import { NO_WISHES, type Wishes } from './engine/wishes.js';
import { Planning } from './engine/planning.js';
import { brokenShop, duplicates, missingShop, noShop, unusedDefaults } from './engine/job-findings.js';
import type { ReadHead } from './job/head.js';
import { readHead } from './job/head.js';
import { readerOf } from './length/reader.js';
import { neutralShop } from './shop/neutral.js';
import type { ReadShop } from './shop/read.js';
import { readShop } from './shop/read.js';
import type { Shop } from './shop/model.js';
import { SettledShops } from './shop/watched.js';

export type { ShopAnalysis, UsedShop, Where } from './engine/analysis.js';
export type { CarcassAnalysis, FileFinding } from './engine/carcass-analysis.js';
export { JobAnalysis } from './engine/analysis.js';
export type { EngineHost, ShopReading } from './engine/host.js';

/** What is kept of a job between two of its texts. */
interface JobState {
  readonly analysis: JobAnalysis;
  readonly opened: Opened;
}

/** A text cut apart, with what its carcasses take from the rest of it. */
interface Opened {
  readonly text: string;
  readonly parts: JobParts;
  readonly head: ReadHead;
  readonly basis: Basis;
  readonly shop: FoundShop;
  /** How the shop was found, as text, to tell whether it is found otherwise now. */
  readonly shopWords: string;
  /** Those of its carcasses that are known. */
  readonly worked: WorkedOut;
  /** What its carcasses say of one another; null where none can say anything. */
  readonly lines: Lines | null;
  /** The carcasses, each with what it is like. */
  readonly lined: readonly Lined[];
}

/** A text that is worked out in slices. */
interface Preparing {
  readonly opened: Opened;
  readonly near: number;
  /** Those that were not worked out yet, the nearest last. */
  readonly left: Lined[];
}

/** A shop text that was read, and the job-level view of how it was found. */
interface FoundShop {
  readonly used: UsedShop;
  readonly findings: readonly FileFinding[];
  /** null for the built-in shop. */
  readonly named: NamedShop | null;
}

/**
 * The incremental pipeline from a text to its findings. A carcass is worked out anew only when its own text, that of one it is
 * like, the unit or defaults of its file, or its shop has changed. The result is always that of a cold analysis of the same text
 * and shop; only the memory of last good results, for drawings, depends on what came before. Never throws.
 */
export class Engine {
  /** How many carcasses were worked out since the engine was made. */
  computed = 0;
  /** What the reader wants: it holds for what is analysed from now on. Nothing is worked out anew for it. */
  wishes: Wishes = NO_WISHES;

  readonly #jobs = new Map<string, JobState>();
  /** Texts that are worked out in slices and were not analysed yet. */
  readonly #preparing = new Map<string, Preparing>();
  /** What was known of such a text when somebody asked about a place of it. */
  readonly #asked = new Map<string, JobState>();
  /** By text: several jobs share a shop, and a job asks again at every key. */
  readonly #shops = new Map<string, ReadShop & { readonly settled: Shop }>();

  readonly #settled = new SettledShops();
  readonly #derived = new Derived();

  readonly #host: EngineHost;

  constructor(host: EngineHost) {
    this.#host = host;
  }

  /** Analyses a text of the job file at `uri`. */
  analyse(uri: string, text: string): JobAnalysis {
    const before = this.#jobs.get(uri);
    const opened = this.#open(uri, text);
    const { head, shop, worked, lines, lined } = opened;
    if (opened === before?.opened && before.analysis.wishes === this.wishes) return before.analysis;

    const carcasses = lined.map((one) => worked.of(one));
    worked.keepOnly(lined);
    const findings = [
      ...saysOfItself(opened, carcasses),
      ...unreadBases(lines, carcasses),
      ...unusedDefaults(head.conditional, carcasses),
      ...(shop.named === null ? [] : incompleteShop(shop.named, carcasses, this.#derived)),
    ];
    const planning =
      before?.analysis.planning.for(carcasses, shop.used.shop) ??
      new Planning(carcasses, shop.used.shop, this.#derived);
    const analysis = this.#analysisOf(uri, opened, carcasses, findings, planning);
    this.#jobs.set(uri, { analysis, opened });
    this.#preparing.delete(uri);
    this.#asked.delete(uri);
    return analysis;
  }

  /**
   * Works out carcasses of a text, so that `analyse` has little left to do: it does all at once, and this can be done in slices.
   * @param near an offset that the reader looks at: the carcasses around it come first
   * @param enough asked after each carcass that was worked out
   * @returns true where nothing is left
   */
  prepare(uri: string, text: string, near: number, enough: () => boolean): boolean {
    const opened = this.#open(uri, text);
    const { parts, worked } = opened;
    // All of it was analysed already, as it is at nearly every question. A text that could not be cut is read at once.
    if (opened === this.#jobs.get(uri)?.opened || parts.whole !== null) return true;
    const left = this.#left(uri, opened, near);
    for (let next = left.pop(); next !== undefined; next = left.pop()) {
      worked.of(next);
      if (left.length > 0 && enough()) return false;
    }
    return true;
  }

  /**
   * A text for whoever asks about a place in it and cannot wait: all that is known of it where only the carcass there was left to
   * be worked out; else that carcass, the rest as `soFar` gave it when it was last asked about.
   */
  near(uri: string, text: string, offset: number): JobAnalysis {
    const opened = this.#open(uri, text);
    const { parts, worked, lined } = opened;
    if (opened === this.#jobs.get(uri)?.opened || parts.whole !== null) return this.analyse(uri, text);
    const left = this.#left(uri, opened, offset);
    const index = carcassAt(parts, text.length, offset);
    const there = index === null ? null : worked.of(lined[index]!);
    while (left.length > 0 && worked.known(left.at(-1)!) !== undefined) left.pop();
    if (left.length === 0) return this.analyse(uri, text);
    const last = this.#asked.get(uri);
    const isAsLast = last?.opened === opened && last.analysis.wishes === this.wishes;
    if (isAsLast && (index === null || last.analysis.carcasses[index] === there)) return last.analysis;
    const analysis = this.soFar(uri, text);
    this.#asked.set(uri, { analysis, opened });
    return analysis;
  }

  /** Whether the very text was analysed. */
  isAnalysed(uri: string, text: string): boolean {
    return this.#open(uri, text) === this.#jobs.get(uri)?.opened;
  }

  /** The carcasses that are still to be worked out, the nearest to an offset last; whoever works one out takes it off. */
  #left(uri: string, opened: Opened, near: number): Lined[] {
    const before = this.#preparing.get(uri);
    if (before?.opened === opened && before.near === near) return before.left;
    const left = leftOf(opened, near);
    this.#preparing.set(uri, { opened, near, left });
    return left;
  }

  /**
   * What is known of a text that is being prepared. Of a carcass that is not worked out yet, it has what the last text with that
   * carcass said of it by itself, or nothing. It is for findings that are told meanwhile, and is not kept.
   */
  soFar(uri: string, text: string): JobAnalysis {
    const opened = this.#open(uri, text);
    const before = this.#jobs.get(uri)?.opened.worked;
    const carcasses = opened.lined.map((one) => opened.worked.known(one) ?? meanwhile(one.part, before?.known(one)));
    // Set-ups of a part of the job would have other stops than those of the whole.
    const planning = new Planning([], opened.shop.used.shop, this.#derived);
    return this.#analysisOf(uri, opened, carcasses, saysOfItself(opened, carcasses), planning);
  }

  /** Analyses a text of the shop file at `uri`. */
  analyseShop(uri: string, text: string): ShopAnalysis {
    const { settled: _, ...read } = this.#read(text);
    return { uri, text, ...read, reader: readerOf(read.shop.unit, this.wishes.lengths), wishes: this.wishes };
  }

  /** Drops all that is kept of a job. */
  forget(uri: string): void {
    this.#jobs.delete(uri);
    this.#preparing.delete(uri);
    this.#asked.delete(uri);
  }

  /** The same object as before while neither the text nor the shop is another. */
  #open(uri: string, text: string): Opened {
    const before = this.#jobs.get(uri)?.opened;
    const preparing = this.#preparing.get(uri)?.opened;
    const last = [preparing, before].find((one) => one?.text === text) ?? preparing ?? before;
    const parts = last?.text === text ? last.parts : cutJob(text);
    const head = last !== undefined && sameHead(last.parts, parts) ? last.head : readHead(parts);
    const shop = this.#shopFor(uri, head);
    const shopWords = JSON.stringify([shop.used.uri, shop.findings]);
    const { text: shopText, shop: shopItself } = shop.used;
    const lastUsed = last?.shop.used;
    const sameShop = shopItself === lastUsed?.shop && shopText === lastUsed.text && shopWords === last?.shopWords;
    if (sameShop && parts === last.parts) return last;
    const basis = head === last?.head ? last.basis : basisOf(head);
    const ground = { basisKey: basis.key, shop: shop.used.shop, uncut: parts.whole === null ? null : text };
    const worked =
      [last?.worked, before?.worked].find((one) => one?.isOn(ground) === true) ??
      new WorkedOut(
        ground,
        (lined) => {
          this.computed += 1;
          return analyseCarcass(lined, basis, shop.used.shop, this.#derived);
        },
        [last?.worked, before?.worked],
      );
    const lines = linesIn(parts, last?.lines);
    return { text, parts, head, basis, shop, shopWords, worked, lines, lined: linedUp(parts, lines) };
  }

  #analysisOf(
    uri: string,
    { text, parts, head, basis, shop: { used }, lines }: Opened,
    carcasses: readonly CarcassAnalysis[],
    findings: readonly FileFinding[],
    planning: Planning,
  ): JobAnalysis {
    const remembered = remember(this.#jobs.get(uri)?.analysis, carcasses, findings);
    return new JobAnalysis(
      uri,
      text,
      parts,
      head.head,
      used,
      carcasses,
      findings,
      remembered,
      basis.base,
      planning,
      this.#derived,
      this.wishes,
      lines?.lineages ?? null,
    );
  }

  #shopFor(jobUri: string, head: ReadHead): FoundShop {
    const reference = head.head.shopRef;
    if (reference === null) return head.shopUnread ? builtIn([], standIn) : builtIn(noShop(head.head));
    const reading = this.#host.readShop(jobUri, reference.value);
    if (!reading.ok) return builtIn(missingShop(reference, reading.message, reading.instead), standIn);
    const read = this.#read(reading.text);
    const { uri, text } = reading;
    return {
      used: { shop: read.settled, uri, text },
      findings: brokenShop(reference, read, text),
      named: { reference, text, read },
    };
  }

  #read(text: string): ReadShop & { readonly settled: Shop } {
    const known = this.#shops.get(text);
    if (known !== undefined) return known;
    const found = readShop(text);
    const read = { ...found, settled: this.#settled.settle(found.shop) };
    // A shop file that is typed in has a new text at every key: the oldest is dropped.
    if (this.#shops.size >= SHOPS_KEPT) this.#shops.delete(this.#shops.keys().next().value!);
    this.#shops.set(text, read);
    return read;
  }
}

const SHOPS_KEPT = 16;

/** The carcasses that are not worked out yet, the nearest to an offset last. */
function leftOf({ lined, worked }: Opened, near: number): Lined[] {
  const from = ({ part: { start, end } }: Lined): number => Math.max(start - near, near - end, 0);
  return lined.filter((one) => worked.known(one) === undefined).sort((a, b) => from(b) - from(a));
}

/** What a text says as a whole: its head, its shop, its carcasses' names and what they say of one another. */
function saysOfItself(opened: Opened, carcasses: readonly CarcassAnalysis[]): readonly FileFinding[] {
  const { head, shop, parts, lines } = opened;
  return [
    ...head.findings.map((finding) => ({ finding, carcass: null })),
    ...shop.findings,
    ...duplicates(carcasses),
    ...likeFindings(parts, lines, carcasses),
  ];
}

/** The built-in shop in the place of one that cannot be had. */
const standIn: Shop = { ...neutralShop, standsIn: true };

function builtIn(findings: readonly FileFinding[], shop = neutralShop): FoundShop {
  return { used: { shop, uri: null, text: '' }, findings, named: null };
}

/** True where reading the heads of both would give the same. An uncut text is all head. */
function sameHead(a: JobParts, b: JobParts): boolean {
  if (a === b) return true;
  const cut = a.whole === null && b.whole === null && a.problems.length === 0 && b.problems.length === 0;
  const bothEmpty = (a.carcasses.length === 0) === (b.carcasses.length === 0);
  return cut && bothEmpty && a.head.text === b.head.text && a.tail.text === b.tail.text;
}

/** Last good results by name: the present ones, and older ones of carcasses that are broken or hidden by a broken text. */
function remember(
  before: JobAnalysis | undefined,
  carcasses: readonly CarcassAnalysis[],
  findings: readonly FileFinding[],
): ReadonlyMap<string, CarcassAnalysis> {
  const old = before?.lastGood() ?? new Map<string, CarcassAnalysis>();
  const textBroken = findings.some(({ finding }) => finding.rule === 'yaml-syntax');
  const present = new Set(carcasses.map(({ name }) => name));
  const remembered = new Map([...old].filter(([name]) => textBroken || present.has(name)));
  for (const carcass of carcasses) {
    if (carcass.carcass !== null && carcass.boring !== null) remembered.set(carcass.name, carcass);
  }
  return remembered;
}
