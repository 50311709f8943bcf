import type { Located } from '../../document/place.js';
import { scalarText } from '../../document/scalar-text.js';
import { writeLength, type Notation } from '../../length/write.js';
import type { Micrometres } from '../../length/units.js';
import { shorthandOf } from '../../schema/at.js';
import type { EitherSchema, Entry, Schema } from '../../schema/schema.js';
import { recordIn } from '../../schema/unfold.js';

/** A value in its long form (see `unfold`) as YAML on one line, as short as its schema takes it. */
export function flowText(schema: Schema, value: unknown, how: Notation): string {
  switch (schema.type) {
    case 'either':
      return eitherText(schema, value, how);
    case 'list':
      return `[${(valueOf(value) as readonly unknown[]).map((item) => flowText(schema.item, item, how)).join(', ')}]`;
    case 'named': {
      const entries = valueOf(value) as readonly Entry<unknown>[];
      return braced(entries.map((entry) => [entry.name.value, flowText(schema.item, entry.value, how)]));
    }
    case 'record': {
      const fields = Object.entries(valueOf(value) as Readonly<Record<string, unknown>>);
      return braced(fields.map(([key, one]) => [key, flowText(schema.fields[key]!.schema, one, how)]));
    }
    case 'length':
      return scalarText(writeLength(valueOf(value) as Micrometres, how.unit, how.inches), true);
    case 'flag':
      return valueOf(value) === true ? 'yes' : 'no';
    default:
      return scalarText(String(valueOf(value)), true);
  }
}

/** A map of one key that a single value stands for is written as that. */
function eitherText(schema: EitherSchema<readonly Schema[]>, value: unknown, how: Notation): string {
  const record = recordIn(schema);
  if (record === null) {
    const { as, is } = value as { readonly as: string; readonly is: unknown };
    return flowText(
      schema.of.find(({ type }) => type === as)!,
      is,
      how,
    );
  }
  const said = valueOf(value) as Readonly<Record<string, unknown>>;
  const short = shorthandOf(schema);
  const isShort = short !== null && Object.keys(said).join() === short;
  return isShort ? flowText(record.fields[short]!.schema, said[short], how) : flowText(record, value, how);
}

const valueOf = (value: unknown): unknown => (value as Located<unknown>).value;

function braced(entries: readonly (readonly [key: string, text: string])[]): string {
  return entries.length === 0
    ? '{}'
    : `{ ${entries.map(([key, text]) => `${scalarText(key, true)}: ${text}`).join(', ')} }`;
}
