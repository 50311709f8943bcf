import type { Translations } from '../tables.js';
import { et, quoted } from './words.js';

/** Ce qui est à dire des poignées. */
export const findingsOfPulls = {
  'pull-places': {
    usualPlace: ({ key }) => `Retirer \`${key}\` et mettre la poignée à sa place habituelle`,
    use: ({ pull }) => `Prendre là ${quoted(pull)}`,
  },
  'pull-off-front': {
    off: ({ pull, front, size, spacing }, show) =>
      `${quoted(pull)}${spacing === 0 ? '' : `, à l’entraxe de ${show.exact(spacing)},`} n’est pas sur ${front}, large de ${show.length(size[0])} et haute de ${show.length(size[1])} ; ${front} n’est donc pas percée pour elle. Mettez-la plus à l’intérieur, couchez-la autrement, ou prenez-en une plus courte.`,
    beyond: ({ pull, front, size, long, by }, show) =>
      `${quoted(pull)} est longue de ${show.exact(long)} et dépasse de ${show.length(by)} le chant de ${front}, large de ${show.length(size[0])} et haute de ${show.length(size[1])}. Mettez-la plus à l’intérieur, ou prenez-en une plus courte.`,
  },
  'pull-screw-meets': {
    meets: ({ pull, front, others, high, room }, show) =>
      `La tête d’une vis de ${quoted(pull)} dans ${front} vient devant ${et(others)}, où il n’y a ${room === 0 ? 'pas de place' : `que ${show.length(room)} de place`} pour ses ${show.exact(high)}. Mettez la poignée ailleurs, ou prenez-en une à vis de l’extérieur.`,
  },
} satisfies Translations;
