import type { Translations } from '../tables.js';
import { et, quoted } from './words.js';

/** Ce qu'il y a à dire de ce qui suspend un caisson. */
export const findingsOfHanging = {
  'bracket-choices': {
    use: ({ bracket }) => `Le suspendre avec ${quoted(bracket)}`,
  },
  'bracket-without-room': {
    off: ({ bracket, sides, high, deep }, show) =>
      `Un perçage de ${quoted(bracket)} n’est pas sur ${et(sides)}, de ${show.length(high)} de haut et ${show.length(deep)} de profondeur, et rien n’est donc percé pour elle. Prenez une autre ferrure, ou un caisson plus grand.`,
    meets: ({ bracket, sides, others }) =>
      `${quoted(bracket)} n’a pas de place sur ${et(sides)} : ${et(others)} ${others.length === 1 ? 'se trouve' : 'se trouvent'} là où elle se visse. Déplacez ${others.length === 1 ? 'cette pièce' : 'ces pièces'}, ou prenez une autre ferrure.`,
  },
} satisfies Translations;
