import { expect, test } from 'vitest';
import { listGauge, probing, spread } from '../../../shared-core/tolerance/spread.js';

// A joint that is pushed one way takes others along, and pulled the other way moves alone.
test.each([
  ['up', 1],
  ['down', -1],
])('what changes several readings only when it strays %s counts in all of them', (_, way) => {
  const probe = probing(() => 2)([], (stray) => {
    const by = stray('stop', 'left') * way;
    return { places: by > 0 ? [by, 3 * by] : [by, 0] };
  });
  // Of 2 one way: 2 and 6; the other way: -2 and nothing.
  const { places } = spread({ places: listGauge(false) }, probe);
  expect(places).toEqual({ worst: 6, rootSumSquare: 6, causes: [{ kind: 'stop', of: 'left', rise: 6 }] });
});
