import type { MapEntry } from '../../document/tree.js';
import { say } from '../messages.js';
import { errorAt } from '../tell.js';
import type { Context } from './context.js';

/** Tells a key that is written twice; the first one counts. `seen` holds the keys met so far. */
export function isDuplicate(context: Context, seen: Map<string, MapEntry>, entry: MapEntry): boolean {
  const first = seen.get(entry.key);
  if (first === undefined) {
    seen.set(entry.key, entry);
    return false;
  }
  const related = [{ place: first.keyPlace, message: say.firstWritten({ key: entry.key }) }];
  const message = say.writtenTwice({ key: entry.key });
  context.tell([errorAt('name-duplicate', entry.keyPlace, message, { related })]);
  return true;
}
