import { inOneNotation } from '../../length/show.js';
import type { Show } from '../../words/show.js';
import type { Translations } from '../tables.js';
import { labels } from './drawing-labels.js';
import { bare, compte, et, from, le, nombre, runs } from './words.js';

const upper = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** Ce qui est écrit sur les dessins et à côté. */
export const drawing = {
  drawing: {
    faceThatLooks: ({ face, looks }) =>
      `face ${face === 'inside' ? 'intérieure' : 'extérieure'} (${LOOKS[looks] ?? looks})`,
    faceInColumn: ({ face, looks }) => `${face === 'inside' ? 'intérieure' : 'extérieure'} (${LOOKS[looks] ?? looks})`,
    stopNamed: ({ name }) => `butée ${name}`,
    faceUp: ({ face }) => `${upper(bare(face))} dessus`,
    scale: ({ scale }) => `Échelle 1:${scale}`,
    notToScale: () => 'Sans échelle',
    rowHole: ({ line }) => (line === 'front' ? 'rangée avant' : 'rangée arrière'),
    joinedTo: ({ use, panel }) => `${use} vers ${panel}`,
    bore: ({ use, place, fitting, diameter, depth, surface, u, edge, v, from: end }, show) => {
      const what = [
        upper(use),
        ...(place === null ? [] : [`trou ${place.hole} sur ${place.of}`]),
        ...(fitting === null ? [] : [fitting]),
      ].join(', ');
      const deep = depth === null ? 'traversant' : `profond de ${show.exact(depth)}`;
      return `${what} : Ø ${show.nominal(diameter)}, ${deep}. ${upper(bare(surface))}, à ${show.exact(u)} ${from(edge)}, ${show.exact(v)} ${from(end)}.`;
    },
  },
  'bore-map': {
    title: ({ carcass, panel }) => `${carcass}, ${panel}`,
    fromEdge: ({ edges }, { unit }) => `Depuis ${edges.map(le).join(' / ')}, ${unit}`,
    fromEnd: ({ end }, { unit }) => `Depuis ${le(end)}, ${unit}`,
    fromEndOrOutside: ({ end }, { unit }) => `Depuis ${le(end)} ou l’extérieur, ${unit}`,
    diameter: (_, { unit }) => `Ø en ${unit}`,
    depth: (_, { unit }) => `Profondeur, ${unit}`,
    run: ({ first, last, by }) => `${first} à ${last} tous les ${by}`,
    banded: ({ bands }) => bands.map(({ band, edges }) => `${et(edges.map(bare))} avec ${band}`).join(' ; '),
    shelfOnHole: ({ shelf, hole, of }) => `${shelf} sur le trou ${hole} sur ${of}`,
    edge: ({ edge }) => upper(bare(edge)),
    bareEdge: ({ edge }) => `${upper(bare(edge))}, nu`,
    bandedEdge: ({ edge, band }) => `${upper(bare(edge))}, ${band}`,
    standing: ({ face, edge, end, edgeOn }) =>
      `${upper(bare(face))} dessus ; ${bare(edge)} ${WAYS[edgeOn]}, ${bare(end)} en bas.`,
    lying: ({ face, edge, end, endOn }) =>
      `${upper(bare(face))} dessus ; ${bare(edge)} vers vous, ${bare(end)} ${WAYS[endOn]}.`,
    allPanels: () =>
      'Chaque panneau sur la face qui a le plus de perçages ; les montants comme ils sont debout, les horizontaux le chant avant vers vous.',
    dashed: ({ face }) => `Les cercles en tirets sont percés de l’autre côté : ${bare(face)}.`,
    folded: ({ face }) => `Les bouts sont dépliés ; en travers, les cotes comptent depuis ${le(face)}.`,
    figures: ({ edge, end }, { unit }) =>
      `Cotes en ${unit === 'mm' ? 'millimètres' : 'pouces, décimales au millième'}, depuis ${le(edge)} et ${le(end)}.`,
    allFolded: () =>
      'Les bouts sont dépliés ; en travers, les cotes comptent depuis la face extérieure. Les cercles en tirets sont percés depuis la face de dessous.',
    allFigures: ({ hasDrawers }) =>
      `Les cotes le long d’un panneau comptent depuis le bout inférieur d’un montant${hasDrawers ? ', le bout avant d’un côté de tiroir' : ''} et le bout gauche de tout autre.`,
    corner: ({ edge, end, bored, along, across, finished, band }, show) => {
      const write = inOneNotation([along, across, ...finished], show.reader);
      const sawn = `${bored ? 'Le percer entier, puis scier' : 'Scier'} le coin de ${bare(edge)} et ${bare(end)} : ${write(along)} ${show.unit} le long de ${bare(edge)}, ${write(across)} ${show.unit} le long de ${bare(end)}`;
      return band === null
        ? `${sawn}.`
        : `${sawn}. Avec ${band} dessus, le chant en biais finit alors à ${write(finished[0])} et ${write(finished[1])} ${show.unit}.`;
    },
    groove: ({ kind, from: start, to, depth, edge }, show) => {
      const write = inOneNotation([start, to], show.reader);
      return `${kind === 'groove' ? 'Rainure' : 'Feuillure'} sur la face intérieure, de ${write(start)} à ${write(to)} ${show.unit} ${from(edge)}, profonde de ${show.exact(depth)}.`;
    },
    note: ({ note }) => `Note : ${note}`,
    described: ({ title, caption, facts, bores, findings }) =>
      [
        `${title}.`,
        caption,
        facts.map(({ word, value }) => `${word} : ${value}.`).join(' '),
        `${bores === 1 ? 'Un perçage' : `${bores} perçages`}.`,
        findings.length === 0 ? 'Aucun constat.' : `Constats : ${findings.join(' ')}`,
      ].join(' '),
  },
  'machine-view': {
    liesAtHead: ({ up, edge, end, stop }) =>
      `${upper(bare(up))} dessus, ${bare(end)} pressé contre la tête, ${bare(edge)} contre ${stop}.`,
    liesAtStop: ({ up, edge, end, stop }) =>
      `${upper(bare(up))} dessus, ${bare(edge)} contre le guide, ${bare(end)} contre ${stop}.`,
    liesMoved: ({ up, edge, end, stop, by, past }, show) =>
      `${upper(bare(up))} dessus, ${bare(edge)} contre le guide, ${bare(end)} ${offStop({ by, past, stop }, show)}.`,
    head: ({ number }) => `tête ${number}`,
    spindle: ({ number }) => `broche ${number}`,
    spindleOfHead: ({ head, number }) => `${head}, broche ${number}`,
    indexArrow: ({ by, way }) => `Avance de ${by} ${TO[way]}`,
    halfTurn: ({ face }) => `Tourné de 180°, ${bare(face)} toujours dessous`,
    holeMade: ({ bore }) => `${bore} Déjà percé.`,
    holeNow: ({ bore }) => `${bore} Percé dans cette descente.`,
    holeToCome: ({ bore }) => `${bore} Encore à percer.`,
    spindleEmpty: ({ spindle }) => `${upper(spindle)} : vide.`,
    spindleBeside: ({ spindle, diameter, comes }, show) =>
      `${upper(spindle)} : garnie de Ø ${show.nominal(diameter)} ; ${COMES[comes]} à côté du panneau.`,
    spindleBores: ({ spindle, diameter, bore }, show) =>
      `${upper(spindle)} : garnie de Ø ${show.nominal(diameter)}. ${bore}`,
    step: ({ carcass, panel, machine, step, of }) => `${carcass}, ${panel}, sur ${machine}, étape ${step} sur ${of}.`,
    size: ({ length, width, thickness }, show) =>
      `${show.exact(length)} sur ${show.exact(width)} sur ${show.exact(thickness)}.`,
    stops: ({ stops }, show) => {
      const told = stops.map(({ name, side, at, used, lowered }) => {
        const state = [...(used ? ['en service'] : []), ...(lowered ? ['abaissée'] : [])];
        return `${name} ${WAYS[side]} à ${show.exact(at)}${state.length > 0 ? `, ${et(state)}` : ''}`;
      });
      return `Butées : ${et(told)}.`;
    },
    headsFromFence: ({ places }, show) =>
      `${et(places.map((place, head) => `tête ${head + 1} à ${show.exact(place)} du guide`))}.`,
    firstSpindleFromFence: ({ place }, show) => `première broche à ${show.exact(place)} du guide.`,
    spindlesHigh: ({ height }, show) => `Broches à ${show.exact(height)} au-dessus de la table.`,
    clamps: ({ clamps }) =>
      `Presseurs : ${et(clamps.map(({ name, holds }) => `${name} ${holds ? 'tient le panneau' : 'appuie à côté du panneau'}`))}.`,
    madeBefore: ({ made, of }) => `${made} de ses ${of} trous sont déjà percés.`,
    keepClear: () => 'Garder les mains loin des broches et des presseurs.',
    pushThenMove: ({ stop, ...move }, show) => `Le pousser contre ${stop}, puis avancer : ${indexMove(move, show)}.`,
    turnOver: ({ face, edge }) => `Le retourner : ${le(face)} vient dessus, ${le(edge)} reste la référence.`,
    turnHalfToHead: ({ face, end, edge, stop }) =>
      `Le tourner de 180 degrés sur la table : ${le(face)} reste dessous, ${le(end)} vient à la tête, ${le(edge)} contre ${stop}.`,
    turnHalf: ({ face, end, stop }) =>
      `Le tourner de 180 degrés sur la table : ${le(face)} reste dessous, ${le(end)} vient contre ${stop}.`,
    turnQuarter: ({ face, end, edge, stop }) =>
      `Le tourner de 90 degrés sur la table : ${le(face)} reste dessous, ${le(edge)} vient au guide, ${le(end)} contre ${stop}.`,
    slideToHead: ({ end, edge, stop }) =>
      `Le glisser, sans le tourner : ${le(end)} vient à la tête, ${le(edge)} contre ${stop}.`,
    slide: ({ end, stop }) => `Le glisser, sans le tourner : ${le(end)} vient contre ${stop}.`,
    leave: () => 'Le laisser où il est.',
    indexMove: (move, show) => `Avance : ${indexMove(move, show)}.`,
    bores: ({ parts, depth, through, upward }, show) =>
      `${upper(et(parts.map(({ spindles, count, diameter }) => `${spindlesTold(spindles)} ${nombre(count, 'perce', 'percent')} ${compte(count, 'trou')} Ø ${show.nominal(diameter)}`)))}, ${through ? 'traversants' : `profonds de ${show.exact(depth)}`}${upward ? ', par-dessous' : ''}.`,
    lower: ({ stops }) => `Abaisser ${et(stops)}, pour libérer le passage du panneau.`,
    beside: ({ spindles, count, comes }) =>
      `${upper(spindlesTold(spindles))} ${nombre(count, 'est garnie aussi et', 'sont garnies aussi et')} ${nombre(count, COMES[comes], COME[comes])} à côté du panneau.`,
    unheld: () => 'Aucun presseur n’appuie sur le panneau : le tenir dans un gabarit.',
    extension: () => 'La rallonge du guide est en place.',
    done: () => 'Après cette descente, le panneau a tous ses trous.',
    open: ({ holes }) => `${compte(holes, 'trou reste', 'trous restent')} à percer.`,
  },
  'shop-view': {
    spindles: ({ spindles, pitch }, show) => `${spindles} tous les ${show.nominal(pitch)}`,
    bitsFrom: ({ from: where }) => (where === 'above' ? 'par-dessus' : 'par-dessous'),
    heads: ({ heads }) => compte(heads, 'tête'),
    span: ({ min, max }, { reader, unit }) => {
      const write = inOneNotation([min, max], reader);
      return `${write(min)} à ${write(max)} ${unit}`;
    },
    headRange: ({ head, min, max }) =>
      head === null ? `${min} à ${max} du guide` : `Tête ${head} : ${min} à ${max} du guide`,
    reaches: ({ throat }) => `atteint ${throat}`,
    stopRange: ({ stop, min, max }) => `${stop} : ${min} à ${max}`,
    spindlesInPlate: ({ head, spindles }) => `${spindlesOf({ head, spindles })} dans la plaque.`,
    spindlesFromFence: ({ head, spindles, min, max }, show) =>
      `${spindlesOf({ head, spindles })}, la première à ${show.exact(min)} à ${show.exact(max)} du guide.`,
    stop: ({ stop, side, min, max }, show) => `Butée ${stop} ${WAYS[side]}, ${show.exact(min)} à ${show.exact(max)}.`,
    clamp: ({ clamp }) => `Presseur ${clamp}.`,
    ofBuiltInShop: ({ kind }) => `${kind}, de l’atelier intégré`,
    hasFault: () => 'Le texte de cette machine a une erreur.',
    ofJob: () => 'Un fichier de travail n’a pas de machines à lui. Ouvrez le fichier d’atelier (NAME.shop.yaml).',
    noMachines: () => 'Cet atelier n’a pas encore de machines. Écrivez-en une sous `vertical-heads:`.',
  },
} satisfies Translations;

const LOOKS: Readonly<Record<string, string>> = {
  left: 'à gauche',
  right: 'à droite',
  upper: 'dessus',
  lower: 'dessous',
};
const WAYS = { left: 'à gauche', right: 'à droite' } as const;
const TO = { left: 'vers la gauche', right: 'vers la droite' } as const;
const COMES = { down: 'descend', up: 'monte', out: 'sort' } as const;
const COME = { down: 'descendent', up: 'montent', out: 'sortent' } as const;

interface Move {
  readonly by: number;
  readonly way: keyof typeof TO;
  readonly pitches: number;
  readonly on: keyof typeof labels.pins;
}
export const indexMove = ({ by, way, pitches, on }: Move, show: Show): string =>
  `${show.exact(by)} ${TO[way]}, ${compte(pitches, 'pas', 'pas')}${labels.pins[on]}`;
interface Off {
  readonly by: number;
  readonly past: boolean;
  readonly stop: string;
}
export const offStop = ({ by, past, stop }: Off, show: Show): string =>
  `${show.exact(by)} ${past ? 'au-delà de' : 'en deçà de'} ${stop}`;

type Spindles =
  | { readonly kind: 'one' }
  | { readonly kind: 'alone' | 'on-both'; readonly numbers: readonly number[] }
  | {
      readonly kind: 'on-heads';
      readonly byHead: readonly { readonly head: string; readonly numbers: readonly number[] }[];
    };
function spindlesTold(spindles: Spindles): string {
  switch (spindles.kind) {
    case 'one':
      return 'la broche';
    case 'alone':
      return `${nombre(spindles.numbers.length, 'broche', 'broches')} ${runs(spindles.numbers)}`;
    case 'on-both':
      return `broches ${runs(spindles.numbers)} des deux têtes`;
    case 'on-heads': {
      const count = spindles.byHead.reduce((sum, { numbers }) => sum + numbers.length, 0);
      const lists = spindles.byHead.map(({ head, numbers }) => `${runs(numbers)} (${head})`);
      return `${nombre(count, 'broche', 'broches')} ${lists.join(', ')}`;
    }
  }
}
const spindlesOf = ({ head, spindles }: { readonly head: number | null; readonly spindles: number }): string =>
  `${head === null ? '' : `Tête ${head} : `}${spindles === 1 ? 'une broche' : `${spindles} broches`}`;
