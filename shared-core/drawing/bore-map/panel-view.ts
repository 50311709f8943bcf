import type { Axis, Panel, Pose } from '../../carcass/model.js';
import type { Surface } from '../../boring/model.js';
import type { Micrometres } from '../../length/units.js';
import { mm } from '../scene/scale.js';
import type { Box, Point } from '../scene/scene.js';
import { isUpright } from '../../carcass/roles.js';

type Vector = readonly [number, number, number];
const AXES: Readonly<Record<Axis, Vector>> = {
  '+x': [1, 0, 0],
  '-x': [-1, 0, 0],
  '+y': [0, 1, 0],
  '-y': [0, -1, 0],
  '+z': [0, 0, 1],
  '-z': [0, 0, -1],
};

/** u x v . t: +1 where the panel's solid frame is right-handed, -1 where it is left-handed. */
function handOf({ u, v, t }: Pose): 1 | -1 {
  const [a, b, c] = [AXES[u], AXES[v], AXES[t]];
  const along =
    (a[1] * b[2] - a[2] * b[1]) * c[0] + (a[2] * b[0] - a[0] * b[2]) * c[1] + (a[0] * b[1] - a[1] * b[0]) * c[2];
  return along > 0 ? 1 : -1;
}

/**
 * How one panel lies on the page: a true view of one of its faces, never a mirror image. It stands on its reference end, as
 * an upright panel does in the carcass, or lies with its front edge toward the reader. The end views are folded out about the edges that they
 * share with the face, `gap` millimetres off. Page coordinates in millimetres, y down; the face's top left corner is (0, 0).
 */
export class PanelView {
  /** True: v runs up (standing) or to the right; u to the right (standing) or up. */
  readonly #uForward: boolean;
  readonly #vForward: boolean;
  readonly width: number;
  readonly length: number;
  readonly thickness: number;
  readonly face: Box;

  constructor(
    readonly panel: Panel,
    readonly seen: 'inside' | 'outside',
    readonly gap: number,
    readonly standing = isUpright(panel),
  ) {
    this.width = mm(panel.width);
    this.length = mm(panel.length);
    this.thickness = mm(panel.thickness);
    // Right x up must point at the reader. Standing: up = v, right = +-u. Lying: up = u, right = +-v.
    const toReader = handOf(panel.pose) * (seen === 'inside' ? 1 : -1);
    this.#uForward = this.standing ? toReader > 0 : true;
    this.#vForward = this.standing ? true : toReader < 0;
    this.face = this.standing
      ? { x: 0, y: 0, width: this.width, height: this.length }
      : { x: 0, y: 0, width: this.length, height: this.width };
  }

  /** Page coordinate of u: x of a standing panel, y of a lying one. */
  alongU(u: number): number {
    return this.standing ? (this.#uForward ? u : this.width - u) : this.width - u;
  }

  /** Page coordinate of v: y of a standing panel, x of a lying one. */
  alongV(v: number): number {
    return this.standing ? this.length - v : this.#vForward ? v : this.length - v;
  }

  /** A point of the face; u and v in millimetres. */
  at(u: number, v: number): Point {
    return this.standing ? { x: this.alongU(u), y: this.alongV(v) } : { x: this.alongV(v), y: this.alongU(u) };
  }

  /** Page coordinate, along v, of what lies `across` millimetres from the outside face in the view of an end. */
  alongEnd(end: 'reference-end' | 'far-end', across: number): number {
    const below = this.seen === 'inside' ? this.thickness - across : across;
    return this.alongV(end === 'reference-end' ? -this.gap - below : this.length + this.gap + below);
  }

  /** A point of an end's view: u from the front edge, `across` from the outside face. */
  onEnd(end: 'reference-end' | 'far-end', u: number, across: number): Point {
    const along = this.alongEnd(end, across);
    return this.standing ? { x: this.alongU(u), y: along } : { x: along, y: this.alongU(u) };
  }

  endBox(end: 'reference-end' | 'far-end'): Box {
    const a = this.onEnd(end, 0, 0);
    const b = this.onEnd(end, this.width, this.thickness);
    return {
      x: Math.min(a.x, b.x),
      y: Math.min(a.y, b.y),
      width: Math.abs(a.x - b.x),
      height: Math.abs(a.y - b.y),
    };
  }

  /** Where a bore enters, on the page. */
  entry(bore: { readonly face: Surface; readonly u: Micrometres; readonly v: Micrometres }): Point {
    const { face } = bore;
    return face === 'inside' || face === 'outside'
      ? this.at(mm(bore.u), mm(bore.v))
      : this.onEnd(face, mm(bore.u), mm(bore.v));
  }

  /** Sign of the page direction, across the panel, that leads from the front edge outward, away from the panel. */
  get frontward(): 1 | -1 {
    return this.alongU(0) > this.alongU(this.width) ? 1 : -1;
  }

  /** Sign of the page direction, along the panel, that leads from the reference end outward. */
  get referenceward(): 1 | -1 {
    return this.alongV(0) > this.alongV(this.length) ? 1 : -1;
  }
}
