import { writtenUnit } from '../length/reader.js';
import type { LengthFault } from '../length/parse.js';
import type { Micrometres, Unit } from '../length/units.js';
import { aNoun, listed, quoted } from '../words/english.js';
import { messages } from '../words/message.js';
import type { Show } from '../words/show.js';
import type { NumberOf } from './schema.js';
import type { Subject } from './subject.js';
import { notALength } from './length-words.js';
import type { Wanted } from './wanted.js';
import { between, counting, someKeys, spanExample, thing, toWrite } from './wanted-words.js';

interface OutOfBounds {
  readonly subject: Subject;
  readonly value: Micrometres;
  readonly min: Micrometres;
  readonly max: Micrometres;
  /** What the owner may have meant: a length with another unit. */
  readonly meant: string | null;
}

interface NumberOutOfBounds {
  readonly subject: Subject;
  readonly text: string;
  readonly min: number;
  readonly max: number;
  /** What the number counts. */
  readonly of: NumberOf | null;
}
export type NumberBounds = Omit<NumberOutOfBounds, 'text'>;

interface Asked {
  readonly subject: Subject;
  readonly wanted: Wanted;
}

type WrongText = Asked & { readonly text: string };

/** What reading a text by a schema has to tell. */
export const say = messages('reading', {
  lengthBelow: ({ value, ...more }: OutOfBounds, show) =>
    `${show.exact(value)} is below the minimum. ${lengthBounds(more, show)}`,
  lengthAbove: ({ value, ...more }: OutOfBounds, show) =>
    `${show.exact(value)} is above the maximum. ${lengthBounds(more, show)}`,
  numberBelow: ({ text, ...more }: NumberOutOfBounds) => `${text} is below the minimum. ${numberBounds(more)}`,
  numberAbove: ({ text, ...more }: NumberOutOfBounds) => `${text} is above the maximum. ${numberBounds(more)}`,
  notALength: ({ fault, unit }: { readonly fault: LengthFault; readonly unit: Unit }) => notALength(fault, unit),
  decimalComma: ({ written, meant }: { readonly written: string; readonly meant: string }) =>
    `${quoted(written)} reads as two values, because a comma separates values inside brackets. Write ${meant}.`,
  decimalCommaOrTwo: ({ written, meant }: { readonly written: string; readonly meant: string }) =>
    `${quoted(written)} reads as two values, because a comma separates values inside brackets. Write ${meant} for one length, or a space after the comma for two.`,
  notASpan: ({ text, wanted }: WrongText, show) => `${quoted(text)} is not a span. ${toWrite(wanted, show)}`,
  spanWithoutTo: ({ text, meant }: { readonly text: string; readonly meant: string }) =>
    `${quoted(text)} is not a span, which has ‘to’ between its two lengths. Write ${meant}.`,
  spanOfNoLengths: (
    { fault, unit, max }: { readonly fault: LengthFault; readonly unit: Unit; readonly max: Micrometres },
    show,
  ) => `${notALength(fault, unit)} A span has two lengths, such as ${spanExample({ max }, writtenUnit(show.reader))}.`,
  spanBackwards: ({ from, to }: { readonly from: Micrometres; readonly to: Micrometres }, show) =>
    `The span runs from ${show.exact(from)} down to ${show.exact(to)}. Write the smaller length first.`,
  notAWholeNumber: ({ text, wanted }: WrongText, show) =>
    `${quoted(text)} is not a whole number. ${toWrite(wanted, show)}`,
  notANumber: ({ text, wanted }: WrongText, show) => `${quoted(text)} is not a number. ${toWrite(wanted, show)}`,
  notValid: ({ subject, text, wanted }: WrongText, show) =>
    `${quoted(text)} is not a valid ${named(subject)}. ${toWrite(wanted, show)}`,
  standsAlone: ({ subject, text, wanted }: WrongText, show) =>
    `${quoted(text)} is not a valid ${named(subject)}. Write ${thing(wanted, show)}, or [${text}] for a list with one item.`,
  noValue: ({ subject, wanted }: Asked, show) => `${sentenceOf(subject)} has no value. ${toWrite(wanted, show)}`,
  mapForValue: ({ subject, wanted }: Asked, show) =>
    `${sentenceOf(subject)} takes one value, not keys of its own. ${toWrite(wanted, show)}`,
  listForValue: ({ subject, wanted }: Asked, show) =>
    `${sentenceOf(subject)} takes one value, not a list. ${toWrite(wanted, show)}`,
  mapNotTaken: ({ subject, wanted }: Asked, show) =>
    `${sentenceOf(subject)} takes no keys of its own. ${toWrite(wanted, show)}`,
  listNotTaken: ({ subject, wanted }: Asked, show) => `${sentenceOf(subject)} takes no list. ${toWrite(wanted, show)}`,
  valueNotTaken: ({ subject, wanted }: Asked, show) =>
    `${sentenceOf(subject)} takes no single value. ${toWrite(wanted, show)}`,
  notAList: ({ subject, item }: { readonly subject: Subject; readonly item: Wanted }, show) =>
    `${sentenceOf(subject)} must be a list. Write ${thing(item, show)} as each item, in brackets with commas between them, or each on a line after a dash.`,
  listTooLong: ({ items, most }: { readonly items: number; readonly most: number }) =>
    `The list has ${items} items; the maximum is ${most}. Remove the items from here on.`,
  notNamed: ({ noun }: { readonly noun: string }) =>
    `Each ${noun} needs a name and a colon, with its keys indented below.`,
  nameless: ({ noun }: { readonly noun: string }) => `Each ${noun} needs a name before the colon.`,
  notKeys: ({ noun, keys }: { readonly noun: string; readonly keys: readonly string[] }) =>
    `The keys of ${aNoun(noun)} are missing here. Write each on a line of its own: ${someKeys(keys)}.`,
  howMany: ({ key, count, meant }: { readonly key: string; readonly count: number; readonly meant: string }) =>
    `\`${key}\` says how they are made, not that there are ${count}. Write \`${meant}\`.`,
  spaceMissing: ({ key, value }: { readonly key: string; readonly value: string }) =>
    `A space is missing after the colon. Write \`${key}: ${value}\`.`,
  keyMissing: ({ noun, key, wanted }: { readonly noun: string; readonly key: string; readonly wanted: Wanted }, show) =>
    `The ${noun} has no \`${key}\`. ${toWrite(wanted, show)}`,
  keyMisspelt: ({
    key,
    noun,
    near,
  }: {
    readonly key: string;
    readonly noun: string;
    readonly near: readonly string[];
  }) =>
    `${quoted(key)} is not a key of ${aNoun(noun)}. Did you mean ${listed(
      near.map((one) => `\`${one}\``),
      'or',
    )}?`,
  keyOfNothing: ({ key, noun }: { readonly key: string; readonly noun: string }) =>
    `${quoted(key)} is not a key of ${aNoun(noun)}, and these files have nothing for it. Remove the line.`,
  keyFurtherIn: ({
    key,
    noun,
    outer,
    inner,
  }: {
    readonly key: string;
    readonly noun: string;
    readonly outer: string;
    readonly inner: string;
  }) => `${quoted(key)} is not a key of ${aNoun(noun)}. Write \`${inner}\` under \`${outer}\`.`,
  keyUnknown: ({
    key,
    noun,
    keys,
  }: {
    readonly key: string;
    readonly noun: string;
    readonly keys: readonly string[];
  }) => `${quoted(key)} is not a key of ${aNoun(noun)}. Use ${listed(keys, 'or')}.`,
  writtenTwice: ({ key }: { readonly key: string }) =>
    `${quoted(key)} is written twice; only the first counts. Remove one of them.`,
  nameWrittenTwice: ({ key }: { readonly key: string }) =>
    `${quoted(key)} is written twice; only the first counts. Remove one of them, or give this one another name.`,
  firstWritten: ({ key }: { readonly key: string }) => `${quoted(key)} is first written here.`,
  write: ({ text }: { readonly text: string }) => `Write ${text}`,
  writeTwo: ({ first, second }: { readonly first: string; readonly second: string }) =>
    `Write ${first}, ${second}: two values`,
  rename: ({ text }: { readonly text: string }) => `Rename to ${text}`,
  add: ({ path, text }: { readonly path: readonly string[]; readonly text: string }) =>
    `Add ${[...path, text].join(': ')}`,
  remove: ({ key }: { readonly key: string }) => `Remove ${quoted(key)}`,
  removeThis: ({ key }: { readonly key: string }) => `Remove this ${quoted(key)}`,
  removeFirst: ({ key }: { readonly key: string }) => `Keep this ${quoted(key)} and remove the first`,
  withoutDashes: ({ count }: { readonly count: number }) => `Remove the ${count === 1 ? 'dash' : `${count} dashes`}`,
  nameAsKey: ({ count }: { readonly count: number }) =>
    `Write the ${count === 1 ? 'name' : `${count} names`} in place of the ${count === 1 ? 'dash' : 'dashes'}`,
  addSpace: () => 'Put a space after the colon',
});

function lengthBounds({ subject, meant, ...bounds }: Omit<OutOfBounds, 'value'>, show: Show): string {
  const must = `${sentenceOf(subject)} must be ${between(bounds, show)}`;
  return meant === null ? `${must}.` : `${must}; did you mean ${meant}?`;
}

function numberBounds({ subject, min, max, of }: NumberBounds): string {
  return `${sentenceOf(subject)} must be between ${min} and ${max}${counting(of)}.`;
}

/** '`width`', or 'item of `dowels`'. */
function named({ key, isItem }: Subject): string {
  return isItem ? `item of \`${key}\`` : `\`${key}\``;
}

function sentenceOf(subject: Subject): string {
  if (subject.key === '') return 'The file';
  return subject.isItem ? `Each ${named(subject)}` : named(subject);
}
