import type { CarcassPart, JobParts } from './document/cut.js';
import { cutJob } from './document/cut.js';
import { Derived } from './derived/derived.js';
import type { Basis } from './engine/basis.js';
import { basisOf } from './engine/basis.js';
import { renamed, unnamed } from './engine/alike.js';
import { analyseCarcass } from './engine/carcass.js';
import type { ShopAnalysis, UsedShop } from './engine/analysis.js';
import type { CarcassAnalysis, FileFinding } from './engine/carcass-analysis.js';
import { JobAnalysis } from './engine/analysis.js';
import type { EngineHost } from './engine/host.js';
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

export type { ShopAnalysis, UsedShop, Where } from './engine/analysis.js';
export type { CarcassAnalysis, FileFinding } from './engine/carcass-analysis.js';
export { JobAnalysis } from './engine/analysis.js';
export type { EngineHost, ShopReading } from './engine/host.js';

/** What is kept of a job between two of its texts. */
interface JobState {
  readonly analysis: JobAnalysis;
  readonly head: ReadHead;
  readonly basis: Basis;
  /** How the shop was found, as text, to tell whether it is found otherwise now. */
  readonly shopWords: string;
  /** By the text of the carcass; valid for this basis and this shop only. */
  readonly carcasses: ReadonlyMap<string, CarcassAnalysis>;
  /** The same by what they say without their names. */
  readonly alike: ReadonlyMap<string, CarcassAnalysis>;
}

/** A shop text that was read, and the job-level view of how it was found. */
interface FoundShop {
  readonly used: UsedShop;
  readonly findings: readonly FileFinding[];
}

/**
 * The incremental pipeline from a text to its findings. A carcass is worked out anew only when its own text, the unit or
 * defaults of its file, or its shop has changed. The result is always that of a cold analysis of the same text and shop; only the
 * memory of last good results, for drawings, depends on what came before. Never throws.
 */
export class Engine {
  /** How many carcasses were worked out since the engine was made. */
  computed = 0;
  /** What the reader wants: it holds for what is analysed from now on. Nothing is worked out anew for it. */
  wishes: Wishes = NO_WISHES;

  readonly #jobs = new Map<string, JobState>();
  /** By text: several jobs share a shop, and a job asks again at every key. */
  readonly #shops = new Map<string, ReadShop>();

  readonly #derived = new Derived();

  readonly #host: EngineHost;

  constructor(host: EngineHost) {
    this.#host = host;
  }

  /** Analyses a text of the job file at `uri`. */
  analyse(uri: string, text: string): JobAnalysis {
    const before = this.#jobs.get(uri);
    const parts = before?.analysis.text === text ? before.analysis.parts : cutJob(text);
    const head = before !== undefined && sameHead(before.analysis.parts, parts) ? before.head : readHead(parts);
    const { used, findings: shopSays } = this.#shopFor(uri, head);
    const sameShop = used.shop === before?.analysis.shop;
    const shopWords = JSON.stringify([used.uri, shopSays]);
    const sameWishes = before?.analysis.wishes === this.wishes;
    if (sameShop && sameWishes && before.analysis.text === text && before.shopWords === shopWords) {
      return before.analysis;
    }

    const basis = head === before?.head ? before.basis : basisOf(head);
    // All of an uncut text bears on each of its carcasses.
    const sameText = parts.whole === null || before?.analysis.text === text;
    const holds = sameShop && sameText && basis.key === before.basis.key;
    const kept = new Map<string, CarcassAnalysis>();
    const alike = new Map(holds ? before.alike : []);
    const carcasses = parts.carcasses.map((part) => {
      const key = part.whole === null ? part.text : String(part.whole.index);
      const known = kept.get(key) ?? (holds ? before.carcasses.get(key) : undefined);
      const carcass = known ?? this.#likeAnother(part, alike, () => this.#compute(part, basis, used));
      kept.set(key, carcass);
      return carcass;
    });
    const findings: FileFinding[] = [
      ...head.findings.map((finding) => ({ finding, carcass: null })),
      ...shopSays,
      ...duplicates(carcasses),
      ...unusedDefaults(head.conditional, carcasses),
    ];
    const remembered = remember(before?.analysis, carcasses, findings);
    const planning = before?.analysis.planning.isOf(carcasses, used.shop)
      ? before.analysis.planning
      : new Planning(carcasses, used.shop, this.#derived);
    const analysis = new JobAnalysis(
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
    );
    this.#jobs.set(uri, { analysis, head, basis, shopWords, carcasses: kept, alike: newest(alike, kept.size) });
    return analysis;
  }

  /** Analyses a text of the shop file at `uri`. */
  analyseShop(uri: string, text: string): ShopAnalysis {
    const read = this.#read(text);
    return { uri, text, ...read, reader: readerOf(read.shop.unit, this.wishes.lengths), wishes: this.wishes };
  }

  /** Drops all that is kept of a job. */
  forget(uri: string): void {
    this.#jobs.delete(uri);
  }

  #compute(part: CarcassPart, basis: Basis, used: UsedShop): CarcassAnalysis {
    this.computed += 1;
    return analyseCarcass(part, basis, used.shop, this.#derived);
  }

  /** As one of those known by what they say without their names; else worked out, and known from then on. */
  #likeAnother(
    part: CarcassPart,
    alike: Map<string, CarcassAnalysis>,
    workOut: () => CarcassAnalysis,
  ): CarcassAnalysis {
    const own = unnamed(part);
    if (own === null) return workOut();
    const other = alike.get(own.likeness);
    const carcass = (other && renamed(other, own.name)) ?? workOut();
    if (other === undefined) alike.set(own.likeness, carcass);
    return carcass;
  }

  #shopFor(jobUri: string, head: ReadHead): FoundShop {
    const reference = head.head.shopRef;
    if (reference === null) return head.shopUnread ? builtIn([], standIn) : builtIn(noShop(head.head));
    const reading = this.#host.readShop(jobUri, reference.value);
    if (!reading.ok) return builtIn(missingShop(reference, reading.message, reading.instead), standIn);
    const read = this.#read(reading.text);
    return {
      used: { shop: read.shop, uri: reading.uri, text: reading.text },
      findings: brokenShop(reference, read, reading.text),
    };
  }

  #read(text: string): ReadShop {
    const known = this.#shops.get(text);
    if (known !== undefined) return known;
    const read = readShop(text);
    // A shop file that is typed in has a new text at every key: the oldest is dropped.
    if (this.#shops.size >= SHOPS_KEPT) this.#shops.delete(this.#shops.keys().next().value!);
    this.#shops.set(text, read);
    return read;
  }
}

const SHOPS_KEPT = 16;

/** Of so many carcasses that are in the text no more, what they said is kept: one types, and takes it back. */
const GONE_KEPT = 32;

/** The newest of what is known, with room for `count` that are still there. */
function newest<V>(all: ReadonlyMap<string, V>, count: number): ReadonlyMap<string, V> {
  return all.size <= count + GONE_KEPT ? all : new Map([...all].slice(-count));
}

/** The built-in shop in the place of one that cannot be had. */
const standIn: Shop = { ...neutralShop, standsIn: true };

function builtIn(findings: readonly FileFinding[], shop = neutralShop): FoundShop {
  return { used: { shop, uri: null, text: '' }, findings };
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
