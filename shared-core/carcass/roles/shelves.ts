import type { Located } from '../../document/place.js';
import { keyInBay } from '../../job/panel-key.js';
import { EDGES } from '../../words/names.js';
import { overlaps } from '../interval.js';
import type { Outline } from '../panel.js';
import type { Bay, Panel } from '../model.js';
import { extentsOf } from '../pose.js';
import type { Looks, Role } from '../role.js';
import type { PlacedShelf } from '../shelves.js';
import type { CarcassSpec, ShelfSpec } from '../spec.js';
import type { Standing } from '../standing.js';

const looks: Looks = { outside: 'lower', inside: 'upper', explained: 'A shelf’s outside face is its lower one.' };

const shelf = {
  stands: 'level',
  rows: 'none',
  belongs: 'to-box',
  hiddenFace: 'outside',
  edges: EDGES,
  looks,
  sizes: { length: acrossBay, width: ({ depth }) => depth },
} satisfies Partial<Role>;

/** Joined to the uprights on both hands, its underside out. */
export const fixedShelf: Role = {
  ...shelf,
  called: 'fixed shelf',
  names: (spec) => namesOf(spec, spec.fixedShelves),
  keys: { 'fixed-shelves': 'each' },
  outlines: ({ shelves }) => shelves.fixed.map(outline),
  meetings(panel, standing) {
    const index = bayOf(panel, standing.bays);
    const bay = standing.bays[index]!;
    const rightOf = standing.panel(bay.right);
    const stagger = isStaggered(panel, index, standing);
    return [
      { ...standing.meeting(panel, 'reference-end', standing.panel(bay.left)), stagger },
      {
        ...standing.meeting(panel, 'far-end', rightOf),
        on: rightOf.role === 'divider' ? 'outside' : 'inside',
        stagger,
      },
    ];
  },
};

/** Lies on pins in the rows of the uprights, its underside out. */
export const looseShelf: Role = {
  ...shelf,
  called: 'loose shelf',
  names: (spec) => namesOf(spec, spec.looseShelves),
  keys: { 'loose-shelves': 'each' },
  outlines: ({ shelves }) => shelves.loose.map(outline),
  meetings: () => [],
};

/** Where there are bays, a shelf's key alone means it in every bay. */
function namesOf({ dividers }: CarcassSpec, shelves: readonly ShelfSpec[]): readonly string[] {
  const bays = dividers.length === 0 ? [] : Array.from({ length: dividers.length + 1 }, (_, i) => i + 1);
  return shelves.flatMap(({ key, bay }) => [
    key,
    ...bays.filter((number) => bay === null || bay.value === number).map((number) => keyInBay(key, number)),
  ]);
}

function outline({ key, cause, board, length, width, origin, corner }: PlacedShelf): Outline {
  return {
    key,
    board,
    length,
    width,
    seen: ['front'],
    grooves: [],
    ...(corner && { corner }),
    cause,
    pose: { origin, u: '+y', v: '+x', t: '+z' },
  };
}

function bayOf(panel: Panel, bays: readonly Bay[]): number {
  const { x } = panel.pose.origin;
  return bays.findIndex(({ from, to }) => from <= x && x < to);
}

/** The divider on the right, where its place is written; the width where the bays share what there is. */
function acrossBay({ width, dividers }: CarcassSpec, panel: Panel, bays: readonly Bay[]): Located<unknown> {
  const right = bays[bayOf(panel, bays)]?.right;
  const at = dividers.find(({ key }) => key === right)?.at;
  return at?.written === true ? at : width;
}

/**
 * Two shelves at one height would bore a divider from both faces at the same places, and the bores would meet inside it.
 * So the shelves of every second bay are staggered where a neighbour stands at their height.
 */
function isStaggered(panel: Panel, bay: number, { bays, ...standing }: Standing): boolean {
  if (bay % 2 === 0) return false;
  const height = extentsOf(panel).z;
  const beside = [bays[bay - 1]?.from, bays[bay + 1]?.from];
  return standing.panels.some(
    (other) =>
      other.role === 'fixed-shelf' && beside.includes(other.pose.origin.x) && overlaps(extentsOf(other).z, height),
  );
}
