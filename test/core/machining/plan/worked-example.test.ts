import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { orderSetUps } from '../../../../shared-core/machining/plan/plan.js';
import { setUpsOf } from '../../../../shared-core/machining/plan/set-ups.js';
import { readShop } from '../../../../shared-core/shop/read.js';
import { readJob, secondsOf } from './jobs.js';
import { tableUnder } from '../../../reference-table.js';

const read = (path: string): string => readFileSync(new URL(`../../../../${path}`, import.meta.url), 'utf8');
const page = read('server/reference/set-ups.md');

const table = (heading: string): string[][] => tableUnder(page, heading);

const mm = (length: number): string => String(length / 1000);

describe('the example worked by hand in the reference', () => {
  const [habits = '', text = ''] = [...page.matchAll(/```yaml\n([\s\S]*?)```/g)].map(([, block = '']) => block);
  const { shop: shed } = readShop(read('test/fixtures/shed.shop.yaml').replace(/^habits:\n/m, habits));
  const setUps = setUpsOf(readJob(text, shed).map((one) => one.operations));
  const plan = orderSetUps(setUps, shed.changeover);

  test('every set-up', () => {
    const rows = plan.setUps.map(({ setUp }) => [
      setUp.id,
      setUp.stops.map((stop) => `${stop.name} ${mm(stop.position)}`).join(', '),
      mm(setUp.depth),
      (setUp.runs[0]?.steps[0]?.spindles ?? [])
        .filter((s) => s.head === 0)
        .map((s) => s.spindle)
        .join(' '),
      setUp.runs.map((run) => run.panel).join(', '),
      String(setUp.runs.reduce((sum, run) => sum + run.steps.length, 0)),
    ]);
    const byName = (a: string[], b: string[]): number => (a[0] ?? '').localeCompare(b[0] ?? '');
    expect(rows.sort(byName)).toEqual(table('The set-ups').sort(byName));
  });

  test('the order, and the time of every changeover', () => {
    const rows = table('The order');
    expect(plan.setUps.map((one, index) => [String(index + 1), one.setUp.id, String(one.seconds)])).toEqual(
      rows.map(([run, id, , seconds]) => [run, id, seconds]),
    );
    for (const [, , what = '', seconds = ''] of rows) {
      const parts = what.split(', ').map((part) => Number(part.split(' ').at(-1)));
      expect(parts.reduce((sum, part) => sum + part, 0)).toBe(Number(seconds));
    }
    expect(page).toContain(`In all ${plan.seconds} seconds.`);
    expect(plan.proven).toBe(true);
  });

  test('no other of the 120 orders takes less', () => {
    const orders = permutations(setUps);
    expect(orders).toHaveLength(120);
    const times = orders.map((order) => secondsOf(order, shed));
    expect(Math.min(...times)).toBe(plan.seconds);
  });
});

function permutations<T>(items: readonly T[]): T[][] {
  if (items.length === 0) return [[]];
  return items.flatMap((item, index) =>
    permutations(items.filter((_, i) => i !== index)).map((rest) => [item, ...rest]),
  );
}
