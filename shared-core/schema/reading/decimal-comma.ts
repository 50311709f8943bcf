import type { Repair } from '../../document/finding.js';
import type { Place } from '../../document/place.js';
import type { ListNode, MapEntry, ScalarNode, TreeNode } from '../../document/tree.js';
import { say } from '../messages.js';
import type { Fields, RecordSchema, Schema } from '../schema.js';
import { errorAt } from '../tell.js';
import type { Context } from './context.js';

// In brackets a comma parts values, so that a decimal comma makes two of one.

/** In `{ at: 360,5, bay: 1 }` the 5 is read as a key: tells it for what it is. `before` is the entry before it. */
export function isDecimals(
  context: Context,
  schema: RecordSchema<Fields>,
  entry: MapEntry,
  before: MapEntry | undefined,
): boolean {
  const value = before?.value;
  if (entry.value !== null || value?.kind !== 'scalar' || !Object.hasOwn(schema.fields, before!.key)) return false;
  if (!/^\d+$/.test(entry.key) || !/\d$/.test(value.text) || !touches(value, entry.keyPlace)) return false;
  tellComma(context, value, entry.keyPlace, entry.key, schema.fields[before!.key]!.schema, []);
  return true;
}

/** Tells every decimal comma of a list in brackets; true where there is one. */
export function hasDecimals(context: Context, item: Schema, node: ListNode): boolean {
  if (!takesLengths(item)) return false;
  const pairs = node.items.map((one, i) => [one, node.items[i + 1]] as const);
  const spaced = pairs.some(([one, next]) => next !== undefined && !touches(one, next.place));
  let found = false;
  for (const [first, second] of pairs) {
    if (first.kind !== 'scalar' || second?.kind !== 'scalar' || !touches(first, second.place)) continue;
    const [, digits] = /^(\d+)(?:\s*(?:mm|in|"))?$/.exec(second.text) ?? [];
    if (digits === undefined || !/^[-+]?\d+$/.test(first.text)) continue;
    // A list of places rises: `[53,213,405]` is three of them, `[296,5]` is one.
    if (Number(digits) > Number(first.text) && !(spaced && digits.length < 3)) continue;
    found = true;
    const space = { part: context.part, start: second.place.start, end: second.place.start, text: ' ' };
    tellComma(context, first, second.place, second.text, item, [
      {
        title: say.writeTwo({ first: first.text, second: second.text }),
        changes: [],
        rewrites: [space],
        preferred: false,
      },
    ]);
  }
  return found;
}

/** `more` are further offers. */
function tellComma(
  context: Context,
  first: ScalarNode,
  rest: Place,
  restText: string,
  schema: Schema,
  more: readonly Repair[],
): void {
  const place: Place = { ...first.place, end: rest.end };
  const meant = `${first.text}.${restText}`;
  const comma = { part: context.part, start: first.place.end, end: rest.start, text: '.' };
  const repairs: Repair[] = context.fits(schema, meant, first.place)
    ? [{ title: say.write({ text: meant }), changes: [], rewrites: [comma], preferred: true }]
    : [];
  const figures = { written: `${first.text},${restText}`, meant };
  const message = more.length > 0 ? say.decimalCommaOrTwo(figures) : say.decimalComma(figures);
  context.fault(errorAt('length-impossible', place, message, { repairs: [...repairs, ...more] }));
}

/** True where a place starts right behind a value and one comma. */
function touches(value: TreeNode, next: Place): boolean {
  return value.alias === undefined && next.start === value.place.end + 1;
}

function takesLengths(schema: Schema): boolean {
  return schema.type === 'length' || (schema.type === 'either' && schema.of.some(takesLengths));
}
