import type { CarcassPart } from '../document/cut.js';
import { nameIn, readCarcassTree } from '../document/parts.js';
import type { Located } from '../document/place.js';

/** A carcass by its name, and what it says it is like. */
export interface Link {
  readonly name: string;
  readonly like: Located<string> | null;
}

/** Which carcasses one is like, by their numbers: the one that it names, what that one is like, and so on. */
export interface Lineage {
  readonly bases: readonly number[];
  readonly fault: LineageFault | null;
}

export type LineageFault =
  /** It names no carcass of the file. */
  | { readonly kind: 'unknown' }
  /** It is like itself in the end: the carcasses on the way, itself first. */
  | { readonly kind: 'circular'; readonly names: readonly string[] }
  /** There are too many on the way. */
  | { readonly kind: 'far' }
  /** One of those on the way has such a fault. */
  | { readonly kind: 'above' };

/** So many carcasses may be like one another in a row. */
export const LONGEST_LINEAGE = 20;

export const ALONE: Lineage = { bases: [], fault: null };

/** What the text of a carcass says of it and another, read without the rest of it. */
export function linkOf(part: CarcassPart): Link {
  const own = part.whole === null ? part.text : part.text.slice(part.start, part.end);
  const { entry } = /\blike\b/.test(own) || part.whole !== null ? readCarcassTree(part) : { entry: null };
  if (entry === null) return { name: nameIn(own), like: null };
  const { value } = entry;
  const like = value?.kind === 'map' ? value.entries.find(({ key }) => key === 'like')?.value : undefined;
  if (like?.kind !== 'scalar') return { name: entry.key, like: null };
  return { name: entry.key, like: { value: like.text, place: like.place, path: ['like'], written: true } };
}

/** The lineage of every carcass, in the order of the links. Of several with one name it is the first that others are like. */
export function lineagesOf(links: readonly Link[]): readonly Lineage[] {
  const numbers = new Map<string, number>();
  links.forEach(({ name }, number) => {
    if (!numbers.has(name)) numbers.set(name, number);
  });
  const next = links.map(({ like }) => (like === null ? null : (numbers.get(like.value) ?? 'unknown')));
  return links.map((_, own) => lineageOf(own, next, links));
}

function lineageOf(own: number, next: readonly (number | 'unknown' | null)[], links: readonly Link[]): Lineage {
  const bases: number[] = [];
  for (let at = next[own]!, from = own; at !== null;) {
    if (at === 'unknown') return { bases, fault: { kind: from === own ? 'unknown' : 'above' } };
    if (at === own)
      return { bases, fault: { kind: 'circular', names: [own, ...bases].map((one) => links[one]!.name) } };
    if (bases.includes(at)) return { bases, fault: { kind: 'above' } };
    if (bases.length === LONGEST_LINEAGE) return { bases, fault: { kind: 'far' } };
    bases.push(at);
    from = at;
    at = next[at]!;
  }
  return bases.length === 0 ? ALONE : { bases, fault: null };
}
