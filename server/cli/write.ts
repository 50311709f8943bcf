import { CannotWrite, type NamedFile } from '../papers/task.js';
import { writeAll } from '../papers/write.js';
import { CouldNotRun } from './run.js';

/** Writes what a command has made. Throws `CouldNotRun`, before anything is written, where a file there is not ours. */
export function writeMade(folder: string, files: readonly NamedFile[]): void {
  try {
    writeAll(folder, files);
  } catch (fault) {
    if (fault instanceof CannotWrite) throw new CouldNotRun(fault.why);
    throw fault;
  }
}
