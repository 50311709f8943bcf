import { expect, test } from 'vitest';
import { inWords } from '../../in-words.js';
import { analyse } from '../findings/jobs.js';

/** What is told of the box of a drawer behind a front of 100, in a base 600 wide. */
const told = (drawers: string): readonly string[] =>
  analyse(
    `carcasses:\n  sink:\n    kind: base\n    width: 600\n    ${drawers}\n    fronts: [{ front: drawer, height: 100 }, { front: drawer, height: 250 }, left]\n`,
  )
    .findings()
    .flatMap(({ finding: { rule, message } }) => (rule === 'size-impossible' ? [inWords(message)] : []));

test('a lower box is proposed only where there is room for the lowest', () => {
  expect(told('drawers: { height: 210 }')).toEqual([
    'The box of drawer-2 would have to be 210 mm high, and behind its front, on the pitch, there is room for 205 mm. Make the front higher, or the box lower.',
    'The box of drawer-1 would have to be 210 mm high, and behind its front, on the pitch, there is room for 39 mm. Make the front higher.',
  ]);
  // What is proposed does it for the one, and nothing as low would for the other.
  expect(told('drawers: { height: 200 }')).toHaveLength(1);
  expect(told('drawers: { height: 40 }')).toHaveLength(1);
});
