import type { Carcass, Panel } from '../carcass/model.js';
import { spanning, toCarcass, type Extents } from '../carcass/pose.js';
import type { CarcassSpec } from '../carcass/spec.js';
import { half, type Micrometres } from '../length/units.js';
import { NO_BRACKET } from '../shop/habits.js';
import type { Bracket, Shop } from '../shop/model.js';
import { isAboveFloor } from '../job/above-floor.js';
import type { OnFace, SideBracket } from './model.js';
import { isOnFace } from './on-face.js';

/** The brackets that a carcass above the floor hangs by, the left one first; none for one that stands. */
export function hangOnBrackets(spec: CarcassSpec, { panels }: Carcass, shop: Shop): readonly SideBracket[] {
  if (!isAboveFloor(spec)) return [];
  const { brackets: name } = spec;
  const bracket = bracketNamed(shop, name.value);
  if (bracket === null) return [];
  const sides = panels.filter(({ role }) => role === 'left-side' || role === 'right-side');
  return sides.map((side) => {
    const holes = bracket.holes.map(({ fromTop, fromBack }) => ({
      u: side.width - fromBack,
      v: side.length - fromTop,
    }));
    return {
      id: `${side.key}:bracket`,
      side,
      bracket,
      place: name.written ? name.place : side.place,
      holes,
      isOn: holes.every((hole) => isOnFace(side, hole, half(bracket.diameter))),
      body: bodyOf(side, bracket, holes),
    };
  });
}

/** The bracket of a name, the usual one where the shop has none of it; null for none. */
export function bracketNamed({ brackets, habits }: Shop, name: string): Bracket | null {
  return brackets.get(name) ?? (name === NO_BRACKET ? null : (brackets.get(habits.bracket) ?? null));
}

/** The room that it takes beside the side, in the carcass frame. */
function bodyOf(side: Panel, { height, reach, width }: Bracket, holes: readonly OnFace[]): Extents {
  const middle = (axis: keyof OnFace): Micrometres => {
    const all = holes.map((hole) => hole[axis]);
    return half(Math.min(...all) + Math.max(...all));
  };
  const [u, v] = [middle('u'), middle('v')];
  const a = toCarcass(side.pose, { u: u - half(reach), v: v - half(height), t: side.thickness });
  const b = toCarcass(side.pose, { u: u + half(reach), v: v + half(height), t: side.thickness + width });
  return spanning(a, b);
}
