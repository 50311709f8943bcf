import type { Finding } from './finding.js';

const PARTS = ['head', 'self', 'tail', 'shop'];

/** The order of the text. Sorting by it keeps the order of the rules among findings of one place. */
export function byPlace(a: Finding, b: Finding): number {
  return (
    PARTS.indexOf(a.place.part) - PARTS.indexOf(b.place.part) ||
    a.place.start - b.place.start ||
    a.place.end - b.place.end
  );
}
