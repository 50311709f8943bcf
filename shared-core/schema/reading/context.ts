import type { Change, Finding, Repair } from '../../document/finding.js';
import type { Located, Part, Path, Place } from '../../document/place.js';
import type { TreeNode } from '../../document/tree.js';
import type { Unit } from '../../length/units.js';
import type { Message } from '../../words/message.js';
import type { Schema } from '../schema.js';

/** Where a value stands: its path from the root of the part, and what is blamed where the value itself is not written. */
export interface At {
  readonly path: Path;
  readonly place: Place;
}

/** What the readers of the kinds of schema share: how the text is to be understood, and where they tell what is wrong. */
export interface Context {
  readonly unit: Unit;
  readonly part: Part;
  /** A span that runs beyond its bounds, or backwards, is told and then read as what of it can be; else it is left out. */
  readonly mendSpans: boolean;
  /** The value of a node by any schema, located on every level; null where it cannot be had. */
  read(schema: Schema, node: TreeNode | null, at: At): unknown;
  /** Reads without telling: the findings are handed back. */
  attempt(schema: Schema, node: TreeNode | null, at: At): Attempt;
  /** True where the schema would read a text without fault. */
  fits(schema: Schema, text: string, place: Place): boolean;
  /** True where so much is wrong that nothing more is told. */
  readonly isFull: boolean;
  /** Tells what costs no value. */
  tell(findings: readonly Finding[]): void;
  /** Tells what costs a value, which is then null. */
  fault(finding: Finding): null;
  /** The same of rule value-wrong. */
  wrong(place: Place, message: Message, repairs?: readonly Repair[]): null;
  /** Marks the reading as unsound for something that is told elsewhere. */
  spoil(): void;
  /** The change that writes a text at a path. */
  set(path: Path, text: string): Change;
}

export interface Attempt {
  readonly value: unknown;
  readonly sound: boolean;
  readonly findings: readonly Finding[];
}

export function located<T>(value: T, place: Place, path: Path): Located<T> {
  return { value, place, path, written: true };
}
