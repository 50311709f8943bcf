import type { Repair } from '../../document/finding.js';
import type { MapEntry, TreeNode } from '../../document/tree.js';
import { say } from '../messages.js';
import { nearestName } from '../nearest.js';
import type { Fields, RecordSchema, Schema, Tried } from '../schema.js';
import { errorAt } from '../tell.js';
import { triedOf } from '../tried.js';
import { keysOf, wantedOf } from '../wanted.js';
import { located, type At, type Context } from './context.js';
import { withoutDashes } from './dashes.js';
import { isDecimals } from './decimal-comma.js';
import { isDuplicate } from './duplicate.js';
import { replacedBy } from './formerly.js';
import { firstLineOf, isNothing } from './shape.js';

type AnyRecord = RecordSchema<Fields>;

/** A map with the keys of the schema; what cannot be read of it is left out, and null where something required is. */
export function readRecord(context: Context, schema: AnyRecord, node: TreeNode | null, at: At): unknown {
  if (node !== null && node.kind !== 'map' && !isNothing(node)) return noMap(context, schema, node);
  const entries = node?.kind === 'map' ? node.entries : [];
  const values: Record<string, unknown> = {};
  const seen = new Map<string, MapEntry[]>();
  const written = new Set(entries.map(({ key }) => key));
  const free = Object.keys(schema.fields).filter((key) => !written.has(key));
  for (const [index, one] of entries.entries()) {
    const entry = underNewKey(context, schema, one, at);
    if (!Object.hasOwn(schema.fields, entry.key)) {
      if (!isDecimals(context, schema, entry, entries[index - 1])) unknownKey(context, schema, entry, free, at);
      continue;
    }
    if (isDuplicate(context, seen, entry, at)) continue;
    const field = schema.fields[entry.key]!;
    if (isHowMany(context, schema, entry, written)) continue;
    const value = context.read(field.schema, entry.value, { path: [...at.path, one.key], place: entry.keyPlace });
    if (value !== null) values[entry.key] = value;
  }
  // A key may be empty too: `: 5`.
  const isStoodFor = schema.standIn !== undefined && written.has(schema.standIn);
  const required = isStoodFor ? [] : Object.entries(schema.fields).filter(([, field]) => field.required);
  for (const [key, field] of required) if (!seen.has(key)) missing(context, schema, key, field.schema, at, entries);
  return required.some(([key]) => values[key] === undefined) ? null : located(values, node?.place ?? at.place, at.path);
}

/** An entry with a key of an earlier version as one with the key of today. */
function underNewKey(context: Context, { fields, formerly }: AnyRecord, entry: MapEntry, at: At): MapEntry {
  if (Object.hasOwn(fields, entry.key)) return entry;
  const now = replacedBy(context, formerly, entry.key, entry.keyPlace, (text) => ({
    kind: 'rename-key',
    part: context.part,
    path: [...at.path, entry.key],
    text,
  }));
  return now === null ? entry : { ...entry, key: now };
}

/** The most that are written out in a message. */
const MOST_COUNTED = 12;

/** True where a map has a number in its place, as if that were how many there are, which is told with the list that says it. */
function isHowMany(context: Context, { fields }: AnyRecord, entry: MapEntry, written: ReadonlySet<string>): boolean {
  const { schema } = fields[entry.key]!;
  const { value: node, keyPlace } = entry;
  if (schema.type !== 'record' || schema.counted === undefined || node?.kind !== 'scalar') return false;
  const { key, item, not } = schema.counted;
  const count = /^\d{1,2}$/.test(node.text.trim()) ? Number(node.text) : 0;
  if (count < 1 || count > MOST_COUNTED || !Object.hasOwn(fields, key)) return false;
  const meant = `${key}: [${Array.from({ length: count }, () => item).join(', ')}]`;
  const rewrite = { part: context.part, start: keyPlace.start, end: node.place.end, text: meant };
  const repair: Repair = { title: say.write({ text: meant }), changes: [], rewrites: [rewrite], preferred: true };
  const isFree = [key, ...not].every((one) => !written.has(one));
  context.wrong(node.place, say.howMany({ key: entry.key, count, meant }), isFree ? [repair] : []);
  return true;
}

function noMap(context: Context, schema: AnyRecord, node: Exclude<TreeNode, { kind: 'map' }>): null {
  const glued = node.kind === 'scalar' && node.plain ? /^([\w-]+):(\S+)$/.exec(node.text) : null;
  if (glued !== null && Object.hasOwn(schema.fields, glued[1]!)) return noSpace(context, node, glued[1]!, glued[2]!);
  return context.wrong(
    firstLineOf(node),
    say.notKeys({ noun: schema.noun, keys: keysOf(schema) }),
    withoutDashes(node, context.part),
  );
}

/** `kind:base` alone is one word to YAML, and no fault. */
function noSpace(context: Context, { place }: TreeNode, key: string, value: string): null {
  const at = place.start + key.length + 1;
  const space = { part: context.part, start: at, end: at, text: ' ' };
  const repairs: Repair[] = [{ title: say.addSpace(), changes: [], rewrites: [space], preferred: true }];
  return context.wrong(place, say.spaceMissing({ key, value }), repairs);
}

function missing(
  context: Context,
  schema: AnyRecord,
  key: string,
  value: Schema,
  at: At,
  entries: readonly MapEntry[],
): void {
  const misspelt = entries.some(
    (entry) =>
      !Object.hasOwn(schema.fields, entry.key) &&
      firstOf(meantBy(schema, entry.key, Object.keys(schema.fields))) === key,
  );
  // The misspelt key is told already, and its repair brings this one.
  if (misspelt) {
    context.spoil();
    return;
  }
  const repairs =
    value.type === 'choice'
      ? Object.keys(value.options).map((word): Repair => ({
          title: say.add({ path: [key], text: word }),
          changes: [context.set([...at.path, key], word)],
          preferred: false,
        }))
      : [];
  const message = say.keyMissing({ noun: schema.noun, key, wanted: wantedOf(value) });
  context.fault(errorAt('key-missing', at.place, message, { repairs }));
}

const firstOf = (meant: Tried<string>): string | undefined => ('keys' in meant ? meant.keys[0] : undefined);

/** What a word most likely stands for: some of the keys that are `free`, a key further in, or nothing. */
function meantBy(schema: AnyRecord, word: string, free: readonly string[]): Tried<string> {
  const tried = triedOf(schema, word);
  if (tried !== null && !('keys' in tried)) return tried;
  const known = tried?.keys.filter((key) => free.includes(key)) ?? [];
  if (known.length > 0) return { keys: known };
  const near = nearestName(word, free);
  return { keys: near === null ? [] : [near] };
}

/** `free` are the keys that are not written yet. */
function unknownKey(context: Context, schema: AnyRecord, entry: MapEntry, free: readonly string[], at: At): void {
  if (context.isFull) return;
  const { key } = entry;
  const { noun } = schema;
  const meant = meantBy(schema, key, free);
  const keys = 'keys' in meant ? meant.keys : [];
  const path = [...at.path, key];
  const renamed = (text: string): Repair => ({
    title: say.rename({ text }),
    changes: [{ kind: 'rename-key', part: context.part, path, text }],
    preferred: keys.length === 1,
  });
  const takenOut: Repair = {
    title: say.remove({ key }),
    changes: [{ kind: 'remove', part: context.part, path }],
    preferred: false,
  };
  const message =
    'under' in meant
      ? say.keyFurtherIn({ key, noun, outer: meant.under[0], inner: meant.under[1] })
      : 'nothing' in meant
        ? say.keyOfNothing({ key, noun })
        : keys.length === 0
          ? say.keyUnknown({ key, noun, keys: keysOf(schema) })
          : say.keyMisspelt({ key, noun, near: keys });
  const repairs = 'nothing' in meant ? [takenOut] : keys.map(renamed);
  context.tell([errorAt('key-unknown', entry.keyPlace, message, { repairs })]);
}
