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
