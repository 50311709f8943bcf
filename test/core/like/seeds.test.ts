import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import type { CarcassAnalysis } from '../../../shared-core/engine.js';
import { loadIn, sagsOf } from '../../../shared-core/loads/shelf.js';
import { analyse } from '../findings/jobs.js';
import { inRoom } from './in-room.js';

const demo = (name: string): string => readFileSync(join(import.meta.dirname, '../../demo', name), 'utf8');
const yard = { 'yard.shop.yaml': demo('yard.shop.yaml') };

test('the seed merchant of the demo has nothing to tell, and its variants are what they say', () => {
  const job = analyse(demo('seeds.carcass.yaml'), yard);
  expect(job.findings()).toEqual([]);
  const of = (name: string): CarcassAnalysis => job.carcasses.find((one) => one.name === name)!;
  for (const name of ['counter', 'sacks', 'packets']) {
    const [one, other] = [of(name === 'counter' ? 'counter-left' : name), of(`${name}-right`)];
    expect(inRoom(other, one.spec!.width.value)).toEqual(inRoom(one, null));
    expect(other.spec!.leading).toBe('right');
  }
  expect(of('till').carcass!.drawers).toHaveLength(3);
  // The load comes from the other carcass, and the strip along the front keeps the shelves from sagging.
  const { spec, carcass } = of('bulbs');
  expect(loadIn(spec!, carcass!)).toBe(5 * 24);
  for (const { sag, limit } of sagsOf(spec!, carcass!, job.shop.habits)) expect(sag).toBeLessThan(limit);
});

test('the kitchen of the demo has nothing to tell, though all of it has fronts', () => {
  const job = analyse(demo('kitchen.carcass.yaml'), yard);
  expect(job.findings()).toEqual([]);
  const open = job.carcasses.filter(({ carcass }) => carcass!.doors.length + carcass!.drawers.length === 0);
  expect(open.map(({ name, spec }) => [name, spec!.kind.value])).toEqual([
    ['cookbooks', 'open'],
    ['tins', 'open'],
  ]);
});
