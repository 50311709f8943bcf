import type { Micrometres } from '../length/units.js';
import type { SetUp } from './set-up.js';

/**
 * A boring machine as it stands before its operator, as plain data. Words, drawings and papers all ask this, so that none of
 * them tells kinds apart by itself. Planner and replay must not: each of the two finds out by itself, or neither could prove
 * the other wrong.
 */
export interface MachineDescribed {
  /** Panels lie flat and their faces are bored, or they are pressed against the head and their ends are. */
  readonly bores: 'faces' | 'ends';
  /** What is drawn as the line that panels lie at. */
  readonly against: 'fence' | 'head';
  /** Its spindles: one alone, a line away from the fence, or a line along it. */
  readonly spindles: 'one' | 'away' | 'along';
  readonly heads: number;
  /** How many spindles stand on each of its heads. */
  readonly onEachHead: number;
  /** Whether it has heads that are set one by one. */
  readonly manyHeads: boolean;
  /** Which way the bits come to the panel. */
  readonly bitsCome: 'down' | 'up' | 'out';
  /** How a panel is moved on under it; null where it never is. */
  readonly index: { readonly pitch: Micrometres; readonly on: 'row' | 'fence' | 'none' } | null;
}

export function described(machine: SetUp['machine']): MachineDescribed {
  switch (machine.kind) {
    case 'vertical':
      return {
        ...FLAT,
        spindles: 'away',
        onEachHead: machine.spindles,
        bitsCome: machine.from === 'below' ? 'up' : 'down',
      };
    case 'horizontal':
      return { ...FLAT, bores: 'ends', against: 'head', onEachHead: machine.spindles, bitsCome: 'out' };
    case 'line':
      return {
        ...FLAT,
        heads: machine.heads,
        onEachHead: machine.spindles,
        manyHeads: true,
        bitsCome: machine.from === 'below' ? 'up' : 'down',
        index: { pitch: machine.pitch, on: machine.indexPins },
      };
    case 'cup':
      return { ...FLAT, spindles: 'one', onEachHead: 1 };
  }
}

const FLAT = {
  bores: 'faces',
  against: 'fence',
  spindles: 'along',
  heads: 1,
  manyHeads: false,
  bitsCome: 'down',
  index: null,
} as const;

/** How many heads of the machine stand in a set-up. */
export function headsSet({ machine, fence }: Pick<SetUp, 'machine' | 'fence'>): number {
  return described(machine).manyHeads ? fence.length : 1;
}
