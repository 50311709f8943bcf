import type { Joint, Panel } from '../carcass/model.js';
import type { CarcassAxis } from '../carcass/pose.js';
import type { Micrometres } from '../length/units.js';
import type { Hole, Stroke } from '../machining/replay/bore.js';
import type { SolidNames } from '../machining/replay/solid.js';
import type { Spindle } from '../machining/replay/table.js';
import type { Blank } from '../machining/set-up.js';

/** Where a hole is drawn. */
export type DrawnHole = Pick<Hole, 'face' | 'u' | 'v' | 'depth'>;

/** One of the two panels of a joint, with the strokes that bore it there. */
export interface Half {
  readonly panel: Panel;
  readonly blank: Blank;
  readonly names: SolidNames;
  /** Its holes as drawn, in the order of the ties. */
  readonly drawn: readonly DrawnHole[];
  /** By stroke, so that the panel is laid down once for all its spindles; `ties` tells which tie each spindle bores for. */
  readonly strokes: readonly {
    readonly stroke: Stroke;
    readonly spindles: readonly Spindle[];
    readonly ties: readonly number[];
  }[];
}

/** A dowel, or whatever else holds a joint at one place. */
export interface Tie {
  /** Length of a dowel, which may touch bottom in its bores; null for what cannot. */
  readonly dowelLength: Micrometres | null;
}

/** Where an end stands on a face as drawn, along u of the end panel; `to` null: as far as its back edge. */
export interface Contact {
  readonly from: Micrometres;
  readonly to: Micrometres | null;
}

/** What the front edge, or the outside face, of an end panel is to keep its place by. */
export interface Datum {
  /** The side of the face panel. */
  readonly side: 'front' | 'back' | 'reference-end' | 'far-end';
  /** The axis of the carcass in which a misfit shows. */
  readonly axis: CarcassAxis;
  /** How far from that side it lies as drawn, on that axis. 0: the two are flush, so that a misfit is seen and felt. */
  readonly drawn: Micrometres;
}

/** All that is needed to put one joint together out of two real panels, whatever stands beside them. */
export interface LoneJoint {
  readonly joint: Joint;
  readonly face: Half;
  readonly end: Half;
  readonly ties: readonly Tie[];
  readonly front: Datum;
  readonly outside: Datum;
  readonly contact: Contact;
  /** What the joint's play is called among the strays. */
  readonly names: { readonly along: string; readonly across: string };
  readonly likeness: Likeness;
}

/** What a joint by itself is like. */
export interface Likeness {
  /**
   * Equal for joints at which things that stray do the same, wherever the joints stand and however long their panels are: no
   * more is left out than where things lie along the axes in which they are only moved. Names stand in it as numbers.
   */
  readonly shape: string;
  /** What strays there, by its number in `shape`. */
  readonly names: readonly string[];
}
