import type { Changeover } from '../../shop/model.js';
import type { Micrometres } from '../../length/units.js';
import { join, type Batch } from './batch.js';
import { changeoverTime, changesBetween, settingsOf } from './changeover.js';
import type { Operation } from './operation.js';
import type { BatchedSetUp } from './set-ups.js';

/** What a set-up that serves one panel differs in from one that would else take that panel too. */
export type Difference =
  | { readonly in: 'fence'; readonly head: number; readonly is: Micrometres; readonly instead: Micrometres }
  | { readonly in: 'height' | 'depth' | 'thickness'; readonly is: Micrometres; readonly instead: Micrometres };

export interface SetUpForOne {
  readonly own: BatchedSetUp;
  /** The set-up on the same head that would take the panel. */
  readonly other: BatchedSetUp;
  readonly difference: Difference;
  /** From that set-up to this one. */
  readonly seconds: number;
}

/**
 * The set-ups that serve a single panel, where another set-up on the same head, which serves another carcass, has the bits and
 * the stops for it and differs in one setting: the smallest difference is given.
 * @param margin what bores that move toward the back edge must keep from it
 */
export function setUpsForOne(
  batched: readonly BatchedSetUp[],
  times: Changeover,
  margin: Micrometres,
): readonly SetUpForOne[] {
  return batched.flatMap((own): SetUpForOne[] => {
    const { machine, runs } = own.setUp;
    const [run, ...others] = runs;
    if (run === undefined || others.length > 0 || own.refused.length > 0 || run.pieces > 1) return [];
    let best: { readonly other: BatchedSetUp; readonly difference: Difference } | null = null;
    for (const other of batched) {
      if (other === own || other.setUp.machine.name !== machine.name) continue;
      if (!other.setUp.runs.some(({ carcass }) => carcass !== run.carcass)) continue;
      const difference = onlyDifference(own.batch, other.batch);
      if (difference === null || (best !== null && size(difference) >= size(best.difference))) continue;
      if (takes(other.batch, own.batch, difference, margin)) best = { other, difference };
    }
    if (best === null) return [];
    const changes = changesBetween(settingsOf(best.other.batch), settingsOf(own.batch));
    return [{ own, ...best, seconds: changeoverTime(changes, times) }];
  });
}

const size = ({ is, instead }: Difference): Micrometres => Math.abs(is - instead);

/** The one setting that two batches on a head differ in; null where it is none, or several. */
function onlyDifference(a: Batch, b: Batch): Difference | null {
  if (a.through !== b.through || a.fence.length !== b.fence.length) return null;
  const fences = a.fence.flatMap((is, head): Difference[] => {
    const instead = b.fence[head]!;
    return is === instead ? [] : [{ in: 'fence', head, is, instead }];
  });
  const others = (['height', 'depth', 'thickness'] as const).flatMap((one): (Difference | null)[] => {
    const [is, instead] = [a[one], b[one]];
    if (is === instead || (one === 'depth' && a.through)) return [];
    return [is === null || instead === null ? null : { in: one, is, instead }];
  });
  const [only, ...more] = [...fences, ...others];
  return only === undefined || more.length > 0 ? null : only;
}

/** Whether a batch has room for all of another one, were it not for a setting. */
function takes(batch: Batch, { chosen }: Batch, difference: Difference, margin: Micrometres): boolean {
  let joined: Batch = batch;
  for (const { operation } of chosen) {
    if (difference.in === 'fence' && !staysInWood(operation, difference, margin)) return false;
    const { fence, height, depth } = batch;
    const moved: Operation = { ...operation, fence, height, depth };
    const next = operation.ways.map((way) => join(joined, moved, way)).find((one) => one !== null);
    if (next === undefined) return false;
    joined = next;
  }
  return true;
}

/** Whether bores that move with the fence stay as far from the back edge as they must, and in front of it. */
function staysInWood({ blank, ways }: Operation, { is, instead }: Difference, margin: Micrometres): boolean {
  const places = ways.flatMap(({ strokes }) => strokes.flatMap(({ wanted }) => wanted.map(({ bore }) => bore.u)));
  return places.every((u) => u + instead - is > 0 && u + instead - is <= blank.width - margin);
}
