import type { Located } from '../../document/place.js';
import { keyInDrawer, type DrawerPart } from '../../job/panel-key.js';
import { half, type Micrometres } from '../../length/units.js';
import type { Board } from '../../shop/model.js';
import { boardFor, boardNamed, chosen } from '../choices.js';
import { extent, type Interval } from '../interval.js';
import type { Groove, Pose } from '../model.js';
import type { Outline } from '../panel.js';
import type { Layout } from '../layout.js';
import type { PlacedDrawer } from './place.js';

/** What the pieces of one drawer's box are set out from, in the carcass frame. */
interface BoxPlan {
  readonly drawer: PlacedDrawer;
  readonly boards: Readonly<Record<'left' | 'right' | 'box-front' | 'back' | 'bottom', Board>>;
  /** Between the sides. */
  readonly inX: Interval;
  /** Of sides, front and back: over an applied bottom. */
  readonly z: Interval;
  readonly groove: Groove | null;
  readonly play: Micrometres;
  readonly band: Located<string>;
}

function planOf({ box }: Layout, drawer: PlacedDrawer): BoxPlan {
  const { spec, shop } = box;
  const { habits } = shop;
  const of = (part: DrawerPart): Board => boardFor(spec, shop, keyInDrawer(drawer.key, part), spec.drawers.board);
  const bottomKey = keyInDrawer(drawer.key, 'bottom');
  const bottom = boardNamed(shop, (chosen(spec, bottomKey, 'board') ?? spec.drawers.bottomBoard).value);
  const boards = { left: of('left'), right: of('right'), 'box-front': of('box-front'), back: of('back'), bottom };
  const isGrooved = spec.drawers.bottom.value === 'grooved';
  const z = isGrooved ? drawer.z : { from: drawer.z.from + bottom.thickness, to: drawer.z.to };
  const thinnest = Math.min(...(['left', 'right', 'box-front', 'back'] as const).map((part) => boards[part].thickness));
  // Counted from the upper edge, the play is over the bottom, which lies on the lower side of its groove.
  const to = extent(z) - habits.drawerGroove;
  const groove: Groove = {
    kind: 'groove',
    from: to - bottom.thickness - habits.groovePlay,
    to,
    depth: Math.min(habits.grooveDepth, half(thinnest)),
  };
  return {
    drawer,
    boards,
    inX: { from: drawer.x.from + boards.left.thickness, to: drawer.x.to - boards.right.thickness },
    z,
    groove: isGrooved && groove.from > 0 ? groove : null,
    play: habits.backPlay,
    band: spec.drawers.band,
  };
}

function piece(plan: BoxPlan, part: DrawerPart, board: Board, length: Micrometres, pose: Pose): Outline {
  return {
    key: keyInDrawer(plan.drawer.key, part),
    board,
    length,
    width: extent(plan.z),
    seen: ['front'],
    band: plan.band,
    grooves: plan.groove === null ? [] : [plan.groove],
    cause: plan.drawer.cause,
    pose,
  };
}

/** The sides, as long as the slide, their outside faces to the slides, u from the upper edge down, reference end in front. */
export function sidesOf(layout: Layout): readonly Outline[] {
  return layout.drawers.flatMap((drawer) => {
    const plan = planOf(layout, drawer);
    const { x, y } = drawer;
    const side = (part: 'left' | 'right'): Outline =>
      piece(plan, part, plan.boards[part], extent(y), {
        origin: { x: part === 'left' ? x.from : x.to, y: y.from, z: plan.z.to },
        u: '-z',
        v: '+y',
        t: part === 'left' ? '+x' : '-x',
      });
    return [side('left'), side('right')];
  });
}

/** The front of the box, or its back, between the sides, the outside face away from the inside of the box. */
export function crossPiecesOf(layout: Layout, part: 'box-front' | 'back'): readonly Outline[] {
  return layout.drawers.map((drawer) => {
    const plan = planOf(layout, drawer);
    const isFront = part === 'box-front';
    return piece(plan, part, plan.boards[part], extent(plan.inX), {
      origin: { x: plan.inX.from, y: isFront ? drawer.y.from : drawer.y.to, z: plan.z.to },
      u: '-z',
      v: '+x',
      t: isFront ? '+y' : '-y',
    });
  });
}

/** The bottom, its underside out, u from the front back, reference end left. */
export function bottomsOf(layout: Layout): readonly Outline[] {
  return layout.drawers.map((drawer) => {
    const plan = planOf(layout, drawer);
    const { boards, groove, play } = plan;
    const into = groove === null ? 0 : groove.depth;
    const inY = {
      from: drawer.y.from + boards['box-front'].thickness - into + half(play),
      to: drawer.y.to - boards.back.thickness + into - (play - half(play)),
    };
    const inX = { from: plan.inX.from - into + half(play), to: plan.inX.to + into - (play - half(play)) };
    const [x, y] = groove === null ? [drawer.x, drawer.y] : [inX, inY];
    return {
      key: keyInDrawer(drawer.key, 'bottom'),
      board: boards.bottom,
      length: extent(x),
      width: extent(y),
      seen: [],
      grooves: [],
      cause: drawer.cause,
      pose: {
        origin: { x: x.from, y: y.from, z: groove === null ? drawer.z.from : plan.z.to - groove.to },
        u: '+y',
        v: '+x',
        t: '+z',
      },
    };
  });
}
