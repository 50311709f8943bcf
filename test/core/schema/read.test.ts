import { describe, expect, test } from 'vitest';
import { readTree } from '../../../shared-core/document/read.js';
import type { Unit } from '../../../shared-core/length/units.js';
import { readBySchema } from '../../../shared-core/schema/read.js';
import type { Schema } from '../../../shared-core/schema/schema.js';
import { optional, required } from '../../../shared-core/schema/fields.js';
import {
  choice,
  count,
  either,
  flag,
  length,
  list,
  name,
  named,
  number,
  record,
  span,
  text,
} from '../../../shared-core/schema/schema.js';
import { inWords } from '../../in-words.js';

const shelf = record('shelf', 'One shelf.', {
  at: required(length('Height.', 1, 3000)),
  board: optional(name('board', 'Board.')),
});
const box = record('box', 'A box.', {
  kind: required(choice('Kind.', { base: 'Base.', wall: 'Wall.' })),
  width: required(length('Width over all.', 50, 5000)),
  range: optional(span('Range.', 0, 500)),
  turns: optional(count('Turns.', 0, 12)),
  seconds: optional(number('Seconds.', 0, 60)),
  lowers: optional(flag('Lowers.')),
  note: optional(text('Note.')),
  shelves: optional(
    either(
      'Shelves.',
      count('How many.', 0, 30),
      list('Heights.', either('A shelf.', length('Height.', 1, 3000), shelf)),
    ),
  ),
  boards: optional(
    named('board', 'Boards.', record('board', 'A board.', { thickness: required(length('Thickness.', 2, 100)) })),
  ),
});

function read<S extends Schema>(schema: S, yaml: string, unit: Unit = 'mm') {
  const { root, problems } = readTree(yaml, 'self');
  expect(problems).toEqual([]);
  const result = readBySchema(schema, root, {
    unit,
    part: 'self',
    path: [],
    place: { part: 'self', start: 0, end: 0 },
  });
  /** Rule, the text that is blamed, and the message. */
  const told = result.findings.map(
    (finding) =>
      `${finding.rule} @${yaml.slice(finding.place.start, finding.place.end)}@ ${inWords(finding.message, unit)}`,
  );
  return { ...result, told };
}

const SOUND = `kind: base
width: 23 5/8 in
range: 20 to 80
turns: 3
seconds: 2.5
lowers: Yes
note: "a remark"
shelves: [300, { at: 328 mm, board: oak }, 1' ]
boards:
  oak: { thickness: 19 }
  16: { thickness: 5/8" }
`;

test('a sound text gives values with their places and paths', () => {
  const { value, sound, findings } = read(box, SOUND);
  expect(findings).toEqual([]);
  expect(sound).toBe(true);
  const v = value!.value;
  expect(v.kind.value).toBe('base');
  expect(v.width.value).toBe(600_075);
  expect(SOUND.slice(v.width.place.start, v.width.place.end)).toBe('23 5/8 in');
  expect(v.range!.value).toEqual({ min: 20_000, max: 80_000 });
  expect(v.turns!.value).toBe(3);
  expect(v.seconds!.value).toBe(2.5);
  expect(v.lowers!.value).toBe(true);
  expect(v.note!.value).toBe('a remark');
  const shelves = v.shelves!;
  if (shelves.as !== 'list') throw new Error('not read as a list');
  expect(shelves.is.value.map((one) => (one.as === 'record' ? one.is.value.at.value : one.is.value))).toEqual([
    300_000, 328_000, 304_800,
  ]);
  expect(shelves.is.value[1]!.is.path).toEqual(['shelves', 1]);
  const second = shelves.is.value[1]!;
  expect(second.as === 'record' && second.is.value.board!.path).toEqual(['shelves', 1, 'board']);
  expect(v.boards!.value.map((board) => [board.name.value, board.value.value.thickness.value])).toEqual([
    ['oak', 19_000],
    ['16', 15_875],
  ]);
  expect(v.boards!.value[1]!.value.value.thickness.path).toEqual(['boards', '16', 'thickness']);
});

describe('what is wrong is told at its place', () => {
  test.each([
    ['kind: base\nwidht: 600', ['key-unknown @widht@ ‘widht’ is not a key of a box. Did you mean `width`?']],
    [
      'kind: base\nwidth: 600\ncolour: red',
      [
        'key-unknown @colour@ ‘colour’ is not a key of a box. Use kind, width, range, turns, seconds, lowers, note, shelves or boards.',
      ],
    ],
    ['kind: base', ['key-missing @@ The box has no `width`. Write a length between 50 mm and 5000 mm.']],
    [
      'kind: base\n: 5',
      [
        'key-unknown @@ ‘’ is not a key of a box. Use kind, width, range, turns, seconds, lowers, note, shelves or boards.',
        'key-missing @@ The box has no `width`. Write a length between 50 mm and 5000 mm.',
      ],
    ],
    ['kind: bse\nwidth: 600', ['value-wrong @bse@ ‘bse’ is not a valid `kind`. Use base or wall.']],
    [
      'kind: base\nwidth: -5',
      ['length-impossible @-5@ -5 mm is below the minimum. `width` must be between 50 mm and 5000 mm.'],
    ],
    [
      'kind: base\nwidth: 60000',
      ['length-impossible @60000@ 60000 mm is above the maximum. `width` must be between 50 mm and 5000 mm.'],
    ],
    [
      'kind: base\nwidth: NaN',
      ['length-impossible @NaN@ ‘NaN’ is not a length. Write it like 600, 600.5 mm, 23 5/8 in or 1\' 11 5/8".'],
    ],
    ['kind: base\nwidth: 1e999', ['length-impossible @1e999@ ‘1e999’ has an exponent. Write the number in full.']],
    ['kind: base\nwidth:', ['value-wrong @width@ `width` has no value. Write a length between 50 mm and 5000 mm.']],
    [
      'kind: base\nwidth: [1]',
      ['value-wrong @[1]@ `width` takes one value, not a list. Write a length between 50 mm and 5000 mm.'],
    ],
    [
      'kind: base\nwidth: 600\nrange: 80 to 20',
      ['length-impossible @80 to 20@ The span runs from 80 mm down to 20 mm. Write the smaller length first.'],
    ],
    [
      'kind: base\nwidth: 600\nrange: 1 to 2 to 3',
      [
        'length-impossible @1 to 2 to 3@ ‘1 to 2 to 3’ is not a span. Write two lengths between 0 mm and 500 mm, such as 20 to 80.',
      ],
    ],
    [
      'kind: base\nwidth: 600\nturns: 1.5',
      ['value-wrong @1.5@ ‘1.5’ is not a whole number. Write a whole number between 0 and 12.'],
    ],
    [
      'kind: base\nwidth: 600\nturns: 13',
      ['value-wrong @13@ 13 is above the maximum. `turns` must be between 0 and 12.'],
    ],
    [
      'kind: base\nwidth: 600\nlowers: perhaps',
      ['value-wrong @perhaps@ ‘perhaps’ is not a valid `lowers`. Write yes or no.'],
    ],
    [
      'kind: base\nwidth: 600\nwidth: 700',
      ['name-duplicate @width@ ‘width’ is written twice; only the first counts. Remove one of them.'],
    ],
    [
      'kind: base\nwidth: 600\nboards:\n  a: {thickness: 16}\n  a: {thickness: 18}',
      [
        'name-duplicate @a@ ‘a’ is written twice; only the first counts. Remove one of them, or give this one another name.',
      ],
    ],
    [
      'kind: base\nwidth: 600\nboards: 16',
      ['value-wrong @16@ Each board needs a name and a colon, with its keys indented below.'],
    ],
    [
      'kind: base\nwidth: 600\nshelves: two',
      ['value-wrong @two@ ‘two’ is not a whole number. Write a whole number between 0 and 30.'],
    ],
    [
      'kind: base\nwidth: 600\nshelves: [{ board: oak }]',
      ['key-missing @{ board: oak }@ The shelf has no `at`. Write a length between 1 mm and 3000 mm.'],
    ],
    [
      '- 1',
      [
        'value-wrong @- 1@ The keys of a box are missing here. Write each on a line of its own: kind, width, range, turns, seconds, lowers and 3 more.',
      ],
    ],
  ])('%s', (yaml, wanted) => {
    expect(read(box, yaml).told).toEqual(wanted);
  });
});

test('a value that stands alone, and one that would fit in the other unit, are told with what to write', () => {
  const alone = read(box, 'kind: base\nwidth: 600\nshelves: 361');
  expect(alone.told).toEqual([
    'value-wrong @361@ ‘361’ is not a valid `shelves`. Write a whole number between 0 and 30, or [361] for a list with one item.',
  ]);
  expect(alone.findings[0]!.repairs).toMatchObject([
    {
      title: { id: 'reading.write', figures: { text: '[361]' } },
      changes: [{ kind: 'set', path: ['shelves'], text: '[361]' }],
    },
  ]);
  expect(read(box, 'kind: base\nwidth: 600\nshelves: 3001').findings[0]!.repairs).toEqual([]);
  const small = read(box, 'kind: base\nwidth: 23 5/8');
  expect(small.told[0]).toMatch(/; did you mean 23 5\/8 in\?$/);
  expect(small.findings[0]!.repairs).toMatchObject([
    {
      title: { id: 'reading.write', figures: { text: '23 5/8 in' } },
      changes: [{ kind: 'set', path: ['width'], text: '23 5/8 in' }],
    },
  ]);
  // A unit that is written is meant; neither does another unit help.
  expect(read(box, 'kind: base\nwidth: 24 mm').findings[0]!.repairs).toEqual([]);
  expect(read(box, 'kind: base\nwidth: -3').findings[0]!.repairs).toEqual([]);
});

test('repairs rename, replace or add', () => {
  expect(read(box, 'kind: base\nwidht: 600').findings[0]!.repairs).toMatchObject([
    {
      title: { id: 'reading.rename', figures: { text: 'width' } },
      changes: [{ kind: 'rename-key', part: 'self', path: ['widht'], text: 'width' }],
      preferred: true,
    },
  ]);
  expect(read(box, 'kind: bse\nwidth: 600').findings[0]!.repairs).toMatchObject([
    {
      title: { id: 'reading.write', figures: { text: 'base' } },
      changes: [{ kind: 'set', part: 'self', path: ['kind'], text: 'base' }],
      preferred: true,
    },
  ]);
  expect(read(box, 'width: 600').findings[0]!.repairs.map(({ title }) => inWords(title))).toEqual([
    'Add kind: base',
    'Add kind: wall',
  ]);
});

test('what cannot be read is left out, and the rest is there', () => {
  const { value, sound } = read(
    box,
    'kind: base\nwidth: 600\nturns: x\nboards: { a: { thickness: 16 }, b: { thickness: 0 } }',
  );
  expect(sound).toBe(false);
  expect(value!.value.turns).toBeUndefined();
  expect(value!.value.boards!.value.map((board) => board.name.value)).toEqual(['a']);
  const unknown = read(box, 'kind: base\nwidth: 600\n__proto__: 1\nconstructor: 2');
  expect(unknown.sound).toBe(true);
  expect(unknown.findings.map(({ rule }) => rule)).toEqual(['key-unknown', 'key-unknown']);
});

test('the unit of the file is that of bare numbers, the bounds are the same', () => {
  const { value } = read(box, 'kind: base\nwidth: 23 5/8\nrange: 20 to 80 mm', 'in');
  expect(value!.value.width.value).toBe(600_075);
  expect(value!.value.range!.value).toEqual({ min: 20_000, max: 80_000 });
  expect(read(box, 'kind: base\nwidth: 600', 'in').told).toEqual([
    'length-impossible @600@ 600 in is above the maximum. `width` must be between 1.969 in and 196.85 in; did you mean 600 mm?',
  ]);
});

test('words and keys of earlier versions are read as what stands in their place, and told', () => {
  const schema = record(
    'thing',
    'A thing.',
    { how: required(choice('How.', { new: 'So.' }, { old: 'new' })) },
    { hwo: 'how' },
  );
  const { root } = readTree('hwo: old\n', 'self');
  const place = { part: 'self', start: 0, end: 0 } as const;
  const read = readBySchema(schema, root, { unit: 'mm', part: 'self', path: [], place });
  expect(read.sound).toBe(true);
  expect(read.value?.value.how).toMatchObject({ value: 'new', path: ['hwo'] });
  expect(read.findings.map(({ rule, severity, repairs }) => [rule, severity, repairs[0]?.changes[0]])).toEqual([
    ['word-replaced', 'warning', { kind: 'rename-key', part: 'self', path: ['hwo'], text: 'how' }],
    ['word-replaced', 'warning', { kind: 'set', part: 'self', path: ['hwo'], text: 'new' }],
  ]);
});

test('a span with a dash is written with to', () => {
  const dashed = read(box, 'kind: base\nwidth: 600\nrange: 0-300');
  expect(dashed.told).toEqual([
    'length-impossible @0-300@ ‘0-300’ is not a span, which has ‘to’ between its two lengths. Write 0 to 300.',
  ]);
  expect(dashed.findings[0]!.repairs).toMatchObject([{ changes: [{ text: '0 to 300' }], preferred: true }]);
  const meant = (text: string, unit: Unit = 'mm'): unknown =>
    read(box, `kind: base\nwidth: 100\nrange: "${text}"`, unit).findings.flatMap(({ repairs }) =>
      repairs.map(({ changes }) => changes[0]),
    );
  expect(meant('1/4 – 1 1/2', 'in')).toMatchObject([{ text: '1/4 to 1 1/2' }]);
  expect(meant('20mm..80mm')).toMatchObject([{ text: '20mm to 80mm' }]);
  // One length in inches, a span that is too wide, and no lengths.
  expect([meant('1-3/4', 'in'), meant('0-900'), meant('near-far'), meant('-'), meant('5-')]).toEqual([
    [],
    [],
    [],
    [],
    [],
  ]);
});

test('a word for a key that is put together of several', () => {
  const { findings } = read(box, 'kind: base\nthe width: 600');
  expect(findings.map(({ message }) => inWords(message, 'mm'))).toEqual([
    '‘the width’ is not a key of a box. Did you mean `width`?',
  ]);
});

test('a number that is no length is asked for with its unit', () => {
  const slide = record('slide', 'A slide.', { rating: required(number('Carries.', 1, 500, 'kilograms')) });
  expect(['rating: 100 lb', 'rating: 900', '{}'].map((text) => read(slide, text).told[0])).toEqual([
    'value-wrong @100 lb@ ‘100 lb’ is not a number. Write a number between 1 and 500, in kilograms.',
    'value-wrong @900@ 900 is above the maximum. `rating` must be between 1 and 500, in kilograms.',
    'key-missing @@ The slide has no `rating`. Write a number between 1 and 500, in kilograms.',
  ]);
});
