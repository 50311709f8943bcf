import type { Bore } from '../../boring/model.js';
import type { Panel } from '../../carcass/model.js';
import type { CupBorer } from '../../shop/model.js';
import type { Blank } from '../setup-sheet.js';
import { loadFor } from './load.js';
import { within } from './numbers.js';
import type { Operation, Unreachable, Way } from './operation.js';
import { handOfEnd } from './orientation.js';

/** Hinge cups, one stroke each: the fence gives the distance from the edge, a stop the place along it. */
export function cupOperations(
  carcass: string,
  panel: Panel,
  blank: Blank,
  bores: readonly Bore[],
  borer: CupBorer,
): { operations: Operation[]; unreachable: Unreachable[] } {
  const operations: Operation[] = [];
  const unreachable: Unreachable[] = [];
  for (const bore of bores) {
    const cannot = (parameter: string, needed: number | null, reason: string) =>
      unreachable.push({ panel: panel.key, bores: [bore], machine: borer.name, parameter, needed, reason });
    if (!within(bore.depth, borer.depth)) {
      cannot('depth', bore.depth, 'its depth range does not take this depth');
      continue;
    }
    if (!within(bore.u, borer.distance)) {
      cannot('distance', bore.u, 'its fence cannot be set to this distance');
      continue;
    }
    const down = bore.face === 'inside' ? 'outside' : 'inside';
    const wanted = [{ head: 0, spindle: 0, bore }];
    const ways = (['reference-end', 'far-end'] as const)
      .map((end): Way => ({
        down,
        end,
        side: handOfEnd(end, down, blank.hand, 'far'),
        position: end === 'reference-end' ? bore.v : panel.length - bore.v,
        strokes: [{ moved: 0, wanted }],
        extent: panel.length,
        load: loadFor(borer, wanted, () => 0),
      }))
      .filter((way) => borer.stops.some((stop) => stop.side === way.side && within(way.position, stop.range)));
    if (ways.length === 0) {
      cannot('stops', bore.v, 'no stop on the hand where the panel comes to lie can be set to this distance');
      continue;
    }
    operations.push({
      carcass,
      panel: panel.key,
      blank,
      machine: borer,
      fence: [bore.u],
      height: null,
      depth: bore.depth,
      through: bore.through,
      ways,
    });
  }
  return { operations, unreachable };
}
