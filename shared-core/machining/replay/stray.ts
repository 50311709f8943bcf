import type { Tolerances } from '../../shop/model.js';

/** What can stray, by the name of its bound in the shop's tolerances. */
export type StrayKind = 'thickness' | 'width' | 'length' | 'squareness' | 'stop' | 'drill' | 'dowelPlay';

/**
 * How far one thing strays from its nominal, in micrometres (squareness: over one metre). `of` names the thing: the panel,
 * the end of a panel, the stop in its set-up, the bit in its stroke. The same `of` is always the same thing.
 */
export type Stray = (kind: StrayKind, of: string) => number;

/** The nominal shop: nothing strays. */
export const NOTHING: Stray = () => 0;

/** The plus-or-minus bound of a kind. */
export const boundOf = (tolerances: Tolerances, kind: StrayKind): number => tolerances[kind];
