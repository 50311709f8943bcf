import type { Severity } from './finding.js';
import type { ReadingRule } from './rule.js';

const rule = (
  name: string,
  severity: Severity,
  what: string,
  why: string,
  remedy: string,
  example: string,
  shop?: string,
): ReadingRule => ({
  name,
  severity,
  about: { what, why, remedy, example, ...(shop === undefined ? {} : { shop }) },
});

/** The rules that the reading of a text applies: what the text says, before any box is made of it. */
export const readingRules: readonly ReadingRule[] = [
  rule(
    'yaml-syntax',
    'error',
    'The text is not well-formed YAML.',
    'What cannot be read cannot be checked. Only the carcass that holds the fault is left out; the others are checked as ever.',
    'Look at the indentation (spaces, no tabs), colons, quotes and brackets of the line.',
    'kind: base\nwidth: [600',
  ),
  rule(
    'key-unknown',
    'error',
    'A key is written that does not belong there.',
    'What is written there has no effect: a misspelt `heigth` leaves the carcass at its usual height.',
    'Use one of the keys that the message lists, or take it out.',
    'kind: base\nwidth: 600\nheigth: 720',
  ),
  rule(
    'key-missing',
    'error',
    'A key that must be there is missing.',
    'A carcass needs at least its kind and its width; all else has a default.',
    'Add the key.',
    'kind: base',
  ),
  rule(
    'value-wrong',
    'error',
    'A value is not of the kind that belongs there.',
    'A word where a number belongs, or a number that is out of its bounds, cannot be used; nothing is guessed.',
    'Write what the message says.',
    'kind: bse\nwidth: 600',
  ),
  rule(
    'length-impossible',
    'error',
    'A length cannot be read, or cannot be: negative, absurdly large, or written the wrong way round.',
    'Lengths are read exactly, as `600`, `600.5 mm`, `23 5/8 in` or `1\' 11 5/8"`; nothing is guessed. The inch is exactly 25.4 mm (international yard and pound agreement, 1959; ISO 80000-3).',
    'Write a length within the bounds that the message gives.',
    'kind: base\nwidth: -600',
  ),
  rule(
    'name-duplicate',
    'error',
    'A name or a key is written twice.',
    'Two carcasses of one name cannot be told apart on labels and papers; of a key written twice one would silently be lost.',
    'Give one of them another name, or take it out.',
    'carcasses:\n  sink: { kind: base, width: 600 }\n  sink: { kind: base, width: 800 }',
  ),
  rule(
    'panel-unknown',
    'error',
    'Something is said about a panel that this carcass has not.',
    'What is written there has no effect: the panel that was meant is made like all the others.',
    'Use the name of a panel of this carcass, or take the entry out.',
    'kind: base\nwidth: 600\npanels:\n  top: { rows: none }   # a base has rails',
  ),
  rule(
    'shop-missing',
    'error',
    'The shop file that the job names is not there.',
    'Machines, boards and habits come from it. Until it is found the built-in neutral shop is used, which is not yours.',
    'Put the shop file beside the job, or correct its name.',
    'shop: bnech.shop.yaml   # the file is called bench.shop.yaml\ncarcasses:\n  sink: { kind: base, width: 600 }',
  ),
  rule(
    'shop-broken',
    'error',
    'The shop file has faults of its own.',
    'Habits that cannot be read are those of the built-in shop; a range out of bounds counts as far as the bounds go; nothing is worked out with a board, band or fitting that cannot be read, nor planned on such a machine; and nothing at all by a file whose unit or whose layout is wrong. So figures may not be those of your shop.',
    'Open the shop file and put its own findings right first.',
    'shop: bench.shop.yaml\ncarcasses:\n  sink: { kind: base, width: 600 }',
    'boards:\n  board-16: { thickness: sixteen }',
  ),
  rule(
    'shop-neutral',
    'info',
    'The job names no shop file, so the built-in neutral shop is used.',
    'Its machines and boards are invented; its figures are common practice and bind no real machine.',
    'Write a shop file of your own and name it with `shop:`.',
    'unit: mm\ncarcasses:\n  sink: { kind: base, width: 600 }',
  ),
  rule(
    'size-impossible',
    'error',
    'The sizes make no box: a panel would have no length or width, or two would stand in one place.',
    'Every size of a panel follows from the carcass; where one comes out at nothing the carcass cannot be made.',
    'Change the size that the message names.',
    'kind: base\nwidth: 600\nfixed-shelves: [900]   # higher than the carcass',
  ),
];
