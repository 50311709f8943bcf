import { describe, expect, test } from 'vitest';
import { applyEdits } from '../../../shared-core/document/pieces.js';
import { isOfShop, preferredRepairs, repairEdits, shopRepairEdits } from '../../../shared-core/engine/repairs.js';
import { Engine, type FileFinding, type JobAnalysis } from '../../../shared-core/engine.js';
import { repairsFor } from '../../../shared-core/service.js';
import { neutralShop, NEUTRAL_SHOP_TEXT } from '../../../shared-core/shop/neutral.js';
import { readShop } from '../../../shared-core/shop/read.js';
import { sectionsOf, STOCK_LISTS, type StockList } from '../../../shared-core/shop/stock.js';
import { inWords } from '../../in-words.js';

const JOB_URI = 'file:///jobs/x.carcass.yaml';

/** The built-in shop, written out, without some of its lists. */
function shopWithout(...lists: readonly StockList[]): string {
  const sections = lists.flatMap(sectionsOf);
  return NEUTRAL_SHOP_TEXT.split('\n\n')
    .filter((paragraph) => !sections.some((section) => new RegExp(`^${section}:`, 'm').test(paragraph)))
    .join('\n\n');
}

const jobOf = (...carcasses: readonly string[]): string =>
  `unit: mm\nshop: own.shop.yaml\ncarcasses:\n${carcasses.map((one) => `  ${one}\n`).join('')}`;

function analyse(shop: string, job: string): JobAnalysis {
  const engine = new Engine({ readShop: () => ({ ok: true, uri: 'file:///jobs/own.shop.yaml', text: shop }) });
  return engine.analyse(JOB_URI, job);
}

const ofIncomplete = (job: JobAnalysis): readonly FileFinding[] =>
  job.findings().filter(({ finding }) => finding.rule === 'shop-incomplete');
const said = (job: JobAnalysis): readonly string[] => ofIncomplete(job).map(({ finding }) => inWords(finding.message));

const PLAIN = 'plain: { kind: wall, width: 600 }';
const BARE = 'bare: { kind: open, width: 600, band: none, rows: none, back: none }';

/** Of each list a carcass that uses it and one that does not; null where none can do without. */
const CASES: Readonly<Record<StockList, readonly [with_: string, without: string | null]>> = {
  boards: [PLAIN, null],
  bands: [PLAIN, BARE],
  fittings: [PLAIN, null],
  hinges: ['a: { kind: wall, width: 400, doors: left }', PLAIN],
  slides: ['a: { kind: base, width: 600, fronts: [drawer, drawer] }', 'a: { kind: base, width: 600, doors: pair }'],
  pulls: ['a: { kind: wall, width: 400, doors: left, pulls: knob }', 'a: { kind: wall, width: 400, doors: left }'],
  brackets: ['a: { kind: wall, width: 600, brackets: hook-130 }', PLAIN],
  wardrobeRails: ['a: { kind: tall, width: 800, wardrobe-rails: [1800] }', 'a: { kind: tall, width: 800 }'],
  feet: ['a: { kind: base, width: 900, plinth: 100, feet: level-foot }', 'a: { kind: base, width: 900, plinth: 100 }'],
  angles: [
    'a: { kind: base, width: 600, fronts: [{ front: fixed, height: 140 }, pair] }',
    'a: { kind: base, width: 600, doors: pair }',
  ],
  machines: [PLAIN, null],
};

describe.each(STOCK_LISTS)('a shop file without %s', (list) => {
  const [using, doingWithout] = CASES[list];

  test('tells a job that uses the built-in ones, once, where it names its shop', () => {
    const job = analyse(shopWithout(list), jobOf(using));
    const [one, ...more] = ofIncomplete(job);
    expect(more).toEqual([]);
    const { finding, carcass } = one!;
    expect(finding.severity).toBe('warning');
    const { file, start, end } = job.locate(finding.place, carcass);
    expect([file, job.text.slice(start, end)]).toEqual(['job', 'own.shop.yaml']);
    expect(inWords(finding.message)).toContain(`under \`${sectionsOf(list)[0]!}\``);
  });

  test('is no matter where the file has them, or no shop file is named', () => {
    expect(said(analyse(NEUTRAL_SHOP_TEXT, jobOf(using)))).toEqual([]);
    expect(said(analyse('', jobOf(using).replace('shop: own.shop.yaml\n', '')))).toEqual([]);
  });

  if (doingWithout !== null)
    test('is no matter to a job that uses none', () => {
      const job = analyse(shopWithout(list), jobOf(doingWithout));
      expect(job.carcasses.every(({ boring }) => boring !== null)).toBe(true);
      expect(said(job)).toEqual([]);
    });

  test.each([
    ['mm', shopWithout(list)],
    ['in', 'unit: in\n'],
    ['mm', 'title: The bench'],
    ['mm', 'title: The bench\r\nunit: mm\r\n'],
  ])('is mended by the built-in ones, written below the rest: %s, %j', (unit, shop) => {
    const job = analyse(shop, jobOf(using));
    const title = (found: FileFinding): string => inWords(found.finding.repairs[0]!.title);
    const before = ofIncomplete(job);
    const found = before.find(({ finding }) => inWords(finding.message).includes(`\`${sectionsOf(list)[0]!}\``))!;
    const after = applyEdits(shop, shopRepairEdits(shop, found.finding.repairs));
    expect(after.startsWith(shop)).toBe(true);
    expect(after.replaceAll('\r\n', '').includes(shop.includes('\r\n') ? '\n' : '\r')).toBe(false);
    const read = readShop(after);
    expect(read.findings.length).toBeLessThanOrEqual(readShop(shop).findings.length);
    // The same things to the micrometre, in a file of either unit.
    const figures = (things: ReadonlyMap<string, object>): unknown[] =>
      [...things.values()].map((thing) => ({ ...thing, place: null }));
    expect(read.shop.unit).toBe(unit);
    expect(JSON.stringify(figures(read.shop[list]), withoutPlaces)).toBe(
      JSON.stringify(figures(neutralShop[list]), withoutPlaces),
    );
    const left = ofIncomplete(analyse(after, jobOf(using)));
    expect(left.map(title)).toEqual(before.map(title).filter((one) => one !== title(found)));
  });
});

const withoutPlaces = (key: string, value: unknown): unknown => (key === 'place' ? undefined : value);

describe('what is told', () => {
  test('names things, keys and the first of the carcasses, and leads to these', () => {
    const drawers = (name: string): string => `${name}: { kind: base, width: 600, fronts: [drawer, drawer] }`;
    const job = analyse(shopWithout('slides'), jobOf(drawers('a'), PLAIN, ...['b', 'c', 'd', 'e', 'f'].map(drawers)));
    expect(said(job)).toEqual([
      'The shop file has no slides, so ‘slide-45’ of the built-in shop is used in ‘a’, ‘b’ and 4 more. Its figures are not those of your shop: write your own under `slides`.',
    ]);
    const { related } = ofIncomplete(job)[0]!.finding;
    expect(
      related.map(({ place, carcass, message }) => {
        const { start, end } = job.locate(place, carcass!);
        return [job.text.slice(start, end), inWords(message)];
      }),
    ).toEqual(['a', 'b', 'c', 'd', 'e'].map((name) => [name, '‘slide-45’ is used here.']));
  });

  test('of machines, those that bore and the keys of their kinds', () => {
    const job = analyse(shopWithout('machines'), jobOf(PLAIN, BARE, 'a: { kind: wall, width: 400, doors: left }'));
    expect(said(job)).toEqual([
      'The shop file has no machines, so ‘face-head’, ‘end-head’, ‘row-drill’ and ‘hinge-borer’ of the built-in shop are used in ‘plain’, ‘bare’ and ‘a’. Their figures are not those of your shop: write your own under `vertical-heads`, `horizontal-heads`, `line-drills` and `cup-borers`.',
    ]);
  });

  test('of machines also those that do not reach', () => {
    const job = analyse(shopWithout('machines'), jobOf('small: { kind: open, width: 130, rows: none, back: none }'));
    expect(job.carcasses[0]!.operations!.unreachable.length).toBeGreaterThan(0);
    expect(said(job)).toHaveLength(1);
  });

  test('one machine of any kind makes the list the shop’s own', () => {
    const shop = `${shopWithout('machines')}\npanel-saws:\n  saw: { kerf: 3 }\n`;
    expect(said(analyse(shop, jobOf(PLAIN)))).toEqual([]);
  });

  test('of every list that is left out and used, in the order of the lists', () => {
    const job = analyse('title: The bench\n', jobOf('a: { kind: wall, width: 400, doors: left }'));
    const noun = /has no ([\w ]+),/;
    expect(said(job).map((message) => noun.exec(message)![1])).toEqual([
      'boards',
      'edge bands',
      'fittings for joints',
      'hinges',
      'machines',
    ]);
  });

  test('nothing where the shop file is not to be understood, since nothing is worked out then', () => {
    expect(said(analyse('title: [', jobOf(PLAIN)))).toEqual([]);
  });

  test('nothing of a list of which something is written that cannot be read', () => {
    const shop = `${shopWithout('slides')}\nslides:\n  ours: 3\n`;
    const job = analyse(shop, jobOf('a: { kind: base, width: 600, fronts: [drawer, drawer] }'));
    expect(job.findings().map(({ finding }) => finding.rule)).toContain('shop-broken');
    expect(said(job)).toEqual([]);
  });
});

describe('the repair', () => {
  const shop = shopWithout('slides');
  const text = jobOf('a: { kind: base, width: 600, fronts: [drawer, drawer] }');

  test('is offered as one of the shop file, and never made in the job', () => {
    const analysis = analyse(shop, text);
    const [found] = ofIncomplete(analysis);
    const [repair] = found!.finding.repairs;
    expect(repairEdits(analysis, { carcass: null, repair: repair! })).toBeNull();
    expect(preferredRepairs(analysis).some((one) => isOfShop(one.repair))).toBe(false);
    const index = analysis.known().findIndex(({ finding }) => finding === found!.finding);
    const repairs = repairsFor({ kind: 'job', analysis }, (one) => one === index).flatMap((one) => one.repairs);
    expect(repairs).toMatchObject([
      { in: 'shop', preferred: false, edits: [{ start: shop.length, end: shop.length }] },
    ]);
  });

  test.each([
    ['an empty list is there already', `${shop}\nslides: {}\n`],
    ['the file has no lines of its own to write below', '{ title: The bench }'],
  ])('is not offered where %s', (_why, other) => {
    const found = ofIncomplete(analyse(other, text)).find(({ finding }) =>
      inWords(finding.message).includes('`slides`'),
    );
    expect(found!.finding.repairs).toEqual([]);
  });
});

describe('an edit', () => {
  const engineIn = (shop: { text: string }): Engine =>
    new Engine({ readShop: () => ({ ok: true, uri: 'file:///jobs/own.shop.yaml', text: shop.text }) });
  const drawers = 'a: { kind: base, width: 600, fronts: [drawer, drawer] }';

  test('of the job takes the finding away, and brings it back, with no other carcass worked out anew', () => {
    const engine = engineIn({ text: shopWithout('slides') });
    expect(said(engine.analyse(JOB_URI, jobOf(drawers, PLAIN)))).toHaveLength(1);
    const { computed } = engine;
    expect(said(engine.analyse(JOB_URI, jobOf('a: { kind: base, width: 600 }', PLAIN)))).toEqual([]);
    expect(engine.computed).toBe(computed + 1);
    expect(said(engine.analyse(JOB_URI, jobOf(drawers, PLAIN)))).toHaveLength(1);
  });

  test('that writes the built-in things into the shop file has nothing worked out anew', () => {
    const shop = { text: shopWithout('slides') };
    const engine = engineIn(shop);
    const before = engine.analyse(JOB_URI, jobOf(drawers, PLAIN));
    const { computed } = engine;
    const [{ finding }] = ofIncomplete(before) as [FileFinding];
    shop.text = applyEdits(shop.text, shopRepairEdits(shop.text, finding.repairs));
    expect(said(engine.analyse(JOB_URI, jobOf(drawers, PLAIN)))).toEqual([]);
    expect(engine.computed).toBe(computed);
  });
});
