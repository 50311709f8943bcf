import type { MachineKind } from './model.js';
import type { ShopInput } from './schema.js';

/** The key of a shop file under which each kind of machine is written. */
export const SECTION_OF = {
  vertical: 'vertical-heads',
  horizontal: 'horizontal-heads',
  line: 'line-drills',
  cup: 'cup-borers',
  saw: 'panel-saws',
  bander: 'edge-banders',
  clamp: 'case-clamps',
} as const satisfies Readonly<Record<MachineKind, keyof ShopInput['value']>>;
