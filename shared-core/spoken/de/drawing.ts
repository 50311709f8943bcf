import { inOneNotation } from '../../length/show.js';
import type { Show } from '../../words/show.js';
import type { Translations } from '../tables.js';
import { labels } from './drawing-labels.js';
import { anzahl, bare, die, from, runs, und, zahl } from './words.js';

const upper = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** Was auf und neben Zeichnungen steht. */
export const drawing = {
  drawing: {
    faceThatLooks: ({ face, looks }) =>
      `${face === 'inside' ? 'Innenfläche' : 'Außenfläche'} (${LOOKS[looks] ?? looks})`,
    faceInColumn: ({ face, looks }) => `${face === 'inside' ? 'innen' : 'außen'} (${LOOKS[looks] ?? looks})`,
    stopNamed: ({ name }) => `Anschlag ${name}`,
    faceUp: ({ face }) => `${bare(face)} oben`,
    scale: ({ scale }) => `Maßstab 1:${scale}`,
    notToScale: () => 'Nicht maßstäblich',
    rowHole: ({ line }) => (line === 'front' ? 'vordere Reihe' : 'hintere Reihe'),
    joinedTo: ({ use, panel }) => `${use} zu ${panel}`,
    bore: ({ use, place, fitting, diameter, depth, surface, u, edge, v, from: end }, show) => {
      const what = [
        upper(use),
        ...(place === null ? [] : [`Loch ${place.hole} von ${place.of}`]),
        ...(fitting === null ? [] : [fitting]),
      ].join(', ');
      const deep = depth === null ? 'durch' : `${show.exact(depth)} tief`;
      return `${what}: Ø ${show.nominal(diameter)}, ${deep}. ${upper(bare(surface))}, ${show.exact(u)} ${from(edge)}, ${show.exact(v)} ${from(end)}.`;
    },
  },
  'bore-map': {
    title: ({ carcass, panel }) => `${carcass}, ${panel}`,
    fromEdge: ({ edges: [first = '', ...more] }, { unit }) =>
      `${[upper(from(first)), ...more.map(bare)].join(' / ')}, ${unit}`,
    fromEnd: ({ end }, { unit }) => `${upper(from(end))}, ${unit}`,
    fromEndOrOutside: ({ end }, { unit }) => `${upper(from(end))} oder außen, ${unit}`,
    diameter: (_, { unit }) => `Ø in ${unit}`,
    depth: (_, { unit }) => `Tiefe, ${unit}`,
    run: ({ first, last, by }) => `${first} bis ${last} alle ${by}`,
    banded: ({ bands }) => bands.map(({ band, edges }) => `${und(edges.map(bare))} mit ${band}`).join('; '),
    shelfOnHole: ({ shelf, hole, of }) => `${shelf} auf Loch ${hole} von ${of}`,
    edge: ({ edge }) => upper(bare(edge)),
    bareEdge: ({ edge }) => `${upper(bare(edge))}, unbekantet`,
    bandedEdge: ({ edge, band }) => `${upper(bare(edge))}, ${band}`,
    standing: ({ face, edge, end, edgeOn }) =>
      `${upper(bare(face))} oben; ${bare(edge)} ${WAYS[edgeOn]}, ${bare(end)} unten.`,
    lying: ({ face, edge, end, endOn }) =>
      `${upper(bare(face))} oben; ${bare(edge)} zu Ihnen, ${bare(end)} ${WAYS[endOn]}.`,
    allPanels: () =>
      'Jede Platte von der Fläche mit mehr Bohrungen; aufrechte, wie sie stehen, liegende mit der Vorderkante zu Ihnen.',
    dashed: ({ face }) => `Gestrichelte Kreise werden von der anderen Seite gebohrt: ${bare(face)}.`,
    folded: ({ face }) => `Stirnen sind herausgeklappt; quer dazu zählen Maße ${from(face)}.`,
    figures: ({ edge, end }, { unit }) =>
      `Maße in ${unit === 'mm' ? 'Millimetern' : 'Zoll, Dezimalen auf ein Tausendstel'}, ${from(edge)} und ${from(end)}.`,
    allFolded: () =>
      'Stirnen sind herausgeklappt; quer dazu zählen Maße ab der Außenfläche. Gestrichelte Kreise werden von der Fläche gebohrt, die unten liegt.',
    allFigures: ({ hasDrawers }) =>
      `Maße längs einer Platte zählen bei aufrechten ab dem unteren Ende, ${hasDrawers ? 'bei Seiten von Schubkästen ab dem vorderen, ' : ''}bei allen anderen ab dem linken.`,
    corner: ({ edge, end, bored, along, across, finished, band }, show) => {
      const write = inOneNotation([along, across, ...finished], show.reader);
      const sawn = `${bored ? 'Ganz bohren, dann die' : 'Die'} Ecke von ${bare(edge)} und ${bare(end)} absägen: ${write(along)} ${show.unit} entlang ${bare(edge)}, ${write(across)} ${show.unit} entlang ${bare(end)}`;
      return band === null
        ? `${sawn}.`
        : `${sawn}. Mit ${band} darauf endet die Schrägkante dann bei ${write(finished[0])} und ${write(finished[1])} ${show.unit}.`;
    },
    groove: ({ kind, from: start, to, depth, edge }, show) => {
      const write = inOneNotation([start, to], show.reader);
      return `${kind === 'groove' ? 'Nut' : 'Falz'} in der Innenfläche, ${write(start)} bis ${write(to)} ${show.unit} ${from(edge)}, ${show.exact(depth)} tief.`;
    },
    note: ({ note }) => `Bemerkung: ${note}`,
    described: ({ title, caption, facts, bores, findings }) =>
      [
        `${title}.`,
        caption,
        facts.map(({ word, value }) => `${word}: ${value}.`).join(' '),
        `${bores === 1 ? 'Eine Bohrung' : `${bores} Bohrungen`}.`,
        findings.length === 0 ? 'Keine Befunde.' : `Befunde: ${findings.join(' ')}`,
      ].join(' '),
  },
  'machine-view': {
    liesAtHead: ({ up, edge, end, stop }) =>
      `${upper(bare(up))} oben, ${bare(end)} an den Kopf gedrückt, ${bare(edge)} an ${stop}.`,
    liesAtStop: ({ up, edge, end, stop }) =>
      `${upper(bare(up))} oben, ${bare(edge)} am Lineal, ${bare(end)} an ${stop}.`,
    liesMoved: ({ up, edge, end, stop, by, past }, show) =>
      `${upper(bare(up))} oben, ${bare(edge)} am Lineal, ${bare(end)} ${offStop({ by, past, stop }, show)}.`,
    head: ({ number }) => `Kopf ${number}`,
    spindle: ({ number }) => `Spindel ${number}`,
    spindleOfHead: ({ head, number }) => `${head}, Spindel ${number}`,
    indexArrow: ({ by, way }) => `Weiterrücken ${by} ${TO[way]}`,
    halfTurn: ({ face }) => `Um 180° gedreht, ${bare(face)} weiter unten`,
    holeMade: ({ bore }) => `${bore} Gebohrt.`,
    holeNow: ({ bore }) => `${bore} In diesem Hub gebohrt.`,
    holeToCome: ({ bore }) => `${bore} Kommt noch.`,
    spindleEmpty: ({ spindle }) => `${upper(spindle)}: leer.`,
    spindleBeside: ({ spindle, diameter, comes }, show) =>
      `${upper(spindle)}: mit Ø ${show.nominal(diameter)} bestückt; kommt neben der Platte ${COMES[comes]}.`,
    spindleBores: ({ spindle, diameter, bore }, show) =>
      `${upper(spindle)}: mit Ø ${show.nominal(diameter)} bestückt. ${bore}`,
    step: ({ carcass, panel, machine, step, of }) => `${carcass}, ${panel}, an ${machine}, Schritt ${step} von ${of}.`,
    size: ({ length, width, thickness }, show) =>
      `${show.exact(length)} mal ${show.exact(width)} mal ${show.exact(thickness)}.`,
    stops: ({ stops }, show) => {
      const told = stops.map(({ name, side, at, used, lowered }) => {
        const state = [...(used ? ['benutzt'] : []), ...(lowered ? ['abgesenkt'] : [])];
        return `${name} ${WAYS[side]} auf ${show.exact(at)}${state.length > 0 ? `, ${und(state)}` : ''}`;
      });
      return `Anschläge: ${und(told)}.`;
    },
    headsFromFence: ({ places }, show) =>
      `${und(places.map((place, head) => `Kopf ${head + 1} ${show.exact(place)} vom Lineal`))}.`,
    firstSpindleFromFence: ({ place }, show) => `erste Spindel ${show.exact(place)} vom Lineal.`,
    spindlesHigh: ({ height }, show) => `Spindeln ${show.exact(height)} über dem Tisch.`,
    clamps: ({ clamps }) =>
      `Niederhalter: ${und(clamps.map(({ name, holds }) => `${name} ${holds ? 'hält die Platte' : 'kommt neben der Platte auf'}`))}.`,
    madeBefore: ({ made, of }) => `${made} ihrer ${of} Löcher sind schon gebohrt.`,
    keepClear: () => 'Hände weg von Spindeln und Niederhaltern.',
    pushThenMove: ({ stop, ...move }, show) => `An ${stop} schieben, dann weiterrücken: ${indexMove(move, show)}.`,
    turnOver: ({ face, edge }) => `Wenden: Nach oben kommt ${die(face)}, Bezug bleibt ${die(edge)}.`,
    turnHalfToHead: ({ face, end, edge, stop }) =>
      `Auf dem Tisch um 180 Grad drehen: ${die(face)} bleibt unten, ${die(end)} kommt an den Kopf, ${die(edge)} an ${stop}.`,
    turnHalf: ({ face, end, stop }) =>
      `Auf dem Tisch um 180 Grad drehen: ${die(face)} bleibt unten, ${die(end)} kommt an ${stop}.`,
    turnQuarter: ({ face, end, edge, stop }) =>
      `Auf dem Tisch um 90 Grad drehen: ${die(face)} bleibt unten, ${die(edge)} kommt ans Lineal, ${die(end)} an ${stop}.`,
    slideToHead: ({ end, edge, stop }) =>
      `Verschieben, nicht drehen: ${die(end)} kommt an den Kopf, ${die(edge)} an ${stop}.`,
    slide: ({ end, stop }) => `Verschieben, nicht drehen: ${die(end)} kommt an ${stop}.`,
    leave: () => 'Liegen lassen.',
    indexMove: (move, show) => `Weiterrücken: ${indexMove(move, show)}.`,
    bores: ({ parts, depth, through, upward }, show) =>
      `${upper(und(parts.map(({ spindles, count, diameter }) => `${spindlesTold(spindles)} ${zahl(count, 'bohrt', 'bohren')} ${anzahl(count, 'Loch', 'Löcher')} Ø ${show.nominal(diameter)}`)))}, ${through ? 'durch' : `${show.exact(depth)} tief`}${upward ? ', von unten' : ''}.`,
    lower: ({ stops }) => `${und(stops)} absenken, der Platte aus dem Weg.`,
    beside: ({ spindles, count, comes }) =>
      `${upper(spindlesTold(spindles))} ${zahl(count, 'ist auch bestückt und kommt', 'sind auch bestückt und kommen')} neben der Platte ${COMES[comes]}.`,
    unheld: () => 'Kein Niederhalter kommt auf der Platte auf: Halten Sie sie in einer Vorrichtung.',
    extension: () => 'Die Verlängerung des Lineals ist dran.',
    done: () => 'Nach diesem Hub hat die Platte alle ihre Löcher.',
    open: ({ holes }) => `${anzahl(holes, 'Loch fehlt', 'Löcher fehlen')} noch.`,
  },
  'shop-view': {
    spindles: ({ spindles, pitch }, show) => `${spindles} alle ${show.nominal(pitch)}`,
    bitsFrom: ({ from: where }) => (where === 'above' ? 'von oben' : 'von unten'),
    heads: ({ heads }) => anzahl(heads, 'Kopf', 'Köpfe'),
    span: ({ min, max }, { reader, unit }) => {
      const write = inOneNotation([min, max], reader);
      return `${write(min)} bis ${write(max)} ${unit}`;
    },
    headRange: ({ head, min, max }) =>
      head === null ? `${min} bis ${max} vom Lineal` : `Kopf ${head}: ${min} bis ${max} vom Lineal`,
    reaches: ({ throat }) => `reicht ${throat}`,
    stopRange: ({ stop, min, max }) => `${stop}: ${min} bis ${max}`,
    spindlesInPlate: ({ head, spindles }) => `${spindlesOf({ head, spindles })} in der Platte.`,
    spindlesFromFence: ({ head, spindles, min, max }, show) =>
      `${spindlesOf({ head, spindles })}, die erste ${show.exact(min)} bis ${show.exact(max)} vom Lineal.`,
    stop: ({ stop, side, min, max }, show) =>
      `Anschlag ${stop} ${WAYS[side]}, ${show.exact(min)} bis ${show.exact(max)}.`,
    clamp: ({ clamp }) => `Niederhalter ${clamp}.`,
    ofBuiltInShop: ({ kind }) => `${kind}, aus der eingebauten Werkstatt`,
    hasFault: () => 'Der Text dieser Maschine hat einen Fehler.',
    ofJob: () => 'Eine Auftragsdatei hat selbst keine Maschinen. Öffnen Sie die Werkstattdatei (NAME.shop.yaml).',
    noMachines: () => 'Diese Werkstatt hat noch keine Maschinen. Schreiben Sie eine unter `vertical-heads:`.',
  },
} satisfies Translations;

const LOOKS: Readonly<Record<string, string>> = { left: 'links', right: 'rechts', upper: 'oben', lower: 'unten' };
const WAYS = { left: 'links', right: 'rechts' } as const;
const TO = { left: 'nach links', right: 'nach rechts' } as const;
const COMES = { down: 'herunter', up: 'herauf', out: 'heraus' } as const;

interface Move {
  readonly by: number;
  readonly way: keyof typeof TO;
  readonly pitches: number;
  readonly on: keyof typeof labels.pins;
}
export const indexMove = ({ by, way, pitches, on }: Move, show: Show): string =>
  `${show.exact(by)} ${TO[way]}, ${anzahl(pitches, 'Teilung', 'Teilungen')}${labels.pins[on]}`;
interface Off {
  readonly by: number;
  readonly past: boolean;
  readonly stop: string;
}
export const offStop = ({ by, past, stop }: Off, show: Show): string =>
  `${show.exact(by)} ${past ? 'über' : 'vor'} ${stop}`;

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
      return 'die Spindel';
    case 'alone':
      return `${zahl(spindles.numbers.length, 'Spindel', 'Spindeln')} ${runs(spindles.numbers)}`;
    case 'on-both':
      return `Spindeln ${runs(spindles.numbers)} beider Köpfe`;
    case 'on-heads': {
      const count = spindles.byHead.reduce((sum, { numbers }) => sum + numbers.length, 0);
      const lists = spindles.byHead.map(({ head, numbers }) => `${runs(numbers)} (${head})`);
      return `${zahl(count, 'Spindel', 'Spindeln')} ${lists.join(', ')}`;
    }
  }
}
const spindlesOf = ({ head, spindles }: { readonly head: number | null; readonly spindles: number }): string =>
  `${head === null ? '' : `Kopf ${head}: `}${spindles === 1 ? 'eine Spindel' : `${spindles} Spindeln`}`;
