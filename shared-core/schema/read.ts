import type { Finding } from '../document/finding.js';
import type { Part, Path, Place } from '../document/place.js';
import type { TreeNode } from '../document/tree.js';
import type { Unit } from '../length/units.js';
import { Reader } from './reading/reader.js';
import type { Infer, Schema } from './schema.js';

/** The text that is being read. */
export interface Reading {
  readonly unit: Unit;
  readonly part: Part;
  /** Path of the node from the root of the part. */
  readonly path: Path;
  /** Blamed where the node itself is not written: its key, or the name of what lacks it. */
  readonly place: Place;
  /** A span that runs beyond its bounds, or backwards, is told and then read as what of it can be; else it is left out. */
  readonly mendSpans?: boolean;
}

export interface ReadResult<S extends Schema> {
  /** null where the value itself cannot be had. Optional parts that cannot be had are left out of it. */
  readonly value: Infer<S> | null;
  /** True where nothing written had to be left out and nothing required is missing; unknown keys do not count. */
  readonly sound: boolean;
  readonly findings: readonly Finding[];
}

/**
 * Reads a node by a schema. Findings (rules key-unknown, key-missing, value-wrong, length-impossible, name-duplicate) carry
 * the place of exactly what is wrong and, where the meaning is near, a repair. Never throws.
 */
export function readBySchema<S extends Schema>(schema: S, node: TreeNode | null, reading: Reading): ReadResult<S> {
  const reader = new Reader(reading.unit, reading.part, reading.mendSpans);
  const value = reader.read(schema, node, { path: reading.path, place: reading.place });
  // The reader walks the schema as data; that its result has the type which the schema infers is what the tests show.
  return { value: value as Infer<S> | null, sound: reader.sound, findings: reader.findings };
}
