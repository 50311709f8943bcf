import type { Translations } from '../tables.js';
import { et, kg, quoted } from './words.js';

const SANS_GARANTIE =
  'C’est une estimation d’après des valeurs publiées, non une note de calcul : le mur, la fixation et la charge sont à juger par une personne compétente.';

/** Constats sur les poids et les charges. */
export const findingsOfLoads = {
  loads: {
    weighs: ({ weight, load, doors }) =>
      `${[
        `Il pèse ${kg(weight)}, sans la quincaillerie`,
        ...(doors.length === 0 ? [] : [`dont ${et(doors.map((door) => `${door.name} ${kg(door.weight)}`))}`]),
        ...(load === 0 ? [] : [`et ${kg(load)} s’y trouvent`]),
      ].join(' ; ')}.`,
    sags: ({ panel, sag, limit, weight }, show) =>
      `${panel} fléchit de ${show.length(sag)} sous ${kg(weight)}, son propre poids compris ; la limite est de ${show.length(limit)}.`,
    reckoned: ({ creep }) => `Le fluage est compté à ${creep} fois la première flèche. ${SANS_GARANTIE}`,
    noApproval: () => SANS_GARANTIE,
  },
  'shelf-sags': {
    sags: ({ shelves, worst, load, creep, sag, limit, caution }, show) =>
      `${shelves.length === 1 ? worst : `${et(shelves)} fléchissent trop : ${worst}`} fléchit de ${show.length(sag)} sous ${charges(load)} et son propre poids, fluage compté à ${creep} fois la première flèche ; la limite est de ${show.length(limit)}. Raccourcissez la portée par une séparation, ou raidissez la tablette par un panneau plus épais ou une alaise. ${show.tell(caution)}`,
    thicker: ({ shelves, board }) => `Faire ${et(shelves)} en ${quoted(board)}`,
    divider: () => 'Mettre une séparation',
    lipping: ({ height }, show) => `Donner aux tablettes une alaise de ${show.exact(height)}`,
  },
  'door-too-heavy': {
    heavy: ({ doors, weight, hinges, hinge, rating, caution }, show) =>
      `${et(doors)} ${doors.length > 1 ? 'pèsent chacune' : 'pèse'} ${kg(weight)} ; ${hinges} charnières ${quoted(hinge)} portent au plus ${kg(rating * hinges)}. Prenez un panneau plus léger, plus de charnières (\`hinges-by-weight\`) ou une charnière de plus grand \`rating\`. ${show.tell(caution)}`,
    use: ({ hinge }) => `Monter les portes sur ${quoted(hinge)}`,
    lighter: ({ board }) => `Faire les portes en ${quoted(board)}`,
  },
  'hangs-too-heavy': {
    hangs: ({ weight, load, rating, bracket, caution }, show) =>
      `Le caisson pèse ${kg(weight)}${load > 0 ? `, et ${kg(load)} s’y trouvent` : ''} ; ses ferrures portent ensemble ${kg(rating)} (${bracket === null ? '\`bracket-rating\`' : quoted(bracket)}). Faites-le plus petit ou en panneau plus léger, mettez-y moins, ou prenez d’autres ferrures. ${show.tell(caution)}`,
  },
  'tips-when-open': {
    tips: ({ doors, drawers, open, before, weight, behind, caution }, show) => {
      const parts = et([...(doors > 0 ? ['portes'] : []), ...(drawers > 0 ? ['tiroirs'] : [])]);
      const ouverts = doors > 0 && drawers === 0 ? 'ouvertes' : 'ouverts';
      const weighing = doors > 0 && drawers > 0 ? 'l’ensemble' : `les ${parts}`;
      const has = doors > 0 && drawers > 0 ? 'a son' : 'ont leur';
      const laid = doors > 0 && drawers > 0 ? 'portes et tiroirs' : `les ${parts}`;
      const narrower = doors > 0 ? ' ou ses portes plus étroites' : '';
      return `Vide et ${parts} ${ouverts}, le caisson bascule en avant : ${weighing} (${kg(open)}) ${has} centre à ${show.length(before)} devant l’arête de basculement, le reste (${kg(weight)}) a le sien à ${show.length(behind)} derrière. Fixez-le au mur avant de poser ${laid}, ou faites-le plus profond${narrower}. ${show.tell(caution)}`;
    },
  },
} satisfies Partial<Translations>;

function charges({ spread, middle }: { readonly spread: number; readonly middle: number }): string {
  return et([...(spread > 0 ? [`${kg(spread)} répartis`] : []), ...(middle > 0 ? [`${kg(middle)} au milieu`] : [])]);
}
