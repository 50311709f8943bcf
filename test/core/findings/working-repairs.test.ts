import { boreMapOf } from '../drawing/bore-map-of.js';
import { expect, test } from 'vitest';
import type { BoreMap } from '../../../shared-core/boring/model.js';
import type { Finding, Repair } from '../../../shared-core/findings/finding.js';
import type { Trial } from '../../../shared-core/findings/rule.js';
import { workingRepairs } from '../../../shared-core/findings/working-repairs.js';
import { asMessage } from '../../in-words.js';

const place = { part: 'self', start: 0, end: 1 } as const;
const repair: Repair = {
  title: asMessage('Move it'),
  changes: [{ kind: 'set', part: 'self', path: ['rear-row'], text: '69' }],
  preferred: true,
};

function finding(rule: string, bores: readonly string[], repairs: readonly Repair[] = [], message = rule): Finding {
  return { rule, severity: 'error', place, message: asMessage(message), related: [], bores, repairs };
}

function bored(ids: readonly string[]): BoreMap {
  const bores = ids.map((id) => ({
    id,
    panel: 'left',
    face: 'inside' as const,
    u: 37000,
    v: 8000,
    diameter: 5000,
    depth: 13000,
    through: false,
    purpose: 'row' as const,
    group: 'left:row-front',
    fitting: null,
    place,
  }));
  return boreMapOf([], bores);
}

/** How many repairs are left, and how often the slow rules were run on the changed carcass. */
function tried(before: readonly Finding[], after: readonly Finding[], slowAfter: readonly Finding[] = []) {
  let slowRuns = 0;
  const retry = (changes: readonly unknown[]): Trial => ({
    quick: changes.length === 0 ? before : after,
    all: () => {
      if (changes.length === 0) return before;
      slowRuns += 1;
      return [...after, ...slowAfter];
    },
  });
  const context = { retry, boring: bored(['a', 'b', 'c']) };
  const [first] = workingRepairs(before, context, new Set(), new Set(['slow-rule']));
  return { left: first!.repairs.length, slowRuns };
}

const rows = finding('row-distance', ['a'], [repair]);

test('a repair that makes a finding about no bore say more is left out', () => {
  // One finding before and after, but a joint more in it.
  const held = (words: string): Finding => finding('joint-not-held', [], [], words);
  const before = [rows, held('Between shelf-1 and left there is no bore.')];
  const after = held('Between shelf-1 and left and in 2 more joints there is no bore.');
  expect(tried(before, [after]).left).toBe(0);
  expect(tried(before, [held('Between shelf-1 and left there is no bore.')]).left).toBe(1);
});

test('a repair that hands its bores to another finding is left out', () => {
  // As many findings of the other rule as before, but one of them now holds the bore that the first one held.
  const before = [rows, finding('cannot-be-bored', ['b'])];
  expect(tried(before, [finding('cannot-be-bored', ['a', 'b'])]).left).toBe(0);
  expect(tried(before, [finding('cannot-be-bored', ['b'])]).left).toBe(1);
});

test('a bore that the repair adds may share a fault that was there before', () => {
  const before = [rows, finding('bit-missing', ['b'])];
  expect(tried(before, [finding('bit-missing', ['b', 'new'])]).left).toBe(1);
});

test('a repair that mends another finding of its rule than its own is left out', () => {
  const before = [rows, finding('row-distance', ['b'], [], 'the other one')];
  expect(tried(before, [finding('row-distance', ['a'])]).left).toBe(0);
  expect(tried(before, [finding('row-distance', ['b'], [], 'the other one')]).left).toBe(1);
});

test('the slow rules are run only where the quick ones agree', () => {
  expect(tried([rows], [rows])).toEqual({ left: 0, slowRuns: 0 });
  expect(tried([rows], [])).toEqual({ left: 1, slowRuns: 1 });
});

test('a repair that only a slow rule objects to is left out', () => {
  expect(tried([rows], [], [finding('slow-rule', ['c'])])).toEqual({ left: 0, slowRuns: 1 });
});
