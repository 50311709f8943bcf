import type { Panel } from '../carcass/model.js';
import { clearDepth } from '../carcass/panel.js';
import { toCarcass, toPanel } from '../carcass/pose.js';
import type { RunningDrawer } from '../hung/model.js';
import { half, type Micrometres } from '../length/units.js';
import type { Shop } from '../shop/model.js';
import type { Bore } from './model.js';

/**
 * The screws that hold drawer fronts to their boxes: through the front of the box from inside, into the drawer front; each pair
 * of bores from one axis.
 */
export function boreFrontScrews(running: readonly RunningDrawer[], shop: Shop): readonly Bore[] {
  return running.flatMap((one) => screwsOf(one, shop));
}

function screwsOf({ drawer, front, boxFront }: RunningDrawer, { habits }: Shop): readonly Bore[] {
  const { clearance, pilot, depth } = habits.frontScrews;
  const shared = { group: drawer.key, fitting: null, place: drawer.place } as const;
  return placesOn(boxFront, habits).flatMap(({ u, v }, i): readonly Bore[] => {
    const seen = toPanel(front.pose, toCarcass(boxFront.pose, { u, v, t: 0 }));
    return [
      {
        ...shared,
        id: `${boxFront.key}:screw-${i + 1}`,
        panel: boxFront.key,
        face: 'inside',
        u,
        v,
        diameter: clearance,
        depth: boxFront.thickness,
        through: true,
        purpose: 'front-clearance',
      },
      {
        ...shared,
        id: `${front.key}:screw-${i + 1}`,
        panel: front.key,
        face: 'inside',
        u: seen.u,
        v: seen.v,
        diameter: pilot,
        depth,
        through: false,
        purpose: 'front-pilot',
      },
    ];
  });
}

/** Two at each end, whole pitches apart, or one where the box is low; one in the middle alone where it is narrow. */
function placesOn(
  boxFront: Panel,
  { frontScrews: { fromEnd, fromEdge, clearance }, pitch, leastWall }: Shop['habits'],
): readonly { readonly u: Micrometres; readonly v: Micrometres }[] {
  const lowest = clearDepth(boxFront) - leastWall - half(clearance);
  const { length } = boxFront;
  const along = length < 2 * fromEnd + pitch ? [half(length)] : [fromEnd, length - fromEnd];
  const steps = Math.floor((lowest - fromEdge) / pitch);
  const down = steps >= 1 ? [fromEdge, fromEdge + steps * pitch] : [steps >= 0 ? fromEdge : half(lowest)];
  return down.flatMap((u) => along.map((v) => ({ u, v })));
}
