import type { Located } from '../document/place.js';
import { holds, type Made } from '../findings/circumstances.js';
import type { Finding, RelatedPlace, Severity } from '../findings/finding.js';
import { valueUnusedMessages } from '../findings/rules/value-unused.js';
import { duplicateCarcasses } from '../job/duplicates.js';
import type { JobHead } from '../job/model.js';
import type { ConditionalValue } from '../job/reach.js';
import type { Unread } from '../shop/model.js';
import { preferred } from '../schema/tell.js';
import type { ReadShop } from '../shop/read.js';
import type { CarcassAnalysis, FileFinding } from './carcass-analysis.js';
import { jobMessages, type PlainSort, type UnreadName } from './messages.js';
import type { Message } from '../words/message.js';

const MOST_RELATED = 5;

/** Carcasses with a name that an earlier one has. */
export function duplicates(carcasses: readonly CarcassAnalysis[]): readonly FileFinding[] {
  return duplicateCarcasses(carcasses.map(({ nameAt }) => nameAt));
}

/** Defaults that count in none of the carcasses; nothing is said of a job in which nothing can be built. */
export function unusedDefaults(
  conditional: readonly ConditionalValue[],
  carcasses: readonly CarcassAnalysis[],
): readonly FileFinding[] {
  if (conditional.length === 0) return [];
  const made = carcasses.flatMap(({ spec, carcass, boring }): Made[] =>
    spec === null || carcass === null || boring === null ? [] : [{ spec, carcass, boring }],
  );
  if (made.length === 0 || made.length < carcasses.length) return [];
  return conditional.flatMap(({ path, place, circumstance }) => {
    if (made.some((one) => holds(circumstance, one, null, path))) return [];
    const key = String(path.at(-1));
    const one = ofJob('value-unused', 'warning', place, valueUnusedMessages.inDefaults({ key, circumstance }));
    const change = { kind: 'remove', part: place.part, path: ['defaults', ...path] } as const;
    const repairs = [preferred(valueUnusedMessages.remove({ key }), change)];
    return [{ ...one, finding: { ...one.finding, repairs } }];
  });
}

/** The job names no shop. */
export function noShop(head: JobHead): readonly FileFinding[] {
  return [ofJob('shop-neutral', 'info', head.place, jobMessages.neutralShop())];
}

/** The shop that the job names cannot be had. */
export function missingShop(reference: Located<string>, message: Message, instead?: string): readonly FileFinding[] {
  const one = ofJob('shop-missing', 'error', reference.place, message);
  if (instead === undefined) return [one];
  const { path, place } = reference;
  const repairs = [
    preferred(jobMessages.useShop({ file: instead }), { kind: 'set', part: place.part, path, text: instead }),
  ];
  return [{ ...one, finding: { ...one.finding, repairs } }];
}

/** The shop that the job names has faults of its own. */
export function brokenShop(
  reference: Located<string>,
  { shop, findings }: ReadShop,
  text: string,
): readonly FileFinding[] {
  // The shop file's own messages keep its unit.
  const said = (message: Message): Message => message.in(shop.unit);
  const faults = findings.filter(({ severity }) => severity === 'error');
  if (faults.length === 0) return [];
  const first = faults.reduce((a, b) => (b.place.start < a.place.start ? b : a));
  const names = unreadNames(shop.unread);
  const figures = {
    errors: faults.length,
    line: text.slice(0, first.place.start).split('\n').length,
    first: said(first.message),
  };
  const message =
    shop.unusable === true
      ? jobMessages.unusableShop(figures)
      : names.length > 0
        ? jobMessages.brokenShopNames({ ...figures, names })
        : jobMessages.brokenShop(figures);
  const related = faults
    .slice(0, MOST_RELATED)
    .map((fault): RelatedPlace => ({ place: fault.place, message: said(fault.message) }));
  const severity = shop.unusable === true || names.length > 0 ? 'error' : 'warning';
  return [ofJob('shop-broken', severity, reference.place, message, related)];
}

function unreadNames(unread: Unread | undefined): readonly UnreadName[] {
  if (unread === undefined) return [];
  const plain = (sort: PlainSort, names: Iterable<string>): readonly UnreadName[] =>
    [...names].map((name) => ({ sort, name }));
  return [
    ...plain('board', unread.boards),
    ...plain('band', unread.bands),
    ...[...unread.fittings].map(([name, kind]): UnreadName => ({ sort: 'fitting', kind, name })),
    ...plain('hinge', unread.hinges),
    ...plain('slide', unread.slides),
    ...plain('pull', unread.pulls),
    ...plain('bracket', unread.brackets),
    ...plain('wardrobe-rail', unread.wardrobeRails),
    ...plain('foot', unread.feet),
    ...plain('angle', unread.angles),
    ...[...unread.machines].map(([name, kind]): UnreadName => ({ sort: 'machine', kind, name })),
  ];
}

function ofJob(
  rule: string,
  severity: Severity,
  place: Finding['place'],
  message: Message,
  related: readonly RelatedPlace[] = [],
): FileFinding {
  return { finding: { rule, severity, place, message, related, repairs: [] }, carcass: null };
}
