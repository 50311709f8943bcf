import {
  changeoverTime,
  changesBetween,
  left,
  settingsOf,
  type Settings,
} from '../../../shared-core/machining/plan/changeover.js';
import { groupBy } from '../../../shared-core/machining/plan/numbers.js';
import { setUpsOf } from '../../../shared-core/machining/plan/set-ups.js';
import type { Shop } from '../../../shared-core/shop/model.js';
import { readJob } from '../machining/plan/jobs.js';

// What a batch takes in truth: its carcasses bored and planned, every order of the set-ups of a head tried from each of them
// as it stands, and the dowels counted. Nothing of the book is asked but what it chose.

export type Units = readonly [base: number, wall: number];

function* orders<T>(list: readonly T[]): Generator<readonly T[]> {
  if (list.length === 0) yield [];
  for (const [index, one] of list.entries()) for (const rest of orders(list.toSpliced(index, 1))) yield [one, ...rest];
}

function secondsBetween(setUps: readonly Settings[], shop: Shop): number {
  let state = left(null, setUps[0]!);
  let seconds = 0;
  for (const next of setUps.slice(1)) {
    seconds += changeoverTime(changesBetween(state, next), shop.changeover);
    state = left(state, next);
  }
  return seconds;
}

/** Set-ups, dowels and seconds of a batch, of what differs between one load and another. */
export function batchOf(shop: Shop, units: Units): { setUps: number; dowels: number; changing: number } {
  const job = readJob(
    'unit: mm\ncarcasses:\n  low: { kind: base, width: 600, rows: none }\n  high: { kind: wall, width: 600, rows: none }\n',
    shop,
  );
  const settings = setUpsOf(job.map(({ operations }) => operations)).map((one) => settingsOf(one.batch));
  const changed = [...groupBy(settings, ({ machine }) => machine).values()].map((onOne) =>
    Math.min(...[...orders(onOne)].map((order) => secondsBetween(order, shop))),
  );
  const inEnds = job.map(({ boring }) => boring.bores.filter(({ face }) => face.endsWith('end')).length);
  return {
    setUps: settings.length,
    dowels: inEnds.reduce((sum, count, index) => sum + count * units[index]!, 0),
    changing: changed.reduce((sum, seconds) => sum + seconds, 0),
  };
}

export function secondsOf(shop: Shop, units: Units): number {
  const { dowels, changing } = batchOf(shop, units);
  return dowels * shop.rates.fitting + changing;
}
