import { DOOR_EDGES, UPPER_EDGES } from '../../words/names.js';
import type { Located } from '../../document/place.js';
import { doorKeys, heightGiven, keysOfKind } from '../fronts/asked.js';
import type { PlacedDoor, PlacedFront } from '../fronts/doors.js';
import { extent } from '../interval.js';
import { keyInDrawer } from '../../job/panel-key.js';
import type { Bay, Panel } from '../model.js';
import type { Outline } from '../panel.js';
import { extentsOf } from '../pose.js';
import type { Role } from '../role.js';
import type { CarcassSpec } from '../spec.js';

const before = {
  rows: 'none',
  belongs: 'before-box',
  hiddenFace: 'inside',
  looks: null,
  materials: ({ doors }: CarcassSpec) => doors,
  meetings: () => [],
} satisfies Partial<Role>;

/** A door, its outside face to the front, reference end down, u from the edge that it is hung on. */
export const door: Role = {
  ...before,
  called: 'door',
  stands: 'upright',
  edges: DOOR_EDGES,
  names: doorKeys,
  keys: { doors: 'all', fronts: 'each' },
  sizes: { length: heightOfFront, width: acrossFront },
  outlines: ({ doors, box }) => doors.map((one) => doorOutline(one, box.spec)),
};

function doorOutline(one: PlacedDoor, spec: CarcassSpec): Outline {
  const { hung, x, z, front } = one;
  return {
    ...shared(one, spec),
    length: extent(z),
    width: extent(x),
    pose: {
      origin: { x: hung === 'left' ? x.from : x.to, y: front, z: z.from },
      u: hung === 'left' ? '+x' : '-x',
      v: '+z',
      t: '+y',
    },
  };
}

const lying = {
  ...before,
  stands: 'level',
  edges: UPPER_EDGES,
  sizes: { length: acrossFront, width: heightOfFront },
} satisfies Partial<Role>;

/** The front of a drawer, its outside face to the front, u from its upper edge down, reference end left. */
export const drawerFront: Role = {
  ...lying,
  called: 'drawer front',
  names: (spec) => keysOfKind(spec, 'drawer').map((key) => keyInDrawer(key, 'front')),
  keys: { doors: 'all', drawers: 'all', fronts: 'each' },
  outlines: ({ drawers, box }) => drawers.map(({ front }) => lyingOutline(front, box.spec)),
};

/** A front that closes an opening for good, set out as that of a drawer is. */
export const fixedFront: Role = {
  ...lying,
  called: 'fixed front',
  names: (spec) => keysOfKind(spec, 'fixed'),
  keys: { doors: 'all', fronts: 'each' },
  outlines: ({ fixedFronts, box }) => fixedFronts.map((front) => lyingOutline(front, box.spec)),
};

function lyingOutline(one: PlacedFront, spec: CarcassSpec): Outline {
  const { x, z, front } = one;
  return {
    ...shared(one, spec),
    length: extent(x),
    width: extent(z),
    pose: { origin: { x: x.from, y: front, z: z.to }, u: '-z', v: '+x', t: '+y' },
  };
}

function shared({ key, board, turn, cause }: PlacedFront, { doors }: CarcassSpec) {
  return {
    key,
    board,
    seen: ['front', 'back', 'reference-end', 'far-end'],
    band: doors.band,
    grooves: [],
    ...(turn && { turn }),
    cause,
  } as const satisfies Partial<Outline>;
}

/** Its own height where the job gives it one, else that of the carcass. */
function heightOfFront(spec: CarcassSpec, { key }: Pick<Panel, 'key'>): Located<unknown> {
  return heightGiven(spec, key) ?? spec.height;
}

/** The divider on the right of its bay, where the place of that is written; else the width of the carcass. */
export function acrossFront({ doors, fronts, width, dividers }: CarcassSpec, panel: Panel, bays: readonly Bay[]) {
  const { from, to } = extentsOf(panel).x;
  const isInBay = fronts !== null || doors.bays !== null;
  const bay = isInBay ? bays.find((one) => 2 * one.from < from + to && from + to < 2 * one.to) : undefined;
  const at = dividers.find(({ key }) => key === bay?.right)?.at;
  return at?.written === true ? at : width;
}
