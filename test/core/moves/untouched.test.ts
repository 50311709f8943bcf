import fc from 'fast-check';
import { expect, test } from 'vitest';
import { applyEdits } from '../../../shared-core/document/pieces.js';
import { refactorsAt } from '../../../shared-core/engine/refactors.js';
import { inWords } from '../../in-words.js';
import { opened } from '../findings/jobs.js';
import { job, whole, written, type Said } from '../like/texts.js';
import { comments } from './moves.js';

/** Every line with a remark of its own, and blanks that nobody asked for. */
const remarked = (text: string, mark: string): string =>
  text
    .split('\n')
    .map((line, index) => (line === '' ? line : `${line}${' '.repeat(1 + (index % 3))}# ${mark}${index}`))
    .join('\n');

/** The text without its figures and hands: what is left when a move has changed nothing else. */
const masked = (text: string): string =>
  text
    .replace(/#.*$/gm, (remark) => remark.replace(/\d/g, 'n'))
    .replace(/\d+(\.\d+)?/g, '0')
    .replace(/\b(left|right|reference-end|far-end)\b/g, 'hand');

/** Holes of the rows of a carcass, as heights. */
const holes = (most: number): fc.Arbitrary<readonly number[]> =>
  fc
    .uniqueArray(fc.integer({ min: 2, max: 20 }), { minLength: 1, maxLength: most })
    .map((all) => all.toSorted((a, b) => a - b).map((k) => 8 + 32 * k));

/** A carcass with things in it that follow when its size changes, or that may be spread evenly. */
const filled: fc.Arbitrary<Said> = fc
  .record({
    width: fc.integer({ min: 700, max: 1100 }),
    height: fc.constantFrom(720, 752, 1104),
    depth: fc.constantFrom(560, 500),
    dividers: fc.constantFrom([400], [300, 500], [{ at: 250, board: 'board-18' }, 480]),
    shelves: holes(2),
    loose: holes(3),
    rear: fc.constantFrom<Said>({}, { 'rear-row': 421 }, { dowels: [21, 85, 373, 437] }),
  })
  .map(({ shelves, loose, rear, ...sizes }) => ({
    kind: 'base',
    ...sizes,
    'fixed-shelves': shelves,
    'loose-shelves': loose,
    ...rear,
  }));
const some = fc.oneof(whole, filled, filled);

const CHANGES_FIGURES = /^(Stretch|Give the)/;

test('a move keeps every remark and every byte of the other carcasses, and changes figures alone where it moves things', () => {
  const read = opened();
  const seen = new Map<string, number>();
  fc.assert(
    fc.property(some, some, fc.constantFrom('\n', '\r\n'), (one, other, eol) => {
      const [a, b] = [remarked(written('a', one), 'a'), remarked(written('b', other), 'b')];
      const text = job(a, b).replaceAll('\n', eol);
      const untouched = b.replaceAll('\n', eol).trimEnd();
      const before = read(text);
      const offsets = [...text.slice(0, text.indexOf(b.slice(0, 6))).matchAll(/^ +["\w-]+:|\d+/gm)].map(
        ({ index, 0: word }) => index + word.length - 1,
      );
      const tried = new Set<string>();
      for (const offset of offsets) {
        for (const { title, edits } of refactorsAt(before, offset)) {
          const words = inWords(title);
          const after = applyEdits(text, edits);
          if (tried.has(after)) continue;
          tried.add(after);
          const what = `${words}\n${after}`;
          const kind = words.replace(/ .*/, '');
          seen.set(kind, (seen.get(kind) ?? 0) + 1);
          for (const remark of comments(text)) expect(comments(after), what).toContain(remark);
          if (!/^(Move|Write it as a|Use|Take|Let)/.test(words)) expect(after, what).toContain(untouched);
          if (CHANGES_FIGURES.test(words)) expect(masked(after), what).toBe(masked(text));
          // No blank is put at the end of a line, and lines end as those of the file do.
          if (eol === '\r\n') expect(after.replaceAll('\r\n', ''), what).not.toContain('\n');
          else expect(after, what).not.toContain('\r');
        }
      }
    }),
    { numRuns: 25 },
  );
  for (const kind of ['Change', 'Duplicate', 'Give', 'Stretch']) expect(seen.get(kind), kind).toBeGreaterThan(10);
});
