import { readFileSync } from 'node:fs';
import { boreCarcass } from '../../../../shared-core/boring/bores.js';
import type { BoreMap } from '../../../../shared-core/boring/model.js';
import { buildCarcass } from '../../../../shared-core/carcass/build.js';
import type { Carcass } from '../../../../shared-core/carcass/model.js';
import { cutJob } from '../../../../shared-core/document/cut.js';
import { readCarcass } from '../../../../shared-core/carcass/read.js';
import { readHead } from '../../../../shared-core/job/head.js';
import type { CarcassSpec } from '../../../../shared-core/carcass/spec.js';
import { operationsOf, type CarcassOperations } from '../../../../shared-core/machining/plan/operations.js';
import { planInOrder } from '../../../../shared-core/machining/plan/plan.js';
import type { BatchedSetUp } from '../../../../shared-core/machining/plan/set-ups.js';
import type { Shop } from '../../../../shared-core/shop/model.js';
import { readShop } from '../../../../shared-core/shop/read.js';

const demoText = (file: string): string => readFileSync(new URL(`../../../fixtures/${file}`, import.meta.url), 'utf8');

/** The shop of the demo. */
export const shed: Shop = readShop(demoText('shed.shop.yaml')).shop;

/** A carcass with its bores and what its machines have to do. */
export interface Bored {
  readonly spec: CarcassSpec;
  readonly carcass: Carcass;
  readonly boring: BoreMap;
  readonly operations: CarcassOperations;
}

export function bored(spec: CarcassSpec, shop: Shop): Bored {
  const { carcass } = buildCarcass(spec, shop);
  if (!carcass) throw new Error('the test’s carcass cannot be built');
  const boring = boreCarcass(spec, carcass, shop);
  return { spec, carcass, boring, operations: operationsOf(spec.name.value, spec, carcass, boring, shop) };
}

export function readJob(text: string, shop: Shop): Bored[] {
  const parts = cutJob(text);
  const { head, defaults } = readHead(parts);
  return parts.carcasses.map((part) => {
    const { spec } = readCarcass(part, head, defaults, shop);
    if (!spec) throw new Error(`${part.text} cannot be read`);
    return bored(spec, shop);
  });
}

export const demoJob = (file: string, shop: Shop): Bored[] => readJob(demoText(file), shop);

/** What it takes to run set-ups in this order, as it is told; `carried.test.ts` has it against a hand that does it. */
export function secondsOf(order: readonly BatchedSetUp[], shop: Shop): number {
  const claims = { order: [...order.keys()], cost: 0, lowerBound: 0, proven: false, provenOnce: false };
  return planInOrder(order, shop.changeover, claims).setUps.reduce((sum, { seconds }) => sum + seconds, 0);
}
