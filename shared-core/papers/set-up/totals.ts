import type { Plan, PlannedSetUp } from '../../machining/plan/plan.js';
import { tell, type Message } from '../../words/message.js';
import type { Told } from '../../words/told.js';
import { say } from './messages.js';

/**
 * '37 set-ups, 178 strokes; no fewer set-ups make these strokes. Changeovers take 2 h 50 min 30 s in all. No order that goes to
 * each machine once takes less.'
 */
export function totalsWords(plan: Plan): Told {
  const { setUps, leastSetUps: least, seconds } = plan;
  const figures = { setUps: setUps.length, strokes: strokesIn(setUps), least, seconds, bound: boundOf(plan) };
  return tell(setUps.length === 0 ? say.nothingToBore() : say.totals(figures), 'mm');
}

/** How many strokes set-ups have in all. */
export function strokesIn(setUps: readonly PlannedSetUp[]): number {
  return setUps.reduce((sum, one) => sum + one.strokes, 0);
}

/** How good the order is known to be. */
export function boundOf({ seconds, leastSeconds, proven, provenOnce }: Plan): Message {
  if (proven) return say.provenLeast();
  if (provenOnce) return say.provenOnce({ least: leastSeconds });
  return say.notProven({ seconds, least: leastSeconds });
}
