import type { ShelfSpec } from '../carcass/spec.js';
import type { TextEdit } from '../document/pieces.js';
import type { Change } from '../document/finding.js';
import { means } from '../job/panel-key.js';
import type { Micrometres } from '../length/units.js';
import { writeLength } from '../length/write.js';
import type { JobAnalysis } from './analysis.js';
import type { CarcassAnalysis } from './carcass-analysis.js';
import { editsInCarcass } from './repairs.js';

/**
 * The edits that move a loose shelf along the holes of the rows that it lies in, in offsets of the whole file. A number of
 * shelves becomes the list of their heights. None where there is no such shelf or no row, or where it cannot go further.
 * @param panel key of one of the panels that the shelf makes
 * @param holes so many up; down where negative. A shelf between two holes comes to the first of them
 */
export function moveShelf(analysis: JobAnalysis, carcass: string, panel: string, holes: number): readonly TextEdit[] {
  const index = analysis.carcasses.findIndex(({ name }) => name === carcass);
  const { spec } = analysis.carcasses[index] ?? { spec: null };
  const shelf = spec?.looseShelves.find(({ key }) => means(key, panel));
  if (!spec || shelf === undefined || !Number.isInteger(holes) || holes === 0) return [];
  const at = movedTo(analysis.carcasses[index]!, shelf.at.value, holes);
  if (at === null || at === shelf.at.value) return [];
  const text = (length: Micrometres): string => writeLength(length, analysis.unit);
  const { written, place, path } = shelf.at;
  if (written && place.part === 'self')
    return editsInCarcass(analysis, index, [{ kind: 'set', part: 'self', path, text: text(at) }]);
  // The list of another carcass that this one is like is left to that one; it can only be taken over where it has heights alone.
  if (written && !spec.looseShelves.every(hasHeightAlone)) return [];
  const heights = spec.looseShelves.map((one) => text(one === shelf ? at : one.at.value));
  const change: Change = { kind: 'set', part: 'self', path: ['loose-shelves'], text: `[${heights.join(', ')}]` };
  return editsInCarcass(analysis, index, [change]);
}

function hasHeightAlone({ bay, board, setback }: ShelfSpec): boolean {
  const ownBoard = board.written && board.path[0] === 'loose-shelves';
  return bay === null && !setback.written && !ownBoard;
}

/** A height so many holes further along the rows of the sides. */
function movedTo({ carcass, boring }: CarcassAnalysis, at: Micrometres, holes: number): Micrometres | null {
  const side = carcass?.panels.find(({ role }) => role === 'left-side');
  const row = boring?.rows.find((one) => one.panel === side?.key) ?? boring?.rows[0];
  const upright = carcass?.panels.find(({ key }) => key === row?.panel);
  if (side === undefined || row === undefined || upright === undefined || row.pitch <= 0) return null;
  // Heights of shelves are counted from the bottom end of the sides; a divider stands higher.
  const start = row.offset + upright.pose.origin.z - side.pose.origin.z;
  const steps = (at - start) / row.pitch;
  const from = holes > 0 ? Math.floor(steps) : Math.ceil(steps);
  return start + Math.min(Math.max(from + holes, 0), row.count - 1) * row.pitch;
}
