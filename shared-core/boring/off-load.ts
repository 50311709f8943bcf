import type { Carcass, Joint, Panel } from '../carcass/model.js';
import { frontOf, sharedDepth } from '../carcass/panel.js';
import type { CarcassSpec } from '../carcass/spec.js';
import type { SpindleLine } from '../carcass/spindle-line.js';
import { isInDrawer } from '../carcass/roles.js';
import { kindOf } from '../fittings/kinds.js';
import { half, type Micrometres } from '../length/units.js';
import type { Shop } from '../shop/model.js';
import { askedFor } from './joint-places.js';
import { choosePlaces } from './pattern.js';
import { surroundingsIn, wishIn } from './wish.js';

/**
 * Joints that the shop's shared load does not serve: it would hold them badly, or bore wood behind their last place. Those with
 * places that the job lists are left out; none where the shop shares no load.
 */
export function jointsOffLoad(
  spec: CarcassSpec,
  { panels, joints, line }: Pick<Carcass, 'panels' | 'joints' | 'line'>,
  shop: Shop,
): readonly Joint[] {
  if (line.shared === null || spec.dowels !== null) return [];
  const byKey = new Map(panels.map((panel) => [panel.key, panel]));
  return joints.filter((joint) => {
    const [face, end] = [byKey.get(joint.facePanel)!, byKey.get(joint.endPanel)!];
    const isListed = [face, end].some((panel) => askedFor(spec, panel, end, joint) !== null);
    const overlap = sharedDepth(face, end);
    if (isListed || isInDrawer(end) || overlap === null) return false;
    const { places, isShared } = choosePlaces(line, wishIn(shop, overlap, joint.fitting, joint.stagger));
    return places.length > 0 && !(isShared && isClear(line, joint, end, places.at(-1)!, shop));
  });
}

/** Whether no bit of the load stands over the wood of the end panel behind the last place. */
function isClear(
  { shared, first, pitch }: SpindleLine,
  { fitting, stagger }: Joint,
  end: Panel,
  last: Micrometres,
  shop: Shop,
): boolean {
  const anywhere = { side: 'end', index: 0, count: 2, faceThickness: 0, endThickness: 0, depth: null } as const;
  const [hole] = kindOf(fitting).joint.holes(fitting, anywhere, surroundingsIn(shop));
  const wood = frontOf(end) + end.width + half(hole?.diameter ?? 0);
  const datum = frontOf(end) % pitch === 0 ? frontOf(end) : 0;
  const load = (stagger ? shared?.beside : shared?.load) ?? [];
  return load.map((k) => first + k * pitch + datum).every((place) => place <= last || place >= wood);
}
