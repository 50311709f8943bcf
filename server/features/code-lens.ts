import type { CodeLens } from 'vscode-languageserver';
import { carcassTotals, firstWords, planTotals, tell, type Plan } from '../../shared-core/service.js';
import { say } from '../messages.js';
import { rangeOf } from '../text.js';
import type { OpenFile } from '../workspace.js';

/** Opens the machine view of a carcass: arguments are the URI of the job and the name of the carcass. */
const SHOW_MACHINE_VIEW = 'borewright.showMachineView';
/** Opens the list of the job's set-ups: the argument is its URI. */
const SHOW_SET_UPS = 'borewright.showSetupList';

/** Writes the papers of the job: the argument is its URI. */
const WRITE_PAPERS = 'borewright.writePapers';

/** What a client hands back to have a lens completed. */
interface LensData {
  readonly uri: string;
  readonly version: number;
}

/**
 * Over the file what the job takes on the machines, completed later since that needs the order of the set-ups, and its papers;
 * over each carcass what it takes.
 */
export function codeLenses(file: OpenFile): CodeLens[] {
  if (file.kind === 'shop') return [];
  const { analysis, document } = file;
  const own = carcassTotals(analysis).map(({ carcass, at, words }): CodeLens => ({
    range: rangeOf(document, at.start, at.end),
    command: { title: words, command: SHOW_MACHINE_VIEW, arguments: [document.uri, carcass] },
  }));
  if (own.length === 0) return [];
  const first = firstWords(analysis.text);
  const data: LensData = { uri: document.uri, version: document.version };
  const range = rangeOf(document, first, first);
  const papers: CodeLens = {
    range,
    command: { title: tell(say.writePapers(), 'mm'), command: WRITE_PAPERS, arguments: [document.uri] },
  };
  return [{ range, data }, papers, ...own];
}

/** The document and the version that a lens was made for; null where it needs nothing more, or is none of ours. */
export function lensOwner({ data, command }: CodeLens): LensData | null {
  if (command !== undefined) return null;
  const given: unknown = data;
  if (typeof given !== 'object' || given === null || !('uri' in given) || !('version' in given)) return null;
  const { uri, version } = given;
  return typeof uri === 'string' && typeof version === 'number' ? { uri, version } : null;
}

/** The lens over the file, completed: '37 set-ups · changeovers 2 h 50 min 30 s'. */
export function resolvedLens(lens: CodeLens, uri: string, plan: Plan): CodeLens {
  const { words, about } = planTotals(plan);
  return { ...lens, command: { title: words, tooltip: about, command: SHOW_SET_UPS, arguments: [uri] } };
}
