import type { MapEntry, TreeNode } from '../document/tree.js';
import { mentionsInShop } from '../mentions/files.js';
import { schemaAt } from '../schema/at.js';
import { isUnknownUnit, unitEntry } from '../schema/file-unit.js';
import { shopSchema } from '../shop/schema.js';
import type { ShopAnalysis } from './analysis.js';
import { copyBelow } from './copy-below.js';
import { descend } from './cursor.js';
import { inOtherUnit, takesLength } from './other-unit.js';
import type { Refactor } from './refactor.js';
import { say } from './refactors.js';

/** What can be made of what stands at an offset of a shop file. */
export function shopRefactorsAt(analysis: ShopAnalysis, offset: number): readonly Refactor[] {
  return [...lengthConverted(analysis, offset), ...duplicate(analysis, offset)];
}

/** A length written in the other unit. */
function lengthConverted({ root, shop }: ShopAnalysis, offset: number): readonly Refactor[] {
  const { path, scalar } = descend(root, offset, []);
  const spot = scalar?.plain === true ? schemaAt(shopSchema, path) : null;
  if (scalar === null || spot === null || !takesLength(spot.schema) || !knowsUnit(root)) return [];
  const other = inOtherUnit(scalar.text, shop.unit);
  const { start, end } = scalar.place;
  return other === null
    ? []
    : [{ title: say.inUnit({ text: other.figure }), edits: [{ start, end, text: other.text }] }];
}

/** `white-16` is 16 mm thick, and no sixteenth of its kind. */
const COUNTED = /-\d$/;

/** The board, machine, stop or whatever else has a name, the name of which stands at the offset, once more below itself. */
function duplicate({ root, text }: ShopAnalysis, offset: number): readonly Refactor[] {
  const { path, key } = descend(root, offset, []);
  const above = path.slice(0, -1);
  if (key === null || schemaAt(shopSchema, above)?.schema.type !== 'named') return [];
  const entry = entryAt(root, path);
  const names = new Set(mentionsInShop(text).flatMap(({ gives, name }) => (gives ? [name] : [])));
  const copied = entry === null ? null : copyBelow(text, entry, 0, { names, number: COUNTED });
  if (copied === null) return [];
  return [{ title: say.duplicate({ name: key.name, free: copied.free }), edits: [copied.edit] }];
}

function entryAt(root: TreeNode | null, path: readonly (string | number)[]): MapEntry | null {
  let here = root;
  let found: MapEntry | null = null;
  for (const step of path) {
    if (here?.kind !== 'map') return null;
    found = here.entries.find(({ key }) => key === step) ?? null;
    here = found?.value ?? null;
  }
  return found;
}

/** False where the file names a unit that there is none of. */
function knowsUnit(root: TreeNode | null): boolean {
  return root?.kind !== 'map' || !isUnknownUnit(unitEntry(root.entries));
}
