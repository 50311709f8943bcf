import { labels, phrases } from '../../shared-core/words/told.js';

/** What the panels are called. */
export const TITLES = labels({
  boreMap: 'Bore map',
  allPanels: 'All panels',
  boxView: 'Box view',
  machineView: 'Machine view',
  setUpList: 'Set-up list',
  machines: 'Machines',
});

/** What is said of a panel outside its page. */
export const say = phrases({
  /** @param kept the carcass and panel that the view stays on; '' where it stays on none */
  titled: (what: string, kept: string, file: string) => `${what} ${kept === '' ? '' : `${kept} · `}${file}`,
  openJobForBores: () => 'Open a job file (NAME.carcass.yaml) to see its bores.',
  openJobForBox: () => 'Open a job file (NAME.carcass.yaml) to see its cabinets.',
  openJobForSetUps: () => 'Open a job file (NAME.carcass.yaml) to see its set-ups.',
  openShop: () => 'Open a shop file (NAME.shop.yaml) to see its machines.',
  noBoreMap: () => 'Click into a bore map first. The command acts on its drawing.',
  drawingFailed: (why: string) => `The drawing could not be made: ${why}`,
  pictureFailed: (why: string) => `The picture could not be made: ${why}`,
  saveFailed: (why: string) => `The picture could not be saved: ${why}`,
  setUpsFailed: (why: string) => `The set-ups could not be worked out: ${why}`,
  machineFailed: (why: string) => `The machine could not be drawn: ${why}`,
  machinesFailed: (why: string) => `The machines could not be drawn: ${why}`,
  boreElsewhere: () => 'Borewright: this comes from the shop file, or from text that has been removed.',
  panelElsewhere: () => 'Borewright: this panel has no line of its own in the job file.',
  saved: (file: string) => `Borewright: ${file} has been saved.`,
  noBrowser: (file: string) => `No browser could be opened. Open ${file} in one to print the drawing.`,
});
