import type { MapEntry } from '../../document/tree.js';
import { errorAt, quoted } from '../tell.js';
import type { Context } from './context.js';

/** Tells a key that is written twice; the first one counts. `seen` holds the keys met so far. */
export function isDuplicate(context: Context, seen: Map<string, MapEntry>, entry: MapEntry): boolean {
  const first = seen.get(entry.key);
  if (first === undefined) {
    seen.set(entry.key, entry);
    return false;
  }
  const related = [{ place: first.keyPlace, message: `${quoted(entry.key)} is first written here.` }];
  const message = `${quoted(entry.key)} is written twice here; only the first counts. Take one out, or give it another name.`;
  context.tell([errorAt('name-duplicate', entry.keyPlace, message, { related })]);
  return true;
}
