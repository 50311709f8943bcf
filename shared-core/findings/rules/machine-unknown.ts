import { KIND_FOR_USE } from '../../shop/habits.js';
import type { CarcassRule } from '../rule.js';
import { unknownNames } from '../unknown-names.js';

export const machineUnknown: CarcassRule = {
  name: 'machine-unknown',
  severity: 'error',
  hides: true,
  about: {
    what: 'A machine is named that the shop does not have, or that is of the wrong kind.',
    why: 'Ranges, stops and spindles come from the machine. Without it, nothing can be said about whether the bores can be made.',
    remedy: 'Use a machine of the right kind from the shop file, or add this one there.',
    example: 'kind: base\nwidth: 600\nmachines: { rows: row-dril }',
  },
  check({ spec, shop }) {
    return (['faces', 'ends', 'rows', 'clamp'] as const).flatMap((use) => {
      const known = [...shop.machines.values()].filter((machine) => machine.kind === KIND_FOR_USE[use]);
      return unknownNames(
        [shop.unread?.machines.get(spec.machines[use]?.value ?? '') === KIND_FOR_USE[use] ? null : spec.machines[use]],
        known.map((machine) => machine.name),
        { machine: KIND_FOR_USE[use] },
        (name) => shop.machines.get(name)?.kind,
      );
    });
  },
};
