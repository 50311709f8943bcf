import type { Translations } from '../tables.js';
import { und, zahl } from './words.js';

/** Was von Kleiderstangen zu sagen ist. */
export const findingsOfWardrobes = {
  'wardrobe-rail-without-room': {
    meets: ({ rails, others, over }, show) =>
      `${und(others)} ${zahl(others.length, 'steht', 'stehen')} ${und(rails)} im Weg, oder in den ${show.length(over)} darüber, die Kleiderbügel zum Abheben brauchen. Verschieben Sie das eine oder das andere.`,
    off: ({ rails, uprights }) =>
      `Die Lager von ${und(rails)} stehen nicht auf ${und(uprights)}, und so ist nichts dafür gebohrt. Prüfen Sie die Höhe und den Abstand von vorn.`,
    noBay: ({ bay, bays }) =>
      `Für diese Stange gibt es kein Feld ${bay}: Der Korpus hat ${bays === 1 ? 'ein Feld' : `${bays} Felder`}.`,
    lower: ({ at }, show) => `Die Stange auf ${show.exact(at)} hinuntersetzen`,
  },
  'clothes-without-depth': {
    shallow: ({ rails, hanger, before, behind }, show) =>
      `Kleiderbügel von ${show.length(hanger)} Breite brauchen ${show.length(Math.floor(hanger / 2))} vor und hinter ${und(rails)}, und es sind ${show.length(before)} und ${show.length(behind)}. Verschieben Sie die Stange, oder machen Sie den Korpus tiefer.`,
    middle: () => 'Die Stange in die Mitte der Tiefe setzen',
  },
} satisfies Translations;
