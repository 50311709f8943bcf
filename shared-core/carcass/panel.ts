import type { Located } from '../document/place.js';
import type { EdgeName } from '../job/model.js';
import type { Micrometres } from '../length/units.js';
import type { Band, Board } from '../shop/model.js';
import { preMillingFor } from '../shop/pre-milling.js';
import { answerOf } from '../shop/watched.js';
import type { Box } from './box.js';
import { bandNamed, chosenBand } from './choices.js';
import { shared, type Interval } from './interval.js';
import { alongAxis, toCarcass, toPanel } from './pose.js';
import type { CornerCut, Groove, Panel, Pose, PanelRole, Turn } from './model.js';

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
  readonly corner?: Omit<CornerCut, 'band' | 'milled'>;
  readonly turn?: Turn;
  /** The text that makes it. */
  readonly cause: Pick<Located<unknown>, 'place' | 'path'>;
}

/**
 * Fills in bands and cut size: the finished size less the bands on the edges across, and what is milled off before they are
 * glued on put to it again. A rebate runs out of the back edge. What is said of the front band of a panel with a cut corner is
 * said of the cut, which takes the place of the front that is seen.
 */
export function makePanel({ spec, shop }: Box, role: PanelRole, outline: Outline): Panel {
  const { key, pose, length, width, board, seen, grooves, corner, turn, cause } = outline;
  const band = (edge: EdgeName): Band | null => {
    const choice = chosenBand(spec, key, edge);
    if (choice !== undefined) return bandNamed(shop, choice.value);
    return seen.includes(edge) ? bandNamed(shop, (outline.band ?? spec.band).value) : null;
  };
  const bands = {
    front: corner === undefined ? band('front') : null,
    back: band('back'),
    'reference-end': band('reference-end'),
    'far-end': band('far-end'),
  };
  const milled = (band: Band): Micrometres =>
    // Of all the machines of a shop no more counts than this.
    answerOf(shop, `milled\n${band.name}\n${board.thickness}`, (asked) => preMillingFor(asked, band, board.thickness));
  const onCut = corner === undefined ? null : band('front');
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
    ...(corner && { corner: { ...corner, band: onCut, milled: onCut === null ? 0 : milled(onCut) } }),
    ...(turn && { turn }),
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

/**
 * Where a panel and the face that its end stands against run side by side, counted from that line, in front of the groove of
 * either; null: nowhere.
 */
export function sharedDepth(face: Panel, end: Panel): Interval | null {
  const front = frontOf(end);
  return shared(runOn(face, end), { from: front, to: front + clearDepth(end) });
}

/** How far a face reaches along the depth of a panel that stands against it, in front of its groove. */
function runOn(face: Panel, end: Panel): Interval {
  if (!runsAlong(face, end)) return { from: frontOf(face), to: frontOf(face) + clearDepth(face) };
  const [a, b] = [0, face.length].map(
    (v) => frontOf(end) + toPanel(end.pose, toCarcass(face.pose, { u: 0, v, t: 0 })).u,
  );
  return { from: Math.min(a!, b!), to: Math.max(a!, b!) };
}

/** Whether a joint runs along the face that the end stands against, not across it. */
export const runsAlong = (face: Pick<Panel, 'pose'>, end: Pick<Panel, 'pose'>): boolean =>
  alongAxis(end.pose.u) === alongAxis(face.pose.v);
