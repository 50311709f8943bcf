import type { Path } from '../place.js';
import type { ListNode, MapEntry, MapNode, TreeNode } from '../tree.js';

/** One step of a path that leads into the tree: the node, and where it hangs. */
export type Step =
  | { readonly node: TreeNode | null; readonly parent: null }
  | { readonly node: TreeNode | null; readonly parent: MapNode; readonly index: number; readonly entry: MapEntry }
  | { readonly node: TreeNode | null; readonly parent: ListNode; readonly index: number };

export interface Walk {
  /** From the root on; the last one is the deepest that is there. */
  readonly steps: readonly Step[];
  readonly rest: Path;
  /** True where brackets stand around the deepest. */
  readonly inFlow: boolean;
}

/**
 * Follows a path through the tree, from the node that `base` leads to; null where `base` leads nowhere.
 * @param nth which entry is meant where the last key of the path is written more than once
 */
export function walkTo(tree: TreeNode | null, base: readonly number[], path: Path, nth = 0): Walk | null {
  let step: Step = { node: tree, parent: null };
  let inFlow = false;
  for (const index of base) {
    const next: Step | null = childAt(step.node, index);
    if (next === null) return null;
    inFlow ||= isFlow(next.parent);
    step = next;
  }
  const steps: Step[] = [step];
  for (let i = 0; i < path.length; i += 1) {
    const child = childOf(step.node, path[i]!, i === path.length - 1 ? nth : 0);
    if (child === null) return { steps, rest: path.slice(i), inFlow };
    inFlow ||= isFlow(child.parent);
    steps.push(child);
    step = child;
  }
  return { steps, rest: [], inFlow };
}

export function isFlow(node: TreeNode | null): boolean {
  return node !== null && node.kind !== 'scalar' && node.flow;
}

function childAt(node: TreeNode | null, index: number): Exclude<Step, { parent: null }> | null {
  if (node?.kind === 'map') {
    const entry = node.entries[index];
    return entry === undefined ? null : { node: entry.value, parent: node, index, entry };
  }
  const item = node?.kind === 'list' ? node.items[index] : undefined;
  return item === undefined ? null : { node: item, parent: node as ListNode, index };
}

function childOf(node: TreeNode | null, step: string | number, nth: number): Exclude<Step, { parent: null }> | null {
  if (node?.kind === 'map') {
    let before = nth;
    const index = node.entries.findIndex((entry) => entry.key === step && before-- === 0);
    return index === -1 ? null : childAt(node, index);
  }
  return typeof step === 'number' ? childAt(node, step) : null;
}

/** Indexes that lead from a tree to a node of it (or to the value of `under`), found by their places; null where they do not. */
export function baseOf(
  tree: TreeNode | null,
  root: TreeNode | null,
  under: MapEntry | undefined,
): readonly number[] | null {
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
