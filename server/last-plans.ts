import { tell } from '../shared-core/words/message.js';
import type { Told } from '../shared-core/words/told.js';
import { say } from './messages.js';
import { TextDocument } from 'vscode-languageserver-textdocument';
import type { JobAnalysis } from '../shared-core/service.js';
import { normalUri } from './files.js';
import type { OpenJob } from './workspace.js';

/** A job to plan by: the present text, or while that is broken, the last one that could be planned as a whole. */
export interface Plannable {
  readonly job: OpenJob;
  /** null: the present text. Otherwise a sentence that says why an older one is planned by. */
  readonly stale: string | null;
}

/**
 * Remembers of each job the last text of which every carcass could be planned. A plan with carcasses missing would move the
 * stops of all the others, so while one is typed at, the machines are shown as they stood.
 */
export class LastPlans {
  readonly #good = new Map<string, JobAnalysis>();

  of(job: OpenJob): Plannable {
    const { analysis, document } = job;
    const key = normalUri(document.uri);
    if (isWhole(analysis)) {
      this.#good.set(key, analysis);
      return { job, stale: null };
    }
    const good = this.#good.get(key);
    if (good === undefined) return { job, stale: null };
    // The plan is of an older text, but its reader is the one of now.
    const last = good.readBy(analysis.wishes);
    this.#good.set(key, last);
    // Its places are those of its own text; only the version tells that it was answered now.
    const old = TextDocument.create(document.uri, document.languageId, document.version, last.text);
    return { job: { kind: 'job', document: old, analysis: last }, stale: staleWords(analysis) };
  }

  forget(uri: string): void {
    this.#good.delete(normalUri(uri));
  }
}

function isWhole({ carcasses, jobFindings }: JobAnalysis): boolean {
  const torn = jobFindings.some(({ finding }) => finding.rule === 'yaml-syntax');
  return carcasses.length > 0 && !torn && carcasses.every(({ operations }) => operations !== null);
}

function staleWords({ carcasses }: JobAnalysis): Told {
  const broken = carcasses.find(({ operations, name }) => operations === null && name !== '');
  return tell(broken === undefined ? say.textBroken() : say.carcassBroken(broken), 'mm');
}
