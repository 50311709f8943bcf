import type { BorePurpose } from '../boring/model.js';
import type { Point } from './scene/scene.js';

/** What is drawn inside the rim of a bore: each purpose has a pattern of its own, so that none is told by colour alone. */
export type MarkPart =
  | { readonly kind: 'circle'; readonly r: number; readonly filled: boolean }
  | { readonly kind: 'path'; readonly points: readonly Point[]; readonly closed: boolean; readonly filled: boolean };

const circle = (r: number, filled: boolean): MarkPart => ({ kind: 'circle', r, filled });
const line = (...points: readonly [number, number][]): MarkPart => ({
  kind: 'path',
  points: points.map(([x, y]) => ({ x, y })),
  closed: false,
  filled: false,
});

/** A filled sector of the unit circle, from one angle to another in quarter turns clockwise on the page. */
function sector(from: number, to: number): MarkPart {
  const steps = Math.round((to - from) * 8);
  const rim = Array.from({ length: steps + 1 }, (_, step) => {
    const angle = ((from + step / 8) * Math.PI) / 2;
    return { x: round(Math.cos(angle)), y: round(Math.sin(angle)) };
  });
  return { kind: 'path', points: [{ x: 0, y: 0 }, ...rim], closed: true, filled: true };
}
const round = (value: number): number => Math.round(value * 1000) / 1000;

const DIAGONAL = round(Math.SQRT1_2);
/** On a unit circle. */
const MARKS: Readonly<Record<BorePurpose, readonly MarkPart[]>> = {
  dowel: [sector(0, 1), sector(2, 3)],
  clearance: [circle(0.55, false)],
  pilot: [line([-DIAGONAL, -DIAGONAL], [DIAGONAL, DIAGONAL]), line([-DIAGONAL, DIAGONAL], [DIAGONAL, -DIAGONAL])],
  cam: [sector(0, 2)],
  'cam-bolt': [line([-0.45, -0.89], [-0.45, 0.89]), line([0.45, -0.89], [0.45, 0.89])],
  'cam-stud': [circle(0.45, true)],
  row: [],
  cup: [circle(0.75, false), line([-1, 0], [1, 0]), line([0, -1], [0, 1])],
};

/** The pattern of a purpose on a bore of radius `r` about (0, 0). */
export function markOf(purpose: BorePurpose, r: number): readonly MarkPart[] {
  return MARKS[purpose].map((part) =>
    part.kind === 'circle'
      ? { ...part, r: part.r * r }
      : { ...part, points: part.points.map(({ x, y }) => ({ x: x * r, y: y * r })) },
  );
}
