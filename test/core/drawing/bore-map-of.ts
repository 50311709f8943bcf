import type { Bore, BoreMap, Row } from '../../../shared-core/boring/model.js';

/** A bore map of these rows and bores, in which nothing hangs. */
export const boreMapOf = (rows: readonly Row[], bores: readonly Bore[]): BoreMap => ({
  rows,
  bores,
  hung: [],
  running: [],
  pulls: [],
  brackets: [],
  wardrobeRails: [],
  feet: [],
  angles: [],
  unused: [],
  crowded: [],
});
