import { cutJob, type CarcassPart } from '../document/cut.js';
import { scalarText, type Quotes } from '../document/scalar-text.js';
import type { JobAnalysis } from '../engine.js';
import { mentionsInCarcass, mentionsInHead, mentionsInShop, moved } from '../mentions/files.js';
import type { Mention } from '../mentions/mention.js';

/** The names in one text. */
export interface NamesOfText {
  readonly text: string;
  /** In the order of the text. */
  readonly mentions: readonly Mention[];
  /** By the text of the carcass; an edit leaves those of all others as they are. */
  readonly carcasses: ReadonlyMap<string, readonly Mention[]>;
}

/**
 * The names in the text of a file. Never throws.
 * @param before those of an earlier text of the file, of which is taken what still holds
 */
export function namesOfText(kind: 'job' | 'shop', text: string, before: NamesOfText | undefined): NamesOfText {
  if (before?.text === text) return before;
  if (kind === 'shop') return { text, mentions: mentionsInShop(text), carcasses: new Map() };
  const parts = cutJob(text);
  const carcasses = new Map<string, readonly Mention[]>();
  const found = parts.carcasses.flatMap((part) => {
    if (part.whole !== null) return mentionsInCarcass(part);
    const mentions = carcasses.get(part.text) ?? before?.carcasses.get(part.text) ?? mentionsInCarcass(part);
    carcasses.set(part.text, mentions);
    return inFile(part, mentions);
  });
  const mentions = [...mentionsInHead(parts), ...found].toSorted((a, b) => a.start - b.start);
  return { text, mentions, carcasses };
}

/** The names that may stand at an offset of a job, without reading all of it. */
export function namesAround({ parts }: JobAnalysis, offset: number): readonly Mention[] {
  const part = parts.carcasses.find(({ start, end }) => start <= offset && offset < end);
  const found = part === undefined ? [] : inFile(part, mentionsInCarcass(part));
  return [...found, ...mentionsInHead(parts)];
}

/** The shop file that a job's text names; null where it names none. */
export function shopNamed(text: string): Mention | null {
  return mentionsInHead(cutJob(text)).find(({ of }) => of === 'shop-file') ?? null;
}

/** Another name, as it is written in the place of one in the text, in its quotes if it has some. */
export function writtenInPlace(name: string, { start, inFlow }: Mention, text: string): string {
  const before = text.charAt(start);
  const quotes: Quotes = before === '"' || before === "'" ? before : '';
  return scalarText(name, inFlow, quotes);
}

function inFile({ origin }: CarcassPart, mentions: readonly Mention[]): readonly Mention[] {
  return mentions.map((mention) => moved(mention, origin));
}
