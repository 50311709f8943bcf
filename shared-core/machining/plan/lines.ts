import type { Bore } from '../../boring/model.js';
import type { Panel } from '../../carcass/model.js';
import type { Micrometres } from '../../length/units.js';
import type { Blank } from '../set-up.js';
import { say } from './messages.js';
import { groupBy } from './numbers.js';
import { within } from '../../schema/in-span.js';
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
 * Sorts bores into lines that one stroke can make (equal `keyOf`; their depth is looked after here) and plans each. A line
 * that no one setting makes, such as that of a single spindle, is made in as few strokes as there must be, each with a
 * setting of its own.
 * @param where with how far a bit goes on beyond a bore that goes through
 * @param plan A line, never empty, and its first bore; gives how it is made or what stands in the way. Where it can make a
 * line it can make any part of it.
 */
export function planLines(
  where: { readonly carcass: string; readonly panel: Panel; readonly blank: Blank; readonly allowance: Micrometres },
  machine: BoringMachine,
  bores: readonly Bore[],
  keyOf: (bore: Bore) => string | number,
  plan: (line: readonly Bore[], first: Bore) => LinePlan | Obstacle,
): Found {
  const operations: Operation[] = [];
  const unreachable: Unreachable[] = [];
  const { carcass, blank, panel, allowance } = where;
  const planned = (line: readonly Bore[]): LinePlan | Obstacle => plan(line, line[0]!);
  const add = (line: readonly Bore[], made: LinePlan | Obstacle): void => {
    const { through } = line[0]!;
    const depth = travelFor(line[0]!, allowance);
    if ('ways' in made)
      operations.push({ carcass, panel: panel.key, blank, machine, depth, through, pinsIn: null, ...made });
    else unreachable.push({ panel: panel.key, bores: line, machine: machine.name, ...made });
  };
  const lines = groupBy(bores, (bore) => `${bore.face}|${bore.depth}|${bore.through}|${keyOf(bore)}`);
  for (const line of lines.values()) {
    const [first] = line;
    if (!first) continue;
    if (!within(travelFor(first, allowance), machine.depth)) {
      const needed = travelFor(first, allowance);
      add(line, {
        parameter: 'depth',
        needed,
        reason: say.depth({ machine: machine.name, range: machine.depth, needed }),
      });
      continue;
    }
    const made = planned(line);
    if ('ways' in made) {
      add(line, made);
      continue;
    }
    const able = line.filter((bore) => 'ways' in planned([bore]));
    const rest = line.filter((bore) => !able.includes(bore));
    if (rest.length > 0) add(rest, planned(rest));
    for (const { part, as } of partsOf(able, planned)) add(part, as);
  }
  return { operations, unreachable };
}

/** How deep the depth stop lets the bit go: beyond a bore that goes through, so that it comes out cleanly in any board. */
export const travelFor = (
  { depth, through }: { readonly depth: Micrometres; readonly through: boolean },
  allowance: Micrometres,
): Micrometres => depth + (through ? allowance : 0);

/** A part of a line, and how it is made. */
interface Part {
  readonly part: readonly Bore[];
  readonly as: LinePlan | Obstacle;
}

/** The fewest runs of a line, from the front edge or the reference end on, that can each be made at once. */
function partsOf(line: readonly Bore[], plan: (part: readonly Bore[]) => LinePlan | Obstacle): readonly Part[] {
  if (line.length === 0) return [];
  const planned = (part: readonly Bore[]): Part => ({ part, as: plan(part) });
  const whole = planned(line);
  if ('ways' in whole.as) return [whole];
  const parts: Part[] = [];
  for (const bore of [...line].sort((a, b) => a.u - b.u || a.v - b.v)) {
    const last = parts.at(-1);
    const longer = last && planned([...last.part, bore]);
    if (longer !== undefined && 'ways' in longer.as) parts[parts.length - 1] = longer;
    else parts.push(planned([bore]));
  }
  return parts;
}
