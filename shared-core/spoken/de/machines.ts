import type { Show } from '../../words/show.js';
import type { Translations } from '../tables.js';
import { MACHINES } from './text.js';
import { anzahl, handOf, noun, quoted, zahl } from './words.js';

/** Warum keine Rüstung etwas bohrt. */
export const machines = {
  'no-set-up': {
    outsidePanel: () =>
      'Eine Bohrung muss in ihrer Platte liegen, und eine, die nicht durchgeht, muss in ihr enden. Versetzen Sie sie, oder machen Sie sie flacher.',
    noMachine: ({ kind }) =>
      `In der Werkstattdatei fehlt ${noun(MACHINES[kind]).a}. Führen Sie die Maschine auf, wenn die Werkstatt sie hat.`,
    panelSize: ({ machine, measure, range, needed }, show) =>
      `${quoted(machine)} nimmt Platten zwischen ${between(range, show)} ${LONG[measure]} (\`panel\`); diese ist ${show.length(needed)} ${LONG[measure]}. Ändern Sie ihre Größe, oder wählen Sie eine andere Maschine (\`machines\`).`,
    noBit: ({ bit }, show) =>
      `Die Werkstattdatei führt keinen Bohrer von ${show.nominal(bit)} auf (\`bits\`). Nehmen Sie einen anderen Verbinder, oder führen Sie den Bohrer auf, wenn die Werkstatt ihn hat.`,
    depth: ({ machine, range, needed }, show) =>
      `${quoted(machine)} bohrt zwischen ${between(range, show)} tief (\`depth\`); nötig sind ${show.length(needed)}. Ändern Sie die Tiefe der Bohrungen (\`face-depth\`, \`end-depth\` oder den Verbinder). ${BY_MANUAL}`,
    rowDepth: ({ machine, range, needed }, show) =>
      `${quoted(machine)} bohrt zwischen ${between(range, show)} tief (\`depth\`); nötig sind ${show.length(needed)}. Ändern Sie die Tiefe der Reihen (\`row-depth\` in der Werkstattdatei). ${BY_MANUAL}`,
    faceTooFar: ({ machine, spindles, most, needed }, show) =>
      `Die ${anzahl(spindles, 'Spindel', 'Spindeln')} von ${quoted(machine)} ${zahl(spindles, 'reicht', 'reichen')} höchstens ${show.length(most)} vom Lineal (\`spindles\`); nötig sind ${show.length(needed)}. Rücken Sie die Bohrungen nach vorn (\`dowels\`), oder wählen Sie einen Bohrkopf mit mehr Spindeln (\`machines: faces\`).`,
    fenceOffset: ({ machine, range, needed }, show) =>
      `Kein Linealabstand von ${quoted(machine)} zwischen ${between(range, show)} (\`fence-offset\`) bringt Spindeln über diese Bohrungen, die erste ${show.length(needed)} von der Vorderkante. Rücken Sie die Bohrungen unter die Spindeln (\`dowels\`). ${BY_MANUAL}`,
    faceStops: ({ machine, side, needed }, show) =>
      `Kein Anschlag von ${quoted(machine)} ${handOf(side)} lässt sich ${show.length(needed)} von den Spindeln stellen (\`stops\`). Rücken Sie die Bohrungen, oder führen Sie den Anschlag auf, wenn die Maschine dort einen hat.`,
    height: ({ machine, range, needed }, show) =>
      `Die Spindeln von ${quoted(machine)} lassen sich zwischen ${between(range, show)} über dem Tisch stellen (\`height\`); nötig sind ${show.length(needed)}. Nehmen Sie eine Platte anderer Dicke, oder wählen Sie einen anderen Bohrkopf (\`machines: ends\`). ${BY_MANUAL}`,
    endTooFar: ({ machine, spindles, most, needed }, show) =>
      `Die ${anzahl(spindles, 'Spindel', 'Spindeln')} von ${quoted(machine)} ${zahl(spindles, 'reicht', 'reichen')} höchstens ${show.length(most)} vom Winkelanschlag (\`spindles\`); nötig sind ${show.length(needed)}. Rücken Sie die Bohrungen nach vorn (\`dowels\`), oder wählen Sie einen Bohrkopf mit mehr Spindeln (\`machines: ends\`).`,
    noSquaringStop: ({ machine, side }) =>
      `${quoted(machine)} hat ${handOf(side)} keinen Winkelanschlag, wo die Vorderkante zu liegen kommt (\`stops\`). Führen Sie ihn in der Werkstattdatei auf, wenn die Maschine einen hat.`,
    squaringStops: ({ machine, side, needed }, show) =>
      `Kein Winkelanschlag von ${quoted(machine)} ${handOf(side)} (\`stops\`) bringt Spindeln über diese Bohrungen, die erste ${show.length(needed)} von der Vorderkante. Rücken Sie die Bohrungen (\`dowels\`), oder führen Sie den Anschlag auf, wenn die Maschine dort einen hat.`,
    pitch: ({ machine, has, needed }, show) =>
      `Die Spindeln von ${quoted(machine)} stehen ${show.nominal(has)} auseinander (\`pitch\`); die Reihe braucht ${show.nominal(needed)}. Wählen Sie eine Reihenbohrmaschine mit dieser Teilung (\`machines: rows\`).`,
    throat: ({ machine, most, needed }, show) =>
      `Die Köpfe von ${quoted(machine)} reichen höchstens ${show.length(most)} von der Vorderkante (\`throat\`); nötig sind ${show.length(needed)}. Rücken Sie die Reihe nach vorn (\`rear-row\`). ${BY_MANUAL}`,
    heads: ({ machine, heads, range, needed }, show) =>
      `${quoted(machine)} hat ${anzahl(heads, 'Kopf', 'Köpfe')} (\`heads\`), ${zahl(heads, 'der', 'die')} zwischen ${between(range, show)} von der Vorderkante ${zahl(heads, 'steht', 'stehen')}; nötig sind ${show.length(needed)}. Lassen Sie die hintere Reihe weg (\`rows: front\`), oder wählen Sie eine Maschine mit mehr Köpfen (\`machines: rows\`).`,
    setback: ({ machine, range, needed }, show) =>
      `Der erste Kopf von ${quoted(machine)} lässt sich zwischen ${between(range, show)} von der Vorderkante stellen (\`setback\`), und kein Kopf reicht ${show.length(needed)} weit. Rücken Sie die Reihe (\`row-setback\`). ${BY_MANUAL}`,
    headDistance: ({ machine, range, needed }, show) =>
      `Die Köpfe von ${quoted(machine)} lassen sich zwischen ${between(range, show)} auseinander stellen (\`head-distance\`); nötig sind ${show.length(needed)}. Rücken Sie die hintere Reihe (\`rear-row\`). ${BY_MANUAL}`,
    rowStops: ({ machine, side, needed }, show) =>
      `Kein Anschlag von ${quoted(machine)} ${handOf(side)} (\`stops\`) bringt eine Spindel über das erste Loch, ${show.length(needed)} von diesem Ende. Ändern Sie \`row-offset\`, oder führen Sie den Anschlag auf, wenn die Maschine dort einen hat.`,
    noIndexPins: ({ machine, holes, spindles }) =>
      `Die Reihe hat ${holes} Löcher, mehr als die ${anzahl(spindles, 'Spindel', 'Spindeln')} von ${quoted(machine)} von den Anschlägen aus ${zahl(spindles, 'bohrt', 'bohren')}, und die Maschine hat keine Stifte zum Weiterrücken (\`index-pins\`). Machen Sie die Reihe kürzer, oder wählen Sie eine Maschine mit solchen Stiften (\`machines: rows\`).`,
    indexRange: ({ machine, holes, spindles, most, needed }, show) =>
      `Die Reihe hat ${holes} Löcher, mehr als die ${anzahl(spindles, 'Spindel', 'Spindeln')} von ${quoted(machine)} in einem Hub ${zahl(spindles, 'bohrt', 'bohren')}. Die Platte müsste um ${show.length(needed)} weitergerückt werden${most === null ? '' : `; höchstens ${show.length(most)} gehen`} (\`index-range\`). Machen Sie die Reihe kürzer (\`height\`, \`row-offset\`). ${BY_MANUAL}`,
    stopHeld: ({ machine }) =>
      `Der Anschlag von ${quoted(machine)}, an dem die Platte liegt, lässt sich für das Weiterrücken nicht absenken (\`lowers\`). Schreiben Sie in der Werkstattdatei \`lowers: yes\` dazu, wenn die Maschine es erlaubt.`,
    cupDistance: ({ machine, range, needed }, show) =>
      `Das Lineal von ${quoted(machine)} lässt sich zwischen ${between(range, show)} vom Topf stellen (\`distance\`); nötig sind ${show.length(needed)}. Rücken Sie die Töpfe (\`reveal\` oder \`gap\` der Türen). ${BY_MANUAL}`,
    cupNoStops: ({ machine }) =>
      `${quoted(machine)} hat in der Werkstattdatei keine Anschläge (\`stops\`), sodass nichts sagt, wo entlang der Kante ein Topf zu liegen kommt. Führen Sie seine Anschläge auf.`,
    cupStops: ({ machine, ends: [near, far] }, show) =>
      `Der Topf liegt ${show.length(near)} von einem Ende der Tür und ${show.length(far)} vom anderen, und kein Anschlag von ${quoted(machine)} lässt sich dorthin stellen (\`stops\`). Führen Sie den Anschlag auf, wenn die Maschine dort einen hat, oder nehmen Sie niedrigere Türen übereinander (\`fronts\`).`,
  },
  tolerance: {
    notCarriedOut: ({ panel }) => `Die Rüstungen für ${panel} lassen sich nicht ausführen.`,
    halfBored: () => 'Keine Rüstung bohrt beide Hälften einer Stelle.',
  },
} satisfies Translations;

const BY_MANUAL = 'Erweitern Sie den Bereich in der Werkstattdatei nur, wenn die Anleitung der Maschine es erlaubt.';
const LONG = { length: 'lang', width: 'breit', thickness: 'dick' } as const;
const between = ({ min, max }: { readonly min: number; readonly max: number }, show: Show): string =>
  `${show.length(min)} und ${show.length(max)}`;
