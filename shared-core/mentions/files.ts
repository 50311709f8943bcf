import type { CarcassPart, JobParts } from '../document/cut.js';
import { readCarcassTree, readHeadTrees } from '../document/parts.js';
import { readTree } from '../document/read.js';
import { carcassSchema, jobSchema } from '../job/schema.js';
import { shopSchema } from '../shop/schema.js';
import type { Mention } from './mention.js';
import { mentionsUnder } from './walk.js';

/** The names in a shop file, in the order of the text. */
export function mentionsInShop(text: string): readonly Mention[] {
  return once(mentionsUnder(shopSchema, readTree(text, 'shop').root));
}

/** The names before and behind the carcasses of a job; offsets count from the start of the file. */
export function mentionsInHead(parts: JobParts): readonly Mention[] {
  const { head, tail } = readHeadTrees(parts);
  const { carcasses: _, ...fields } = jobSchema.fields;
  const schema = { ...jobSchema, fields };
  const below = mentionsUnder(schema, tail.root).map((mention) => moved(mention, parts.tail.start));
  return once([...mentionsUnder(schema, head.root), ...below]);
}

/** The names of one carcass, its own first; offsets count from its `origin`. */
export function mentionsInCarcass(part: CarcassPart): readonly Mention[] {
  const { entry } = readCarcassTree(part);
  if (entry === null || entry.key.trim() === '') return [];
  const { start, end } = entry.keyPlace;
  const own: Mention = { of: 'carcass', name: entry.key, within: [], gives: true, start, end, inFlow: false };
  return once([own, ...mentionsUnder(carcassSchema, entry.value, [entry.key])]);
}

/** The same mention, counted from where its text starts in the file. */
export function moved(mention: Mention, by: number): Mention {
  return by === 0 ? mention : { ...mention, start: mention.start + by, end: mention.end + by };
}

/** What several aliases lead to stands in the text once. */
function once(mentions: readonly Mention[]): readonly Mention[] {
  const seen = new Set<number>();
  return mentions.filter(({ start }) => !seen.has(start) && seen.add(start));
}
