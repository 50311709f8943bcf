import fc from 'fast-check';
import { expect, test } from 'vitest';
import { boreAxis } from '../../../shared-core/boring/axis.js';
import { extentsOf, opposite } from '../../../shared-core/carcass/pose.js';
import type { CarcassAnalysis } from '../../../shared-core/engine.js';
import { opened } from '../findings/jobs.js';
import { job, whole, written } from './texts.js';

/** Where panels and bores stand in the room, seen in a mirror where `width` is given: nothing of names or of how they are counted. */
function inRoom({ carcass, boring }: CarcassAnalysis, width: number | null) {
  const at = (x: number): number => (width === null ? x : width - x);
  const side = (axis: string): string => (width === null ? axis : ({ '+x': '-x', '-x': '+x' }[axis] ?? axis));
  const panels = new Map(carcass!.panels.map((panel) => [panel.key, panel]));
  return {
    panels: carcass!.panels
      .map((panel) => {
        const { x, y, z } = extentsOf(panel);
        const run = [at(x.from), at(x.to)].toSorted((a, b) => a - b);
        const { u, v } = panel.pose;
        const bands = [
          [opposite(u), panel.bands.front],
          [u, panel.bands.back],
          [opposite(v), panel.bands['reference-end']],
          [v, panel.bands['far-end']],
        ] as const;
        const banded = bands.map(([axis, band]) => `${side(axis)} ${band?.name}`).toSorted();
        return JSON.stringify([panel.role.replace('right-side', 'left-side'), panel.board.name, run, y, z, banded]);
      })
      .toSorted(),
    bores: boring!.bores
      // The cams of a divider go in from its left face in either carcass.
      .filter(({ panel, purpose }) => !(purpose === 'cam' && panel.startsWith('divider')))
      .map((bore) => {
        const { entry, direction, length } = boreAxis(panels.get(bore.panel)!, bore);
        const { diameter, depth, through, purpose } = bore;
        const along = side(direction);
        // A hole through a panel is the same from either face.
        const x = through && along === '-x' ? at(entry.x) - length : at(entry.x);
        return JSON.stringify([x, entry.y, entry.z, through ? along[1] : along, diameter, depth, through, purpose]);
      })
      .toSorted(),
  };
}

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
