import { expect, test } from 'vitest';
import * as german from '../../client/report/messages.de.js';
import * as english from '../../client/report/messages.en.js';
import * as french from '../../client/report/messages.fr.js';
import { reportText, type Facts } from '../../client/report/text.js';
import { toldFault } from '../../server/told-fault.js';

const facts: Facts = {
  versions: { program: '0.1.0', editor: '1.100.0 (en)', system: 'linux x64, Node v24.0.0' },
  trusted: true,
  settings: [
    ['borewright.inlayHints', 'none'],
    ['borewright.papers.folder', null],
  ],
  files: [
    { sort: 'jobs', lines: [40, 12] },
    { sort: 'shops', lines: [] },
  ],
  findings: new Map([
    ['row-unbalanced', 2],
    ['bit-missing', 1],
  ]),
  waits: [90, 20, 30],
  starts: 2,
  faults: [{ how: 'ended', kind: 'RangeError', frames: ['cutJob (server-thread.cjs:12:34)'], secondsAgo: 7 }],
};

test('says all that it knows, and that nothing was sent', () => {
  expect(reportText(facts, english)).toBe(`Report on Borewright

Read this before you send it to somebody. Until you do, it is on this machine alone; nothing was sent. It holds no text, no names and no paths of your files.

Versions
  Borewright 0.1.0
  editor 1.100.0 (en)
  linux x64, Node v24.0.0

Window
  trusted

Settings that were changed
  borewright.inlayHints: none
  borewright.papers.folder: changed, not shown here

Open files
  job files: 2, with 40, 12 lines
  shop files: 0, with no lines

Findings in all files, by rule
  bit-missing: 1
  row-unbalanced: 2

From a key to all findings
  3 times, 30 ms in the middle, 90 ms at most

Language server
  2 starts
  ended by itself (RangeError), 7 s before this report
    cutJob (server-thread.cjs:12:34)
`);
});

test.each([
  ['German', german, 'Lesen Sie ihn', 'von selbst zu Ende gegangen (RangeError), 7 s vor diesem Bericht'],
  ['French', french, 'Lisez-le', 's’est arrêté de lui-même (RangeError), 7 s avant ce rapport'],
] as const)('says it in %s', (_language, words, first, fault) => {
  const text = reportText(facts, words);
  expect(text).toContain(first);
  expect(text).toContain(fault);
  expect(text.split('\n')).toHaveLength(reportText(facts, english).split('\n').length);
});

test('of a fault it tells where, and neither its words nor a path', () => {
  const fault = new TypeError('cannot read ‘Mrs Example’s oven’\n    at home (/home/somebody/oven.js:1:2)');
  fault.stack = [
    `TypeError: ${fault.message}`,
    '    at cutJob (/home/somebody/.extensions/borewright/dist/server/server-thread.cjs:12:34)',
    '    at async Object.read [as open] (C:\\Users\\Somebody\\dist\\server\\server.cjs:5:6)',
    '    at /home/somebody/dist/server/server.cjs:7:8',
    '    at new Map (<anonymous>)',
    '    at process.processTicksAndRejections (node:internal/process/task_queues:95:5)',
  ].join('\n');
  const told = toldFault('failed', fault);
  expect(told).toEqual({
    how: 'failed',
    kind: 'TypeError',
    frames: ['cutJob (server-thread.cjs:12:34)', 'Object.read (server.cjs:5:6)', 'anonymous (server.cjs:7:8)'],
  });
  fault.name = 'Mrs Example';
  expect(toldFault('ended', fault).kind).toBe('Error');
  expect(toldFault('ended', 'Mrs Example')).toEqual({ how: 'ended', kind: null, frames: [] });
});
