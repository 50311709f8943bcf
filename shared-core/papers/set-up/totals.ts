import type { Plan, PlannedSetUp } from '../../machining/plan/plan.js';
import { counted } from '../../words/english.js';
import { timeWords } from './words.js';

/**
 * '37 set-ups, 178 strokes; no fewer set-ups make these strokes; changeovers 2 h 50 min 30 s in all; going to each machine
 * once, no order takes less.'
 */
export function totalsWords(plan: Plan): string {
  return plan.setUps.length === 0
    ? 'Nothing is to be bored.'
    : `${countWords(plan.setUps)}; ${fewestWords(plan)}; changeovers ${timeWords(plan.seconds)} in all; ${boundWords(plan)}.`;
}

/** '37 set-ups, 178 strokes' */
export function countWords(setUps: readonly PlannedSetUp[]): string {
  const strokes = setUps.reduce((sum, one) => sum + one.strokes, 0);
  return `${counted(setUps.length, 'set-up')}, ${counted(strokes, 'stroke')}`;
}

/** How few set-ups are known to be needed. */
function fewestWords({ setUps, leastSetUps }: Plan): string {
  if (setUps.length <= leastSetUps) return 'no fewer set-ups make these strokes';
  return `these strokes need at least ${counted(leastSetUps, 'set-up')}`;
}

/** How good the order is known to be. */
export function boundWords({ seconds, leastSeconds, proven, provenOnce }: Plan): string {
  if (proven) return 'going to each machine once, no order takes less';
  if (provenOnce) {
    return `going to each machine and each of its heads once, no order takes less; turning heads more often, none takes less than ${timeWords(leastSeconds)}`;
  }
  const gap = seconds > 0 ? ((100 * (seconds - leastSeconds)) / seconds).toFixed(1) : '0';
  return `going to each machine once, no order takes less than ${timeWords(leastSeconds)}: at most ${gap} % could be saved`;
}
