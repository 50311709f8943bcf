import { readCarcassTree } from '../document/parts.js';
import { carcassEdits } from '../job/edits.js';
import { carcassSchema, jobSchema } from '../job/schema.js';
import { schemaAt } from '../schema/at.js';
import { messages } from '../words/message.js';
import type { JobAnalysis } from './analysis.js';
import { copyBelow } from './copy-below.js';
import { cursorAt } from './cursor.js';
import { distributed } from './moves/distributed.js';
import { mirroredText } from './moves/mirrored.js';
import { stretched } from './moves/stretched.js';
import { asVariant } from './moves/variant.js';
import { writtenOut } from './moves/written-out.js';
import { inOtherUnit, takesLength } from './other-unit.js';
import type { Refactor } from './refactor.js';
import { toDefaults } from './to-defaults.js';

export const say = messages('refactors', {
  duplicate: ({ name, free }: { readonly name: string; readonly free: string }) => `Duplicate ${name} as ${free}`,
  inUnit: ({ text }: { readonly text: string }) => `Write it as ${text}`,
  spread: ({ count }: { readonly count: number }) =>
    count === 1 ? 'Let Borewright place the shelf' : `Spread the ${count} shelves evenly`,
});

/** What can be made of what stands at an offset. */
export function refactorsAt(analysis: JobAnalysis, offset: number): readonly Refactor[] {
  return [
    ...lengthConverted(analysis, offset),
    ...spreadEvenly(analysis, offset),
    ...distributed(analysis, offset),
    ...stretched(analysis, offset),
    ...toDefaults(analysis, offset),
    ...asVariant(analysis, offset),
    ...writtenOut(analysis, offset),
    ...mirroredText(analysis, offset),
    ...duplicate(analysis, offset),
  ];
}

/** A length written in the other unit. */
function lengthConverted(analysis: JobAnalysis, offset: number): readonly Refactor[] {
  const { part, carcass, path, scalar } = cursorAt(analysis, offset);
  if (scalar === null || !scalar.plain || analysis.head.unitUnknown) return [];
  const spot = schemaAt(part === 'self' ? carcassSchema : jobSchema, path);
  const other = spot === null || !takesLength(spot.schema) ? null : inOtherUnit(scalar.text, analysis.unit);
  if (other === null) return [];
  const { start, end } = analysis.locateWritten(scalar.place, carcass);
  return [{ title: say.inUnit({ text: other.figure }), edits: [{ start, end, text: other.text }] }];
}

/** A list of heights as a number of shelves, where nothing else is said of them. */
function spreadEvenly(analysis: JobAnalysis, offset: number): readonly Refactor[] {
  const { part, carcass, path } = cursorAt(analysis, offset);
  const [key] = path;
  if (part !== 'self' || carcass === null || (key !== 'loose-shelves' && key !== 'fixed-shelves')) return [];
  const own = analysis.parts.carcasses[carcass]!;
  const { entry } = readCarcassTree(own);
  const list = entry?.value?.kind === 'map' ? entry.value.entries.find((one) => one.key === key)?.value : null;
  if (!entry || list?.kind !== 'list' || list.items.length === 0) return [];
  const saysMore = list.items.some(({ kind }) => kind !== 'scalar');
  if (saysMore || own.text.slice(list.place.start, list.place.end).includes('#')) return [];
  const count = list.items.length;
  const edits = carcassEdits(own.text, entry, [{ kind: 'set', part: 'self', path: [key], text: String(count) }]);
  if (edits.length === 0) return [];
  const placed = edits.map(({ start, end, text }) => ({ start: own.origin + start, end: own.origin + end, text }));
  return [{ title: say.spread({ count }), edits: placed }];
}

/** The carcass whose name stands at the offset once more, below itself, under a name that is free. */
function duplicate(analysis: JobAnalysis, offset: number): readonly Refactor[] {
  const { part, carcass, path } = cursorAt(analysis, offset);
  if (part !== 'self' || carcass === null || path.length > 0) return [];
  const own = analysis.parts.carcasses[carcass]!;
  const { entry, problems } = readCarcassTree(own);
  if (entry === null || problems.length > 0) return [];
  const names = new Set(analysis.carcasses.map(({ name }) => name));
  const copied = copyBelow(analysis.text, entry, own.origin, { names, number: /-\d+$/ });
  if (copied === null) return [];
  return [{ title: say.duplicate({ name: entry.key, free: copied.free }), edits: [copied.edit] }];
}
