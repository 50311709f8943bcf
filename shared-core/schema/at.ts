import type { Path } from '../document/place.js';
import type { EitherSchema, Schema } from './schema.js';

/** What the schema says of a place in a text. */
export interface SchemaSpot {
  readonly schema: Schema;
  /** The sentence for an owner: that of the field where the place is one. */
  readonly about: string;
  /** What may not be left out; false for items and named entries. */
  readonly required: boolean;
}

/** The schema at a path, or null where the path leads to nothing that the schema knows. */
export function schemaAt(schema: Schema, path: Path): SchemaSpot | null {
  let spot: SchemaSpot = { schema, about: schema.about, required: false };
  for (const step of path) {
    const next = stepInto(spot.schema, step);
    if (next === null) return null;
    spot = next;
  }
  return spot;
}

function stepInto(schema: Schema, step: string | number): SchemaSpot | null {
  switch (schema.type) {
    case 'record': {
      const field = typeof step === 'string' && Object.hasOwn(schema.fields, step) ? schema.fields[step] : undefined;
      return field === undefined ? null : { schema: field.schema, about: field.schema.about, required: field.required };
    }
    case 'named':
      return typeof step === 'string' ? { schema: schema.item, about: schema.item.about, required: false } : null;
    case 'list':
      return typeof step === 'number' ? { schema: schema.item, about: schema.item.about, required: false } : null;
    case 'either':
      for (const one of schema.of) {
        const spot = stepInto(one, step);
        if (spot !== null) return spot;
      }
      return null;
    default:
      return null;
  }
}

/** The key that a single value at the path stands for where a map may stand there too; see `shorthandOf`. */
export function shorthandAt(schema: Schema, path: Path): string | null {
  const at = schemaAt(schema, path)?.schema;
  return at?.type === 'either' ? shorthandOf(at) : null;
}

/**
 * The key that a single value stands for where a map may stand too: the first required field of that map, or, where none is, the
 * first that takes such a value ('at' of a shelf, 'how' of a back). Null where a single value is all there can be.
 */
export function shorthandOf({ of }: EitherSchema<readonly Schema[]>): string | null {
  for (const one of of) {
    if (one.type !== 'record') continue;
    const standing = Object.entries(one.fields).filter(([, { schema }]) => of.some(({ type }) => type === schema.type));
    const [key] = standing.find(([, { required }]) => required) ?? standing[0] ?? [];
    if (key !== undefined) return key;
  }
  return null;
}
