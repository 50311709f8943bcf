import { labels } from '../told.js';

/** What papers are called in German, on them and where they are chosen. */
export const PAPER_TITLES = labels({
  'cut-list': 'Zuschnittliste',
  'sheet-layouts': 'Plattenaufteilung',
  'banding-list': 'Kantenliste',
  'set-ups': 'Rüstliste',
  'bore-maps': 'Bohrbilder',
  'hardware-list': 'Beschlagliste',
  assembly: 'Zusammenbau',
  checking: 'Prüfblatt',
  'panel-labels': 'Plattenetiketten',
  cost: 'Kosten und Zeit',
});
