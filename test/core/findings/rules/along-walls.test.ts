import { expect, test } from 'vitest';
import { inWords } from '../../../in-words.js';
import { analyse } from '../jobs.js';

const RULES: readonly string[] = ['carcasses-overlap', 'past-wall-end', 'worktop-uneven'];

/** What is told of how carcasses stand along walls: where, how gravely, and in words. */
function told(...carcasses: readonly string[]): readonly (readonly [at: string, severity: string, words: string])[] {
  const text = `carcasses:\n${carcasses.map((one) => `  ${one}\n`).join('')}`;
  const analysis = analyse(text);
  return analysis
    .findings()
    .filter(({ finding }) => RULES.includes(finding.rule))
    .map(({ finding, carcass }) => {
      const { start, end } = analysis.locate(finding.place, carcass);
      return [text.slice(start, end), finding.severity, inWords(finding.message)] as const;
    });
}
const words = (...carcasses: readonly string[]): readonly string[] => told(...carcasses).map(([, , one]) => one);

const BASE = 'kind: base, width: 600';
const CORNER = 'kind: base, width: 1100, blind: { right: 580 }, doors: left';

test('a carcass that is placed in another is told at its place', () => {
  expect(told(`sink: { ${BASE} }`, `hob: { ${BASE}, place: 400 }`)).toEqual([
    [
      '400',
      'warning',
      '‘hob’ stands from 400 mm to 1000 mm along wall 1, and ‘sink’ from 0 mm to 600 mm at the same height: they stand in each other by 200 mm. Move one of them (`place`).',
    ],
  ]);
  expect(words(`sink: { ${BASE} }`, `hob: { ${BASE}, place: 600 }`)).toEqual([]);
  expect(words(`sink: { ${BASE} }`, `hob: { ${BASE}, place: { at: 400, wall: 2 } }`)).toEqual([]);
});

test('of many that stand in each other each is told once, with the first', () => {
  const all = ['a', 'b', 'c', 'd'].map((name, i) => `${name}: { ${BASE}, place: ${i * 100} }`);
  expect(words(...all).map((one) => /^‘(.)’.*, and ‘(.)’/.exec(one)?.slice(1).join(' '))).toEqual([
    'b a',
    'c a',
    'd a',
  ]);
  // Equal ones take up what all of them take up.
  expect(words(`a: { ${BASE}, count: 3 }`, `b: { ${BASE}, place: 1799 }`)).toHaveLength(1);
  expect(words(`a: { ${BASE}, count: 3 }`, `b: { ${BASE}, place: 1800 }`)).toEqual([]);
});

test('what hangs is over what stands, unless it hangs too low', () => {
  const over = (height: number): readonly string[] =>
    words(`sink: { ${BASE}, plinth: 100 }`, `plates: { kind: wall, width: 600, place: { above-floor: ${height} } }`);
  // 22 pitches of 32 mm and a board of 16 mm, on the plinth.
  expect(over(820)).toEqual([]);
  expect(over(819)).toHaveLength(1);
  expect(words('tall: { kind: tall, width: 600 }', 'plates: { kind: wall, width: 600, place: 300 }')).toHaveLength(1);
});

test('an end panel stands in a neighbour that leaves no room for it', () => {
  const beside = (at: number): readonly string[] =>
    words(`a: { ${BASE} }`, `b: { ${BASE}, end-panels: left, place: ${at} }`);
  expect(beside(616)).toEqual([]);
  expect(beside(615)).toHaveLength(1);
});

test('what stands past the blind end of a corner carcass is told once a corner, in a job that places carcasses', () => {
  const next = `next: { ${BASE} }`;
  expect(told(`corner: { ${CORNER}, place: 0 }`, next, `last: { ${BASE} }`)).toEqual([
    [
      'next',
      'warning',
      '‘next’ stands to the right of ‘corner’ along wall 1, and the right end of that stands in the corner of the room. Say on which other wall it stands (`place: wall`), or move it.',
    ],
  ]);
  expect(words(`corner: { ${CORNER} }`, next)).toEqual([]);
  expect(words(`corner: { ${CORNER}, place: 0 }`, `next: { ${BASE}, place: { wall: 2 } }`)).toEqual([]);
  expect(words(`next: { ${BASE}, place: 0 }`, `corner: { ${CORNER} }`)).toEqual([]);
  // The corner of the room stands some way off, so that there may be room over it.
  const over = 'over: { kind: wall, width: 300, place: 1000 }';
  expect(words(`corner: { ${CORNER}, place: 0 }`, over)).toEqual([]);
});

test('and so is what stands left of one that is blind on the left, or past one across a corner', () => {
  const left = 'corner: { kind: base, width: 1100, blind: { left: 580 }, doors: right, place: 700 }';
  expect(words(`first: { ${BASE}, place: 0 }`, left)).toEqual([
    '‘first’ stands to the left of ‘corner’ along wall 1, and the left end of that stands in the corner of the room. Say on which other wall it stands (`place: wall`), or move it.',
  ]);
  const across = 'nook: { kind: base, width: 900, height: 720, diagonal: { right: 900 }, place: 0 }';
  expect(words(across, `next: { ${BASE} }`)).toHaveLength(1);
  // At its back right is the corner itself, so that nothing hangs past it either.
  expect(words(across, 'over: { kind: wall, width: 300, place: 601 }')).toHaveLength(1);
  expect(words(across, 'over: { kind: wall, width: 300, place: 600 }')).toEqual([]);
});

test('an end panel stands past the left end of the wall', () => {
  expect(told(`a: { ${BASE}, end-panels: left, place: 0 }`)).toEqual([
    [
      '0',
      'warning',
      '‘a’ stands 16 mm past the left end of wall 1 with what stands beside its left side. Move it that far to the right (`place`).',
    ],
  ]);
  expect(words(`a: { ${BASE}, end-panels: left, place: 16 }`)).toEqual([]);
  expect(words(`a: { ${BASE}, end-panels: left }`)).toEqual([]);
});

test('neighbours under a worktop that are not equally high are told of the later one', () => {
  expect(told(`sink: { ${BASE}, plinth: 100 }`, `hob: { ${BASE}, plinth: 100, board: board-19 }`)).toEqual([
    [
      '100',
      'warning',
      'The top of ‘hob’ stands 823 mm above the floor, and that of ‘sink’ beside it 820 mm: a worktop over both would not lie level. Make them equally high (`height`, `plinth`).',
    ],
  ]);
  expect(told(`sink: { ${BASE} }`, `hob: { ${BASE}, height: 752 }`)).toMatchObject([['752', 'warning', {}]]);
  expect(words(`sink: { ${BASE}, plinth: 32 }`, `hob: { ${BASE}, height: 752 }`)).toEqual([]);
  // Under a tall one, on the wall, or with a gap between them no worktop lies over both.
  expect(words(`sink: { ${BASE} }`, 'tall: { kind: tall, width: 600 }', `hob: { ${BASE}, height: 752 }`)).toEqual([]);
  expect(words(`sink: { ${BASE} }`, `hob: { ${BASE}, height: 752, place: 601 }`)).toEqual([]);
});

test('a step higher than the worktop is thick may be meant, and is told of what has a place', () => {
  const hob = (more: string): string => `hob: { ${BASE}, height: 816${more} }`;
  expect(told(`sink: { ${BASE} }`, hob(''))).toEqual([]);
  expect(told(`sink: { ${BASE} }`, hob(', place: 600'))).toMatchObject([['816', 'info', {}]]);
});

test('a carcass that cannot be made leaves what follows it without a certain place', () => {
  const broken = 'broken: { kind: base, width: wide }';
  expect(words(broken, `sink: { ${BASE} }`, `hob: { ${BASE}, height: 752 }`)).toEqual([]);
  expect(words(`sink: { ${BASE} }`, `hob: { ${BASE}, height: 752 }`, broken)).toHaveLength(1);
  expect(words(broken, `sink: { ${BASE}, place: 0 }`, `hob: { ${BASE}, place: 500 }`)).toHaveLength(1);
});
