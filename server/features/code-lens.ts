import type { CodeLens } from 'vscode-languageserver';
import { sentence } from '../../shared-core/drawing/words.js';
import type { JobAnalysis } from '../../shared-core/engine.js';
import { counted } from '../../shared-core/words/english.js';
import type { Plan } from '../../shared-core/machining/plan/plan.js';
import { boundWords } from '../../shared-core/papers/set-up/totals.js';
import { timeWords } from '../../shared-core/papers/set-up/words.js';
import { rangeOf } from '../text.js';
import type { OpenFile } from '../workspace.js';
import { stepsOf } from './machine-words.js';

/** Opens the machine view of a carcass: arguments are the URI of the job and the name of the carcass. */
const SHOW_MACHINE_VIEW = 'borewright.showMachineView';
/** Opens the list of the job's set-ups: the argument is its URI. */
const SHOW_SET_UPS = 'borewright.showSetupList';

/** What a client hands back to have a lens completed. */
interface LensData {
  readonly uri: string;
  readonly version: number;
}

/**
 * Over the file what the job takes on the machines, completed later since that needs the order of the set-ups; over each
 * carcass what it takes.
 */
export function codeLenses(file: OpenFile): CodeLens[] {
  if (file.kind === 'shop') return [];
  const { analysis, document } = file;
  const planned = new Set(analysis.planned());
  const own = analysis.carcasses.flatMap((one, index): CodeLens[] => {
    if (one.carcass === null || one.boring === null || one.nameAt === null) return [];
    if (!planned.delete(one)) return [];
    const { start, end } = analysis.locate(one.nameAt.place, index);
    const steps = stepsOf(analysis, one);
    const title = [
      counted(one.carcass.panels.length, 'panel'),
      counted(one.boring.bores.length, 'bore'),
      counted(steps.length, 'stroke'),
      counted(new Set(steps.map(({ setUp }) => setUp)).size, 'set-up'),
    ].join(' · ');
    return [
      {
        range: rangeOf(document, start, end),
        command: { title, command: SHOW_MACHINE_VIEW, arguments: [document.uri, one.name] },
      },
    ];
  });
  if (own.length === 0) return [];
  const first = headStart(analysis);
  const data: LensData = { uri: document.uri, version: document.version };
  return [{ range: rangeOf(document, first, first), data }, ...own];
}

/** The first line that says something. */
function headStart({ text }: JobAnalysis): number {
  const line = /^(?!\s*(?:#.*)?$).*\S/m.exec(text);
  return line?.index ?? 0;
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
  const title = `${counted(plan.setUps.length, 'set-up')} · changeovers ${timeWords(plan.seconds)}`;
  const tooltip = `${sentence(boundWords(plan))}.`;
  return { ...lens, command: { title, tooltip, command: SHOW_SET_UPS, arguments: [uri] } };
}
