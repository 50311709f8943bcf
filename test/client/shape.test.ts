import { expect, it } from 'vitest';
import {
  dictionary,
  index,
  list,
  number,
  object,
  oneOf,
  orNull,
  text,
  variants,
  type Of,
  type Shape,
} from '../../client/webview/shape.js';

interface Stop {
  readonly name: string;
  readonly side: 'left' | 'right';
  readonly at: number | null;
}
const isStop: Shape<Stop> = object({ name: text, side: oneOf('left', 'right'), at: orNull(number) });

it('lets a value pass that has every field of the right kind, and no other', () => {
  const sound: Stop = { name: 'A', side: 'left', at: null };
  expect(isStop(sound)).toBe(true);
  expect(isStop({ ...sound, more: 1 })).toBe(true);
  for (const unsound of [null, [], 'A', { ...sound, side: 'up' }, { ...sound, at: '1' }, { name: 'A', side: 'left' }])
    expect(isStop(unsound), JSON.stringify(unsound)).toBe(false);
  expect([0, 3, -1, 0.5, Number.NaN].map((value) => index(value))).toEqual([true, true, false, false, false]);
  expect(dictionary(list(number))({ a: [1], b: [] })).toBe(true);
  expect(dictionary(list(number))({ a: [1], b: ['1'] })).toBe(false);
});

it('tells variants apart by their word', () => {
  const isMove = variants('type', { go: { to: number }, stay: {} });
  const move: Of<typeof isMove> = { type: 'go', to: 1 };
  expect([move, { type: 'stay' }, { type: 'go' }, { type: 'toString' }, {}].map((one) => isMove(one))).toEqual([
    true,
    true,
    false,
    false,
    false,
  ]);
});

it('does not compile where a shape and its type say different things', () => {
  // @ts-expect-error: a field is missing.
  const short: Shape<Stop> = object({ name: text, side: oneOf('left', 'right') });
  // @ts-expect-error: less may pass.
  const narrow: Shape<Stop> = object({ name: text, side: oneOf('left'), at: orNull(number) });
  // @ts-expect-error: more may pass.
  const wide: Shape<Stop> = object({ name: text, side: text, at: orNull(number) });
  // @ts-expect-error: a field is none of the type.
  const long: Shape<Stop> = object({ name: text, side: oneOf('left', 'right'), at: orNull(number), more: text });
  expect([short, narrow, wide, long]).toHaveLength(4);
});
