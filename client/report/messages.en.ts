import { counted } from '../../shared-core/words/english.js';
import { labels, phrases } from '../../shared-core/words/told.js';

export const NAMES = labels({
  program: 'Borewright',
  title: 'Report on Borewright',
  readFirst:
    'Read this before you send it to somebody. Until you do, it is on this machine alone; nothing was sent. It holds no text, no names and no paths of your files.',
  versions: 'Versions',
  editor: 'editor',
  window: 'Window',
  trusted: 'trusted',
  restricted: 'restricted',
  settings: 'Settings that were changed',
  notShown: 'changed, not shown here',
  files: 'Open files',
  jobs: 'job files',
  shops: 'shop files',
  findings: 'Findings in all files, by rule',
  waits: 'From a key to all findings',
  server: 'Language server',
  ended: 'ended by itself',
  stuck: 'gave no sign of life',
  failed: 'an answer failed',
  none: 'none',
});

export const say = phrases({
  files: (sort: string, count: number, lines: string) => `${sort}: ${count}, with ${lines || 'no'} lines`,
  waits: (count: number, middle: number, longest: number) =>
    `${counted(count, 'time')}, ${middle} ms in the middle, ${longest} ms at most`,
  starts: (count: number) => counted(count, 'start'),
  fault: (what: string, seconds: number) => `${what}, ${seconds} s before this report`,
});
