import type { CarcassKind } from './model.js';

/** Whether a kind of carcass usually has rails: a worktop closes what stands under it; every other has a top of its own. */
export const usuallyHasRails = (kind: CarcassKind): boolean => kind === 'base' || kind === 'for-drawers';
