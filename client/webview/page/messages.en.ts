import { labels, phrases } from '../../../shared-core/words/told.js';

/** What every page has. */
export const LABELS = labels({
  splitter: 'Drag to resize the lists, or double-click to reset them',
  showWhole: 'Show the whole drawing (0)',
  zoomOut: 'Zoom out (−)',
  zoomIn: 'Zoom in (+)',
  waiting: 'Waiting for the drawing.',
  change: '(change)',
});

export const PHRASES = phrases({
  /** @param why what is wrong with the text, as a sentence */
  stale: (why: string) => `Not up to date. ${why}`,
  zoom: (percent: number) => `${percent} %`,
  zoomed: (percent: number) => `${percent} percent of the whole drawing; show the whole (0)`,
  pictureFailed: (why: string) => `The picture could not be made: ${why}`,
});
