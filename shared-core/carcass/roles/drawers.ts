import { EDGES, UPPER_EDGES } from '../../words/names.js';
import { keyInDrawer, wholeOf, type DrawerPart } from '../../job/panel-key.js';
import { bottomsOf, crossPiecesOf, sidesOf } from '../drawers/pieces.js';
import { heightGiven, keysOfKind } from '../fronts/asked.js';
import { acrossFront } from './fronts.js';
import type { Located } from '../../document/place.js';
import type { Panel } from '../model.js';
import type { Role } from '../role.js';
import type { CarcassSpec } from '../spec.js';
import type { Meeting, Standing } from '../standing.js';

const named =
  (...parts: readonly DrawerPart[]) =>
  (spec: CarcassSpec): readonly string[] =>
    keysOfKind(spec, 'drawer').flatMap((key) => parts.map((part) => keyInDrawer(key, part)));

/** That of all boxes where the job gives them one, else that of the front, else that of the carcass. */
function heightOfBox(spec: CarcassSpec, { key }: Pick<Panel, 'key'>): Located<unknown> {
  return spec.drawers.height ?? heightGiven(spec, key) ?? spec.height;
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
