import { DRAWER_SIDE_ENDS, EDGES, UPPER_EDGES } from '../../words/names.js';
import { keyInDrawer, wholeOf, type DrawerPart } from '../../job/panel-key.js';
import { bottomsOf, crossPiecesOf, sidesOf } from '../drawers/pieces.js';
import { heightGiven, keysOfKind } from '../fronts/asked.js';
import { acrossFront } from './fronts.js';
import type { Located } from '../../document/place.js';
import type { Micrometres } from '../../length/units.js';
import type { Panel } from '../model.js';
import { extentsOf } from '../pose.js';
import type { Role } from '../role.js';
import type { CarcassSpec } from '../spec.js';
import type { Meeting, Standing } from '../standing.js';

const named =
  (...parts: readonly DrawerPart[]) =>
  (spec: CarcassSpec): readonly string[] =>
    keysOfKind(spec, 'drawer').flatMap((key) => parts.map((part) => keyInDrawer(key, part)));

/** That of all boxes where the job gives them one, else the shelf over it or the height of the front, else that of the carcass. */
function heightOfBox(spec: CarcassSpec, panel: Panel): Located<unknown> {
  return spec.drawers.height ?? shelfOver(spec, panel) ?? heightGiven(spec, panel.key) ?? spec.height;
}

/** The place of a fixed shelf that stands behind the front of a drawer, over its box; null where none is written. */
function shelfOver(spec: CarcassSpec, panel: Panel): Located<Micrometres> | null {
  const given = heightGiven(spec, panel.key)?.value;
  const { from, to } = extentsOf(panel).z;
  const behind = spec.fixedShelves.filter(
    ({ at }) => at.written && at.value > to && typeof given === 'number' && at.value < from + given,
  );
  return behind.toSorted((a, b) => a.at.value - b.at.value)[0]?.at ?? null;
}

const piece = {
  stands: 'level',
  rows: 'none',
  belongs: 'in-drawer',
  hiddenFace: 'outside',
  edges: UPPER_EDGES,
  looks: null,
  keys: { drawers: 'all', fronts: 'each' },
  sizes: { length: acrossFront, width: heightOfBox },
  materials: ({ drawers }: CarcassSpec) => drawers,
  joint: ({ drawers }: CarcassSpec) => drawers.joint,
  meetings: (): readonly Meeting[] => [],
} satisfies Partial<Role>;

/** A side of a drawer's box. */
export const drawerSide: Role = {
  ...piece,
  called: 'drawer side',
  ends: DRAWER_SIDE_ENDS,
  names: named('left', 'right'),
  sizes: { length: ({ depth }) => depth, width: heightOfBox },
  outlines: sidesOf,
};

/** Both ends of a piece between the sides of its drawer, against their inside faces. */
function betweenDrawerSides(panel: Panel, standing: Standing): readonly Meeting[] {
  const drawer = wholeOf(panel.key);
  return [
    standing.meeting(panel, 'reference-end', standing.panel(keyInDrawer(drawer, 'left'))),
    standing.meeting(panel, 'far-end', standing.panel(keyInDrawer(drawer, 'right'))),
  ];
}

/** The front of the box, that the drawer's front is screwed to. */
export const drawerBoxFront: Role = {
  ...piece,
  called: 'front of a drawer’s box',
  names: named('box-front'),
  outlines: (layout) => crossPiecesOf(layout, 'box-front'),
  meetings: betweenDrawerSides,
};

/** The back of the box. */
export const drawerBack: Role = {
  ...piece,
  called: 'drawer back',
  names: named('back'),
  outlines: (layout) => crossPiecesOf(layout, 'back'),
  meetings: betweenDrawerSides,
};

/** The bottom of the box, its underside out. */
export const drawerBottom: Role = {
  ...piece,
  called: 'drawer bottom',
  edges: EDGES,
  looks: { outside: 'lower', inside: 'upper', explained: 'The outside face of a drawer’s bottom is its lower one.' },
  names: named('bottom'),
  materials: ({ drawers }) => ({ board: drawers.bottomBoard, band: drawers.band }),
  sizes: { length: acrossFront, width: ({ depth }) => depth },
  outlines: bottomsOf,
};
