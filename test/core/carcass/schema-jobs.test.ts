import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { neutralShop } from '../../../shared-core/shop/neutral.js';
import { analyse } from '../findings/jobs.js';
import { analysed, analysedJob, BASES, jobOf, keysOf, plainLines, withKey } from '../job/key-trials.js';
import { jobText } from '../job/schema-texts.js';
import { expectNoSharedWood, expectRightBlame, expectToFillSize, stands } from './box-laws.js';

// Jobs written from the schema, so that a key which makes a panel larger or puts it elsewhere is tried on the day it comes.

test('boxes of random jobs share no wood, fill their size, and blame the right value for the size of a panel', () => {
  let [boxes, held, blamed] = [0, 0, 0];
  fc.assert(
    fc.property(jobText(neutralShop, 1), (text) => {
      const job = analyse(text);
      const box = job.carcasses[0]!;
      if (!stands(box)) return;
      boxes += 1;
      held += expectNoSharedWood(box.carcass!, text);
      expectToFillSize(box, text);
      if (boxes % 8 === 0) blamed += expectRightBlame(job, analyse);
    }),
    { numRuns: 400 },
  );
  expect([boxes > 100, held > 20, blamed > 100]).toEqual([true, true, true]);
});

/** Blame asks for several analyses, so each base tries it with every so many of its texts, and other ones than the last. */
const BLAME_EVERY = 8;

/** Two of them, other ones for every base. */
const some = <T>(all: readonly T[], from: number): readonly T[] =>
  all.length <= 2 ? all : [all[(2 * from) % all.length]!, all[(2 * from + 1) % all.length]!];

describe.each(BASES.map((lines, index) => [lines.join(', '), lines, index] as const))('%s', (_title, base, index) => {
  const before = analysed(base);
  const how = before.spec!.back.how.value;

  test('the same with each key of the schema written in it', () => {
    let boxes = 0;
    for (const [place, tried] of keysOf(before).entries())
      for (const written of some(tried.lines, place + index)) {
        const text = jobOf(withKey(plainLines(base, how), tried, written, how));
        const job = analysedJob(text);
        const box = job.carcasses[0]!;
        if (!stands(box)) continue;
        boxes += 1;
        expectNoSharedWood(box.carcass!, text);
        expectToFillSize(box, text);
        if ((boxes + index) % BLAME_EVERY === 0) expectRightBlame(job, analysedJob);
      }
    expect(boxes).toBeGreaterThan(50);
  });
});
