import type { Translations } from '../tables.js';

import { et, kg, quoted } from './words.js';

/** Ce qu'il y a à dire des pieds d'un caisson. */
export const findingsOfFeet = {
  'foot-choices': {
    use: ({ foot }) => `Le poser sur ${quoted(foot)}`,
  },
  'foot-out-of-range': {
    range: ({ plinth, foot, range }, show) =>
      `La plinthe a ${show.length(plinth)} de haut, et ${quoted(foot)} se règle de ${show.span(range)}. Faites la plinthe aussi haute qu’un pied peut l’être, ou prenez un autre pied.`,
    plinth: ({ plinth }, show) => `Faire la plinthe haute de ${show.exact(plinth)}`,
  },
  'feet-overloaded': {
    heavy: ({ weight, load, count, foot, rating, caution }, show) =>
      `Le caisson pèse ${kg(weight)}${load > 0 ? `, et ${kg(load)} s’y trouvent` : ''} ; ${count} pieds ${quoted(foot)} portent ${kg(rating * count)}, plan de travail non compté. Prenez des pieds qui portent plus, ou rapprochez-les (\`apart\`). ${show.tell(caution)}`,
  },
  'foot-without-room': {
    off: ({ foot, feet }) =>
      `Les perçages de ${et(feet)} (${quoted(foot)}) ne sont pas sur le dessous et ne sont donc pas faits. Prenez un autre pied, ou un caisson plus grand.`,
    plinth: ({ foot, feet, by }, show) =>
      `${et(feet)} (${quoted(foot)}) ${feet.length === 1 ? 'entre' : 'entrent'} de ${show.length(by)} dans la plinthe. Reculez les pieds avant (\`from-front\` du pied).`,
  },
} satisfies Translations;
