import { expect, test } from 'vitest';
import { setUpsOf } from '../../../shared-core/machining/plan/set-ups.js';
import type { Shop } from '../../../shared-core/shop/model.js';
import { readJob } from '../machining/plan/jobs.js';
import { smallShop, type Small } from './small-shop.js';

// Whatever places the owner could list for the joints by hand, no list takes fewer set-ups than the shared load. Every pattern of
// every joint is written into the job, bored and planned; nothing of the book is asked.

const [FIRST, PITCH, EDGE] = [21, 32, 12];

/** Every list of places that holds a panel which joins over `clear`: two at least, none too far from the next or from either end. */
function patterns(clear: number, spindles: number, spacing: number): readonly (readonly number[])[] {
  const room = Math.min(spindles - 1, Math.floor((clear - EDGE - FIRST) / PITCH));
  const all = Array.from({ length: 2 ** (room + 1) }, (_, bits) =>
    Array.from({ length: room + 1 }, (_, k) => k)
      .filter((k) => bits & (1 << k))
      .map((k) => FIRST + k * PITCH),
  );
  const isHeld = (list: readonly number[]): boolean =>
    list.length > 1 &&
    list[0]! <= FIRST + PITCH &&
    clear - list.at(-1)! <= spacing &&
    list.every((at, index) => index === 0 || at - list[index - 1]! <= spacing);
  return all.filter(isHeld);
}

const listed = (list: readonly number[]): string => `{ end-dowels: [${list.join(', ')}] }`;

test.each<Small>([
  { spindles: 8, spacing: 192, depths: [236, 140] },
  { spindles: 9, spacing: 192, depths: [268, 140] },
  { spindles: 9, spacing: 128, depths: [236, 172] },
])('no places listed by hand take fewer set-ups on $spindles spindles, $spacing apart', (small) => {
  const [base, wall] = small.depths;
  const job = (own: { bottom: string; rail: string; shelf: string } | null): string => {
    const low = own ? `, panels: { bottom: ${own.bottom}, rail-front: ${own.rail}, rail-back: ${own.rail} }` : '';
    const high = own ? `, panels: { bottom: ${own.shelf}, top: ${own.shelf} }` : '';
    return `unit: mm
carcasses:
  low: { kind: base, width: 600, rows: none${low} }
  high: { kind: wall, width: 600, rows: none${high} }
`;
  };
  const counted = (text: string, shop: Shop): number =>
    setUpsOf(readJob(text, shop).map(({ operations }) => operations)).length;
  const own = smallShop(small, ['spare-holes: no']);
  const shared = counted(job(null), smallShop(small, ['spare-holes: yes']));
  let least = Infinity;
  let tried = 0;
  for (const bottom of patterns(base - 19, small.spindles, small.spacing))
    for (const rail of patterns(100, small.spindles, small.spacing))
      for (const shelf of patterns(wall - 19, small.spindles, small.spacing)) {
        tried += 1;
        const lists = { bottom: listed(bottom), rail: listed(rail), shelf: listed(shelf) };
        least = Math.min(least, counted(job(lists), own));
      }
  expect(tried).toBeGreaterThan(50);
  expect(shared).toBeLessThanOrEqual(least);
});
