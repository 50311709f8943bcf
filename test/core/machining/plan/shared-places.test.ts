import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { matings } from '../../../../shared-core/boring/matings.js';
import { blankOf } from '../../../../shared-core/machining/blank.js';
import { leastBatches } from '../../../../shared-core/machining/plan/group.js';
import { planInOrder } from '../../../../shared-core/machining/plan/plan.js';
import { setUpsOf } from '../../../../shared-core/machining/plan/set-ups.js';
import { replayPanel } from '../../../../shared-core/machining/replay/replay.js';
import type { Shop } from '../../../../shared-core/shop/model.js';
import { readShop } from '../../../../shared-core/shop/read.js';
import { readJob } from './jobs.js';

const read = (path: string): string => readFileSync(new URL(`../../../${path}`, import.meta.url), 'utf8');
const shopWith = (path: string, share: 'yes' | 'no', spare: 'yes' | 'no' = 'no'): Shop =>
  readShop(read(path).replace(/^habits:$/m, `habits:\n  share-places: ${share}\n  spare-holes: ${spare}`)).shop;

/** Ten base units of 16, 300 to 1,000 wide. */
const tenBases = (top: string): string =>
  [
    'title: Ten',
    'unit: mm',
    'carcasses:',
    ...Array.from({ length: 10 }, (_, i) => {
      const width = 300 + Math.round((700 * i) / 9);
      return `  unit-${i}: { kind: base, width: ${width}, top: ${top} }`;
    }),
  ].join('\n');

function counted(text: string, shop: Shop): { setUps: number; least: number; dowels: number } {
  const carcasses = readJob(text, shop);
  const setUps = setUpsOf(carcasses.map(({ operations }) => operations));
  return {
    setUps: setUps.length,
    least: leastBatches(setUps.map(({ batch }) => batch)),
    dowels: carcasses.flatMap(({ boring }) => boring.bores).filter(({ purpose }) => purpose === 'dowel').length,
  };
}

describe.each([
  {
    folder: 'fixtures',
    file: 'shed.shop.yaml',
    expected: {
      rails: [
        [5, 320],
        [4, 320],
        [3, 400],
      ],
      tops: [
        [3, 320],
        [3, 320],
        [3, 480],
      ],
      kitchen: [
        [34, 472],
        [23, 468],
        [22, 644],
      ],
    },
  },
  {
    folder: 'demo',
    file: 'yard.shop.yaml',
    expected: {
      rails: [
        [6, 320],
        [4, 320],
        [3, 400],
      ],
      tops: [
        [4, 320],
        [3, 320],
        [3, 480],
      ],
      kitchen: [
        [39, 472],
        [26, 472],
        [25, 648],
      ],
    },
  },
])('on the machines of $file', ({ folder, file, expected }) => {
  const path = `${folder}/${file}`;
  const [own, shared, spare] = [shopWith(path, 'no'), shopWith(path, 'yes'), shopWith(path, 'yes', 'yes')];
  const jobs = {
    rails: tenBases('rails'),
    tops: tenBases('between'),
    kitchen: read('fixtures/kitchen.carcass.yaml'),
  };

  test('shared places save set-ups, and holes that stay empty save more', () => {
    const all = [own, shared, spare].map((shop) => Object.values(jobs).map((text) => counted(text, shop)));
    // For the bores that they have, no count of set-ups can be lower.
    for (const { setUps, least } of all.flat()) expect(setUps).toBe(least);
    const figures = all.map((one) => one.map(({ setUps, dowels }) => [setUps, dowels]));
    expect(Object.fromEntries(Object.keys(jobs).map((job, index) => [job, figures.map((one) => one[index])]))).toEqual(
      expected,
    );
  });

  test.each(
    Object.entries(jobs).flatMap(([name, text]) => [
      { name, text, empty: 'no', shop: shared },
      { name, text, empty: 'some', shop: spare },
    ]),
  )('every bore of $name has its mate, and the set-ups bore the bore maps, $empty holes empty', ({ text, shop }) => {
    const carcasses = readJob(text, shop);
    const order = setUpsOf(carcasses.map(({ operations }) => operations));
    const claims = { order: [...order.keys()], cost: 0, lowerBound: 0, proven: false, provenOnce: false };
    const setUps = planInOrder(order, shop.changeover, claims).setUps.map(({ setUp }) => setUp);
    for (const { spec, carcass, boring } of carcasses) {
      for (const { unmatchedInFace, unmatchedInEnd, mates } of matings(carcass, boring)) {
        expect([...unmatchedInFace, ...unmatchedInEnd]).toEqual([]);
        expect(mates.flatMap(({ faults }) => faults)).toEqual([]);
      }
      for (const panel of carcass.panels) {
        const replay = replayPanel(setUps, spec.name.value, panel.key, blankOf(panel));
        const places = (holes: readonly { face: string; u: number; v: number }[]): string[] =>
          holes.map(({ face, u, v }) => `${face} ${u} ${v}`).sort();
        const bores = boring.bores.filter((bore) => bore.panel === panel.key);
        expect(replay.ok && places(replay.holes).length).toBe(bores.length);
        if (bores.every(({ through }) => !through)) expect(replay.ok && places(replay.holes)).toEqual(places(bores));
      }
    }
  });
});
