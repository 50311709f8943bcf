import { listed } from '../../findings/words.js';
import { sentence, stopCalled } from '../../drawing/words.js';
import { cautionsFor } from '../../machining/caution.js';
import type { Plan } from '../../machining/plan/plan.js';
import type { SetUp } from '../../machining/setup-sheet.js';
import { KIND_WORDS } from '../../shop/habits.js';
import { laidRuns, layRules, type LaidRun, type LaidStep } from './lay.js';
import { bitSentences, comeSentences, inOrder, settingsOf, type InOrder } from './settings.js';
import { countedFrom } from './spindles.js';
import { timeWords, type JobWords } from './words.js';

const WIDTH = 78;

/** A panel by the names that a set-up has for it. */
export type PanelTest = (carcass: string, panel: string) => boolean;

/**
 * The set-up sheets of a job as plain text, in the order to run: what to set, then panel by panel.
 * @param isRefused panels that must not be bored as they are; the sheets say so in the place of their strokes
 * @param isWanted which set-ups; they keep their numbers in the whole order
 */
export function sheetsAsText(
  plan: Plan,
  words: JobWords,
  isRefused: PanelTest,
  isWanted: (setUp: SetUp) => boolean = () => true,
): string {
  const sheets = inOrder(plan).flatMap((one, index) =>
    isWanted(one.planned.setUp) ? [sheetAsText(one, index + 1, plan.setUps.length, words, isRefused)] : [],
  );
  return sheets.join('\n');
}

function sheetAsText(one: InOrder, number: number, of: number, words: JobWords, isRefused: PanelTest): string {
  const { setUp } = one.planned;
  const title = `Set-up ${number} of ${of}: ${setUp.id}`;
  const machine = `${setUp.machine.name}, ${KIND_WORDS[setUp.machine.kind]}`;
  const laid = laidRuns(setUp, words);
  return [
    '='.repeat(WIDTH),
    `${title}${machine.padStart(Math.max(machine.length + 2, WIDTH - title.length))}`,
    '='.repeat(WIDTH),
    ...cautionsFor(setUp).flatMap(({ text }) => wrapped(text, '  ! ')),
    ...(laid.some(isLoose) ? wrapped(UNHELD, '  ! ') : []),
    '',
    ...settingsText(one, words),
    '',
    ...runsText(setUp, laid, words, isRefused),
    '',
  ].join('\n');
}

const UNHELD = 'Where the list says ‘no clamp reaches’, hold the panel in a fixture.';

/** All settings, those to be changed marked; what is done with the bits is told in words. */
function settingsText(one: InOrder, { machineUnit: unit }: JobWords): readonly string[] {
  const settings = settingsOf(one, unit);
  const longest = Math.max(...settings.map(({ name }) => name.length));
  const line = (mark: string, name: string, words: string): readonly string[] =>
    wrapped(words, `  ${mark} ${name.padEnd(longest)}  `, ' '.repeat(longest + 6));
  const { setUp, seconds } = one.planned;
  const any = settings.some(({ changed }) => changed);
  return [
    ...comeSentences(one),
    any ? `Change what is marked *, ${timeWords(seconds)}:` : 'Nothing is to be changed:',
    ...settings.flatMap(({ name, value, about, changed }) =>
      line(changed ? '*' : ' ', name, about === '' ? value : `${value} ${about}`),
    ),
    ...(one.planned.changes.machine ? [] : bitSentences(one, unit).flatMap((text) => line(' ', '', text))),
    ...wrapped(restWords(setUp).join(' '), '    '),
  ];
}

/** What must not stand in the way: the stops that are not set, and the spindles without a bit. */
function restWords({ machine, stops }: SetUp): readonly string[] {
  const others = machine.stops.map(({ name }) => name).filter((name) => !stops.some((set) => set.name === name));
  return [
    ...(machine.kind === 'cup'
      ? []
      : [`Spindles are counted from ${countedFrom(machine)}; one that is not named is empty.`]),
    ...(others.length > 0 ? [`Not in use, out of the way: ${listed(others.map(stopCalled))}.`] : []),
  ];
}

/** Panel by panel, stroke by stroke. */
function runsText(setUp: SetUp, laid: readonly LaidRun[], words: JobWords, isRefused: PanelTest): readonly string[] {
  const names = laid.map(({ carcass, panel }) => `${carcass} ${panel}`);
  const longest = Math.max(0, ...names.map((name) => name.length));
  const sizes = Math.max(0, ...laid.map(({ size }) => size.length));
  const lines = laid.flatMap((run, index) => {
    const head = `  ${names[index]!.padEnd(longest)}  ${run.size.padEnd(sizes)}`;
    if (isRefused(run.carcass, run.panel)) return [`${head}  DO NOT BORE: its bores have errors`];
    return run.steps.map((step, at) =>
      `${(at === 0 ? head : '').padEnd(longest + sizes + 4)}  ${stepText(step, at, run.steps[at - 1])}`.trimEnd(),
    );
  });
  return [...layRules(setUp, words).flatMap((text) => wrapped(text, '')), '', ...lines];
}

function isLoose({ steps }: LaidRun): boolean {
  return steps.some(({ held }) => !held);
}

function stepText(step: LaidStep, index: number, before: LaidStep | undefined): string {
  const { lowered, held, holes } = step;
  const notes = [
    ...(lowered.length > 0 ? [`${listed(lowered.map(stopCalled))} down`] : []),
    ...(held ? [] : ['no clamp reaches']),
  ];
  const how = sentence(handling(step, before));
  return `${index + 1}  ${how}${notes.length > 0 ? ` (${notes.join('; ')})` : ''}, ${holes === 1 ? '1 hole' : `${holes} holes`}`;
}

/** 'slide it along: top end at near-right'; 'bottom end at row-left, then move it along …'; 'move it along …'. */
export function handling({ turn, lay, along }: LaidStep, before: LaidStep | undefined): string {
  if (along !== null && turn === null && before?.lay === lay) return along;
  const comes = turn === null ? lay : `${turn}: ${lay}`;
  return along === null ? comes : `${comes}, then ${along}`;
}

/** Lines of a text, the first behind `lead`, the others under it. */
function wrapped(text: string, lead: string, indent = ' '.repeat(lead.length)): readonly string[] {
  const lines: string[] = [];
  let line = lead;
  let isEmpty = true;
  for (const word of text.split(' ')) {
    if (!isEmpty && line.length + word.length + 1 > WIDTH) {
      lines.push(line.trimEnd());
      line = indent;
      isEmpty = true;
    }
    line += isEmpty ? word : ` ${word}`;
    isEmpty = false;
  }
  return [...lines, line.trimEnd()];
}
