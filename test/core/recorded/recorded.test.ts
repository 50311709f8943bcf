// What the core gives for a corpus of invented jobs, as it was when it was last looked at. It tells that a result has changed; whether
// the result is right is for the tests of each folder and for the oracles to say. After a change that is meant, `npx vitest run
// test/core/recorded -u` writes the files in `results` anew: read the difference before you commit it.
import { describe, expect, test } from 'vitest';
import { sharedLoadOf } from '../../../shared-core/service.js';
import { FAULTY, FAULTY_SHOPS, LONG_JOBS, opened, openedShop, SHOP_FILES, shopText, WHOLE_JOBS } from './corpus.js';
import { drawn, drawnShop } from './drawn.js';
import { followed, wished } from './followed.js';
import { atEachPlace, inText } from './in-text.js';
import { digest } from './flat.js';
import { inOrder, machines, sampled } from './machines.js';
import { made } from './made.js';
import { AT_ONCE, IN_ORDER, pages, printed } from './printed.js';
import { HALF_WRITTEN } from './texts.js';
import { told } from './told.js';

async function expectAsRecorded(name: string, lines: readonly string[]): Promise<void> {
  await expect(`${lines.join('\n')}\n`).toMatchFileSnapshot(`results/${name}.txt`);
}

const OF_FEW_SET_UPS = new Set([
  'corner',
  'hutch',
  'jugs',
  'ledge',
  'right-corner',
  'rough',
  'sink',
  'trays',
  'inset-drawers',
]);

/** Small ones with most of what pages can have on them. */
const PRINTED = new Set(['ledge', 'corner']);

// Each result has a test of its own, which works out all that it needs: so a change of the core is tried on those alone that come by it.
describe.each(WHOLE_JOBS)('%s', (name, text) => {
  const file = () => ({ kind: 'job', analysis: opened(text) }) as const;

  test('panels and bores', () => expectAsRecorded(`${name}-made`, made(opened(text))));
  test('findings', () => expectAsRecorded(`${name}-told`, told(file())));
  test('set-ups', async () => expectAsRecorded(`${name}-set-ups`, await machines(opened(text))));
  test('beside its text', () => expectAsRecorded(`${name}-text`, inText(file())));
  test('drawings', async () => expectAsRecorded(`${name}-drawn`, await drawn(opened(text))));
  test('papers', async () => expectAsRecorded(`${name}-papers`, await printed(opened(text), AT_ONCE)));
});

test.each(LONG_JOBS)('%s', async (name, text) => {
  const job = opened(text);
  const carcasses = job.carcasses.map((one) => `${one.name} ${digest(made(job, [one]))}`);
  await expectAsRecorded(name, [...told({ kind: 'job', analysis: job }, 'without repairs'), ...carcasses]);
});

test.each(WHOLE_JOBS.filter(([name]) => OF_FEW_SET_UPS.has(name)))('%s in order', async (name, text) => {
  const job = opened(text);
  await expectAsRecorded(`${name}-order`, [...inOrder(job), ...(await printed(job, IN_ORDER))]);
});

test.each(HALF_WRITTEN.map((text, i) => [i, text] as const))('a text that is being written, %i', (i, text) =>
  expectAsRecorded(`half-written-${i}`, atEachPlace({ kind: 'job', analysis: opened(text) })),
);

test.each(WHOLE_JOBS.filter(([name]) => PRINTED.has(name)))('%s on paper', async (name, text) =>
  expectAsRecorded(`${name}-pages`, await pages(opened(text))),
);

test.each(WHOLE_JOBS.filter(([name]) => OF_FEW_SET_UPS.has(name)))('%s while it is edited', (name, text) =>
  expectAsRecorded(`${name}-edited`, followed(text, shopText)),
);

test.each(WHOLE_JOBS.filter(([name]) => PRINTED.has(name)))('%s for a reader with wishes', (name, text) =>
  expectAsRecorded(`${name}-wished`, wished(text, shopText)),
);

const GROUP = 12;
const groups = Array.from({ length: Math.ceil(FAULTY.length / GROUP) }, (_, i) => i);
test.each(groups)('texts with a fault each, group %i', (group) =>
  expectAsRecorded(
    `faulty-${group}`,
    FAULTY.slice(GROUP * group, GROUP * (group + 1)).flatMap((text) => {
      const [job, shop] = typeof text === 'string' ? [text] : text;
      const file = { kind: 'job', analysis: opened(job, shop === undefined ? {} : { 'own.shop.yaml': shop }) } as const;
      return [job.trimEnd(), '---', ...told(file), ...file.analysis.carcasses.map(({ known }) => digest(known)), ''];
    }),
  ),
);

describe.each(SHOP_FILES)('shop %s', (name, text) => {
  const file = () => ({ kind: 'shop', analysis: openedShop(text) }) as const;

  test('findings and machines', () =>
    expectAsRecorded(`shop-${name}`, [
      digest(file().analysis.shop),
      ...told(file()),
      sharedLoadOf(text, null),
      ...drawnShop(openedShop(text)),
    ]));
  test.runIf(name === 'mill' || name === 'loft')('beside its text', () =>
    expectAsRecorded(`shop-${name}-text`, inText(file())),
  );
});

test('shops with a fault each', () =>
  expectAsRecorded(
    'faulty-shops',
    FAULTY_SHOPS.flatMap((text) => [digest(text), ...told({ kind: 'shop', analysis: openedShop(text) })]),
  ));

test('what comes out of a thousand boxes', () =>
  expectAsRecorded('sampled', sampled(opened(WHOLE_JOBS.find(([name]) => name === 'ledge')![1]))));
