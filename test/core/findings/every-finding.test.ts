import { describe, expect, test } from 'vitest';
import { boresConcerned } from '../../../shared-core/findings/finding.js';
import { batchEdits, batchesFor, isOfShop } from '../../../shared-core/engine/repairs.js';
import { readingRules } from '../../../shared-core/findings/reading-rules.js';
import { rules } from '../../../shared-core/findings/registry.js';
import { applied, checkRepair, comments, countsOf } from './after-repair.js';
import { analyse, demoText, NEVER_SHOWN, opened } from './jobs.js';
import { inWords } from '../../in-words.js';

const text = demoText('every-finding.carcass.yaml');
const edited = opened();
const job = edited(text);
const findings = job.findings();

describe('the job with every fault', () => {
  // A job has one shop file or none, and carcasses or none, so some rules have texts of their own, in the reference.
  const onTheirOwn = new Set([
    'nothing-yet',
    'shop-missing',
    'shop-broken',
    'shop-neutral',
    // Of the job as a whole: its shop file has no slides.
    'shop-incomplete',
    'joint-off-load',
    'misfit-past-limit',
    ...NEVER_SHOWN,
  ]);
  const names = [...rules, ...readingRules].map(({ name }) => name).filter((name) => !onTheirOwn.has(name));

  test.each(names)('shows %s in the carcass of that name', (name) => {
    const shown = findings.filter(
      ({ finding, carcass }) => finding.rule === name && job.carcasses[carcass ?? -1]?.name === name,
    );
    expect(shown.length).toBeGreaterThan(0);
  });

  test('knows no finding that is not in the reference', () => {
    const known = new Set([...rules, ...readingRules].map(({ name }) => name));
    const unknown = findings
      .map(({ finding }) => finding.rule)
      .filter((rule) => !known.has(rule) || NEVER_SHOWN.has(rule));
    expect(unknown).toEqual([]);
  });

  test('has a shop without faults, but for the slides that it leaves out', () => {
    expect(findings.filter(({ carcass }) => carcass === null).map(({ finding }) => finding.rule)).toEqual([
      'shop-incomplete',
    ]);
  });

  test('marks places that hold words, panels and bores that there are', () => {
    for (const { finding, carcass } of findings) {
      if (carcass === null) continue;
      const { start, end, file } = job.locate(finding.place, carcass);
      expect(file).toBe('job');
      expect(text.slice(start, end).trim(), inWords(finding.message)).not.toBe('');
      const { carcass: box, boring } = job.carcasses[carcass]!;
      if (finding.panel !== undefined) expect(box?.panels.map(({ key }) => key)).toContain(finding.panel);
      const ids = new Set(boring?.bores.map(({ id }) => id));
      expect(boresConcerned(finding).filter((id) => !ids.has(id))).toEqual([]);
      expect(finding.repairs.filter(({ preferred }) => preferred).length).toBeLessThanOrEqual(1);
      expect(inWords(finding.message)).toMatch(/^\S.*[.?]$/s);
    }
  });

  test('is the same however often it is read', () => {
    expect(JSON.stringify(analyse(text).findings())).toBe(JSON.stringify(findings));
  });
});

describe('every repair makes its finding go away, and brings no other', () => {
  const offers = findings.flatMap((found) =>
    found.finding.repairs
      .filter((repair) => !isOfShop(repair))
      .map((repair) => [`${found.finding.rule}: ${inWords(repair.title)}`, found, repair] as const),
  );

  test.each(offers)('%s', (_title, found, repair) => {
    checkRepair(edited, job, found, repair);
  });

  test('and there is one for each fault that a change of the job can mend', () => {
    const mended = new Set(
      findings.filter(({ finding }) => finding.repairs.length > 0).map(({ finding }) => finding.rule),
    );
    expect([...mended]).toEqual(
      expect.arrayContaining([
        'row-past-reach',
        'row-distance',
        'row-unbalanced',
        'index-unbalanced',
        'loose-shelf-without-row',
        'shelf-off-grid',
        'shelf-past-stop',
        'shelf-tips',
        'dowels-unmatched',
        'dowel-depths',
        'dowel-place-unused',
        'bores-collide',
        'bore-in-groove',
        'break-through',
        'near-edge',
        'band-missing',
        'board-unknown',
        'band-unknown',
        'fitting-unknown',
        'machine-unknown',
        'panel-unknown',
        'carcass-unknown',
        'like-circular',
        'key-unknown',
      ]),
    );
  });
});

describe('repairs that are taken together', () => {
  const broken = `shop: faults.shop.yaml
carcasses:
  left-one: # the first
    kind: base
    width: 600
    loose-shelves: [330, 490] # both off
  right-one:
    kind: base
    width: 600
    loose-shelves:
      - 341 # off as well
      - { at: 500 }
  bare:
    kind: open
    width: 600
    band: none
  bare-too:
    kind: open
    width: 600
    panels:
      left: { bands: { front: none } }
`;
  const before = analyse(broken);
  const of = (rule: string) => before.findings().filter(({ finding }) => finding.rule === rule);

  test.each([
    ['shelf-off-grid', '(this carcass)', { 'left-one': 0, 'right-one': 2 }],
    ['shelf-off-grid', '(whole file)', { 'left-one': 0, 'right-one': 0 }],
  ] as const)('%s %s', (rule, scope, left) => {
    const batch = batchesFor(before, of(rule)[0]!).find(({ title }) => inWords(title).endsWith(scope));
    const after = analyse(applied(broken, batchEdits(before, batch!.repairs)));
    const still = after.carcasses.map(({ name, findings: found }) => [
      name,
      found.filter((one) => one.rule === rule).length,
    ]);
    expect(Object.fromEntries(still)).toMatchObject(left);
    expect(comments(after.text)).toEqual(comments(broken));
    for (const [key, count] of countsOf(after)) expect(count, key).toBeLessThanOrEqual(countsOf(before).get(key) ?? 0);
  });

  test('the shelves come to the nearest holes, and nothing else is touched', () => {
    const batch = batchesFor(before, of('shelf-off-grid')[0]!).find(({ title }) =>
      inWords(title).endsWith('(whole file)'),
    );
    expect(applied(broken, batchEdits(before, batch!.repairs))).toBe(
      broken.replace('[330, 490]', '[328, 488]').replace('- 341', '- 328').replace('at: 500', 'at: 488'),
    );
  });

  test('every bare front edge in the file is banded', () => {
    const batch = batchesFor(before, of('band-missing')[0]!).find(({ title }) =>
      inWords(title).endsWith('(whole file)'),
    );
    const text = applied(broken, batchEdits(before, batch!.repairs));
    expect(text).toBe(broken.replace('band: none', 'band: band-1').replace('front: none', 'front: band-1'));
    expect(
      analyse(text)
        .findings()
        .filter(({ finding }) => finding.rule === 'band-missing'),
    ).toEqual([]);
  });
});

describe('a repair is written in the unit of the file', () => {
  test.each([
    // The grid of a 3/4 in board starts at 9.525 mm and goes on by 32 mm: hole 11 stands at 329.525 mm, which no fraction of an inch is: the decimals are as many as tell it to the micrometre.
    ['13', 'Move loose-1 down to 12.973 in (hole 11)', '12.97343'],
    ['330 mm', 'Move loose-1 down to 12.973 in (hole 11)', '12.97343'],
  ])('inches: a shelf at %s', (at, title, written) => {
    const inches = `unit: in\nshop: bench.shop.yaml\ncarcasses:\n  sink:\n    kind: base\n    width: 24\n    loose-shelves: [${at}]\n`;
    const shop =
      'unit: in\nboards: { ply: { thickness: 3/4 }, back: { thickness: 1/8 } }\nhabits: { board: ply, back-board: back }';
    const read = (text: string) => analyse(text, { 'bench.shop.yaml': shop });
    const before = read(inches);
    const found = before.findings().find(({ finding }) => finding.rule === 'shelf-off-grid')!;
    const repair = found.finding.repairs[0]!;
    expect(inWords(repair.title, 'in')).toBe(title);
    const batch = batchEdits(before, [{ carcass: found.carcass, repair }]);
    const after = applied(inches, batch);
    expect(after).toBe(inches.replace(`[${at}]`, `[${written}]`));
    const shelf = read(after).carcasses[0]!.spec!.looseShelves[0]!;
    expect(shelf.at.value).toBe(9525 + 10 * 32000);
    expect(
      read(after)
        .findings()
        .filter(({ finding }) => finding.rule === 'shelf-off-grid'),
    ).toEqual([]);
  });
});
