import type { Bay, Carcass, Panel } from '../carcass/model.js';
import { extentsOf, type Extents } from '../carcass/pose.js';
import type { CarcassSpec } from '../carcass/spec.js';
import { half, type Micrometres } from '../length/units.js';
import type { Shop, WardrobeRail } from '../shop/model.js';
import type { OnFace, RailSocket, WardrobeRailAt } from './model.js';

/**
 * The wardrobe rails of a carcass, in the order of the job, from the left: each between the two uprights of its bay. Heights count
 * from the bottom end of the sides, depths from the front of the carcass. None where the shop has no wardrobe rails.
 */
export function placeWardrobeRails(spec: CarcassSpec, carcass: Carcass, shop: Shop): readonly WardrobeRailAt[] {
  const asked = spec.wardrobeRails?.value ?? [];
  if (asked.length === 0) return [];
  const panels = new Map(carcass.panels.map((panel) => [panel.key, panel]));
  const base = panels.get('left')!.pose.origin.z;
  return asked.flatMap(({ value: { at, bay, 'from-front': fromFront, rail: name } }, i): readonly WardrobeRailAt[] => {
    const rail = wardrobeRailNamed(shop, name?.value ?? shop.habits.wardrobeRail);
    if (rail === null) return [];
    const y = fromFront?.value ?? middleOf(carcass, spec.depth.value);
    const z = base + at.value;
    return carcass.bays.flatMap((one, number): readonly WardrobeRailAt[] => {
      if (bay !== undefined && bay.value !== number + 1) return [];
      const key = `wardrobe-rail-${i + 1}${carcass.bays.length > 1 ? `-bay-${number + 1}` : ''}`;
      return [
        {
          key,
          rail,
          at,
          fromFront,
          y,
          z,
          length: one.to - one.from - 2 * rail.play,
          sockets: socketsOf(one, panels, rail, { y, z }),
          body: bodyOf(one, rail, { y, z }),
        },
      ];
    });
  });
}

interface Line {
  readonly y: Micrometres;
  readonly z: Micrometres;
}

/** The rail of a name, the usual one where the shop has none of it; null where it has no rails. */
export function wardrobeRailNamed({ wardrobeRails, habits }: Shop, name: string): WardrobeRail | null {
  return wardrobeRails.get(name) ?? wardrobeRails.get(habits.wardrobeRail) ?? null;
}

/** Halfway between the front of the carcass and its back. */
function middleOf({ panels }: Carcass, depth: Micrometres): Micrometres {
  const back = panels.find(({ role }) => role === 'back');
  return half(back === undefined ? depth : Math.min(depth, extentsOf(back).y.from));
}

function socketsOf(
  { left, right }: Bay,
  panels: ReadonlyMap<string, Panel>,
  { spacing, lies }: WardrobeRail,
  { y, z }: Line,
): readonly RailSocket[] {
  const apart = lies === 'upright' ? { u: 0, v: spacing } : { u: spacing, v: 0 };
  return (
    [
      [left, '+x'],
      [right, '-x'],
    ] as const
  ).map(([key, inward]) => {
    const upright = panels.get(key)!;
    const middle = { u: y - upright.pose.origin.y, v: z - upright.pose.origin.z };
    const first = { u: middle.u - half(apart.u), v: middle.v - half(apart.v) };
    const holes: readonly OnFace[] = spacing === 0 ? [middle] : [first, { u: first.u + apart.u, v: first.v + apart.v }];
    const isOn = holes.every(({ u, v }) => u > 0 && u < upright.width && v > 0 && v < upright.length);
    return { upright, face: upright.pose.t === inward ? 'inside' : 'outside', holes, isOn };
  });
}

function bodyOf({ from, to }: Bay, { width, height, play }: WardrobeRail, { y, z }: Line): Extents {
  return {
    x: { from: from + play, to: to - play },
    y: { from: y - half(width), to: y - half(width) + width },
    z: { from: z - half(height), to: z - half(height) + height },
  };
}
