import type { TreeNode } from '../../document/tree.js';
import { expected } from '../expected.js';
import type { EitherSchema, Schema } from '../schema.js';
import { quoted } from '../tell.js';
import type { At, Context } from './context.js';
import { offersOfList } from './list.js';
import { firstLineOf, shapeOf } from './shape.js';

/** Takes the first alternative of the node's shape that reads without fault; else tells the faults of the first of that shape. */
export function readEither(
  context: Context,
  schema: EitherSchema<readonly Schema[]>,
  node: TreeNode | null,
  at: At,
): unknown {
  const { unit } = context;
  const fitting = schema.of.filter((one) => node !== null && shapeOf(one) === node.kind);
  for (const one of fitting) {
    const { value, sound, findings } = context.attempt(one, node, at);
    if (sound && value !== null) {
      context.tell(findings);
      return { as: one.type, is: value };
    }
  }
  const first = fitting[0];
  if (first === undefined) {
    const place = node === null ? at.place : firstLineOf(node);
    return context.wrong(
      place,
      `This is not what belongs here. ${schema.about} ${schema.of.map((one) => expected(one, unit)).join('; or: ')}.`,
    );
  }
  const list = schema.of.find((one) => one.type === 'list');
  const asList = list === undefined ? [] : offersOfList(context, list.item, node, at.path);
  if (node?.kind === 'scalar' && asList.length > 0) {
    const text = node.text.trim();
    const words = `${expected(first, unit)}; for a list with this one in it, write [${text}].`;
    return context.wrong(node.place, `${quoted(text)} stands alone. ${words}`, asList);
  }
  const value = context.read(first, node, at);
  return value === null ? null : { as: first.type, is: value };
}
