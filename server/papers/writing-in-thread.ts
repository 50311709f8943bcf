import { fileURLToPath } from 'node:url';
import { tell } from '../../shared-core/service.js';
import { makeInThread, Refused } from './in-thread.js';
import { stageWords } from './stage-words.js';
import { CannotWrite } from './task.js';
import { writeAll } from './write.js';
import type { WritePapers } from './writing.js';

/** Where there is a disk: papers are made in a thread, and written from here. */
export const writePapersInThread: WritePapers = async (task, folder, told, token) => {
  const making = makeInThread(task, (stage) => told(stageWords(stage)));
  const cancelling = token.onCancellationRequested(() => making.end());
  try {
    const files = await making.files;
    writeAll(fileURLToPath(folder), files);
    return { kind: 'written', files: files.map(({ name }) => name) };
  } catch (fault) {
    if (fault instanceof Refused) return { kind: 'nothing', reason: fault.words };
    if (fault instanceof CannotWrite) return { kind: 'nothing', reason: tell(fault.why, 'mm') };
    throw fault;
  } finally {
    cancelling.dispose();
  }
};
