import type { Hole } from '../../machining/replay/bore.js';
import type { Side } from '../../machining/replay/solid.js';
import type { Show } from '../../words/show.js';
import type { Translations } from '../tables.js';
import { anzahl, handOf, im, quoted, und, zahl, zeit } from './words.js';

/** Was beim Nachspielen der Rüstungen auffällt, und die gemeinsame Bestückung der Verbindungen. */
export const replay = {
  replay: {
    depthOutOfRange: (one, show) => `Die Tiefe von ${show.exact(one.value)} ${outOfRange(one, show)}`,
    heightOutOfRange: (one, show) => `Die Höhe von ${show.exact(one.value)} ${outOfRange(one, show)}`,
    fenceOutOfRange: (one, show) => `Der Abstand des Lineals von ${show.exact(one.value)} ${outOfRange(one, show)}`,
    setbackOutOfRange: (one, show) => `Der Kopfabstand von ${show.exact(one.value)} ${outOfRange(one, show)}`,
    headsOutOfRange: (one, show) => `Der Abstand zweier Köpfe von ${show.exact(one.value)} ${outOfRange(one, show)}`,
    headsOutOfOrder: ({ machine }) => `Die Köpfe von ${quoted(machine)} stehen nicht von vorn nach hinten geordnet.`,
    throat: ({ machine, value, throat }, show) =>
      `Ein Kopf steht ${show.exact(value)} vom Lineal; die Ausladung von ${quoted(machine)} ist ${show.exact(throat)}.`,
    noExtension: ({ machine }) => `${quoted(machine)} hat keine Verlängerung des Lineals.`,
    noHeight: ({ machine }) => `${quoted(machine)} hat keine Höhe einzustellen.`,
    heightMissing: ({ machine }) => `Die Rüstung nennt keine Höhe für ${quoted(machine)}.`,
    fenceCount: ({ machine, wanted, given }) =>
      `${quoted(machine)} nimmt ${anzahl(wanted, 'Abstand des Lineals', 'Abstände des Lineals')}; die Rüstung nennt ${given}.`,
    headCount: ({ machine, heads, given }) =>
      `${quoted(machine)} hat ${anzahl(heads, 'Kopf', 'Köpfe')}; die Rüstung stellt ${given}.`,
    stopMissing: ({ machine, stop }) => `${quoted(machine)} hat keinen Anschlag ${quoted(stop)}.`,
    stopSide: ({ machine, stop, is, given }) =>
      `Der Anschlag ${quoted(stop)} von ${quoted(machine)} ist ${handOf(is)}, nicht ${handOf(given)}.`,
    stopOutOfRange: ({ stop, ...one }, show) =>
      `Der Anschlag ${quoted(stop)} auf ${show.exact(one.value)} ${outOfRange(one, show)}`,
    stopPastExtension: ({ stop, ...one }, show) =>
      `Mit der Verlängerung: Der Anschlag ${quoted(stop)} auf ${show.exact(one.value)} ${outOfRange(one, show)}`,
    stopsCross: ({ inner, outer }, show) =>
      `Der Anschlag ${quoted(inner.stop)} auf ${show.exact(inner.position)} müsste an ${quoted(outer.stop)} auf ${show.exact(outer.position)} vorbei, der am selben Lineal weiter außen steht.`,
    panelOutOfRange: ({ measure, ...one }, show) =>
      `Die ${MEASURES[measure]} der Platte von ${show.exact(one.value)} ${outOfRange(one, show)}`,
    stopNotSet: ({ stop }) => `Die Platte soll am Anschlag ${quoted(stop)} liegen, der nicht gestellt ist.`,
    otherSideAtStop: ({ stop, hand, comes, wanted }) =>
      `An den Anschlag ${quoted(stop)} ${handOf(hand)} kommt ${THE[comes]}, nicht ${THE[wanted]}.`,
    noSpindle: () => 'Keine Spindel trägt einen Bohrer.',
    headNotSet: ({ machine, head, heads }) =>
      `Kopf ${head} ist nicht gestellt: An ${quoted(machine)} ${zahl(heads, 'ist', 'sind')} ${anzahl(heads, 'Kopf', 'Köpfe')} gestellt.`,
    spindleMissing: ({ machine, spindle, spindles }) =>
      `${quoted(machine)} hat die Spindeln 1 bis ${spindles}, nicht ${spindle}.`,
    twoBits: (one) => `${spindleName(one)} trägt zwei Bohrer.`,
    bitImpossible: ({ diameter, ...one }, show) =>
      `${spindleName(one)} trägt einen Bohrer von ${show.exact(diameter)}.`,
    moveNotOnLineDrill: ({ machine }) =>
      `${quoted(machine)} ist keine Reihenbohrmaschine und rückt Platten nicht weiter.`,
    moveWithoutPins: ({ machine, moved }, show) =>
      `${quoted(machine)} hat keine Stifte, um eine Platte ${show.exact(moved)} weiterzurücken.`,
    moveOffPitch: ({ moved, pitch }, show) =>
      `Ein Weiterrücken um ${show.exact(moved)} ist kein Vielfaches der Teilung von ${show.exact(pitch)}.`,
    movePastRange: ({ machine, moved, most }, show) =>
      `Ein Weiterrücken um ${show.exact(moved)} ist zu weit; ${quoted(machine)} schafft höchstens ${show.exact(most)}.`,
    noHoleForPins: () => 'Noch ist kein Loch der Reihe für die Stifte gebohrt.',
    besidePanel: () => 'Jeder Bohrer kommt neben der Platte herunter.',
    stopInTheWay: ({ stop, position }, show) =>
      `Die Platte liegt über dem Anschlag ${quoted(stop)} auf ${show.exact(position)} oder endet an ihm, und er lässt sich nicht absenken.`,
    cutsEdge: ({ hole, across, along }, show) =>
      `${theHole(hole, show)} bricht in eine Kante der Platte auf, die dort ${show.exact(across)} mal ${show.exact(along)} misst.`,
    throughLength: ({ hole }, show) => `${theHole(hole, show)} müsste durch die ganze Länge der Platte gehen.`,
    notThrough: ({ hole, depth, deep }, show) =>
      `${theHole(hole, show)} muss durch ${show.exact(deep)} gehen, aber der Tiefenanschlag steht auf ${show.exact(depth)}.`,
    comesOut: ({ hole, depth, deep }, show) =>
      `${theHole(hole, show)} kommt auf der anderen Seite heraus: Es ist ${show.exact(depth)} tief in ${show.exact(deep)}.`,
    boredTwice: ({ hole }, show) => `${theHole(hole, show)} wird zweimal gebohrt.`,
    missing: ({ missing }, show) => notBored(missing, show),
    extra: ({ extra }, show) => boredBeside(extra, show),
    missingAndExtra: ({ missing, extra }, show) => `${notBored(missing, show)} ${boredBeside(extra, show)}`,
  },
  'shared-load': {
    none: () =>
      'Diese Werkstatt teilt keine Bestückung (`share-places: no`): Jede Verbindung nimmt ihre eigenen Stellen.',
    impossible: () =>
      'Diese Werkstatt teilt Stellen, aber keine Bestückung dient ihren üblichen Verbindungen an ihren üblichen Köpfen: Jede Verbindung nimmt ihre eigenen Stellen.',
    load: ({ faces, ends, load }) =>
      `Die gemeinsame Bestückung der üblichen Verbindungen, an ${quoted(faces)} und ${quoted(ends)}, von einer Vorderkante gezählt: ${spindles(load)}.`,
    beside: ({ load }) => `Für Verbindungen, die Rücken an Rücken mit anderen stehen: ${spindles(load)}.`,
    loadFor: ({ sizes, load }, show) =>
      `Für Korpusse mit ${und(sizes.map((size) => show.exact(size)))} Tiefe: ${spindles(load)}.`,
    own: ({ seconds, fewestSetUps }) =>
      `Jede Verbindung nimmt ihre eigenen Stellen, weil ein Los so am wenigsten Zeit braucht: etwa ${zeit(seconds)} für seine Dübel und für gewechselte Bohrer, wo die Bestückung mit den wenigsten Rüstungen etwa ${zeit(fewestSetUps)} braucht.`,
    several: ({ faces, ends, count }) =>
      `Die ${count} gemeinsamen Bestückungen der üblichen Verbindungen, an ${quoted(faces)} und ${quoted(ends)}, von einer Vorderkante gezählt.`,
    weighed: ({ seconds, fewestSetUps }) =>
      `Nach der Zeit eines Loses gewählt: etwa ${zeit(seconds)} für seine Dübel und für gewechselte Bohrer, wo die Bestückung mit den wenigsten Rüstungen etwa ${zeit(fewestSetUps)} braucht.`,
    fewest: ({ seconds }) =>
      `Die Bestückung mit den wenigsten Rüstungen braucht auch für ein Los am wenigsten Zeit: etwa ${zeit(seconds)} für seine Dübel und für gewechselte Bohrer.`,
    deep: ({ size, places }, show) =>
      `  ${show.exact(size)} tief mit der üblichen Rückwand: bei ${und(places.map((place) => show.exact(place)))}.`,
    rail: ({ size, places }, show) =>
      `  Traversen, ${show.exact(size)} breit: bei ${und(places.map((place) => show.exact(place)))}.`,
    same: () =>
      'Die frühere Datei hat dieselbe Bestückung: Was nach ihr gebohrt wurde, lässt sich nach dieser nachfertigen.',
    changed: ({ before, now }) =>
      `Die frühere Datei hat eine andere Bestückung: ${allOf(before)} vorher, ${allOf(now)} jetzt. Eine Platte, die nach dieser Datei nachgefertigt wird, passt nicht zu einer, die nach der früheren gebohrt wurde: Heben Sie die frühere Datei für Nachfertigungen auf.`,
    placed: ({ before, now }, show) =>
      `Die frühere Datei hat dieselben Spindeln an anderen Stellen: erste Bohrung bei ${show.exact(before.first)} und Teilung ${show.exact(before.pitch)} vorher, ${show.exact(now.first)} und ${show.exact(now.pitch)} jetzt. Heben Sie die frühere Datei für Nachfertigungen auf.`,
  },
} satisfies Translations;

type Loads = readonly (readonly number[])[];
const spindles = (load: readonly number[]): string => `Spindeln ${und(load.map((k) => String(k + 1)))}`;
const allOf = (loads: Loads): string => (loads.length === 0 ? 'keine' : und(loads.map(spindles)));

const MEASURES = { length: 'Länge', width: 'Breite', thickness: 'Dicke' } as const;
const THE: Readonly<Record<Side, string>> = {
  front: 'die Vorderkante',
  back: 'die Hinterkante',
  'reference-end': 'das untere oder linke Ende',
  'far-end': 'das obere oder rechte Ende',
  inside: 'die Innenfläche',
  outside: 'die Außenfläche',
};
const IN: Readonly<Record<Side, string>> = {
  front: im('front edge'),
  back: im('back edge'),
  'reference-end': im('bottom or left end'),
  'far-end': 'im oberen oder rechten Ende',
  inside: im('inside face'),
  outside: im('outside face'),
};

interface OutOfRange {
  readonly machine: string;
  readonly range: { readonly min: number; readonly max: number };
}
const outOfRange = ({ machine, range }: OutOfRange, show: Show): string =>
  `liegt außerhalb des Bereichs von ${quoted(machine)}, ${show.exact(range.min)} bis ${show.exact(range.max)}.`;

const spindleName = ({ head, spindle }: { readonly head: number | null; readonly spindle: number }): string =>
  head === null ? `Spindel ${spindle}` : `Spindel ${spindle} von Kopf ${head}`;

const theHole = ({ face, u, v, diameter }: Hole, show: Show): string =>
  `Das Loch von ${show.exact(diameter)} bei ${show.exact(u)}, ${show.exact(v)} ${IN[face]}`;

const MOST_LISTED = 3;
function listedHoles(holes: readonly Hole[], show: Show): string {
  const shown = holes.slice(0, MOST_LISTED).map(({ face, u, v, diameter, depth, through }) => {
    const deep = through ? 'durch' : `× ${show.exact(depth)}`;
    return `${show.exact(diameter)} ${deep} bei ${show.exact(u)}, ${show.exact(v)} ${IN[face]}`;
  });
  const more = holes.length - shown.length;
  return [...shown, ...(more > 0 ? [`und ${more} weitere`] : [])].join('; ');
}
const notBored = (holes: readonly Hole[], show: Show): string =>
  `${anzahl(holes.length, 'Loch ist', 'Löcher sind')} nicht gebohrt: ${listedHoles(holes, show)}.`;
const boredBeside = (holes: readonly Hole[], show: Show): string =>
  `${anzahl(holes.length, 'Loch ist', 'Löcher sind')} gebohrt, ${zahl(holes.length, 'das', 'die')} kein Bohrbild zeigt: ${listedHoles(holes, show)}.`;
