import { PDFDocument } from '@cantoo/pdf-lib';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { Fonts } from '../../../shared-core/papers/render/pdf/fonts.js';
import { fonts as files } from './read-pdf.js';

test('a line is as wide as the font lays it out, whatever letters stand beside each other', async () => {
  const fonts = await Fonts.embed(await PDFDocument.create(), files);
  const letters = fonts.regular.getCharacterSet().filter((code) => code >= 32);
  const line = fc
    .array(
      fc.oneof(
        fc.constantFrom(...Array.from('fiflffAVTo.½ ⁄1é')),
        fc.constantFrom(...letters).map((code) => String.fromCodePoint(code)),
      ),
    )
    .map((parts) => parts.join(''));
  fc.assert(
    fc.property(line, fc.boolean(), (text, strong) => {
      const wide = fonts.of(strong).widthOfTextAtSize(fonts.shown(text), 10);
      expect(fonts.width(text, 10, strong)).toBeCloseTo(wide, 6);
    }),
    { numRuns: 300 },
  );
});
