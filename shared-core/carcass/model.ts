import type { Path, Place } from '../document/place.js';
import type { Micrometres } from '../length/units.js';
import type { BackHow, EdgeName } from '../job/model.js';
import type { Fitting } from '../fittings/kinds.js';
import type { Band, Board, Hand, Slide, SlideLength } from '../shop/model.js';
import type { SpindleLine } from './spindle-line.js';

/** The parts that a panel can play. */
export type PanelRole =
  | 'left-side'
  | 'right-side'
  | 'bottom'
  | 'top'
  | 'rail'
  | 'divider'
  | 'fixed-shelf'
  | 'loose-shelf'
  | 'back'
  | 'corner-back'
  | 'plinth'
  | 'door'
  | 'drawer-front'
  | 'fixed-front'
  | 'blind-panel'
  | 'end-panel'
  | 'filler'
  | 'drawer-side'
  | 'drawer-box-front'
  | 'drawer-back'
  | 'drawer-bottom';

/** An axis of the carcass frame with its direction. x to the right, y to the back, z up. */
export type Axis = '+x' | '-x' | '+y' | '-y' | '+z' | '-z';

export interface Point3 {
  readonly x: Micrometres;
  readonly y: Micrometres;
  readonly z: Micrometres;
}

/**
 * Where a panel stands in the carcass. The panel's solid frame is (u, v, t): u from the front edge to the back edge, v from
 * the reference end to the far end, t from the OUTSIDE face to the inside face. `origin` is the carcass point of
 * u = v = t = 0. Exact: axes are signed unit vectors, so no rounding enters.
 * The frame may be right-handed or left-handed; a right side is the mirror image of a left one.
 */
export interface Pose {
  readonly origin: Point3;
  readonly u: Axis;
  readonly v: Axis;
  readonly t: Axis;
}

/** A groove or rebate for the back, or for the bottom of a drawer, on the inside face, over the whole length unless `along` says otherwise. */
export interface Groove {
  /** A rebate runs out of the back edge. */
  readonly kind: 'groove' | 'rebate';
  /** From the front edge: u in [from, to]. */
  readonly from: Micrometres;
  readonly to: Micrometres;
  readonly depth: Micrometres;
  /** Stopped groove: v in [from, to]. Left out where it runs through from end to end. */
  readonly along?: { readonly from: Micrometres; readonly to: Micrometres };
}

/**
 * A carcass across a corner of the room. In its frame the front runs from the front edge of the side on the one hand, at y = 0, to
 * that of the side on the hand of the corner, which comes forward.
 */
export interface Diagonal {
  /** The hand at whose back the corner of the room is. */
  readonly hand: Hand;
  /** How far the front runs along the first wall, and how far forward of the front edges of neighbours there. */
  readonly across: Micrometres;
  readonly out: Micrometres;
  /** From end to end of the front, to the micrometre. */
  readonly long: Micrometres;
  /** What turns a front that is square to the left side, with its left end where the diagonal begins, into the diagonal. */
  readonly turn: Turn;
}

/**
 * The corner at the front edge and one end that is sawn off along a straight line once the panel is bored, so that it is sized, bored
 * and laid against fence and stops as a whole rectangle.
 */
export interface CornerCut {
  readonly end: 'reference-end' | 'far-end';
  /** Of the finished edge: so much of the end, from the front edge on, and so much of the front edge, from the end on, is gone. */
  readonly u: Micrometres;
  readonly v: Micrometres;
  /** On the edge that the cut makes; it is thinner than what is written by as much as is sawn off more. */
  readonly band: Band | null;
  /** What the bander mills off it before that. */
  readonly milled: Micrometres;
}

/** A turn about an upright line of the carcass frame. */
export interface Turn {
  readonly at: { readonly x: Micrometres; readonly y: Micrometres };
  /** Against the clock, seen from above. */
  readonly degrees: number;
}

export interface Panel {
  /** Unique in the carcass: left, right, bottom, top, rail-front, rail-back, divider-1, shelf-1[-bay-2], loose-1[-bay-2], back, plinth, door-1, drawer-1-left. */
  readonly key: string;
  readonly role: PanelRole;
  /** Finished size, bands included: length along v, width along u, thickness along t. */
  readonly length: Micrometres;
  readonly width: Micrometres;
  readonly thickness: Micrometres;
  /** Size to cut, bands taken off. */
  readonly cutLength: Micrometres;
  readonly cutWidth: Micrometres;
  readonly pose: Pose;
  readonly board: Board;
  readonly bands: Readonly<Record<EdgeName, Band | null>>;
  /** Edges that are seen, and carry the carcass's band unless the job says otherwise. */
  readonly seen: readonly EdgeName[];
  readonly grooves: readonly Groove[];
  /** Left out where all corners stay. */
  readonly corner?: CornerCut;
  /** How it stands turned, once it stands as the pose says; left out where it does not. */
  readonly turn?: Turn;
  /** The text that makes it: the shelf's line, or the carcass's name. */
  readonly place: Place;
  readonly path: Path;
}

/** Handedness of the panel's (u, v, t) frame as it stands in the carcass: 'right' where u x v = t. */
export type Handedness = Hand;

/** Two panels that meet: the end of one stands against the face of the other. */
export interface Joint {
  /** 'bottom/left': end panel, then face panel. */
  readonly id: string;
  readonly facePanel: string;
  readonly face: 'inside' | 'outside';
  readonly endPanel: string;
  readonly end: 'reference-end' | 'far-end';
  /** What the end is bored for. */
  readonly fitting: Fitting;
  /** What the face is bored for; differs from `fitting` only where both panels choose for themselves. */
  readonly faceFitting: Fitting;
  /** True where its bores stand beside the usual places, so that two shelves at one height do not meet inside a divider. */
  readonly stagger: boolean;
  readonly place: Place;
  readonly path: Path;
}

/** A clear rectangle between two uprights: its run in x of the carcass frame, and the keys of the two. */
export interface Bay {
  readonly from: Micrometres;
  readonly to: Micrometres;
  readonly left: string;
  readonly right: string;
}

/** How a door hangs: on which hand, and the key of the upright that carries it. */
export interface Door {
  /** Its panel's. */
  readonly key: string;
  readonly hung: Hand;
  readonly upright: string;
}

/** A drawer, closed: what it runs on, and between which uprights. */
export interface Drawer {
  /** 'drawer-1': the beginning of the keys of its panels. */
  readonly key: string;
  readonly slide: Slide;
  readonly length: SlideLength;
  /** The keys of the uprights beside it. */
  readonly left: string;
  readonly right: string;
  /** Height of the line of its screws in the uprights, in the carcass frame. */
  readonly line: Micrometres;
  /** How far back the closed front reaches into the carcass; 0 for one before it. */
  readonly behind: Micrometres;
  /** The text that asks for it. */
  readonly place: Place;
  readonly path: Path;
}

/** The place of an appliance in the front: open, on a shelf or on the bottom. */
export interface Appliance {
  /** From the left and from below, as far as the front is open for it, in the carcass frame. */
  readonly x: { readonly from: Micrometres; readonly to: Micrometres };
  readonly z: { readonly from: Micrometres; readonly to: Micrometres };
  /** The text that asks for it. */
  readonly place: Place;
  readonly path: Path;
}

export interface Carcass {
  /** How many equal ones are made. */
  readonly count: number;
  readonly panels: readonly Panel[];
  readonly joints: readonly Joint[];
  /** From the left. */
  readonly bays: readonly Bay[];
  /** Bay by bay from the left, from the top down. */
  readonly doors: readonly Door[];
  /** In the same order. */
  readonly drawers: readonly Drawer[];
  readonly appliances: readonly Appliance[];
  readonly back: BackHow;
  /** What its construction bores are placed on. */
  readonly line: SpindleLine;
  /** How it stands across a corner of the room; null where it does not. */
  readonly diagonal: Diagonal | null;
}
