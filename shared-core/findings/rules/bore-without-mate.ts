import type { Bore } from '../../boring/model.js';
import { isFace } from '../../boring/surface.js';
import type { Panel, Point3 } from '../../carcass/model.js';
import { toCarcass } from '../../carcass/pose.js';
import { reaches } from '../../fittings/purposes.js';
import { messages } from '../../words/message.js';
import type { Micrometres } from '../../length/units.js';
import type { QuickRule, Found } from '../rule.js';

export const say = messages('bore-without-mate', {
  alone: ({ panel, fromFront }: { readonly panel: string; readonly fromFront: Micrometres }, show) =>
    `A bore in ${panel}, ${show.length(fromFront)} from the front edge, opens against solid wood, and no other finding says so. The fault is Borewright’s, not yours: do not bore this panel.`,
});

export const boreWithoutMate: QuickRule = {
  name: 'bore-without-mate',
  severity: 'error',
  about: {
    what: 'A bore of a joint has no bore opposite it, and no finding says so. This is a fault of Borewright, not of the job.',
    why: 'The places of bores are not trusted: where each one opens is worked out once more from how the panels stand, and each must open into another one or have a finding. If you ever see this, do not bore the panel.',
    remedy: 'Report it with the job file and the shop file.',
    example: '# No job shows this: it must never be seen.',
  },
  check({ carcass, boring, spec }, said) {
    const panels = new Map(carcass.panels.map((panel) => [panel.key, panel]));
    const openings = new Map<string, Bore[]>();
    const reaching = boring.bores.filter(reaches);
    for (const bore of reaching) {
      for (const at of openingsOf(panels.get(bore.panel)!, bore)) {
        openings.set(at, [...(openings.get(at) ?? []), bore]);
      }
    }
    return reaching.flatMap((bore): Found[] => {
      const opposite = openingsOf(panels.get(bore.panel)!, bore).some((at) =>
        openings.get(at)!.some((other) => other.panel !== bore.panel && isFace(other.face) !== isFace(bore.face)),
      );
      if (opposite || said.has(bore.id)) return [];
      const message = say.alone({ panel: bore.panel, fromFront: bore.u });
      return [{ place: spec.name.place, panel: bore.panel, bores: [bore.id], message }];
    });
  },
};

/** Where a bore opens in the carcass frame: at its face or end, and a through one at the other face too. */
function openingsOf({ pose, thickness, length }: Panel, { face, u, v, through }: Bore): readonly string[] {
  const at = ({ x, y, z }: Point3): string => `${x} ${y} ${z}`;
  if (!isFace(face)) return [at(toCarcass(pose, { u, v: face === 'reference-end' ? 0 : length, t: v }))];
  const [here, there] = face === 'outside' ? [0, thickness] : [thickness, 0];
  return [here, ...(through ? [there] : [])].map((t) => at(toCarcass(pose, { u, v, t })));
}
