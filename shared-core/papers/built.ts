import type { BoreMap } from '../boring/model.js';
import type { Carcass } from '../carcass/model.js';
import type { CarcassSpec } from '../carcass/spec.js';

/** A carcass that papers are made for: one that can be built and bored. */
export interface BuiltCarcass {
  readonly name: string;
  readonly spec: CarcassSpec;
  readonly carcass: Carcass;
  readonly boring: BoreMap;
}
