import fc from 'fast-check';
import { expect, test } from 'vitest';
import { withoutControls } from '../../../shared-core/words/controls.js';

test('what a terminal obeys and XML cannot hold is left out, and nothing else', () => {
  expect(withoutControls('a\u001b[31mb\u0000c\u009bd\u007f\ud800e\ufffe\t\n\r\u{1F6AA}é')).toBe(
    'a[31mbcde\t\n\r\u{1F6AA}é',
  );
  fc.assert(
    fc.property(fc.string({ unit: 'binary' }), (text) => {
      const left = withoutControls(text);
      expect(encodeURIComponent(left)).toBeDefined();
      // Every letter, mark, figure, sign and space stays.
      expect(left.match(/[\p{L}\p{M}\p{N}\p{P}\p{S}\p{Zs}]/gu)).toEqual(
        text.match(/[\p{L}\p{M}\p{N}\p{P}\p{S}\p{Zs}]/gu),
      );
    }),
  );
});
