import { expect, test } from 'vitest';
import { readTree } from '../../../shared-core/document/read.js';
import { carcassSchema } from '../../../shared-core/job/schema.js';
import { readBySchema } from '../../../shared-core/schema/read.js';
import { laidOver, unfold } from '../../../shared-core/schema/unfold.js';

function said(text: string) {
  const { root } = readTree(text, 'self');
  const place = { part: 'self', start: 0, end: 0 } as const;
  const read = readBySchema(carcassSchema, root, { unit: 'mm', part: 'self', path: [], place });
  expect(read.findings).toEqual([]);
  return unfold(carcassSchema, read.value!.value);
}
const plain = (value: unknown): unknown =>
  JSON.parse(JSON.stringify(value, (key, one: unknown) => (key === 'place' || key === 'path' ? undefined : one)));

test('a single value that stands for a map is that map with one key', () => {
  const short = said(
    '{ kind: base, width: 600, back: applied, fixed-shelves: [300, { at: 500, bay: 1 }], dividers: [200] }',
  );
  const long = said(
    '{ kind: base, width: 600, back: { how: applied }, fixed-shelves: [{ at: 300 }, { at: 500, bay: 1 }], dividers: [{ at: 200 }] }',
  );
  expect(plain(short)).toEqual(plain(long));
  expect(short.back).toMatchObject({ path: ['back'], value: { how: { value: 'applied', path: ['back'] } } });
  expect(short.dividers).toMatchObject({ as: 'list', is: { value: [{ value: { at: { path: ['dividers', 0] } } }] } });
});

test('a single value stands for a key that is not the first of its map', () => {
  const short = said('{ kind: wall, width: 600, loose-shelves: 2, row-holes: 1 }');
  expect(plain(short)).toEqual(
    plain(said('{ kind: wall, width: 600, loose-shelves: 2, row-holes: { round-shelves: 1 } }')),
  );
});

test('maps are laid over each other key by key, lists and single values as they are', () => {
  const upper = said('{ kind: base, width: 600, back: applied, dowels: [50], machines: { clamp: a } }');
  const lower = said(
    '{ kind: wall, width: 900, depth: 300, back: { how: grooved, groove: 9 }, dowels: [70, 90], machines: { clamp: b, rows: c } }',
  );
  expect(plain(laidOver(carcassSchema, upper, lower))).toEqual(
    plain(
      said(
        '{ kind: base, width: 600, depth: 300, back: { how: applied, groove: 9 }, dowels: [50], machines: { clamp: a, rows: c } }',
      ),
    ),
  );
});
