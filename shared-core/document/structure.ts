import type { TreeNode } from './tree.js';

/** A half-open run of UTF-16 code units [start, end) of the text that a tree was read from. */
export interface Span {
  readonly start: number;
  readonly end: number;
}

/** What stands around an offset, from the outermost map or list to the word: each within the one before. */
export function spansAround(root: TreeNode | null, offset: number): readonly Span[] {
  const spans: Span[] = [];
  const take = (span: Span): boolean => {
    const holds = span.start <= offset && offset <= span.end;
    if (holds) spans.push({ start: span.start, end: span.end });
    return holds;
  };
  const into = (node: TreeNode | null): void => {
    if (node === null || node.alias !== undefined || !take(node.place)) return;
    if (node.kind === 'list') node.items.forEach(into);
    if (node.kind !== 'map') return;
    for (const { place, keyPlace, value } of node.entries) {
      if (!take(place)) continue;
      if (!take(keyPlace)) into(value);
    }
  };
  into(root);
  return spans;
}
