import type { CarcassSpec } from './spec.js';
import type { BackHow } from '../job/model.js';
import { takenByBack } from '../shop/back.js';
import type { Micrometres } from '../length/units.js';
import type { Board, Shop } from '../shop/model.js';
import type { Hand } from '../shop/model.js';
import { backBoardFor, boardFor } from './choices.js';
import type { Diagonal } from './model.js';
import { diagonalOf } from './diagonal.js';
import { otherHand } from './hands.js';
import { extent, type Interval } from './interval.js';
import { say } from './messages.js';
import type { Groove } from './model.js';
import type { Problems } from './problems.js';

/** The planes that every panel is set out from, in the carcass frame. */
export interface Box {
  readonly spec: CarcassSpec;
  readonly shop: Shop;
  readonly boards: {
    readonly left: Board;
    readonly right: Board;
    readonly bottom: Board;
    /** null where rails close the carcass above. */
    readonly top: Board | null;
    readonly railFront: Board;
    readonly railBack: Board;
  };
  /** Between the inside faces of the sides; across a corner from that of the side there to the back along the other wall. */
  readonly clearX: Interval;
  /** Between the inside face of the bottom and that of the top or of the thicker rail. */
  readonly clearZ: Interval;
  /** The sides, from end to end. */
  readonly sideZ: Interval;
  /** How it stands across a corner of the room; null where it does not. */
  readonly diagonal: Diagonal | null;
  /** How far back the sides reach. */
  readonly sideDepth: Micrometres;
  /** Front of the back; everything inside the box ends here at the latest. */
  readonly clearDepth: Micrometres;
  /** How the back is held and with what; null where there is none. */
  readonly back: { readonly how: Exclude<BackHow, 'none'>; readonly board: Board } | null;
  /** The groove or rebate that takes the back, as it runs through a panel that starts at the carcass front. */
  readonly groove: Groove | null;
}

function boardsOf(spec: CarcassSpec, shop: Shop): Box['boards'] {
  const of = (key: string): Board => boardFor(spec, shop, key, spec.board);
  return {
    left: of('left'),
    right: of('right'),
    bottom: of('bottom'),
    top: spec.top.value === 'rails' ? null : of('top'),
    railFront: of('rail-front'),
    railBack: of('rail-back'),
  };
}

/** Measures the box. null where a clear size comes to nothing: then no panel could be placed. */
export function measureBox(spec: CarcassSpec, shop: Shop, problems: Problems): Box | null {
  const [width, height, depth] = [spec.width.value, spec.height.value, spec.depth.value];
  const boards = boardsOf(spec, shop);
  const above = boards.top?.thickness ?? Math.max(boards.railFront.thickness, boards.railBack.thickness);
  const clearZ = { from: boards.bottom.thickness, to: height - above };
  const sideZ = {
    from: spec.bottom.value === 'under' ? boards.bottom.thickness : 0,
    to: spec.top.value === 'over' ? height - above : height,
  };

  const how = spec.back.how.value;
  const board = backBoardFor(spec, shop);
  const behind = takenByBack(how, board.thickness, spec.back.inset.value);
  const clearDepth = depth - behind;
  const diagonal = diagonalOf(spec);
  const beside = (hand: Hand): Micrometres => (diagonal?.hand === hand ? behind : boards[hand].thickness);
  const clearX = { from: beside('left'), to: width - beside('right') };
  if (diagonal !== null && !hasFront(spec, boards, diagonal, problems)) return null;

  if (extent(clearX) <= 0)
    problems.add(
      spec.width,
      say.noWidth({
        thick: [boards.left.thickness, boards.right.thickness],
        size: width,
        least: width - extent(clearX),
      }),
    );
  if (extent(clearZ) <= 0)
    problems.add(
      spec.height,
      say.noHeight({ thick: [boards.bottom.thickness, above], size: height, least: height - extent(clearZ) }),
    );
  if (clearDepth <= 0) problems.add(spec.depth, say.noDepth({ behind, size: depth }));
  if (extent(clearX) <= 0 || extent(clearZ) <= 0 || clearDepth <= 0) return null;

  const held = how === 'none' ? null : { how, board };
  const groove = grooveFor(spec, held, clearDepth, shop.habits.groovePlay);
  const tooThin =
    groove === null ? undefined : panelsWithGroove(boards, spec).find(([, { thickness }]) => thickness <= groove.depth);
  if (tooThin !== undefined)
    problems.add(
      spec.back.groove,
      say.grooveThrough({ panel: tooThin[0], groove: groove!.depth, thickness: tooThin[1].thickness }),
    );
  return {
    spec,
    shop,
    boards,
    clearX,
    clearZ,
    sideZ,
    diagonal,
    sideDepth: how === 'applied' ? clearDepth : depth,
    clearDepth,
    // A back whose groove cannot be cut is left out; what stands in front of it is still right.
    back: tooThin === undefined ? held : null,
    groove: tooThin === undefined ? groove : null,
  };
}

/** Whether both wings of a corner are longer than they are deep, by more than the side that ends the front there is thick. */
function hasFront(
  spec: CarcassSpec,
  boards: Box['boards'],
  { hand, across, out }: Diagonal,
  problems: Problems,
): boolean {
  const reach = spec.diagonal[hand]!;
  const wings = [
    { size: spec.width, front: across, side: boards[otherHand(hand)] },
    { size: reach, front: out, side: boards[hand] },
  ];
  const short = wings.filter(({ front, side }) => front <= side.thickness);
  for (const { size, side } of short)
    problems.add(
      size,
      say.noDiagonal({ size: size.value, depth: spec.depth.value, least: spec.depth.value + side.thickness }),
    );
  return short.length === 0;
}

/** A groove has its play behind the back, so that its front side keeps its place; a rebate is open there. */
function grooveFor(spec: CarcassSpec, back: Box['back'], clearDepth: Micrometres, play: Micrometres): Groove | null {
  if (back === null || back.how === 'applied') return null;
  const depth = spec.back.groove.value;
  const to = clearDepth + back.board.thickness;
  return back.how === 'rebated'
    ? { kind: 'rebate', from: clearDepth, to, depth }
    : { kind: 'groove', from: clearDepth, to: to + Math.min(play, spec.back.inset.value), depth };
}

function panelsWithGroove(boards: Box['boards'], spec: CarcassSpec): (readonly [string, Board])[] {
  const grooved = spec.back.how.value === 'grooved';
  const panels: (readonly [string, Board])[] = [
    ['left', boards.left],
    ['right', boards.right],
  ];
  if (grooved || spec.bottom.value === 'under') panels.push(['bottom', boards.bottom]);
  if (boards.top !== null && (grooved || spec.top.value === 'over')) panels.push(['top', boards.top]);
  return panels;
}
