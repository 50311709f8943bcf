import fc from 'fast-check';
import { expect, test } from 'vitest';
import { columnOf, lineEnd, lineStart, nextLineStart, writtenLines } from '../../../shared-core/document/lines.js';

test('lines of texts that begin, go on and end with line feeds', () => {
  fc.assert(
    fc.property(fc.array(fc.constantFrom('', 'a', ' b', '\r'), { minLength: 1, maxLength: 6 }), (lines) => {
      const text = lines.join('\n');
      let start = 0;
      for (const line of lines) {
        const end = start + line.length;
        for (let at = start; at <= end; at += 1) {
          expect([lineStart(text, at), lineEnd(text, at), columnOf(text, at)]).toEqual([start, end, at - start]);
          expect(nextLineStart(text, at)).toBe(Math.min(end + 1, text.length));
        }
        start = end + 1;
      }
    }),
  );
});

test('an offset before the text counts as its beginning', () => {
  expect(lineStart('\na', -1)).toBe(0);
  expect(lineStart('\na', 0)).toBe(0);
});

test('lines are written where anything stands in them but what YAML takes for blank', () => {
  const text = 'a\n \t\r\n\n\u00A0\n b\nc';
  expect(writtenLines(text, 0, text.length).map((at) => text.slice(at, lineEnd(text, at)))).toEqual([
    'a',
    '\u00A0',
    ' b',
    'c',
  ]);
  expect(writtenLines(text, 2, text.length - 1)).toEqual([text.indexOf('\u00A0'), text.indexOf(' b')]);
});
