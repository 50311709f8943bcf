import fc from 'fast-check';
import { expect, test } from 'vitest';
import { editsFor } from '../../../shared-core/document/edit/edits-for.js';
import type { Change } from '../../../shared-core/document/finding.js';
import type { Path } from '../../../shared-core/document/place.js';
import { applyEdits } from '../../../shared-core/document/pieces.js';
import { readTree } from '../../../shared-core/document/read.js';
import type { Choose, Plain } from './yaml-texts.js';
import { chooser, isList, isMap, job, plain, render } from './yaml-texts.js';

const shorthand = (path: Path): string | null =>
  path.at(-1) === 'back'
    ? 'how'
    : typeof path.at(-1) === 'number' && String(path.at(-2)).endsWith('shelves')
      ? 'at'
      : null;

// The oracle: the same changes, made on plain values.

const REFUSED = Symbol('refused');

function setIn(value: Plain, path: Path, at: Path, text: string): Plain | typeof REFUSED {
  const [step, ...rest] = path;
  if (step === undefined) return text;
  const here = [...at, step];
  if (value === null) {
    if (step === shorthand(at) && rest.length === 0) return text;
    if (typeof step === 'number') {
      if (step !== 0) return REFUSED;
      const inner = setIn(null, rest, here, text);
      return inner === REFUSED ? inner : [inner];
    }
    const inner = setIn(null, rest, here, text);
    return inner === REFUSED ? inner : { entries: [[step, inner]] };
  }
  if (typeof value === 'string') {
    const short = shorthand(at);
    if (step === 0) return setIn(null, path, at, text);
    if (short === null || typeof step === 'number') return REFUSED;
    if (step === short) return rest.length === 0 ? text : REFUSED;
    const inner = setIn(null, rest, here, text);
    return inner === REFUSED
      ? inner
      : {
          entries: [
            [short, value],
            [step, inner],
          ],
        };
  }
  if (isList(value)) {
    if (typeof step !== 'number' || step > value.length) return REFUSED;
    const inner = setIn(value[step] ?? null, rest, here, text);
    return inner === REFUSED ? inner : [...value.slice(0, step), inner, ...value.slice(step + 1)];
  }
  const map = value;
  if (typeof step !== 'string') return REFUSED;
  const known = map.entries.findIndex(([key]) => key === step);
  const inner = setIn(known === -1 ? null : map.entries[known]![1], rest, here, text);
  if (inner === REFUSED) return inner;
  return known === -1
    ? { entries: [...map.entries, [step, inner]] }
    : { entries: map.entries.map((entry, i) => (i === known ? [step, inner] : entry)) };
}

/** Without the node; undefined where nothing is left. */
function without(value: Plain, path: Path): Plain | undefined {
  const [step, ...rest] = path;
  if (step === undefined) return undefined;
  if (isList(value)) {
    const items = value.flatMap((item, i): Plain[] => {
      if (i !== step) return [item];
      const left = without(item, rest);
      return left === undefined ? [] : [left];
    });
    return items.length === 0 ? undefined : items;
  }
  if (!isMap(value)) return value;
  const entries = value.entries.flatMap(([key, one]): (readonly [string, Plain])[] => {
    if (key !== step) return [[key, one]];
    const left = without(one, rest);
    return left === undefined ? [] : [[key, left]];
  });
  return entries.length === 0 ? undefined : { entries };
}

/** An entry that is put before an unfinished last one stands elsewhere than the oracle's: order is not compared. */
function sorted(value: Plain | undefined): unknown {
  if (value === undefined) return null;
  if (isList(value)) return value.map(sorted);
  if (isMap(value)) return Object.fromEntries(value.entries.map(([key, one]) => [key, sorted(one)]));
  return value;
}

/** A path into the value; now and then one that is not there. */
function pathIn(value: Plain, choose: Choose): Path {
  if (choose(5) === 0)
    return [
      ['board', 'new key', 0, 'at', 'how'][choose(5)]!,
      ...(choose(2) === 0 ? [['rows', 0, 'at'][choose(3)]!] : []),
    ];
  if (isMap(value) && value.entries.length > 0) {
    const [key, one] = value.entries[choose(value.entries.length)]!;
    return choose(3) === 0 ? [key] : [key, ...pathIn(one, choose)];
  }
  if (isList(value)) {
    const index = choose(value.length + 1);
    return index === value.length || choose(3) === 0 ? [index] : [index, ...pathIn(value[index]!, choose)];
  }
  return [];
}

const remarks = (text: string): readonly string[] =>
  [...text.matchAll(/# (?:remark|above) \d+/g)].map(([one]) => one).sort();

const lineEnds = (text: string): ReadonlySet<string> => new Set(text.match(/\r?\n/g));

test('what is rendered reads back', () => {
  fc.assert(
    fc.property(job, fc.nat(), (map, seed) => {
      const { root, problems } = readTree(render(map, seed), 'self');
      expect(problems).toEqual([]);
      expect(sorted(plain(root))).toEqual(sorted(map));
    }),
    { numRuns: 1500 },
  );
});

test('a value that is set is the only one that changes, and every comment stays', () => {
  let made = 0;
  fc.assert(
    fc.property(
      job,
      fc.nat(),
      fc.nat(),
      fc.constantFrom('328', `1' 2"`, 'front', 'a: b', 'x, y', '- #', "it's"),
      (map, seed, pick, text) => {
        const before = render(map, seed);
        const { root } = readTree(before, 'self');
        const path = pathIn(plain(root), chooser(pick));
        if (path.length === 0) return;
        const change: Change = { kind: 'set', part: 'self', path, text };
        const edits = editsFor(before, root, [change], { shorthand });
        const wanted = setIn(plain(root), path, [], text);
        if (edits.length === 0) {
          // No edit: refused, or the text says so already.
          if (wanted !== REFUSED) expect(sorted(wanted)).toEqual(sorted(plain(root)));
          return;
        }
        made += 1;
        const after = applyEdits(before, edits);
        const reread = readTree(after, 'self');
        expect(reread.problems).toEqual([]);
        expect(wanted).not.toBe(REFUSED);
        expect(sorted(plain(reread.root))).toEqual(sorted(wanted as Plain));
        const replaced = root!.kind === 'map' && isCollection(valueAt(plain(root), path));
        if (!replaced) expect(remarks(after)).toEqual(remarks(before));
        expect(lineEnds(after + before).size).toBeLessThanOrEqual(Math.max(1, lineEnds(before).size));
      },
    ),
    { numRuns: 4000 },
  );
  expect(made).toBeGreaterThan(2000);
});

test('what is taken out goes with what it leaves empty, and nothing else', () => {
  let made = 0;
  fc.assert(
    fc.property(job, fc.nat(), fc.nat(), (map, seed, pick) => {
      const before = render(map, seed);
      const { root } = readTree(before, 'self');
      const path = pathIn(plain(root), chooser(pick));
      if (path.length === 0 || valueAt(plain(root), path) === undefined) return;
      const edits = editsFor(before, root, [{ kind: 'remove', part: 'self', path }]);
      if (edits.length === 0) return;
      made += 1;
      const { root: after, problems } = readTree(applyEdits(before, edits), 'self');
      expect(problems).toEqual([]);
      expect(sorted(plain(after))).toEqual(sorted(without(plain(root), path)));
    }),
    { numRuns: 3000 },
  );
  expect(made).toBeGreaterThan(800);
});

test('a key that is renamed keeps its value and its place', () => {
  fc.assert(
    fc.property(job, fc.nat(), fc.nat(), fc.constantFrom('width', 'a: b', 'x,y'), (map, seed, pick, text) => {
      const before = render(map, seed);
      const { root } = readTree(before, 'self');
      const path = pathIn(plain(root), chooser(pick));
      if (typeof path.at(-1) !== 'string' || valueAt(plain(root), path) === undefined) return;
      const edits = editsFor(before, root, [{ kind: 'rename-key', part: 'self', path, text }]);
      expect(edits).toHaveLength(1);
      const after = applyEdits(before, edits);
      expect(readTree(after, 'self').problems).toEqual([]);
      expect(plain(readTree(after, 'self').root)).toEqual(renamed(plain(root), path, text));
      expect(remarks(after)).toEqual(remarks(before));
    }),
    { numRuns: 1500 },
  );
});

function renamed(value: Plain, path: Path, text: string): Plain {
  const [step, ...rest] = path;
  if (isList(value)) return value.map((item, i) => (i === step ? renamed(item, rest, text) : item));
  if (!isMap(value)) return value;
  return {
    entries: value.entries.map(([key, one]) =>
      key !== step ? [key, one] : rest.length === 0 ? [text, one] : [key, renamed(one, rest, text)],
    ),
  };
}

function valueAt(value: Plain, path: Path): Plain | undefined {
  const [step, ...rest] = path;
  if (step === undefined) return value;
  if (isList(value)) return typeof step === 'number' && step < value.length ? valueAt(value[step]!, rest) : undefined;
  const entry = isMap(value) ? value.entries.find(([key]) => key === step) : undefined;
  return entry === undefined ? undefined : valueAt(entry[1], rest);
}

function isCollection(value: Plain | undefined): boolean {
  return typeof value === 'object' && value !== null;
}
