import type { Translations } from '../tables.js';
import { et } from './words.js';

/** Ce qu'il y a à dire des tringles. */
export const findingsOfWardrobes = {
  'wardrobe-rail-without-room': {
    meets: ({ rails, others, over }, show) =>
      `${et(others)} ${others.length === 1 ? 'gêne' : 'gênent'} ${et(rails)}, ou prend les ${show.length(over)} au-dessus qu’il faut pour décrocher un cintre. Déplacez l’un ou l’autre.`,
    off: ({ rails, uprights }) =>
      `Les supports de ${et(rails)} ne sont pas sur ${et(uprights)}, et rien n’est donc percé pour eux. Vérifiez la hauteur et la distance depuis l’avant.`,
    noBay: ({ bay, bays }) =>
      `Il n’y a pas de travée ${bay} pour cette tringle : le caisson en a ${bays === 1 ? 'une seule' : bays}.`,
    lower: ({ at }, show) => `Descendre la tringle à ${show.exact(at)}`,
  },
  'clothes-without-depth': {
    shallow: ({ rails, hanger, before, behind }, show) =>
      `Des cintres larges de ${show.length(hanger)} demandent ${show.length(Math.floor(hanger / 2))} devant et derrière ${et(rails)}, et il y a ${show.length(before)} et ${show.length(behind)}. Déplacez la tringle, ou faites le caisson plus profond.`,
    middle: () => 'Mettre la tringle au milieu de la profondeur',
  },
} satisfies Translations;
