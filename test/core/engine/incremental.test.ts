import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { EngineHost, JobAnalysis } from '../../../shared-core/engine.js';
import { Engine } from '../../../shared-core/engine.js';
import { asMessage } from '../../in-words.js';

const demo = (file: string): string => readFileSync(join(import.meta.dirname, '..', '..', 'fixtures', file), 'utf8');
const URI = 'file:///jobs/demo.carcass.yaml';

/** Everything that a reader of an analysis can see, with the places in the whole file. */
function seen(analysis: JobAnalysis): unknown {
  return {
    findings: analysis.findings().map(({ finding, carcass }) => ({
      ...finding,
      carcass,
      place: analysis.locate(finding.place, carcass),
      related: finding.related.map((one) => analysis.locate(one.place, one.carcass ?? carcass)),
    })),
    carcasses: analysis.carcasses,
    unit: analysis.unit,
    shop: analysis.shop,
  };
}

interface Edit {
  readonly at: number;
  readonly length: number;
  readonly text: string;
}

/** Pieces that break, mend and move things: what is typed, pasted and taken out. */
const pieces = fc.oneof(
  {
    weight: 4,
    arbitrary: fc.constantFrom(
      '',
      ' ',
      '\n',
      '    ',
      ':',
      '- ',
      '#',
      '0',
      '12',
      '1/2 in',
      '\t',
      '"',
      '{',
      '}',
      '[',
      ']',
      '\r\n',
    ),
  },
  {
    weight: 2,
    arbitrary: fc.constantFrom(
      '\n    loose-shelves: 1',
      '\n    height: 730',
      '\n  more:\n    kind: wall\n    width: 500',
      'unit: in\n',
    ),
  },
  {
    weight: 1,
    arbitrary: fc.constantFrom(
      '&a ',
      '*a',
      '---\n',
      'carcasses:\n',
      'defaults:\n  depth: 500\n',
      'shop: other.shop.yaml\n',
      '\u{1F6AA}',
    ),
  },
);
const edits = fc.array(
  fc.record({ at: fc.nat(5000), length: fc.oneof(fc.constant(0), fc.nat(3), fc.nat(80)), text: pieces }),
  { minLength: 1, maxLength: 6 },
);

function applied(text: string, { at, length, text: piece }: Edit): string {
  const start = at % (text.length + 1);
  return `${text.slice(0, start)}${piece}${text.slice(start + length)}`;
}

/** Edits, and after how many carcasses each is left before the next comes; null where it is analysed at once. */
const runs = fc.array(
  fc.tuple(
    edits.map(([edit]) => edit!),
    fc.oneof(fc.constant(null), fc.nat(6)),
    fc.nat(5000),
  ),
  {
    minLength: 1,
    maxLength: 6,
  },
);

const SHOP = demo('shed.shop.yaml');
const shopOf = (text: () => string): EngineHost => ({
  readShop: (_, reference) =>
    reference === 'shed.shop.yaml'
      ? { ok: true, uri: 'file:///jobs/shed.shop.yaml', text: text() }
      : { ok: false, message: asMessage('There is no such file.') },
});
const shops = shopOf(() => SHOP);
/** The shop as it is, and with figures that bear on some of what is worked out. */
const SHOPS = [
  SHOP,
  SHOP.replace(/setback: \d+/, 'setback: 41'),
  SHOP.replace(/machine: \d+/, 'machine: 951'),
  SHOP.replace(/stop: [\d.]+/, 'stop: 0.7'),
];

/** Works on a text until so many carcasses are done, and leaves it there. */
function interrupted(engine: Engine, text: string, near: number, after: number): boolean {
  let done = 0;
  return engine.prepare(URI, text, near, () => (done += 1) > after);
}

/** The carcass at a place is as a cold analysis has it, however much of the rest is known. */
function asksNear(engine: Engine, text: string, near: number): void {
  const at = Math.min(near, text.length);
  const found = engine.near(URI, text, at);
  const index = found.carcassAt(at);
  if (index === null) return;
  const host = { readShop: () => ({ ok: true, uri: found.used.uri!, text: found.used.text }) as const };
  const cold = new Engine(found.used.uri === null ? shops : host).near(URI, text, at);
  const shown = ({ carcasses }: JobAnalysis): unknown => {
    const { name, carcass, boring, known } = carcasses[index]!;
    return { name, carcass, boring, known };
  };
  expect(shown(found)).toEqual(shown(cold));
}

// A text full of faults takes longest: each of its repairs is tried.
const RUNS = { 'kitchen.carcass.yaml': 10, 'studio.carcass.yaml': 30, 'every-finding.carcass.yaml': 3 };

for (const [file, numRuns] of Object.entries(RUNS)) {
  test(`after any edits of ${file}, left in the middle or not, the result is that of a cold analysis`, () => {
    const text = demo(file);
    fc.assert(
      fc.property(runs, fc.array(fc.nat(SHOPS.length - 1), { minLength: 6, maxLength: 6 }), (run, chosen) => {
        let shop = SHOP;
        const warm = new Engine(shopOf(() => shop));
        let now = text;
        warm.analyse(URI, now);
        for (const [index, [edit, after, near]] of run.entries()) {
          now = applied(now, edit);
          shop = SHOPS[chosen[index]!]!;
          if (after === null) warm.analyse(URI, now);
          else interrupted(warm, now, near, after);
          asksNear(warm, now, near);
        }
        // The last text again, after a detour, comes from memory in part.
        const cold = new Engine(shopOf(() => shop)).analyse(URI, now);
        expect(seen(warm.analyse(URI, now))).toEqual(seen(cold));
      }),
      { numRuns },
    );
  });
}

test('the shops differ', () => {
  expect(new Set(SHOPS).size).toBe(SHOPS.length);
});

test('who asks about a place while a job is worked out has the carcass there at once, and nothing else is done for that', () => {
  const names = Array.from({ length: 20 }, (_, i) => `box-${i}`);
  const text = `shop: shed.shop.yaml\ncarcasses:\n${names.map((name, i) => `  ${name}:\n    kind: base\n    width: ${400 + i}\n`).join('')}`;
  const engine = new Engine(shops);
  const asked = (name: string): JobAnalysis => engine.near(URI, text, text.indexOf(`${name}:`));
  expect(asked('box-7').carcasses[7]!.carcass).not.toBeNull();
  expect(engine.computed).toBe(1);
  expect(asked('box-7')).toBe(asked('box-7'));
  expect(engine.near(URI, text, 0).carcasses).toHaveLength(20);
  expect(asked('box-12').carcasses[12]!.carcass).not.toBeNull();
  expect(engine.computed).toBe(2);
  // Where hers is the only one left, all is known.
  const two = `shop: shed.shop.yaml\ncarcasses:\n  one: { kind: base, width: 600 }\n`;
  expect(engine.near('file:///jobs/two.carcass.yaml', two, two.indexOf('one')).findings()).toEqual(
    new Engine(shops).analyse('file:///jobs/two.carcass.yaml', two).findings(),
  );
});

test('what is prepared is worked out around the reader first, once, and told before all is known', () => {
  const carcasses = Array.from(
    { length: 20 },
    (_, i) => `  box-${i}:\n    kind: base\n    width: ${i === 12 ? 5 : 400 + i}\n`,
  );
  const text = `shop: shed.shop.yaml\ncarcasses:\n${carcasses.join('')}`;
  const engine = new Engine(shops);
  expect(interrupted(engine, text, text.indexOf('box-12'), 2)).toBe(false);
  expect(engine.computed).toBe(3);
  const soFar = engine.soFar(URI, text);
  expect(soFar.carcasses.flatMap(({ carcass, name }) => (carcass === null ? [] : [name]))).toEqual([
    'box-11',
    'box-13',
  ]);
  expect(soFar.carcasses).toHaveLength(20);
  expect(soFar.known().map(({ carcass }) => carcass)).toEqual([12]);
  expect(interrupted(engine, text, 0, Infinity)).toBe(true);
  expect(seen(engine.analyse(URI, text))).toEqual(seen(new Engine(shops).analyse(URI, text)));
  expect(engine.computed).toBe(20);
});

test('while another shop is followed, what was found in the text itself stays', () => {
  const text =
    'shop: shed.shop.yaml\ncarcasses:\n  one: { kind: base, width: 5 }\n  two: { kind: base, width: 600 }\n  three: { kind: wall, width: 4 }\n  four: { kind: base, width: 610 }\n';
  let shop = SHOP;
  const engine = new Engine(shopOf(() => shop));
  const before = engine.analyse(URI, text).known();
  expect(before).toHaveLength(2);
  shop = SHOPS[1]!;
  expect(interrupted(engine, text, 0, 0)).toBe(false);
  expect(engine.soFar(URI, text).known()).toEqual(expect.arrayContaining([...before]));
  expect(seen(engine.analyse(URI, text))).toEqual(seen(new Engine(shopOf(() => shop)).analyse(URI, text)));
});
