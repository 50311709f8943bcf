import { parseDocument } from 'yaml';
import {
  Engine,
  explain,
  foldsOf,
  formatEdits,
  hintsIn,
  namesOfText,
  offersAt,
  outlineOf,
  repairsFor,
  spansAt,
  tell,
  tokensOf,
  type JobAnalysis,
} from '../../shared-core/service.js';
import type { FileFinding } from '../../shared-core/engine.js';
import type { Place } from '../../shared-core/document/place.js';
import { demoText, NEVER_SHOWN } from '../core/findings/jobs.js';
import { asMessage } from '../in-words.js';
import type { Damaged } from './documents.js';

const JOB = 'file:///fuzz/fuzz.carcass.yaml';
const DAMAGED = 'fuzz.shop.yaml';
const SHOP = `file:///fuzz/${DAMAGED}`;
const SHOPS = new Map(['shed.shop.yaml', 'faults.shop.yaml'].map((name) => [name, demoText(name)]));

/** An engine that is given damaged files one after the other, as edits of the same two. */
export class Reader {
  #engine = this.#another();
  #shop = '';
  #read = 0;

  #another(): Engine {
    return new Engine({
      readShop: (_uri, reference) => {
        if (reference === DAMAGED) return { ok: true, uri: SHOP, text: this.#shop };
        const text = SHOPS.get(reference);
        if (text !== undefined) return { ok: true, uri: `file:///fuzz/${reference}`, text };
        return { ok: false, message: asMessage(`There is no file ${reference} beside this job.`) };
      },
    });
  }

  /** Throws where the file does, where a fault is told nowhere, or where it is told otherwise than to somebody who opens it. */
  read({ kind, text }: Damaged, at: number): void {
    this.#read += 1;
    if (kind === 'shop') {
      this.#shop = text;
      this.#readShop(text, at);
      return;
    }
    const analysis = this.#engine.analyse(JOB, text);
    checkJob(analysis, this.#isAsked ? analysis.findings() : analysis.known());
    if (this.#isAsked) askOf({ kind, analysis }, at % (text.length + 1));
    if (this.#read % COLD_EVERY === 0) equal(told(analysis), told(this.#another().analyse(JOB, text)), 'read cold');
  }

  #readShop(text: string, at: number): void {
    const analysis = this.#engine.analyseShop(SHOP, text);
    for (const { place, message, rule } of analysis.findings) {
      within(place, text.length, rule);
      sound(rule, tell(message, 'mm'), text);
    }
    if (analysis.findings.length === 0 && isNoYaml(text)) throw new Error('nothing is said of what is no YAML');
    if (!this.#isAsked) return;
    askOf({ kind: 'shop', analysis }, at % (text.length + 1));
    const job = this.#engine.analyse(JOB, OF_THE_SHOP);
    checkJob(job, job.findings());
  }

  get #isAsked(): boolean {
    return this.#read % ASKED_EVERY === 0;
  }
}

/**
 * So many are read for one that is asked about and that the slow rules judge, and for one that is read again by a new engine:
 * both take longer than a reading.
 */
const ASKED_EVERY = 10;
const COLD_EVERY = 50;

/** Asks its shop for one of each kind of thing. */
const OF_THE_SHOP = `shop: ${DAMAGED}
carcasses:
  a: { kind: base, width: 600, loose-shelves: 1, doors: left, joint: dowel-8x30 }
`;

function checkJob(analysis: JobAnalysis, findings: readonly FileFinding[]): void {
  const { parts, text } = analysis;
  for (const { finding, carcass } of findings) {
    const { place, rule, message } = finding;
    const own = carcass === null ? text : (parts.carcasses[carcass]?.text ?? '');
    if (place.part === 'self') within(place, own.length, rule);
    else if (place.part === 'shop') within(place, analysis.used.text.length, rule);
    else within(place, text.length, rule);
    sound(rule, tell(message, 'mm'), text + analysis.used.text);
  }
  if (findings.length === 0 && isNoYaml(text)) throw new Error('nothing is said of what is no YAML');
  analysis.carcasses.forEach(({ boring }, index) => {
    if (boring === null && findings.length === 0)
      throw new Error(`nothing is said of carcass ${index}, which is not built`);
  });
}

/** What an editor asks of a file wherever the cursor is. */
function askOf(file: Parameters<typeof explain>[0], at: number): void {
  const { text } = file.analysis;
  explain(file, at);
  offersAt(file, at, () => ['shed.shop.yaml']);
  outlineOf(file);
  tokensOf(file, namesOfText(file.kind, text, undefined).mentions);
  foldsOf(text);
  formatEdits(text);
  spansAt(file, at);
  repairsFor(file, () => true);
  hintsIn(file, 0, text.length, 'all');
}

function within({ start, end }: Place, length: number, rule: string): void {
  if (!(start >= 0 && end >= start && end <= length))
    throw new Error(`${rule} stands at ${start} to ${end} of ${length} signs`);
}

function sound(rule: string, words: string, text: string): void {
  if (NEVER_SHOWN.has(rule)) throw new Error(`${rule}: ${words}`);
  const [slip] = /\b(?:NaN|undefined|Infinity)\b/.exec(words) ?? [];
  if (words === '' || (slip !== undefined && !text.includes(slip))) throw new Error(`${rule} says: ${words}`);
}

/** By a reader of YAML that is none of ours; it passes over some of what it need not. */
const isNoYaml = (text: string): boolean => parseDocument(text).errors.length > 0;

const told = (analysis: JobAnalysis): string =>
  JSON.stringify(
    analysis
      .findings()
      .map(({ finding, carcass }) => [
        finding.rule,
        carcass,
        tell(finding.message, 'mm'),
        analysis.locate(finding.place, carcass),
      ]),
  );

function equal(one: string, other: string, what: string): void {
  if (one !== other) throw new Error(`${what} it says ${other}, not ${one}`);
}
