import type { StandingFoot } from '../hung/model.js';
import type { Bore } from './model.js';

/** The bores for feet in the underside of the bottom, and for the clips of the plinth on its inside face. */
export function boreFeet(feet: readonly StandingFoot[]): readonly Bore[] {
  return feet.flatMap((one) => [...inBottom(one), ...inPlinth(one)]);
}

function inBottom({ key, foot, bottom, holes, isOn, place }: StandingFoot): readonly Bore[] {
  if (!isOn) return [];
  return holes.map((at, i) => ({
    id: `${bottom.key}:${key}:${i + 1}`,
    panel: bottom.key,
    face: 'outside',
    ...at,
    diameter: foot.diameter,
    depth: foot.depth,
    through: false,
    purpose: 'foot',
    group: key,
    fitting: foot.name,
    place,
  }));
}

function inPlinth({ key, foot, clip, place }: StandingFoot): readonly Bore[] {
  if (clip === null || foot.clip === null) return [];
  const { diameter, depth } = foot.clip;
  return clip.holes.map((at, i) => ({
    id: `${clip.plinth.key}:${key}:${i + 1}`,
    panel: clip.plinth.key,
    face: 'inside',
    ...at,
    diameter,
    depth,
    through: false,
    purpose: 'plinth-clip',
    group: key,
    fitting: foot.name,
    place,
  }));
}
