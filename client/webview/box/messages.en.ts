import { labels, phrases } from '../../../shared-core/words/told.js';

/** What the page of the box view has. */
export const LABELS = labels({
  view: 'View',
  cabinet: 'Cabinet',
  cabinetMeaning: 'One carcass with its doors',
  wall: 'Wall',
  wallMeaning: 'All carcasses that stand along the same wall, with the worktop',
  from: 'Seen from',
  corner: 'Corner',
  front: 'Front',
  side: 'Side',
  above: 'Above',
  apart: 'Apart',
  open: 'Open',
  copy: 'Copy',
  copyMeaning: 'Copy as a picture',
  save: 'Save PNG',
  saveMeaning: 'Save as a picture',
  panels: 'Panels',
  viewAndLists: 'View and lists',
  keys:
    'Arrow keys turn the cabinet, plus and minus bring it nearer and further away, 0 shows the whole. ' +
    'Page Up and Page Down go from panel to panel, Enter goes to its text. O opens and closes, A takes apart and puts together.',
  keysInShort: 'Arrows: turn · + − 0: size · Page Up, Page Down: panels · Enter: text · O: open · A: apart',
  noDepth:
    'This machine or this window draws nothing in three dimensions (WebGL is off or missing), so there is no picture here. ' +
    'The lists below say what stands in it. Try to turn on hardware acceleration in the editor’s or the browser’s settings.',
});

export const PHRASES = phrases({
  boresOf: (panel: string) => `Bores of ${panel}`,
});
