import { labels } from '../told.js';

/** What papers are called in French, on them and where they are chosen. */
export const PAPER_TITLES = labels({
  'cut-list': 'Liste de débit',
  'sheet-layouts': 'Plans de découpe',
  'banding-list': 'Liste des chants',
  'set-ups': 'Liste des réglages',
  'bore-maps': 'Plans de perçage',
  'hardware-list': 'Liste de quincaillerie',
  assembly: 'Montage',
  checking: 'Contrôle',
  'panel-labels': 'Étiquettes des panneaux',
  cost: 'Coût et temps',
});
