/** Findings are made from the reading of the text on, so their types stand with the text. */
export type { Change, Finding, RelatedPlace, Repair, Severity } from '../document/finding.js';
