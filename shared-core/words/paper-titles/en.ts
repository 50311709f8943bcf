import { labels } from '../told.js';

/** What papers are called in English, on them and where they are chosen. */
export const PAPER_TITLES = labels({
  'cut-list': 'Cut list',
  'sheet-layouts': 'Sheet layouts',
  'banding-list': 'Banding list',
  'set-ups': 'Set-up list',
  'bore-maps': 'Bore maps',
  'hardware-list': 'Hardware list',
  assembly: 'Assembly',
  checking: 'Checking',
  'panel-labels': 'Panel labels',
  cost: 'Cost and time',
});
