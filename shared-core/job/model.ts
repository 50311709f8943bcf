import type { Located, Place } from '../document/place.js';
import type { Unit } from '../length/units.js';
import type { Hand } from '../shop/model.js';
import type { FilledCarcass } from './fill.js';

export type {
  BackHow,
  BottomHow,
  DoorHow,
  DrawerBottom,
  EdgeName,
  EndName,
  EndPanelsOn,
  FrontHeights,
  FrontWord,
  HungWord,
  PullEnd,
  PullLies,
  RowChoice,
  TopHow,
} from './choices.js';

/**
 * One carcass as the owner asks for it: its own text, then what it is like, then the job's `defaults`, then what is usual (`LEFT_OUT`). It has every
 * key of the schema; what follows from sizes is null here, and names are not looked up.
 */
export interface JobCarcass extends Omit<FilledCarcass, 'mirrored'> {
  readonly name: Located<string>;
  /** The side that the usual height and the pitch grid follow from: the left one, and the right one of a mirrored carcass. */
  readonly leading: Hand;
}

/** What is different on one panel of a carcass. */
export type PanelChoice = JobCarcass['panels'] extends ReadonlyMap<string, infer C> ? C : never;

/** The joint at one end of a panel, where it differs from the panel's others. */
export type JointChoice = NonNullable<PanelChoice['referenceEnd']>['value'];

/** The construction bores that are asked for in a joint: how many, or where. */
export type JointPlaces = NonNullable<JointChoice['dowels']>;

export interface JobHead {
  readonly title: string;
  readonly unit: Unit;
  /** True where a unit is written that is none; `unit` is a guess then, and no size is worth judging. */
  readonly unitUnknown: boolean;
  readonly shopRef: Located<string> | null;
  readonly place: Place;
}
