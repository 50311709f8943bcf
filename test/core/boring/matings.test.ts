import { describe, expect, test } from 'vitest';
import { boreCarcass } from '../../../shared-core/boring/bores.js';
import { matings, type Mating } from '../../../shared-core/boring/matings.js';
import { buildCarcass } from '../../../shared-core/carcass/build.js';
import { mm, shopOf, specOf, type CarcassWish } from '../specs.js';

const shop = shopOf();

function mated(wish: Partial<CarcassWish>): ReadonlyMap<string, Mating> {
  const spec = specOf(shop, { rows: 'both', ...wish });
  const carcass = buildCarcass(spec, shop).carcass!;
  return new Map(matings(carcass, boreCarcass(spec, carcass, shop)).map((mating) => [mating.joint.id, mating]));
}
const shown = (mating: Mating) => ({
  mates: mating.mates.length,
  inFace: mating.unmatchedInFace.map(({ bore }) => bore.u / 1000),
  inEnd: mating.unmatchedInEnd.map(({ bore }) => bore.u / 1000),
});

describe('matings', () => {
  test.each(['dowel-8x30', 'screw-7x50', 'cam-15'])('%s: every bore finds its mate', (joint) => {
    const all = mated({
      joint,
      dividers: [{ at: mm(300) }],
      fixedShelves: [{ at: mm(296) }],
      top: 'rails',
      bottom: 'under',
    });
    expect(all.size).toBe(13);
    for (const mating of all.values()) {
      expect(shown(mating)).toMatchObject({ inFace: [], inEnd: [] });
      expect(mating.mates.flatMap(({ faults }) => faults)).toEqual([]);
      expect(mating.mates.length).toBeGreaterThanOrEqual(2);
    }
  });

  test('a bore that has no other, with the nearest and how far it is', () => {
    const bottom = mated({ panels: { bottom: { dowels: [mm(53), mm(214), mm(341), mm(501)] } } }).get('bottom/left')!;
    expect(shown(bottom)).toEqual({ mates: 3, inFace: [213], inEnd: [214] });
    const [unmatched] = bottom.unmatchedInFace;
    expect(unmatched!.nearest!.bore.id).toBe('bottom:bottom/left:2');
    expect(unmatched!.nearest!.offset).toEqual({ x: 0, y: mm(1), z: 0 });
  });

  test('one too few', () => {
    const bottom = mated({ panels: { bottom: { dowels: [mm(53), mm(341), mm(501)] } } }).get('bottom/right')!;
    expect(shown(bottom)).toEqual({ mates: 3, inFace: [213], inEnd: [] });
    expect(bottom.unmatchedInFace[0]!.nearest).toBeNull();
  });

  test('a micrometre off is off', () => {
    const left = mated({ panels: { left: { dowels: [mm(53) + 1] } } }).get('bottom/left')!;
    expect(shown(left)).toEqual({ mates: 0, inFace: [53.001], inEnd: [53, 213, 341, 501] });
  });

  test('two widths on one axis', () => {
    const bottom = mated({ panels: { bottom: { joint: 'dowel-8x30' }, left: { joint: 'dowel-10x40' } } }).get(
      'bottom/left',
    )!;
    expect(shown(bottom).mates).toBe(4);
    expect(bottom.mates[0]!.faults).toEqual([{ kind: 'diameter', face: mm(10), end: mm(8) }]);
  });

  test('two kinds on one axis', () => {
    const bottom = mated({ panels: { bottom: { joint: 'dowel-8x30' }, left: { joint: 'screw-7x50' } } }).get(
      'bottom/left',
    )!;
    expect(bottom.mates[0]!.faults).toEqual([{ kind: 'purpose', face: 'clearance', end: 'dowel' }]);
  });

  test('depths are summed for comparison with the dowel', () => {
    const bottom = mated({ panels: { left: { faceDepth: mm(10) } } }).get('bottom/left')!;
    expect(bottom.mates.map(({ depthSum }) => depthSum)).toEqual([mm(29), mm(29), mm(29), mm(29)]);
  });

  test('a clearance hole that does not come through meets nothing', () => {
    const bottom = mated({ joint: 'screw-7x50', panels: { left: { faceDepth: mm(10) } } }).get('bottom/left')!;
    expect(shown(bottom).mates).toBe(0);
    // On the same line, but the thickness of the side away.
    expect(bottom.unmatchedInEnd[0]!.nearest!.offset).toEqual({ x: mm(-16), y: 0, z: 0 });
  });
});
