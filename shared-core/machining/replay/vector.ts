/** A point or a direction, three coordinates in one frame. */
export type Vector = readonly [number, number, number];

/** A rotation of a solid by quarter turns: where its own three axes come to point. Always proper: a x b = c. */
export interface Rotation {
  readonly a: Vector;
  readonly b: Vector;
  readonly c: Vector;
}

export const dot = (p: Vector, q: Vector): number => p[0] * q[0] + p[1] * q[1] + p[2] * q[2];

export const cross = (p: Vector, q: Vector): Vector => [
  p[1] * q[2] - p[2] * q[1],
  p[2] * q[0] - p[0] * q[2],
  p[0] * q[1] - p[1] * q[0],
];

/** p + k q */
export const along = (p: Vector, k: number, q: Vector): Vector => [p[0] + k * q[0], p[1] + k * q[1], p[2] + k * q[2]];

/** Equal coordinates; meant for signed unit axes, whose coordinates are whole numbers. */
export const same = (p: Vector, q: Vector): boolean => p[0] === q[0] && p[1] === q[1] && p[2] === q[2];

/** Turns a vector of the solid. */
export const turn = (r: Rotation, p: Vector): Vector => along(along(along([0, 0, 0], p[0], r.a), p[1], r.b), p[2], r.c);

/** Turns a vector back into the solid: the transpose, since the axes are square to each other. */
export const turnBack = (r: Rotation, p: Vector): Vector => [dot(p, r.a), dot(p, r.b), dot(p, r.c)];

const AXES: readonly Vector[] = [
  [1, 0, 0],
  [-1, 0, 0],
  [0, 1, 0],
  [0, -1, 0],
  [0, 0, 1],
  [0, 0, -1],
];

/** All 24 ways in which a brick can be put down square. The third axis is a cross product, so no mirror image is among them. */
export const QUARTER_TURNS: readonly Rotation[] = AXES.flatMap((a) =>
  AXES.filter((b) => dot(a, b) === 0).map((b) => ({ a, b, c: cross(a, b) })),
);
