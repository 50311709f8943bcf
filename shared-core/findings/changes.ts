import type { Located, Path } from '../document/place.js';
import { writeLength } from '../length/write.js';
import type { Micrometres } from '../length/units.js';
import type { Change } from './finding.js';
import type { CarcassContext } from './rule.js';

/** Writes a length into the carcass's own text, exactly, in the unit and notation of the job file. */
export function setLength(context: CarcassContext, path: Path, length: Micrometres): Change {
  return { kind: 'set', part: 'self', path, text: writeLength(length, context.unit, context.inches) };
}

/** Writes a word at a path. */
export function setWord(path: Path, text: string): Change {
  return { kind: 'set', part: 'self', path, text };
}

/** Takes out what stands at a path. */
export function remove(path: Path): Change {
  return { kind: 'remove', part: 'self', path };
}

/** Puts another name where this one is written, be it in the carcass or in the job's defaults; null for a default. */
export function replaceName(name: Located<string>, by: string): Change | null {
  const part = name.place.part;
  if (!name.written || (part !== 'self' && part !== 'head')) return null;
  return { kind: 'set', part, path: name.path, text: by };
}

/** True where the value stands in the carcass's own text, so that a change there touches no other carcass. */
export function ownText(value: Located<unknown>): boolean {
  return value.written && value.place.part === 'self';
}
