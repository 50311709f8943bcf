import type { Repair } from '../../document/finding.js';
import type { MapEntry, TreeNode } from '../../document/tree.js';
import { say } from '../messages.js';
import { errorAt } from '../tell.js';
import type { At, Context } from './context.js';

/**
 * Tells a key that is written twice; the first one counts.
 * @param seen holds the entries met so far by their keys, and is added to
 * @param isOwners true where the owner chooses the keys, so that one of the two can be given another
 */
export function isDuplicate(
  context: Context,
  seen: Map<string, MapEntry[]>,
  entry: MapEntry,
  at: At,
  isOwners = false,
): boolean {
  const { key } = entry;
  const before = seen.get(key);
  const first = before?.[0];
  if (before === undefined || first === undefined) {
    seen.set(key, [entry]);
    return false;
  }
  const nth = before.push(entry) - 1;
  const path = [...at.path, key];
  const remove = (one: number): Repair['changes'] => [{ kind: 'remove', part: context.part, path, nth: one }];
  const repairs: Repair[] = [
    { title: say.removeThis({ key }), changes: remove(nth), preferred: sameText(first.value, entry.value) },
    { title: say.removeFirst({ key }), changes: remove(0), preferred: false },
  ];
  const free = isOwners ? freeName(key, seen) : null;
  if (free !== null) {
    const renamed: Repair['changes'] = [{ kind: 'rename-key', part: context.part, path, text: free, nth }];
    repairs.push({ title: say.rename({ text: free }), changes: renamed, preferred: false });
  }
  const related = [{ place: first.keyPlace, message: say.firstWritten({ key }) }];
  const message = isOwners ? say.nameWrittenTwice({ key }) : say.writtenTwice({ key });
  context.tell([errorAt('name-duplicate', entry.keyPlace, message, { related, repairs })]);
  return true;
}

/** True where nothing is lost with one of the two. */
function sameText(a: TreeNode | null, b: TreeNode | null): boolean {
  return a?.kind === 'scalar' && b?.kind === 'scalar' && a.text === b.text;
}

function freeName(key: string, seen: ReadonlyMap<string, unknown>): string {
  let number = 2;
  while (seen.has(`${key}-${number}`)) number += 1;
  return `${key}-${number}`;
}
