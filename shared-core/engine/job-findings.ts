import type { Located } from '../document/place.js';
import type { Finding, RelatedPlace, Severity } from '../findings/finding.js';
import { duplicateCarcasses } from '../job/duplicates.js';
import type { JobHead } from '../job/model.js';
import { FITTING_WORDS, KIND_WORDS } from '../shop/habits.js';
import type { Shop, Unread } from '../shop/model.js';
import { preferred } from '../schema/tell.js';
import type { ReadShop } from '../shop/read.js';
import { listed } from '../findings/words.js';
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
export function missingShop(reference: Located<string>, message: string, instead?: string): readonly FileFinding[] {
  const one = ofJob('shop-missing', 'error', reference.place, message);
  if (instead === undefined) return [one];
  const { path, place } = reference;
  const repairs = [preferred(`Use ${instead}`, { kind: 'set', part: place.part, path, text: instead })];
  return [{ ...one, finding: { ...one.finding, repairs } }];
}

/** The shop that the job names has faults of its own. */
export function brokenShop(
  reference: Located<string>,
  { shop, findings }: ReadShop,
  text: string,
): readonly FileFinding[] {
  const faults = findings.filter(({ severity }) => severity === 'error');
  if (faults.length === 0) return [];
  const first = faults.reduce((a, b) => (b.place.start < a.place.start ? b : a));
  const line = text.slice(0, first.place.start).split('\n').length;
  const counted = faults.length === 1 ? 'a fault' : `${faults.length} faults, the first`;
  const message = `The shop file has ${counted} in line ${line}: ${first.message} ${consequence(shop)}`;
  const related = faults.slice(0, MOST_RELATED).map(({ place, message }): RelatedPlace => ({ place, message }));
  const severity = shop.unusable === true || unreadNames(shop.unread).length > 0 ? 'error' : 'warning';
  return [ofJob('shop-broken', severity, reference.place, message, related)];
}

/** What a job lacks while the shop's figures are not known. */
function consequence({ unread, unusable }: Shop): string {
  if (unusable === true) return 'Until that is put right, nothing is worked out for this job.';
  const names = unreadNames(unread);
  const it = names.length === 1 ? 'it' : 'them';
  const without =
    names.length === 0 ? '' : `So ${listed(names)} cannot be read, and nothing is worked out or planned with ${it}. `;
  return `${without}Until that is put right, what is said of this job may be wrong.`;
}

function unreadNames(unread: Unread | undefined): readonly string[] {
  if (unread === undefined) return [];
  return [
    ...[...unread.boards].map((name) => `the board ‘${name}’`),
    ...[...unread.bands].map((name) => `the band ‘${name}’`),
    ...[...unread.fittings].map(([name, kind]) => `the ${FITTING_WORDS[kind]} ‘${name}’`),
    ...[...unread.machines].map(([name, kind]) => `the ${KIND_WORDS[kind]} ‘${name}’`),
  ];
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
