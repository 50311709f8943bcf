import type { Axis, Point3, Turn } from '../../carcass/model.js';
import type { Role } from '../../carcass/role.js';
import type { Extents } from '../../carcass/pose.js';
import type { Place } from '../../document/place.js';
import type { Severity } from '../../findings/finding.js';
import type { Ink } from '../../fittings/mark.js';
import type { Micrometres } from '../../length/units.js';
import type { Told } from '../../words/told.js';
import type { SceneFinding, SourceKey } from '../scene/scene.js';

// A carcass in three dimensions, as plain data. All of it stands in the carcass frame, assembled and closed, in whole
// micrometres: x to the right, y to the back, z up.

export interface BoxScene {
  readonly carcass: string;
  /** 'sink, 600 × 720 × 560 mm' */
  readonly title: Told;
  /** The whole in words, for a reader who does not see it. */
  readonly described: Told;
  /** What all of it takes up, assembled and closed. */
  readonly extents: Extents;
  /** In the order of the carcass's panels. */
  readonly parts: readonly BoxPart[];
  readonly fittings: readonly BoxFitting[];
  readonly moves: readonly BoxMove[];
  readonly findings: readonly SceneFinding[];
  readonly sources: Readonly<Record<SourceKey, Place>>;
}

/** One panel. */
export interface BoxPart {
  /** Its panel's key. */
  readonly key: string;
  /** 'Left side left' */
  readonly called: Told;
  readonly described: Told;
  /** What hangs before the box is drawn thinner, so that the box is seen. */
  readonly belongs: Role['belongs'];
  /** Before any turn. */
  readonly extents: Extents;
  /** Seen from above, where a corner is cut off: its outline, one corner after the other. */
  readonly outline: readonly { readonly x: Micrometres; readonly y: Micrometres }[] | null;
  /** How it stands turned, with all that is in it; null where it does not. */
  readonly turned: Turn | null;
  /** The room of each groove and rebate. */
  readonly grooves: readonly Extents[];
  readonly bores: readonly BoxBore[];
  /** How far it is moved where the carcass is drawn wholly apart. */
  readonly apart: Point3;
  /** Of the gravest finding about it; null where there is none. */
  readonly severity: Severity | null;
  readonly source: SourceKey;
}

/** A bore as a cylinder: from where the bit enters, along an axis of the carcass. */
export interface BoxBore {
  readonly id: string;
  readonly described: Told;
  readonly from: Point3;
  readonly along: Axis;
  readonly depth: Micrometres;
  readonly diameter: Micrometres;
  readonly ink: Ink;
  readonly severity: Severity | null;
  readonly source: SourceKey;
}

/** What stands in bores, or beside them. */
export interface BoxFitting {
  /** The bore, the mate or the hinge that it belongs to. */
  readonly key: string;
  /** 'dowel-8x30' */
  readonly called: Told;
  /** Key of the part that it goes with when parts are moved. */
  readonly on: string;
  readonly ink: Ink;
  readonly solid: BoxSolid;
}

export type BoxSolid =
  | {
      readonly kind: 'cylinder';
      readonly from: Point3;
      readonly along: Axis;
      readonly length: Micrometres;
      readonly diameter: Micrometres;
    }
  /** Room that is known, of a thing whose form is not. */
  | { readonly kind: 'room'; readonly extents: Extents };

/** How parts move that can be opened. */
export type BoxMove = BoxTurn | BoxPull;

export interface BoxTurn {
  readonly kind: 'turn';
  /** Keys of the parts that move. */
  readonly parts: readonly string[];
  /** The upright line that they turn about. */
  readonly axis: { readonly x: Micrometres; readonly y: Micrometres };
  /** Seen from above. */
  readonly way: 'clockwise' | 'anticlockwise';
  /** Wholly open. */
  readonly degrees: number;
}

export interface BoxPull {
  readonly kind: 'pull';
  /** Keys of the parts that move. */
  readonly parts: readonly string[];
  /** How far to the front, wholly open. */
  readonly travel: Micrometres;
}
