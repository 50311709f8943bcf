import type { Repair } from '../../document/finding.js';
import type { Path } from '../../document/place.js';
import type { TreeNode } from '../../document/tree.js';
import { say } from '../messages.js';
import type { ListSchema, Schema } from '../schema.js';
import { subjectAt } from '../subject.js';
import { preferred } from '../tell.js';
import { wantedOf } from '../wanted.js';
import { located, type At, type Context } from './context.js';
import { hasDecimals } from './decimal-comma.js';
import { firstLineOf, isNothing } from './shape.js';

/** A list; items that cannot be read are left out. */
export function readList(context: Context, { item, most }: ListSchema<Schema>, node: TreeNode | null, at: At): unknown {
  if (node === null || isNothing(node)) return located([], node?.place ?? at.place, at.path);
  if (node.kind !== 'list') {
    return context.wrong(
      firstLineOf(node),
      say.notAList({ subject: subjectAt(at.path), item: wantedOf(item) }),
      offersOfList(context, item, node, at.path),
    );
  }
  const beyond = node.items[most];
  if (beyond !== undefined) {
    return context.wrong(firstLineOf(beyond), say.listTooLong({ items: node.items.length, most }));
  }
  if (node.flow && hasDecimals(context, item, node)) return null;
  const items: unknown[] = [];
  node.items.forEach((one, index) => {
    const value = context.read(item, one, {
      path: [...at.path, index],
      place: one.place.end > one.place.start ? firstLineOf(one) : at.place,
    });
    if (value !== null) items.push(value);
  });
  return located(items, node.place, at.path);
}

/** Offers to put a value that stands alone into a list, where the list would take it. */
export function offersOfList(context: Context, item: Schema, node: TreeNode | null, path: Path): readonly Repair[] {
  if (node?.kind !== 'scalar' || !context.fits(item, node.text, node.place)) return [];
  const text = `[${node.text.trim()}]`;
  return [preferred(say.write({ text }), context.set(path, text))];
}
