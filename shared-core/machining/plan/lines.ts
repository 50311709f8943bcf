import type { Bore } from '../../boring/model.js';
import type { Panel } from '../../carcass/model.js';
import type { Blank } from '../setup-sheet.js';
import { groupBy, within } from './numbers.js';
import type { BoringMachine, Operation, Unreachable } from './operation.js';

/** What stands in the way of some bores. */
export type Obstacle = Pick<Unreachable, 'parameter' | 'needed' | 'reason'>;

/** What a kind of machine finds for a panel. */
export interface Found {
  readonly operations: Operation[];
  readonly unreachable: Unreachable[];
}

/** How a line of bores is made: what a set-up fixes, and the ways; its depth is that of the bores. */
export type LinePlan = Pick<Operation, 'fence' | 'height' | 'ways'>;

/**
 * Sorts bores into lines that one stroke can make (equal `keyOf`; their depth is looked after here) and plans each.
 * @param plan A line, never empty, and its first bore; gives how it is made or what stands in the way.
 */
export function planLines(
  where: { readonly carcass: string; readonly panel: Panel; readonly blank: Blank },
  machine: BoringMachine,
  bores: readonly Bore[],
  keyOf: (bore: Bore) => string | number,
  plan: (line: readonly Bore[], first: Bore) => LinePlan | Obstacle,
): Found {
  const operations: Operation[] = [];
  const unreachable: Unreachable[] = [];
  const lines = groupBy(bores, (bore) => `${bore.face}|${bore.depth}|${bore.through}|${keyOf(bore)}`);
  for (const line of lines.values()) {
    const [first] = line;
    if (!first) continue;
    const { depth, through } = first;
    const made = within(depth, machine.depth)
      ? plan(line, first)
      : { parameter: 'depth', needed: depth, reason: 'its depth range does not take this depth' };
    if ('ways' in made) {
      const { carcass, blank, panel } = where;
      operations.push({ carcass, panel: panel.key, blank, machine, depth, through, stage: 0, ...made });
    } else unreachable.push({ panel: where.panel.key, bores: line, machine: machine.name, ...made });
  }
  return { operations, unreachable };
}
