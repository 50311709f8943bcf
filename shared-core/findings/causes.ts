import type { Bore } from '../boring/model.js';
import { chosen } from '../carcass/choices.js';
import type { Located } from '../document/place.js';
import { ownText, remove } from './changes.js';
import type { Repair } from './finding.js';
import { onFace } from './lookups.js';
import { offsetOf } from './row-grid.js';
import type { CarcassContext } from './rule.js';

/** A value that puts a bore where it is, and what it is called. */
export interface Cause {
  readonly value: Located<unknown>;
  readonly what: string;
}

/** The written values that put a bore where it is along `axis` ('u' or 'v' of its panel); the nearest cause first. */
export function causesOf(context: CarcassContext, bore: Bore, axis: 'u' | 'v'): readonly Cause[] {
  const { spec } = context;
  const causes: (Cause | null)[] =
    bore.purpose === 'row'
      ? axis === 'v'
        ? [{ value: offsetOf(context, bore.panel), what: 'row offset' }]
        : [
            bore.group.endsWith('row-rear') && spec.rearRow !== null ? { value: spec.rearRow, what: 'rear row' } : null,
            { value: spec.rowSetback, what: 'row setback' },
          ]
      : axis === 'u' || !onFace(bore)
        ? [
            optional(chosen(spec, bore.panel, 'dowels'), `list of dowels of ${bore.panel}`),
            optional(spec.dowels, 'list of dowels'),
          ]
        : [];
  return causes.filter((cause) => cause !== null).filter((cause) => cause.value.written);
}

function optional(value: Located<unknown> | null | undefined, what: string): Cause | null {
  return value === null || value === undefined ? null : { value, what };
}

/** Offers to take a written value out, so that the shop's habit comes back. */
export function backToHabit(causes: readonly Cause[]): readonly Repair[] {
  return causes
    .filter(({ value }) => ownText(value))
    .map(({ value, what }) => ({
      title: `Take the ${what} out, so that the shop’s habit holds`,
      changes: [remove(value.path)],
      preferred: false,
    }));
}
