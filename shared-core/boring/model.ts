import type { Located, Path, Place } from '../document/place.js';
import type { BorePurpose } from '../fittings/names.js';
import type {
  FrontAngle,
  FrontPull,
  HungDoor,
  RunningDrawer,
  SideBracket,
  StandingFoot,
  WardrobeRailAt,
} from '../hung/model.js';
import type { Micrometres } from '../length/units.js';

export type Surface = 'inside' | 'outside' | 'reference-end' | 'far-end';

/**
 * A bore in one panel. On a face (inside, outside): `u` from the front edge, `v` from the reference end. On an end: `u` from
 * the front edge, `v` from the OUTSIDE face across the thickness. Depth runs into the panel, square to the surface.
 */
export interface Bore {
  /** Unique in the carcass and stable while its cause stays: 'left:bottom/left:2', 'left:row-front:14'. */
  readonly id: string;
  readonly panel: string;
  readonly face: Surface;
  readonly u: Micrometres;
  readonly v: Micrometres;
  readonly diameter: Micrometres;
  readonly depth: Micrometres;
  /** True where it comes out on the other side; its depth is then the thickness of the panel. */
  readonly through: boolean;
  readonly purpose: BorePurpose;
  /** Id of the joint, the row, the hinge, the pull, the bracket, the wardrobe rail, the foot or the angle, or key of the drawer. */
  readonly group: string;
  /** Name of the fitting it is bored for; null for rows. */
  readonly fitting: string | null;
  /** Id of the main bore of the same fitting that it meets by design, as the bore for a cam meets that of its bolt. */
  readonly meets?: string;
  readonly place: Place;
}

/** Holes in a line on the pitch, in one face: v = offset + k * pitch for k = 0 .. count - 1, of which some may be left out. */
export interface Row {
  /** 'left:row-front' */
  readonly id: string;
  readonly panel: string;
  readonly face: 'inside' | 'outside';
  readonly line: 'front' | 'rear';
  readonly u: Micrometres;
  readonly offset: Micrometres;
  readonly pitch: Micrometres;
  readonly count: number;
  /** The k of the holes that are bored, ascending and at least one; every one where it is left out. */
  readonly holes?: readonly number[];
  readonly diameter: Micrometres;
  readonly depth: Micrometres;
  readonly through: boolean;
  readonly place: Place;
  readonly path: Path;
}

export interface BoreMap {
  /** By panel, in the order of the carcass's panels, then front before rear. */
  readonly rows: readonly Row[];
  /** By panel, in the order of the carcass's panels, then by surface, v, u. */
  readonly bores: readonly Bore[];
  /** The doors on their hinges. */
  readonly hung: readonly HungDoor[];
  /** The drawers on their slides. */
  readonly running: readonly RunningDrawer[];
  /** The pulls on their fronts. */
  readonly pulls: readonly FrontPull[];
  /** The brackets in its sides. */
  readonly brackets: readonly SideBracket[];
  /** The rails for clothes between its uprights. */
  readonly wardrobeRails: readonly WardrobeRailAt[];
  /** The feet under its bottom. */
  readonly feet: readonly StandingFoot[];
  /** The angles behind its fronts that do not move. */
  readonly angles: readonly FrontAngle[];
  /** Places that the job lists under `dowels` or `end-dowels` and that no joint of the panel reaches, so that nothing is bored there. */
  readonly unused: readonly UnusedPlace[];
  /** Joints in which fewer places find room than the job asks for. */
  readonly crowded: readonly CrowdedJoint[];
}

export interface CrowdedJoint {
  readonly joint: string;
  /** The panel whose end it is. */
  readonly panel: string;
  readonly count: Located<number>;
  /** How many find room. */
  readonly room: number;
}

export interface UnusedPlace {
  /** The panel whose list it is; null for the carcass's own list. */
  readonly panel: string | null;
  readonly at: Located<Micrometres>;
}
