import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { CarcassAnalysis } from '../../../shared-core/engine.js';
import { opened } from '../findings/jobs.js';
import { inRoom } from './in-room.js';
import { job, whole, written } from './texts.js';

test('a mirrored carcass is the mirror image of the other, panel by panel and bore by bore', () => {
  const read = opened();
  let compared = 0;
  fc.assert(
    fc.property(whole, (said) => {
      const text = job(written('one', said), written('other', { like: 'one', mirrored: 'yes' }));
      const [one, other] = read(text).carcasses as [CarcassAnalysis, CarcassAnalysis];
      expect(other.carcass === null, text).toBe(one.carcass === null);
      if (one.carcass === null || one.boring === null) return;
      const [image, own] = [inRoom(other, one.spec!.width.value), inRoom(one, null)];
      expect(image.panels, text).toEqual(own.panels);
      // Of shelves at one height on both faces of a divider the right one makes way, in either carcass.
      if (one.carcass.joints.some(({ stagger }) => stagger)) return;
      expect(image.bores, text).toEqual(own.bores);
      compared += 1;
    }),
    { numRuns: 200 },
  );
  expect(compared).toBeGreaterThan(60);
});
