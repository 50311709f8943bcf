import type { Show } from '../../words/show.js';
import type { Translations } from '../tables.js';
import { indexMove, offStop } from './drawing.js';
import { labels } from './drawing-labels.js';
import { bare, compte, et, le, nombre, noun, runs, temps } from './words.js';

const upper = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** Ce que disent les documents des machines. */
export const setUp = {
  'set-up': {
    goStanding: ({ machine }) => `Aller à ${machine}, réglée comme le dit le fichier d’atelier.`,
    goFresh: ({ machine }) => `Aller à ${machine} et tout régler.`,
    turnHead: ({ machine }) =>
      `Tourner la tête sur ${machine} et la régler de nouveau ; les mèches indiquées restent en place.`,
    extensionOn: () => 'Mettre la rallonge du guide.',
    extensionOff: () => 'Retirer la rallonge du guide.',
    setPlaces: ({ settings }) => `Régler : ${placed(settings)}.`,
    setStops: ({ settings }) => `Mettre : ${placed(settings)}.`,
    setDepth: ({ depth }, show) => `Régler la butée de profondeur à ${show.exact(depth)}.`,
    setDepthThrough: ({ depth }, show) => `Régler la butée de profondeur pour traverser ${show.exact(depth)}.`,
    throughDepth: ({ depth }, show) => `à travers ${show.exact(depth)}`,
    inBoards: ({ thickness }, show) => `dans des panneaux de ${show.exact(thickness)}`,
    stopToSpindle: ({ spindle }) => `de sa face à la broche ${spindle}`,
    bitsOut: ({ bits }, show) => `Retirer : ${bitsTold(bits, 'de', show)}.`,
    bitsIn: ({ bits }, show) => `Mettre : ${bitsTold(bits, 'sur', show)}.`,
    bits: ({ bits }, show) => bitsTold(bits, 'sur', show),
    changeMarked: ({ seconds }) => `Changer tout ce qui porte * (${temps(seconds)}) :`,
    nothingToChange: () => 'Rien à changer :',
    counted: ({ from }) => `Les broches se comptent à partir ${from} ; celles qui ne sont pas indiquées sont vides.`,
    notInUse: ({ stops }) => `Hors service, à écarter du passage : ${et(stops)}.`,
    heading: ({ number, of, setUp: name }) => `Réglage ${number} sur ${of} : ${name}`,
    onMachine: ({ machine, kind }) => `${machine}, ${noun(kind).bare}`,
    sameFaceDown: ({ face, edges, against }) =>
      `${upper(le(face))} est dessous à chaque descente ; seul ${et(edges.map(le))} touche ${against}.`,
    facesDiffer: ({ edges, against }) =>
      `La liste dit quelle face est dessous à chaque descente ; seul ${et(edges.map(le))} touche ${against}.`,
    cornersLater: ({ panels }) => `${et(panels)} : percer en entier ; le coin est scié quand tout est percé.`,
    unheld: () => 'Là où la liste dit « aucun presseur n’y arrive », tenir le panneau dans un gabarit.',
    doNotBore: () => 'NE PAS PERCER : ses perçages ont des erreurs',
    lay: (lay) => layWords(lay),
    handled: (handled, show) => handledWords(handled, show),
    stroke: ({ handled, lowered, held, holes }, show) => {
      const notes = [
        ...(lowered.length > 0 ? [`${et(lowered)} en bas`] : []),
        ...(held ? [] : ['aucun presseur n’y arrive']),
      ];
      return `${upper(handledWords(handled, show))}${notes.length > 0 ? ` (${notes.join(' ; ')})` : ''}, ${compte(holes, 'trou')}`;
    },
    piecesOf: ({ pieces }) => `${pieces} ×`,
    measuredFrom: ({ from }) => `depuis ${le(from)}`,
    measuredOnFaceFrom: ({ face, from }) => `${bare(face)}, depuis ${le(from)}`,
    diameter: () => 'diamètre',
    diameterOnFace: ({ face }) => `${bare(face)}, diamètre`,
    firstPiece: ({ unit }) => `Première pièce, ${unit === 'mm' ? 'millimètres' : 'pouces'}`,
    checkFirst: ({ carcass, panel }) =>
      `Percer d’abord ${carcass} ${panel}, arrêter la machine et mesurer la pièce. Les limites viennent des tolérances du fichier d’atelier ; ne rien percer de plus avant que chaque case soit cochée.`,
    toHole: ({ face, edge, which }) => `${face === null ? '' : `${bare(face)}, `}${bare(edge)} ${HOLES[which]}`,
    depthOf: ({ face }) => (face === null ? 'profondeur' : `${bare(face)}, profondeur`),
    pictured: ({ carcass, panel, step }) =>
      `${carcass} ${panel}, descente ${step}, vu de dessus ; l’opérateur se tient au bas de l’image`,
    depth: () => 'profondeur',
    depthOnFace: ({ face }) => `${bare(face)}, profondeur`,
    allThrough: () => 'traversant',
    someThrough: ({ depths }) => `${depths} et traversant`,
    thenWork: ({ work, seconds }) => `Puis ${worked(work)} : ${temps(seconds)}.`,
    wholeCost: ({ changeover, boring, work }) =>
      `En tout ${temps(changeover + boring)} aux perceuses : changements ${temps(changeover)}, perçage ${temps(boring)} (${worked(work)}).`,
    changeovers: ({ changeover, changes }) =>
      `Les changements de ${temps(changeover)} se composent de : ${et(changes.map(({ what, seconds }) => `${labels.changed[what]} ${temps(seconds)}`))}.`,
    dearest: ({ carcasses }) =>
      `Ce qui coûte le plus : ${carcasses
        .map(({ carcass, boring, ownSetUps, ownChangeover }) =>
          ownSetUps.length === 0
            ? `${carcass} : perçage ${temps(boring)}`
            : `${carcass} : perçage ${temps(boring)}, et ${temps(ownChangeover)} pour passer à ${nombre(ownSetUps.length, 'un réglage', `${ownSetUps.length} réglages`)} dont rien d’autre n’a besoin (${et(ownSetUps)})`,
        )
        .join(' ; ')}.`,
    nothingToBore: () => 'Il n’y a rien à percer.',
    totals: ({ setUps, strokes, least, seconds, bound }, show) =>
      [
        `${compte(setUps, 'réglage')}, ${compte(strokes, 'descente')} ; ${setUps <= least ? 'moins de réglages ne font pas ces descentes' : `ces descentes demandent au moins ${compte(least, 'réglage')}`}.`,
        `Les changements prennent ${temps(seconds)} en tout.`,
        show.tell(bound),
      ].join(' '),
    provenLeast: () => 'Aucun ordre qui passe une fois à chaque machine ne prend moins.',
    provenOnce: ({ least }) =>
      `Aucun ordre qui passe une fois à chaque machine et à chacune de ses têtes ne prend moins ; même en tournant plus souvent les têtes, aucun ne prend moins de ${temps(least)}.`,
    notProven: ({ seconds, least }) =>
      `Aucun ordre qui passe une fois à chaque machine ne prend moins de ${temps(least)} ; on gagnerait donc au plus ${seconds > 0 ? ((100 * (seconds - least)) / seconds).toFixed(1).replace('.', ',') : '0'} %.`,
    withheld: () =>
      'Les réglages sont retenus : rejoués, ils ne donnent pas les plans de perçage. Ne rien percer d’après ce plan.',
    share: ({ setUps, strokes, seconds }) =>
      `Dans cette partie : ${compte(setUps, 'réglage')}, ${compte(strokes, 'descente')} ; changements ${temps(seconds)}.`,
    replayed: ({ panels, holes, unbored, refused }) => {
      const left = [
        ...(unbored > 0 ? [`${compte(unbored, 'trou')} dans aucun réglage`] : []),
        ...(refused > 0 ? [`${compte(refused, 'panneau', 'panneaux')} à ne pas percer`] : []),
      ];
      return `Rejoué d’après les seuls réglages : ${panels} panneaux, ${holes} trous, tous comme dans leurs plans de perçage${left.length === 0 ? '' : ` ; ${left.join(', ')}, voir plus bas`}.`;
    },
    note: ({ carcass, note }) => `Note sur ${carcass} : ${note}`,
    leftOut: ({ carcass }) => `OMIS : ${carcass}. Corrigez d’abord ses erreurs.`,
    notBored: ({ carcass, panel, count, reason }) =>
      `NON PERCÉ : ${compte(count, 'trou')} de ${carcass} ${panel}. ${reason}`,
    panelOf: ({ carcass, panel }) => `${panel} de ${carcass}`,
    noCarcass: () => 'il n’y a pas de caisson dans ce travail.',
    noSetUpsFor: ({ carcasses }) => `aucun réglage pour ${carcasses.join(', ')} ; corrigez d’abord les erreurs.`,
    boreNot: ({ panels }) =>
      `ne percez pas ${panels.join(', ')} d’après ces réglages avant d’avoir corrigé les erreurs.`,
  },
} satisfies Translations;

const HOLES = { nearest: 'au trou le plus proche', furthest: 'au trou le plus éloigné', every: 'aux trous' } as const;

interface Bits {
  readonly diameter: number;
  readonly spindles: readonly number[] | null;
  readonly onEachHead: number;
  readonly heads: readonly string[];
  readonly of: number;
}
function bitsTold(bits: readonly Bits[], relation: 'de' | 'sur', show: Show): string {
  const told = bits.map(({ diameter, spindles, onEachHead, heads, of }) => {
    const bit = `Ø ${show.nominal(diameter)}`;
    if (spindles === null) return bit;
    const where =
      spindles.length === onEachHead && onEachHead > 1
        ? `toutes les ${onEachHead} broches`
        : `${nombre(spindles.length, 'broche', 'broches')} ${runs(spindles)}`;
    const all = of === 2 ? 'des deux têtes' : `des ${of} têtes`;
    const onHeads = of < 2 ? '' : heads.length === of ? ` ${all}` : ` (${et(heads)})`;
    return `${bit} ${relation} ${where}${onHeads}`;
  });
  return et(told);
}

const placed = (settings: readonly { readonly name: string; readonly value: string }[]): string =>
  et(settings.map(({ name, value }) => `${name} à ${value}`));

interface Work {
  readonly panels: number;
  readonly strokes: number;
  readonly indexMoves: number;
}
const worked = ({ panels, strokes, indexMoves }: Work): string =>
  [
    compte(panels, 'panneau', 'panneaux'),
    compte(strokes, 'descente'),
    ...(indexMoves > 0 ? [compte(indexMoves, 'avance')] : []),
  ].join(', ');

interface Lay {
  readonly face: string | null;
  readonly end: string;
  readonly stop: string;
  readonly edge: string | null;
  readonly atFence: string | null;
}
function layWords({ face, end, stop, edge, atFence }: Lay): string {
  const fence = atFence === null ? '' : `${bare(atFence)} au guide, `;
  const against =
    edge === null ? `${fence}${bare(end)} contre ${stop}` : `${bare(end)} contre la tête, ${bare(edge)} contre ${stop}`;
  return face === null ? against : `${bare(face)} dessous, ${against}`;
}

type Handled =
  | {
      readonly kind: 'moved';
      readonly move: Parameters<typeof indexMove>[0];
      readonly then: Parameters<typeof offStop>[0] | null;
    }
  | {
      readonly kind: 'laid';
      readonly turn: keyof typeof labels.turns | null;
      readonly lay: Lay;
      readonly move: Parameters<typeof indexMove>[0] | null;
    };
function handledWords(handled: Handled, show: Show): string {
  if (handled.kind === 'moved') {
    const along = `l’avancer, ${indexMove(handled.move, show)}`;
    return handled.then === null ? along : `${along} ; son bout est alors ${offStop(handled.then, show)}`;
  }
  const { turn, lay, move } = handled;
  const laid = turn === null ? layWords(lay) : `${labels.turns[turn]} : ${layWords(lay)}`;
  return move === null ? laid : `${laid}, puis l’avancer, ${indexMove(move, show)}`;
}
