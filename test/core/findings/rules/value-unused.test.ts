import { expect, test } from 'vitest';
import { inWords } from '../../../in-words.js';
import { analyse } from '../jobs.js';
import { rule } from './rule-tests.js';

rule('value-unused', {
  tells: [
    {
      carcass: 'kind: base\nwidth: 600\ntop: over\n«rail-width»: 90',
      says: '`rail-width` does nothing here: it counts only with `top: rails`. Remove it, or change what it depends on.',
      severity: 'warning',
    },
    {
      carcass: 'kind: base\nwidth: 600\nback: { how: none, «groove»: 10 }',
      says: '`groove` does nothing here: it counts only with a back that is grooved or rebated. Remove it, or change what it depends on.',
    },
    {
      carcass: 'kind: base\nwidth: 600\nback: { how: rebated, «inset»: 10 }',
      says: '`inset` does nothing here: it counts only with a grooved back. Remove it, or change what it depends on.',
    },
    {
      carcass: 'kind: base\nwidth: 600\npanels:\n  bottom:\n    «rows»: both',
      says: '`rows` does nothing here: it counts only on a side or a divider. Remove it, or change what it depends on.',
      panel: 'bottom',
    },
    {
      carcass: 'kind: base\nwidth: 600\npanels:\n  back:\n    «joint»: dowel-8x30',
      says: '`joint` does nothing here: it counts only on a panel with a joint that does not say it itself. Remove it, or change what it depends on.',
      panel: 'back',
    },
    {
      carcass: 'kind: base\nwidth: 600\nloose-shelves: 1\npanels:\n  loose-1:\n    «dowels»: [50]',
      says: '`dowels` does nothing here: it counts only on a panel with a joint that does not say it itself. Remove it, or change what it depends on.',
      panel: 'loose-1',
    },
    {
      carcass: 'kind: base\nwidth: 600\nrows: front\n«rear-row»: 400',
      says: '`rear-row` does nothing here: it counts only where rear rows are bored (`rows: both`). Remove it, or change what it depends on.',
    },
    {
      carcass: 'kind: base\nwidth: 600\nloose-shelves: [{ at: 200, «bay»: 1 }]',
      says: '`bay` does nothing here: it counts only where dividers part the carcass into bays. Remove it, or change what it depends on.',
    },
  ],
  sound: [
    { carcass: 'kind: base\nwidth: 600\nrail-width: 90' },
    { carcass: 'kind: base\nwidth: 600\nback: { how: rebated, groove: 10 }' },
    { carcass: 'kind: base\nwidth: 600\nrear-row: 421' },
  ],
  repairs: [
    [
      'Remove `rail-width`',
      'carcasses:\n  sink:\n    kind: base\n    width: 600\n    top: over\n    rail-width: 90 # gone\n',
      'carcasses:\n  sink:\n    kind: base\n    width: 600\n    top: over\n',
    ],
  ],
});

const told = (text: string): string[] =>
  analyse(text)
    .findings()
    .filter(({ finding }) => finding.rule === 'value-unused')
    .map(({ finding }) => inWords(finding.message, 'mm'));

test('a default is told only where it counts in no carcass', () => {
  const job = (top: string): string =>
    `defaults:\n  rail-width: 90\ncarcasses:\n  a:\n    kind: base\n    width: 600\n    top: over\n  b:\n    kind: base\n    width: 600\n    top: ${top}\n`;
  expect(told(job('rails'))).toEqual([]);
  expect(told(job('over'))).toEqual([
    '`rail-width` does nothing in any carcass of this job: it counts only with `top: rails`. Remove it, or change what it depends on.',
  ]);
});

test('a default plinth is told where all carcasses hang, which take none from the defaults', () => {
  const job = (second: string): string =>
    `defaults: { plinth: 100 }\ncarcasses:\n  a: { kind: wall, width: 600 }\n  b: { width: 600, ${second} }\n`;
  expect(told(job('kind: base'))).toEqual([]);
  expect(told(job('kind: wall, plinth: 80'))).toEqual([
    '`plinth` does nothing in any carcass of this job: it counts only where the carcass stands on the floor. Remove it, or change what it depends on.',
  ]);
});
