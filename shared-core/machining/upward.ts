import type { SetUp } from './set-up.js';

/** Whether a machine's bits come up through its table. For words and drawings: planner and replay each find out by themselves. */
export function boresUpward(machine: SetUp['machine']): boolean {
  return (machine.kind === 'vertical' || machine.kind === 'line') && machine.from === 'below';
}
