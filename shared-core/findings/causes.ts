import type { Bore } from '../boring/model.js';
import { chosen, chosenAtEnd } from '../carcass/choices.js';
import type { Located } from '../document/place.js';
import { isRow } from '../fittings/purposes.js';
import { messages, type Message } from '../words/message.js';
import { ownText, remove } from './changes.js';
import type { Repair } from './finding.js';
import { onFace } from './lookups.js';
import { offsetOf } from './row-grid.js';
import type { CarcassContext } from './rule.js';

/** A written value that puts a bore where it is. */
export interface Cause {
  readonly value: Located<unknown>;
  readonly what: CauseName;
  /** The panel whose own list of dowels it is. */
  readonly panel?: string;
}

type CauseName = 'row-offset' | 'rear-row' | 'row-setback' | 'dowels' | 'end-dowels' | 'joint-dowels';

export const causeMessages = messages('causes', {
  removeRowOffset: () => 'Remove `row-offset` and use the usual row offset',
  removeRearRow: () => 'Remove `rear-row` and use the usual place of the rear row',
  removeRowSetback: () => 'Remove `row-setback` and use the usual row setback',
  removeDowels: () => 'Remove `dowels` and use the usual places',
  removeDowelsOf: ({ panel }: { readonly panel: string }) =>
    `Remove \`dowels\` of ${panel} and use those of the carcass`,
  removeEndDowelsOf: ({ panel }: { readonly panel: string }) =>
    `Remove \`end-dowels\` of ${panel} and use those of the carcass`,
  removeJointDowels: ({ panel }: { readonly panel: string }) =>
    `Remove \`dowels\` of this joint of ${panel} and bore it like the panel’s others`,
});

function removal({ what, panel }: Cause): Message {
  switch (what) {
    case 'row-offset':
      return causeMessages.removeRowOffset();
    case 'rear-row':
      return causeMessages.removeRearRow();
    case 'row-setback':
      return causeMessages.removeRowSetback();
    case 'dowels':
      return panel === undefined ? causeMessages.removeDowels() : causeMessages.removeDowelsOf({ panel });
    case 'end-dowels':
      return causeMessages.removeEndDowelsOf({ panel: panel! });
    case 'joint-dowels':
      return causeMessages.removeJointDowels({ panel: panel! });
  }
}

/** The written values that put a bore where it is along `axis` ('u' or 'v' of its panel); the nearest cause first. */
export function causesOf(context: CarcassContext, bore: Bore, axis: 'u' | 'v'): readonly Cause[] {
  const { spec } = context;
  const causes: readonly (Cause | null)[] = isRow(bore)
    ? axis === 'v'
      ? [{ value: offsetOf(context, bore.panel), what: 'row-offset' }]
      : [
          bore.group.endsWith('row-rear') && spec.rearRow !== null ? { value: spec.rearRow, what: 'rear-row' } : null,
          { value: spec.rowSetback, what: 'row-setback' },
        ]
    : axis === 'u' || !onFace(bore)
      ? placesAsked(context, bore)
      : [];
  return causes.filter((cause) => cause !== null).filter((cause) => cause.value.written);
}

/** The lists that give a construction bore its place, that which rules first. */
function placesAsked({ spec, carcass }: CarcassContext, bore: Bore): readonly (Cause | null)[] {
  const own = chosen(spec, bore.panel, 'dowels');
  const joint = carcass.joints.find(({ id }) => id === bore.group);
  const end = joint?.endPanel;
  const alone = joint && chosenAtEnd(spec, joint.endPanel, joint.end, 'dowels')?.is;
  const ofEnd = end === undefined ? undefined : chosen(spec, end, 'endDowels');
  return [
    alone && end !== undefined ? { value: alone, what: 'joint-dowels', panel: end } : null,
    own ? { value: own, what: 'dowels', panel: bore.panel } : null,
    ofEnd && end !== undefined ? { value: ofEnd.is, what: 'end-dowels', panel: end } : null,
    spec.dowels && { value: spec.dowels, what: 'dowels' },
  ];
}

/** The key of a fitting in the shop file that puts a bore where it is. */
export interface FittingKey {
  readonly key: 'box-offset' | 'box-holes';
  readonly fitting: string;
}

/** The key that puts a bore where it is along `axis`, for a bore that the job has no say in; null for all others. */
export function fittingKeyOf({ purpose, fitting }: Bore, axis: 'u' | 'v'): FittingKey | null {
  if (purpose !== 'slide-in-box' || fitting === null) return null;
  return { key: axis === 'u' ? 'box-offset' : 'box-holes', fitting };
}

/** Offers to take a written value out, so that the shop's habit comes back. */
export function backToHabit(causes: readonly Cause[]): readonly Repair[] {
  return causes
    .filter(({ value }) => ownText(value))
    .map((cause) => ({
      title: removal(cause),
      changes: [remove(cause.value.path)],
      preferred: false,
    }));
}
