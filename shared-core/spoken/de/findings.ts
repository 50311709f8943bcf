import type { Show } from '../../words/show.js';
import type { Translations } from '../tables.js';
import {
  anzahl,
  BORES,
  FROM,
  joints,
  lengths,
  LINE,
  noun,
  OUR_FAULT,
  quoted,
  SIDES,
  theBores,
  und,
  zahl,
  zeit,
} from './words.js';

const isRow = ({ purpose }: { readonly purpose: string }): boolean => purpose === 'row';
const inKey = (key: { readonly key: string; readonly fitting: string } | null): string =>
  key === null ? '' : ` (\`${key.key}\` von ${quoted(key.fitting)})`;
const GROOVE_OF = { back: 'der Rückwand', 'drawer bottom': 'des Schubkastenbodens' };
const SAME = 'Geben Sie beiden dieselben Stellen und denselben Verbinder.';
const named = (fitting: string | null): string => (fitting === null ? 'nichts' : quoted(fitting));

/** Befunde über Bohrungen und Verbindungen. */
export const findings = {
  causes: {
    removeRowOffset: () => '`row-offset` entfernen und den üblichen Reihenanfang nehmen',
    removeRearRow: () => '`rear-row` entfernen und den üblichen Platz der hinteren Reihe nehmen',
    removeRowSetback: () => '`row-setback` entfernen und den üblichen Abstand der vorderen Reihe nehmen',
    removeDowels: () => '`dowels` entfernen und die üblichen Stellen nehmen',
    removeDowelsOf: ({ panel }) => `\`dowels\` von ${panel} entfernen und die des Korpus nehmen`,
    removeEndDowelsOf: ({ panel }) => `\`end-dowels\` von ${panel} entfernen und die des Korpus nehmen`,
    removeJointDowels: ({ panel }) =>
      `\`dowels\` dieser Verbindung von ${panel} entfernen und sie wie die anderen der Platte bohren`,
  },
  'bit-missing': {
    ofFitting: ({ bit, bits, ...bores }, show) =>
      `${theBores(bores)} ${zahl(bores.count, 'braucht', 'brauchen')} einen Bohrer von ${show.exact(bit)}, den die Werkstatt nicht hat (sie hat ${und(bits.map(show.exact))}). Wählen Sie einen anderen Verbinder, oder nehmen Sie den Bohrer unter \`bits\` auf.`,
    ofRows: ({ bit, bits, ...bores }, show) =>
      `${theBores(bores)} ${zahl(bores.count, 'braucht', 'brauchen')} einen Bohrer von ${show.exact(bit)}, den die Werkstatt nicht hat (sie hat ${und(bits.map(show.exact))}). Wählen Sie einen anderen \`row-diameter\`, oder nehmen Sie den Bohrer unter \`bits\` auf.`,
  },
  'bore-in-groove': {
    meet: ({ at, edge, holds, key, groove, ...bores }, show) =>
      `${theBores(bores)}, ${show.length(at)} ${FROM[edge]}, ${zahl(bores.count, 'trifft', 'treffen')} die Nut ${GROOVE_OF[holds]}, die von ${show.span(groove)} reicht. Rücken Sie die ${zahl(bores.count, 'Bohrung', 'Bohrungen')} näher an ${SIDES[edge]}${inKey(key)}.`,
    thin: ({ at, edge, holds, key, groove, wall, least, ...bores }, show) =>
      `${theBores(bores)}, ${show.length(at)} ${FROM[edge]}, ${zahl(bores.count, 'lässt', 'lassen')} ${show.length(wall)} Holz vor der Nut ${GROOVE_OF[holds]}, die von ${show.span(groove)} reicht; mindestens ${show.length(least)} müssen bleiben (\`least-wall\`). Rücken Sie die ${zahl(bores.count, 'Bohrung', 'Bohrungen')} näher an ${SIDES[edge]}${inKey(key)}.`,
    grooveHere: () => 'Hier ist der Platz der Nut festgelegt.',
  },
  'bore-too-short': { leaveDepth: ({ panel }) => `Die Tiefe in ${panel} dem Verbinder überlassen` },
  'bore-without-mate': {
    alone: ({ panel, fromFront }, show) =>
      `Eine Bohrung in ${panel}, ${show.length(fromFront)} von der Vorderkante, mündet gegen volles Holz, und kein anderer Befund sagt es. ${OUR_FAULT}: Bohren Sie diese Platte nicht.`,
  },
  'bores-collide': {
    meet: ({ panels, first, second, more }, show) =>
      [`In ${und(panels)} treffen sich ${placed(first, show)} und ${placed(second, show)}.`, ...alike(more), MOVE].join(
        ' ',
      ),
    notTaken: ({ panels, bore, hole, more, differs, own, ofRow, key, fitting }, show) =>
      [
        `In ${und(panels)} liegen ${placed(bore, show)} und ${placed(hole, show)} an derselben Stelle, aber mit ${show.length(own)} und ${show.length(ofRow)} ${differs === 'depth' ? 'Tiefe' : 'Durchmesser'}.`,
        ...alike(more),
        `Schreiben Sie ${differs === 'depth' ? 'höchstens ' : ''}${show.length(ofRow)} als \`${key}\` von ${quoted(fitting)}, damit die Schrauben in die Löcher der Reihe gehen, oder versetzen Sie eine der beiden.`,
      ].join(' '),
    thin: ({ panels, first, second, more, wall, least }, show) =>
      [
        `In ${und(panels)} lassen ${placed(first, show)} und ${placed(second, show)} nur ${show.length(wall)} Holz zwischen sich; mindestens ${show.length(least)} müssen bleiben (\`least-wall\`).`,
        ...alike(more),
        MOVE,
      ].join(' '),
    setHere: (bore, show) => `Darum liegt ${placed(bore, show)}.`,
  },
  'boring-depth-out-of-range': {
    ofRows: (out, show) => `${depthOut(out, show)} Ändern Sie \`row-depth\`, oder wählen Sie eine andere Maschine.`,
    ofJoint: (out, show) =>
      `${depthOut(out, show)} Wählen Sie eine andere Tiefe, einen anderen Verbinder oder eine andere Maschine.`,
  },
  'break-through': {
    through: ({ depth, size, into, ...bores }, show) =>
      `${theBores(bores)}, ${show.length(depth)} tief in einer ${show.length(size)} ${into === 'face' ? 'dicken' : 'langen'} Platte, ${zahl(bores.count, 'kommt', 'kommen')} auf der anderen Seite heraus. ${shallower(bores)}, oder nehmen Sie eine dickere Platte.`,
    thin: ({ depth, size, into, under, least, ...bores }, show) =>
      `${theBores(bores)}, ${show.length(depth)} tief in einer ${show.length(size)} ${into === 'face' ? 'dicken' : 'langen'} Platte, ${zahl(bores.count, 'lässt', 'lassen')} ${show.length(under)} Holz; mindestens ${show.length(least)} müssen bleiben (\`least-wall\`). ${shallower(bores)}, oder nehmen Sie eine dickere Platte.`,
    groove: ({ depth, panels, thickness, least }, show) =>
      `Die Nut der Rückwand, ${show.length(depth)} tief, lässt ${show.length(thickness - depth)} Holz in ${und(panels)}, ${show.length(thickness)} dick; mindestens ${show.length(least)} müssen bleiben (\`least-wall\`). Machen Sie die Nut flacher.`,
    leaveDepth: ({ panel }) => `Die Tiefe in ${panel} dem Verbinder überlassen`,
    leaveGroove: () => 'Die Tiefe der Nut der Werkstatt überlassen',
  },
  'cannot-be-bored': {
    noSetUp: ({ reason, ...bores }, show) =>
      `${theBores(bores)} ${zahl(bores.count, 'lässt', 'lassen')} sich nicht bohren. ${show.tell(reason)}`,
  },
  'dowel-depths': {
    tooShallow: (sum, show) =>
      `${added(sum, show)}, aber ${quoted(sum.dowel.name)} ist ${show.length(-sum.gap)} länger. ${together(sum, show)}`,
    tooLittle: (sum, show) =>
      `${added(sum, show)}, was für den Leim von ${quoted(sum.dowel.name)} nur ${show.length(sum.gap)} lässt. ${together(sum, show)}`,
    tooMuch: (sum, show) =>
      `${added(sum, show)}, was für den Leim von ${quoted(sum.dowel.name)} ${show.length(sum.gap)} lässt. ${together(sum, show)}`,
    boredDeep: ({ mate, depth, panel }, show) => `${mate} ist für ${panel} ${show.length(depth)} tief gebohrt.`,
    removeFitting: ({ panel }) => `Den Verbinder von ${panel} entfernen, damit beide Bohrungen einem Verbinder folgen`,
    removeDepth: ({ panel }) => `Die Tiefe von ${panel} entfernen, damit beide Bohrungen einem Verbinder folgen`,
    holdWhole: ({ fitting }) => `Den ganzen Korpus mit ${quoted(fitting)} verbinden`,
    bore: ({ panels, depth, total, mates }, show) =>
      `${und(panels)} ${show.exact(depth)} tief bohren, mit ${und(mates)} zusammen ${show.exact(total)}`,
  },
  'dowel-place-unused': {
    nowhere: ({ at }, show) =>
      `Die Stelle ${show.length(at)} von der Vorderkante wird nicht gebohrt, weil sich dort keine zwei Platten treffen. Verschieben Sie sie, oder streichen Sie sie aus der Liste.`,
    notOnPanel: ({ at, panel }, show) =>
      `Die Stelle ${show.length(at)} von der Vorderkante von ${panel} wird nicht gebohrt, weil dort keine andere Platte anstößt. Verschieben Sie sie, oder streichen Sie sie aus der Liste.`,
    remove: ({ at }, show) => `${show.exact(at)} aus der Liste streichen`,
  },
  'joint-crowded': {
    fewer: ({ joints, count, room }) =>
      `${anzahl(count, 'Stelle', 'Stellen')} von ${joints.join(', ')} ${zahl(count, 'ist', 'sind')} verlangt, und auf den Spindeln ist Platz für ${room === 0 ? 'keine' : room}. Verlangen Sie weniger, oder machen Sie die Platte breiter.`,
    take: ({ room }) => `${anzahl(room, 'Stelle', 'Stellen')} bohren`,
    remove: () => 'Die Zahl entfernen und die üblichen Stellen nehmen',
  },
  'dowels-unmatched': {
    blind: ({ panel, mates, depth, face, thickness }, show) =>
      `Die Bohrungen von ${und([panel, ...mates])} passen nicht zueinander: Die Schraubenlöcher sind in ${face}, ${show.length(thickness)} dick, nur ${show.length(depth)} tief und gehen nicht durch. Überlassen Sie ihre Tiefe dem Verbinder.`,
    lonely: ({ panel, mates, mate, counts: [own, others], ...places }, show) =>
      `Die Bohrungen von ${und([panel, ...mates])} passen nicht zueinander. Bei ${mate} hat ${panel} ${anzahl(own, 'Bohrung', 'Bohrungen')} und ${mate} ${others}. Keine Bohrung liegt gegenüber von ${[...at(panel, places.own, show), ...at(mate, places.others, show)].join(' oder von ')}, von der Vorderseite des Korpus gezählt. ${SAME}`,
    diameters: ({ panel, mates, face, end, wide }, show) =>
      `Die Bohrungen von ${und([panel, ...mates])} passen nicht zueinander: Die in der Fläche von ${face} sind ${show.length(wide[0])} weit und die in der Stirn von ${end} ${show.length(wide[1])}. ${SAME}`,
    fittings: ({ panel, mates, face, end, fittings: [inFace, inEnd] }) =>
      `Die Bohrungen von ${und([panel, ...mates])} passen nicht zueinander: ${face} ist für ${named(inFace)} gebohrt und ${end} für ${named(inEnd)}. ${SAME}`,
    purposes: ({ panel, mates, face, end, boredFor }) =>
      `Die Bohrungen von ${und([panel, ...mates])} passen nicht zueinander: ${face} ist gebohrt für: ${noun(boredFor[0]).bare}, ${end} für: ${noun(boredFor[1]).bare}. ${SAME}`,
    boredAt: ({ mate, panel, places }, show) =>
      `${mate} ist für ${panel} ${places.length === 0 ? 'an keiner Stelle' : `bei ${lengths(places, show)}`} von der Vorderseite des Korpus gebohrt.`,
    leaveDepth: ({ panel }) => `Die Tiefe in ${panel} dem Verbinder überlassen`,
    removeDowels: ({ panel, mates }) => `\`dowels\` von ${panel} entfernen, damit sie wie ${und(mates)} gebohrt wird`,
    removeFitting: ({ panel, mates }) =>
      `Den Verbinder von ${panel} entfernen, damit sie wie ${und(mates)} gebohrt wird`,
    boreLike: ({ panels, places, like }, show) =>
      `${und(panels)} bei ${lengths(places, show)} bohren, wie ${und(like)}`,
    endDowels: ({ panel, mates }) => `${und(mates)} für ${panel} an denselben Stellen bohren (\`end-dowels\`)`,
    boreAll: ({ places }, show) => `Jede Platte dieses Korpus bei ${lengths(places, show)} bohren`,
    holdToo: ({ panels, fitting }) => `Auch ${und(panels)} mit ${quoted(fitting)} verbinden`,
    holdWhole: ({ fitting }) => `Den ganzen Korpus mit ${quoted(fitting)} verbinden`,
  },
  'joint-not-held': {
    none: ({ joints: of, open, isListed }, show) =>
      `${joints(of)}, ${show.length(open)} tief, ${zahl(of.length, 'hat', 'haben')} keine Bohrung. Geben Sie ${mitStellen(isListed)} Stellen an, oder machen Sie die Platte breiter.`,
    one: ({ joints: of, open, from, isListed }, show) =>
      `${joints(of)}, ${show.length(open)} tief, ${zahl(of.length, 'hat', 'haben')} nur eine Bohrung, bei ${show.length(from)}, um die sich die Platte drehen kann. Geben Sie ${mitStellen(isListed)} zwei Stellen an, oder machen Sie die Platte breiter.`,
    gap: ({ joints: of, open, from, limit, isListed }, show) =>
      `${joints(of)} ${zahl(of.length, 'hat', 'haben')} hinter der Bohrung bei ${show.length(from)} auf ${show.length(open)} keine mehr (Grenze ${show.length(limit)}, \`dowel-spacing\`). Geben Sie ${mitStellen(isListed)} weitere Stellen an, oder wählen Sie einen Bohrkopf mit mehr Spindeln.`,
  },
  'joint-off-load': {
    own: ({ panels, spindles, setUps, seconds }) =>
      `Die Bohrerbestückung, die übliche Verbindungen teilen (Spindeln ${und(spindles.map(String))}, von der Vorderkante gezählt), hält ${und(panels)} nicht; darum haben diese Verbindungen eigene Stellen und eine eigene Bestückung: ${anzahl(setUps, 'Rüstung', 'Rüstungen')}, ${zeit(seconds)}.`,
    deep: ({ size, instead }, show) => `Den Korpus ${show.exact(size)} tief machen statt ${show.exact(instead)}`,
    wide: ({ size, instead }, show) => `Die Traversen ${show.exact(size)} breit machen statt ${show.exact(instead)}`,
    back: ({ shelf, size, instead }, show) =>
      `${shelf} um ${show.exact(size)} zurücksetzen statt um ${show.exact(instead)}`,
  },
  'misfit-past-limit': {
    past: ({ figure, joints: [joint, ...others], likely, worst, limit, causes }, show) =>
      [
        `${MISFITS[figure].name} in der Verbindung von ${und(joint!)} erreicht voraussichtlich ${show.length(likely)} (schlimmstenfalls ${show.length(worst)}); die Grenze der Werkstatt ist ${show.length(limit)} (\`${MISFITS[figure].key}\`).`,
        ...(others.length === 0
          ? []
          : [`Dasselbe gilt für ${anzahl(others.length, 'weitere Verbindung', 'weitere Verbindungen')}.`]),
        `${zahl(causes.length, 'Hauptursache', 'Hauptursachen')}: ${und(causes.map((cause) => STRAYS[cause]))}.`,
      ].join(' '),
  },
  'near-edge': {
    beyond: ({ border, key, fromEdge, ...bores }, show) =>
      `${theBores(bores)} ${zahl(bores.count, 'liegt', 'liegen')} ${show.length(fromEdge)} über ${SIDES[border]} hinaus, wo keine Platte ist. Rücken Sie sie weiter nach innen${inKey(key)}.`,
    opens: ({ border, key, fromEdge, diameter, ...bores }, show) =>
      `${theBores(bores)} ${zahl(bores.count, 'bricht', 'brechen')} ${SIDES[border]} auf: ${zahl(bores.count, 'Sie liegt', 'Sie liegen')} ${show.length(fromEdge)} davon entfernt und ${zahl(bores.count, 'ist', 'sind')} ${show.length(diameter)} weit. Rücken Sie sie weiter nach innen${inKey(key)}.`,
    thin: ({ border, key, fromEdge, diameter, wall, least, ...bores }, show) =>
      `${theBores(bores)}, ${show.length(fromEdge)} ${FROM[border]} und ${show.length(diameter)} weit, ${zahl(bores.count, 'lässt', 'lassen')} ${show.length(wall)} Holz; mindestens ${show.length(least)} müssen bleiben (\`least-wall\`). Rücken Sie sie weiter nach innen${inKey(key)}.`,
  },
  'plan-replay-differs': {
    differs: ({ panel, fault }, show) =>
      `Die Rüstungen ergeben nicht das Bohrbild von ${panel}. ${show.tell(fault)} ${OUR_FAULT}: Bohren Sie diese Platte nicht danach.`,
  },
  'screws-hidden': {
    hidden: ({ count, shelves, dividers, pitch, panel }, show) =>
      `Die ${anzahl(count, 'Schraube', 'Schrauben')} von ${und(shelves)} gehen von beiden Flächen auf gleicher Höhe durch ${und(dividers)}, sodass jeder Boden die Schrauben des anderen verdeckt. Versetzen Sie einen der beiden um eine Teilung von ${show.length(pitch)}, oder halten Sie ihn mit einem anderen Verbinder (\`joint\` von ${panel}).`,
    otherFace: ({ shelf, divider }) => `${shelf} liegt an der anderen Fläche von ${divider}.`,
  },
} satisfies Translations;

const MOVE = 'Versetzen Sie eine der beiden.';

interface Bore {
  readonly purpose: keyof typeof BORES;
  readonly hole: number | null;
  readonly line: 'front' | 'rear' | null;
  readonly mate: string | null;
  readonly fromFront: number;
  readonly edge: keyof typeof FROM;
  readonly across: number;
  readonly from: keyof typeof FROM;
}

/** 'die Dübelbohrung für bottom (37 mm von der Vorderkante und 328 mm vom unteren Ende)' */
function placed({ purpose, hole, line, mate, fromFront, edge, across, from }: Bore, show: Show): string {
  const what =
    hole !== null && line !== null
      ? `Loch ${hole} der ${LINE[line]}n Reihe`
      : `die ${BORES[purpose][0]}${mate === null ? '' : ` für ${mate}`}`;
  return `${what} (${show.length(fromFront)} ${FROM[edge]} und ${show.length(across)} ${FROM[from]})`;
}

const alike = (more: number): readonly string[] =>
  more === 0 ? [] : [`Dasselbe gilt aus demselben Grund für ${anzahl(more, 'weiteres Paar', 'weitere Paare')}.`];

interface Depth {
  readonly purpose: keyof typeof BORES;
  readonly count: number;
  readonly panels: readonly string[];
  readonly depth: number;
  readonly through: boolean;
  readonly machine: string;
  readonly range: { readonly min: number; readonly max: number };
}
const depthOut = ({ depth, through, machine, range, ...bores }: Depth, show: Show): string =>
  `${theBores(bores)} ${zahl(bores.count, 'geht', 'gehen')} ${through ? `durch, wofür die Bohrer ${show.length(depth)} tief fahren` : `${show.length(depth)} tief`}; ${quoted(machine)} bohrt zwischen ${show.length(range.min)} und ${show.length(range.max)} tief.`;

const shallower = (bores: { readonly purpose: string }): string =>
  isRow(bores) ? 'Wählen Sie eine kleinere `row-depth` in der Werkstattdatei' : 'Bohren Sie weniger tief';

interface Sum {
  readonly panel: string;
  readonly mates: readonly string[];
  readonly face: readonly [panel: string, depth: number];
  readonly end: readonly [panel: string, depth: number];
  readonly dowel: { readonly name: string; readonly noun: string; readonly length: number };
  readonly habit: number;
}
const added = ({ panel, mates, face, end }: Sum, show: Show): string =>
  `Die Bohrungen von ${und([panel, ...mates])} ergeben zusammen ${show.length(face[1] + end[1])} (${show.length(face[1])} in der Fläche von ${face[0]}, ${show.length(end[1])} in der Stirn von ${end[0]})`;
/** Was beide Bohrungen zusammen tiefer sein dürfen als der Dübel; siehe die Regel. */
const GLUE = [500, 2000] as const;
const together = ({ dowel, habit }: Sum, show: Show): string =>
  `Ändern Sie eine Tiefe so, dass beide zusammen ${show.length(dowel.length + habit)} ergeben: ${show.length(dowel.length)} für den ${noun(dowel.noun).bare} und ${show.length(habit)} für den Leim (zwischen ${show.length(GLUE[0])} und ${show.length(GLUE[1])}).`;

const at = (panel: string, places: readonly number[], show: Show): readonly string[] =>
  places.length === 0 ? [] : [`${lengths(places, show)} in ${panel}`];

const STRAYS = {
  thickness: 'Plattendicke',
  width: 'Plattenbreite',
  length: 'Plattenlänge',
  squareness: 'Rechtwinkligkeit',
  stop: 'Anschlagstellung',
  drill: 'Verlaufen des Bohrers',
  dowelPlay: 'Dübelspiel',
} as const;
const MISFITS = {
  front: { name: 'Der Versatz an der Vorderkante', key: 'front-limit' },
  step: { name: 'Die Stufe an der Außenfläche', key: 'step-limit' },
  gap: { name: 'Die Fuge', key: 'gap-limit' },
  play: { name: 'Die Abweichung der Dübelstellen', key: 'dowel-play' },
} as const;

function mitStellen(isListed: boolean): string {
  return isListed ? 'mit `dowels`' : 'mit `end-dowels` der Platte (unter `panels`)';
}
