import { gapBetween } from '../carcass/interval.js';
import type { Carcass, Drawer, Panel } from '../carcass/model.js';
import { extentsOf, type Extents } from '../carcass/pose.js';
import { keyInDrawer } from '../job/panel-key.js';
import { half } from '../length/units.js';
import type { Hand } from '../shop/model.js';
import type { OnFace, RunningDrawer, SlideAt } from './model.js';

/**
 * The slides of the drawers: where their screws stand on the faces of the uprights, and on the sides of the drawers. All come
 * from the one line of the drawer, in the carcass frame.
 */
export function runDrawers(carcass: Carcass): readonly RunningDrawer[] {
  const panels = new Map(carcass.panels.map((panel) => [panel.key, panel]));
  return carcass.drawers.map((drawer) => {
    const part = (name: Parameters<typeof keyInDrawer>[1]): Panel => panels.get(keyInDrawer(drawer.key, name))!;
    const sides = (['left', 'right'] as const).map((hand) =>
      slideAt(drawer, hand, panels.get(drawer[hand])!, part(hand)),
    );
    return { drawer, front: part('front'), boxFront: part('box-front'), slides: sides };
  });
}

function slideAt(drawer: Drawer, hand: Hand, upright: Panel, side: Panel): SlideAt {
  const { slide, length, line, behind } = drawer;
  const inward = hand === 'left' ? '+x' : '-x';
  const onUpright = (at: number): OnFace => ({
    u: at + behind - upright.pose.origin.y,
    v: line - upright.pose.origin.z,
  });
  const onSide = (at: number): OnFace => ({ u: side.pose.origin.z - (boxFloor(drawer) + slide.boxOffset), v: at });
  return {
    hand,
    upright,
    face: upright.pose.t === inward ? 'inside' : 'outside',
    holes: length.holes.map(onUpright),
    side,
    boxHoles: length.boxHoles.map(onSide),
    body: bodyOf(drawer, hand, upright, side),
  };
}

/** The lower edge of the drawer’s box. */
const boxFloor = ({ line, slide }: Drawer): number => line - slide.heightOffset;

/** The room between upright and drawer side that a slide takes, in the carcass frame. */
function bodyOf({ slide, length, line }: Drawer, hand: Hand, upright: Panel, side: Panel): Extents {
  const [out, own] = [extentsOf(upright), extentsOf(side)];
  const from = hand === 'left' ? out.x.to : own.x.to;
  return {
    x: { from, to: from + gapBetween(out.x, own.x) },
    y: { from: own.y.from, to: own.y.from + length.length },
    z: { from: line - half(slide.bodyHeight), to: line - half(slide.bodyHeight) + slide.bodyHeight },
  };
}
