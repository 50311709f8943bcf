import type { Micrometres } from '../../length/units.js';
import type { BoringMachine, Load, SpindlePlace, WantedSpindle } from './operation.js';

const spindlesPerHead = (machine: BoringMachine): number => (machine.kind === 'cup' ? 1 : machine.spindles);
const heads = (machine: BoringMachine): number => (machine.kind === 'line' ? machine.heads : 1);

/** Head and spindle of an index into a load. */
export const placeAt = (machine: BoringMachine, index: number): SpindlePlace => ({
  head: Math.floor(index / spindlesPerHead(machine)),
  spindle: index % spindlesPerHead(machine),
});

/** Nothing wanted, and anything allowed. */
export function emptyLoad(machine: BoringMachine): Load {
  const size = heads(machine) * spindlesPerHead(machine);
  return { wanted: new Array<number>(size).fill(0), limit: new Array<number>(size).fill(Infinity) };
}

/**
 * What a stroke asks of the spindles. `clearance` tells how far the centre of a spindle is from wood, 0 where it stands over
 * wood; for several strokes, the least.
 */
export function loadFor(
  machine: BoringMachine,
  wanted: readonly WantedSpindle[],
  clearance: (place: SpindlePlace) => Micrometres,
): Load {
  const diameters = new Array<number>(heads(machine) * spindlesPerHead(machine)).fill(0);
  for (const { head, spindle, bore } of wanted) diameters[head * spindlesPerHead(machine) + spindle] = bore.diameter;
  const limit = diameters.map((diameter, i) => (diameter > 0 ? Infinity : 2 * clearance(placeAt(machine, i))));
  return { wanted: diameters, limit };
}

/** The load that serves both of two that go together. */
export function mergeLoads(a: Load, b: Load): Load {
  return {
    wanted: a.wanted.map((inA, i) => Math.max(inA, b.wanted[i] ?? 0)),
    limit: a.limit.map((limitA, i) => Math.min(limitA, b.limit[i] ?? 0)),
  };
}

/** Whether no spindle is wanted with two bits, and none would bore the other's wood. */
export function goTogether(a: Load, b: Load): boolean {
  for (let i = 0; i < a.wanted.length; i++) {
    const [inA, inB] = [a.wanted[i] ?? 0, b.wanted[i] ?? 0];
    if (inA > 0 && inB > 0 && inA !== inB) return false;
    if (inA > (b.limit[i] ?? 0) || inB > (a.limit[i] ?? 0)) return false;
  }
  return true;
}
