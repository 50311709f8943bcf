import type { Located } from '../document/place.js';
import type { JobCarcass } from '../job/model.js';
import { isDiagonal } from './diagonal.js';
import type { Lacking, Without } from './lacking.js';

/** The same carcass without what cannot be in one that stands across a corner; any other as it is. */
export function withoutInCorner(job: JobCarcass): {
  readonly job: JobCarcass;
  readonly without: readonly Without[];
} {
  if (!isDiagonal(job)) return { job, without: [] };
  const { diagonal, blind, back, doors, endPanels, fillers, plinth, top, bottom, fronts, wardrobeRails } = job;
  const listed = (what: Lacking, at: Located<unknown> | null | undefined): readonly Without[] =>
    at === null || at === undefined ? [] : [{ what, at }];
  const unless = (what: Lacking, fits: boolean, at: Located<unknown>): readonly Without[] =>
    fits ? [] : [{ what, at }];
  const closed = fronts?.value.filter(({ value }) => !NO_FRONTS.has(value.front.value)) ?? [];
  const without = [
    ...(diagonal.left === null ? [] : listed('other-hand', diagonal.right)),
    ...unless('top', top.value === 'over', top),
    ...unless('bottom', bottom.value === 'under', bottom),
    ...unless('back', back.how.value === 'applied' || back.how.value === 'none', back.how),
    ...listed('back-open', back.openFrom),
    ...listed('back-open', back.openTo),
    ...unless('inset', doors.how.value === 'overlay', doors.how),
    ...listed('dividers', firstOf(job.dividers)),
    ...listed('fixed-shelves', firstOf(job.fixedShelves)),
    ...(fronts?.value ?? []).flatMap(({ value: { front } }) => {
      const what = NO_FRONTS.get(front.value);
      return what === undefined ? [] : listed(what, front);
    }),
    ...listed('blind', blind.left ?? blind.right),
    ...listed('wardrobe-rails', wardrobeRails?.value[0]),
    ...unless('plinth', plinth.value === 0, plinth),
    ...unless('end-panels', endPanels.on.value === 'none', endPanels.on),
    ...listed('fillers', fillers.left ?? fillers.right),
  ];
  return {
    without,
    job: {
      ...job,
      diagonal: diagonal.left === null ? diagonal : { ...diagonal, right: null },
      top: { ...top, value: 'over' },
      bottom: { ...bottom, value: 'under' },
      back: {
        ...back,
        how: { ...back.how, value: back.how.value === 'none' ? 'none' : 'applied' },
        openFrom: null,
        openTo: null,
      },
      doors: { ...doors, how: { ...doors.how, value: 'overlay' } },
      dividers: null,
      fixedShelves: null,
      fronts: fronts && { ...fronts, value: closed },
      blind: { ...blind, left: null, right: null },
      wardrobeRails: null,
      plinth: { ...plinth, value: 0 },
      endPanels: { ...endPanels, on: { ...endPanels.on, value: 'none' } },
      fillers: { ...fillers, left: null, right: null },
    },
  };
}

const NO_FRONTS: ReadonlyMap<string, Lacking> = new Map([
  ['drawer', 'drawer'],
  ['appliance', 'appliance'],
]);

/** The number of things, where it is not 0, or the first of their list; null where there are none. */
function firstOf(asked: JobCarcass['dividers'] | JobCarcass['fixedShelves']): Located<unknown> | null {
  if (asked === null) return null;
  if (asked.as === 'count') return asked.count.value > 0 ? asked.count : null;
  const [first] = asked.items;
  return first ?? null;
}
