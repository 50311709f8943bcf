import { counted, listed, sentence } from '../words/english.js';
import { messages, type Message } from '../words/message.js';
import { timeWords } from '../words/time.js';
import { labels } from '../words/told.js';

/** What stands in place of a name that nobody has written. */
export const UNNAMED = labels({ carcass: '(no name)' });

/** What a reader of a file is told that belongs to no paper: titles, totals, and why there is nothing to show. */
export const say = messages('file', {
  titled: ({ paper, job }: { readonly paper: string; readonly job: string }) => `${paper}: ${job}`,
  findingTotals: ({
    files,
    errors,
    warnings,
    infos,
  }: Readonly<Record<'files' | 'errors' | 'warnings' | 'infos', number>>) =>
    `${[
      counted(files, 'file'),
      counted(errors, 'error'),
      counted(warnings, 'warning'),
      ...(infos > 0 ? [counted(infos, 'info', 'info')] : []),
    ].join(', ')}.`,
  noMachine: () => 'no machine',
  carcassTotals: ({
    panels,
    bores,
    strokes,
    setUps,
  }: Readonly<Record<'panels' | 'bores' | 'strokes' | 'setUps', number>>) =>
    [counted(panels, 'panel'), counted(bores, 'bore'), counted(strokes, 'stroke'), counted(setUps, 'set-up')].join(
      ' · ',
    ),
  planTotals: ({ setUps, seconds }: { readonly setUps: number; readonly seconds: number }) =>
    `${counted(setUps, 'set-up')} · changeovers ${timeWords(seconds)}`,
  bound: ({ bound }: { readonly bound: Message }, show) => `${sentence(show.tell(bound))}.`,

  // Nothing to show.
  shopHasNoBores: () => 'A shop file has no bores of its own. Open a job file (NAME.carcass.yaml).',
  shopHasNoSetUps: () => 'A shop file has no set-ups of its own. Open a job file (NAME.carcass.yaml).',
  notDrawnYet: ({ fault }: { readonly fault: Message }, show) => `Nothing can be drawn yet: ${show.tell(fault)}`,
  notPlannedYet: ({ fault }: { readonly fault: Message }, show) => `Nothing can be planned yet: ${show.tell(fault)}`,
  noCarcasses: () => 'This job has no carcasses yet. Write one under `carcasses:` with its `kind` and `width`.',
  nothingBored: ({ carcasses }: { readonly carcasses: readonly string[] }) =>
    `Nothing is bored in ${listed(carcasses)}.`,
  noPanelNow: ({ carcass, panel }: { readonly carcass: string; readonly panel: string }) =>
    `The job has no panel ‘${panel}’ in a carcass ‘${carcass}’ any more.`,
  noStepNow: ({
    setUp,
    carcass,
    panel,
    step,
  }: {
    readonly setUp: string;
    readonly carcass: string;
    readonly panel: string;
    readonly step: number;
  }) => `Set-up ${setUp} has no step ${step} for ${carcass}, ${panel} any more.`,

  // An older drawing.
  placeBroken: ({ name }: { readonly name: string }) =>
    `The text is broken where ‘${name}’ stood; this is its last good drawing.`,
  carcassBroken: ({ name }: { readonly name: string }) =>
    `The text of ‘${name}’ cannot be worked out as it stands; this is its last good drawing.`,
});
