import type { Located, Path } from '../document/place.js';
import type { Micrometres } from '../length/units.js';
import type { Change } from './finding.js';
import { writeLength, type Notation } from '../length/write.js';

/** Writes a length into the carcass's own text, exactly, in the unit and notation of the job file. */
export function setLength({ unit, inches }: Notation, path: Path, length: Micrometres): Change {
  return setWord(path, writeLength(length, unit, inches));
}

/** Writes a word at a path. */
export function setWord(path: Path, text: string): Change {
  return { kind: 'set', part: 'self', path, text };
}

/** Puts a key and its value in the place of another of the carcass's keys, so that a comment beside it stays. */
export function setInstead(key: string, by: string, text: string): readonly Change[] {
  return [setWord([key], text), { kind: 'rename-key', part: 'self', path: [key], text: by }];
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
