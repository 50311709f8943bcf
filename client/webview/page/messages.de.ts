import { labels, phrases } from '../../../shared-core/words/told.js';

export const LABELS = labels({
  splitter: 'Ziehen ändert die Größe der Listen, ein Doppelklick setzt sie zurück',
  showWhole: 'Ganze Zeichnung zeigen (0)',
  zoomOut: 'Verkleinern (−)',
  zoomIn: 'Vergrößern (+)',
  waiting: 'Warten auf die Zeichnung.',
  change: '(ändern)',
});

export const PHRASES = phrases({
  stale: (why: string) => `Nicht auf dem neuesten Stand. ${why}`,
  zoom: (percent: number) => `${percent} %`,
  zoomed: (percent: number) => `${percent} Prozent der ganzen Zeichnung; ganze Zeichnung zeigen (0)`,
  pictureFailed: (why: string) => `Das Bild ließ sich nicht machen: ${why}`,
});
