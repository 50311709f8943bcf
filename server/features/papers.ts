import {
  errorsOf,
  PAGE_NAMES,
  PAPER_FORMS,
  PAPER_NAMES,
  unbuiltOf,
  type WantedPapers,
} from '../../shared-core/service.js';
import { languageSpoken } from '../../shared-core/words/spoken.js';
import { normalUri } from '../files.js';
import type { PapersTask } from '../papers/task.js';
import type { OpenJob, Workspace } from '../workspace.js';
import { kindOf } from '../workspace.js';

/** The papers of a job as its text stands now, and the shop files as they stand in the editor. */
export function papersTask({ document, analysis }: OpenJob, workspace: Workspace, wanted: WantedPapers): PapersTask {
  const shops = workspace.all().filter((one) => kindOf(one) === 'shop');
  return {
    uri: normalUri(document.uri),
    texts: [document, ...shops].map((one) => ({
      uri: one.uri,
      language: one.languageId,
      text: one.getText(),
    })),
    wishes: analysis.wishes,
    wanted,
    language: languageSpoken(),
  };
}

/** Carcasses that are in no paper, and how many errors the job has. */
export const faultsIn = ({ analysis }: OpenJob): { readonly broken: readonly string[]; readonly errors: number } => ({
  broken: unbuiltOf(analysis),
  errors: errorsOf(analysis),
});

/** What a client wants, as far as it makes sense: of lists what is known, else what is usual. Never throws. */
export function wantedFrom(said: Readonly<Record<string, unknown>>): WantedPapers {
  const { seconds } = said;
  return {
    only: known(said['only'], PAPER_NAMES) ?? PAPER_NAMES,
    as: known(said['as'], PAPER_FORMS) ?? ['pdf'],
    page: PAGE_NAMES.find((one) => one === said['page']) ?? 'a4',
    seconds: typeof seconds === 'number' && seconds >= 0 && seconds <= 3600 ? seconds : null,
  };
}

function known<T extends string>(said: unknown, all: readonly T[]): readonly T[] | null {
  if (!Array.isArray(said)) return null;
  const chosen = all.filter((one) => said.includes(one));
  return chosen.length === 0 ? null : chosen;
}
