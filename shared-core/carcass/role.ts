import type { Located } from '../document/place.js';
import type { carcassSchema } from '../job/schema.js';
import type { EndName, LongEdge } from '../words/names.js';
import type { Told } from '../words/told.js';
import type { Layout } from './layout.js';
import type { Bay, Panel } from './model.js';
import type { Outline } from './panel.js';
import type { CarcassSpec } from './spec.js';
import type { Meeting, Standing } from './standing.js';

/** All that the core has to know of one part that a panel can play in a carcass. */
export interface Role {
  /** What it is called in a sentence: 'left side', 'loose shelf'. */
  readonly called: string;
  /** Upright on its reference end, so that its length is a height; or level, its length then runs across. */
  readonly stands: 'upright' | 'level';
  /**
   * The rows of sides set the pitch grid of the carcass. Those of a divider keep to it, and are there where a loose shelf
   * stands beside it or the job asks for them; so has a back that carries them one row, for one pin of each shelf.
   */
  readonly rows: 'set-grid' | 'keep-to-grid' | 'one-for-shelves' | 'none';
  /** Whether it is one of the panels that the box is pressed together from; a plinth stands under it, a door hangs before it, an end panel stands beside it. */
  readonly belongs: 'to-box' | 'under-box' | 'before-box' | 'beside-box' | 'in-drawer';
  /** The face that a fitting is put in from, so that it does not show. */
  readonly hiddenFace: 'inside' | 'outside';
  /** What its long edges are called: `front` is the one that bores are counted from. */
  readonly edges: Readonly<Record<'front' | 'back', LongEdge & Told>>;
  /** What its ends are called, where it is not by how it stands. */
  readonly ends?: Readonly<Record<'reference-end' | 'far-end', EndName & Told>>;
  /** Which way its faces look, for a panel that has an inside of the box on both; null where inside and outside say it. */
  readonly looks: Looks | null;
  /** The keys that such panels of a carcass may have under `panels`; see `job/panel-key.ts`. */
  readonly names: (spec: CarcassSpec) => readonly string[];
  /** The keys of a carcass that speak of such panels: of all of them, or each item of the key's list of its own. */
  readonly keys: Readonly<Partial<Record<keyof typeof carcassSchema.fields, 'all' | 'each'>>>;
  /**
   * The value of the job that makes one such panel longer or wider as it grows; its own one where it has one. `bays` are those
   * of its carcass.
   */
  readonly sizes: Readonly<Record<'length' | 'width', SizeGivenBy>>;
  /** What of the job says their board and their bands, where it is not the carcass itself. */
  readonly materials?: (spec: CarcassSpec) => Materials;
  /** What of the job names the fitting of its joints, where it is not the carcass itself. */
  readonly joint?: (spec: CarcassSpec) => Located<string>;
  /** The panels of this role that a carcass has. One that cannot stand is left out, and the problem told. */
  readonly outlines: (layout: Layout) => readonly Outline[];
  /** Where ends meet faces on account of one such panel: of every two roles that meet, one tells it. */
  readonly meetings: (panel: Panel, standing: Standing) => readonly Meeting[];
}

/** The board of panels, and the band of their edges that are seen. */
export interface Materials {
  readonly board: Located<string>;
  readonly band: Located<string>;
}

export type SizeGivenBy = (spec: CarcassSpec, panel: Panel, bays: readonly Bay[]) => Located<unknown>;

export interface Looks {
  readonly outside: string;
  readonly inside: string;
  /** A sentence for who reads 'outside' of such a panel. */
  readonly explained: string;
}
