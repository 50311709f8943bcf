import { isOnLine } from '../document/cut.js';
import type { Rewrite } from '../document/finding.js';
import { columnOf, lineStart, writtenLines } from '../document/lines.js';
import type { MapEntry, TextProblem } from '../document/tree.js';
import { nearestName } from '../schema/nearest.js';
import { freeNames, lineFeedOf } from './free-names.js';
import { say } from './messages.js';
import { carcassSchema } from './schema.js';

const KEYS = Object.keys(carcassSchema.fields);
const KINDS = Object.keys(carcassSchema.fields.kind.schema.options);

/** What comes of keys in the column where the names of carcasses stand. */
export interface Astray {
  /** True where the first of them stands in the place of a name that was forgotten: the carcass has none. */
  readonly isNameless: boolean;
  readonly problem: TextProblem;
}

/**
 * What is wrong where keys of a carcass stand in the column of its name, or where its name was forgotten, so that YAML takes
 * them for carcasses; null where nothing is. Lines are never to be indented under a name that has a value on its line: YAML
 * cannot read them there, and the next repair would take it back.
 */
export function astrayKeys(text: string, owner: MapEntry, astray: readonly MapEntry[]): Astray | null {
  const isNameless = isOnLine(text, owner) && isKey(owner);
  if (!isNameless && astray.length === 0) return null;
  const tell = isNameless ? noNameAbove : isOnLine(text, owner) ? besideValue : notIndented;
  return { isNameless, problem: tell(text, owner, astray) };
}

/** A key of a carcass with its value; one that is misspelt a little may as well be a name, where a kind stands behind it. */
function isKey({ key, value }: MapEntry): boolean {
  if (KEYS.includes(key)) return true;
  return nearestName(key, KEYS) !== null && !(value?.kind === 'scalar' && KINDS.includes(value.text));
}

function notIndented(text: string, owner: MapEntry, astray: readonly MapEntry[]): TextProblem {
  const first = astray[0]!;
  const place = first.place;
  const { value } = owner;
  if (value !== null && (value.kind !== 'map' || value.flow || value.alias !== undefined)) {
    return { message: say.outsideOwner({ key: first.key, owner: owner.key }), place };
  }
  const own = value?.entries[0];
  const by = own === undefined ? 2 : columnOf(text, own.keyPlace.start) - columnOf(text, owner.keyPlace.start);
  const lines = linesOf(text, astray);
  const rewrites = indented(lines, by);
  return {
    message: say.notIndented({ key: first.key, owner: owner.key, lines: lines.length, by }),
    place,
    repairs: by > 0 ? [{ title: say.indent({ lines: lines.length, by }), changes: [], rewrites, preferred: true }] : [],
  };
}

/** `kind: base` in the place of a name. */
function noNameAbove(text: string, first: MapEntry, astray: readonly MapEntry[]): TextProblem {
  const [name = ''] = freeNames(text, 1);
  const [start = 0, ...more] = linesOf(text, [first, ...astray]);
  const indent = ' '.repeat(columnOf(text, first.keyPlace.start));
  const above: Rewrite = { part: 'self', start, end: start, text: `${indent}${name}:${lineFeedOf(text)}  ` };
  return {
    message: say.noNameAbove({ key: first.key, name }),
    place: first.place,
    repairs: [{ title: say.nameIt({ name }), changes: [], rewrites: [above, ...indented(more, 2)], preferred: false }],
  };
}

/** `sink: base` with more keys in the same column. */
function besideValue(text: string, owner: MapEntry, astray: readonly MapEntry[]): TextProblem {
  const { key, keyPlace, value } = owner;
  const written = value?.kind === 'scalar' ? value.text : '';
  const lines = linesOf(text, astray);
  const indent = ' '.repeat(columnOf(text, keyPlace.start) + 2);
  const isKind = KINDS.includes(written) && !astray.some((one) => one.key === 'kind');
  const end = value === null ? keyPlace.end : (value.alias ?? value.place).end;
  const instead = isKind ? `:${lineFeedOf(text)}${indent}kind: ${written}` : ':';
  const below: Rewrite = { part: 'self', start: keyPlace.end, end, text: instead };
  const rewrites = [below, ...indented(lines, 2)];
  const figures = { key, value: written, lines: lines.length };
  return isKind
    ? {
        message: say.kindBesideName(figures),
        place: owner.place,
        repairs: [{ title: say.kindBelow(figures), changes: [], rewrites, preferred: true }],
      }
    : {
        message: say.valueBesideName(figures),
        place: owner.place,
        repairs: [{ title: say.removeValue(figures), changes: [], rewrites, preferred: false }],
      };
}

/** Where the lines that entries take up begin, blank ones left out. */
function linesOf(text: string, entries: readonly MapEntry[]): readonly number[] {
  const [first, last] = [entries[0]!, entries.at(-1)!];
  return writtenLines(text, lineStart(text, first.keyPlace.start), Math.max(first.place.end, last.place.end));
}

function indented(lines: readonly number[], by: number): readonly Rewrite[] {
  return lines.map((at) => ({ part: 'self', start: at, end: at, text: ' '.repeat(Math.max(0, by)) }));
}
