import type { Translations } from '../tables.js';
import { quoted, und, zahl } from './words.js';

/** Was von dem zu sagen ist, woran ein Korpus hängt. */
export const findingsOfHanging = {
  'bracket-choices': {
    use: ({ bracket }) => `Ihn mit ${quoted(bracket)} aufhängen`,
  },
  'bracket-without-room': {
    off: ({ bracket, sides, high, deep }, show) =>
      `Eine Bohrung von ${quoted(bracket)} steht nicht auf ${und(sides)}, ${show.length(high)} hoch und ${show.length(deep)} tief, und so ist nichts dafür gebohrt. Nehmen Sie einen anderen Aufhänger oder einen größeren Korpus.`,
    meets: ({ bracket, sides, others }) =>
      `${quoted(bracket)} hat auf ${und(sides)} keinen Platz: ${und(others)} ${zahl(others.length, 'steht', 'stehen')}, wo er angeschraubt wird. Verschieben Sie ${others.length === 1 ? 'das eine' : 'sie'}, oder nehmen Sie einen anderen Aufhänger.`,
  },
} satisfies Translations;
