import type { FittingKind } from '../fittings/names.js';
import type { Fitting } from '../fittings/kinds.js';
import type { Micrometres, Unit } from '../length/units.js';
import type { Model, Named } from '../schema/model.js';
import type * as habitSchemas from './habit-schemas.js';
import type * as hingeSchemas from './hinge-schemas.js';
import type * as machines from './machine-schemas.js';
import type * as materials from './material-schemas.js';
import type * as papers from './paper-schemas.js';
import type * as bracketSchemas from './bracket-schemas.js';
import type * as wardrobeRailSchemas from './wardrobe-rail-schemas.js';
import type * as angleSchemas from './angle-schemas.js';
import type * as footSchemas from './foot-schemas.js';
import type * as pullSchemas from './pull-schemas.js';
import type * as slideSchemas from './slide-schemas.js';

// Everything of a shop is as its schema says, under names in camel case, with what is left out filled in; here stands only
// what the schema does not say.

export interface Board extends Named, Omit<Model<typeof materials.board>, 'measured'> {
  /** What panels and joints are set out on: the measured thickness where the shop has one, else the nominal. */
  readonly thickness: Micrometres;
  readonly nominal: Micrometres;
}
export interface Band extends Named, Model<typeof materials.band> {}

export interface Hinge extends Named, Model<typeof hingeSchemas.hinge> {}

export interface Slide extends Named, Model<typeof slideSchemas.slide> {}
/** One length that a slide comes in. */
export type SlideLength = Slide['lengths'][number];

export interface Pull extends Named, Model<typeof pullSchemas.pull> {}

export interface Bracket extends Named, Model<typeof bracketSchemas.bracket> {}

export interface WardrobeRail extends Named, Model<typeof wardrobeRailSchemas.wardrobeRail> {}

export interface Angle extends Named, Model<typeof angleSchemas.angle> {}

export interface Foot extends Named, Model<typeof footSchemas.foot> {}

export type PanelRange = Model<typeof machines.panelSpans>;
export interface Stop extends Named, Model<typeof machines.stop> {}
export type Hand = Stop['side'];
export interface HoldingClamp extends Named, Model<typeof machines.clamp> {}
export interface VerticalHead extends Named, Model<typeof machines.verticalHead> {
  readonly kind: 'vertical';
}
export interface HorizontalHead extends Named, Model<typeof machines.horizontalHead> {
  readonly kind: 'horizontal';
}
export interface LineDrill extends Named, Model<typeof machines.lineDrill> {
  readonly kind: 'line';
}
export interface CupBorer extends Named, Model<typeof machines.cupBorer> {
  readonly kind: 'cup';
}
export interface PanelSaw extends Named, Model<typeof machines.saw> {
  readonly kind: 'saw';
}
export interface EdgeBander extends Named, Model<typeof machines.bander> {
  readonly kind: 'bander';
}
export interface CaseClamp extends Named, Model<typeof machines.caseClamp> {
  readonly kind: 'clamp';
}
export type Machine = VerticalHead | HorizontalHead | LineDrill | CupBorer | PanelSaw | EdgeBander | CaseClamp;
export type MachineKind = Machine['kind'];

/** The shop's habits, every one filled in: what the shop file does not say comes from the built-in shop. */
export type Habits = Model<typeof habitSchemas.habits>;
/** `height` null: so many pitches and the thicknesses that balance the row. */
export type KindSize = Model<typeof habitSchemas.kindSize>;
export type CarcassKind = keyof typeof habitSchemas.habits.fields.sizes.schema.fields;
/** Seconds. */
export type Changeover = Model<typeof habitSchemas.changeover>;
/** Seconds. */
export type Handling = Model<typeof habitSchemas.handling>;
/** Each a plus-or-minus bound; squareness over one metre of length. */
export type Tolerances = Model<typeof habitSchemas.tolerances>;

/** `marginLeft` and `marginTop` null: the labels stand in the middle of the page. */
export type LabelSheet = Model<typeof papers.labelSheet>;

/** Prices in the shop's own money, times in seconds. */
export type Rates = Model<typeof papers.rates>;

/** Names of what the shop has but that cannot be read for a fault of its text: known, without figures. */
export interface Unread {
  readonly boards: ReadonlySet<string>;
  readonly bands: ReadonlySet<string>;
  readonly fittings: ReadonlyMap<string, FittingKind>;
  readonly hinges: ReadonlySet<string>;
  readonly slides: ReadonlySet<string>;
  readonly pulls: ReadonlySet<string>;
  readonly brackets: ReadonlySet<string>;
  readonly wardrobeRails: ReadonlySet<string>;
  readonly feet: ReadonlySet<string>;
  readonly angles: ReadonlySet<string>;
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
  readonly hinges: ReadonlyMap<string, Hinge>;
  readonly slides: ReadonlyMap<string, Slide>;
  readonly pulls: ReadonlyMap<string, Pull>;
  readonly brackets: ReadonlyMap<string, Bracket>;
  readonly wardrobeRails: ReadonlyMap<string, WardrobeRail>;
  readonly feet: ReadonlyMap<string, Foot>;
  readonly angles: ReadonlyMap<string, Angle>;
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
  readonly handling: Handling;
  readonly tolerances: Tolerances;
  readonly labelSheet: LabelSheet;
  readonly rates: Rates;
}
