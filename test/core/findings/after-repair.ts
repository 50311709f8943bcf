import { expect } from 'vitest';
import type { FileFinding, JobAnalysis } from '../../../shared-core/engine.js';
import { repairEdits } from '../../../shared-core/engine/repairs.js';
import type { TextEdit } from '../../../shared-core/document/pieces.js';
import { readingRules } from '../../../shared-core/findings/reading-rules.js';
import { rules } from '../../../shared-core/findings/registry.js';
import type { Repair } from '../../../shared-core/findings/finding.js';
import { inWords } from '../../in-words.js';

export function applied(text: string, edits: readonly TextEdit[]): string {
  return edits
    .toSorted((a, b) => b.start - a.start)
    .reduce((now, { start, end, text: put }) => now.slice(0, start) + put + now.slice(end), text);
}

/** What is weighed over the whole job: any change may make a set-up that serves a single panel, or move the neighbours along a wall. */
const OF_THE_WHOLE = new Set(['set-up-for-one', 'carcasses-overlap', 'past-wall-end', 'worktop-uneven']);

/** Findings as they are told apart from one text to the next: by carcass and rule; their figures may move. */
export function countsOf(analysis: JobAnalysis): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const { finding, carcass } of analysis.findings()) {
    const key = `${carcass ?? 'job'} ${finding.rule}`;
    if (!OF_THE_WHOLE.has(finding.rule)) counts.set(key, (counts.get(key) ?? 0) + 1);
  }
  return counts;
}

export const comments = (text: string): readonly string[] => text.match(/(?:^|\s)#.*$/gm) ?? [];

/** A value that could not be read, or a name taken for another, hides what is wrong behind it. */
const HIDING = new Set([...readingRules, ...rules.filter(({ hides }) => hides)].map(({ name }) => name));

/**
 * Takes one repair on the text and checks what every repair promises: its finding is gone, there is no new one (unless the
 * fault had hidden it), comments stay, and no line is touched but those that the changes need. Gives the text after it.
 */
export function checkRepair(
  read: (text: string) => JobAnalysis,
  before: JobAnalysis,
  { finding, carcass }: FileFinding,
  repair: Repair,
): string {
  const what = `${finding.rule}: ${inWords(repair.title)}\n${before.text}`;
  const edits = repairEdits(before, { carcass, repair });
  expect(edits, what).not.toBeNull();
  const text = applied(before.text, edits!);

  const after = read(text);
  const [was, is] = [countsOf(before), countsOf(after)];
  const key = `${carcass ?? 'job'} ${finding.rule}`;
  expect(is.get(key) ?? 0, what).toBeLessThan(was.get(key) ?? 0);
  for (const [name, count] of HIDING.has(finding.rule) ? [] : is)
    expect(count, `${name} is new after ${what}`).toBeLessThanOrEqual(was.get(name) ?? 0);
  const sameAs = (analysis: JobAnalysis): number =>
    analysis
      .findings()
      .filter((one) => one.carcass === carcass && inWords(one.finding.message) === inWords(finding.message)).length;
  expect(sameAs(after), what).toBeLessThan(sameAs(before));

  const [oldLines, newLines] = [before.text.split('\n'), text.split('\n')];
  const goneLines = missing(oldLines, newLines);
  // The comment beside a value that is taken out may go with its line; no other does, and none is made up.
  const takesOut = repair.changes.some(({ kind }) => kind === 'remove');
  const goneComments = missing(comments(before.text), comments(text));
  expect(missing(goneComments, takesOut ? goneLines.flatMap(comments) : []), what).toEqual([]);
  expect(missing(comments(text), comments(before.text)), what).toEqual([]);
  expect(
    edits!.filter(({ start, end, text: put }) => before.text.slice(start, end) === put),
    what,
  ).toEqual([]);
  // A new value changes its line; a value that was not there may add a line for every key on the way to it.
  const rewritten = (repair.rewrites ?? []).reduce((lines, { text: put }) => lines + put.split('\n').length, 0);
  const added = repair.changes.reduce((lines, change) => lines + change.path.length, rewritten);
  expect(goneLines.length, what).toBeLessThanOrEqual(repair.changes.length + rewritten + removedLines(repair));
  expect(missing(newLines, oldLines).length, what).toBeLessThanOrEqual(added);
  return text;
}

/** What is taken out may leave an empty map, whose key goes too: at most a line for every key on the way. */
function removedLines({ changes }: Repair): number {
  return changes.filter(({ kind }) => kind === 'remove').reduce((lines, { path }) => lines + path.length, 0);
}

/** What of `a` is not in `b`, each as often as it is missing there. */
function missing(a: readonly string[], b: readonly string[]): readonly string[] {
  const left = new Map<string, number>();
  for (const one of b) left.set(one, (left.get(one) ?? 0) + 1);
  return a.filter((one) => {
    const count = left.get(one) ?? 0;
    left.set(one, count - 1);
    return count <= 0;
  });
}
