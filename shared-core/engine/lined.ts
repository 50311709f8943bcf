import type { CarcassPart, JobParts } from '../document/cut.js';
import { ALONE, lineagesOf, linkOf, type Lineage, type Link } from '../job/lineage.js';

/** A carcass, and what it is like from the nearest on; null where it names none that it can be like. */
export interface Lined {
  readonly part: CarcassPart;
  readonly bases: readonly CarcassPart[] | null;
}

/** What the carcasses of a job say of one another, in their order. */
export interface Lines {
  readonly links: readonly Link[];
  readonly lineages: readonly Lineage[];
  /** The links by the texts that they were read from, for the next time. */
  readonly byText: ReadonlyMap<string, Link>;
}

/**
 * What carcasses say of one another; null where none of the file can say anything.
 * @param before those of an earlier text, of which what has not changed is not read again
 */
export function linesIn(parts: JobParts, before: Lines | null = null): Lines | null {
  if (!parts.carcasses.some(({ text }) => text.includes('like'))) return null;
  const byText = new Map<string, Link>();
  const links = parts.carcasses.map((part) => {
    // All carcasses of an uncut text have that one text.
    if (part.whole !== null) return linkOf(part);
    const link = byText.get(part.text) ?? before?.byText.get(part.text) ?? linkOf(part);
    byText.set(part.text, link);
    return link;
  });
  return { links, lineages: lineagesOf(links), byText };
}

/** Each carcass with what it is like. */
export function linedUp({ carcasses }: JobParts, lines: Lines | null): readonly Lined[] {
  return carcasses.map((part, i) => {
    const { bases, fault } = lines?.lineages[i] ?? ALONE;
    return { part, bases: fault === null ? bases.map((base) => carcasses[base]!) : null };
  });
}
