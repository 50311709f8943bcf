import { chosen } from '../carcass/choices.js';
import { mayHavePull, pullNamed, pullNames } from '../carcass/fronts/pull.js';
import type { Carcass, Panel } from '../carcass/model.js';
import { extentsOf, spanning, toCarcass, toPanel, type Extents } from '../carcass/pose.js';
import type { CarcassSpec } from '../carcass/spec.js';
import { half, type Micrometres } from '../length/units.js';
import type { Pull, Shop } from '../shop/model.js';
import type { FrontPull, OnFace, RunningDrawer } from './model.js';
import { isOnFace } from './on-face.js';

/** How a pull is to stand on its front: what its screws are apart along u and along v, and the next one to the origin. */
interface Stand {
  readonly apart: OnFace;
  readonly first: OnFace;
  readonly byEnd: boolean;
}

/** The pulls of the fronts of a carcass, in the order of its panels. One whose name the shop has not is the usual one. */
export function placePulls(
  spec: CarcassSpec,
  carcass: Carcass,
  shop: Shop,
  running: readonly RunningDrawer[],
): readonly FrontPull[] {
  const fronts = carcass.panels.filter(mayHavePull);
  if (fronts.length === 0) return [];
  const nameOf = pullNames(spec);
  return fronts.flatMap((front): readonly FrontPull[] => {
    const name = nameOf(front);
    const pull = name === null ? null : pullNamed(shop, name.value);
    if (name === null || pull === null) return [];
    const place = name.written ? name.place : front.place;
    const stands = front.role === 'door' ? [onDoor(spec, shop, front, pull)] : onLying(spec, shop, front, pull);
    const boxFront = running.find((one) => one.front.key === front.key)?.boxFront ?? null;
    return stands.map(({ apart, first, byEnd }, i) => {
      const last = { u: first.u + apart.u, v: first.v + apart.v };
      const holes = pull.spacing === 0 ? [first] : [first, last];
      return {
        id: `${front.key}:pull${stands.length > 1 ? `-${i + 1}` : ''}`,
        front,
        pull,
        place,
        byEnd,
        holes,
        isOn: holes.every((hole) => isOnFace(front, hole, half(pull.diameter))),
        boxHoles: boxFront === null ? null : { boxFront, holes: throughBox(front, boxFront, pull, holes) },
        body: bodyOf(front, pull, first, last),
      };
    });
  });
}

/** On a door: u from the hinge edge, v from the bottom. */
function onDoor(spec: CarcassSpec, shop: Shop, door: Panel, { spacing }: Pull): Stand {
  const { pulls } = spec;
  const { key, width, length } = door;
  const isUpright = (chosen(spec, key, 'pullLies') ?? pulls.lies).value === 'upright';
  const apart = isUpright ? { u: 0, v: spacing } : { u: spacing, v: 0 };
  const u = width - (chosen(spec, key, 'pullFromEdge') ?? pulls.fromEdge).value - apart.u;
  const end = (chosen(spec, key, 'pullEnd') ?? pulls.end)?.value ?? usualEnd(spec, shop, door);
  if (typeof end === 'number') return { apart, first: { u, v: end - half(apart.v) }, byEnd: false };
  if (end === 'middle') return { apart, first: { u, v: half(length - apart.v) }, byEnd: false };
  const from = (chosen(spec, key, 'pullFromEnd') ?? pulls.fromEnd).value;
  return { apart, first: { u, v: end === 'bottom' ? from : length - from - apart.v }, byEnd: true };
}

/** The end of a door that its pull is near, or how far over its bottom end a hand takes hold of it in its middle third. */
function usualEnd(spec: CarcassSpec, { habits }: Shop, door: Panel): 'top' | 'bottom' | Micrometres {
  if (spec.kind.value === 'wall') return 'bottom';
  const underBox = spec.plinth.value + spec.place.aboveFloor.value;
  const hand = habits.handHeight - underBox - extentsOf(door).z.from;
  const third = Math.floor(door.length / 3);
  return hand < third ? 'bottom' : hand > door.length - third ? 'top' : hand;
}

/** On a front that lies: u from the upper edge, v from the left end. Two of them each stand in the middle of their half. */
function onLying(spec: CarcassSpec, { habits }: Shop, front: Panel, { spacing }: Pull): readonly Stand[] {
  const { key, width, length } = front;
  const isUpright = chosen(spec, key, 'pullLies')?.value === 'upright';
  const apart = isUpright ? { u: spacing, v: 0 } : { u: 0, v: spacing };
  const from = chosen(spec, key, 'pullFromTop') ?? spec.pulls.fromTop;
  const u = from?.value ?? half(width - apart.u);
  const two = habits.twoPullsFrom !== null && length >= habits.twoPullsFrom && front.role === 'drawer-front';
  const middle = two ? half(half(length)) : half(length);
  const left = { apart, first: { u, v: middle - half(apart.v) }, byEnd: false };
  return two ? [left, { ...left, first: { u, v: length - left.first.v - apart.v } }] : [left];
}

/** Where the screws come through the front of the box, on its outside face; those that do not pass wholly inside it are left out. */
function throughBox(front: Panel, boxFront: Panel, pull: Pull, holes: readonly OnFace[]): readonly OnFace[] {
  if (!pull.throughBox || pull.depth !== null) return [];
  return holes
    .map(({ u, v }) => toPanel(boxFront.pose, toCarcass(front.pose, { u, v, t: 0 })))
    .map(({ u, v }) => ({ u, v }))
    .filter((hole) => isOnFace(boxFront, hole, half(pull.diameter)));
}

/** The room that it takes before the front, in the carcass frame. */
function bodyOf(front: Panel, pull: Pull, first: OnFace, last: OnFace): Extents {
  const beyond = overallLength(pull) - pull.spacing;
  const along = first.v === last.v && first.u !== last.u ? 'u' : 'v';
  const [du, dv] = along === 'u' ? [half(beyond), half(pull.width)] : [half(pull.width), half(beyond)];
  const a = toCarcass(front.pose, { u: first.u - du, v: first.v - dv, t: 0 });
  const b = toCarcass(front.pose, { u: last.u + du, v: last.v + dv, t: 0 });
  return { ...spanning(a, b), y: { from: a.y - pull.projection, to: a.y } };
}

/** Along the line of its screws. */
export const overallLength = ({ length, spacing, width }: Pull): Micrometres => length ?? spacing + width;
