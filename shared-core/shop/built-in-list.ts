import type { Rewrite } from '../document/finding.js';
import { applyEdits, type TextEdit } from '../document/pieces.js';
import type { Path } from '../document/place.js';
import { readTree } from '../document/read.js';
import type { TreeNode } from '../document/tree.js';
import type { Unit } from '../length/units.js';
import { schemaAt } from '../schema/at.js';
import { NEUTRAL_SHOP_TEXT } from './neutral-text.js';
import { readShop, type ReadShop } from './read.js';
import { shopSchema } from './schema.js';
import { sectionsOf, type StockList } from './stock.js';

/**
 * Writes a list of the built-in shop into the text of a shop file that leaves it out, below all that stands there.
 * @param before the text as it was read
 * @returns null where the text takes no more keys there, or would read worse afterwards
 */
export function withBuiltInList(text: string, before: ReadShop, list: StockList): Rewrite | null {
  const eol = text.includes('\r\n') ? '\r\n' : '\n';
  const gap = /(?:^\uFEFF?|\n)$/.test(text) ? eol : eol + eol;
  const lines = gap + builtInLines(list, before.shop.unit).replaceAll('\n', eol);
  const after = readShop(text + lines);
  if (after.leftOut.includes(list) || after.findings.length > before.findings.length) return null;
  return { part: 'shop', start: text.length, end: text.length, text: lines };
}

/** The lines of a list of the built-in shop, with their remarks, as a file of the unit has them. */
function builtInLines(list: StockList, unit: Unit): string {
  const paragraphs = NEUTRAL_SHOP_TEXT.trimEnd().split('\n\n');
  const lines = sectionsOf(list).flatMap((section) =>
    paragraphs.filter((one) => new RegExp(`^${section}:`, 'm').test(one)),
  );
  const text = `${lines.join('\n\n')}\n`;
  return unit === 'mm' ? text : applyEdits(text, [...inMillimetres(readTree(text, 'shop').root, [])]);
}

/** The unit behind every length that stands without one. */
function* inMillimetres(node: TreeNode | null, path: Path): Generator<TextEdit> {
  if (node?.kind === 'map') for (const { key, value } of node.entries) yield* inMillimetres(value, [...path, key]);
  else if (node?.kind === 'list')
    for (const [i, item] of node.items.entries()) yield* inMillimetres(item, [...path, i]);
  else if (node?.kind === 'scalar' && isLength(path))
    yield { ...node.place, text: node.text.replace(/\d+(?:\.\d+)?/g, (figure) => [figure, 'mm'].join(' ')) };
}

const isLength = (path: Path): boolean => ['length', 'span'].includes(schemaAt(shopSchema, path)?.schema.type ?? '');
