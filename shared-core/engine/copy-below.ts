import { lineEnd, lineStart } from '../document/lines.js';
import type { TextEdit } from '../document/pieces.js';
import { keyText } from '../document/scalar-text.js';
import type { MapEntry } from '../document/tree.js';

/** A copy of an entry of a text under a name that is free. */
export interface Copied {
  readonly free: string;
  readonly edit: TextEdit;
}

/** The names that are taken, and what of a name is only its number. */
interface Taken {
  readonly names: ReadonlySet<string>;
  readonly number: RegExp;
}

/**
 * The lines of an entry once more, below itself, its comments with it. Null where it stands in brackets, or has marks, which
 * name something once.
 * @param base where the places of the entry are counted from
 */
export function copyBelow(text: string, entry: MapEntry, base: number, taken: Taken): Copied | null {
  const start = base + entry.keyPlace.start;
  const end = lineEnd(text, base + entry.place.end);
  const indent = text.slice(lineStart(text, start), start);
  const lines = text.slice(base + entry.keyPlace.end, end).replace(/\r$/, '');
  if (!/^\uFEFF?[ ]*$/.test(indent) || /(?:^|[\s[{,])[&*]/.test(lines)) return null;
  const { names } = taken;
  const stem = entry.key.replace(taken.number, '');
  let number = 2;
  while (names.has(`${stem}-${number}`)) number += 1;
  const free = `${stem}-${number}`;
  const eol = text.includes('\r\n') ? '\r\n' : '\n';
  const at = end - (text[end - 1] === '\r' ? 1 : 0);
  return { free, edit: { start: at, end: at, text: `${eol}${indent}${keyText(free, false)}${lines}` } };
}
