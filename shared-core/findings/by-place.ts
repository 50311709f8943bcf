import { depthOf, type Part } from '../document/place.js';
import type { Finding } from './finding.js';

const PARTS: readonly Part[] = ['head', 'self', 'tail', 'shop'];

/** The order of the text, with what stands in others that a carcass is like before its own. Sorting by it keeps the order of the rules among findings of one place. */
export function byPlace(a: Finding, b: Finding): number {
  return (
    PARTS.indexOf(a.place.part) - PARTS.indexOf(b.place.part) ||
    (depthOf(b.place.part) ?? 0) - (depthOf(a.place.part) ?? 0) ||
    a.place.start - b.place.start ||
    a.place.end - b.place.end
  );
}
