import { nthOf } from '../document/edit/edits-for.js';
import type { JobParts } from '../document/cut.js';
import { editsFor } from '../document/edit/edits-for.js';
import { readCarcassTree } from '../document/parts.js';
import { withoutOverlaps, type TextEdit } from '../document/pieces.js';
import { readTree } from '../document/read.js';
import type { Change, Finding, Repair } from '../findings/finding.js';
import { carcassEdits, headEdits } from '../job/edits.js';
import type { Words } from '../words/message.js';
import type { JobAnalysis } from './analysis.js';
import type { FileFinding } from './carcass-analysis.js';
import { jobMessages } from './messages.js';

/** A repair and the carcass whose text its changes are counted in. */
export interface PlacedRepair {
  readonly carcass: number | null;
  readonly repair: Repair;
}

/** Repairs of one kind that can be taken together: of one carcass, or (`carcass` null) of the whole file. */
export interface Batch {
  readonly title: Words;
  readonly key: string;
  readonly rule: string;
  readonly carcass: number | null;
  /** What is taken together: of every finding the first repair that belongs to it. Each is tried when this is looked at. */
  readonly repairs: readonly PlacedRepair[];
}

/** Whether a repair of a job is made in its shop file. Such a one is never preferred, and belongs to no batch. */
export function isOfShop({ changes, rewrites = [] }: Repair): boolean {
  return [...changes, ...rewrites].some(({ part }) => part === 'shop');
}

/** The edits of the job file that carry out a repair; null where the text does not allow it, or it is made in the shop file. */
export function repairEdits(analysis: JobAnalysis, repair: PlacedRepair): readonly TextEdit[] | null {
  const edits = batchEdits(analysis, [repair]);
  return edits.length > 0 ? edits : null;
}

/**
 * The edits of the job file that carry out several repairs at once; none overlap. None of them is of its shop file. Where two
 * want the same place the first is taken; where a text does not allow its changes, that text is left as it is.
 */
export function batchEdits(analysis: JobAnalysis, repairs: readonly PlacedRepair[]): readonly TextEdit[] {
  const inCarcass = new Map<number, Change[]>();
  const inHead: Change[] = [];
  const inTail: Change[] = [];
  const rewritten: TextEdit[] = [];
  const taken = new Set<string>();
  for (const { carcass, repair } of repairs) {
    if (isOfShop(repair)) continue;
    const rewrites = repair.rewrites ?? [];
    const places = [
      ...repair.changes.map((change) => placeOf(change, carcass)),
      ...rewrites.map(({ part, start }) => JSON.stringify([part, part === 'self' ? carcass : null, `at ${start}`])),
    ];
    if (places.some((place) => taken.has(place))) continue;
    for (const place of places) taken.add(place);
    for (const rewrite of rewrites) {
      const { start, end } = analysis.rewritten(rewrite, carcass);
      rewritten.push({ start, end, text: rewrite.text });
    }
    for (const change of repair.changes) {
      if (change.part === 'head') inHead.push(change);
      else if (change.part === 'tail') inTail.push(change);
      else if (carcass !== null) inCarcass.set(carcass, [...(inCarcass.get(carcass) ?? []), change]);
    }
  }
  const { head, tail } = analysis.parts;
  const job = [
    ...rewritten,
    ...editsInTop(head, 'head', inHead),
    ...editsInTop(tail, 'tail', inTail),
    ...[...inCarcass].flatMap(([carcass, changes]) => editsInCarcass(analysis, carcass, changes)),
  ];
  // Of an uncut text, edits of two carcasses may meet in a shared value.
  return withoutOverlaps(job);
}

/**
 * The batches that a finding's repairs belong to: 'all in this carcass' and 'all in the file', each only where there is more
 * than the narrower offer holds. Repairs of other carcasses are not looked at for it, since each look costs a trial.
 */
export function batchesFor(analysis: JobAnalysis, { finding, carcass }: FileFinding): readonly Batch[] {
  const alike = analysis.known().filter((one) => one.finding.rule === finding.rule);
  const here = alike.filter((one) => one.carcass === carcass).length;
  return finding.repairs.flatMap(({ batch }): Batch[] => {
    if (batch === undefined || carcass === null) return [];
    const offer = (title: Words, of: number | null): Batch => ({
      title,
      key: batch.key,
      rule: finding.rule,
      carcass: of,
      get repairs() {
        return repairsOf(analysis, this);
      },
    });
    return [
      ...(here > 1 ? [offer(jobMessages.batchInCarcass({ title: batch.title }), carcass)] : []),
      ...(alike.length > here ? [offer(jobMessages.batchInFile({ title: batch.title }), null)] : []),
    ];
  });
}

/** So many UTF-16 code units are read anew for the repairs of one go. */
const MOST_READ = 500_000;

/**
 * Of findings the repairs, as long as they can be made in one go: each is tried on its whole text. Of a file with more faults the
 * rest has its turn when these are mended.
 * @param lengthOf how long the text is that a finding's repairs are made in
 */
export function inOneGo<F extends { readonly finding: Pick<Finding, 'repairs'> }>(
  lengthOf: (one: F) => number,
): (one: F) => readonly Repair[] {
  let left = MOST_READ;
  return (one) => {
    if (left <= 0) return [];
    const { repairs } = one.finding;
    if (repairs.length > 0) left -= lengthOf(one);
    return repairs;
  };
}

/** How long the text is that the repairs of a finding are made in. */
export function lengthOfText({ parts }: JobAnalysis): (one: FileFinding) => number {
  return ({ carcass }) => (carcass === null ? parts.head : (parts.carcasses[carcass] ?? parts.head)).text.length;
}

/** The repairs that a batch takes together. */
export function repairsOf(
  analysis: JobAnalysis,
  batch: Pick<Batch, 'key' | 'rule' | 'carcass'>,
): readonly PlacedRepair[] {
  const look = inOneGo(lengthOfText(analysis));
  return analysis.known().flatMap((found): PlacedRepair[] => {
    const { finding, carcass } = found;
    if (finding.rule !== batch.rule || (batch.carcass !== null && carcass !== batch.carcass)) return [];
    const repair = look(found).find((one) => one.batch?.key === batch.key);
    return repair === undefined ? [] : [{ carcass, repair }];
  });
}

/** What an editor may take without asking: the preferred repair of every finding that has one. */
export function preferredRepairs(
  analysis: JobAnalysis,
  isWanted: (rule: string) => boolean = () => true,
): readonly PlacedRepair[] {
  const look = inOneGo(lengthOfText(analysis));
  return analysis.known().flatMap((found): PlacedRepair[] => {
    if (!isWanted(found.finding.rule)) return [];
    const repair = look(found).find(({ preferred }) => preferred);
    return repair === undefined ? [] : [{ carcass: found.carcass, repair }];
  });
}

/** All edits of a shop file that carry out repairs of its own findings, or of those of a job with it, in order; none overlap. */
export function shopRepairEdits(text: string, repairs: readonly Repair[]): readonly TextEdit[] {
  const rewrites = repairs.flatMap((repair) => repair.rewrites ?? []);
  const changes = repairs.flatMap((repair) => repair.changes);
  return withoutOverlaps([
    ...rewrites.map(({ start, end, text }) => ({ start, end, text })),
    ...(changes.length === 0 ? [] : editsFor(text, readTree(text, 'shop').root, changes)),
  ]);
}

/** Edits of what stands before or behind the carcasses. */
function editsInTop({ text, start }: JobParts['tail'], part: 'head' | 'tail', changes: readonly Change[]): TextEdit[] {
  if (changes.length === 0) return [];
  return headEdits(text, readTree(text, part).root, changes).map((edit) => ({
    ...edit,
    start: start + edit.start,
    end: start + edit.end,
  }));
}

/** Edits of one carcass's own text for changes of part 'self', in offsets of the whole file. */
export function editsInCarcass(
  analysis: JobAnalysis,
  carcass: number,
  changes: readonly Change[],
): readonly TextEdit[] {
  const part = analysis.parts.carcasses[carcass];
  if (part === undefined) return [];
  const { entry } = readCarcassTree(part);
  if (entry === null) return [];
  return carcassEdits(part.text, entry, changes).map(({ start, end, text }) => ({
    start: part.origin + start,
    end: part.origin + end,
    text,
  }));
}

function placeOf(change: Change, carcass: number | null): string {
  const { part, path } = change;
  const nth = nthOf(change);
  return JSON.stringify([part, part === 'self' ? carcass : null, ...path, ...(nth > 0 ? [{ nth }] : [])]);
}
