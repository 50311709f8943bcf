import { counted } from '../../../shared-core/words/english.js';
import { labels, phrases } from '../../../shared-core/words/told.js';

/** What the page of the bore map has. */
export const LABELS = labels({
  carcass: 'Carcass',
  panel: 'Panel',
  choosePanel: 'choose a panel',
  boreMap: 'Bore map',
  boreMapMeaning: 'One panel with its dimensions',
  allPanels: 'All panels',
  allPanelsMeaning: 'Every panel of the carcass',
  drawing: 'Drawing',
  drawingAndLists: 'Drawing and lists',
  follow: 'Follow cursor',
  followMeaning: 'Draw the panel at the cursor; when this is off, the drawing stays on its panel',
  more: 'More',
  moreMeaning: 'Another preview, picture, print',
  another: 'Another preview that stays on this panel',
  copy: 'Copy as picture',
  svg: 'Save as SVG',
  png: 'Save as PNG',
  print: 'Print',
  papers: 'Write shop papers',
  copied: 'Copied as a picture.',
  measure: 'Measure',
  measureMeaning: 'Measure from one bore to another (M)',
  chooseFirst: 'Choose the first bore.',
  twoPanels: 'These bores are in different panels. Choose two in the same panel.',
  findings: 'Findings',
  noFindings: 'No findings here.',
  holeTable: 'Hole table',
  holes: 'Holes',
  noBores: 'No bores in this panel.',
  notes: 'Notes',
  keys:
    'Tab goes through the lines of the hole table, arrow keys go from bore to bore, Enter goes to the text. ' +
    'M on one bore and then on another measures between them. Plus and minus zoom, 0 shows the whole.',
  keysForBores: 'Tab and arrows: bores',
  keyForText: 'Enter: text',
  keyForMeasuring: 'M: measure',
  keysForZoom: '+ − 0: zoom',
});

export const SEVERITIES = labels({
  error: 'Error',
  warning: 'Warning',
  info: 'Info',
});

export const PHRASES = phrases({
  measuredFrom: (from: string) => `From: ${from}.\nChoose the second bore.`,
  measured: (from: string, to: string, figures: readonly string[]) =>
    `From: ${from}. To: ${to}.\n${figures.join(' · ')}`,
  findings: (count: number) => counted(count, 'finding'),
  line: (number: string) => `Line ${number}: show in the text`,
  holesOf: (title: string) => `Holes of ${title}`,
  looseShelf: (panel: string) => `Loose shelf ${panel}`,
  shelfHole: (hole: number, holes: number) => `Hole ${hole} of ${holes}`,
  openPanel: (panel: string) => `${panel}: show its bore map`,
});
