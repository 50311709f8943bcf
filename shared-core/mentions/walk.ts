import type { TreeNode } from '../document/tree.js';
import { shapeOf } from '../schema/reading/shape.js';
import type { NamedSchema, Schema } from '../schema/schema.js';
import type { Mention } from './mention.js';

/** What an edge is told that shall have no band; no name of a thing. */
const NOTHING = 'none';

/**
 * The names in a tree that its schema calls names, in the order of the text. A value that several aliases lead to comes
 * once for each. Offsets are those of the tree.
 */
export function mentionsUnder(
  schema: Schema,
  node: TreeNode | null,
  within: readonly string[] = [],
  inFlow = false,
): readonly Mention[] {
  if (node === null) return [];
  switch (schema.type) {
    case 'name': {
      if (node.kind !== 'scalar' || node.text.trim() === '' || node.text === NOTHING) return [];
      const { start, end } = node.place;
      return [{ of: schema.of, name: node.text, within: [], gives: false, start, end, inFlow }];
    }
    case 'record':
      if (node.kind !== 'map') return [];
      return node.entries.flatMap(({ key, value }) => {
        const field = Object.hasOwn(schema.fields, key) ? schema.fields[key] : undefined;
        return field === undefined ? [] : mentionsUnder(field.schema, value, within, node.flow);
      });
    case 'named':
      if (node.kind !== 'map') return [];
      return node.entries.flatMap(({ key, keyPlace: { start, end }, value }) => {
        if (key.trim() === '') return [];
        const given: Mention = { of: kindOf(schema), name: key, within, gives: true, start, end, inFlow: node.flow };
        return [given, ...mentionsUnder(schema.item, value, [...within, key], node.flow)];
      });
    case 'list':
      return node.kind === 'list'
        ? node.items.flatMap((item) => mentionsUnder(schema.item, item, within, node.flow))
        : [];
    case 'either': {
      const one = schema.of.find((alternative) => shapeOf(alternative) === node.kind);
      return one === undefined ? [] : mentionsUnder(one, node, within, inFlow);
    }
    default:
      return [];
  }
}

/** What the entries of a map of names are. */
export function kindOf({ sort, noun }: NamedSchema<Schema>): string {
  return sort?.of ?? noun;
}
