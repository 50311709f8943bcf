// The order of hundreds and thousands of set-ups on one machine: time, the bound and the gap to it, beside going to the
// nearest next. The set-ups are drawn from a fixed sequence, as those of many odd carcasses on one borer; invented.
import { cpus } from 'node:os';
import { sequence } from '../../shared-core/machining/order/random.js';
import { changeoverTime, changesBetween, type Settings } from '../../shared-core/machining/plan/changeover.js';
import { bestOrder } from '../../shared-core/machining/plan/plan.js';

const COUNTS = [400, 1000, 2000, 3000];
const TIMES = { stop: 60, fence: 90, bit: 45, depth: 30, turnHead: 180, extension: 240, machine: 120 };
const SPINDLES = 21;
const RAIL = (['left', 'right'] as const).map((side) => ({
  name: `stop-${side}`,
  side,
  lowers: true,
  furthest: 1_300_000,
}));

/** Set-ups of one borer: two or three bits at one of some places, two mirrored stops, three depths, now and then a level head. */
function drawn(count: number): Settings[] {
  const draw = sequence(20_032);
  return Array.from({ length: count }, () => {
    const level = draw(3) === 0;
    const bits = new Array<number>(SPINDLES).fill(0);
    const first = draw(4);
    for (const spindle of [first, first + 3 + draw(2), first + 6 + draw(9)]) bits[spindle] = 8000;
    const position = level ? 20_000 + draw(40) * 1000 : draw(2) === 0 ? 8000 : 60_000 + draw(500) * 1000;
    return {
      machine: level ? 'level' : 'upright',
      body: 'borer',
      fence: level ? [] : [(20 + draw(40)) * 1000],
      height: level ? [8000, 9500][draw(2)]! : null,
      stops: (['left', 'right'] as const).map((side) => ({ name: `stop-${side}`, side, position })),
      extension: false,
      stands: null,
      depth: [12_000, 19_000, 11_000][draw(3)]!,
      thickness: level ? null : [16_000, 19_000][draw(2)]!,
      through: false,
      bits: [bits],
      rail: RAIL,
      covered: { left: [], right: [] },
      headDistance: null,
    };
  });
}

function nearestNext(setUps: readonly Settings[]): number {
  const left = new Set(setUps);
  let at: Settings | null = null;
  let sum = 0;
  while (left.size > 0) {
    let next: Settings | null = null;
    let least = Infinity;
    for (const one of left) {
      const seconds = changeoverTime(changesBetween(at, one), TIMES);
      if (seconds < least) [next, least] = [one, seconds];
    }
    if (next === null) break;
    sum += least;
    left.delete(next);
    at = next;
  }
  return sum;
}

console.log(`orders of set-ups on one body (${cpus()[0]?.model ?? 'unknown processor'})`);
console.log('set-ups   nearest next       ordered         bound    gap    time');
for (const count of COUNTS) {
  const setUps = drawn(count);
  const began = performance.now();
  const { cost, lowerBound } = bestOrder({ setUps, times: TIMES, before: [] });
  const took = performance.now() - began;
  const gap = `${((100 * (cost - lowerBound)) / cost).toFixed(2)} %`;
  const [near, ours, bound] = [nearestNext(setUps), cost, lowerBound].map((seconds) => `${seconds} s`.padStart(13));
  console.log(
    `${String(count).padStart(7)}  ${near} ${ours} ${bound} ${gap.padStart(7)} ${(took / 1000).toFixed(1).padStart(6)} s`,
  );
}
