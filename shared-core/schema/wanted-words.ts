import { writtenUnit } from '../length/reader.js';
import type { Micrometres, Unit } from '../length/units.js';
import { aNoun, listed } from '../words/english.js';
import { otherUnit } from './length-words.js';
import type { Show } from '../words/show.js';
import type { NameOf, NumberOf } from './schema.js';
import type { Wanted } from './wanted.js';

/** As many as a message can bear. */
const MOST_KEYS = 6;

const THINGS: Readonly<Record<NameOf, string>> = {
  board: 'a board',
  band: 'a band',
  fitting: 'a fitting',
  hinge: 'a hinge',
  slide: 'a slide',
  pull: 'a pull',
  bracket: 'a bracket',
  'wardrobe-rail': 'a wardrobe rail',
  foot: 'a foot',
  angle: 'an angle',
  machine: 'a machine',
  'shop-file': 'a shop file',
  stop: 'a stop',
  panel: 'a panel',
  carcass: 'a carcass',
};

/** What to write, as a whole sentence: 'Write a length between 50 mm and 5000 mm.' */
export function toWrite(wanted: Wanted, show: Show): string {
  return `${wanted.type === 'choice' ? 'Use' : 'Write'} ${thing(wanted, show)}.`;
}

/** 'a length between 50 mm and 5000 mm', 'base, wall or tall'. */
export function thing(wanted: Wanted, show: Show): string {
  switch (wanted.type) {
    case 'length':
      return `a length ${between(wanted, show)}`;
    case 'span':
      return `two lengths ${between(wanted, show)}, such as ${spanExample(wanted, writtenUnit(show.reader))}`;
    case 'count':
      return `a whole number between ${wanted.min} and ${wanted.max}`;
    case 'number':
      return `a number between ${wanted.min} and ${wanted.max}${counting(wanted.of)}`;
    case 'flag':
      return 'yes or no';
    case 'text':
      return 'a text';
    case 'name':
      return `the name of ${THINGS[wanted.of]}`;
    case 'choice':
      return listed(wanted.words, 'or');
    case 'list':
      return `a list, with ${thing(wanted.item, show)} as each item`;
    case 'named':
      return `${aNoun(wanted.noun)} under each name`;
    case 'record':
      return `the keys of ${aNoun(wanted.noun)} (${someKeys(wanted.keys)})`;
    case 'either':
      return wanted.of.map((one) => thing(one, show)).join(', or ');
  }
}

/** ', in kilograms', or nothing. */
export const counting = (of: NumberOf | null): string => (of === null ? '' : `, in ${of}`);

/** 'between 50 mm and 5000 mm'. */
export function between({ min, max }: { readonly min: Micrometres; readonly max: Micrometres }, show: Show): string {
  return `between ${show.length(min)} and ${show.length(max)}`;
}

/** The first keys of a record. */
export function someKeys(keys: readonly string[]): string {
  const rest = keys.length - MOST_KEYS;
  return rest > 0 ? `${keys.slice(0, MOST_KEYS).join(', ')} and ${rest} more` : listed(keys);
}

/** Two lengths as an owner would write them, within the bounds. */
export function spanExample({ max }: { readonly max: Micrometres }, unit: Unit): string {
  if (max < 26_000) return unit === 'in' ? '1/64 to 1/16' : '0.4 to 2';
  if (max < 80_000) return unit === 'in' ? '1/4 to 3/4' : '5 to 20';
  return unit === 'in' ? '1 to 3 1/8' : '20 to 80';
}

/** Such lengths in the unit of the file, and in the other one. */
export function spanExamples(span: { readonly max: Micrometres }, unit: Unit): readonly string[] {
  const foreign = spanExample(span, otherUnit(unit)).split(' to ');
  return [spanExample(span, unit), foreign.map((one) => `${one} ${otherUnit(unit)}`).join(' to ')];
}
