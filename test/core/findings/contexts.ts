import { boreCarcass } from '../../../shared-core/boring/bores.js';
import { matings } from '../../../shared-core/boring/matings.js';
import { buildCarcass } from '../../../shared-core/carcass/build.js';
import { Derived } from '../../../shared-core/derived/derived.js';
import { Alone } from '../../../shared-core/findings/alone.js';
import type { CarcassContext } from '../../../shared-core/findings/rule.js';
import { operationsOf } from '../../../shared-core/machining/plan/operations.js';
import type { Job } from '../arbitraries.js';

/** All that rules look at, of a random job; null where no box can be made of it. */
export function contextOf({ spec, shop }: Job): CarcassContext | null {
  const { carcass } = buildCarcass(spec, shop);
  if (!carcass) return null;
  const boring = boreCarcass(spec, carcass, shop);
  const operations = operationsOf('box', spec, carcass, boring, shop);
  const derived = new Derived();
  return {
    spec,
    carcass,
    boring,
    matings: matings(carcass, boring),
    operations,
    alone: new Alone(spec, carcass, operations, derived),
    shop,
    unit: 'mm',
    inches: 'fractions',
    derived,
    written: [],
  };
}
