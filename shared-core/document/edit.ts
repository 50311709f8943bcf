import type { Change } from './finding.js';
import { lineEnd, lineStart } from './lines.js';
import type { Path } from './place.js';
import type { TextEdit } from './pieces.js';
import { Pieces } from './pieces.js';
import { readTree, writtenEnd } from './read.js';
import type { Quotes } from './scalar-text.js';
import { keyText, scalarText } from './scalar-text.js';
import type { ListNode, MapEntry, MapNode, ScalarNode, TreeNode } from './tree.js';

export interface EditOptions {
  /** The entry whose value the paths start from, for a root of which nothing is written yet. */
  readonly under?: MapEntry;
  /**
   * The key that a single value at a path stands for, where a map may stand there too: 'at' for `- 300` in a list of
   * shelves. Without it a value that is not a map is never turned into one.
   */
  readonly shorthand?: (path: Path) => string | null;
}

/**
 * The fewest edits of `text` that make the changes; all paths start from `root`, a node that was read from `text`, and are
 * those of the text before any change. Comments, quotes and layout of all that stays are kept. A change of a value that
 * only an alias leads to is refused, since it would change other values too. Where one change cannot be made, or the text would
 * read worse afterwards, no edit comes back at all.
 */
export function editsFor(
  text: string,
  root: TreeNode | null,
  changes: readonly Change[],
  options: EditOptions = {},
): readonly TextEdit[] {
  const editor = Editor.open(text, root, options);
  if (editor === null) return [];
  const done = inOrder(changes.flatMap((change) => editor.itemByItem(change))).every((change) => editor.make(change));
  return done ? editor.edits() : [];
}

/**
 * Additions first, so that indexes hold; then what is taken out, from the last; then keys, from the innermost, their paths
 * moved by what has gone before them.
 */
function inOrder(changes: readonly Change[]): readonly Change[] {
  const removed = changes.filter((change) => change.kind === 'remove').toSorted((a, b) => comparePaths(b.path, a.path));
  const moved = (path: Path): Path =>
    path.map((step, i) => {
      if (typeof step !== 'number') return step;
      const gone = removed.filter(
        (one) =>
          one.path.length === i + 1 &&
          samePath(one.path.slice(0, i), path.slice(0, i)) &&
          (one.path[i] as number) < step,
      );
      return step - gone.length;
    });
  const renamed = changes
    .filter((change) => change.kind === 'rename-key')
    .toSorted((a, b) => b.path.length - a.path.length)
    .map((change) => ({ ...change, path: moved(change.path) }));
  return [...changes.filter((change) => change.kind === 'set'), ...removed, ...renamed];
}

function comparePaths(a: Path, b: Path): number {
  for (let i = 0; i < Math.min(a.length, b.length); i += 1) {
    const x = a[i]!;
    const y = b[i]!;
    if (x === y) continue;
    return typeof x === 'number' && typeof y === 'number' ? x - y : String(x) < String(y) ? -1 : 1;
  }
  return a.length - b.length;
}

function samePath(a: Path, b: Path): boolean {
  return a.length === b.length && a.every((step, i) => step === b[i]);
}

/** One step of a path that leads into the tree: the node, and where it hangs. */
type Step =
  | { readonly node: TreeNode | null; readonly parent: null }
  | { readonly node: TreeNode | null; readonly parent: MapNode; readonly index: number; readonly entry: MapEntry }
  | { readonly node: TreeNode | null; readonly parent: ListNode; readonly index: number };

interface Walk {
  /** From the root on; the last one is the deepest that is there. */
  readonly steps: readonly Step[];
  readonly rest: Path;
  /** True where brackets stand around the deepest. */
  readonly inFlow: boolean;
}

class Editor {
  readonly #pieces: Pieces;
  readonly #options: EditOptions;
  /** Indexes of entries and items from the root of the text to the root of the paths. */
  readonly #base: readonly number[];
  readonly #faults: number;
  readonly #eol: string;
  readonly #indent: number;
  #text: string;
  #tree: TreeNode | null;

  static open(text: string, root: TreeNode | null, options: EditOptions): Editor | null {
    const { root: tree, problems } = readTree(text, 'self');
    const base = root === null && options.under === undefined ? [] : baseOf(tree, root, options.under);
    return base === null ? null : new Editor(text, tree, base, problems.length, options);
  }

  private constructor(
    text: string,
    tree: TreeNode | null,
    base: readonly number[],
    faults: number,
    options: EditOptions,
  ) {
    this.#text = text;
    this.#tree = tree;
    this.#base = base;
    this.#faults = faults;
    this.#options = options;
    this.#pieces = new Pieces(text);
    this.#eol = /\r?\n/.exec(text)?.[0] ?? '\n';
    this.#indent = this.#usualIndent(tree) ?? 2;
  }

  edits(): readonly TextEdit[] {
    return this.#pieces.edits();
  }

  /** False where the change cannot be made. */
  make(change: Change): boolean {
    const edits = this.#editsOf(change);
    if (edits === null) return false;
    this.#pieces.apply(edits);
    this.#text = this.#pieces.text();
    const { root, problems } = readTree(this.#text, 'self');
    this.#tree = root;
    return problems.length <= this.#faults && this.#holds(change);
  }

  /** A list set over a list is set item by item, so that the comments of its lines stay. */
  itemByItem(change: Change): readonly Change[] {
    if (change.kind !== 'set' || !change.text.startsWith('[')) return [change];
    const walk = this.#walk(change.path);
    const node = walk?.rest.length === 0 ? walk.steps.at(-1)?.node : null;
    const wanted = readTree(change.text, 'self').root;
    if (node?.kind !== 'list' || node.alias !== undefined || wanted?.kind !== 'list') return [change];
    if (!node.items.every(isWritten) || !wanted.items.every(isWritten) || wanted.items.length === 0) return [change];
    const at = (index: number) => ({ part: change.part, path: [...change.path, index] });
    const sets = wanted.items.flatMap((item, i): Change[] => {
      const old = node.items[i];
      return isWritten(old) && old.text === item.text ? [] : [{ kind: 'set', ...at(i), text: item.text }];
    });
    const removes = node.items
      .slice(wanted.items.length)
      .map((_, i): Change => ({ kind: 'remove', ...at(wanted.items.length + i) }));
    return [...sets, ...removes];
  }

  #editsOf(change: Change): readonly TextEdit[] | null {
    const walk = this.#walk(change.path);
    if (walk === null) return null;
    // What an alias leads to belongs to another place too.
    if (walk.steps.slice(0, walk.rest.length === 0 ? -1 : undefined).some((step) => step.node?.alias !== undefined))
      return null;
    if (change.kind === 'set') return this.#set(walk, change.path, change.text);
    // What is taken out with its parent is gone already.
    if (change.kind === 'remove') return walk.rest.length > 0 ? [] : this.#remove(walk);
    const last = walk.steps.at(-1)!;
    if (walk.rest.length > 0 || !('entry' in last)) return null;
    const { start, end } = last.entry.keyPlace;
    return [{ start, end, text: keyText(change.text, walk.inFlow, this.#quotesAt(start, end)) }];
  }

  /** True where the text now says what the change asked for. */
  #holds(change: Change): boolean {
    if (change.kind !== 'set' || isFlowText(change.text)) return true;
    const walk = this.#walk(change.path);
    const node = walk?.steps.at(-1)?.node;
    const short = walk?.rest.length === 1 && this.#shorthand(change.path.slice(0, -1)) === walk.rest[0];
    if (walk === null || (walk.rest.length > 0 && !short)) return false;
    return (node?.kind === 'scalar' ? node.text : '') === change.text;
  }

  #shorthand(path: Path): string | null {
    return this.#options.shorthand?.(path) ?? null;
  }

  #walk(path: Path): Walk | null {
    let step: Step = { node: this.#tree, parent: null };
    let inFlow = false;
    for (const index of this.#base) {
      const next: Step | null = childAt(step.node, index);
      if (next === null) return null;
      inFlow ||= isFlow(next.parent);
      step = next;
    }
    const steps: Step[] = [step];
    for (let i = 0; i < path.length; i += 1) {
      const child = childOf(step.node, path[i]!);
      if (child === null) return { steps, rest: path.slice(i), inFlow };
      inFlow ||= isFlow(child.parent);
      steps.push(child);
      step = child;
    }
    return { steps, rest: [], inFlow };
  }

  // Setting

  #set(walk: Walk, path: Path, value: string): readonly TextEdit[] | null {
    const last = walk.steps.at(-1)!;
    const { rest, inFlow } = walk;
    const at = path.slice(0, path.length - rest.length);
    const { node } = last;
    if (node === null || (node.kind === 'scalar' && node.text === '' && node.plain))
      return this.#fill(last, at, rest, value, inFlow);
    if (rest.length === 0) return this.#replace(last, node, value, inFlow);
    if (node.kind === 'scalar') return this.#unfold(last, node, at, rest, value, inFlow);
    if (node.kind === 'map') return typeof rest[0] === 'string' ? this.#addEntry(node, at, rest, value, inFlow) : null;
    return rest[0] === node.items.length ? this.#addItem(node, at, rest, value, inFlow) : null;
  }

  #replace(step: Step, node: TreeNode, value: string, inFlow: boolean): readonly TextEdit[] | null {
    const { start, end } = node.alias ?? node.place;
    if (node.kind === 'scalar' && node.alias === undefined) {
      const before = node.plain ? '' : this.#quotesAt(start, end);
      return this.#overScalar(node, this.#valueText(value, inFlow, before));
    }
    const text = this.#valueText(value, inFlow);
    if (node.alias !== undefined || node.kind === 'scalar' || node.flow || !('entry' in step))
      return [{ start, end, text }];
    const colon = this.#colonEnd(step.entry);
    if (colon === null) return null;
    const keyLineEnd = this.#lineEnd(colon);
    // A comment beside the key stays; only the lines of the old value go.
    return [
      { start: colon, end: colon, text: ` ${text}` },
      { start: Math.min(keyLineEnd, end), end, text: '' },
    ];
  }

  /** Puts a text in the place of a single value. */
  #overScalar(node: ScalarNode, text: string): readonly TextEdit[] {
    const { start, end } = node.alias ?? node.place;
    const mark = /^[|>][-+\d]*/.exec(this.#text.slice(start, end));
    if (node.plain || node.alias !== undefined || mark === null) return [{ start, end, text }];
    // Of a block text the mark gives way and the lines go; a comment beside the mark stays.
    return [
      { start, end: start + mark[0].length, text },
      { start: Math.min(this.#lineEnd(start), end), end, text: '' },
    ];
  }

  /** Writes where nothing is written: behind a colon, behind a dash, or in an empty text. */
  #fill(step: Step, at: Path, rest: Path, value: string, inFlow: boolean): readonly TextEdit[] | null {
    if (step.parent === null) {
      if (rest.length === 0 || typeof rest[0] !== 'string') return null;
      const end = this.#text.length;
      const gap = end === 0 || /(?:^\uFEFF|\n)$/.test(this.#text) ? '' : this.#eol;
      return [{ start: end, end, text: `${gap}${this.#entryText(at, rest, value, 0, false)}${this.#eol}` }];
    }
    if (!('entry' in step)) {
      const start = step.node!.place.start;
      const gap = /[\s[,]/.test(this.#text[start - 1] ?? ' ') ? '' : ' ';
      return [{ start, end: start, text: gap + this.#flowText(at, rest, value) }];
    }
    const colon = this.#colonEnd(step.entry);
    const inline =
      inFlow ||
      rest.length === 0 ||
      typeof rest[0] === 'number' ||
      (rest.length === 1 && rest[0] === this.#shorthand(at));
    if (inline) {
      const text = rest.length === 0 ? this.#valueText(value, inFlow) : this.#flowText(at, rest, value, inFlow);
      if (colon !== null) return [{ start: colon, end: colon, text: ` ${text}` }];
      const end = step.entry.keyPlace.end;
      return inFlow ? [{ start: end, end, text: `: ${text}` }] : null;
    }
    if (colon === null) return null;
    const column = this.#column(step.entry.keyPlace.start) + this.#indent;
    const lineEnd = this.#lineEnd(colon);
    return [
      {
        start: lineEnd,
        end: lineEnd,
        text: `${this.#eol}${' '.repeat(column)}${this.#entryText(at, rest, value, column, false)}`,
      },
    ];
  }

  /** Makes room in a single value for what the path asks for beside it. */
  #unfold(
    step: Step,
    node: ScalarNode,
    at: Path,
    rest: Path,
    value: string,
    inFlow: boolean,
  ): readonly TextEdit[] | null {
    const short = this.#shorthand(at);
    const { start, end } = node.alias ?? node.place;
    if (rest[0] === 0) return this.#overScalar(node, this.#flowText(at, rest, value));
    if (short === null || typeof rest[0] !== 'string') return null;
    if (rest[0] === short) return rest.length === 1 ? this.#replace(step, node, value, inFlow) : null;
    const own = this.#text.slice(start, end);
    const kept =
      node.alias !== undefined || (!own.includes('\n') && (!node.plain || scalarText(own, true) === own))
        ? own
        : scalarText(node.text, true);
    const added = this.#entryText(at, rest, value, 0, true);
    return kept === own
      ? [
          { start, end: start, text: `{ ${short}: ` },
          { start: end, end, text: `, ${added} }` },
        ]
      : this.#overScalar(node, `{ ${short}: ${kept}, ${added} }`);
  }

  #addEntry(map: MapNode, at: Path, rest: Path, value: string, inFlow: boolean): readonly TextEdit[] | null {
    const last = map.entries.at(-1);
    if (map.flow || last === undefined) {
      const end = last?.value === null ? (this.#colonEnd(last) ?? last.place.end) : last?.place.end;
      return this.#addInBrackets(map, end, this.#entryText(at, rest, value, 0, true), ' ');
    }
    if (inFlow) return null;
    const column = this.#column(map.entries[0]!.keyPlace.start);
    const lines = this.#entryText(at, rest, value, column, false);
    const indent = ' '.repeat(column);
    if (last.value === null) {
      // What an unfinished last key holds may be about to be written, or stand in the next part of the text.
      const start = last.keyPlace.start;
      return [{ start, end: start, text: `${lines}${this.#eol}${indent}` }];
    }
    const end = this.#lineEnd(last.place.end);
    return [{ start: end, end, text: `${this.#eol}${indent}${lines}` }];
  }

  #addItem(list: ListNode, at: Path, rest: Path, value: string, inFlow: boolean): readonly TextEdit[] | null {
    const last = list.items.at(-1);
    const text = this.#flowText([...at, rest[0]!], rest.slice(1), value, inFlow || list.flow);
    if (list.flow || last === undefined) return this.#addInBrackets(list, last && writtenEnd(last), text, '');
    const dash = this.#dashOf(last);
    if (dash === null) return null;
    const end = this.#lineEnd(writtenEnd(last));
    return [{ start: end, end, text: `${this.#eol}${' '.repeat(this.#column(dash))}- ${text}` }];
  }

  #addInBrackets(
    node: MapNode | ListNode,
    lastEnd: number | undefined,
    text: string,
    pad: string,
  ): readonly TextEdit[] {
    if (lastEnd !== undefined) return [{ start: lastEnd, end: lastEnd, text: `, ${text}` }];
    const start = node.place.start + 1;
    const inner = this.#text.slice(start, node.place.end - 1);
    return [{ start, end: inner.trim() === '' ? node.place.end - 1 : start, text: pad + text + pad }];
  }

  /** `key: value` lines without the indentation of the first; `at` is the path of the map, `rest` starts with the key. */
  #entryText(at: Path, rest: Path, value: string, column: number, inFlow: boolean): string {
    const [key, ...more] = rest;
    const path = [...at, key!];
    const start = `${keyText(String(key), inFlow)}:`;
    const short = more.length === 1 && more[0] === this.#shorthand(path);
    if (more.length === 0 || short) return `${start} ${this.#valueText(value, inFlow)}`;
    if (inFlow || typeof more[0] === 'number') return `${start} ${this.#flowText(path, more, value)}`;
    const inner = column + this.#indent;
    return `${start}${this.#eol}${' '.repeat(inner)}${this.#entryText(path, more, value, inner, false)}`;
  }

  /** The value at the end of `rest` with the brackets that lead to it. */
  #flowText(at: Path, rest: Path, value: string, inFlow = true): string {
    const [step, ...more] = rest;
    if (step === undefined) return this.#valueText(value, inFlow);
    if (typeof step === 'number') return `[${this.#flowText([...at, step], more, value)}]`;
    if (more.length === 0 && step === this.#shorthand(at)) return this.#valueText(value, inFlow);
    return `{ ${this.#entryText(at, rest, value, 0, true)} }`;
  }

  #valueText(value: string, inFlow: boolean, before: Quotes = ''): string {
    return isFlowText(value) ? value : scalarText(value, inFlow, before);
  }

  // Taking out

  #remove(walk: Walk): readonly TextEdit[] | null {
    // What would be left empty goes too, up to the root of the paths.
    let depth = walk.steps.length - 1;
    while (depth > 1 && sizeOf(walk.steps[depth]!.parent) === 1) depth -= 1;
    const step = walk.steps[depth]!;
    if (depth === 0 || step.parent === null) return null;
    if (step.parent.flow) return this.#removeInBrackets(step);
    if (walk.steps.slice(0, depth).some((one) => isFlow(one.node))) return null;
    if (!('entry' in step)) {
      const dash = this.#dashOf(step.node!);
      if (dash === null || this.#text.slice(this.#lineStart(dash), dash).trim() !== '') return null;
      return [this.#lines(dash, Math.max(writtenEnd(step.node), dash + 1))];
    }
    const { keyPlace, place } = step.entry;
    const before = this.#text.slice(this.#lineStart(keyPlace.start), keyPlace.start);
    if (/^\uFEFF? *$/.test(before)) return [this.#lines(keyPlace.start, place.end)];
    const next = step.parent.entries[step.index + 1];
    return next === undefined ? null : [{ start: keyPlace.start, end: next.keyPlace.start, text: '' }];
  }

  #removeInBrackets(step: Exclude<Step, { parent: null }>): readonly TextEdit[] {
    const places =
      'entry' in step
        ? step.parent.entries.map((entry) => entry.place)
        : step.parent.items.map((item) => item.alias ?? item.place);
    const own = places[step.index]!;
    const next = places[step.index + 1];
    const before = places[step.index - 1];
    if (next !== undefined) return [{ start: own.start, end: next.start, text: '' }];
    return [{ start: before?.end ?? own.start, end: own.end, text: '' }];
  }

  /** The whole lines from that of `start` to that of `end`. */
  #lines(start: number, end: number): TextEdit {
    const from = this.#lineStart(start);
    const newline = this.#text.indexOf('\n', end);
    if (newline !== -1) return { start: from, end: newline + 1, text: '' };
    // At the end of a text without a last newline the one before goes.
    return { start: /\r?\n?$/.exec(this.#text.slice(0, from))!.index, end: this.#text.length, text: '' };
  }

  // The lines of the text

  /** Start of the line; behind a byte order mark. */
  #lineStart(offset: number): number {
    const start = lineStart(this.#text, offset);
    return start === 0 && this.#text.startsWith('\uFEFF') ? 1 : start;
  }

  /** End of the line, before its line break. */
  #lineEnd(offset: number): number {
    const end = lineEnd(this.#text, offset);
    return end > offset && end < this.#text.length && this.#text[end - 1] === '\r' ? end - 1 : end;
  }

  #column(offset: number): number {
    return offset - this.#lineStart(offset);
  }

  /** Offset behind the colon of a key, or null where none follows it at once. */
  #colonEnd(entry: MapEntry): number | null {
    const colon = /^[ \t]*:/.exec(this.#text.slice(entry.keyPlace.end, entry.keyPlace.end + 1000));
    return colon === null ? null : entry.keyPlace.end + colon[0].length;
  }

  /** Offset of the dash before an item of a block list, be it on a line above; null where none is found. */
  #dashOf(item: TreeNode): number | null {
    let end = (item.alias ?? item.place).start;
    for (;;) {
      const line = this.#lineStart(end);
      const before = this.#text.slice(line, end).replace(/(?:^|\s)#[^\n]*$/, '');
      const dash = /-\s*(?:[&!]\S*\s+)*$/.exec(before);
      if (dash !== null) return line + dash.index;
      if (before.trim() !== '' || line <= 1) return null;
      end = line - 1;
    }
  }

  #quotesAt(start: number, end: number): Quotes {
    const first = this.#text[start];
    return end > start && (first === "'" || first === '"') ? first : '';
  }

  /** By how much the first map inside a map is indented. */
  #usualIndent(node: TreeNode | null): number | null {
    if (node === null || node.kind === 'scalar' || node.flow || node.alias !== undefined) return null;
    const children = node.kind === 'map' ? node.entries.map((entry) => entry.value) : node.items;
    for (const child of children) {
      if (node.kind === 'map' && child?.kind === 'map' && !child.flow && child.alias === undefined) {
        const step = this.#column(child.place.start) - this.#column(node.place.start);
        if (step > 0) return step;
      }
      const deeper = this.#usualIndent(child);
      if (deeper !== null) return deeper;
    }
    return null;
  }
}

function isWritten(node: TreeNode | undefined): node is ScalarNode {
  return node?.kind === 'scalar' && node.text !== '';
}

/** A text that a change hands over as YAML, brackets and all. */
function isFlowText(text: string): boolean {
  return /^[[{]/.test(text);
}

function isFlow(node: TreeNode | null): boolean {
  return node !== null && node.kind !== 'scalar' && node.flow;
}

function sizeOf(node: MapNode | ListNode | null): number {
  return node === null ? 0 : node.kind === 'map' ? node.entries.length : node.items.length;
}

function childAt(node: TreeNode | null, index: number): Exclude<Step, { parent: null }> | null {
  if (node?.kind === 'map') {
    const entry = node.entries[index];
    return entry === undefined ? null : { node: entry.value, parent: node, index, entry };
  }
  const item = node?.kind === 'list' ? node.items[index] : undefined;
  return item === undefined ? null : { node: item, parent: node as ListNode, index };
}

function childOf(node: TreeNode | null, step: string | number): Exclude<Step, { parent: null }> | null {
  if (node?.kind === 'map') {
    const index = node.entries.findIndex((entry) => entry.key === step);
    return index === -1 ? null : childAt(node, index);
  }
  return typeof step === 'number' ? childAt(node, step) : null;
}

/** Indexes that lead from a tree to a node of it (or to the value of `under`), found by their places; null where they do not. */
function baseOf(tree: TreeNode | null, root: TreeNode | null, under: MapEntry | undefined): readonly number[] | null {
  // What an alias stands for belongs to another place of the text.
  if (tree === null || root?.alias !== undefined) return null;
  if (root !== null && sameNode(tree, root)) return [];
  const children: readonly (TreeNode | null)[] =
    tree.kind === 'map' ? tree.entries.map((entry) => entry.value) : tree.kind === 'list' ? tree.items : [];
  for (const [index, child] of children.entries()) {
    const entry = tree.kind === 'map' ? tree.entries[index] : undefined;
    if (root === null && entry !== undefined && entry.keyPlace.start === under?.keyPlace.start) return [index];
    const inner = child === null || child.alias !== undefined ? null : baseOf(child, root, under);
    if (inner !== null) return [index, ...inner];
  }
  return null;
}

function sameNode(a: TreeNode, b: TreeNode): boolean {
  return a.kind === b.kind && a.place.start === b.place.start && a.place.end === b.place.end;
}
