import fc from 'fast-check';
import type { TreeNode } from '../../../shared-core/document/tree.js';

/** The values of a tree without their places: a text, a list, or the entries of a map in their order. */
export type Plain = string | null | readonly Plain[] | PlainMap;
export interface PlainMap {
  readonly entries: readonly (readonly [string, Plain])[];
}

export function plain(node: TreeNode | null): Plain {
  if (node === null) return null;
  if (node.kind === 'scalar') return node.text === '' && node.plain ? null : node.text;
  if (node.kind === 'list') return node.items.map(plain);
  return { entries: node.entries.map((entry) => [entry.key, plain(entry.value)] as const) };
}

export const isMap = (value: Plain): value is PlainMap =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
export const isList = (value: Plain): value is readonly Plain[] => Array.isArray(value);

const word = fc.constantFrom(
  'at',
  'bay',
  'board',
  'how',
  'rows',
  'left',
  'right',
  'panels',
  'loose-shelves',
  'fixed-shelves',
  'back',
  'Spüle',
  'x y',
  '16',
  'a:b',
  '-n',
  '{k}',
  '#1',
);
const scalar = fc.constantFrom(
  '600',
  '600 mm',
  `1' 11 5/8"`,
  '23 5/8 in',
  'grooved',
  'none',
  'yes',
  "it's",
  'a: b',
  'x #y',
  '[1]',
  '{a}',
  'a, b',
  '- 1',
  '*a',
  '&a',
  '🪚',
  '',
  ' pad ',
  '~',
  '"q"',
  'two\nlines',
  '-5',
);

/** A random value with its rendering choices left to `seed`s drawn beside it. */
const value: fc.Arbitrary<Plain> = fc.letrec<{ value: Plain; map: PlainMap; list: readonly Plain[] }>((tie) => ({
  value: fc.oneof(
    { maxDepth: 3, depthSize: 'small' },
    { arbitrary: scalar, weight: 4 },
    { arbitrary: fc.constant(null), weight: 1 },
    tie('map'),
    tie('list'),
  ),
  map: fc
    .uniqueArray(fc.tuple(word, tie('value')), { selector: ([key]) => key, maxLength: 4 })
    .map((entries) => ({ entries })),
  list: fc.array(
    tie('value').map((item) => item ?? '600'),
    { maxLength: 4 },
  ),
})).value;

export const job: fc.Arbitrary<PlainMap> = fc
  .uniqueArray(fc.tuple(word, value), { selector: ([key]) => key, minLength: 1, maxLength: 6 })
  .map((entries) => ({ entries }));

/** Choices of style, endless and repeatable: each call gives a whole number below `below`. */
export type Choose = (below: number) => number;

export function chooser(seed: number): Choose {
  // A linear congruential generator (constants of Numerical Recipes) is random enough to pick styles.
  let state = seed >>> 0;
  return (below) => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return Math.floor((state / 2 ** 32) * below);
  };
}

/** Writes a map as YAML in a random style: block or flow, quotes, comments, blank lines, line ends, byte order mark. */
export function render(root: PlainMap, seed: number): string {
  const choose = chooser(seed);
  const eol = choose(4) === 0 ? '\r\n' : '\n';
  const step = 1 + choose(4);
  let comments = 0;
  const comment = (): string => (choose(4) === 0 ? `  # remark ${(comments += 1)}, [it's] {so}: "&a" *b` : '');
  const quoted = (text: string): string => {
    const safe = /^[\p{L}\d][\p{L}\d '"/.-]*$/u.test(text) && text.trim() === text;
    const style = choose(4);
    if (safe && style < 2) return text;
    if (style === 2 && !/\n/.test(text)) return `'${text.replaceAll("'", "''")}'`;
    return JSON.stringify(text);
  };
  const flow = (item: Plain): string => {
    if (item === null) return '';
    if (typeof item === 'string') return quoted(item);
    if (isMap(item)) return `{ ${item.entries.map(([key, one]) => `${quoted(key)}: ${flow(one)}`).join(', ')} }`;
    return `[${item.map(flow).join(', ')}]`;
  };
  const lines: string[] = [];
  const blanks = (): void => {
    if (choose(6) === 0) lines.push(choose(2) === 0 ? '' : `# above ${(comments += 1)}`);
  };
  /** Puts the value behind `start` of a line, or under it. */
  const put = (start: string, item: Plain, column: number): void => {
    if (item === null) lines.push(`${start}${comment()}`);
    else if (typeof item === 'string') {
      if (item.includes('\n') && choose(2) === 0 && !start.endsWith('-')) {
        lines.push(`${start} |-${comment()}`, ...item.split('\n').map((line) => ' '.repeat(column + step) + line));
      } else lines.push(`${start} ${quoted(item)}${comment()}`);
    } else if (choose(3) === 0 || (isMap(item) ? item.entries.length : item.length) === 0)
      lines.push(`${start} ${flow(item)}${comment()}`);
    else if (isMap(item)) {
      const inner = column + step;
      if (start.endsWith('-') && step > 1) {
        // The first key of an item stands on the line of its dash.
        const before = lines.length;
        block(item, start.length + 1);
        lines.splice(before, lines.length - before, ...joined(start, lines.slice(before), start.length + 1));
      } else {
        lines.push(`${start}${comment()}`);
        block(item, inner);
      }
    } else {
      lines.push(`${start}${start.endsWith('-') ? '' : comment()}`);
      for (const one of item) {
        blanks();
        put(`${' '.repeat(column + step)}-`, one, column + step);
      }
    }
  };
  const joined = (start: string, inner: readonly string[], column: number): string[] => {
    const first = inner.findIndex((line) => line.trim() !== '' && !line.trim().startsWith('#'));
    return [...inner.slice(0, first), `${start} ${inner[first]!.slice(column)}`, ...inner.slice(first + 1)];
  };
  const block = (map: PlainMap, column: number): void => {
    for (const [key, one] of map.entries) {
      blanks();
      put(`${' '.repeat(column)}${quoted(key)}:`, one, column);
    }
  };
  block(root, 0);
  const end = choose(3) === 0 ? '' : eol;
  return (choose(6) === 0 ? '\uFEFF' : '') + lines.join(eol) + end;
}
