import type { Located } from '../document/place.js';
import type { Counted } from '../job/fill.js';
import type { JobCarcass } from '../job/model.js';
import type { Without } from './lacking.js';
import type { Micrometres } from '../length/units.js';

type ItemOf<C> = NonNullable<C> extends Counted<infer I> ? I : never;

/** A divider at its place. */
export interface DividerSpec extends Omit<ItemOf<JobCarcass['dividers']>, 'board'> {
  /** See `job/panel-key.ts`. */
  readonly key: string;
  readonly board: Located<string>;
}

/** A shelf at its height; in one bay, or (`bay` null) in every one. */
export interface ShelfSpec extends Omit<ItemOf<JobCarcass['fixedShelves']>, 'board'> {
  /** See `job/panel-key.ts`: the panel's key, or the beginning of it where there are bays. */
  readonly key: string;
  readonly board: Located<string>;
}

/** The doors, with their board and band. */
export interface DoorsSpec extends Omit<JobCarcass['doors'], 'board' | 'band'> {
  readonly board: Located<string>;
  readonly band: Located<string>;
}

/** The drawers, with their board, band and joint. */
export interface DrawersSpec extends Omit<JobCarcass['drawers'], 'board' | 'band' | 'joint'> {
  readonly board: Located<string>;
  readonly band: Located<string>;
  readonly joint: Located<string>;
}

/** What stands beside the carcass or closes the blind end of it, with its board and band. */
type Beside<K extends 'endPanels' | 'fillers' | 'blind'> = Omit<JobCarcass[K], 'board' | 'band'> & {
  readonly board: Located<string>;
  readonly band: Located<string>;
};

type Settled =
  | 'height'
  | 'rowOffset'
  | 'doors'
  | 'drawers'
  | 'endPanels'
  | 'fillers'
  | 'blind'
  | 'dividers'
  | 'fixedShelves'
  | 'looseShelves'
  | 'note';

/**
 * One carcass with everything settled that its panels are made from: what the job asks for, and what follows from sizes.
 * Names are not looked up. Heights are counted from the bottom end of the sides, widths from the outside of the left side.
 */
export interface CarcassSpec extends Omit<JobCarcass, Settled> {
  readonly height: Located<Micrometres>;
  /** From the reference end of the side; half the nominal thickness of the side's board by default. */
  readonly rowOffset: Located<Micrometres>;
  readonly doors: DoorsSpec;
  readonly drawers: DrawersSpec;
  readonly endPanels: Beside<'endPanels'>;
  readonly fillers: Beside<'fillers'>;
  readonly blind: Beside<'blind'>;
  readonly dividers: readonly DividerSpec[];
  readonly fixedShelves: readonly ShelfSpec[];
  readonly looseShelves: readonly ShelfSpec[];
  readonly note: string;
  /** What the job asks for that a carcass across a corner cannot have. */
  readonly without: readonly Without[];
}
