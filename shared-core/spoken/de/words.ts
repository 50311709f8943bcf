import type { NumberedHoles } from '../../papers/pins.js';
import type { BoresTold } from '../../fittings/fitting.js';
import type { BorePurpose } from '../../fittings/names.js';
import { kilograms } from '../../loads/messages.js';
import type { Micrometres, Unit } from '../../length/units.js';
import { counted, listed, runsOfNumbers } from '../../words/english.js';
import { quoted as inEnglishQuotes } from '../../words/english.js';
import type { JointPanels, MixedEnd, SideName } from '../../words/names.js';
import type { Show } from '../../words/show.js';

/** Ein Text des Besitzers in Anführungszeichen. */
export const quoted = (text: string): string => `„${inEnglishQuotes(text).slice(1, -1)}“`;
export const und = (words: readonly string[]): string => listed(words, 'und');
export const oder = (words: readonly string[]): string =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} oder ${words.at(-1)!}`;
/** Das erste für eines, das zweite für jede andere Zahl. */
export const zahl = (count: number, one: string, several: string): string => (count === 1 ? one : several);
export const anzahl = (count: number, one: string, several: string): string => counted(count, one, several);
/** '1, 6 und 10 bis 15'. */
export const runs = (numbers: readonly number[]): string => runsOfNumbers(numbers, 'bis', 'und');
/** Mit dem Komma der Sprache. */
export const komma = (figure: string): string => figure.replace('.', ',');
export const kg = (weight: number): string => komma(kilograms(weight));
export const lengths = (places: readonly Micrometres[], show: Show): string => und(places.map(show.length));

/** '7 min 30 s'. */
export function zeit(seconds: number): string {
  const [hours, minutes, rest] = [Math.floor(seconds / 3600), Math.floor(seconds / 60) % 60, seconds % 60];
  const parts = [hours > 0 ? `${hours} h` : '', minutes > 0 ? `${minutes} min` : '', rest > 0 ? `${rest} s` : ''];
  return parts.filter((part) => part !== '').join(' ') || 'keine Zeit';
}

/** Wofür Bohrungen sind; alle sind weiblich. */
export const BORES: Readonly<Record<BorePurpose, readonly [one: string, several: string]>> = {
  dowel: ['Dübelbohrung', 'Dübelbohrungen'],
  clearance: ['Durchgangsbohrung', 'Durchgangsbohrungen'],
  recess: ['Senkung für den Schraubenkopf', 'Senkungen für Schraubenköpfe'],
  pilot: ['Vorbohrung', 'Vorbohrungen'],
  cam: ['Exzenterbohrung', 'Exzenterbohrungen'],
  'cam-bolt': ['Bolzenbohrung', 'Bolzenbohrungen'],
  'cam-stud': ['Zapfenbohrung', 'Zapfenbohrungen'],
  row: ['Reihenbohrung', 'Reihenbohrungen'],
  cup: ['Topfbohrung', 'Topfbohrungen'],
  'cup-screw': ['Schraubenbohrung neben dem Topf', 'Schraubenbohrungen neben Töpfen'],
  plate: ['Bohrung der Montageplatte', 'Bohrungen der Montageplatte'],
  slide: ['Auszugbohrung', 'Auszugbohrungen'],
  'slide-in-box': ['Auszugbohrung', 'Auszugbohrungen'],
  pull: ['Griffbohrung', 'Griffbohrungen'],
  'plinth-clip': ['Klammerbohrung', 'Klammerbohrungen'],
  foot: ['Fußbohrung', 'Fußbohrungen'],
  angle: ['Winkelbohrung', 'Winkelbohrungen'],
  'angle-in-front': ['Winkelbohrung', 'Winkelbohrungen'],
  'rail-socket': ['Bohrung einer Kleiderstange', 'Bohrungen von Kleiderstangen'],
  bracket: ['Aufhängerbohrung', 'Aufhängerbohrungen'],
  'front-clearance': ['Durchgangsbohrung für die Front', 'Durchgangsbohrungen für die Front'],
  'front-pilot': ['Vorbohrung für die Front', 'Vorbohrungen für die Front'],
  spare: ['Leerbohrung', 'Leerbohrungen'],
};
/** 'Die Dübelbohrung in bottom', 'Die 4 Dübelbohrungen in bottom und top'. */
export const theBores = ({ purpose, count, panels }: BoresTold): string =>
  `Die ${count === 1 ? BORES[purpose][0] : `${count} ${BORES[purpose][1]}`} in ${und(panels)}`;

/** 'von der Vorderkante'. */
export const FROM: Readonly<Record<SideName | MixedEnd, string>> = {
  'front edge': 'von der Vorderkante',
  'back edge': 'von der Hinterkante',
  'hinge edge': 'von der Bandkante',
  'closing edge': 'von der Schließkante',
  'upper edge': 'von der Oberkante',
  'lower edge': 'von der Unterkante',
  'inner edge': 'von der inneren Kante',
  'corner edge': 'von der Eckkante',
  'outer edge': 'von der äußeren Kante',
  'slanting edge': 'von der Schrägkante',
  'inside face': 'von der Innenfläche',
  'outside face': 'von der Außenfläche',
  'bottom end': 'vom unteren Ende',
  'top end': 'vom oberen Ende',
  'left end': 'vom linken Ende',
  'right end': 'vom rechten Ende',
  'front end': 'vom vorderen Ende',
  'back end': 'vom hinteren Ende',
  'bottom, left or front end': 'vom unteren, linken oder vorderen Ende',
  'bottom or left end': 'vom unteren oder linken Ende',
};
/** 'die Vorderkante'. */
export const SIDES: Readonly<Record<SideName | MixedEnd, string>> = {
  'front edge': 'die Vorderkante',
  'back edge': 'die Hinterkante',
  'hinge edge': 'die Bandkante',
  'closing edge': 'die Schließkante',
  'upper edge': 'die Oberkante',
  'lower edge': 'die Unterkante',
  'inner edge': 'die innere Kante',
  'corner edge': 'die Eckkante',
  'outer edge': 'die äußere Kante',
  'slanting edge': 'die Schrägkante',
  'inside face': 'die Innenfläche',
  'outside face': 'die Außenfläche',
  'bottom end': 'das untere Ende',
  'top end': 'das obere Ende',
  'left end': 'das linke Ende',
  'right end': 'das rechte Ende',
  'front end': 'das vordere Ende',
  'back end': 'das hintere Ende',
  'bottom, left or front end': 'das untere, linke oder vordere Ende',
  'bottom or left end': 'das untere oder linke Ende',
};
/** 'Vorderkante', auch für Namen, die schon deutsch sind. */
export const bare = (side: string): string =>
  side in SIDES
    ? SIDES[side as SideName]
        .replace(/^die /, '')
        .replace(/^das (.*) Ende$/, (_, which: string) => `${which.replace(/e\b/g, 'es')} Ende`)
    : side;
/** Mit Artikel: 'die Vorderkante'; was schon deutsch ist, ist eine Fläche. */
export const die = (side: string): string => (side in SIDES ? SIDES[side as SideName] : `die ${side}`);
/** 'von der Vorderkante'. */
export const from = (side: string): string => (side in FROM ? FROM[side as SideName] : `von der ${side}`);

/** 'in der Innenfläche', 'im linken Ende'. */
export const im = (side: string): string => {
  const named = die(side);
  return named.startsWith('das ')
    ? `im ${named.slice(4).replace(/(\w)e\b(?=.*Ende)/g, '$1en')}`
    : `in der ${bare(side)}`;
};
export const maßeinheit = (unit: Unit): string => (unit === 'mm' ? 'Millimetern' : 'Zoll');

/** 'vom unteren Ende' auch für Namen, die hier nicht stehen. */
export const fromEnd = (end: string): string => (end in FROM ? FROM[end as SideName] : `von: ${end}`);

export const LINE = { front: 'vordere', rear: 'hintere' } as const;
export const lineOf = (line: string): string => (line === 'front' ? LINE.front : line === 'rear' ? LINE.rear : line);
/** 'Loch 11'; 'Loch 11 in left und right, 10 in divider-1'. */
export const holesTold = (holes: NumberedHoles): string =>
  holes.length === 1
    ? `Loch ${holes[0]!.number}`
    : `Loch ${holes.map(({ number, uprights }) => `${number} in ${und(uprights)}`).join(', ')}`;
export const HAND = { left: 'links', right: 'rechts' } as const;
export const handOf = (hand: string): string => (hand === 'left' ? HAND.left : hand === 'right' ? HAND.right : hand);

/** 'Die Verbindung von bottom und left'; zwei werden genannt, die anderen gezählt. */
export function joints(told: readonly JointPanels[]): string {
  const [first, second] = told.map((panels) => und(panels));
  if (second === undefined) return `Die Verbindung von ${first ?? ''}`;
  if (told.length === 2) return `Die Verbindungen von ${first!} und von ${second}`;
  return `Die Verbindungen von ${first!}, von ${second} und ${told.length - 2} weitere`;
}

interface Noun {
  /** Mit unbestimmtem Artikel: Nominativ, Genitiv; und ohne Artikel. */
  readonly a: string;
  readonly of: string;
  readonly bare: string;
}
const m = (bare: string, genitive = `${bare}s`): Noun => ({ a: `ein ${bare}`, of: `eines ${genitive}`, bare });
const f = (bare: string): Noun => ({ a: `eine ${bare}`, of: `einer ${bare}`, bare });
const s = (bare: string): Noun => ({ a: bare, of: `der ${bare}`, bare });

/** Was in Dateien benannt und beschrieben wird. */
const NOUNS: Readonly<Record<string, Noun>> = {
  carcass: m('Korpus', 'Korpus'),
  job: m('Auftrag'),
  shop: f('Werkstatt'),
  'shop file': f('Werkstattdatei'),
  board: m('Plattenwerkstoff'),
  band: m('Kantenband', 'Kantenbands'),
  bands: s('Kantenbänder'),
  fitting: m('Verbinder'),
  hinge: m('Topfband', 'Topfbands'),
  slide: m('Auszug', 'Auszugs'),
  'cup screws': s('Topfschrauben'),
  pull: m('Griff', 'Griffs'),
  pulls: s('Griffe'),
  bracket: m('Aufhänger', 'Aufhängers'),
  brackets: s('Aufhänger'),
  'bracket bore': f('Aufhängerbohrung'),
  'wardrobe rail': f('Kleiderstange'),
  'wardrobe-rail': f('Kleiderstange'),
  'wardrobe rail in a bay': f('Kleiderstange'),
  'wardrobe rails': s('Kleiderstangen'),
  foot: m('Fuß', 'Fußes'),
  angle: m('Winkel', 'Winkels'),
  'plinth clip': f('Sockelklammer'),
  drawers: s('Schubkästen'),
  front: f('Front'),
  machine: f('Maschine'),
  machines: s('Maschinen'),
  stop: m('Anschlag'),
  panel: f('Platte'),
  back: f('Rückwand'),
  divider: f('Mittelwand'),
  shelf: m('Boden'),
  doors: s('Türen'),
  dowel: m('Dübel'),
  'connector screw': f('Verbindungsschraube'),
  'cam fitting': m('Exzenterverbinder'),
  'vertical head': m('Vertikalbohrkopf', 'Vertikalbohrkopfs'),
  'horizontal head': m('Horizontalbohrkopf', 'Horizontalbohrkopfs'),
  'line drill': f('Reihenbohrmaschine'),
  'cup borer': f('Topfbandbohrmaschine'),
  'panel saw': f('Plattensäge'),
  'edge bander': f('Kantenanleimmaschine'),
  'case clamp': f('Korpuspresse'),
  clamp: m('Niederhalter'),
  sheet: f('Rohplatte'),
  size: f('Größe'),
  sizes: s('Größen'),
  standing: f('Lage'),
  tolerances: s('Toleranzen'),
  habits: s('Gewohnheiten'),
  handling: f('Handhabung'),
  changeover: f('Umstellung'),
  defaults: s('Vorgaben'),
  'panel range': m('Plattenbereich'),
  'label sheet': m('Etikettenbogen', 'Etikettenbogens'),
  'end panels': s('Wangen'),
  fillers: s('Passleisten'),
  'row hole': f('Reihenbohrung'),
  'row holes': s('Reihenbohrungen'),
  'hinge cup': m('Topf', 'Topfs'),
};
/** Der Name einer Sache in einer Datei; was hier fehlt, ist schon deutsch. */
export const noun = (english: string): Noun => NOUNS[english] ?? { a: english, of: `von ${english}`, bare: english };

/** Was Türen, Böden und Maschinen zu tun gibt: 'eine Rüstung, 2 Hübe und 30 s'. */
export const work = ({
  setUps,
  strokes,
  seconds,
}: {
  readonly setUps: number;
  readonly strokes: number;
  readonly seconds: number;
}): string =>
  und([
    ...(setUps > 0 ? [anzahl(setUps, 'Rüstung', 'Rüstungen')] : []),
    ...(strokes > 0 ? [anzahl(strokes, 'Hub', 'Hübe')] : []),
    ...(seconds > 0 ? [zeit(seconds)] : []),
  ]);

/** Kein Fehler des Besitzers. */
export const OUR_FAULT = 'Der Fehler liegt bei Borewright, nicht bei Ihnen';
