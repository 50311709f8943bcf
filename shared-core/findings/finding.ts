import type { Finding as TextFinding } from '../document/finding.js';

export type { Change, RelatedPlace, Repair, Severity } from '../document/finding.js';

/** A finding of a text, or of what is made of it: then it may be of a panel, and of bores. */
export interface Finding extends TextFinding {
  /** Key of the panel concerned. */
  readonly panel?: string;
  /** Ids of the bores concerned, so that a drawing can mark them. */
  readonly bores?: readonly string[];
}

/** The bores that a finding is about. */
export const boresConcerned = ({ bores }: Pick<Finding, 'bores'>): readonly string[] => bores ?? [];

/** A finding that differs from another in so much. Its repairs are still tried only when they are looked at. */
export function otherwise(finding: Finding, changes: Partial<Pick<Finding, 'message' | 'severity'>>): Finding {
  const [own, changed] = [Object.getOwnPropertyDescriptors(finding), Object.getOwnPropertyDescriptors(changes)];
  return Object.defineProperties({}, { ...own, ...changed }) as Finding;
}
