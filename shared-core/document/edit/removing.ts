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
  if (step.parent.flow) return removalInBrackets(step);
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

function removalInBrackets(step: Exclude<Step, { parent: null }>): readonly TextEdit[] {
  const places =
    'entry' in step
      ? step.parent.entries.map((entry) => entry.place)
      : step.parent.items.map((item) => item.alias ?? item.place);
  const own = places[step.index]!;
  const next = places[step.index + 1];
  const before = places[step.index - 1];
  if (next !== undefined) return [{ start: own.start, end: next.start, text: '' }];
  return [{ start: before?.end ?? own.start, end: own.end, text: '' }];
}

function sizeOf(node: MapNode | ListNode | null): number {
  return node === null ? 0 : node.kind === 'map' ? node.entries.length : node.items.length;
}
