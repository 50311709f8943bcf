import type { Translations } from '../tables.js';
import { et, nombre, quoted } from './words.js';

/** Ce qui est à dire de ce qui est à côté d’un caisson. */
export const findingsOfBeside = {
  'front-not-held': {
    loose: ({ fronts, angle }) =>
      `Aucune ${quoted(angle)} ne trouve place derrière ${et(fronts)}, donc rien ne tient ${nombre(fronts.length, 'ce panneau', 'ces panneaux')}. Faites-${nombre(fronts.length, 'le', 'les')} plus ${nombre(fronts.length, 'grand', 'grands')}, dégagez le coin derrière, ou prenez une autre équerre.`,
    slants: ({ fronts, angle }) =>
      `${et(fronts)} ${nombre(fronts.length, 'est', 'sont')} en biais devant l’angle, et ${quoted(angle)} est faite pour un coin d’équerre, donc rien ne ${nombre(fronts.length, 'le', 'les')} tient. Écrivez \`angles: none\` et vissez-${nombre(fronts.length, 'le', 'les')} de l’intérieur, au fond et au dessus.`,
    byHand: ({ fronts, angle, width, machine, least }, show) =>
      `Les perçages pour ${quoted(angle)} se font dans ce qui est derrière ${et(fronts)}, mais pas dans ${nombre(fronts.length, 'ce panneau', 'ces panneaux')} : ${show.length(width)} de large, et ${quoted(machine)} prend ${show.length(least)} et plus (\`panel\`). Vissez à la main à travers les équerres, une fois ${nombre(fronts.length, 'ce panneau ajusté', 'ces panneaux ajustés')} au mur.`,
    none: () => 'Écrire `angles: none` et les fixer autrement',
  },
  'beside-too-near': {
    near: ({ fronts, beside, gap, usual }, show) =>
      `${et(fronts)} ${nombre(fronts.length, 'est', 'sont')} à ${show.length(gap)} de ${beside}, et entre deux façades il y a ${show.length(usual)} (\`gap\`). À côté d’un panneau qui avance autant que les façades, il faut le jeu entier : donnez autant à \`reveal\`.`,
    reveal: ({ usual }, show) => `Laisser voir ${show.exact(usual)} des côtés`,
  },
} satisfies Translations;
