import { known } from '../derived/steps.js';
import type { CarcassPart } from '../document/cut.js';
import type { Finding } from '../findings/finding.js';
import { nameIn } from '../document/parts.js';
import { CarcassAnalysis } from './carcass-analysis.js';

/**
 * Stands for a carcass that is not worked out yet.
 * @param before the same text on another ground (other defaults, another shop), where there was one: what was found in the text
 * itself is told until it is known better
 */
export function meanwhile(part: CarcassPart, before: CarcassAnalysis | undefined): CarcassAnalysis {
  const ofItself = (before?.known ?? []).filter(isOfItself);
  const name = before?.name ?? nameIn(part.text);
  const nothing = {
    nameAt: null,
    standIn: before?.standIn ?? null,
    spec: null,
    carcass: null,
    boring: null,
    operations: null,
  };
  return new CarcassAnalysis({ name, ...nothing }, ofItself, () => known(ofItself));
}

const isOfItself = ({ place, related }: Finding): boolean =>
  place.part === 'self' && related.every((one) => one.place.part === 'self');
