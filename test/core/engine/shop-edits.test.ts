import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { Engine, type JobAnalysis } from '../../../shared-core/engine.js';

const demo = (file: string): string => readFileSync(join(import.meta.dirname, '..', '..', file), 'utf8');
const URI = 'file:///jobs/demo.carcass.yaml';
const SHOP = demo('demo/yard.shop.yaml');

const JOB = `shop: yard.shop.yaml
carcasses:
  sink:
    kind: base
    width: 600
    loose-shelves: 1
  again:
    kind: base
    width: 600
    loose-shelves: 1
  deep: { kind: base, width: 450, depth: 440 }
  over: { kind: wall, width: 500, doors: pair, loose-shelves: 2 }
  tall: { kind: tall, width: 600, fixed-shelves: [712], loose-shelves: 2 }
  chest: { kind: base, width: 500, fronts: [drawer, drawer] }
  same: { like: over, width: 520 }
`;

/** An engine, and what it says of the job in shops one after the other. */
function inShops(): { readonly engine: Engine; readonly sees: (shop: string) => JobAnalysis } {
  let text = SHOP;
  const engine = new Engine({ readShop: () => ({ ok: true, uri: 'file:///jobs/yard.shop.yaml', text }) });
  return {
    engine,
    sees: (shop) => {
      text = shop;
      return engine.analyse(URI, JOB);
    },
  };
}

/** All that follows from job and shop; where a thing of the shop stands in its file nobody asks. */
function seen(analysis: JobAnalysis): string {
  const findings = analysis.findings().map(({ finding, carcass }) => ({
    ...finding,
    carcass,
    place: analysis.locate(finding.place, carcass),
  }));
  const { carcasses, shop } = analysis;
  const work = carcasses.map(({ name, spec, carcass, boring, operations }) => ({
    name,
    spec,
    carcass,
    boring,
    operations,
  }));
  const setUps = analysis.setUps().map(({ setUp }) => setUp);
  return JSON.stringify({ findings, work, setUps, shop }, (_, value: unknown) =>
    value instanceof Map
      ? [...(value as ReadonlyMap<unknown, unknown>)]
      : typeof value === 'object' && value !== null && 'part' in value && value.part === 'shop'
        ? undefined
        : value,
  );
}

const NUMBERS = [...SHOP.matchAll(/(?<=[ :[{,])\d+(?:\.\d+)?/g)];

/** Another figure in the place of one; a remark, which moves all that stands below; a thing that is not there any more. */
const edit = fc.oneof(
  { weight: 6, arbitrary: fc.tuple(fc.nat(NUMBERS.length - 1), fc.constantFrom('7', '12.5', '35', '61', '140')) },
  { weight: 1, arbitrary: fc.constant('remark' as const) },
  { weight: 1, arbitrary: fc.constant('without' as const) },
);

function edited(shop: string, by: typeof edit extends fc.Arbitrary<infer T> ? T : never): string {
  if (by === 'remark') return `# a remark\n${shop}`;
  if (by === 'without')
    return shop.replace(/\n(hinges|slides|pulls|case-clamps|handling):(?:[^\n]*\n)(?: [^\n]*\n|\n)*/, '\n');
  const [nth, figure] = by;
  const { index, 0: was } = NUMBERS[nth]!;
  // Of a shop that was edited before, the place may be another: any figure will do.
  return shop.slice(0, index) + figure + shop.slice(index + was.length);
}

test('after any edits of its shop file, a job is what it is when it is opened in that shop', () => {
  let kept = 0;
  fc.assert(
    fc.property(fc.array(edit, { minLength: 1, maxLength: 2 }), fc.boolean(), (edits, isAsked) => {
      const { engine, sees } = inShops();
      // What the slow rules ask is known only once they were asked.
      if (isAsked) sees(SHOP).findings();
      else sees(SHOP);
      let shop = SHOP;
      for (const one of edits) {
        shop = edited(shop, one);
        const before = engine.computed;
        const analysis = sees(shop);
        kept += analysis.carcasses.length - (engine.computed - before);
      }
      expect(seen(sees(shop))).toBe(seen(inShops().sees(shop)));
    }),
    { numRuns: 5 },
  );
  expect(kept).toBeGreaterThan(3);
}, 60_000);

const changed = (from: RegExp, to: string): string => {
  const shop = SHOP.replace(from, to);
  expect(shop).not.toBe(SHOP);
  return shop;
};

test('no carcass is worked out anew for what bears on none', () => {
  const { engine, sees } = inShops();
  const before = sees(SHOP);
  before.findings();
  before.setUps();
  const { computed } = engine;
  for (const shop of [
    changed(/changeover: \{ stop: \d+/, 'changeover: { stop: 7'),
    changed(/bit: \d+, depth: \d+/, 'bit: 41, depth: 26'),
    changed(/handling: \{ panel: \d+/, 'handling: { panel: 7'),
    changed(/hour: \d+/, 'hour: 51'),
    changed(/kerf: \d+/, 'kerf: 7'),
    changed(/birch-19: \{ thickness: 19/, 'birch-19: { thickness: 19.4'),
    changed(/tolerances:\n {2}thickness: [\d.]+/, 'tolerances:\n  thickness: 0.31'),
    `# a remark\n${SHOP}`,
    SHOP,
  ]) {
    const after = sees(shop);
    expect(engine.computed).toBe(computed);
    expect(after.carcasses.map(({ operations }) => operations)).toEqual(
      before.carcasses.map(({ operations }) => operations),
    );
    expect(after.setUps()[0]?.batch).toBe(before.setUps()[0]?.batch);
  }
});

test('of what bears on some carcasses those are worked out anew, and no others', () => {
  const { engine, sees } = inShops();
  sees(SHOP);
  const { computed } = engine;
  // The wall cupboard and what is like it have doors.
  sees(changed(/opening: \d+/, 'opening: 97'));
  expect(engine.computed - computed).toBe(2);
});
