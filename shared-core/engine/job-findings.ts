import type { Located } from '../document/place.js';
import type { Finding, RelatedPlace, Severity } from '../findings/finding.js';
import { duplicateCarcasses } from '../job/duplicates.js';
import type { JobHead } from '../job/model.js';
import type { CarcassAnalysis, FileFinding } from './analysis.js';

const MOST_RELATED = 5;

/** Carcasses with a name that an earlier one has. */
export function duplicates(carcasses: readonly CarcassAnalysis[]): readonly FileFinding[] {
  return duplicateCarcasses(carcasses.map(({ nameAt }) => nameAt));
}

/** The job names no shop. */
export function noShop(head: JobHead): readonly FileFinding[] {
  const message =
    'No shop file is named, so the built-in shop is used; its machines are invented and none of yours. Write `shop: NAME.shop.yaml` to use your own.';
  return [ofJob('shop-neutral', 'info', head.place, message)];
}

/** The shop that the job names cannot be had. */
export function missingShop(reference: Located<string>, message: string): readonly FileFinding[] {
  return [ofJob('shop-missing', 'error', reference.place, message)];
}

/** The shop that the job names has faults of its own. */
export function brokenShop(
  reference: Located<string>,
  findings: readonly Finding[],
  text: string,
): readonly FileFinding[] {
  const faults = findings.filter(({ severity }) => severity === 'error');
  if (faults.length === 0) return [];
  const first = faults.reduce((a, b) => (b.place.start < a.place.start ? b : a));
  const line = text.slice(0, first.place.start).split('\n').length;
  const counted = faults.length === 1 ? 'a fault' : `${faults.length} faults, the first`;
  const message = `The shop file has ${counted} in line ${line}: ${first.message} Until that is put right, what this job says of the shop may be wrong.`;
  const related = faults.slice(0, MOST_RELATED).map(({ place, message }): RelatedPlace => ({ place, message }));
  return [ofJob('shop-broken', 'warning', reference.place, message, related)];
}

function ofJob(
  rule: string,
  severity: Severity,
  place: Finding['place'],
  message: string,
  related: readonly RelatedPlace[] = [],
): FileFinding {
  return { finding: { rule, severity, place, message, related, bores: [], repairs: [] }, carcass: null };
}
