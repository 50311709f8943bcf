import type { TreeNode } from '../../document/tree.js';
import { say } from '../messages.js';
import type { EitherSchema, Schema } from '../schema.js';
import { subjectAt } from '../subject.js';
import { wantedOf } from '../wanted.js';
import type { At, Context } from './context.js';
import { withoutDashes } from './dashes.js';
import { offersOfList } from './list.js';
import { firstLineOf, isNothing, shapeOf } from './shape.js';

const NOT_TAKEN = { map: say.mapNotTaken, list: say.listNotTaken, scalar: say.valueNotTaken } as const;

/** Takes the first alternative of the node's shape that reads without fault; else tells the faults of the first of that shape. */
export function readEither(
  context: Context,
  schema: EitherSchema<readonly Schema[]>,
  node: TreeNode | null,
  at: At,
): unknown {
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
    const asked = { subject: subjectAt(at.path), wanted: wantedOf(schema) };
    if (node === null || isNothing(node)) return context.wrong(place, say.noValue(asked));
    const takesKeys = schema.of.some(({ type }) => type === 'record');
    return context.wrong(place, NOT_TAKEN[node.kind](asked), takesKeys ? withoutDashes(node, context.part) : []);
  }
  const list = schema.of.find((one) => one.type === 'list');
  const asList = list === undefined ? [] : offersOfList(context, list.item, node, at.path);
  if (node?.kind === 'scalar' && asList.length > 0) {
    const text = node.text.trim();
    const message = say.standsAlone({ subject: subjectAt(at.path), text, wanted: wantedOf(first) });
    return context.wrong(node.place, message, asList);
  }
  const value = context.read(first, node, at);
  return value === null ? null : { as: first.type, is: value };
}
