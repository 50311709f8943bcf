import { lineEnd, lineStart as startOfLine } from '../document/lines.js';

/** Where a cursor stands in a text that need not be whole: read off the indentation and the line alone. */
export interface LineContext {
  /** From the root to what is being written: keys, and 0 for any item of a list. For a value its own key is the last step. */
  readonly path: readonly (string | number)[];
  /** A key is being written, or a value, or the beginning of a list item, which may become either. */
  readonly what: 'key' | 'value' | 'item';
  /** Where the word at the cursor starts and ends; quotes around it stand outside. */
  readonly start: number;
  readonly end: number;
  /** The quote that is open before the word, and whether it is closed behind it. */
  readonly quote: { readonly sign: '"' | "'"; readonly closed: boolean } | null;
  /** A key is being renamed: its colon stands behind it already. */
  readonly hasColon: boolean;
  /** Spaces that the line lacks (or, below 0, has too many) to start where the lines beside it do. */
  readonly shift: number;
  /** Keys that stand in the same map already, the one at the cursor left out. */
  readonly present: ReadonlySet<string>;
  /** In brackets on one line. */
  readonly inFlow: boolean;
  /** Room for more on the lines below, under the key of an empty value: how far its key stands in from the indentation, behind dashes. Null elsewhere. */
  readonly below: number | null;
}

/** Lines further than this from the cursor are not looked at: a file's outline is never that deep. */
const MOST_LINES = 5000;

interface Line {
  /** Column of the dash of each list item that starts in the line. */
  readonly dashes: readonly number[];
  /** Column of what stands behind the dashes. */
  readonly column: number;
  readonly content: string;
}

/** That a key ends with no blank keeps a long run of blanks from being tried at each of them. */
const KEY = /^("[^"]*"|'[^']*'|[^\s:#](?:[^:#]*[^\s:#])?)\s*:(?:\s|$)/;

const keyOf = (content: string): string | null => KEY.exec(content)?.[1] ?? null;

/** Null where nothing can be offered: in a comment, in brackets over several lines, before text or behind a value. */
export function lineContext(text: string, offset: number): LineContext | null {
  const first = text.startsWith('\uFEFF') ? 1 : 0;
  const lineStart = Math.max(startOfLine(text, offset), first);
  const before = text.slice(lineStart, Math.max(offset, lineStart));
  if (inComment(before)) return null;
  const rest = text.slice(Math.max(offset, lineStart), lineEnd(text, offset)).replace(/\r$/, '');
  const line = lineOf(before);
  const flow = scanFlow(line.content);
  const key = flow.open ? flow.leadKey : keyOf(line.content);
  const isBlank = line.content === '' && line.dashes.length === 0 && /^\s*(?:#|$)/.test(rest);
  const outer = ancestors(text, lineStart, line, isBlank);
  if (outer === null || flow.closed) return null;
  // In the indentation of a line that is written already, or before the next key in brackets, there is room for nothing.
  const isFree = !/^\s+[^\s#,\]}]/.test(rest);

  if (!flow.open && key === null) {
    const column = line.column + outer.shift;
    const present = siblings(text, lineStart, { ...line, column });
    const what = line.dashes.length > 0 && present.size === 0 ? 'item' : 'key';
    const word = wordAt(line.content, rest, offset, what, false);
    if (word === null || (line.content === '' && !isFree)) return null;
    return { path: outer.path, what, ...word, present, inFlow: false, shift: outer.shift, below: null };
  }
  if (flow.open) {
    const written = line.content.slice(flow.start);
    const word = wordAt(written, rest, offset, flow.what, true);
    if (word === null || (written === '' && flow.what !== 'value' && !isFree)) return null;
    return {
      path: [...outer.path, ...(key === null ? [] : [unquoted(key)]), ...flow.path],
      what: flow.what,
      ...word,
      present: flow.what === 'key' ? flowKeys(line.content, rest) : new Set<string>(),
      inFlow: true,
      shift: 0,
      below: null,
    };
  }
  const value = line.content.slice(line.content.indexOf(':', key!.length) + 1).trimStart();
  const word = wordAt(value, rest, offset, 'value', false);
  // Behind a map or list in brackets no value follows, nor before one that stands on the lines below.
  if (word === null || /^[[{]/.test(value)) return null;
  const isEmpty = word.end === word.start;
  if (isEmpty && columnBelow(text, lineStart, line.column, Infinity) !== null) return null;
  const path = [...outer.path, unquoted(key!)];
  const below = isEmpty && rest.trim() === '' ? line.column - (line.dashes[0] ?? line.column) : null;
  return { path, what: 'value', ...word, present: new Set(), inFlow: false, shift: 0, below };
}

type Word = Pick<LineContext, 'start' | 'end' | 'quote' | 'hasColon'>;

/** The word around the cursor: what of it is written before it, and what follows on the line; null where there is none to write. */
function wordAt(
  written: string,
  rest: string,
  offset: number,
  what: LineContext['what'],
  inFlow: boolean,
): Word | null {
  const [sign] = written;
  // What is in brackets is no word to be replaced.
  if (what !== 'key' && /^\s*[[{]/.test(rest)) return null;
  if (sign === '"' || sign === "'") {
    if (written.includes(sign, 1)) return null;
    const close = rest.indexOf(sign);
    const length = close === -1 ? restLength(rest, what, inFlow) : close;
    const hasColon = what !== 'value' && /^\s*:(?:\s|$)/.test(rest.slice(close + 1));
    return {
      start: offset - written.length + 1,
      end: offset + length,
      quote: { sign, closed: close !== -1 },
      hasColon,
    };
  }
  const length = restLength(rest, what, inFlow);
  return {
    start: offset - written.length,
    end: offset + length,
    quote: null,
    hasColon: what !== 'value' && /^\s*:(?:\s|$)/.test(rest.slice(length)),
  };
}

/** How much of what stands behind the cursor belongs to its word: a key up to its colon, a value up to a comma or remark. */
function restLength(rest: string, what: LineContext['what'], inFlow: boolean): number {
  const stop = inFlow ? /\s#|[,[\]{}]|$/ : /\s#|$/;
  const value = rest.slice(0, rest.search(stop)).trimEnd();
  if (what === 'value') return value.length;
  const colon = value.search(/:(?:\s|$)/);
  return (colon === -1 ? value : value.slice(0, colon).trimEnd()).length;
}

function inComment(before: string): boolean {
  let quote = '';
  for (let index = 0; index < before.length; index += 1) {
    const sign = before[index]!;
    if (quote !== '') {
      if (sign === quote) quote = '';
    } else if ((sign === '"' || sign === "'") && /[\s[{,:]|^$/.test(before[index - 1] ?? '')) quote = sign;
    else if (sign === '#' && /\s|^$/.test(before[index - 1] ?? '')) return true;
  }
  return false;
}

function lineOf(text: string): Line {
  const dashes: number[] = [];
  let column = text.search(/\S|$/);
  while (text[column] === '-' && /\s|^$/.test(text[column + 1] ?? '')) {
    dashes.push(column);
    const rest = text.slice(column + 1).search(/\S|$/);
    column += 1 + rest;
  }
  return { dashes, column, content: text.slice(column) };
}

interface Outer {
  readonly path: (string | number)[];
  readonly shift: number;
}

/**
 * Keys and list steps that lead to the map in which a line's content stands, and how far the line is off the column in which
 * that map's lines start. Null inside brackets that a line above opens.
 */
function ancestors(text: string, lineStart: number, line: Line, isBlank: boolean): Outer | null {
  const path: (string | number)[] = [];
  const own = line.dashes[0] ?? line.column;
  let { column } = line;
  /** Where the lines of the map start that the line is in; null until its owner is met. */
  let wanted: number | null = null;
  /** Where the line last looked at starts: at the end the first one under the owner. */
  let firstBelow: number | null = null;
  const outOf = (dashes: readonly number[], deeper: number): void => {
    // A dash to the left of the content means: the content is inside its item.
    for (const dash of dashes.toReversed()) {
      if (dash >= deeper) continue;
      path.unshift(0);
      // The key that holds the list may stand in the column of its dashes.
      column = dash + 0.5;
    }
  };
  outOf(line.dashes, column + 1);
  let end = lineStart - 1;
  for (let count = 0; end >= 0 && column > 0 && count < MOST_LINES; count += 1) {
    const start = startOfLine(text, end);
    const raw = text.slice(start, end).replace(/^\uFEFF|\r$/g, '');
    end = start - 1;
    if (raw.trim() === '' || raw.trimStart().startsWith('#')) continue;
    const above = lineOf(raw);
    if (above.column < column) {
      const key = keyOf(above.content);
      if (scanFlow(above.content).open) return null;
      if (key === null && above.dashes.length === 0) continue;
      if (wanted === null && line.dashes.length === 0 && hasValue(above.content)) {
        // Nothing can stand under a key with a value: the line belongs beside it.
        wanted = above.column;
        ({ column } = above);
        outOf(above.dashes, column);
        continue;
      }
      wanted ??= firstBelow ?? columnBelow(text, lineStart, above.column, isBlank ? Infinity : own) ?? own;
      if (key !== null) path.unshift(unquoted(key));
      ({ column } = above);
      outOf(above.dashes, column + 1);
    } else if (above.dashes.some((dash) => dash + 0.5 < column)) {
      // `- at: 300` above a key in the same column: the key is in the same item.
      wanted ??= above.column;
      outOf(above.dashes, column);
    }
    firstBelow = above.dashes[0] ?? above.column;
  }
  return { path, shift: wanted === null ? 0 : wanted - own };
}

/** True for a key with a value on its line that does not go on below it. */
function hasValue(content: string): boolean {
  return keyOf(content) !== null && !/:\s*(?:#.*|[|>][-+\d]*\s*(?:#.*)?|&\S*\s*)?$/.test(content);
}

/** Where the next line below starts, if it is further in than the owner of both. What is further in than `own` is passed over. */
function columnBelow(text: string, lineStart: number, owner: number, own: number): number | null {
  let start = text.indexOf('\n', lineStart) + 1;
  for (let count = 0; start > 0 && count < MOST_LINES; count += 1) {
    const newline = text.indexOf('\n', start);
    const raw = text.slice(start, newline === -1 ? text.length : newline);
    start = newline + 1;
    if (raw.trim() === '' || raw.trimStart().startsWith('#')) continue;
    const below = lineOf(raw);
    const column = below.dashes[0] ?? below.column;
    if (column > own) continue;
    return column > owner ? column : null;
  }
  return null;
}

/** Keys in the column of the line, above and below it, up to where the map ends. */
function siblings(text: string, lineStart: number, line: Line): Set<string> {
  const keys = new Set<string>();
  /** False where the map ends. */
  const take = (raw: string): boolean => {
    if (raw.trim() === '' || raw.trimStart().startsWith('#')) return true;
    const other = lineOf(raw.replace(/^\uFEFF|\r$/g, ''));
    const indent = other.dashes[0] ?? other.column;
    if (other.column === line.column) {
      const key = keyOf(other.content);
      if (key !== null) keys.add(unquoted(key));
    }
    return indent >= line.column;
  };
  if (line.dashes.length === 0) {
    let end = lineStart - 1;
    for (let count = 0; end >= 0 && count < MOST_LINES; count += 1) {
      const start = startOfLine(text, end);
      if (!take(text.slice(start, end))) break;
      end = start - 1;
    }
  }
  let start = text.indexOf('\n', lineStart) + 1;
  for (let count = 0; start > 0 && count < MOST_LINES; count += 1) {
    const newline = text.indexOf('\n', start);
    const raw = text.slice(start, newline === -1 ? text.length : newline);
    if (lineOf(raw).dashes.some((dash) => dash < line.column) || !take(raw)) break;
    if (newline === -1) break;
    start = newline + 1;
  }
  return keys;
}

interface Flow {
  readonly open: boolean;
  /** A bracket has just been closed in one that is open: only a comma can follow. */
  readonly closed: boolean;
  /** The block key before the first bracket. */
  readonly leadKey: string | null;
  readonly path: readonly (string | number)[];
  readonly what: 'key' | 'value' | 'item';
  /** Where the word at the end starts in the content. */
  readonly start: number;
}

/** The key whose value is to begin behind this text; null where none is. */
function keyBefore(before: string): string | null {
  const written = before.trimEnd();
  return written.length < before.length && written.endsWith(':') ? written.slice(0, -1).trimEnd() : null;
}

/** Whether a bracket there is the first of a value: at the beginning, or behind a colon and a blank. */
function mayOpenAt(content: string, index: number): boolean {
  let before = index;
  while (before > 0 && /\s/.test(content[before - 1]!)) before -= 1;
  return index === 0 || (before < index && content[before - 1] === ':');
}

/** Follows the brackets of one line up to its end. */
function scanFlow(content: string): Flow {
  const stack: { readonly map: boolean; key: string | null }[] = [];
  let leadKey: string | null = null;
  let start = 0;
  let quote = '';
  let closed = false;
  for (let index = 0; index < content.length; index += 1) {
    const sign = content[index]!;
    if (quote !== '') {
      if (sign === quote) quote = '';
      continue;
    }
    const top = stack.at(-1);
    if ((sign === '"' || sign === "'") && content.slice(start, index).trim() === '') quote = sign;
    else if ((sign === '{' || sign === '[') && (stack.length > 0 || mayOpenAt(content, index))) {
      if (stack.length === 0) leadKey = keyBefore(content.slice(0, index));
      stack.push({ map: sign === '{', key: null });
      start = index + 1;
      closed = false;
    } else if (top !== undefined && (sign === '}' || sign === ']')) {
      stack.pop();
      start = index + 1;
      closed = true;
    } else if (top !== undefined && sign === ',') {
      top.key = null;
      start = index + 1;
      closed = false;
    } else if (top?.map === true && sign === ':' && /\s|^$/.test(content[index + 1] ?? '') && top.key === null) {
      top.key = unquoted(content.slice(start, index).trim());
      start = index + 1;
    }
  }
  const top = stack.at(-1);
  const path = stack.flatMap(({ map, key }): (string | number)[] => (map ? (key === null ? [] : [key]) : [0]));
  const word = content.slice(start);
  return {
    open: top !== undefined,
    closed: top !== undefined && closed,
    leadKey,
    path,
    what: top?.map === true ? (top.key === null ? 'key' : 'value') : 'item',
    start: start + (word.length - word.trimStart().length),
  };
}

/** Keys of the innermost bracketed map that is open at the end of `before`. */
function flowKeys(before: string, after: string): Set<string> {
  let depth = 0;
  let from = before.length;
  while (from > 0) {
    from -= 1;
    if (/[}\]]/.test(before[from]!)) depth += 1;
    else if (/[{[]/.test(before[from]!)) {
      if (depth === 0) break;
      depth -= 1;
    }
  }
  const inner = before.slice(from + 1);
  const head = inner.slice(0, inner.lastIndexOf(',') + 1);
  const rest = /^[^,}]*(,[^}]*)?/.exec(after)?.[1] ?? '';
  return new Set(
    [...`${head}${rest}`.matchAll(/(?:^|,)\s*([^\s,:{}[\]]+)\s*:(?=\s|$)/g)].map((match) => unquoted(match[1]!)),
  );
}

function unquoted(key: string): string {
  return /^(["']).*\1$/.test(key) ? key.slice(1, -1) : key;
}
