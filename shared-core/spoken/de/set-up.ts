import type { Show } from '../../words/show.js';
import type { Translations } from '../tables.js';
import { indexMove, offStop } from './drawing.js';
import { labels } from './drawing-labels.js';
import { anzahl, bare, die, noun, runs, und, zahl, zeit } from './words.js';

const upper = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** Was die Papiere der Maschinen sagen. */
export const setUp = {
  'set-up': {
    goStanding: ({ machine }) => `Zu ${machine} gehen; die Maschine steht, wie die Werkstattdatei sagt.`,
    goFresh: ({ machine }) => `Zu ${machine} gehen und alles einstellen.`,
    turnHead: ({ machine }) =>
      `Den Kopf auf ${machine} schwenken und neu einstellen; die aufgeführten Bohrer bleiben drin.`,
    extensionOn: () => 'Die Verlängerung des Lineals anbringen.',
    extensionOff: () => 'Die Verlängerung des Lineals abnehmen.',
    setPlaces: ({ settings }) => `Einstellen: ${placed(settings)}.`,
    setStops: ({ settings }) => `Stellen: ${placed(settings)}.`,
    setDepth: ({ depth }, show) => `Den Tiefenanschlag auf ${show.exact(depth)} stellen.`,
    setDepthThrough: ({ depth }, show) =>
      `Den Tiefenanschlag so stellen, dass durch ${show.exact(depth)} gebohrt wird.`,
    throughDepth: ({ depth }, show) => `durch ${show.exact(depth)}`,
    inBoards: ({ thickness }, show) => `in Platten von ${show.exact(thickness)}`,
    stopToSpindle: ({ spindle }) => `von seiner Fläche zu Spindel ${spindle}`,
    bitsOut: ({ bits }, show) => `Herausnehmen: ${bitsTold(bits, 'aus', show)}.`,
    bitsIn: ({ bits }, show) => `Einsetzen: ${bitsTold(bits, 'in', show)}.`,
    bits: ({ bits }, show) => bitsTold(bits, 'in', show),
    changeMarked: ({ seconds }) => `Alles mit * umstellen (${zeit(seconds)}):`,
    nothingToChange: () => 'Nichts umzustellen:',
    counted: ({ from }) => `Spindeln zählen ${from}; nicht aufgeführte sind leer.`,
    notInUse: ({ stops }) => `Nicht gebraucht, aus dem Weg halten: ${und(stops)}.`,
    heading: ({ number, of, setUp: name }) => `Rüstung ${number} von ${of}: ${name}`,
    onMachine: ({ machine, kind }) => `${machine}, ${noun(kind).bare}`,
    sameFaceDown: ({ face, edges, against }) =>
      `In jedem Hub liegt ${die(face)} unten; nur ${und(edges.map(die))} berührt ${against}.`,
    facesDiffer: ({ edges, against }) =>
      `Die Liste sagt, welche Fläche in jedem Hub unten liegt; nur ${und(edges.map(die))} berührt ${against}.`,
    cornersLater: ({ panels }) => `${und(panels)}: ganz bohren; die Ecke wird abgesägt, wenn alles gebohrt ist.`,
    unheld: () => 'Wo in der Liste „kein Niederhalter reicht hin“ steht, die Platte in einer Vorrichtung halten.',
    doNotBore: () => 'NICHT BOHREN: Ihre Bohrungen haben Fehler',
    lay: (lay) => layWords(lay),
    handled: (handled, show) => handledWords(handled, show),
    stroke: ({ handled, lowered, held, holes }, show) => {
      const notes = [
        ...(lowered.length > 0 ? [`${und(lowered)} abgesenkt`] : []),
        ...(held ? [] : ['kein Niederhalter reicht hin']),
      ];
      return `${upper(handledWords(handled, show))}${notes.length > 0 ? ` (${notes.join('; ')})` : ''}, ${anzahl(holes, 'Loch', 'Löcher')}`;
    },
    piecesOf: ({ pieces }) => `${pieces} ×`,
    measuredFrom: ({ from }) => `ab ${bare(from)}`,
    measuredOnFaceFrom: ({ face, from }) => `${bare(face)}, ab ${bare(from)}`,
    diameter: () => 'Durchmesser',
    diameterOnFace: ({ face }) => `${bare(face)}, Durchmesser`,
    firstPiece: ({ unit }) => `Erstes Stück, ${unit === 'mm' ? 'Millimeter' : 'Zoll'}`,
    checkFirst: ({ carcass, panel }) =>
      `Zuerst ${carcass} ${panel} bohren, die Maschine ausschalten und das Stück messen. Die Grenzen folgen aus den Toleranzen der Werkstattdatei; nichts weiter bohren, ehe jedes Kästchen abgehakt ist.`,
    toHole: ({ face, edge, which }) => `${face === null ? '' : `${bare(face)}, `}${bare(edge)} bis ${HOLES[which]}`,
    depthOf: ({ face }) => (face === null ? 'Tiefe' : `${bare(face)}, Tiefe`),
    pictured: ({ carcass, panel, step }) =>
      `${carcass} ${panel}, Hub ${step}, von oben gesehen; der Bediener steht am unteren Rand des Bilds`,
    depth: () => 'Tiefe',
    depthOnFace: ({ face }) => `${bare(face)}, Tiefe`,
    allThrough: () => 'durch',
    someThrough: ({ depths }) => `${depths} und durch`,
    thenWork: ({ work, seconds }) => `Dann ${worked(work)}: ${zeit(seconds)}.`,
    wholeCost: ({ changeover, boring, work }) =>
      `Im Ganzen ${zeit(changeover + boring)} an den Bohrmaschinen: Umstellen ${zeit(changeover)}, Bohren ${zeit(boring)} (${worked(work)}).`,
    changeovers: ({ changeover, changes }) =>
      `Die Umstellungen von ${zeit(changeover)} setzen sich zusammen aus: ${und(changes.map(({ what, seconds }) => `${labels.changed[what]} ${zeit(seconds)}`))}.`,
    dearest: ({ carcasses }) =>
      `Am meisten kostet: ${carcasses
        .map(({ carcass, boring, ownSetUps, ownChangeover }) =>
          ownSetUps.length === 0
            ? `${carcass}: Bohren ${zeit(boring)}`
            : `${carcass}: Bohren ${zeit(boring)}, und ${zeit(ownChangeover)} Umstellen auf ${zahl(ownSetUps.length, 'eine Rüstung', `${ownSetUps.length} Rüstungen`)}, die sonst nichts braucht (${und(ownSetUps)})`,
        )
        .join('; ')}.`,
    nothingToBore: () => 'Es gibt nichts zu bohren.',
    totals: ({ setUps, strokes, least, seconds, bound }, show) =>
      [
        `${rüstungen(setUps)}, ${hübe(strokes)}; ${setUps <= least ? 'mit weniger Rüstungen gehen diese Hübe nicht' : `diese Hübe brauchen mindestens ${rüstungen(least)}`}.`,
        `Umstellungen kosten im Ganzen ${zeit(seconds)}.`,
        show.tell(bound),
      ].join(' '),
    provenLeast: () => 'Keine Reihenfolge, die jede Maschine einmal aufsucht, kostet weniger.',
    provenOnce: ({ least }) =>
      `Keine Reihenfolge, die jede Maschine und jeden ihrer Köpfe einmal aufsucht, kostet weniger; auch mit mehr Schwenken der Köpfe kostet keine weniger als ${zeit(least)}.`,
    notProven: ({ seconds, least }) =>
      `Keine Reihenfolge, die jede Maschine einmal aufsucht, kostet weniger als ${zeit(least)}; zu sparen wären also höchstens ${seconds > 0 ? ((100 * (seconds - least)) / seconds).toFixed(1).replace('.', ',') : '0'} %.`,
    withheld: () =>
      'Die Rüstungen werden zurückgehalten: Nachgespielt ergeben sie nicht die Bohrbilder. Nach diesem Plan nichts bohren.',
    share: ({ setUps, strokes, seconds }) =>
      `In diesem Teil: ${rüstungen(setUps)}, ${hübe(strokes)}; Umstellungen ${zeit(seconds)}.`,
    replayed: ({ panels, holes, unbored, refused }) => {
      const left = [
        ...(unbored > 0 ? [`${anzahl(unbored, 'Loch', 'Löcher')} in keiner Rüstung`] : []),
        ...(refused > 0 ? [`${anzahl(refused, 'Platte', 'Platten')} nicht zu bohren`] : []),
      ];
      return `Allein aus den Rüstungen nachgespielt: ${panels} Platten, ${holes} Löcher, alle wie in ihren Bohrbildern${left.length === 0 ? '' : `; ${left.join(', ')}, siehe unten`}.`;
    },
    note: ({ carcass, note }) => `Bemerkung zu ${carcass}: ${note}`,
    leftOut: ({ carcass }) => `FEHLT: ${carcass}. Berichtigen Sie zuerst seine Fehler.`,
    notBored: ({ carcass, panel, count, reason }) =>
      `NICHT GEBOHRT: ${anzahl(count, 'Loch', 'Löcher')} von ${carcass} ${panel}. ${reason}`,
    panelOf: ({ carcass, panel }) => `${panel} von ${carcass}`,
    noCarcass: () => 'in diesem Auftrag ist kein Korpus.',
    noSetUpsFor: ({ carcasses }) => `keine Rüstungen für ${carcasses.join(', ')}; berichtigen Sie zuerst die Fehler.`,
    boreNot: ({ panels }) =>
      `bohren Sie ${panels.join(', ')} nicht nach diesen Rüstungen, ehe die Fehler berichtigt sind.`,
  },
} satisfies Translations;

const HOLES = { nearest: 'zum nächsten Loch', furthest: 'zum entferntesten Loch', every: 'zu den Löchern' } as const;
const rüstungen = (count: number): string => anzahl(count, 'Rüstung', 'Rüstungen');
const hübe = (count: number): string => anzahl(count, 'Hub', 'Hübe');

interface Bits {
  readonly diameter: number;
  readonly spindles: readonly number[] | null;
  readonly onEachHead: number;
  readonly heads: readonly string[];
  readonly of: number;
}
function bitsTold(bits: readonly Bits[], relation: 'in' | 'aus', show: Show): string {
  const told = bits.map(({ diameter, spindles, onEachHead, heads, of }) => {
    const bit = `Ø ${show.nominal(diameter)}`;
    if (spindles === null) return bit;
    const where =
      spindles.length === onEachHead && onEachHead > 1
        ? `allen ${onEachHead} Spindeln`
        : `${zahl(spindles.length, 'Spindel', 'Spindeln')} ${runs(spindles)}`;
    const all = of === 2 ? 'beider Köpfe' : `aller ${of} Köpfe`;
    const onHeads = of < 2 ? '' : heads.length === of ? ` ${all}` : ` (${und(heads)})`;
    return `${bit} ${relation} ${where}${onHeads}`;
  });
  return und(told);
}

const placed = (settings: readonly { readonly name: string; readonly value: string }[]): string =>
  und(settings.map(({ name, value }) => `${name} auf ${value}`));

interface Work {
  readonly panels: number;
  readonly strokes: number;
  readonly indexMoves: number;
}
const worked = ({ panels, strokes, indexMoves }: Work): string =>
  [anzahl(panels, 'Platte', 'Platten'), hübe(strokes), ...(indexMoves > 0 ? [`${indexMoves} Weiterrücken`] : [])].join(
    ', ',
  );

interface Lay {
  readonly face: string | null;
  readonly end: string;
  readonly stop: string;
  readonly edge: string | null;
  readonly atFence: string | null;
}
function layWords({ face, end, stop, edge, atFence }: Lay): string {
  const fence = atFence === null ? '' : `${bare(atFence)} ans Lineal, `;
  const against =
    edge === null ? `${fence}${bare(end)} an ${stop}` : `${bare(end)} an den Kopf, ${bare(edge)} an ${stop}`;
  return face === null ? against : `${bare(face)} unten, ${against}`;
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
    const along = `weiterrücken, ${indexMove(handled.move, show)}`;
    return handled.then === null ? along : `${along}; ihr Ende liegt dann ${offStop(handled.then, show)}`;
  }
  const { turn, lay, move } = handled;
  const laid = turn === null ? layWords(lay) : `${labels.turns[turn]}: ${layWords(lay)}`;
  return move === null ? laid : `${laid}, dann weiterrücken, ${indexMove(move, show)}`;
}
