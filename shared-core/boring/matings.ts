import { isFace } from './surface.js';
import type { Carcass, Joint, Panel, Point3 } from '../carcass/model.js';
import { alongAxis } from '../carcass/pose.js';
import type { Micrometres } from '../length/units.js';
import { boreAxis, mouths } from './axis.js';
import type { BorePurpose } from '../fittings/names.js';
import { purposeOf, reaches } from '../fittings/purposes.js';
import type { Bore, BoreMap } from './model.js';

/** What is wrong with two bores that do stand on one axis. */
export type MateFault =
  /** A bore of one kind against one of another. */
  | { readonly kind: 'purpose'; readonly face: BorePurpose; readonly end: BorePurpose }
  /** Two sizes of one kind of fitting. */
  | { readonly kind: 'fitting'; readonly face: string | null; readonly end: string | null }
  /** Two bores that need only be equally wide are not. */
  | { readonly kind: 'diameter'; readonly face: Micrometres; readonly end: Micrometres };

/** A bore in the face and one in the end that open into each other. */
export interface Mate {
  readonly face: Bore;
  readonly end: Bore;
  /** What the two hold together: for a dowel to be compared with its length and the glue gap. */
  readonly depthSum: Micrometres;
  readonly faults: readonly MateFault[];
}

/** A bore that opens against solid wood. */
export interface Unmatched {
  readonly bore: Bore;
  /** The nearest bore of the other panel that also found no mate, and how far it stands from this one; null: there is none. */
  readonly nearest: { readonly bore: Bore; readonly offset: Point3 } | null;
}

export interface Mating {
  readonly joint: Joint;
  readonly mates: readonly Mate[];
  readonly unmatchedInFace: readonly Unmatched[];
  readonly unmatchedInEnd: readonly Unmatched[];
}

/** A bore with where it opens in the carcass. */
interface Opening {
  readonly bore: Bore;
  readonly at: Point3;
}

/**
 * Which bores meet, decided by nothing but where their cylinders stand in the carcass: a bore in an end and one in a face
 * of another panel are mates where they open at the same point on the same axis, to the micrometre. By joint, in the order
 * of the carcass's joints.
 */
export function matings(carcass: Carcass, boreMap: BoreMap): readonly Mating[] {
  const panels = new Map(carcass.panels.map((panel) => [panel.key, panel]));
  const reaching = boreMap.bores.filter(reaches);
  const inFaces = new Map<string, Opening[]>();
  const ends: Opening[] = [];
  for (const bore of reaching) {
    const panel = panels.get(bore.panel)!;
    for (const at of mouths(panel, bore)) {
      if (isInEnd(bore)) ends.push({ bore, at });
      else push(inFaces, lineKey(panel, bore, at), { bore, at });
    }
  }

  const matesByJoint = new Map<string, Mate[]>();
  const matched = new Set<Bore>();
  for (const { bore: end, at } of ends) {
    const here = inFaces.get(lineKey(panels.get(end.panel)!, end, at)) ?? [];
    const face = here.find(({ bore }) => bore.panel !== end.panel && !matched.has(bore))?.bore;
    if (face === undefined) continue;
    matched.add(face).add(end);
    push(matesByJoint, `${end.panel}/${face.panel}`, mate(face, end));
  }

  const left = new Map<string, Bore[]>();
  for (const bore of reaching) if (!matched.has(bore)) push(left, `${bore.group} ${bore.panel}`, bore);
  return carcass.joints.map((joint) => {
    const inFace = left.get(`${joint.id} ${joint.facePanel}`) ?? [];
    const inEnd = left.get(`${joint.id} ${joint.endPanel}`) ?? [];
    const contact = (bore: Bore): Point3 => contactPoint(panels.get(bore.panel)!, bore);
    return {
      joint,
      mates: matesByJoint.get(joint.id) ?? [],
      unmatchedInFace: inFace.map((bore) => unmatched(bore, inEnd, contact)),
      unmatchedInEnd: inEnd.map((bore) => unmatched(bore, inFace, contact)),
    };
  });
}

function isInEnd({ face }: Bore): boolean {
  return !isFace(face);
}

/** The same for two bores exactly where they open at one point along one axis. */
function lineKey(panel: Panel, bore: Bore, { x, y, z }: Point3): string {
  return `${alongAxis(boreAxis(panel, bore).direction)} ${x} ${y} ${z}`;
}

/** Where a bore opens toward its mate: a clearance hole where it comes out. */
function contactPoint(panel: Panel, bore: Bore): Point3 {
  return mouths(panel, bore).at(-1)!;
}

function mate(face: Bore, end: Bore): Mate {
  return { face, end, depthSum: face.depth + end.depth, faults: faultsOf(face, end) };
}

function faultsOf(face: Bore, end: Bore): readonly MateFault[] {
  const wanted = purposeOf(face).mate;
  if (wanted?.purpose !== end.purpose) return [{ kind: 'purpose', face: face.purpose, end: end.purpose }];
  if (wanted.alike === 'fitting')
    return face.fitting === end.fitting ? [] : [{ kind: 'fitting', face: face.fitting, end: end.fitting }];
  return face.diameter === end.diameter ? [] : [{ kind: 'diameter', face: face.diameter, end: end.diameter }];
}

function unmatched(bore: Bore, others: readonly Bore[], contact: (bore: Bore) => Point3): Unmatched {
  const here = contact(bore);
  let nearest: { bore: Bore; offset: Point3; squared: number } | null = null;
  for (const other of others) {
    const there = contact(other);
    const offset = { x: there.x - here.x, y: there.y - here.y, z: there.z - here.z };
    const squared = offset.x ** 2 + offset.y ** 2 + offset.z ** 2;
    if (nearest === null || squared < nearest.squared) nearest = { bore: other, offset, squared };
  }
  return { bore, nearest: nearest && { bore: nearest.bore, offset: nearest.offset } };
}

function push<K, V>(map: Map<K, V[]>, key: K, value: V): void {
  const list = map.get(key);
  if (list === undefined) map.set(key, [value]);
  else list.push(value);
}
