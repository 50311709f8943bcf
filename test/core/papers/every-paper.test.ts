import '../../seed.js';
import fc from 'fast-check';
import { afterEach, expect, test } from 'vitest';
import { coverSolver } from '../../../server/cover-solver.js';
import { spoken as german } from '../../../server/spoken/de.js';
import { spoken as french } from '../../../server/spoken/fr.js';
import { PAGE_NAMES, PAPER_NAMES, papersOf, type PageName } from '../../../shared-core/service.js';
import { speak } from '../../../shared-core/words/spoken.js';
import type { JobAnalysis } from '../../../shared-core/engine.js';
import { analyse } from '../findings/jobs.js';
import { expectClear, print, readBack, type ReadPage } from './read-pdf.js';

// Names as long as a room and a customer make them, with letters of several languages and words that nothing breaks.
const word = fc.string({
  minLength: 1,
  maxLength: 26,
  unit: fc.constantFrom('a', 'n', 'W', 'm', 'ö', 'ł', 'é', '-', '7'),
});
const name = fc.array(word, { minLength: 1, maxLength: 4 }).map((words) => words.join(' '));
const SIXTEENTHS = ['1/16', '3/16', '5/16', '7/16', '9/16', '11/16', '13/16', '15/16'];
const inches = (least: number, most: number): fc.Arbitrary<string> =>
  fc
    .tuple(fc.integer({ min: least, max: most }), fc.constantFrom(...SIXTEENTHS))
    .map(([whole, part]) => `${whole} ${part}`);

const carcass = fc
  .record({
    name,
    kind: fc.constantFrom('base', 'wall', 'tall', 'for-drawers', 'open'),
    width: inches(14, 38),
    more: fc.uniqueArray(
      fc.oneof(
        fc.integer({ min: 1, max: 3 }).map((count) => `loose-shelves: ${count}`),
        fc.constantFrom('joint: cam-15', 'joint: screw-7x50'),
        fc.constant('doors: pair'),
        fc.constant('dividers: 1'),
        fc.integer({ min: 2, max: 12 }).map((count) => `count: ${count}`),
        name.map((note) => `note: "${note}"`),
      ),
      { maxLength: 3, selector: (line) => line.split(':')[0] },
    ),
  })
  .map(({ name: called, kind, width, more }) =>
    [`  "${called}":`, `kind: ${kind}`, `width: ${width}`, ...more].join('\n    '),
  );
const job = fc
  .record({ title: name, carcasses: fc.array(carcass, { minLength: 1, maxLength: 3 }) })
  .map(({ title, carcasses }) => `title: "${title}"\nunit: in\ncarcasses:\n${carcasses.join('\n')}\n`);

/** A line to write on is no text. */
const written = (page: ReadPage): ReadPage => ({ ...page, words: page.words.filter(({ text }) => !/^_+$/.test(text)) });

async function expectPapersClear(analysis: JobAnalysis, page: PageName): Promise<void> {
  const paperOf = papersOf(analysis, coverSolver, () => ({ rounds: 0, mayGoOn: () => false }));
  for (const paper of PAPER_NAMES) {
    const made = await paperOf(paper);
    if (made === null) continue;
    for (const one of await readBack(await print(made, page))) expectClear(written(one), paper);
  }
}

afterEach(() => speak(null));

test('no text of any paper lies on another or leaves its page, whatever names and sizes a job has', async () => {
  let drawn = 0;
  await fc.assert(
    fc.asyncProperty(
      job,
      fc.constantFrom(...PAGE_NAMES),
      fc.constantFrom(null, german, french),
      async (text, page, language) => {
        speak(language);
        const analysis = analyse(text);
        drawn += analysis.carcasses.filter(({ carcass: built }) => built !== null).length;
        await expectPapersClear(analysis, page);
      },
    ),
    { numRuns: 6 },
  );
  expect(drawn).toBeGreaterThan(5);
});
