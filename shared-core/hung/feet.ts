import type { Carcass, Panel } from '../carcass/model.js';
import type { Extents } from '../carcass/pose.js';
import type { CarcassSpec } from '../carcass/spec.js';
import { half, type Micrometres } from '../length/units.js';
import { NO_FOOT } from '../shop/habits.js';
import type { Foot, Shop } from '../shop/model.js';
import type { OnFace, StandingFoot } from './model.js';
import { isOnFace } from './on-face.js';

/** The feet under the bottom of a carcass on a plinth: those of the front row from the left, then those of the rear row. */
export function standOnFeet(spec: CarcassSpec, { panels }: Carcass, shop: Shop): readonly StandingFoot[] {
  if (spec.plinth.value <= 0) return [];
  const foot = footNamed(shop, spec.feet.value);
  const bottom = panels.find(({ role }) => role === 'bottom');
  if (foot === null || bottom === undefined) return [];
  const plinth = panels.find(({ role }) => role === 'plinth') ?? null;
  const place = spec.feet.written ? spec.feet.place : bottom.place;
  const across = spread(foot.fromSide, spec.width.value - foot.fromSide, foot.apart);
  const rows = [foot.fromFront, spec.depth.value - foot.fromBack];
  return rows.flatMap((y, row) =>
    across.map((x, i): StandingFoot => {
      const key = `foot-${row * across.length + i + 1}`;
      const centre = { u: y - bottom.pose.origin.y, v: x - bottom.pose.origin.x };
      const holes = squareAbout(centre, foot.spacing);
      return {
        key,
        foot,
        place,
        bottom,
        holes,
        isOn: holes.every((hole) => isOnFace(bottom, hole, half(foot.diameter))),
        clip:
          row === 0 && foot.clip !== null && plinth !== null ? { plinth, holes: onPlinth(plinth, foot.clip, x) } : null,
        body: bodyOf(foot, spec.plinth.value, { x, y }),
      };
    }),
  );
}

/** The foot of a name, the usual one where the shop has none of it; null for none. */
export function footNamed({ feet, habits }: Shop, name: string): Foot | null {
  return feet.get(name) ?? (name === NO_FOOT ? null : (feet.get(habits.foot) ?? null));
}

/** The fewest places from one to the other, both counted in, that are nowhere further apart; rounded to whole micrometres. */
function spread(from: Micrometres, to: Micrometres, apart: Micrometres): readonly Micrometres[] {
  const gaps = Math.max(1, Math.ceil((to - from) / apart));
  return Array.from({ length: gaps + 1 }, (_, i) => from + Math.round(((to - from) * i) / gaps));
}

function squareAbout({ u, v }: OnFace, spacing: Micrometres): readonly OnFace[] {
  if (spacing === 0) return [{ u, v }];
  const [du, dv] = [u - half(spacing), v - half(spacing)];
  return [0, spacing].flatMap((a) => [0, spacing].map((b) => ({ u: du + a, v: dv + b })));
}

/** On the inside face of the plinth, whose u runs down from its upper edge. */
function onPlinth(plinth: Panel, clip: NonNullable<Foot['clip']>, x: Micrometres): readonly OnFace[] {
  const [u, v] = [clip.fromTop, x - plinth.pose.origin.x];
  return clip.spacing === 0 ? [{ u, v }] : [0, clip.spacing].map((by) => ({ u, v: v - half(clip.spacing) + by }));
}

function bodyOf({ base }: Foot, height: Micrometres, { x, y }: { readonly x: number; readonly y: number }): Extents {
  const about = (at: Micrometres) => ({ from: at - half(base), to: at - half(base) + base });
  return { x: about(x), y: about(y), z: { from: -height, to: 0 } };
}
