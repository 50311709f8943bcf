import { readdirSync, statSync, type Dirent } from 'node:fs';
import { join } from 'node:path';

/** Folders in which no workshop keeps its jobs. */
const PASSED_OVER = /^(?:\..*|node_modules)$/;

/**
 * The files of a folder and of the folders in it whose name is wanted, in the order of their paths. A link to a file counts as
 * the file; a link to a folder could lead round in a ring, and is left aside.
 * @param unreadable is told of a folder that cannot be read; it is passed over unless this throws
 * @param most how many entries are looked at before the search ends
 */
export function filesBelow(
  folder: string,
  isWanted: (name: string) => boolean,
  unreadable: (folder: string, fault: unknown) => void,
  most = Infinity,
): readonly string[] {
  const found: string[] = [];
  let left = most;
  const search = (path: string): void => {
    for (const entry of entriesOf(path, unreadable)) {
      left -= 1;
      if (left < 0) return;
      const inside = join(path, entry.name);
      if (entry.isDirectory() && !PASSED_OVER.test(entry.name)) search(inside);
      else if (isWanted(entry.name) && isFile(entry, inside)) found.push(inside);
    }
  };
  search(folder);
  return found;
}

/** By name; none where the folder cannot be read. */
function entriesOf(folder: string, unreadable: (folder: string, fault: unknown) => void): readonly Dirent[] {
  try {
    return readdirSync(folder, { withFileTypes: true }).sort((a, b) => (a.name < b.name ? -1 : 1));
  } catch (fault) {
    unreadable(folder, fault);
    return [];
  }
}

function isFile(entry: Dirent, path: string): boolean {
  if (!entry.isSymbolicLink()) return entry.isFile();
  try {
    return statSync(path, { throwIfNoEntry: false })?.isFile() === true;
  } catch {
    return false;
  }
}
