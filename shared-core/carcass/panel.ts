import type { Located } from '../document/place.js';
import type { EdgeName } from '../job/model.js';
import type { Micrometres } from '../length/units.js';
import type { Band, Board } from '../shop/model.js';
import { preMillingFor } from '../shop/pre-milling.js';
import { answerOf } from '../shop/watched.js';
import type { Box } from './box.js';
import { bandNamed, chosenBand } from './choices.js';
import { shared, type Interval } from './interval.js';
import { alongAxis } from './pose.js';
import type { Groove, Panel, Pose, PanelRole } from './model.js';

/** A panel before its bands are known. */
export interface Outline {
  readonly key: string;
  readonly pose: Pose;
  readonly length: Micrometres;
  readonly width: Micrometres;
  readonly board: Board;
  /** Edges that are seen: they carry a band unless the job says otherwise. */
  readonly seen: readonly EdgeName[];
  /** Of the edges that are seen; the carcass's where it is left out. */
  readonly band?: Located<string>;
  readonly grooves: readonly Groove[];
  /** The text that makes it. */
  readonly cause: Pick<Located<unknown>, 'place' | 'path'>;
}

/**
 * Fills in bands and cut size: the finished size less the bands on the edges across, and what is milled off before they are
 * glued on put to it again. A rebate runs out of the back edge.
 */
export function makePanel({ spec, shop }: Box, role: PanelRole, outline: Outline): Panel {
  const { key, pose, length, width, board, seen, grooves, cause } = outline;
  const band = (edge: EdgeName): Band | null => {
    const choice = chosenBand(spec, key, edge);
    if (choice !== undefined) return bandNamed(shop, choice.value);
    return seen.includes(edge) ? bandNamed(shop, (outline.band ?? spec.band).value) : null;
  };
  const bands = {
    front: band('front'),
    back: band('back'),
    'reference-end': band('reference-end'),
    'far-end': band('far-end'),
  };
  const milled = (band: Band): Micrometres =>
    // Of all the machines of a shop no more counts than this.
    answerOf(shop, `milled\n${band.name}\n${board.thickness}`, (asked) => preMillingFor(asked, band, board.thickness));
  const taken = (...edges: EdgeName[]): Micrometres =>
    edges.reduce((sum, edge) => {
      const on = bands[edge];
      return on === null ? sum : sum + on.thickness - milled(on);
    }, 0);
  return {
    key,
    role,
    length,
    width,
    thickness: board.thickness,
    cutLength: length - taken('reference-end', 'far-end'),
    cutWidth: width - taken('front', 'back'),
    pose,
    board,
    bands,
    seen,
    grooves: grooves.map((groove) => (groove.kind === 'rebate' ? { ...groove, to: width } : groove)),
    place: cause.place,
    path: cause.path,
  };
}

/** How much of a panel's width lies in front of the groove of the back. */
export function clearDepth(panel: Panel): Micrometres {
  return Math.min(panel.width, ...panel.grooves.map((groove) => groove.from));
}

/**
 * How far the front edge of a panel stands behind the line that the joints of its box are counted from: the front of the
 * carcass; of a drawer, whose pieces are set out from above, the upper edge that they share.
 */
export function frontOf({ pose }: Pick<Panel, 'pose'>): Micrometres {
  return alongAxis(pose.u) === 'y' ? pose.origin.y : 0;
}

/** Where two panels stand side by side, counted from that line, in front of the groove of either; null: nowhere. */
export function sharedDepth(a: Panel, b: Panel): Interval | null {
  const run = (panel: Panel): Interval => ({ from: frontOf(panel), to: frontOf(panel) + clearDepth(panel) });
  return shared(run(a), run(b));
}
