import { lineEnd, lineStart } from '../document/lines.js';
import { readCarcassTree } from '../document/parts.js';
import { keyText } from '../document/scalar-text.js';
import { carcassEdits } from '../job/edits.js';
import { carcassSchema, jobSchema } from '../job/schema.js';
import { parseLength } from '../length/parse.js';
import type { Unit } from '../length/units.js';
import { decimalInches, fraction, thousandths } from '../length/write.js';
import { schemaAt } from '../schema/at.js';
import type { Schema } from '../schema/schema.js';
import { messages } from '../words/message.js';
import type { JobAnalysis } from './analysis.js';
import { cursorAt } from './cursor.js';
import { distributed } from './moves/distributed.js';
import { mirroredText } from './moves/mirrored.js';
import { stretched } from './moves/stretched.js';
import { asVariant } from './moves/variant.js';
import { writtenOut } from './moves/written-out.js';
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
    ...inOtherUnit(analysis, offset),
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

/** A length written in the other unit, of exactly the same micrometres. */
function inOtherUnit(analysis: JobAnalysis, offset: number): readonly Refactor[] {
  const { part, carcass, path, scalar } = cursorAt(analysis, offset);
  if (scalar === null || !scalar.plain || analysis.head.unitUnknown) return [];
  const spot = schemaAt(part === 'self' ? carcassSchema : jobSchema, path);
  if (spot === null || !takesLength(spot.schema)) return [];
  const parsed = parseLength(scalar.text, analysis.unit);
  if (!parsed.ok) return [];
  const other: Unit =
    /mm\s*$/i.test(scalar.text) || (analysis.unit === 'mm' && /[\d.]$/.test(scalar.text)) ? 'in' : 'mm';
  const figure = other === 'mm' ? thousandths(parsed.value) : (fraction(parsed.value) ?? decimalInches(parsed.value));
  const text = other === analysis.unit ? figure : `${figure} ${other}`;
  const back = parseLength(text, analysis.unit);
  if (!back.ok || back.value !== parsed.value) return [];
  const { start, end } = analysis.locate(scalar.place, carcass);
  return [{ title: say.inUnit({ text: `${figure} ${other}` }), edits: [{ start, end, text }] }];
}

function takesLength(schema: Schema): boolean {
  return schema.type === 'length' || (schema.type === 'either' && schema.of.some(({ type }) => type === 'length'));
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
  const { text } = analysis;
  const start = own.origin + entry.keyPlace.start;
  const end = lineEnd(text, own.origin + entry.place.end);
  const indent = text.slice(lineStart(text, start), start);
  const lines = text.slice(own.origin + entry.keyPlace.end, end).replace(/\r$/, '');
  // What a mark names is named once, and in brackets there are no lines.
  if (!/^\uFEFF?[ ]*$/.test(indent) || /(?:^|[\s[{,])[&*]/.test(lines)) return [];
  const names = new Set(analysis.carcasses.map(({ name }) => name));
  const stem = entry.key.replace(/-\d+$/, '');
  let number = 2;
  while (names.has(`${stem}-${number}`)) number += 1;
  const free = `${stem}-${number}`;
  const eol = text.includes('\r\n') ? '\r\n' : '\n';
  const at = end - (text[end - 1] === '\r' ? 1 : 0);
  const copy = `${eol}${indent}${keyText(free, false)}${lines}`;
  return [{ title: say.duplicate({ name: entry.key, free }), edits: [{ start: at, end: at, text: copy }] }];
}
