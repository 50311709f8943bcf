import fc from 'fast-check';
import { expect, it } from 'vitest';
import { boreCarcass } from '../../../shared-core/boring/bores.js';
import { buildCarcass } from '../../../shared-core/carcass/build.js';
import { operationsOf } from '../../../shared-core/machining/plan/operations.js';
import { setUpsOf } from '../../../shared-core/machining/plan/set-ups.js';
import { toleranceOf } from '../../../shared-core/tolerance/tolerance.js';
import { jobArbitrary } from '../arbitraries.js';
import { machinesArbitrary, withMachines } from '../machining/plan/machines.js';
import { EXACT } from './boxes.js';

const planned = jobArbitrary.chain((job) =>
  machinesArbitrary(job.shop.habits.pitch).map((machines) => ({ job, machines })),
);

/** The planner is not told of thicknesses that stray; that its setUps keep them from front and outside shows in the replay. */
it('setUps of the planner keep the front edges flush for any width and thickness, in random jobs and shops', () => {
  let joints = 0;
  fc.assert(
    fc.property(planned, ({ job, machines }) => {
      const shop = { ...withMachines(job.shop, machines), tolerances: { ...EXACT, thickness: 400, width: 700 } };
      const { carcass } = buildCarcass(job.spec, shop);
      if (carcass === null) throw new Error('the carcass cannot be built');
      const boring = boreCarcass(job.spec, carcass, shop);
      const name = job.spec.name.value;
      const operations = operationsOf(name, job.spec, carcass, boring, shop);
      const setUps = setUpsOf([operations]).map(({ setUp }) => setUp);
      const { joints: known, unknown } = toleranceOf({ name, carcass, boring, setUps, shop });
      for (const { joint, front, step } of known) {
        expect([joint, front.worst, front.causes, step.worst, step.causes]).toEqual([joint, 0, [], 0, []]);
      }
      for (const { reason } of unknown) expect(reason.id).toBe('tolerance.halfBored');
      joints += known.length;
    }),
    { numRuns: 150 },
  );
  expect(joints).toBeGreaterThan(200);
});
