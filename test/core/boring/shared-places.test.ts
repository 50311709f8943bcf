import fc from 'fast-check';
import { expect, test } from 'vitest';
import { boreCarcass } from '../../../shared-core/boring/bores.js';
import type { Bore } from '../../../shared-core/boring/model.js';
import { buildCarcass } from '../../../shared-core/carcass/build.js';
import type { Shop } from '../../../shared-core/shop/model.js';
import { kindOf } from '../../../shared-core/fittings/kinds.js';
import { jobArbitrary, type Job } from '../arbitraries.js';
import { specOf } from '../specs.js';

/** Places of the bores in the ends of each joint, from the carcass front, with the room that they have. */
function placesByJoint({
  shop,
  wish,
}: Pick<Job, 'shop' | 'wish'>): Map<string, { places: number[]; room: [number, number] }> {
  const spec = specOf(shop, wish);
  const carcass = buildCarcass(spec, shop).carcass!;
  const bores = boreCarcass(spec, carcass, shop).bores;
  const panels = new Map(carcass.panels.map((panel) => [panel.key, panel]));
  const around = {
    glueGap: shop.habits.glueGap,
    leastWall: shop.habits.leastWall,
    named: (name: string) => shop.fittings.get(name)!,
  };
  return new Map(
    carcass.joints.map(({ id, endPanel, facePanel, fitting }) => {
      const [end, face] = [panels.get(endPanel)!, panels.get(facePanel)!];
      const isEnd = (bore: Bore): boolean =>
        bore.group === id && bore.panel === endPanel && (bore.face === 'reference-end' || bore.face === 'far-end');
      const places = bores.filter(isEnd).map(({ u }) => u + end.pose.origin.y);
      const edge = kindOf(fitting).joint.edgeDistance(fitting, around);
      const from = Math.max(end.pose.origin.y, face.pose.origin.y) + edge;
      const rear = ({ pose, width, grooves }: typeof end): number =>
        pose.origin.y + Math.min(width, ...grooves.map((groove) => groove.from));
      const to = Math.min(rear(end), rear(face)) - edge;
      return [id, { places: [...new Set(places)].sort((a, b) => a - b), room: [from, to] }];
    }),
  );
}

const without = (shop: Shop): Shop => ({ ...shop, habits: { ...shop.habits, sharePlaces: false } });

test('joints of shared places are held as well as those that take their own', () => {
  let [moved, joints] = [0, 0];
  fc.assert(
    fc.property(jobArbitrary, ({ shop, wish }) => {
      if (!shop.habits.sharePlaces) return;
      // The rows may keep their own places: only joints are compared.
      const own = placesByJoint({ shop: without(shop), wish });
      const { dowelSpacing, pitch } = shop.habits;
      const longest = Math.max(pitch, dowelSpacing);
      for (const [id, { places, room }] of placesByJoint({ shop, wish })) {
        const before = own.get(id)!.places;
        joints += 1;
        if (String(before) !== String(places)) moved += 1;
        expect(places.length).toBeGreaterThan(0);
        if (before.length > 1) expect([id, places.length > 1]).toEqual([id, true]);
        expect(Math.min(...places)).toBeGreaterThanOrEqual(room[0]);
        expect(Math.max(...places)).toBeLessThanOrEqual(room[1]);
        // Staggered joints skip the places of the other face, so their neighbours may stand two pitches more apart.
        const slack = before.some((place, index) => index > 0 && place - before[index - 1]! > longest) ? 2 * pitch : 0;
        for (const [index, place] of places.entries())
          if (index > 0) expect(place - places[index - 1]!).toBeLessThanOrEqual(longest + slack);
        // The rear of a joint is not left farther open than neighbours may stand apart, or than its own places leave it.
        const open = (list: readonly number[]): number => room[1] - Math.max(...list);
        expect(open(places)).toBeLessThanOrEqual(Math.max(longest, open(before)));
      }
    }),
    { numRuns: 400 },
  );
  expect(joints).toBeGreaterThan(1000);
  expect(moved).toBeGreaterThan(50);
});
