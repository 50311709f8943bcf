import type { Bore } from '../../boring/model.js';
import type { Panel } from '../../carcass/model.js';
import type { Micrometres } from '../../length/units.js';
import type { CupBorer } from '../../shop/model.js';
import type { Blank } from '../set-up.js';
import { loadFor } from './load.js';
import { planLines, type Found, type LinePlan, type Obstacle } from './lines.js';
import { say } from './messages.js';
import { within } from '../../schema/in-span.js';
import type { Way } from './operation.js';
import { handOfEnd } from './orientation.js';

/** Hinge cups, one stroke each: the fence gives the distance from the edge, a stop the place along it. */
export function cupOperations(
  carcass: string,
  panel: Panel,
  blank: Blank,
  bores: readonly Bore[],
  borer: CupBorer,
): Found {
  return planLines(
    { carcass, panel, blank, allowance: 0 },
    borer,
    bores,
    (bore) => bore.id,
    (_, bore): LinePlan | Obstacle => {
      if (!within(bore.u, borer.distance)) {
        const reason = say.cupDistance({ machine: borer.name, range: borer.distance, needed: bore.u });
        return { parameter: 'distance', needed: bore.u, reason };
      }
      const down = bore.face === 'inside' ? 'outside' : 'inside';
      const wanted = [{ head: 0, spindle: 0, bore }];
      const ways = (['reference-end', 'far-end'] as const)
        .map((end): Way => ({
          down,
          edge: 'front',
          end,
          side: handOfEnd(end, down, blank.hand, 'far'),
          position: end === 'reference-end' ? bore.v : panel.length - bore.v,
          strokes: [{ moved: 0, wanted }],
          extent: panel.length,
          load: loadFor(borer, wanted, () => 0),
        }))
        .filter((way) => borer.stops.some((stop) => stop.side === way.side && within(way.position, stop.range)));
      if (ways.length > 0) return { fence: [bore.u], height: null, ways };
      const reason =
        borer.stops.length === 0
          ? say.cupNoStops({ machine: borer.name })
          : say.cupStops({ machine: borer.name, ends: nearerFirst(bore.v, panel.length - bore.v) });
      return { parameter: 'stops', needed: bore.v, reason };
    },
  );
}

const nearerFirst = (a: Micrometres, b: Micrometres): readonly [Micrometres, Micrometres] => (a <= b ? [a, b] : [b, a]);
