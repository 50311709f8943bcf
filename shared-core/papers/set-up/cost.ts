import type { JobCost } from '../../machining/plan/cost.js';
import type { Changeover } from '../../shop/model.js';
import { tell } from '../../words/message.js';
import { say } from './messages.js';

/** How many carcasses are named as those that cost most. */
const MOST_NAMED = 3;

const CHANGED: Readonly<Record<keyof Changeover, string>> = {
  stop: 'stops',
  fence: 'fences, heads and heights',
  bit: 'bits',
  depth: 'depth stops',
  turnHead: 'turning heads',
  extension: 'fence extensions',
  machine: 'going to machines',
};

/** What a job takes at the boring machines, and what costs most of it; one sentence each, none where nothing is bored. */
export function costSentences(cost: JobCost): readonly string[] {
  const { changeover, boring, work, changes, carcasses } = cost;
  if (work.panels === 0) return [];
  const parts = changes.map(({ what, seconds }) => ({ what: CHANGED[what], seconds }));
  return [
    say.wholeCost(cost),
    ...(changes.length > 1 ? [say.changeovers({ changeover, changes: parts })] : []),
    ...(carcasses.length > 1 && boring + changeover > 0
      ? [say.dearest({ carcasses: carcasses.slice(0, MOST_NAMED) })]
      : []),
  ].map((message) => tell(message, 'mm'));
}

/** 'In all 1 h 42 min at the boring machines: changeovers 1 h 19 min, boring 23 min (34 panels taken up, …).' */
export const wholeSentence = (cost: JobCost): string => tell(say.wholeCost(cost), 'mm');
