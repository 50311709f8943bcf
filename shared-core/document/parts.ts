import type { CarcassPart, JobParts } from './cut.js';
import { isBlank } from './lines.js';
import { say } from './messages.js';
import { readTree, type ReadTree } from './read.js';
import type { Part, Place } from './place.js';
import type { MapEntry, TextProblem, TreeNode } from './tree.js';

/** The map entry `name: {...}` of a carcass and the faults of its text. */
export interface CarcassTree {
  readonly entry: MapEntry | null;
  readonly problems: readonly TextProblem[];
  /** Keys of the carcass that stand in the column of its name. */
  readonly astray: readonly MapEntry[];
}

/** The entry of one carcass, read from its part. */
export function readCarcassTree({ text, start, end, whole }: CarcassPart): CarcassTree {
  if (whole === null) {
    const { root, problems } = readTree(text, 'self');
    const entry = root?.kind === 'map' && root.entries.length === 1 ? root.entries[0]! : null;
    const told = entry === null && problems.length === 0 ? [noName(text, 0)] : problems;
    return { entry, problems: told, astray: [] };
  }
  const { tree, entry, astray } = whole;
  if (entry?.key.trim() === '') return { entry: null, problems: [noName(text, start)], astray };
  // A fault elsewhere in the text is told once, with the head.
  const problems = tree.problems.filter(({ place }) => place.start >= start && place.start < end);
  return { entry, problems, astray };
}

/** The name of a carcass whose text is not read as a whole, or cannot be; '' where it has none. */
export function nameIn(text: string): string {
  const [, double, single, plain] =
    /^\s*(?:"([^"\n]*)"|'([^'\n]*)'|([^\s:#'"](?:[^:#\n]*[^\s:#])?))\s*(?::|\n|$)/.exec(text) ?? [];
  return double ?? single ?? plain ?? '';
}

/** The head's tree, and the tail's. Of an uncut text the faults that lie in carcasses are left to these. */
export function readHeadTrees({ head, carcasses, tail, whole, problems: ofFile }: JobParts): {
  readonly head: ReadTree;
  readonly tail: ReadTree;
} {
  const below = isBlank(tail.text) ? NOTHING : readTree(tail.text, 'tail');
  if (whole === null) {
    const { root, problems } = readTree(head.text, 'head');
    return { head: { root, problems: [...ofFile, ...problems] }, tail: below };
  }
  const { root, problems } = asPart(whole, 'head');
  const outside = [...ofFile, ...problems].filter(
    ({ place }) => !carcasses.some((part) => place.start >= part.start && place.start < part.end),
  );
  return { head: { root, problems: outside }, tail: below };
}

const NOTHING: ReadTree = { root: null, problems: [] };

/** `from` is where the carcass stands in the text. */
function noName(text: string, from: number): TextProblem {
  const start = Math.min(from + text.slice(from).search(/\S|$/), text.length);
  const length = /^[^\r\n]*/.exec(text.slice(start))![0].trimEnd().length;
  const place: Place = { part: 'self', start, end: start + length };
  return {
    message: say.carcassNameless(),
    place,
  };
}

/** The entry of a carcass as it is read for another one, which it is a part of the text for. */
export function entryAs(entry: MapEntry, part: Part): MapEntry {
  const value = entry.value === null ? null : nodesAs(part)(entry.value);
  return { ...entry, place: { ...entry.place, part }, keyPlace: { ...entry.keyPlace, part }, value };
}

/** Gives nodes with their places counted in another part of the same text. */
function nodesAs(part: Part): (node: TreeNode) => TreeNode {
  const placed = <P extends { readonly place: Place }>(one: P): P => ({ ...one, place: { ...one.place, part } });
  // What aliases name is one node, however often it is met.
  const known = new Map<TreeNode, TreeNode>();
  const moved = (node: TreeNode): TreeNode => {
    const before = known.get(node);
    if (before !== undefined) return before;
    const after = movedInside(node);
    known.set(node, after);
    return after;
  };
  const movedInside = (node: TreeNode): TreeNode => {
    const own = { ...placed(node), ...(node.alias && { alias: { ...node.alias, part } }) };
    switch (own.kind) {
      case 'scalar':
        return own;
      case 'list':
        return { ...own, items: own.items.map(moved) };
      case 'map':
        return {
          ...own,
          entries: own.entries.map((entry) => ({
            ...placed(entry),
            keyPlace: { ...entry.keyPlace, part },
            value: entry.value === null ? null : moved(entry.value),
          })),
        };
    }
  };
  return moved;
}

/** A tree whose places are counted in another part of the same text. */
function asPart({ root, problems }: ReadTree, part: Part): ReadTree {
  const placed = <P extends { readonly place: Place }>(one: P): P => ({ ...one, place: { ...one.place, part } });
  return {
    root: root === null ? null : nodesAs(part)(root),
    problems: problems.map((problem) => ({
      ...placed(problem),
      ...(problem.repairs && {
        repairs: problem.repairs.map((repair) => ({
          ...repair,
          ...(repair.rewrites && { rewrites: repair.rewrites.map((rewrite) => ({ ...rewrite, part })) }),
        })),
      }),
    })),
  };
}
