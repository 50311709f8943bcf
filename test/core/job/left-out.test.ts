import { expect, test } from 'vitest';
import { LEFT_OUT, type LeftOutTable } from '../../../shared-core/job/left-out.js';
import { carcassSchema } from '../../../shared-core/job/schema.js';
import { whenLeftOut } from '../../../shared-core/job/when-left-out.js';
import { camel } from '../../../shared-core/schema/model.js';
import { neutralShop } from '../../../shared-core/shop/neutral.js';
import { inWords } from '../../in-words.js';
import { readAll } from './read-all.js';

const { habits } = neutralShop;
const KINDS = ['base', 'wall', 'tall', 'for-drawers', 'open'] as const;

/** Paths of all keys that may be left out, with what the table has for each. */
function keys(table: LeftOutTable, path: readonly string[] = []): readonly (readonly string[])[] {
  return Object.entries(table).flatMap(([key, leftOut]) => {
    const here = [...path, key];
    if (leftOut.as === 'must') return [];
    if (leftOut.as === 'each') return [here, ...keys(leftOut.fields, here)];
    return leftOut.as === 'items' ? [here, ...keys(leftOut.item, here)] : [here];
  });
}

test('there are words for every key that may be left out, but for those that mean nothing then', () => {
  const silent = keys(LEFT_OUT).filter((path) => whenLeftOut(path, 'base', habits) === null);
  expect(silent).toEqual([['like'], ['mirrored'], ['panels'], ['note']]);
  expect(keys(LEFT_OUT).length).toBeGreaterThan(Object.keys(carcassSchema.fields).length);
});

/** The figure of the words, where they tell one and not how it is worked out. */
function toldAt(path: readonly string[], kind: (typeof KINDS)[number]): unknown {
  const figures = (whenLeftOut(path, kind, habits)?.figures ?? {}) as Readonly<Record<string, unknown>>;
  return figures.length ?? figures.name ?? figures.word;
}

test.each(KINDS)('what the words tell of a carcass of kind %s is what it has', (kind) => {
  const { spec } = readAll(`carcasses:\n  a: { kind: ${kind}, width: 900, loose-shelves: 1 }\n`).carcasses[0]!;
  const has = (path: readonly string[]): unknown =>
    path.reduce<unknown>((at, key) => (at as Readonly<Record<string, unknown>>)[camel(key)], spec);
  const single = keys(LEFT_OUT).filter(
    (path) => !path[0]!.endsWith('shelves') && !['back', 'front-heights'].includes(path.join()),
  );
  const told = single.filter((path) => toldAt(path, kind) !== undefined);
  expect(told.length).toBeGreaterThan(14);
  for (const path of told) expect(has(path), path.join()).toMatchObject({ value: toldAt(path, kind), written: false });
});

test('what depends on the kind is not told of the job’s defaults', () => {
  const words = (key: string): string => inWords(whenLeftOut([key], null, habits)!);
  expect(words('top')).toBe('When left out: what suits the kind.');
  expect(words('bottom')).toBe('When left out: `between`.');
  expect(inWords(whenLeftOut(['rows'], 'open', habits)!)).toBe(
    'When left out: `both` with loose shelves, else `none`.',
  );
  expect(inWords(whenLeftOut(['height'], 'base', habits)!)).toBe(
    'When left out: 22 pitches of 32 mm and the thickness of the side, so that rows come out balanced.',
  );
  expect(inWords(whenLeftOut(['loose-shelves', 0, 'setback'], 'base', habits)!)).toBe('When left out: 5 mm.');
  expect(inWords(whenLeftOut(['panels', 'left', 'rows'], 'base', habits)!)).toBe(
    'When left out: as in the rest of the carcass.',
  );
});
