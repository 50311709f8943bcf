import type { Change } from '../finding.js';
import type { Path } from '../place.js';
import type { TextEdit } from '../pieces.js';
import { Pieces } from '../pieces.js';
import { readTree } from '../read.js';
import { keyText } from '../scalar-text.js';
import type { MapEntry, ScalarNode, TreeNode } from '../tree.js';
import { removal } from './removing.js';
import { Setting } from './setting.js';
import { TextLines, usualIndent } from './text-lines.js';
import { baseOf, walkTo } from './walk.js';
import { isFlowText, Writing } from './writing.js';

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
  const removed = changes
    .filter((change) => change.kind === 'remove')
    .toSorted((a, b) => comparePaths(b.path, a.path) || nthOf(b) - nthOf(a));
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

class Editor {
  readonly #pieces: Pieces;
  readonly #options: EditOptions;
  /** Indexes of entries and items from the root of the text to the root of the paths. */
  readonly #base: readonly number[];
  readonly #faults: number;
  readonly #indent: number;
  #lines: TextLines;
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
    this.#lines = new TextLines(text);
    this.#tree = tree;
    this.#base = base;
    this.#faults = faults;
    this.#options = options;
    this.#pieces = new Pieces(text);
    this.#indent = usualIndent(tree, this.#lines) ?? 2;
  }

  edits(): readonly TextEdit[] {
    return this.#pieces.edits();
  }

  /** False where the change cannot be made. */
  make(change: Change): boolean {
    const edits = this.#editsOf(change);
    if (edits === null) return false;
    this.#pieces.apply(edits);
    const text = this.#pieces.text();
    const { root, problems } = readTree(text, 'self');
    this.#lines = new TextLines(text);
    this.#tree = root;
    return problems.length <= this.#faults && this.#holds(change);
  }

  /** A list set over a list is set item by item, so that the comments of its lines stay. */
  itemByItem(change: Change): readonly Change[] {
    if (change.kind !== 'set' || !change.text.startsWith('[')) return [change];
    const walk = walkTo(this.#tree, this.#base, change.path);
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
    const walk = walkTo(this.#tree, this.#base, change.path, nthOf(change));
    if (walk === null) return null;
    // What an alias leads to belongs to another place too.
    if (walk.steps.slice(0, walk.rest.length === 0 ? -1 : undefined).some((step) => step.node?.alias !== undefined))
      return null;
    if (change.kind === 'set') {
      const writing = new Writing(this.#lines.eol, this.#indent, (path) => this.#shorthand(path));
      return new Setting(this.#lines, writing).edits(walk, change.path, change.text);
    }
    // What is taken out with its parent is gone already.
    if (change.kind === 'remove') return walk.rest.length > 0 ? [] : removal(walk, this.#lines);
    const last = walk.steps.at(-1)!;
    if (walk.rest.length > 0 || !('entry' in last)) return null;
    const { start, end } = last.entry.keyPlace;
    return [{ start, end, text: keyText(change.text, walk.inFlow, this.#lines.quotesAt(start, end)) }];
  }

  /** True where the text now says what the change asked for. */
  #holds(change: Change): boolean {
    if (change.kind !== 'set' || isFlowText(change.text)) return true;
    const walk = walkTo(this.#tree, this.#base, change.path);
    const node = walk?.steps.at(-1)?.node;
    const short = walk?.rest.length === 1 && this.#shorthand(change.path.slice(0, -1)) === walk.rest[0];
    if (walk === null || (walk.rest.length > 0 && !short)) return false;
    return (node?.kind === 'scalar' ? node.text : '') === change.text;
  }

  #shorthand(path: Path): string | null {
    return this.#options.shorthand?.(path) ?? null;
  }
}

/** Which of the entries is meant whose key the path ends with. */
export const nthOf = (change: Change): number => ('nth' in change ? (change.nth ?? 0) : 0);

function isWritten(node: TreeNode | undefined): node is ScalarNode {
  return node?.kind === 'scalar' && node.text !== '';
}
