import { expect, test } from 'vitest';
import { counted, listed, quoted } from '../../../shared-core/words/english.js';
import { asItIs } from '../../../shared-core/words/told.js';
import { identityOf, messages, tell, type Words } from '../../../shared-core/words/message.js';

const say = messages('sample', {
  tooDeep: ({ row, past }: { readonly row: string; readonly past: number }, show) =>
    `The ${row} row stands ${show.length(past)} too deep.`,
  nothing: () => 'Nothing is bored.',
  both: ({ one, holes }: { readonly one: Words; readonly holes: number }, show) =>
    `${show.tell(one)} It has ${counted(holes, 'hole')}.`,
});

test('a message is its template’s name and its figures until somebody reads it', () => {
  const message = say.tooDeep({ row: 'rear', past: 12_700 });
  expect(message).toMatchObject({ id: 'sample.tooDeep', figures: { row: 'rear', past: 12_700 } });
  expect(tell(message, 'mm')).toBe('The rear row stands 12.7 mm too deep.');
  expect(tell(message, 'in')).toBe('The rear row stands 1/2 in too deep.');
  expect(tell(say.nothing(), 'mm')).toBe('Nothing is bored.');
  expect(tell(asItIs('Permission denied.'), 'mm')).toBe('Permission denied.');
});

test('a message inside another one keeps the unit of the file that it speaks of', () => {
  const deep = say.tooDeep({ row: 'rear', past: 25_400 });
  expect(tell(say.both({ one: deep, holes: 1 }), 'mm')).toBe('The rear row stands 25.4 mm too deep. It has 1 hole.');
  expect(tell(say.both({ one: deep.in('in'), holes: 2 }), 'mm')).toBe(
    'The rear row stands 1 in too deep. It has 2 holes.',
  );
});

test.each([
  [19_050, '19.05 mm', '3/4 in', '19.05 mm'],
  [9_525, '9.53 mm', '3/8 in', '9.525 mm'],
  [4, '0.004 mm', '0 in', '0.004 mm'],
  [-600_000, '-600 mm', '-23.622 in', '-600 mm'],
])('%i micrometres are read as %s or %s, and written as %s', (length, mm, inches, exact) => {
  const both = messages('length', {
    shown: (value: { readonly at: number }, show) => `${show.length(value.at)}|${show.exact(value.at)}`,
  });
  expect(tell(both.shown({ at: length }), 'mm')).toBe(`${mm}|${exact}`);
  expect(tell(both.shown({ at: length }), 'in').split('|')[0]).toBe(inches);
});

test('two messages are one where template and figures are the same', () => {
  const deep = (past: number) => say.tooDeep({ row: 'rear', past });
  expect(identityOf(deep(1))).toBe(identityOf(deep(1)));
  expect(identityOf(deep(1))).not.toBe(identityOf(deep(2)));
  expect(identityOf(say.both({ one: deep(1), holes: 3 }))).not.toBe(identityOf(say.both({ one: deep(2), holes: 3 })));
});

test('lists, counts and quotes', () => {
  expect([listed([]), listed(['a']), listed(['a', 'b']), listed(['a', 'b', 'c'], 'or')]).toEqual([
    '',
    'a',
    'a and b',
    'a, b or c',
  ]);
  expect([counted(1, 'pitch', 'pitches'), counted(0, 'pitch', 'pitches')]).toEqual(['1 pitch', '0 pitches']);
  expect(quoted(`  a\n b ${'x'.repeat(60)}`)).toBe(`‘a b ${'x'.repeat(36)}…’`);
});
