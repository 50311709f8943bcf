import {
  BoxGeometry,
  BufferGeometry,
  CylinderGeometry,
  EdgesGeometry,
  ExtrudeGeometry,
  Group,
  InstancedMesh,
  LineSegments,
  Matrix4,
  Mesh,
  Quaternion,
  Shape,
  TorusGeometry,
  Vector2,
  Vector3,
} from 'three';
import type { StandingBox } from '../../../shared-core/drawing/messages/box-view.js';
import type { BoxBore, BoxFitting, BoxPart } from '../../../shared-core/drawing/box-view/scene.js';
import type { Worktop } from '../../../shared-core/wall/line-up.js';
import type { Looks, Stress } from './looks.js';

type Extents = BoxPart['extents'];
type Point = BoxBore['from'];
type Axis = BoxBore['along'];

/** Millimetres are what the view is in, so that figures stay near one. */
const mm = (length: number): number => length / 1000;
const vector = ({ x, y, z }: Point): Vector3 => new Vector3(mm(x), mm(y), mm(z));
const AXES: Readonly<Record<Axis, Vector3>> = {
  '+x': new Vector3(1, 0, 0),
  '-x': new Vector3(-1, 0, 0),
  '+y': new Vector3(0, 1, 0),
  '-y': new Vector3(0, -1, 0),
  '+z': new Vector3(0, 0, 1),
  '-z': new Vector3(0, 0, -1),
};
const UP = new Vector3(0, 1, 0);
const CUBE = new BoxGeometry(1, 1, 1);
const CUBE_EDGES = new EdgesGeometry(CUBE);
const ROUND = new CylinderGeometry(0.5, 0.5, 1, 20);
const RING = new TorusGeometry(1, 0.1, 6, 28);

/** Something in the view that can be pointed at. */
export interface Thing {
  readonly carcass: string;
  readonly part: BoxPart;
  /** null where the panel itself is meant. */
  readonly bore: BoxBore | null;
}

/** One panel with all that is in it, of one carcass that stands somewhere. */
export class PartSolid {
  readonly group = new Group();
  readonly face: Mesh;
  readonly bores: readonly { readonly mesh: InstancedMesh; readonly bores: readonly BoxBore[] }[];
  readonly #edges: LineSegments;
  readonly #looks: Looks;
  readonly #ring: Mesh;
  #stress: Stress = 'plain';

  constructor(
    readonly carcass: string,
    /** Which of the equal ones, from 0. */
    readonly copy: number,
    readonly part: BoxPart,
    fittings: readonly BoxFitting[],
    looks: Looks,
  ) {
    this.#looks = looks;
    const body = part.outline === null ? null : prismOn(part.outline, part.extents.z);
    this.face = new Mesh(body ?? CUBE, looks.faces[part.belongs]);
    this.#edges = new LineSegments(body === null ? CUBE_EDGES : new EdgesGeometry(body), looks.edges);
    if (body === null) for (const one of [this.face, this.#edges]) fillRoom(one, part.extents);
    this.group.add(this.face, this.#edges);
    for (const groove of part.grooves) {
      const lines = new LineSegments(CUBE_EDGES, looks.fineEdges);
      fillRoom(lines, groove);
      this.group.add(lines);
    }
    this.bores = inkGroups(part.bores).map(([ink, bores]) => ({ mesh: cylinders(bores, looks.inks[ink]), bores }));
    for (const { mesh } of this.bores) this.group.add(mesh);
    for (const { solid, ink } of fittings) {
      if (solid.kind === 'cylinder') {
        const body = new Mesh(ROUND, looks.bodies[ink]);
        // A little thinner than the bore, or the two would fight for the same dots.
        layRound(solid.from, solid.along, solid.length, solid.diameter * 0.9).decompose(
          body.position,
          body.quaternion,
          body.scale,
        );
        this.group.add(body);
      } else {
        const room = new LineSegments(CUBE_EDGES, looks.room);
        fillRoom(room, solid.extents);
        this.group.add(room);
      }
    }
    for (const bore of part.bores)
      if (bore.severity !== null) this.group.add(ringAbout(bore, looks.rings[bore.severity]));
    this.#ring = new Mesh(RING, looks.rings.focus);
    this.#ring.visible = false;
    this.group.add(this.#ring);
  }

  get stressed(): Stress {
    return this.#stress;
  }

  stress(stress: Stress, bore: BoxBore | null): void {
    this.#stress = stress;
    const { faces, stressedFace, edges, stressedEdges } = this.#looks;
    this.face.material = stress === 'chosen' ? stressedFace : faces[this.part.belongs];
    this.#edges.material = stress === 'plain' ? edges : stressedEdges;
    this.#ring.visible = bore !== null;
    if (bore !== null) placeRing(this.#ring, bore, 1.5);
  }
}

/** The worktop, as its edges. */
export function worktop({ outline, z }: Worktop, looks: Looks): LineSegments {
  return new LineSegments(new EdgesGeometry(prismOn(outline, z)), looks.edges);
}

/** The line of the floor along a wall. */
export function floorLine(from: number, to: number, looks: Looks): LineSegments {
  const geometry = new BufferGeometry().setFromPoints([new Vector3(mm(from), 0, 0), new Vector3(mm(to), 0, 0)]);
  return new LineSegments(geometry, looks.fineEdges);
}

/** All panels of a carcass, as many times as it stands there. */
export function solidsOf({ at, scene }: StandingBox, looks: Looks): readonly PartSolid[] {
  return at.flatMap((_, copy) =>
    scene.parts.map(
      (part) =>
        new PartSolid(
          scene.carcass,
          copy,
          part,
          scene.fittings.filter(({ on }) => on === part.key),
          looks,
        ),
    ),
  );
}

/** An upright block on an outline. */
function prismOn(outline: NonNullable<BoxPart['outline']>, { from, to }: Extents['z']): BufferGeometry {
  const shape = new Shape(outline.map(({ x, y }) => new Vector2(mm(x), mm(y))));
  return new ExtrudeGeometry(shape, { depth: mm(to - from), bevelEnabled: false }).translate(0, 0, mm(from));
}

function fillRoom(one: Mesh | LineSegments, { x, y, z }: Extents): void {
  one.position.set(mm(x.from + x.to) / 2, mm(y.from + y.to) / 2, mm(z.from + z.to) / 2);
  one.scale.set(mm(x.to - x.from), mm(y.to - y.from), mm(z.to - z.from));
}

function inkGroups(bores: readonly BoxBore[]): readonly (readonly [BoxBore['ink'], readonly BoxBore[]])[] {
  const inks = [...new Set(bores.map(({ ink }) => ink))];
  return inks.map((ink) => [ink, bores.filter((bore) => bore.ink === ink)]);
}

function cylinders(bores: readonly BoxBore[], material: Looks['inks']['black']): InstancedMesh {
  const mesh = new InstancedMesh(ROUND, material, bores.length);
  bores.forEach(({ from, along, depth, diameter }, i) => mesh.setMatrixAt(i, layRound(from, along, depth, diameter)));
  mesh.computeBoundingSphere();
  return mesh;
}

/** Lays the cylinder of length and diameter one where it belongs: its own axis is y. */
function layRound(from: Point, along: Axis, length: number, diameter: number): Matrix4 {
  const axis = AXES[along];
  const middle = vector(from).addScaledVector(axis, mm(length) / 2);
  const turn = new Quaternion().setFromUnitVectors(UP, axis);
  return new Matrix4().compose(middle, turn, new Vector3(mm(diameter), mm(length), mm(diameter)));
}

function ringAbout(bore: BoxBore, material: Looks['rings']['error']): Mesh {
  const ring = new Mesh(RING, material);
  placeRing(ring, bore, 1.15);
  return ring;
}

function placeRing(ring: Mesh, { from, along, diameter }: BoxBore, wide: number): void {
  ring.position.copy(vector(from));
  ring.quaternion.setFromUnitVectors(new Vector3(0, 0, 1), AXES[along]);
  ring.scale.setScalar((mm(diameter) / 2) * wide + 1);
}
