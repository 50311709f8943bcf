import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { applyEdits, Pieces, withoutOverlaps, type TextEdit } from '../../../shared-core/document/pieces.js';

const edit = (start: number, end: number, text = '-'): TextEdit => ({ start, end, text });

/** Both parts of a text around an edit, changed as a hand would: the last one first. */
const byHand = (text: string, edits: readonly TextEdit[]): string =>
  [...edits]
    .sort((a, b) => b.start - a.start || b.end - a.end)
    .reduce((sum, { start, end, text: put }) => sum.slice(0, start) + put + sum.slice(end), text);

describe('edits that would meet', () => {
  test.each([
    ['all of those that lie apart stay, in order', [edit(6, 8), edit(0, 2)], [1, 0]],
    ['one may begin where another ends', [edit(0, 2), edit(2, 4)], [0, 1]],
    ['something may be put in where another ends', [edit(0, 2), edit(2, 2)], [0, 1]],
    ['of two the first in the text stays', [edit(1, 5), edit(4, 8)], [0]],
    ['of two from one place the shorter', [edit(1, 5), edit(1, 3)], [1]],
    ['of two put in at one place the first', [edit(3, 3, 'a'), edit(3, 3, 'b')], [0]],
    ['all within one that stays go', [edit(0, 9), edit(1, 2), edit(4, 6)], [0]],
    ['what meets only one that goes stays', [edit(0, 4), edit(3, 8), edit(6, 9)], [0, 2]],
    ['what meets one that stays goes, though one between them went', [edit(0, 9), edit(3, 4), edit(5, 8)], [0]],
  ] as const)('%s', (_, edits, kept) => {
    expect(withoutOverlaps(edits)).toEqual(kept.map((index) => edits[index]));
  });

  test('none that stay meet, and every one that goes meets one that stays', () => {
    const some = fc
      .array(fc.tuple(fc.nat(12), fc.nat(4)), { maxLength: 7 })
      .map((all) => all.map(([start, long], index) => edit(start, start + long, `${index}`)));
    const meet = (a: TextEdit, b: TextEdit): boolean =>
      a.start === b.start ? true : a.start < b.start ? a.end > b.start : b.end > a.start;
    fc.assert(
      fc.property(some, (edits) => {
        const kept = withoutOverlaps(edits);
        for (const [index, one] of kept.entries())
          for (const other of kept.slice(index + 1))
            expect([one, other, meet(one, other)]).toEqual([one, other, false]);
        for (const one of edits) expect(kept.some((other) => other === one || meet(one, other))).toBe(true);
        expect(applyEdits('abcdefghijklmnopq', kept)).toBe(byHand('abcdefghijklmnopq', kept));
      }),
      { numRuns: 500 },
    );
  });
});

describe('what edits come to', () => {
  const gathered = (text: string, edits: readonly TextEdit[]): readonly TextEdit[] => {
    const pieces = new Pieces(text);
    pieces.apply(edits);
    return pieces.edits();
  };

  test('leaves out what old and new have in common at both ends', () => {
    expect(gathered('width: 600', [edit(0, 10, 'width: 650')])).toEqual([edit(8, 9, '5')]);
    expect(gathered('width: 600', [edit(0, 10, 'width: 600')])).toEqual([]);
    // No place is counted for both ends.
    expect(gathered('aba', [edit(0, 3, 'ababa')])).toEqual([edit(3, 3, 'ba')]);
    expect(gathered('ababa', [edit(0, 5, 'aba')])).toEqual([edit(3, 5, '')]);
  });

  // U+1F528 and U+1F529 begin alike, U+1F529 and U+1F929 end alike.
  const [hammer, screw, face] = ['\u{1F528}', '\u{1F529}', '\u{1F929}'];
  test.each([
    ['which begin alike', hammer, screw],
    ['which end alike', screw, face],
  ])('takes characters whole %s', (_, before, after) => {
    expect(gathered(`a${before}b`, [edit(0, 4, `a${after}b`)])).toEqual([edit(1, 3, after)]);
  });
  test.each([
    // The halves of a damaged file may stand alone.
    ['a first half in the new text', screw, screw[0]!, edit(0, 2, screw[0])],
    ['a first half in the old text', screw[0]!, screw, edit(0, 1, screw)],
    ['a second half in the new text', screw, screw[1]!, edit(0, 2, screw[1])],
    ['a second half in the old text', screw[1]!, screw, edit(0, 1, screw)],
  ])('cuts none apart beside %s', (_, before, after, wanted) => {
    expect(gathered(before, [edit(0, before.length, after)])).toEqual([wanted]);
  });

  test('is the same text as by hand, made in one go', () => {
    const text = fc.stringMatching(/^[ab\u{1F528}\u{1F529}\u{1F929}]{0,12}$/u);
    fc.assert(
      fc.property(text, fc.array(fc.tuple(fc.nat(12), fc.nat(4), text), { maxLength: 3 }), (old, asked) => {
        const clip = (at: number): number => Math.min(at, old.length);
        const edits = withoutOverlaps(asked.map(([start, long, put]) => edit(clip(start), clip(start + long), put)));
        const made = gathered(old, edits);
        expect(byHand(old, made)).toBe(byHand(old, edits));
        for (const [index, one] of made.entries()) {
          expect(one.end > one.start || one.text !== '').toBe(true);
          // Apart, so that an editor may take them in any order.
          expect(made.slice(index + 1).every(({ start }) => start > one.end)).toBe(true);
        }
      }),
      { numRuns: 500 },
    );
  });
});
