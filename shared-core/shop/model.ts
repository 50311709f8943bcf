import type { Place } from '../document/place.js';
import type { Micrometres, Unit } from '../length/units.js';
import type { Span } from '../schema/schema.js';

/** Every named thing of a shop: its name and where the shop file (or nothing, for the built-in shop) writes it. */
interface Named {
  readonly name: string;
  readonly place: Place;
}

export interface Board extends Named {
  /** What panels and joints are set out on: the measured thickness where the shop has one, else the nominal. */
  readonly thickness: Micrometres;
  readonly nominal: Micrometres;
  readonly sheetLength: Micrometres | null;
  readonly sheetWidth: Micrometres | null;
  readonly grain: 'none' | 'length';
}
export interface Band extends Named {
  readonly thickness: Micrometres;
  readonly height: Micrometres | null;
}

export interface Dowel extends Named {
  readonly kind: 'dowel';
  readonly diameter: Micrometres;
  readonly length: Micrometres;
  readonly inFace: Micrometres;
}
export interface ConnectorScrew extends Named {
  readonly kind: 'screw';
  readonly clearance: Micrometres;
  readonly pilot: Micrometres;
  readonly length: Micrometres;
}
export interface CamFitting extends Named {
  readonly kind: 'cam';
  readonly camDiameter: Micrometres;
  readonly camDepth: Micrometres;
  readonly distance: Micrometres;
  readonly boltDiameter: Micrometres;
  readonly studDiameter: Micrometres;
  readonly studDepth: Micrometres;
  /** Name of the dowel at the places between the cams. */
  readonly guide: string | null;
}
export type Fitting = Dowel | ConnectorScrew | CamFitting;

export type Hand = 'left' | 'right';

export interface PanelRange {
  readonly length: Span | null;
  readonly width: Span | null;
  readonly thickness: Span | null;
}
/** Range and positions run from the face of the stop to the nearest spindle on its side. */
export interface Stop extends Named {
  readonly side: Hand;
  readonly range: Span;
  readonly lowers: boolean;
}
export interface HoldingClamp extends Named {
  readonly along: Micrometres;
  readonly across: Micrometres;
}
interface Head extends Named {
  /** Heads with the same body are one machine; a head with none is a body of its own. */
  readonly body: string;
  readonly spindles: number;
  readonly pitch: Micrometres;
  readonly depth: Span;
  readonly depthStops: number | null;
  readonly panel: PanelRange;
  readonly clamps: readonly HoldingClamp[];
  readonly stops: readonly Stop[];
}
export interface VerticalHead extends Head {
  readonly kind: 'vertical';
  readonly fence: 'far' | 'near';
  readonly from: 'above' | 'below';
  readonly fenceOffset: Span;
  /** How far the extension sets stops beyond their range; 0 for none. */
  readonly extension: Micrometres;
}
export interface HorizontalHead extends Head {
  readonly kind: 'horizontal';
  readonly height: Span;
}
export interface LineDrill extends Head {
  readonly kind: 'line';
  readonly fence: 'far' | 'near';
  readonly from: 'above' | 'below';
  readonly heads: number;
  readonly setback: Span;
  readonly headDistance: Span | null;
  readonly throat: Micrometres;
  readonly indexPins: 'row' | 'fence' | 'none';
  readonly indexRange: Micrometres | null;
  readonly meetsHolesTwice: boolean;
}
export interface CupBorer extends Named {
  readonly kind: 'cup';
  readonly body: string;
  readonly distance: Span;
  readonly depth: Span;
  readonly stops: readonly Stop[];
  readonly panel: PanelRange;
}
export interface PanelSaw extends Named {
  readonly kind: 'saw';
  readonly kerf: Micrometres;
  readonly rip: Micrometres | null;
  readonly crosscut: Micrometres | null;
}
export interface EdgeBander extends Named {
  readonly kind: 'bander';
  readonly band: Span | null;
  readonly thickness: Span | null;
  readonly shortestEdge: Micrometres | null;
  readonly narrowestPanel: Micrometres | null;
}
export interface CaseClamp extends Named {
  readonly kind: 'clamp';
  readonly width: Span | null;
  readonly height: Span | null;
  readonly depth: Span | null;
}
export type Machine = VerticalHead | HorizontalHead | LineDrill | CupBorer | PanelSaw | EdgeBander | CaseClamp;
export type MachineKind = Machine['kind'];

export type CarcassKind = 'base' | 'wall' | 'tall' | 'drawer' | 'open';

export interface KindSize {
  /** A fixed height, or null: then so many pitches and the thicknesses that balance the row. */
  readonly height: Micrometres | null;
  readonly pitches: number;
  readonly depth: Micrometres;
}

/** The shop's habits, every one filled in: what the shop file does not say comes from the built-in shop. */
export interface Habits {
  readonly board: string;
  readonly backBoard: string;
  readonly band: string;
  readonly joint: string;
  readonly sizes: Readonly<Record<CarcassKind, KindSize>>;
  readonly machines: Readonly<Record<'faces' | 'ends' | 'rows' | 'cups' | 'clamp', string | null>>;
  readonly pitch: Micrometres;
  readonly setback: Micrometres;
  readonly rowDiameter: Micrometres;
  readonly rowDepth: Micrometres;
  /** null: half the nominal thickness of the board. */
  readonly rowOffset: Micrometres | null;
  readonly rearMargin: Micrometres;
  readonly firstDowel: Micrometres;
  readonly dowelSpacing: Micrometres;
  readonly glueGap: Micrometres;
  readonly leastWall: Micrometres;
  readonly railWidth: Micrometres;
  readonly grooveDepth: Micrometres;
  readonly backInset: Micrometres;
  readonly shelfGap: Micrometres;
  readonly shelfSetback: Micrometres;
}

/** Seconds. */
export interface Changeover {
  readonly stop: number;
  readonly fence: number;
  readonly bit: number;
  readonly depth: number;
  readonly turnHead: number;
  readonly extension: number;
  readonly machine: number;
}

/** Each a plus-or-minus bound; squareness over one metre of length. */
export interface Tolerances {
  readonly thickness: Micrometres;
  readonly width: Micrometres;
  readonly length: Micrometres;
  readonly squareness: Micrometres;
  readonly stop: Micrometres;
  readonly drill: Micrometres;
  readonly dowelPlay: Micrometres;
  readonly frontLimit: Micrometres;
  readonly stepLimit: Micrometres;
  readonly gapLimit: Micrometres;
}

/** Names of what the shop has but that cannot be read for a fault of its text: known, without figures. */
export interface Unread {
  readonly boards: ReadonlySet<string>;
  readonly bands: ReadonlySet<string>;
  readonly fittings: ReadonlyMap<string, Fitting['kind']>;
  readonly machines: ReadonlyMap<string, MachineKind>;
}

export interface Shop {
  readonly title: string;
  readonly unit: Unit;
  /** True for the built-in shop that stands in where a job names none. */
  readonly neutral: boolean;
  readonly boards: ReadonlyMap<string, Board>;
  readonly bands: ReadonlyMap<string, Band>;
  readonly fittings: ReadonlyMap<string, Fitting>;
  readonly machines: ReadonlyMap<string, Machine>;
  readonly unread?: Unread;
  /** True where its text does not tell what the shop has (broken, or of no known unit): nothing can be worked out by it. */
  readonly unusable?: boolean;
  /** True for the built-in shop in the place of one that cannot be had: a name that it has not may well be right. */
  readonly standsIn?: boolean;
  /** Diameters of the bits that the shop has; null where it does not say (then any diameter can be bored). */
  readonly bits: readonly Micrometres[] | null;
  readonly habits: Habits;
  readonly changeover: Changeover;
  readonly tolerances: Tolerances;
}
