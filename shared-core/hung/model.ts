import type { Drawer, Panel } from '../carcass/model.js';
import type { Extents } from '../carcass/pose.js';
import type { Micrometres } from '../length/units.js';
import type { Located, Place } from '../document/place.js';
import type { Angle, Bracket, Foot, Hand, Hinge, Pull, WardrobeRail } from '../shop/model.js';

/** How a hinge is put together so that the door covers what it is to cover. */
export interface Reach {
  readonly arm: Micrometres;
  readonly plate: Micrometres;
  /** From the hinge edge of the door to the centre of the cup. */
  readonly distance: Micrometres;
}

/** A place on a face: u from the edge that bores are counted from, v from the reference end. */
export interface OnFace {
  readonly u: Micrometres;
  readonly v: Micrometres;
}

/** One hinge of a door: cup and plate have one centre line. */
export interface HungHinge {
  /** 'door-1:hinge-2', counted from the bottom. */
  readonly id: string;
  /** Of its centre line, in the carcass frame. */
  readonly z: Micrometres;
  /** On the inside face of the door. */
  readonly cup: OnFace;
  /** Beside it, the lower one first; none where the hinge has none. */
  readonly cupScrews: readonly OnFace[];
  /** On the upright's face that looks at the opening, from the bottom. */
  readonly screws: readonly OnFace[];
  /** The room that hinge and plate take, in the carcass frame. */
  readonly body: Extents;
  /** The key of a panel, or the id of another hinge, that stands in its room; null where it has a place of its own. */
  readonly meets: string | null;
  /** The same of the places that would be nearer to where it usually stands. */
  readonly gaveWayTo: readonly string[];
}

/** A door on its hinges. */
export interface HungDoor {
  readonly door: Panel;
  readonly upright: Panel;
  /** The face of the upright that the plates are on. */
  readonly face: 'inside' | 'outside';
  readonly hinge: Hinge;
  /** How far the door reaches over that face's edge, along the door at its inside face; negative where its edge lies inside the opening. */
  readonly overlay: Micrometres;
  /** By how many degrees it slants away from a front square to the upright. */
  readonly slant: number;
  /** null where no arm and no plate of the hinge bring the door there; it then has no hinges. */
  readonly reach: Reach | null;
  /** How many hinges its height asks for. */
  readonly wanted: number;
  /** From the bottom up; fewer than are wanted where the pitch has no places for more. */
  readonly hinges: readonly HungHinge[];
}

/** One of the two slides of a drawer. */
export interface SlideAt {
  readonly hand: Hand;
  readonly upright: Panel;
  /** The face of the upright that it is screwed to. */
  readonly face: 'inside' | 'outside';
  /** Where its screws stand there. */
  readonly holes: readonly OnFace[];
  /** The side of the drawer that it carries, and where its screws stand on the outside face of that. */
  readonly side: Panel;
  readonly boxHoles: readonly OnFace[];
  /** The room that it takes with the drawer shut, in the carcass frame. */
  readonly body: Extents;
}

/** A drawer on its slides. */
export interface RunningDrawer {
  readonly drawer: Drawer;
  readonly front: Panel;
  readonly boxFront: Panel;
  /** The left one, then the right one. */
  readonly slides: readonly SlideAt[];
}

/** A pull on its front. */
export interface FrontPull {
  /** 'door-1:pull', 'drawer-1-front:pull-2' where it has two. */
  readonly id: string;
  readonly front: Panel;
  readonly pull: Pull;
  /** The text that asks for it. */
  readonly place: Place;
  /** Whether it stands near an end of a door, as far from it as the job or the shop says. */
  readonly byEnd: boolean;
  /** Its screws on the front, seen on the outside face; the nearer one to the origin first. */
  readonly holes: readonly OnFace[];
  /** Whether all of them are in the front; it is not bored otherwise. */
  readonly isOn: boolean;
  /** Those that go through the front of the drawer’s box too; null for a front without a box. */
  readonly boxHoles: { readonly boxFront: Panel; readonly holes: readonly OnFace[] } | null;
  /** The room that it takes before the front, in the carcass frame. */
  readonly body: Extents;
}

/** A hanging bracket in a side. */
export interface SideBracket {
  /** 'left:bracket' */
  readonly id: string;
  readonly side: Panel;
  readonly bracket: Bracket;
  /** The text that asks for it. */
  readonly place: Place;
  /** Its bores on the inside face of the side. */
  readonly holes: readonly OnFace[];
  /** Whether all of them are in the side; it is not bored otherwise. */
  readonly isOn: boolean;
  /** The room that it takes, in the carcass frame. */
  readonly body: Extents;
}

/** A rail for clothes between two uprights. */
export interface WardrobeRailAt {
  /** 'wardrobe-rail-1', with '-bay-2' where the carcass has bays. */
  readonly key: string;
  readonly rail: WardrobeRail;
  /** The height that the job gives it, and its distance from the front where the job gives one. */
  readonly at: Located<Micrometres>;
  readonly fromFront: Located<Micrometres> | undefined;
  /** Its centre line in the carcass frame. */
  readonly y: Micrometres;
  readonly z: Micrometres;
  /** What it is cut to. */
  readonly length: Micrometres;
  /** The left one, then the right one. */
  readonly sockets: readonly RailSocket[];
  /** In the carcass frame. */
  readonly body: Extents;
}

/** A socket of a wardrobe rail: the upright that it is screwed to, on which face, and where its screws stand there. */
export interface RailSocket {
  readonly upright: Panel;
  readonly face: 'inside' | 'outside';
  readonly holes: readonly OnFace[];
  /** Whether the middles of all of them are on the upright; it is not bored otherwise. */
  readonly isOn: boolean;
}

/** An angle behind a front that does not move. */
export interface FrontAngle {
  /** 'fixed-1:angle-2' */
  readonly id: string;
  readonly angle: Angle;
  readonly front: Panel;
  /** The upright, the bottom or the top that its other leg is on, and the face of that. */
  readonly on: Panel;
  readonly face: 'inside' | 'outside';
  /** The text that asks for it. */
  readonly place: Place;
  /** Where its screws stand there, and on the inside face of the front. */
  readonly holes: readonly OnFace[];
  readonly frontHoles: readonly OnFace[];
  /** The room that it takes, in the carcass frame. */
  readonly body: Extents;
}

/** A foot under the bottom of a carcass. */
export interface StandingFoot {
  /** 'foot-1' */
  readonly key: string;
  readonly foot: Foot;
  /** The text that asks for it. */
  readonly place: Place;
  readonly bottom: Panel;
  /** Its bores in the underside of the bottom. */
  readonly holes: readonly OnFace[];
  /** Whether all of them are in the bottom; it is not bored otherwise. */
  readonly isOn: boolean;
  /** The bores of the clip that it holds the plinth by, on the inside face of that; null for a foot without one. */
  readonly clip: { readonly plinth: Panel; readonly holes: readonly OnFace[] } | null;
  /** The room that it takes, in the carcass frame. */
  readonly body: Extents;
}
