import type { Located, Place } from '../document/place.js';
import type { Micrometres, Unit } from '../length/units.js';
import type { CarcassKind } from '../shop/model.js';

export type RowChoice = 'none' | 'front' | 'both';
export type BackHow = 'grooved' | 'rebated' | 'applied' | 'none';
export type EdgeName = 'front' | 'back' | 'reference-end' | 'far-end';

export interface ShelfSpec {
  /** 'shelf-1' or 'loose-1': counted through the list; the panel's key, with '-bay-2' behind it where there are bays. */
  readonly key: string;
  /** Height of its holes above the bottom end of the side. */
  readonly at: Located<Micrometres>;
  readonly bay: Located<number> | null;
  readonly board: Located<string>;
  readonly setback: Located<Micrometres>;
}
export interface DividerSpec {
  readonly key: string;
  /** Centre line, from the outside of the left side. */
  readonly at: Located<Micrometres>;
  readonly board: Located<string>;
}
export interface PanelChoice {
  readonly key: Located<string>;
  readonly board?: Located<string>;
  readonly rows?: Located<RowChoice>;
  readonly rowOffset?: Located<Micrometres>;
  readonly joint?: Located<string>;
  readonly dowels?: Located<readonly Located<Micrometres>[]>;
  readonly faceDepth?: Located<Micrometres>;
  readonly endDepth?: Located<Micrometres>;
  readonly bands: Partial<Readonly<Record<EdgeName, Located<string>>>>;
}

/**
 * One carcass with every default filled in: job text, then the job's `defaults`, then the shop's habits. Names are not
 * looked up yet. Heights are counted from the bottom end of the sides, widths from the outside of the left side.
 */
export interface CarcassSpec {
  readonly name: Located<string>;
  readonly kind: Located<CarcassKind>;
  readonly width: Located<Micrometres>;
  readonly height: Located<Micrometres>;
  readonly depth: Located<Micrometres>;
  readonly board: Located<string>;
  readonly band: Located<string>;
  readonly joint: Located<string>;
  readonly top: Located<'between' | 'over' | 'rails'>;
  readonly bottom: Located<'between' | 'under'>;
  readonly railWidth: Located<Micrometres>;
  readonly plinth: Located<Micrometres>;
  readonly back: {
    readonly how: Located<BackHow>;
    readonly board: Located<string>;
    readonly groove: Located<Micrometres>;
    readonly inset: Located<Micrometres>;
  };
  readonly rows: Located<RowChoice>;
  /** From the reference end of the side; half the nominal thickness of the side's board by default. */
  readonly rowOffset: Located<Micrometres>;
  readonly rowSetback: Located<Micrometres>;
  /** null: as far back as the pitch from the front row and the shop's rear margin allow. */
  readonly rearRow: Located<Micrometres> | null;
  /** null: the pattern that the vertical head's spindle line gives. */
  readonly dowels: Located<readonly Located<Micrometres>[]> | null;
  readonly machines: Readonly<Record<'faces' | 'ends' | 'rows' | 'clamp', Located<string> | null>>;
  readonly dividers: readonly DividerSpec[];
  readonly fixedShelves: readonly ShelfSpec[];
  readonly looseShelves: readonly ShelfSpec[];
  readonly panels: ReadonlyMap<string, PanelChoice>;
  readonly note: string;
}

export interface JobHead {
  readonly title: string;
  readonly unit: Unit;
  /** True where a unit is written that is none; `unit` is a guess then, and no size is worth judging. */
  readonly unitUnknown: boolean;
  readonly shopRef: Located<string> | null;
  readonly place: Place;
}
