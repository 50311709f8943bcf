import type { MapEntry, TreeNode } from '../../document/tree.js';
import { say } from '../messages.js';
import type { Entry, NamedSchema, Schema } from '../schema.js';
import { located, type At, type Context } from './context.js';
import { isDuplicate } from './duplicate.js';
import { namedWithoutDashes } from './dashes.js';
import { firstLineOf, isNothing } from './shape.js';

/** A map from names of the owner's choosing; what cannot be read of it is left out. */
export function readNamed(
  context: Context,
  { noun, item }: NamedSchema<Schema>,
  node: TreeNode | null,
  at: At,
): unknown {
  if (node !== null && node.kind !== 'map' && !isNothing(node)) {
    return context.wrong(firstLineOf(node), say.notNamed({ noun }), namedWithoutDashes(node, context.part));
  }
  const items: Entry<unknown>[] = [];
  const seen = new Map<string, MapEntry[]>();
  for (const entry of node?.kind === 'map' ? node.entries : []) {
    const path = [...at.path, entry.key];
    if (entry.key.trim() === '') {
      context.wrong(entry.keyPlace, say.nameless({ noun }));
      continue;
    }
    if (isDuplicate(context, seen, entry, at, true)) continue;
    const value = context.read(item, entry.value, { path, place: entry.keyPlace });
    if (value !== null) items.push({ name: located(entry.key, entry.keyPlace, path), value });
  }
  return located(items, node?.place ?? at.place, at.path);
}
