import { boreAxis } from '../../../shared-core/boring/axis.js';
import { extentsOf, opposite } from '../../../shared-core/carcass/pose.js';
import type { CarcassAnalysis } from '../../../shared-core/engine.js';

/** Where panels and bores stand in the room, seen in a mirror where `width` is given: nothing of names or of how they are counted. */
export function inRoom({ carcass, boring }: CarcassAnalysis, width: number | null) {
  const at = (x: number): number => (width === null ? x : width - x);
  const side = (axis: string): string => (width === null ? axis : ({ '+x': '-x', '-x': '+x' }[axis] ?? axis));
  const panels = new Map(carcass!.panels.map((panel) => [panel.key, panel]));
  return {
    panels: carcass!.panels
      .map((panel) => {
        const { x, y, z } = extentsOf(panel);
        // What the saw cannot share out lies at the right of a front across a corner, in either carcass.
        const plan =
          panel.turn === undefined
            ? [
                [at(x.from), at(x.to)].toSorted((a, b) => a - b),
                y,
                panel.corner === undefined ? null : [panel.corner.u, panel.corner.v, panel.corner.band?.name],
              ]
            : [panel.width, panel.length];
        const { u, v } = panel.pose;
        const bands = [
          [opposite(u), panel.bands.front],
          [u, panel.bands.back],
          [opposite(v), panel.bands['reference-end']],
          [v, panel.bands['far-end']],
        ] as const;
        const banded = bands.map(([axis, band]) => `${side(axis)} ${band?.name}`).toSorted();
        return JSON.stringify([panel.role.replace('right-side', 'left-side'), panel.board.name, plan, z, banded]);
      })
      .toSorted(),
    bores: boring!.bores
      // The cams of a divider go in from its left face in either carcass.
      .filter(({ panel, purpose }) => !(purpose === 'cam' && panel.startsWith('divider')))
      .map((bore) => {
        const { entry, direction, length } = boreAxis(panels.get(bore.panel)!, bore);
        const { diameter, depth, through, purpose } = bore;
        const along = side(direction);
        const { turn } = panels.get(bore.panel)!;
        if (turn !== undefined) return JSON.stringify([bore.u, bore.v, along, diameter, depth, through, purpose]);
        // A hole through a panel is the same from either face.
        const x = through && along === '-x' ? at(entry.x) - length : at(entry.x);
        return JSON.stringify([x, entry.y, entry.z, through ? along[1] : along, diameter, depth, through, purpose]);
      })
      .toSorted(),
  };
}
