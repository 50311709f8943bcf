import { createHash } from 'node:crypto';
import type { TextEdit } from '../../../shared-core/document/pieces.js';

/** Figures of drawings are floats whose last digits a platform may choose; a micrometre is finer than any line. */
const rounded = (value: number): number => (Number.isInteger(value) ? value : Math.round(value * 1000) / 1000 + 0);

/** Where a thing stands in the text is recorded with findings and hovers; here it would only move whenever a text does. */
const LEFT_OUT = new Set(['place', 'path', 'sources', 'keyPlace']);

type Plain = string | number | boolean | null | readonly Plain[] | { readonly [key: string]: Plain };

/** Data without the places in the text: a value with its place is the value, a map is its entries. */
function plain(value: unknown): Plain {
  if (value === null || value === undefined) return null;
  if (typeof value === 'number') return rounded(value);
  if (typeof value === 'string' || typeof value === 'boolean') return value;
  if (Array.isArray(value)) return value.map(plain);
  if (value instanceof Map || value instanceof Set) return [...value].map(plain);
  if (typeof value !== 'object') throw new Error(`nothing to record: ${typeof value}`);
  const entries = Object.entries(value).filter(([key, one]) => one !== undefined && !LEFT_OUT.has(key));
  const [first] = entries;
  if (entries.length === 1 && first?.[0] === 'value' && 'place' in value) return plain(first[1]);
  return Object.fromEntries(entries.map(([key, one]) => [key, plain(one)]));
}

/** Data in a line, with no more quotes and brackets than a reader needs. */
export function flat(value: unknown): string {
  const written = (one: Plain): string => {
    if (one === null) return '-';
    if (typeof one !== 'object') return String(one);
    if (Array.isArray(one)) return `[${one.map(written).join(', ')}]`;
    return `{${Object.entries(one as Readonly<Record<string, Plain>>)
      .map(([key, of]) => `${key}: ${written(of)}`)
      .join(', ')}}`;
  };
  return written(plain(value)).replaceAll('\n', '⏎');
}

/** So much of a hash that a change shows, for what is too long to be read. */
export function digest(value: unknown): string {
  const text = typeof value === 'string' ? value : JSON.stringify(plain(value));
  return createHash('sha256').update(text).digest('hex').slice(0, 8);
}

/** Lines under a head, which stands there also where there are none. */
export const under = (head: string, lines: readonly string[]): readonly string[] => [
  head,
  ...lines.map((line) => `  ${line}`),
];

/** '12:5', counted from 1. */
export function lineAndColumn(text: string, offset: number): string {
  const before = text.slice(0, offset);
  return `${before.split('\n').length}:${offset - before.lastIndexOf('\n')}`;
}

/** What an edit does: '12:5 "330" > "328"'. */
export function edited(text: string, edits: readonly TextEdit[]): string {
  return edits
    .map(
      ({ start, end, text: put }) =>
        `${lineAndColumn(text, start)} ${JSON.stringify(text.slice(start, end))} > ${JSON.stringify(put)}`,
    )
    .join(' & ');
}
