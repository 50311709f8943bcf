import type { FrontPull, OnFace } from '../hung/model.js';
import type { Bore } from './model.js';

/** The bores for the screws of pulls: in the fronts, and through the fronts of drawers’ boxes on the same axes. */
export function borePulls(pulls: readonly FrontPull[]): readonly Bore[] {
  return pulls.filter(({ isOn }) => isOn).flatMap((one) => [...inFront(one), ...inBox(one)]);
}

function inFront(one: FrontPull): readonly Bore[] {
  const { front, pull, holes } = one;
  const depth = pull.depth ?? front.thickness;
  return holes.map((at, i) => ({
    ...shared(one, front.key, at, i),
    face: pull.face,
    depth,
    through: pull.depth === null,
  }));
}

function inBox(one: FrontPull): readonly Bore[] {
  const { boxHoles } = one;
  if (boxHoles === null) return [];
  const { boxFront, holes } = boxHoles;
  return holes.map((at, i) => ({
    ...shared(one, boxFront.key, at, i),
    face: 'inside',
    depth: boxFront.thickness,
    through: true,
  }));
}

function shared({ id, pull, place }: FrontPull, panel: string, at: OnFace, i: number) {
  return {
    id: `${panel}:${id}:${i + 1}`,
    panel,
    ...at,
    diameter: pull.diameter,
    purpose: 'pull',
    group: id,
    fitting: pull.name,
    place,
  } as const;
}
