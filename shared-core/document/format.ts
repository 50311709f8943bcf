import { isBlank } from './lines.js';
import { applyEdits, type TextEdit } from './pieces.js';
import { readTree, writtenEnd } from './read.js';
import type { ListNode, MapNode, TreeNode } from './tree.js';

/** Columns from a key to what stands below it. */
const STEP = 2;

/** An edit of blanks alone, and whether they are those that a line begins with. */
export interface Blanks extends TextEdit {
  readonly indents: boolean;
}

/**
 * The edits that lay a text out evenly: two columns a step, dashes a step in from their key, one space behind colons, commas
 * and dashes and within `{ }`, none within `[ ]`, no blanks at the ends of lines. They change nothing but blanks, and no value
 * is another afterwards; texts over several lines and brackets over several lines are moved as a whole. Empty where the text
 * cannot be read without fault.
 */
export function formatEdits(text: string): readonly Blanks[] {
  const { root, problems } = readTree(text, 'self');
  if (problems.length > 0 || root === null) return [];
  const edits = new Layout(text).edits(root);
  return edits !== null && keepsAll(text, root, edits) ? edits : [];
}

/** Of these edits the ones that `wanted` takes, where they leave every value as it is without the others. */
export function someOf(text: string, edits: readonly Blanks[], wanted: (edit: Blanks) => boolean): readonly Blanks[] {
  const some = edits.filter(wanted);
  return some.length === edits.length || keepsAll(text, readTree(text, 'self').root, some) ? some : [];
}

function keepsAll(text: string, root: TreeNode | null, edits: readonly TextEdit[]): boolean {
  const after = readTree(applyEdits(text, edits), 'self');
  return after.problems.length === 0 && saysTheSame(root, after.root);
}

function saysTheSame(a: TreeNode | null, b: TreeNode | null): boolean {
  if (a === null || b === null) return a === b;
  if (a.kind === 'scalar') return b.kind === 'scalar' && a.text === b.text && a.plain === b.plain;
  if (a.kind === 'list') {
    return (
      b.kind === 'list' &&
      a.items.length === b.items.length &&
      a.items.every((item, i) => saysTheSame(item, b.items[i]!))
    );
  }
  return (
    b.kind === 'map' &&
    a.entries.length === b.entries.length &&
    a.entries.every((entry, i) => entry.key === b.entries[i]!.key && saysTheSame(entry.value, b.entries[i]!.value))
  );
}

/** What is not laid out as anything that is known here. */
class Unknown extends Error {}

interface Line {
  readonly start: number;
  /** Before the line end. */
  readonly end: number;
  /** Blanks that it begins with. */
  readonly column: number;
}

/** Where something that begins a line, or follows the dashes there, stood and is to stand. */
interface Moved {
  readonly from: number;
  readonly to: number;
}

class Layout {
  readonly #text: string;
  readonly #lines: readonly Line[];
  readonly #edits: Blanks[] = [];
  /** Those of them that stand between two things of a line, by the line. */
  readonly #gaps = new Map<number, Blanks[]>();
  /** Where the first thing of a line is to start. */
  readonly #starts = new Map<number, number>();
  /** How the last thing of a line that more may hang on is moved: what goes on below it is moved with it. */
  readonly #moved = new Map<number, Moved>();
  /** Lines within a text or brackets over several lines. */
  readonly #within = new Set<number>();

  constructor(text: string) {
    this.#text = text;
    const lines: Line[] = [];
    for (let start = text.startsWith('\uFEFF') ? 1 : 0; start <= text.length;) {
      const newline = text.indexOf('\n', start);
      const next = newline === -1 ? text.length + 1 : newline + 1;
      const end = start + text.slice(start, next - 1).replace(/\r$/, '').length;
      lines.push({ start, end, column: /^[ \t]*/.exec(text.slice(start, end))![0].length });
      start = next;
    }
    this.#lines = lines;
  }

  /** Null for a text that is written in a way that is not known here. */
  edits(root: TreeNode): readonly Blanks[] | null {
    try {
      this.#node(root, 0);
    } catch (fault) {
      if (fault instanceof Unknown) return null;
      throw fault;
    }
    this.#moveLines();
    return this.#edits.toSorted((a, b) => a.start - b.start);
  }

  #node(node: TreeNode, column: number): void {
    const { start, end } = node.alias ?? node.place;
    const first = this.#lineOf(start);
    const last = this.#lineOf(Math.max(start, end - 1));
    const isBlock = node.alias === undefined && node.kind !== 'scalar' && !node.flow;
    if (isBlock && node.kind === 'map') this.#map(node, column);
    else if (isBlock && node.kind === 'list') this.#list(node, column);
    else {
      if (this.#begins(start)) this.#place(start, column);
      for (let line = first + 1; line <= last; line += 1) this.#within.add(line);
      if (first === last && node.alias === undefined) this.#brackets(node);
    }
  }

  #map(map: MapNode, column: number): void {
    for (const { key, keyPlace, value } of map.entries) {
      this.#place(keyPlace.start, column);
      if (this.#lineOf(keyPlace.end) !== this.#lineOf(keyPlace.start)) throw new Unknown(key);
      if (value === null) continue;
      const { start } = value.alias ?? value.place;
      this.#gap(keyPlace.end, start, /^[ \t]*:[ \t]*$/, ': ');
      this.#node(value, column + STEP);
    }
  }

  #list(list: ListNode, column: number): void {
    let above = list.place.start;
    for (const [index, item] of list.items.entries()) {
      const { start } = item.alias ?? item.place;
      const dash = index === 0 ? list.place.start : this.#dashOf(start, list.place.start, above);
      this.#place(dash, column);
      this.#gap(dash, start, /^-[ \t]+$/, '- ');
      if (start > dash) this.#node(item, column + STEP);
      above = Math.max(dash + 1, writtenEnd(item));
    }
  }

  /** The dash of an item: the first sign of its line or of one above it, in the column of the first dash of its list. */
  #dashOf(start: number, first: number, above: number): number {
    const column = this.#columnOf(first);
    for (let index = this.#lineOf(start); index >= 0; index -= 1) {
      const line = this.#lines[index]!;
      const at = line.start + line.column;
      if (at < above) break;
      if (line.column === column && this.#text[at] === '-') return at;
    }
    throw new Unknown('-');
  }

  /** Lays down where something starts that begins its line, or stands behind the dashes of it. */
  #place(offset: number, column: number): void {
    const index = this.#lineOf(offset);
    const line = this.#lines[index]!;
    if (!/^[ \t]*(?:-[ \t]+)*$/.test(this.#text.slice(line.start, offset))) throw new Unknown(`${offset}`);
    if (this.#begins(offset)) this.#starts.set(index, column);
    this.#moved.set(index, { from: offset - line.start, to: column });
  }

  #brackets(node: TreeNode): void {
    if (node.kind === 'scalar') return;
    const { start, end } = node.place;
    const inside = node.kind === 'map' ? ' ' : '';
    const parts =
      node.kind === 'map'
        ? node.entries.map(({ place }) => place)
        : node.items.map((item) => ({ start: (item.alias ?? item.place).start, end: writtenEnd(item) }));
    const [first] = parts;
    const last = parts.at(-1);
    if (first === undefined || last === undefined) return;
    this.#gap(start + 1, first.start, /^[ \t]*$/, inside);
    this.#gap(last.end, end - 1, /^[ \t]*$/, inside);
    for (const [index, part] of parts.entries())
      if (index > 0) this.#gap(parts[index - 1]!.end, part.start, /^[ \t]*,[ \t]*$/, ', ');
    if (node.kind === 'list') {
      for (const item of node.items) if (item.alias === undefined) this.#brackets(item);
      return;
    }
    for (const { keyPlace, value } of node.entries) {
      if (value === null) continue;
      this.#gap(keyPlace.end, (value.alias ?? value.place).start, /^[ \t]*:[ \t]*$/, ': ');
      if (value.alias === undefined) this.#brackets(value);
    }
  }

  /** Writes what is to stand between two things, where nothing else does, such as a mark or a remark. */
  #gap(start: number, end: number, usual: RegExp, wanted: string): void {
    const now = this.#text.slice(start, end);
    if (now === wanted || !usual.test(now)) return;
    const edit = { start, end, text: wanted, indents: false };
    this.#edits.push(edit);
    const line = this.#lineOf(start);
    const gaps = this.#gaps.get(line) ?? [];
    gaps.push(edit);
    this.#gaps.set(line, gaps);
  }

  #moveLines(): void {
    let moved: Moved = { from: 0, to: 0 };
    const below = this.#startsBelow();
    // The nearest lines above that something starts in, and that are not blank.
    let [above, written] = [-1, -1];
    for (const [index, { start, end, column }] of this.#lines.entries()) {
      const isWithin = this.#within.has(index);
      if (start + column === end) {
        // Below a text over several lines its own blank lines may go on.
        if (!isWithin && !this.#within.has(written)) this.#cut(index, start, end);
        continue;
      }
      written = index;
      const to = isWithin
        ? Math.max(0, column + moved.to - moved.from)
        : this.#text[start + column] === '#'
          ? this.#remarkColumn(column, below[index]!, above)
          : (this.#starts.get(index) ?? Math.max(0, column + moved.to - moved.from));
      if (this.#starts.has(index)) above = index;
      if (to !== column) this.#edits.push({ start, end: start + column, text: ' '.repeat(to), indents: true });
      moved = this.#moved.get(index) ?? moved;
      // The last line of a text over several lines, and the mark before its first, end as they are.
      if (!isWithin && !this.#within.has(index + 1)) this.#cut(index, this.#withoutBlanks(start, end), end);
    }
  }

  /** Of each line the nearest below it that something starts in; -1 where there is none. */
  #startsBelow(): readonly number[] {
    const below: number[] = [];
    for (let index = this.#lines.length - 1, next = -1; index >= 0; index -= 1) {
      below[index] = next;
      if (this.#starts.has(index)) next = index;
    }
    return below;
  }

  /** The end of a stretch of a line without the blanks at its end. */
  #withoutBlanks(start: number, end: number): number {
    let written = end;
    while (written > start && isBlank(this.#text[written - 1]!)) written -= 1;
    return written;
  }

  #cut(line: number, start: number, end: number): void {
    const isTaken = this.#gaps.get(line)?.some((gap) => gap.start < end && gap.end > start) === true;
    if (end > start && !isTaken) this.#edits.push({ start, end, text: '', indents: false });
  }

  /**
   * A remark goes with the line beside it that starts in its column; at the margin it stays.
   * @param beside the lines below and above it that something starts in; -1 where there is none
   */
  #remarkColumn(column: number, ...beside: readonly [below: number, above: number]): number {
    if (column === 0) return 0;
    for (const line of beside) {
      if (line !== -1 && this.#lines[line]!.column === column) return this.#starts.get(line)!;
    }
    const [below, above] = beside;
    return this.#starts.get(below === -1 ? above : below) ?? column;
  }

  #begins(offset: number): boolean {
    const line = this.#lines[this.#lineOf(offset)]!;
    return line.start + line.column === offset;
  }

  #columnOf(offset: number): number {
    return offset - this.#lines[this.#lineOf(offset)]!.start;
  }

  /** Index of the line that an offset is in. */
  #lineOf(offset: number): number {
    let [low, high] = [0, this.#lines.length - 1];
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if (this.#lines[middle]!.start <= offset) low = middle;
      else high = middle - 1;
    }
    return low;
  }
}
