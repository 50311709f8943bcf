import { counted } from '../../../shared-core/words/english.js';
import { labels, phrases } from '../../../shared-core/words/told.js';

export const LABELS = labels({
  carcass: 'Korpus',
  panel: 'Platte',
  choosePanel: 'Platte wählen',
  boreMap: 'Bohrbild',
  boreMapMeaning: 'Eine Platte mit ihren Maßen',
  allPanels: 'Alle Platten',
  allPanelsMeaning: 'Jede Platte des Korpus',
  drawing: 'Zeichnung',
  drawingAndLists: 'Zeichnung und Listen',
  follow: 'Cursor folgen',
  followMeaning: 'Zeichnet die Platte am Cursor; ist dies aus, bleibt die Zeichnung bei ihrer Platte',
  more: 'Mehr',
  moreMeaning: 'Weitere Vorschau, Bild, Druck',
  another: 'Weitere Vorschau, die bei dieser Platte bleibt',
  copy: 'Als Bild kopieren',
  svg: 'Als SVG speichern',
  png: 'Als PNG speichern',
  print: 'Drucken',
  papers: 'Werkstattpapiere schreiben',
  copied: 'Als Bild kopiert.',
  measure: 'Messen',
  measureMeaning: 'Von einer Bohrung zur anderen messen (M)',
  chooseFirst: 'Wählen Sie die erste Bohrung.',
  twoPanels: 'Diese Bohrungen liegen in verschiedenen Platten. Wählen Sie zwei in derselben Platte.',
  findings: 'Befunde',
  noFindings: 'Hier gibt es keine Befunde.',
  holeTable: 'Lochtabelle',
  holes: 'Löcher',
  noBores: 'Keine Bohrungen in dieser Platte.',
  notes: 'Anmerkungen',
  keys:
    'Tab geht durch die Zeilen der Lochtabelle, Pfeiltasten gehen von Bohrung zu Bohrung, die Eingabetaste geht zum Text. ' +
    'M auf einer Bohrung und dann auf einer anderen misst dazwischen. Plus und Minus ändern die Größe, 0 zeigt das Ganze.',
  keysForBores: 'Tab und Pfeile: Bohrungen',
  keyForText: 'Eingabe: Text',
  keyForMeasuring: 'M: messen',
  keysForZoom: '+ − 0: Größe',
});

export const SEVERITIES = labels({
  error: 'Fehler',
  warning: 'Warnung',
  info: 'Hinweis',
});

export const PHRASES = phrases({
  measuredFrom: (from: string) => `Von: ${from}.\nWählen Sie die zweite Bohrung.`,
  measured: (from: string, to: string, figures: readonly string[]) =>
    `Von: ${from}. Bis: ${to}.\n${figures.join(' · ')}`,
  findings: (count: number) => counted(count, 'Befund', 'Befunde'),
  line: (number: string) => `Zeile ${number}: im Text zeigen`,
  holesOf: (title: string) => `Löcher von ${title}`,
  looseShelf: (panel: string) => `Einlegeboden ${panel}`,
  shelfHole: (hole: number, holes: number) => `Loch ${hole} von ${holes}`,
  openPanel: (panel: string) => `${panel}: Bohrbild zeigen`,
});
