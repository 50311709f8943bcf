/** Where a cursor stands in a text that need not be whole: read off the indentation and the line alone. */
export interface LineContext {
  /** From the root to what is being written: keys, and 0 for any item of a list. For a value its own key is the last step. */
  readonly path: readonly (string | number)[];
  /** A key is being written, or a value, or the beginning of a list item, which may become either. */
  readonly what: 'key' | 'value' | 'item';
  /** Where the word at the cursor starts; it ends at the cursor. */
  readonly start: number;
  /** Keys that stand in the same map already, the one at the cursor left out. */
  readonly present: ReadonlySet<string>;
  /** In brackets on one line. */
  readonly inFlow: boolean;
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

/** Null in a comment. */
export function lineContext(text: string, offset: number): LineContext | null {
  const lineStart = text.lastIndexOf('\n', offset - 1) + 1;
  const before = text.slice(lineStart, offset);
  if (inComment(before)) return null;
  const line = lineOf(before);
  const flow = scanFlow(line.content);
  const key = flow.open
    ? flow.leadKey
    : (/^("[^"]*"|'[^']*'|[^\s:#][^:#]*?)\s*:(?:\s|$)/.exec(line.content)?.[1] ?? null);
  const outer = ancestors(text, lineStart, line);

  if (flow.open) {
    const path = [...outer, ...(key === null ? [] : [unquoted(key)]), ...flow.path];
    const start = offset - (line.content.length - flow.start);
    const end = text.indexOf('\n', offset);
    const present =
      flow.what === 'key'
        ? flowKeys(line.content, text.slice(offset, end === -1 ? text.length : end))
        : new Set<string>();
    return { path, what: flow.what, start, present, inFlow: true };
  }
  if (key !== null) {
    const colon = line.content.indexOf(':', key.length);
    const value = line.content.slice(colon + 1);
    const word = value.trimStart();
    return {
      path: [...outer, unquoted(key)],
      what: 'value',
      start: offset - word.length,
      present: new Set(),
      inFlow: false,
    };
  }
  const present = siblings(text, lineStart, line);
  const isItem = line.dashes.length > 0 && present.size === 0;
  return { path: outer, what: isItem ? 'item' : 'key', start: offset - line.content.length, present, inFlow: false };
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

/** Keys and list steps that lead to the map in which a line's content stands. */
function ancestors(text: string, lineStart: number, line: Line): (string | number)[] {
  const path: (string | number)[] = [];
  let { column } = line;
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
    const start = text.lastIndexOf('\n', end - 1) + 1;
    const raw = text.slice(start, end).replace(/\r$/, '');
    end = start - 1;
    if (raw.trim() === '' || raw.trimStart().startsWith('#')) continue;
    const above = lineOf(raw);
    if (above.column < column) {
      const key = /^("[^"]*"|'[^']*'|[^\s:#][^:#]*?)\s*:(?:\s|$)/.exec(above.content)?.[1];
      if (key === undefined && above.dashes.length === 0) continue;
      if (key !== undefined) path.unshift(unquoted(key));
      ({ column } = above);
      outOf(above.dashes, column + 1);
    } else if (above.dashes.some((dash) => dash < column)) {
      // `- at: 300` above a key in the same column: the key is in the same item.
      outOf(above.dashes, column);
    }
  }
  return path;
}

/** Keys in the column of the line, above and below it, up to where the map ends. */
function siblings(text: string, lineStart: number, line: Line): Set<string> {
  const keys = new Set<string>();
  /** False where the map ends. */
  const take = (raw: string): boolean => {
    if (raw.trim() === '' || raw.trimStart().startsWith('#')) return true;
    const other = lineOf(raw.replace(/\r$/, ''));
    const indent = other.dashes[0] ?? other.column;
    if (other.column === line.column) {
      const key = /^("[^"]*"|'[^']*'|[^\s:#][^:#]*?)\s*:(?:\s|$)/.exec(other.content)?.[1];
      if (key !== undefined) keys.add(unquoted(key));
    }
    return indent >= line.column;
  };
  if (line.dashes.length === 0) {
    let end = lineStart - 1;
    for (let count = 0; end >= 0 && count < MOST_LINES; count += 1) {
      const start = text.lastIndexOf('\n', end - 1) + 1;
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
  /** The block key before the first bracket. */
  readonly leadKey: string | null;
  readonly path: readonly (string | number)[];
  readonly what: 'key' | 'value' | 'item';
  /** Where the word at the end starts in the content. */
  readonly start: number;
}

/** Follows the brackets of one line up to its end. */
function scanFlow(content: string): Flow {
  const stack: { readonly map: boolean; key: string | null }[] = [];
  let leadKey: string | null = null;
  let start = 0;
  let quote = '';
  for (let index = 0; index < content.length; index += 1) {
    const sign = content[index]!;
    if (quote !== '') {
      if (sign === quote) quote = '';
      continue;
    }
    const top = stack.at(-1);
    if ((sign === '"' || sign === "'") && content.slice(start, index).trim() === '') quote = sign;
    else if ((sign === '{' || sign === '[') && (stack.length > 0 || /(?::\s+|^)$/.test(content.slice(0, index)))) {
      if (stack.length === 0) leadKey = /^(.*?)\s*:\s+$/.exec(content.slice(0, index))?.[1] ?? null;
      stack.push({ map: sign === '{', key: null });
      start = index + 1;
    } else if (top !== undefined && (sign === '}' || sign === ']')) {
      stack.pop();
      start = index + 1;
    } else if (top !== undefined && sign === ',') {
      top.key = null;
      start = index + 1;
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
