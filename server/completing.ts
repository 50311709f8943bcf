import type { TextDocument } from 'vscode-languageserver-textdocument';
import type { JobAnalysis } from '../shared-core/service.js';
import { nextTurn } from './next-turn.js';
import type { OpenFile, Workspace } from './workspace.js';

/** So long at a time a job is worked on before the next message of the client has its turn. */
const SLICE_MS = 2;

/** Begins a slice: true once it has lasted long enough. */
function slice(): () => boolean {
  const start = performance.now();
  return () => performance.now() - start > SLICE_MS;
}

/** Works in slices until `work` is done; false where `goesOn` said meanwhile that nobody wants it any more. */
async function inSlices(work: (enough: () => boolean) => boolean, goesOn: () => boolean): Promise<boolean> {
  while (!work(slice())) {
    await nextTurn();
    if (!goesOn()) return false;
  }
  return true;
}

/** Works out what the slow rules say of a job, in slices; false where `goesOn` said that nobody wants to know any more. */
export const completed = (analysis: JobAnalysis, goesOn: () => boolean): Promise<boolean> =>
  inSlices((enough) => analysis.complete(enough), goesOn);

/** Works on what the slow rules say for one slice; true where all is known then. */
export const completedInSlice = (analysis: JobAnalysis): boolean => analysis.complete(slice());

/** Works on the present text of a document for one slice; true where it is ready to be asked about then. */
export const preparedInSlice = (workspace: Workspace, uri: string): boolean => workspace.prepare(uri, slice());

/** Prepares a document in slices, whatever its text becomes; false where `goesOn` said that nobody waits any more. */
export const prepared = (workspace: Workspace, uri: string, goesOn: () => boolean): Promise<boolean> =>
  inSlices((enough) => workspace.prepare(uri, enough), goesOn);

/** The same of a document that need not be open, and whose text stays as it is. */
export const preparedToLookAt = (
  workspace: Workspace,
  document: TextDocument,
  goesOn: () => boolean,
): Promise<boolean> => inSlices((enough) => workspace.prepareToLookAt(document, enough), goesOn);

/** Sorts the work of a job into set-ups in slices; false where its text was changed meanwhile. */
export async function sorted(file: OpenFile): Promise<boolean> {
  if (file.kind === 'shop') return true;
  const { document, analysis } = file;
  const { version } = document;
  return inSlices(
    (enough) => analysis.sortSetUps(enough),
    () => document.version === version,
  );
}
