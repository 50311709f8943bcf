import type { Change } from '../../document/finding.js';
import type { Located, Path } from '../../document/place.js';
import type { CarcassSaid } from '../../job/like.js';
import { carcassSchema } from '../../job/schema.js';
import type { Entry, Fields, RecordSchema, Schema } from '../../schema/schema.js';
import { recordIn } from '../../schema/unfold.js';
import { setWord } from '../../findings/changes.js';
import type { Notation } from '../../length/write.js';
import { flowText } from './flow.js';
import { bare } from './said.js';

type Values = Readonly<Record<string, unknown>>;

/**
 * The changes of a carcass's own text by which it comes to say what it should: of maps that it writes itself only what differs, all
 * else in one piece. What it says and should not is left.
 * @param own what its text says
 * @param has what it comes to now, as with the job's defaults
 */
export function changesTo(should: CarcassSaid, own: CarcassSaid, has: CarcassSaid, how: Notation): readonly Change[] {
  return inRecord(carcassSchema, should, own, has, [], how);
}

function inRecord(
  { fields }: RecordSchema<Fields>,
  should: Values,
  own: Values,
  has: Values,
  path: Path,
  how: Notation,
): readonly Change[] {
  return Object.entries(should).flatMap(([key, value]) =>
    inField(fields[key]!.schema, value, own[key], has[key], [...path, key], how),
  );
}

function inField(
  schema: Schema,
  should: unknown,
  own: unknown,
  has: unknown,
  path: Path,
  how: Notation,
): readonly Change[] {
  if (should === undefined || bare(should) === bare(has)) return [];
  const items = own === undefined ? null : inItems(schema, should, own, has, path, how);
  if (items !== null) return items;
  if (own !== undefined && schema.type === 'named') return inNamed(schema.item, should, own, has, path, how);
  const record = recordIn(schema);
  if (own !== undefined && record !== null)
    return inRecord(record, valuesOf(should), valuesOf(own), valuesOf(has), path, how);
  const needed = record === null || has === undefined ? should : without(should, valuesOf(has));
  return [setWord(path, flowText(schema, needed, how))];
}

/** Of lists of one length the items that differ; null for what are no such lists. */
function inItems(
  schema: Schema,
  should: unknown,
  own: unknown,
  has: unknown,
  path: Path,
  how: Notation,
): readonly Change[] | null {
  const list =
    schema.type === 'either' && recordIn(schema) === null ? schema.of.find(({ type }) => type === 'list') : schema;
  if (list?.type !== 'list') return null;
  const [wanted, written, present] = [should, own, has].map((said) => itemsOf(schema, said));
  if (!wanted || !written || !present || wanted.length !== written.length || wanted.length !== present.length)
    return null;
  return wanted.flatMap((item, i) => inField(list.item, item, written[i], present[i], [...path, i], how));
}

function itemsOf(schema: Schema, said: unknown): readonly unknown[] | null {
  if (said === undefined) return null;
  if (schema.type === 'list') return valueOf(said) as readonly unknown[];
  const { as, is } = said as { readonly as: string; readonly is: unknown };
  return as === 'list' ? (valueOf(is) as readonly unknown[]) : null;
}

function inNamed(
  item: Schema,
  should: unknown,
  own: unknown,
  has: unknown,
  path: Path,
  how: Notation,
): readonly Change[] {
  const named = (said: unknown): ReadonlyMap<string, unknown> =>
    new Map((valueOf(said) as readonly Entry<unknown>[]).map(({ name, value }) => [name.value, value]));
  const [owns, hass] = [named(own), named(has)];
  return [...named(should)].flatMap(([name, value]) =>
    inField(item, value, owns.get(name), hass.get(name), [...path, name], how),
  );
}

/** A map without what is there already. */
function without(should: unknown, has: Values): unknown {
  const left = Object.entries(valuesOf(should)).filter(([key, value]) => bare(value) !== bare(has[key]));
  return { ...(should as Located<unknown>), value: Object.fromEntries(left) };
}

const valueOf = (said: unknown): unknown => (said as Located<unknown>).value;
const valuesOf = (said: unknown): Values => (said === undefined ? {} : (valueOf(said) as Values));
