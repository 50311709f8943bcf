import type { JobParts } from '../document/cut.js';
import type { Change, Finding, Repair } from '../document/finding.js';
import { CARCASSES_KEY } from '../document/outline.js';
import { readHeadTrees } from '../document/parts.js';
import type { Located, Part, Place } from '../document/place.js';
import type { MapEntry, TreeNode } from '../document/tree.js';
import type { Unit } from '../length/units.js';
import { isUnknownUnit, sayUnit, unitEntry, unitOf } from '../schema/file-unit.js';
import { namedWithoutDashes } from '../schema/reading/dashes.js';
import { readBySchema } from '../schema/read.js';
import { errorAt, syntaxFinding } from '../schema/tell.js';
import { nearestName } from '../schema/nearest.js';
import { triedOf } from '../schema/tried.js';
import type { Infer } from '../schema/schema.js';
import { optional } from '../schema/fields.js';
import { record } from '../schema/schema.js';
import { emptyJob, withoutCarcasses } from './empty.js';
import { say } from './messages.js';
import { namesForList } from './nameless-list.js';
import type { JobHead } from './model.js';
import { conditionalDefaults, type ConditionalValue } from './reach.js';
import { jobSchema } from './schema.js';

/** The job's `defaults`, as read; null where the job has none. */
export type Defaults = Infer<typeof jobSchema.fields.defaults.schema>['value'] | null;

export interface ReadHead {
  readonly head: JobHead;
  readonly defaults: Defaults;
  /** What the defaults say that counts only in some circumstance; paths count from them. */
  readonly conditional: readonly ConditionalValue[];
  /** Findings of the job as a whole; places are in 'head' or 'tail'. */
  readonly findings: readonly Finding[];
  /** True where a shop is named, or may be, in a text that cannot be read or is yet to be written. */
  readonly shopUnread: boolean;
}

// The carcasses are read one by one elsewhere; their key stays known, so that a misspelt one is recognised.
const headSchema = record(
  'job',
  jobSchema.about,
  { ...jobSchema.fields, carcasses: optional(jobSchema.fields.carcasses.schema) },
  jobSchema.formerly,
  jobSchema.tried,
);

/** Reads all of a job but its carcasses. Never throws. */
export function readHead(parts: JobParts): ReadHead {
  const trees = readHeadTrees(parts);
  const broken = [...trees.head.problems, ...trees.tail.problems].map(syntaxFinding);
  const above = entriesOf(trees.head.root);
  const below = entriesOf(trees.tail.root);
  const written = unitEntry([...above, ...below]);
  const unit = unitOf(written);
  const unitUnknown = isUnknownUnit(written);
  const said: Finding[] = [];
  const first = readPart(trees.head.root, 'head', unit, said);
  const second = readPart(trees.tail.root, 'tail', unit, said);
  const place: Place = above[0]?.keyPlace ?? { part: 'head', start: 0, end: 0 };
  said.push(
    ...writtenTwice(above, below),
    ...(trees.head.root?.kind === 'list' || trees.head.root?.kind === 'scalar'
      ? []
      : carcassesMissing(parts, [...above, ...below], unit, place)),
  );
  // What a broken text seems to say is not worth telling.
  const judged = said.filter(({ rule }) => !unitUnknown || rule !== 'length-impossible');
  const findings = (broken.length > 0 ? broken : judged).map((one) => sayUnit(one, written));
  const head: JobHead = {
    title: (first.title ?? second.title)?.value ?? '',
    unit,
    unitUnknown,
    shopRef: first.shop ?? second.shop ?? (broken.length > 0 ? shopLine(parts) : null),
    place,
  };
  const namesShop = [...above, ...below].some(({ key }) => key === 'shop');
  const shopUnread = head.shopRef === null && (namesShop || broken.length > 0);
  const defaults = [...above, ...below].find(({ key }) => key === 'defaults')?.value ?? null;
  return {
    head,
    defaults: (first.defaults ?? second.defaults)?.value ?? null,
    conditional: conditionalDefaults(defaults),
    findings,
    shopUnread,
  };
}

type HeadInput = Infer<typeof headSchema>['value'];

function readPart(root: TreeNode | null, part: Part, unit: Unit, findings: Finding[]): HeadInput {
  if (root === null) return {};
  const node =
    root.kind === 'map' ? { ...root, entries: root.entries.filter(({ key }) => key !== CARCASSES_KEY) } : root;
  const place: Place = { part, start: root.place.start, end: root.place.start };
  const read = readBySchema(headSchema, node, { unit, part, path: [], place });
  findings.push(...read.findings);
  return read.value?.value ?? {};
}

function entriesOf(root: TreeNode | null): readonly MapEntry[] {
  return root?.kind === 'map' ? root.entries : [];
}

/** The shop that a line at the margin names, in a head that cannot be read for a fault elsewhere. */
function shopLine({ head }: JobParts): Located<string> | null {
  const line = /^shop: +([^\s"'#][^\r\n#]*?|"[^"\r\n]+"|'[^'\r\n]+')[ \t]*(?:#.*)?\r?$/m.exec(head.text);
  if (line === null) return null;
  const written = line[1]!;
  const start = line.index + line[0].indexOf(written);
  const value = written.replace(/^(["'])(.*)\1$/, '$2');
  return { value, path: ['shop'], written: true, place: { part: 'head', start, end: start + written.length } };
}

/** Keys of the tail that the head has too; within one of them the schema's reading tells it. */
function writtenTwice(above: readonly MapEntry[], below: readonly MapEntry[]): readonly Finding[] {
  const twice = (entry: MapEntry, first: MapEntry, repairs: readonly Repair[] = []): Finding =>
    errorAt('name-duplicate', entry.keyPlace, say.keyTwice({ key: entry.key }), {
      related: [{ place: first.keyPlace, message: say.keyFirst({ key: entry.key }) }],
      repairs,
    });
  const found: Finding[] = [];
  for (const entry of below) {
    const first = above.find(({ key }) => key === entry.key);
    if (first === undefined) continue;
    const { key, keyPlace } = entry;
    const change: Change = { kind: 'remove', part: keyPlace.part, path: [key] };
    found.push(twice(entry, first, [{ title: say.removeThisKey({ key }), changes: [change], preferred: false }]));
  }
  for (const part of [above, below]) {
    const [first, ...more] = part.filter(({ key }) => key === CARCASSES_KEY);
    if (first !== undefined) found.push(...more.map((entry) => twice(entry, first)));
  }
  return found;
}

function meansCarcasses(word: string): boolean {
  const meant = triedOf(jobSchema, word);
  if (meant !== null) return 'keys' in meant && meant.keys.includes(CARCASSES_KEY);
  return nearestName(word, [CARCASSES_KEY]) !== null;
}

function carcassesMissing(parts: JobParts, entries: readonly MapEntry[], unit: Unit, place: Place): readonly Finding[] {
  if (parts.carcasses.length > 0) return [];
  const key = entries.find((entry) => entry.key === CARCASSES_KEY);
  const { text } = parts.head;
  // Below a tail nothing can be added to the head.
  const whole = parts.tail.text === '' ? text : null;
  // A misspelt key is told as that.
  if (key === undefined && entries.some((entry) => meansCarcasses(entry.key))) return [];
  if (key === undefined && entries.length === 0) return [emptyJob(text, place)];
  if (key === undefined || key.value === null || (key.value.kind === 'map' && key.value.entries.length === 0))
    return [withoutCarcasses(whole, unit, place, key?.keyPlace ?? null)];
  const { part, start } = key.keyPlace;
  const repairs = [...namedWithoutDashes(key.value, part), ...namesForList(text, key.value, start, part)];
  return [errorAt('value-wrong', key.keyPlace, say.carcassesNotNamed(), { repairs })];
}
