import type { Span } from '../document/structure.js';
import type { JobAnalysis } from '../engine.js';
import { means } from '../job/panel-key.js';
import type { Mention } from '../mentions/mention.js';
import type { Shop } from '../shop/model.js';
import { neutralShop } from '../shop/neutral.js';
import { listOf } from '../shop/stock.js';
import type { AnalysedFile } from './file.js';

/** What runs of a text can be that its grammar cannot tell: things by their names, and keys that do nothing. */
export const TOKEN_SORTS = [
  'carcass',
  'panel',
  'board',
  'band',
  'fitting',
  'machine',
  'stop',
  'clamp',
  'unused-key',
] as const;
export type TokenSort = (typeof TOKEN_SORTS)[number];

/** A run of a file's text, on one line. */
export interface Token extends Span {
  readonly sort: TokenSort;
  /** The thing is described here under this name. */
  readonly gives: boolean;
  /** The thing comes with the built-in shop. */
  readonly builtIn: boolean;
}

/**
 * Names and keys of a file that mean more than their place in the text tells, in its order and apart from each other. A name
 * by which nothing is known is not among them.
 * @param mentions the names in the text
 */
export function tokensOf(file: AnalysedFile, mentions: readonly Mention[]): readonly Token[] {
  const { text, shop } = file.analysis;
  const names = mentions.flatMap((mention): readonly Token[] => {
    // Hinges, slides and pulls are fittings to the eye.
    const of = ['hinge', 'slide', 'pull', 'bracket', 'wardrobe-rail', 'foot', 'angle'].includes(mention.of)
      ? 'fitting'
      : mention.of;
    const sort = TOKEN_SORTS.find((one) => one === of);
    const { start, end, gives } = mention;
    if (sort === undefined) return [];
    if (sort === 'panel' && file.kind === 'job') return hasPanel(file.analysis, mention) ? [plain(sort, mention)] : [];
    if (gives) return [{ sort, start, end, gives, builtIn: false }];
    const known = knownIn(shop, mention);
    return known === null ? [] : [{ sort, start, end, gives, ...known }];
  });
  return [...names, ...unusedKeys(file).map((span) => plain('unused-key', span))]
    .filter(({ start, end }) => start < end && !/[\r\n]/.test(text.slice(start, end)))
    .toSorted((a, b) => a.start - b.start);
}

function plain(sort: TokenSort, { start, end }: Span): Token {
  return { sort, start, end, gives: false, builtIn: false };
}

/** A carcass that is being typed at has the panels that it had last. */
function hasPanel(analysis: JobAnalysis, { name, start }: Mention): boolean {
  const index = analysis.carcassAt(start);
  const panels = index === null ? undefined : analysis.drawable(index)?.carcass.carcass?.panels;
  return panels?.some(({ key }) => means(name, key)) === true;
}

/** Null where the shop has nothing of that name. */
function knownIn(shop: Shop, { of, name }: Mention): { readonly builtIn: boolean } | null {
  const list = listOf(of);
  if (list === null) return null;
  const thing = shop[list].get(name);
  if (thing === undefined) return shop.unread?.[list].has(name) === true ? { builtIn: false } : null;
  return { builtIn: neutralShop[list].get(name) === thing };
}

/** Where the keys stand of which a finding says that they do nothing. */
function unusedKeys(file: AnalysedFile): readonly Span[] {
  const isUnused = ({ rule }: { readonly rule: string }): boolean => rule === 'value-unused';
  if (file.kind === 'shop') return file.analysis.findings.filter(isUnused).map(({ place }) => place);
  const { analysis } = file;
  return analysis
    .known()
    .filter(({ finding }) => isUnused(finding))
    .map(({ finding, carcass }) => analysis.locate(finding.place, carcass))
    .filter((where) => where.file === 'job');
}
