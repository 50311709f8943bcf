import type { Translations } from '../tables.js';
import { quoted, und, work } from './words.js';

/** Was von Reihen zu sagen ist, von denen Löcher weggelassen sind. */
export const findingsOfRows = {
  'partial-rows-cost': {
    costs: ({ panels, machine, more }) =>
      `Die Löcher, die \`row-holes\` in den Reihen von ${und(panels)} weglässt, sparen nichts: Auf ${quoted(machine)} machen die übrigen ${work(more)} mehr als ganze Reihen, weil für sie Bohrer herausgenommen werden müssen. Bohren Sie ganze Reihen, oder nehmen Sie die Kosten hin.`,
    whole: () => 'Ganze Reihen bohren',
  },
} satisfies Translations;
