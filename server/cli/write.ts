import { CannotWrite, type NamedFile } from '../papers/task.js';
import { expectFolder, writeAll } from '../papers/write.js';
import { CouldNotRun } from './run.js';

/** Writes what a command has made. Throws `CouldNotRun`, before anything is written, where a file there is not ours. */
export function writeMade(folder: string, files: readonly NamedFile[]): void {
  orNotRun(() => writeAll(folder, files));
}

/** Throws `CouldNotRun` where nothing can be written into a folder, before what takes long is begun. */
export function expectToWrite(folder: string): void {
  orNotRun(() => expectFolder(folder));
}

function orNotRun(work: () => void): void {
  try {
    work();
  } catch (fault) {
    if (fault instanceof CannotWrite) throw new CouldNotRun(fault.why);
    throw fault;
  }
}
