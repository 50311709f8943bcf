import { LSPErrorCodes, ResponseError, type CancellationToken, type ProgressToken } from 'vscode-languageserver';
import { tell, type PapersMethod, type PapersParams, type PapersReply } from '../../shared-core/service.js';
import { faultsIn, papersTask, wantedFrom } from '../features/papers.js';
import { say } from '../papers/messages.js';
import type { Session } from './session.js';

const PAPERS: PapersMethod = 'borewright/papers';

/** Writes papers to the disk. A client that gives a `workDoneToken` is told how far they have come. */
export function answerPapers({ connection, answer, workspace, writePapers }: Session): void {
  connection.onRequest(
    PAPERS,
    (params: PapersParams & { readonly workDoneToken?: ProgressToken }, token: CancellationToken) =>
      answer('papers', params.uri, token, null, async (file): Promise<PapersReply | ResponseError | null> => {
        if (file.kind === 'shop' || typeof params.folder !== 'string') return null;
        if (writePapers === null || !/^file:/i.test(params.folder))
          return { kind: 'nothing', reason: tell(say.noDisk(), 'mm') };
        const faults = faultsIn(file);
        const shown = connection.window.attachWorkDoneProgress(params.workDoneToken);
        shown.begin('', undefined, undefined, true);
        try {
          const task = papersTask(file, workspace, wantedFrom({ ...params }));
          const reply = await writePapers(task, params.folder, (words) => shown.report(words), token);
          if (reply.kind === 'written') return { ...reply, ...faults };
          return token.isCancellationRequested ? new ResponseError(LSPErrorCodes.RequestCancelled, 'cancelled') : reply;
        } finally {
          shown.done();
        }
      }),
  );
}
