import type { JobCost } from '../../machining/plan/cost.js';
import type { Told } from '../../words/told.js';
import { tell } from '../../words/message.js';
import { say } from './messages.js';

/** How many carcasses are named as those that cost most. */
const MOST_NAMED = 3;

/** What a job takes at the boring machines, and what costs most of it; one sentence each, none where nothing is bored. */
export function costSentences(cost: JobCost): readonly Told[] {
  const { changeover, boring, work, changes, carcasses } = cost;
  if (work.panels === 0) return [];
  return [
    say.wholeCost(cost),
    ...(changes.length > 1 ? [say.changeovers({ changeover, changes })] : []),
    ...(carcasses.length > 1 && boring + changeover > 0
      ? [say.dearest({ carcasses: carcasses.slice(0, MOST_NAMED) })]
      : []),
  ].map((message) => tell(message, 'mm'));
}

/** 'In all 1 h 42 min at the boring machines: changeovers 1 h 19 min, boring 23 min (34 panels taken up, …).' */
export const wholeSentence = (cost: JobCost): Told => tell(say.wholeCost(cost), 'mm');
