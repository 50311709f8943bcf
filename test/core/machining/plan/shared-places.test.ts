import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { matings } from '../../../../shared-core/boring/matings.js';
import { blankOf } from '../../../../shared-core/machining/blank.js';
import { planInOrder } from '../../../../shared-core/machining/plan/plan.js';
import { setUpsOf } from '../../../../shared-core/machining/plan/set-ups.js';
import { replayPanel } from '../../../../shared-core/machining/replay/replay.js';
import type { Shop } from '../../../../shared-core/shop/model.js';
import { readShop } from '../../../../shared-core/shop/read.js';
import { readJob } from './jobs.js';

const read = (path: string): string => readFileSync(new URL(`../../../${path}`, import.meta.url), 'utf8');
const shopWith = (path: string, share: 'yes' | 'no'): Shop =>
  readShop(read(path).replace(/^habits:$/m, `habits:\n  share-places: ${share}`)).shop;

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

function counted(text: string, shop: Shop): { setUps: number; dowels: number } {
  const carcasses = readJob(text, shop);
  return {
    setUps: setUpsOf(carcasses.map(({ operations }) => operations)).length,
    dowels: carcasses.flatMap(({ boring }) => boring.bores).filter(({ purpose }) => purpose === 'dowel').length,
  };
}

describe.each([
  { folder: 'fixtures', file: 'shed.shop.yaml', kitchen: 34 },
  { folder: 'demo', file: 'yard.shop.yaml', kitchen: 35 },
])('on the machines of $file', ({ folder, file, kitchen }) => {
  const [own, shared] = [shopWith(`${folder}/${file}`, 'no'), shopWith(`${folder}/${file}`, 'yes')];
  const jobs = {
    rails: tenBases('rails'),
    tops: tenBases('between'),
    kitchen: read(`${folder}/kitchen.carcass.yaml`),
  };

  test('shared places save set-ups, and cost dowels', () => {
    expect(counted(jobs.rails, own)).toEqual({ setUps: 5, dowels: 320 });
    expect(counted(jobs.rails, shared)).toEqual({ setUps: 4, dowels: 360 });
    expect(counted(jobs.tops, own)).toEqual({ setUps: 4, dowels: 320 });
    expect(counted(jobs.tops, shared)).toEqual({ setUps: 3, dowels: 400 });
    expect(counted(jobs.kitchen, own)).toEqual({ setUps: kitchen, dowels: 472 });
    expect(counted(jobs.kitchen, shared)).toEqual({ setUps: 25, dowels: 540 });
  });

  test.each(Object.entries(jobs))('every bore of %s has its mate, and the set-ups bore the bore maps', (_, text) => {
    const carcasses = readJob(text, shared);
    const order = setUpsOf(carcasses.map(({ operations }) => operations));
    const claims = { order: [...order.keys()], cost: 0, lowerBound: 0, proven: false, provenOnce: false };
    const setUps = planInOrder(order, shared.changeover, claims).setUps.map(({ setUp }) => setUp);
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
