import type { Hole } from '../../machining/replay/bore.js';
import type { Side } from '../../machining/replay/solid.js';
import type { Show } from '../../words/show.js';
import type { Translations } from '../tables.js';
import { compte, dans, et, handOf, le, quoted, temps } from './words.js';

/** Ce qui se voit en rejouant les réglages, et la garniture commune des assemblages. */
export const replay = {
  replay: {
    depthOutOfRange: (one, show) => `La profondeur de ${show.exact(one.value)} ${outOfRange(one, show)}`,
    heightOutOfRange: (one, show) => `La hauteur de ${show.exact(one.value)} ${outOfRange(one, show)}`,
    fenceOutOfRange: (one, show) => `La distance du guide de ${show.exact(one.value)} ${outOfRange(one, show)}`,
    setbackOutOfRange: (one, show) => `Le retrait de tête de ${show.exact(one.value)} ${outOfRange(one, show)}`,
    headsOutOfRange: (one, show) => `La distance de deux têtes de ${show.exact(one.value)} ${outOfRange(one, show)}`,
    headsOutOfOrder: ({ machine }) => `Les têtes de ${quoted(machine)} ne sont pas en ordre de l’avant à l’arrière.`,
    throat: ({ machine, value, throat }, show) =>
      `Une tête est à ${show.exact(value)} du guide ; ${quoted(machine)} atteint ${show.exact(throat)}.`,
    noExtension: ({ machine }) => `${quoted(machine)} n’a pas de rallonge du guide.`,
    noHeight: ({ machine }) => `${quoted(machine)} n’a pas de hauteur à régler.`,
    heightMissing: ({ machine }) => `Le réglage ne donne pas de hauteur pour ${quoted(machine)}.`,
    fenceCount: ({ machine, wanted, given }) =>
      `${quoted(machine)} demande ${compte(wanted, 'distance du guide', 'distances du guide')} ; le réglage en donne ${given}.`,
    headCount: ({ machine, heads, given }) =>
      `${quoted(machine)} a ${compte(heads, 'tête')} ; le réglage en place ${given}.`,
    stopMissing: ({ machine, stop }) => `${quoted(machine)} n’a pas de butée ${quoted(stop)}.`,
    stopSide: ({ machine, stop, is, given }) =>
      `La butée ${quoted(stop)} de ${quoted(machine)} est ${handOf(is)}, et non ${handOf(given)}.`,
    stopOutOfRange: ({ stop, ...one }, show) =>
      `La butée ${quoted(stop)} à ${show.exact(one.value)} ${outOfRange(one, show)}`,
    stopPastExtension: ({ stop, ...one }, show) =>
      `Avec la rallonge, la butée ${quoted(stop)} à ${show.exact(one.value)} ${outOfRange(one, show)}`,
    stopsCross: ({ inner, outer }, show) =>
      `La butée ${quoted(inner.stop)} à ${show.exact(inner.position)} devrait dépasser ${quoted(outer.stop)} à ${show.exact(outer.position)}, plus loin sur le même guide.`,
    panelOutOfRange: ({ measure, ...one }, show) =>
      `${MEASURES[measure]} du panneau de ${show.exact(one.value)} ${outOfRange(one, show)}`,
    stopNotSet: ({ stop }) => `Le panneau doit être contre la butée ${quoted(stop)}, qui n’est pas réglée.`,
    otherSideAtStop: ({ stop, hand, comes, wanted }) =>
      `À la butée ${quoted(stop)} ${handOf(hand)} vient ${THE[comes]}, et non ${THE[wanted]}.`,
    noSpindle: () => 'Aucune broche n’est garnie.',
    headNotSet: ({ machine, head, heads }) =>
      `La tête ${head} n’est pas réglée : ${quoted(machine)} a ${compte(heads, 'tête réglée', 'têtes réglées')}.`,
    spindleMissing: ({ machine, spindle, spindles }) =>
      `${quoted(machine)} a les broches 1 à ${spindles}, et non ${spindle}.`,
    twoBits: (one) => `${spindleName(one)} porte deux mèches.`,
    bitImpossible: ({ diameter, ...one }, show) => `${spindleName(one)} porte une mèche de ${show.exact(diameter)}.`,
    moveNotOnLineDrill: ({ machine }) =>
      `${quoted(machine)} n’est pas une perceuse en ligne et n’avance pas de panneaux.`,
    moveWithoutPins: ({ machine, moved }, show) =>
      `${quoted(machine)} n’a pas de pions pour une avance de ${show.exact(moved)}.`,
    moveOffPitch: ({ moved, pitch }, show) =>
      `Une avance de ${show.exact(moved)} n’est pas un multiple du pas de ${show.exact(pitch)}.`,
    movePastRange: ({ machine, moved, most }, show) =>
      `Une avance de ${show.exact(moved)} est trop longue ; le maximum de ${quoted(machine)} est ${show.exact(most)}.`,
    noHoleForPins: () => 'Aucun trou de la rangée n’est encore percé pour les pions.',
    besidePanel: () => 'Chaque mèche descend à côté du panneau.',
    stopInTheWay: ({ stop, position }, show) =>
      `Le panneau est sur la butée ${quoted(stop)} à ${show.exact(position)}, ou finit contre elle, et elle ne s’abaisse pas.`,
    cutsEdge: ({ hole, across, along }, show) =>
      `${theHole(hole, show)} entame un chant du panneau, qui mesure là ${show.exact(across)} sur ${show.exact(along)}.`,
    throughLength: ({ hole }, show) => `${theHole(hole, show)} devrait traverser toute la longueur du panneau.`,
    notThrough: ({ hole, depth, deep }, show) =>
      `${theHole(hole, show)} doit traverser ${show.exact(deep)}, mais la butée de profondeur est à ${show.exact(depth)}.`,
    comesOut: ({ hole, depth, deep }, show) =>
      `${theHole(hole, show)} ressort de l’autre côté : il a ${show.exact(depth)} de profondeur dans ${show.exact(deep)}.`,
    boredTwice: ({ hole }, show) => `${theHole(hole, show)} est percé deux fois.`,
    missing: ({ missing }, show) => notBored(missing, show),
    extra: ({ extra }, show) => boredBeside(extra, show),
    missingAndExtra: ({ missing, extra }, show) => `${notBored(missing, show)} ${boredBeside(extra, show)}`,
  },
  'shared-load': {
    none: () =>
      'Cet atelier ne partage aucune garniture (`share-places: no`) : chaque assemblage prend ses propres places.',
    impossible: () =>
      'Cet atelier partage les places, mais aucune garniture ne sert à ses assemblages habituels sur ses têtes habituelles : chaque assemblage prend ses propres places.',
    load: ({ faces, ends, load }) =>
      `La garniture commune des assemblages habituels, sur ${quoted(faces)} et ${quoted(ends)}, comptée depuis un chant avant : ${spindles(load)}.`,
    beside: ({ load }) => `Pour les assemblages dos à dos avec d’autres : ${spindles(load)}.`,
    loadFor: ({ sizes, load }, show) =>
      `Pour les caissons profonds de ${et(sizes.map((size) => show.exact(size)))} : ${spindles(load)}.`,
    own: ({ seconds, fewestSetUps }) =>
      `Chaque assemblage prend ses propres places, car un lot prend ainsi le moins de temps : environ ${temps(seconds)} pour ses tourillons et ses changements de mèches, alors que la garniture qui a le moins de réglages prend environ ${temps(fewestSetUps)}.`,
    several: ({ faces, ends, count }) =>
      `Les ${count} garnitures communes des assemblages habituels, sur ${quoted(faces)} et ${quoted(ends)}, comptées depuis un chant avant.`,
    weighed: ({ seconds, fewestSetUps }) =>
      `Choisie d’après le temps d’un lot : environ ${temps(seconds)} pour ses tourillons et ses changements de mèches, alors que la garniture qui a le moins de réglages prend environ ${temps(fewestSetUps)}.`,
    fewest: ({ seconds }) =>
      `La garniture qui a le moins de réglages prend aussi le moins de temps pour un lot : environ ${temps(seconds)} pour ses tourillons et ses changements de mèches.`,
    deep: ({ size, places }, show) =>
      `  profond de ${show.exact(size)} avec le fond habituel : à ${et(places.map((place) => show.exact(place)))}.`,
    rail: ({ size, places }, show) =>
      `  traverses larges de ${show.exact(size)} : à ${et(places.map((place) => show.exact(place)))}.`,
    same: () =>
      'Le fichier antérieur a la même garniture : ce qui a été percé d’après lui peut être refait d’après celui-ci.',
    changed: ({ before, now }) =>
      `Le fichier antérieur a une autre garniture : ${allOf(before)} avant, ${allOf(now)} à présent. Un panneau refait d’après ce fichier ne va pas avec un panneau percé d’après l’antérieur : gardez le fichier antérieur pour les reprises.`,
    placed: ({ before, now }, show) =>
      `Le fichier antérieur a les mêmes broches à d’autres places : premier perçage à ${show.exact(before.first)} et pas de ${show.exact(before.pitch)} avant, ${show.exact(now.first)} et ${show.exact(now.pitch)} à présent. Gardez le fichier antérieur pour les reprises.`,
  },
} satisfies Translations;

type Loads = readonly (readonly number[])[];
const spindles = (load: readonly number[]): string => `broches ${et(load.map((k) => String(k + 1)))}`;
const allOf = (loads: Loads): string => (loads.length === 0 ? 'aucune' : et(loads.map(spindles)));

const MEASURES = { length: 'La longueur', width: 'La largeur', thickness: 'L’épaisseur' } as const;
const THE: Readonly<Record<Side, string>> = {
  front: le('front edge'),
  back: le('back edge'),
  'reference-end': le('bottom or left end'),
  'far-end': 'le bout supérieur ou droit',
  inside: le('inside face'),
  outside: le('outside face'),
};
const IN: Readonly<Record<Side, string>> = {
  front: dans('front edge'),
  back: dans('back edge'),
  'reference-end': dans('bottom or left end'),
  'far-end': 'dans le bout supérieur ou droit',
  inside: dans('inside face'),
  outside: dans('outside face'),
};

interface OutOfRange {
  readonly machine: string;
  readonly range: { readonly min: number; readonly max: number };
}
const outOfRange = ({ machine, range }: OutOfRange, show: Show): string =>
  `est hors de la plage de ${quoted(machine)}, ${show.exact(range.min)} à ${show.exact(range.max)}.`;

const spindleName = ({ head, spindle }: { readonly head: number | null; readonly spindle: number }): string =>
  head === null ? `La broche ${spindle}` : `La broche ${spindle} de la tête ${head}`;

const theHole = ({ face, u, v, diameter }: Hole, show: Show): string =>
  `Le trou de ${show.exact(diameter)} à ${show.exact(u)}, ${show.exact(v)} ${IN[face]}`;

const MOST_LISTED = 3;
function listedHoles(holes: readonly Hole[], show: Show): string {
  const shown = holes.slice(0, MOST_LISTED).map(({ face, u, v, diameter, depth, through }) => {
    const deep = through ? 'traversant' : `× ${show.exact(depth)}`;
    return `${show.exact(diameter)} ${deep} à ${show.exact(u)}, ${show.exact(v)} ${IN[face]}`;
  });
  const more = holes.length - shown.length;
  return [...shown, ...(more > 0 ? [`et ${more} de plus`] : [])].join(' ; ');
}
const notBored = (holes: readonly Hole[], show: Show): string =>
  `${compte(holes.length, 'trou n’est pas percé', 'trous ne sont pas percés')} : ${listedHoles(holes, show)}.`;
const boredBeside = (holes: readonly Hole[], show: Show): string =>
  `${compte(holes.length, 'trou est percé', 'trous sont percés')} qu’aucun plan de perçage ne montre : ${listedHoles(holes, show)}.`;
