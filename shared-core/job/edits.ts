import type { Change } from '../document/finding.js';
import { editsFor } from '../document/edit/edits-for.js';
import type { TextEdit } from '../document/pieces.js';
import type { MapEntry, TreeNode } from '../document/tree.js';
import { shorthandAt } from '../schema/at.js';
import { carcassSchema, jobSchema } from './schema.js';

/**
 * Edits of a carcass's own text (`part.text`, offsets counted from its start) for changes of part 'self'; `entry` is that of
 * `readCarcass`. No edit at all where one of the changes cannot be made.
 */
export function carcassEdits(text: string, entry: MapEntry, changes: readonly Change[]): readonly TextEdit[] {
  return editsFor(text, entry.value, changes, { under: entry, shorthand: (path) => shorthandAt(carcassSchema, path) });
}

/** Edits of the text of a job's head or tail; `root` is the whole tree of that text. */
export function headEdits(text: string, root: TreeNode | null, changes: readonly Change[]): readonly TextEdit[] {
  return editsFor(text, root, changes, { shorthand: (path) => shorthandAt(jobSchema, path) });
}
