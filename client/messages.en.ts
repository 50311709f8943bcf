import { counted } from '../shared-core/words/english.js';
import { labels, phrases } from '../shared-core/words/told.js';

/** What the extension calls things: in lists to choose from, in the status bar, and among tasks. */
export const NAMES = labels({
  program: 'Borewright',
  millimetres: 'Millimetres',
  inches: 'Inches',
  unitAsked: 'Unit of the bare numbers in the file',
  jobsOfShop: 'Jobs that name this shop file',
  statusItem: 'Borewright: unit, shop and findings',
  statusMeaning: 'Unit of bare numbers, shop and findings of this file. Click to show the findings.',
  builtInShop: 'built-in shop',
  noFaults: 'no errors or warnings',
  checkAll: 'check all files',
});

/** What the extension says outside its panels. */
export const say = phrases({
  stopped: () => 'The language server has stopped. Run the command “Borewright: Restart Language Server”.',
  startsAgain: () => 'The language server has ended and is started again.',
  endsTooOften: () =>
    'Borewright: the language server has ended five times within three minutes and is not started again. Its output says why. Close the file that it fails at, then run the command “Borewright: Restart Language Server”.',
  notStarted: (why: string) => `Borewright: the language server did not start: ${why}`,
  restarted: () => 'Borewright: the language server has been restarted.',
  notRestarted: (why: string) => `Borewright: the language server could not be restarted: ${why}`,
  noShop: () => 'This job has no shop file that can be opened. Name one with `shop: NAME.shop.yaml`.',
  noJobOfShop: () => 'No job in this workspace names this shop file.',
  errors: (count: number) => counted(count, 'error'),
  warnings: (count: number) => counted(count, 'warning'),
  check: (path: string) => `check ${path}`,
});
