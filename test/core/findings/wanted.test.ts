import { expect, test } from 'vitest';
import type { Finding } from '../../../shared-core/findings/finding.js';
import { byPlace } from '../../../shared-core/findings/by-place.js';
import { wantedOf } from '../../../shared-core/findings/wanted.js';
import { analyse } from './jobs.js';

const found = analyse(
  'carcasses:\n  a:\n    kind: base\n    width: 600\n    depth: 800\n    rear-row: 741\n',
).carcasses[0]!.findings.filter(({ rule }) => rule === 'row-past-reach');

test('a finding is told as loudly as its reader wants, and is else the same', () => {
  const [one] = found as [Finding];
  expect(wantedOf(found, new Map())).toEqual(found);
  expect(wantedOf(found, new Map([['row-past-reach', 'error']]))).toEqual(found);
  expect(wantedOf(found, new Map([['row-past-reach', null]]))).toEqual([]);
  const [softer] = wantedOf(found, new Map([['row-past-reach', 'info']])) as [Finding];
  expect([softer.severity, softer.message, softer.place]).toEqual(['info', one.message, one.place]);
  expect(softer.repairs).toEqual(one.repairs);
  expect(one.severity).toBe('error');
});

test('findings stand in the order of the text, first those in texts that a carcass is like, the farthest first', () => {
  const [one] = found as [Finding];
  const at = (part: Finding['place']['part'], start: number): Finding => ({ ...one, place: { part, start, end: 9 } });
  const all = [at('self', 3), at('like-1', 2), at('shop', 0), at('like-2', 5), at('self', 1), at('head', 8)];
  expect(all.sort(byPlace).map(({ place: { part, start } }) => `${part} ${start}`)).toEqual([
    'like-2 5',
    'like-1 2',
    'head 8',
    'self 1',
    'self 3',
    'shop 0',
  ]);
});
