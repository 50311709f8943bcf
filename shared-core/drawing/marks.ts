import type { MarkPart } from '../fittings/mark.js';
import type { BorePurpose } from '../fittings/names.js';
import { PURPOSES } from '../fittings/purposes.js';

/** The pattern of a purpose on a bore of radius `r` about (0, 0). */
export function markOf(purpose: BorePurpose, r: number): readonly MarkPart[] {
  return PURPOSES[purpose].mark.map((part) =>
    part.kind === 'circle'
      ? { ...part, r: part.r * r }
      : { ...part, points: part.points.map(({ x, y }) => ({ x: x * r, y: y * r })) },
  );
}
