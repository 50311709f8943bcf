import type { Hole } from '../../../shared-core/machining/replay/bore.js';

/** Equal for holes that are one. */
export const holeKey = ({ face, u, v, diameter, depth, through }: Hole): string =>
  `${face} ${u} ${v} ${diameter} ${through ? 'through' : depth}`;
