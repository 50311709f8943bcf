import type { Translations } from '../tables.js';

import { kg, quoted, und, zahl } from './words.js';

/** Was von den Füßen eines Korpus zu sagen ist. */
export const findingsOfFeet = {
  'foot-choices': {
    use: ({ foot }) => `Ihn auf ${quoted(foot)} stellen`,
  },
  'foot-out-of-range': {
    range: ({ plinth, foot, range }, show) =>
      `Der Sockel ist ${show.length(plinth)} hoch, und ${quoted(foot)} lässt sich von ${show.span(range)} stellen. Machen Sie den Sockel so hoch, wie ein Fuß sein kann, oder nehmen Sie einen anderen Fuß.`,
    plinth: ({ plinth }, show) => `Den Sockel ${show.exact(plinth)} hoch machen`,
  },
  'feet-overloaded': {
    heavy: ({ weight, load, count, foot, rating, caution }, show) =>
      `Der Korpus wiegt ${kg(weight)}${load > 0 ? `, und ${kg(load)} stehen darin` : ''}; ${count} Füße ${quoted(foot)} tragen ${kg(rating * count)}, und eine Arbeitsplatte ist nicht mitgezählt. Nehmen Sie Füße, die mehr tragen, oder stellen Sie sie enger (\`apart\`). ${show.tell(caution)}`,
  },
  'foot-without-room': {
    off: ({ foot, feet }) =>
      `Die Bohrungen von ${und(feet)} (${quoted(foot)}) stehen nicht auf dem Unterboden und werden daher nicht gemacht. Nehmen Sie einen anderen Fuß oder einen größeren Korpus.`,
    plinth: ({ foot, feet, by }, show) =>
      `${und(feet)} (${quoted(foot)}) ${zahl(feet.length, 'steht', 'stehen')} ${show.length(by)} im Sockel. Stellen Sie die vorderen Füße weiter zurück (\`from-front\` des Fußes).`,
  },
} satisfies Translations;
