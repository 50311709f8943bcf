import type { CarcassCost, JobCost, Work } from '../../machining/plan/cost.js';
import type { Changeover } from '../../shop/model.js';
import { counted, listed } from '../../words/english.js';
import { timeWords } from './words.js';

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
  return [
    wholeSentence(cost),
    ...(changes.length > 1
      ? [
          `Of the ${timeWords(changeover)} of changeovers: ${listed(changes.map(({ what, seconds }) => `${CHANGED[what]} ${timeWords(seconds)}`))}.`,
        ]
      : []),
    ...(carcasses.length > 1 && boring + changeover > 0
      ? [`What costs most: ${carcasses.slice(0, MOST_NAMED).map(carcassWords).join('; ')}.`]
      : []),
  ];
}

/** 'In all 1 h 42 min at the boring machines: changeovers 1 h 19 min, boring 23 min (34 panels taken up, …).' */
export function wholeSentence({ changeover, boring, work }: JobCost): string {
  return `In all ${timeWords(changeover + boring)} at the boring machines: changeovers ${timeWords(changeover)}, boring ${timeWords(boring)} (${workWords(work, 'panel run')}).`;
}

/** '34 panel runs, 70 strokes, 4 index moves': a panel counts as often as it is taken up. */
export function workWords({ panels, strokes, indexMoves }: Work, panel = 'panel'): string {
  return [
    counted(panels, panel),
    counted(strokes, 'stroke'),
    ...(indexMoves > 0 ? [counted(indexMoves, 'index move')] : []),
  ].join(', ');
}

function carcassWords({ carcass, boring, ownSetUps, ownChangeover }: CarcassCost): string {
  const own =
    ownSetUps.length === 0
      ? ''
      : `, and ${timeWords(ownChangeover)} to come to ${ownSetUps.length === 1 ? 'a set-up' : `${ownSetUps.length} set-ups`} that nothing else needs (${listed(ownSetUps)})`;
  return `${carcass}: boring ${timeWords(boring)}${own}`;
}
