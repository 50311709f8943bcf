import type { TextEdit } from '../pieces.js';
import { writtenEnd } from '../read.js';
import type { ListNode, MapNode } from '../tree.js';
import type { TextLines } from './text-lines.js';
import { isFlow, type Step, type Walk } from './walk.js';

/** The edits that take out what a path leads to; null where it cannot be taken out. */
export function removal(walk: Walk, lines: TextLines): readonly TextEdit[] | null {
  // What would be left empty goes too, up to the root of the paths.
  let depth = walk.steps.length - 1;
  while (depth > 1 && sizeOf(walk.steps[depth]!.parent) === 1) depth -= 1;
  const step = walk.steps[depth]!;
  if (depth === 0 || step.parent === null) return null;
  if (step.parent.flow) return removalInBrackets(step, lines);
  if (walk.steps.slice(0, depth).some((one) => isFlow(one.node))) return null;
  if (!('entry' in step)) {
    const dash = lines.dashOf(step.node!);
    if (dash === null || lines.text.slice(lines.lineStart(dash), dash).trim() !== '') return null;
    return [lines.wholeLines(dash, Math.max(writtenEnd(step.node), dash + 1))];
  }
  const { keyPlace, place } = step.entry;
  const before = lines.text.slice(lines.lineStart(keyPlace.start), keyPlace.start);
  if (/^\uFEFF? *$/.test(before)) return [lines.wholeLines(keyPlace.start, place.end)];
  const next = step.parent.entries[step.index + 1];
  return next === undefined ? null : [{ start: keyPlace.start, end: next.keyPlace.start, text: '' }];
}

function removalInBrackets(step: Exclude<Step, { parent: null }>, lines: TextLines): readonly TextEdit[] {
  const places =
    'entry' in step
      ? step.parent.entries.map((entry) => entry.place)
      : step.parent.items.map((item) => item.alias ?? item.place);
  const own = places[step.index]!;
  const next = places[step.index + 1];
  const before = places[step.index - 1];
  if (next !== undefined) return [upTo(next.start, own, lines)];
  return [before === undefined ? { start: own.start, end: own.end, text: '' } : backTo(before.end, own, lines)];
}

/** What goes with one that others follow: all up to the next, but for remarks on lines between, which are of that one. */
function upTo(next: number, { start, end }: Span, lines: TextLines): TextEdit {
  const between = lines.text.slice(end, next);
  const behind = /^[ \t]*,[ \t]*(?:#.*)?(?=\r?\n)/.exec(between)?.[0].length ?? null;
  if (behind === null || !between.slice(behind).includes('#')) return { start, end: next, text: '' };
  return beginsLine(start, lines) ? lines.wholeLines(start, end) : { start, end: end + behind, text: '' };
}

/** What goes with the last one: all from the one before, but for remarks between, which are of that one. Its comma may stay. */
function backTo(before: number, { start, end }: Span, lines: TextLines): TextEdit {
  const between = lines.text.slice(before, start);
  if (!between.includes('#')) return { start: before, end, text: '' };
  const comma = /,[^#\n]*$/.exec(between);
  if (comma !== null) return { start: before + comma.index, end, text: '' };
  const endsLine = /^[ \t]*,?[ \t]*(?:#.*)?$/.test(lines.text.slice(end, lines.lineEnd(end)));
  if (beginsLine(start, lines) && endsLine) return lines.wholeLines(start, end);
  return { start, end: end + (/^\s*,/.exec(lines.text.slice(end))?.[0].length ?? 0), text: '' };
}

type Span = Pick<TextEdit, 'start' | 'end'>;

const beginsLine = (start: number, lines: TextLines): boolean =>
  lines.text.slice(lines.lineStart(start), start).trim() === '';

function sizeOf(node: MapNode | ListNode | null): number {
  return node === null ? 0 : node.kind === 'map' ? node.entries.length : node.items.length;
}
