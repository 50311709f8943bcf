import { readTree } from '../../document/read.js';
import type { MapEntry, TreeNode } from '../../document/tree.js';
import type { Schema } from '../../schema/schema.js';
import { shapeOf } from '../../schema/reading/shape.js';
import type { AnyField } from './keys.js';

/** A longer example is told by those of its own keys. */
const MOST_LINES = 8;

/** Keys as they are written in texts. */
export type Examples = ReadonlyMap<AnyField, string>;

/** The first example of every key that the texts have; of one whose text is long, none. */
export function examplesIn(schema: Schema, texts: readonly string[]): Examples {
  const found = new Map<AnyField, string>();
  for (const text of texts) {
    gather(schema, readTree(text, 'self').root, (field, entry) => {
      const written = shownAlone(text, entry);
      if (!found.has(field) && written.split('\n').length <= MOST_LINES) found.set(field, written);
    });
  }
  return found;
}

function gather(schema: Schema, node: TreeNode | null, take: (field: AnyField, entry: MapEntry) => void): void {
  if (node === null) return;
  switch (schema.type) {
    case 'record':
      if (node.kind !== 'map') return;
      for (const entry of node.entries) {
        const field = schema.fields[entry.key];
        if (field === undefined) continue;
        take(field, entry);
        gather(field.schema, entry.value, take);
      }
      return;
    case 'named':
      if (node.kind === 'map') node.entries.forEach(({ value }) => gather(schema.item, value, take));
      return;
    case 'list':
      if (node.kind === 'list') node.items.forEach((item) => gather(schema.item, item, take));
      return;
    case 'either': {
      const one = schema.of.find((alternative) => shapeOf(alternative) === node.kind);
      if (one !== undefined) gather(one, node, take);
      return;
    }
    default:
  }
}

/** An entry at the left margin, without what is remarked beside it. */
function shownAlone(text: string, { place: { start, end } }: MapEntry): string {
  const indent = start - (text.lastIndexOf('\n', start - 1) + 1);
  const [first, ...rest] = text.slice(start, end).trimEnd().split('\n');
  return [first!, ...rest.map((line) => line.slice(indent))].filter((line) => !/^\s*#/.test(line)).join('\n');
}
