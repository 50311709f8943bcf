import type { CancellationToken } from 'vscode-languageserver';
import type { PapersReply } from '../../shared-core/service.js';
import type { Told } from '../../shared-core/words/told.js';
import type { PapersTask } from './task.js';

/**
 * Makes the papers of a task and writes them into a folder, given as URI. Nothing is written where it is cancelled or refused.
 * @param told hears how far it has come
 */
export type WritePapers = (
  task: PapersTask,
  folder: string,
  told: (words: Told) => void,
  token: CancellationToken,
) => Promise<
  Pick<Extract<PapersReply, { kind: 'written' }>, 'kind' | 'files'> | Extract<PapersReply, { kind: 'nothing' }>
>;
