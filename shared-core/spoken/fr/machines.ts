import type { Show } from '../../words/show.js';
import type { Translations } from '../tables.js';
import { MACHINES } from './text.js';
import { compte, handOf, nombre, noun, quoted } from './words.js';

/** Pourquoi aucun réglage ne perce quelque chose. */
export const machines = {
  'no-set-up': {
    outsidePanel: () =>
      'Un perçage doit être dans son panneau, et un perçage borgne doit y finir. Déplacez-le, ou faites-le moins profond.',
    noMachine: ({ kind }) =>
      `Il manque ${noun(MACHINES[kind]).a} au fichier d’atelier. Ajoutez la machine si l’atelier l’a.`,
    panelSize: ({ machine, measure, range, needed }, show) =>
      `${quoted(machine)} prend des panneaux entre ${between(range, show)} ${LONG[measure]} (\`panel\`) ; celui-ci mesure ${show.length(needed)} ${LONG[measure]}. Changez sa taille, ou choisissez une autre machine (\`machines\`).`,
    noBit: ({ bit }, show) =>
      `Le fichier d’atelier n’a pas de mèche de ${show.nominal(bit)} (\`bits\`). Prenez une autre ferrure, ou ajoutez la mèche si l’atelier l’a.`,
    depth: ({ machine, range, needed }, show) =>
      `${quoted(machine)} perce entre ${between(range, show)} de profondeur (\`depth\`) ; il faut ${show.length(needed)}. Changez la profondeur des perçages (\`face-depth\`, \`end-depth\` ou la ferrure). ${BY_MANUAL}`,
    rowDepth: ({ machine, range, needed }, show) =>
      `${quoted(machine)} perce entre ${between(range, show)} de profondeur (\`depth\`) ; il faut ${show.length(needed)}. Changez la profondeur des rangées (\`row-depth\` dans le fichier d’atelier). ${BY_MANUAL}`,
    faceTooFar: ({ machine, spindles, most, needed }, show) =>
      `${spindle(spindles, machine)} ${nombre(spindles, 'atteint', 'atteignent')} ${show.length(most)} au plus depuis le guide (\`spindles\`) ; il faut ${show.length(needed)}. Déplacez les perçages vers l’avant (\`dowels\`), ou choisissez une tête à plus de broches (\`machines: faces\`).`,
    fenceOffset: ({ machine, range, needed }, show) =>
      `Aucune distance au guide de ${quoted(machine)} entre ${between(range, show)} (\`fence-offset\`) ne met des broches sur ces perçages, le premier à ${show.length(needed)} du chant avant. Déplacez les perçages sous les broches (\`dowels\`). ${BY_MANUAL}`,
    faceStops: ({ machine, side, needed }, show) =>
      `Aucune butée de ${quoted(machine)} ${handOf(side)} ne se règle à ${show.length(needed)} des broches (\`stops\`). Déplacez les perçages, ou indiquez la butée si la machine en a une là.`,
    height: ({ machine, range, needed }, show) =>
      `Les broches de ${quoted(machine)} se règlent entre ${between(range, show)} au-dessus de la table (\`height\`) ; il faut ${show.length(needed)}. Prenez un panneau d’une autre épaisseur, ou une autre tête (\`machines: ends\`). ${BY_MANUAL}`,
    endTooFar: ({ machine, spindles, most, needed }, show) =>
      `${spindle(spindles, machine)} ${nombre(spindles, 'atteint', 'atteignent')} ${show.length(most)} au plus depuis la butée d’équerre (\`spindles\`) ; il faut ${show.length(needed)}. Déplacez les perçages vers l’avant (\`dowels\`), ou choisissez une tête à plus de broches (\`machines: ends\`).`,
    noSquaringStop: ({ machine, side }) =>
      `${quoted(machine)} n’a pas de butée d’équerre ${handOf(side)}, où vient le chant avant (\`stops\`). Ajoutez-la au fichier d’atelier si la machine en a une.`,
    squaringStops: ({ machine, side, needed }, show) =>
      `Aucune butée d’équerre de ${quoted(machine)} ${handOf(side)} (\`stops\`) ne met des broches sur ces perçages, le premier à ${show.length(needed)} du chant avant. Déplacez les perçages (\`dowels\`), ou indiquez la butée si la machine en a une là.`,
    pitch: ({ machine, has, needed }, show) =>
      `Les broches de ${quoted(machine)} sont écartées de ${show.nominal(has)} (\`pitch\`) ; la rangée demande ${show.nominal(needed)}. Choisissez une perceuse à ce pas (\`machines: rows\`).`,
    throat: ({ machine, most, needed }, show) =>
      `Les têtes de ${quoted(machine)} atteignent ${show.length(most)} au plus depuis le chant avant (\`throat\`) ; il faut ${show.length(needed)}. Déplacez la rangée vers l’avant (\`rear-row\`). ${BY_MANUAL}`,
    heads: ({ machine, heads, range, needed }, show) =>
      `${quoted(machine)} a ${compte(heads, 'tête')} (\`heads\`), entre ${between(range, show)} du chant avant ; il faut ${show.length(needed)}. Supprimez la rangée arrière (\`rows: front\`), ou choisissez une perceuse à plus de têtes (\`machines: rows\`).`,
    setback: ({ machine, range, needed }, show) =>
      `La première tête de ${quoted(machine)} se règle entre ${between(range, show)} du chant avant (\`setback\`), et aucune tête n’atteint ${show.length(needed)}. Déplacez la rangée (\`row-setback\`). ${BY_MANUAL}`,
    headDistance: ({ machine, range, needed }, show) =>
      `Les têtes de ${quoted(machine)} se règlent à un écart entre ${between(range, show)} (\`head-distance\`) ; il faut ${show.length(needed)}. Déplacez la rangée arrière (\`rear-row\`). ${BY_MANUAL}`,
    rowStops: ({ machine, side, needed }, show) =>
      `Aucune butée de ${quoted(machine)} ${handOf(side)} (\`stops\`) ne met une broche sur le premier trou, à ${show.length(needed)} de ce bout. Changez \`row-offset\`, ou indiquez la butée si la machine en a une là.`,
    noIndexPins: ({ machine, holes, spindles }) =>
      `La rangée a ${holes} trous, plus que n’en ${nombre(spindles, 'perce', 'percent')} depuis les butées ${nombre(spindles, 'la broche', `les ${spindles} broches`)} de ${quoted(machine)}, et la perceuse n’a pas de pions pour l’avance (\`index-pins\`). Faites la rangée plus courte, ou choisissez une perceuse qui a ces pions (\`machines: rows\`).`,
    indexRange: ({ machine, holes, spindles, most, needed }, show) =>
      `La rangée a ${holes} trous, plus que n’en ${nombre(spindles, 'perce', 'percent')} en une descente ${nombre(spindles, 'la broche', `les ${spindles} broches`)} de ${quoted(machine)}. Il faudrait avancer le panneau de ${show.length(needed)}${most === null ? '' : ` ; le maximum est ${show.length(most)}`} (\`index-range\`). Faites la rangée plus courte (\`height\`, \`row-offset\`). ${BY_MANUAL}`,
    stopHeld: ({ machine }) =>
      `La butée de ${quoted(machine)} contre laquelle repose le panneau ne peut être abaissée pour l’avance (\`lowers\`). Écrivez \`lowers: yes\` à côté d’elle dans le fichier d’atelier si la machine le permet.`,
    cupDistance: ({ machine, range, needed }, show) =>
      `Le guide de ${quoted(machine)} se règle entre ${between(range, show)} du boîtier (\`distance\`) ; il faut ${show.length(needed)}. Déplacez les boîtiers (\`reveal\` ou \`gap\` des portes). ${BY_MANUAL}`,
    cupNoStops: ({ machine }) =>
      `${quoted(machine)} n’a pas de butées dans le fichier d’atelier (\`stops\`) ; rien ne dit donc où vient un boîtier le long du chant. Ajoutez ses butées.`,
    cupStops: ({ machine, ends: [near, far] }, show) =>
      `Le boîtier est à ${show.length(near)} d’un bout de la porte et à ${show.length(far)} de l’autre, et aucune butée de ${quoted(machine)} ne s’y règle (\`stops\`). Indiquez la butée si la machine en a une là, ou prenez des portes moins hautes, l’une sur l’autre (\`fronts\`).`,
  },
  tolerance: {
    notCarriedOut: ({ panel }) => `Les réglages pour ${panel} ne peuvent être exécutés.`,
    halfBored: () => 'Aucun réglage ne perce les deux moitiés d’une de ses places.',
  },
} satisfies Translations;

const BY_MANUAL = 'N’élargissez la plage dans le fichier d’atelier que si la notice de la machine le permet.';
const LONG = { length: 'de longueur', width: 'de largeur', thickness: 'd’épaisseur' } as const;
const between = ({ min, max }: { readonly min: number; readonly max: number }, show: Show): string =>
  `${show.length(min)} et ${show.length(max)}`;
const spindle = (count: number, machine: string): string =>
  `${nombre(count, 'La broche (1)', `Les ${count} broches`)} de ${quoted(machine)}`;
