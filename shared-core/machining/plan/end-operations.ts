import type { Bore } from '../../boring/model.js';
import type { Panel } from '../../carcass/model.js';
import type { Micrometres } from '../../length/units.js';
import type { HorizontalHead } from '../../shop/model.js';
import type { Blank } from '../setup-sheet.js';
import { loadFor } from './load.js';
import { groupBy, modulo, offsetsFor, outside, within } from './numbers.js';
import type { Operation, Unreachable, Way } from './operation.js';
import { handOfFrontEdge } from './orientation.js';

/**
 * Construction bores in ends on a horizontal head. The outside face always lies down, so the height of the spindles is the
 * bore's distance from the outside face; the front edge always lies against a squaring stop. Turning the panel by half a
 * turn on the table brings the other end to the head and the front edge to the stop on the other hand.
 */
export function endOperations(
  carcass: string,
  panel: Panel,
  blank: Blank,
  bores: readonly Bore[],
  head: HorizontalHead,
  preferredOffset: Micrometres,
): { operations: Operation[]; unreachable: Unreachable[] } {
  const operations: Operation[] = [];
  const unreachable: Unreachable[] = [];
  const lines = groupBy(bores, (b) => `${b.face}|${b.v}|${b.depth}|${modulo(b.u, head.pitch)}`);
  for (const line of lines.values()) {
    const first = line[0];
    if (!first) continue;
    const cannot = (parameter: string, needed: Micrometres | null, reason: string) =>
      unreachable.push({ panel: panel.key, bores: line, machine: head.name, parameter, needed, reason });
    if (!within(first.depth, head.depth)) {
      cannot('depth', first.depth, 'its depth range does not take this depth');
      continue;
    }
    if (!within(first.v, head.height)) {
      cannot('height', first.v, 'its spindles cannot be set to this height above the table');
      continue;
    }
    const pressed = first.face as 'reference-end' | 'far-end';
    const side = handOfFrontEdge(pressed, 'outside', blank.hand);
    const places = line.map((b) => b.u);
    const last = head.spindles - 1;
    const ways: Way[] = [];
    for (const stop of head.stops) {
      if (stop.side !== side) continue;
      const offsets = offsetsFor(places, head.pitch, head.spindles, stop.range);
      for (const offset of offsets.sort(
        (a, b) => Number(b === preferredOffset) - Number(a === preferredOffset) || a - b,
      )) {
        if (ways.some((way) => way.position === offset)) continue;
        // Counted from the stop: spindle 0 on the left hand, the last spindle on the right.
        const counted = (place: number): number => (side === 'left' ? place : last - place);
        const wanted = line.map((bore) => ({ head: 0, spindle: counted((bore.u - offset) / head.pitch), bore }));
        ways.push({
          down: 'outside',
          end: pressed,
          side,
          position: offset,
          strokes: [{ moved: 0, wanted }],
          extent: panel.width,
          load: loadFor(head, wanted, ({ spindle }) => outside(offset + counted(spindle) * head.pitch, panel.width)),
        });
      }
    }
    if (ways.length === 0) {
      if (!head.stops.some((stop) => stop.side === side)) {
        cannot('stops', null, `it has no squaring stop on the ${side}, where the front edge comes to lie`);
      } else {
        cannot('stops', first.u, `no squaring stop on the ${side} puts its spindles over these places`);
      }
      continue;
    }
    operations.push({
      carcass,
      panel: panel.key,
      blank,
      machine: head,
      fence: [],
      height: first.v,
      depth: first.depth,
      through: first.through,
      ways,
    });
  }
  return { operations, unreachable };
}
