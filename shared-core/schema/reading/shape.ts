import { isBlank } from '../../document/lines.js';
import type { Place } from '../../document/place.js';
import type { TreeNode } from '../../document/tree.js';
import type { Schema } from '../schema.js';

/** What a value of the schema is in the tree; null where it may be one or another. */
export function shapeOf(schema: Schema): TreeNode['kind'] | null {
  switch (schema.type) {
    case 'record':
    case 'named':
      return 'map';
    case 'list':
      return 'list';
    case 'either':
      return null;
    default:
      return 'scalar';
  }
}

/** True where nothing is written. */
export function isNothing(node: TreeNode | null): boolean {
  return node === null || (node.kind === 'scalar' && isBlank(node.text));
}

/** An indented block is blamed by its first key or item, so that its lines are not all underlined. */
export function firstLineOf(node: TreeNode): Place {
  if (node.alias !== undefined) return node.alias;
  if (node.kind === 'scalar' || node.flow) return node.place;
  const first = node.kind === 'map' ? node.entries[0]?.keyPlace : node.items[0]?.place;
  if (first === undefined || first.end <= first.start) return node.place;
  return { part: node.place.part, start: node.place.start, end: Math.min(first.end, node.place.end) };
}
