import type { Blank, Run, SetUp } from '../../machining/set-up.js';

/**
 * A short text that is another one where anything that is set, or bored, in a set-up is another: what was ticked off is then
 * no longer this set-up. FNV-1a over its figures, twice 32 bits (offset basis and prime from memory).
 */
export function contentOf({ machine, fence, height, stops, extension, depth, through, runs }: SetUp): string {
  const steps = runs.map((run) => [run.carcass, run.panel, run.pieces, run.steps]);
  return textKey(JSON.stringify([machine.name, fence, height, stops, extension, depth, through, steps]));
}

/**
 * The same for one panel of it: another one where its size, the machine, or a hole that is made is another, but the same
 * where only stops and fences differ, since the wood that was bored stays bored.
 */
export function runContent({ machine }: SetUp, { carcass, panel, pieces, steps }: Run, blank: Blank): string {
  const holes = steps.map((step) => step.holes.map(({ face, u, v, diameter, depth }) => [face, u, v, diameter, depth]));
  const { length, width, thickness, hand } = blank;
  return textKey(JSON.stringify([machine.name, carcass, panel, pieces, length, width, thickness, hand, holes]));
}

const textKey = (text: string): string => hash(text, 0x811c9dc5) + hash(`${text}.`, 0x01000193);

function hash(text: string, start: number): string {
  let sum = start;
  for (let index = 0; index < text.length; index += 1) sum = Math.imul(sum ^ text.charCodeAt(index), 0x01000193);
  return (sum >>> 0).toString(16).padStart(8, '0');
}
