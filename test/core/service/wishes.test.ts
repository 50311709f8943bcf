import { expect, test } from 'vitest';
import { Engine } from '../../../shared-core/engine.js';
import type { Wishes } from '../../../shared-core/engine/wishes.js';
import type { LengthWish } from '../../../shared-core/length/reader.js';
import { drawingOf } from '../../../shared-core/service/drawing.js';
import { allFindings } from '../../../shared-core/service/findings.js';
import { hintsIn } from '../../../shared-core/service/hints.js';
import { explain } from '../../../shared-core/service/hover.js';
import { drawStep } from '../../../shared-core/service/machine-step.js';
import { offersAt } from '../../../shared-core/service/completion.js';
import { outlineOf } from '../../../shared-core/service/outline.js';
import { repairsFor } from '../../../shared-core/service/repairs.js';
import { listSetUps } from '../../../shared-core/service/set-ups.js';
import { shopView } from '../../../shared-core/service/shop-view.js';
import { demoText } from '../drawing/demo.js';

const noRange = { start: { line: 0, character: 0 }, end: { line: 0, character: 0 } };
const document = { uri: 'file:///a', version: 1, toRange: () => noRange };

const SHOP = demoText('shed.shop.yaml');
/** A demo job with a fault of each sort that has lengths in it. */
const JOBS = {
  mm: `${demoText('kitchen.carcass.yaml').trimEnd()}\n  odd: { kind: base, width: 600, fixed-shelves: [361], dowels: [37] }\n`,
  in: `${demoText('studio.carcass.yaml').trimEnd()}\n  odd: { kind: base, width: 23 5/8, fixed-shelves: [14 1/4], dowels: [1 1/2] }\n`,
} as const;

function engineFor(lengths: LengthWish | null, findings: Wishes['findings'] = new Map()): Engine {
  const engine = new Engine({ readShop: () => ({ ok: true, uri: 'file:///shed.shop.yaml', text: SHOP }) });
  engine.wishes = { lengths, findings };
  return engine;
}

/** Every string inside of what is handed to a client, but whom it is for. */
function stringsIn(value: unknown): readonly string[] {
  if (typeof value === 'string') return [value];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inside]) => (key === 'reader' ? [] : stringsIn(inside)));
}

/** Everything that a job and its shop file show to a reader with this wish. */
function shownOf(text: string, lengths: LengthWish | null): readonly string[] {
  const engine = engineFor(lengths);
  const analysis = engine.analyse('file:///a', text);
  const file = { kind: 'job', analysis } as const;
  const shop = { kind: 'shop', analysis: engine.analyseShop('file:///shed.shop.yaml', SHOP) } as const;
  const plan = analysis.plan();
  const drawings = analysis.carcasses.flatMap(({ name, carcass }) =>
    (carcass?.panels ?? []).map(({ key }) =>
      drawingOf(file, document, { uri: '', carcass: name, panel: key, position: null, view: 'panel' }, null),
    ),
  );
  const steps = plan.setUps.map(({ setUp }) => {
    const [{ carcass, panel }] = setUp.runs as [(typeof setUp.runs)[number]];
    return drawStep(analysis, document, plan, { uri: '', setUp: setUp.id, carcass, panel, step: 0 }, null);
  });
  return stringsIn([
    allFindings(file).map(({ message }) => message),
    hintsIn(file, 0, text.length, 'all'),
    outlineOf(file),
    drawings,
    steps,
    listSetUps(file, document, plan, null),
    shopView(shop, document, { uri: '' }),
    [...text.matchAll(/\n {2}[\w-]+:/g)].map(({ index }) => explain(file, index + 4)?.words),
  ]);
}

/** Sizes that are sold by the millimetre: bits, screws, pitches of 32 mm. A reader of inches is shown them as such. */
const SOLD = /(?:(?:Ø|by|×|pitch|every|dowel|screw|on) )?\b(?:5|7|8|10|15|30|32|35|40|50|64|96|160) mm\b/g;
const FRACTION = /(?:^|[^\w-])\d+\/\d+\b/;
const inUnit = (unit: 'mm' | 'in', shown: readonly string[]): readonly string[] =>
  shown.filter((words) => new RegExp(String.raw`\d ${unit}\b`).test(words));

test('a reader who wants millimetres is shown no inch of a job in inches', () => {
  const asItIs = shownOf(JOBS.in, null);
  const shown = shownOf(JOBS.in, { unit: 'mm', inches: 'fractions' });
  expect(inUnit('in', asItIs).length).toBeGreaterThan(100);
  expect(inUnit('in', shown)).toEqual([]);
  expect(shown.filter((words) => FRACTION.test(words))).toEqual([]);
  expect(inUnit('mm', shown).length).toBeGreaterThan(inUnit('in', asItIs).length - 1);
});

test('a reader who wants decimals of inches is shown no fraction, and millimetres only where a size is sold by them', () => {
  const shown = shownOf(JOBS.mm, { unit: 'in', inches: 'decimals' });
  expect(inUnit('in', shown).length).toBeGreaterThan(100);
  const bare = shown.map((words) => words.replace(SOLD, ''));
  expect(inUnit('mm', bare)).toEqual([]);
  expect(bare.filter((words) => FRACTION.test(words))).toEqual([]);
  // The same with fractions has some.
  const fractions = shownOf(JOBS.in, { unit: null, inches: 'fractions' });
  expect(fractions.some((words) => FRACTION.test(words))).toBe(true);
});

test('who asks for decimals of inches sees a file of millimetres as everybody does', () => {
  expect(shownOf(JOBS.mm, { unit: null, inches: 'decimals' })).toEqual(shownOf(JOBS.mm, null));
});

test.each(['mm', 'in'] as const)('what is written into a file in %s is the same for every reader', (unit) => {
  const text = JOBS[unit];
  const written = (lengths: LengthWish | null): unknown => {
    const analysis = engineFor(lengths).analyse('file:///a', text);
    const file = { kind: 'job', analysis } as const;
    const heights = text.lastIndexOf('fixed-shelves: [') + 'fixed-shelves: ['.length;
    const repairs = repairsFor(file, () => true).flatMap((one) => one.repairs);
    return [
      repairs.map((repair) => 'edits' in repair && repair.edits),
      offersAt(file, heights, () => [])?.offers.map(({ label }) => label),
    ];
  };
  const plain = written(null);
  expect(JSON.stringify(plain)).toMatch(/"text":".*\d/);
  expect(written({ unit: unit === 'mm' ? 'in' : 'mm', inches: 'decimals' })).toEqual(plain);
});

test('a new wish works nothing out anew', () => {
  const engine = engineFor(null);
  const before = engine.analyse('file:///a', JOBS.mm);
  const { computed } = engine;
  engine.wishes = { lengths: { unit: 'in', inches: 'decimals' }, findings: new Map() };
  const after = engine.analyse('file:///a', JOBS.mm);
  expect(engine.computed).toBe(computed);
  expect(after.reader).not.toEqual(before.reader);
  expect(after.carcasses).toEqual(before.carcasses);
});

test('a rule that is off leaves no word in findings, drawings and repairs, and one that is set sounds as it is set', () => {
  const told = (findings: Wishes['findings']): ReturnType<typeof allFindings> => {
    const analysis = engineFor(null, findings).analyse('file:///a', JOBS.mm);
    return allFindings({ kind: 'job', analysis });
  };
  const all = told(new Map());
  const [{ rule }] = all.filter(({ severity }) => severity === 'error') as [(typeof all)[number]];
  expect(told(new Map([[rule, null]]))).toEqual(all.filter((one) => one.rule !== rule));
  expect(told(new Map([[rule, 'info']]))).toEqual(
    all.map((one) => (one.rule === rule ? { ...one, severity: 'info' } : one)),
  );
});
