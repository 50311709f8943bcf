import fc from 'fast-check';
import { expect, test } from 'vitest';
import { plain } from '../../../shared-core/service/markdown.js';

test('no address in a name is a link', () => {
  expect(plain('see https://example.org/a')).toBe('see https\\://example.org/a');
  expect(plain('www.example.org')).toBe('www\\.example.org');
  expect(plain('me@example.org')).toBe('me\\@example.org');
  expect(plain('12: 5 a.b')).toBe('12: 5 a.b');
});

test('a text is shown as it is: every sign that means something is escaped', () => {
  fc.assert(
    fc.property(fc.string(), (text) => {
      // By CommonMark 2.4 a backslash before a sign of ASCII stands for the sign.
      const shown = plain(text).replace(/\\([!-/:-@[-`{-~])/g, '$1');
      expect(shown).toBe(text.replace(/\s+/g, ' '));
    }),
  );
});
