import type { Path } from '../../document/place.js';
import type { Field, Fields, LeftOut, RecordSchema, Schema } from '../../schema/schema.js';
import { groupBy } from '../../machining/plan/numbers.js';
import { sentence } from '../../words/english.js';

export type AnyField = Field<Schema, boolean, LeftOut>;

/** A key as a page tells of it. In the path a name of the owner's choosing is '*', and the place in a list 0. */
export interface KeyEntry {
  readonly key: string;
  readonly field: AnyField;
  readonly path: Path;
  /** Where it may stand, where that is not everywhere where the others of its section may. */
  readonly only: readonly Path[] | null;
}

/** The keys of one kind of map, wherever such maps may stand. */
export interface KeySection {
  readonly noun: string;
  readonly about: string;
  /** Where maps of it stand: the paths that lead to them. */
  readonly paths: readonly Path[];
  readonly keys: readonly KeyEntry[];
  /** Keys that are the very same in another section, and told there. */
  readonly elsewhere: readonly { readonly section: string; readonly keys: readonly string[] }[];
}

interface Met {
  readonly schema: RecordSchema<Fields>;
  readonly path: Path;
}

/** The sections of a page, in the order in which they are met. */
export function sectionsOf(schema: Schema): readonly KeySection[] {
  const met = recordsIn(schema, []);
  const byNoun = groupBy(met, ({ schema: { noun } }) => noun);
  const owners = ownersOf(byNoun);
  // A kind of map that may stand in several others comes after the last of them.
  const order = [...byNoun].toSorted(([, a], [, b]) => met.indexOf(a.at(-1)!) - met.indexOf(b.at(-1)!));
  return order.map(([noun, all]) => sectionOf(noun, all, owners));
}

function sectionOf(noun: string, met: readonly Met[], owners: ReadonlyMap<AnyField, string>): KeySection {
  const fields = new Map<AnyField, { readonly key: string; readonly paths: Path[] }>();
  for (const one of met)
    for (const [key, field] of Object.entries(one.schema.fields)) {
      const before = fields.get(field);
      if (before === undefined) fields.set(field, { key, paths: [one.path] });
      else before.paths.push(one.path);
    }
  const all = [...fields].map(([field, { key, paths }]) => ({ key, field, paths, owner: owners.get(field)! }));
  const elsewhere = groupBy(
    all.filter(({ owner }) => owner !== noun),
    ({ owner }) => owner,
  );
  return {
    noun,
    about: met[0]!.schema.about,
    paths: met.map(({ path }) => path),
    keys: all
      .filter(({ owner }) => owner === noun)
      .map(({ key, field, paths }): KeyEntry => ({
        key,
        field,
        path: [...paths.at(-1)!, key],
        only: paths.length < met.length ? paths : null,
      })),
    elsewhere: [...elsewhere].map(([section, some]) => ({ section, keys: some.map(({ key }) => key) })),
  };
}

/** Every map of known keys that may stand under a schema; the outer before the inner. */
function recordsIn(schema: Schema, path: Path): readonly Met[] {
  switch (schema.type) {
    case 'record':
      return [
        { schema, path },
        ...Object.entries(schema.fields).flatMap(([key, field]) => recordsIn(field.schema, [...path, key])),
      ];
    case 'named':
      return recordsIn(schema.item, [...path, '*']);
    case 'list':
      return recordsIn(schema.item, [...path, 0]);
    case 'either':
      return schema.of.flatMap((one) => recordsIn(one, path));
    default:
      return [];
  }
}

/** The section that tells of a key which stands in several: that with the most keys. */
function ownersOf(byNoun: ReadonlyMap<string, readonly Met[]>): ReadonlyMap<AnyField, string> {
  const owners = new Map<AnyField, { readonly noun: string; readonly size: number }>();
  for (const [noun, met] of byNoun)
    for (const { schema } of met) {
      const fields = Object.values(schema.fields);
      for (const field of fields) {
        const before = owners.get(field);
        if (before === undefined || before.size < fields.length) owners.set(field, { noun, size: fields.length });
      }
    }
  return new Map([...owners].map(([field, { noun }]) => [field, noun]));
}

/** The heading of a section, or of a key in it. */
export function headingOf(noun: string, key?: string): string {
  return key === undefined ? sentence(noun) : `${sentence(noun)}: \`${key}\``;
}

/** What links to a heading, as readers of Markdown make it: small letters, no marks, a dash for a space. */
export function anchorOf(heading: string): string {
  return heading
    .toLowerCase()
    .replace(/[^\p{L}\p{N}\s_-]/gu, '')
    .replace(/\s/g, '-');
}

/** The link to what a page says of the key or the map at a path from the root of a file; null where it says nothing. */
export function anchorAt(schema: Schema, path: Path): string | null {
  const steps = path.map((step): string | number => (typeof step === 'number' ? 0 : step));
  for (const { noun, paths, keys, elsewhere } of sectionsOf(schema)) {
    if (paths.some((one) => leads(one, steps))) return anchorOf(headingOf(noun));
    const key = steps.at(-1);
    if (typeof key !== 'string' || !paths.some((one) => leads(one, steps.slice(0, -1)))) continue;
    if (keys.some((one) => one.key === key)) return anchorOf(headingOf(noun, key));
    const other = elsewhere.find((one) => one.keys.includes(key));
    if (other !== undefined) return anchorOf(headingOf(other.section, key));
  }
  return null;
}

/** True where a path of the schema is that of the text. */
function leads(path: Path, steps: Path): boolean {
  return path.length === steps.length && path.every((step, i) => step === '*' || step === steps[i]);
}
