import type { Located } from '../document/place.js';
import type { EdgeName } from '../job/model.js';
import type { Micrometres } from '../length/units.js';
import type { Band, Board } from '../shop/model.js';
import type { Box } from './box.js';
import { bandNamed, chosenBand } from './choices.js';
import type { Groove, Panel, PanelRole, Pose } from './model.js';
import { isFrontSeen } from './roles.js';

/** A panel before its bands are known. */
export interface Outline {
  readonly key: string;
  readonly role: PanelRole;
  readonly pose: Pose;
  readonly length: Micrometres;
  readonly width: Micrometres;
  readonly board: Board;
  readonly grooves?: readonly Groove[];
  /** The text that makes it. */
  readonly cause: Pick<Located<unknown>, 'place' | 'path'>;
}

/** Fills in bands and cut size: the finished size less the bands on the edges across. */
export function makePanel({ spec, shop }: Box, outline: Outline): Panel {
  const { key, role, pose, length, width, board, cause } = outline;
  const band = (edge: EdgeName): Band | null => {
    const choice = chosenBand(spec, key, edge);
    if (choice !== undefined) return bandNamed(shop, choice.value);
    const seen = edge === 'front' && isFrontSeen(outline);
    return seen ? bandNamed(shop, spec.band.value) : null;
  };
  const bands = {
    front: band('front'),
    back: band('back'),
    'reference-end': band('reference-end'),
    'far-end': band('far-end'),
  };
  const taken = (...edges: EdgeName[]): Micrometres =>
    edges.reduce((sum, edge) => sum + (bands[edge]?.thickness ?? 0), 0);
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
    grooves: outline.grooves ?? [],
    place: cause.place,
    path: cause.path,
  };
}

/** How much of a panel's width lies in front of the groove of the back. */
export function clearDepth(panel: Panel): Micrometres {
  return Math.min(panel.width, ...panel.grooves.map((groove) => groove.from));
}
