import { chosen } from '../carcass/choices.js';
import type { Carcass, Joint, Panel } from '../carcass/model.js';
import { frontOf } from '../carcass/panel.js';
import { toCarcass, toPanel } from '../carcass/pose.js';
import { roleOf } from '../carcass/roles.js';
import type { CarcassSpec } from '../carcass/spec.js';
import type { HoleEntry, PlaceInJoint, Surroundings } from '../fittings/fitting.js';
import { kindOf, type Fitting } from '../fittings/kinds.js';
import { half, type Micrometres } from '../length/units.js';
import type { Shop } from '../shop/model.js';
import { JointPlacesOf, type PlaceOnDepth } from './joint-places.js';
import type { Bore, BoreMap } from './model.js';
import { spareHoles } from './spare.js';
import { surroundingsIn } from './wish.js';

type Side = PlaceInJoint['side'];
type OnSurface = Pick<Bore, 'face' | 'u' | 'v'>;

/** What every bore of one side of one joint shares. */
interface Boring {
  readonly joint: Joint;
  readonly panel: Panel;
  readonly face: Panel;
  readonly end: Panel;
  /** Depth that the job chooses for this panel, instead of the fitting's. */
  readonly depth: Micrometres | null;
}

/**
 * The bores of all joints. The face panel's own choices (dowels, face-depth) rule the bores in its face, the end panel's
 * own (dowels, end-depth) those in its end; its end-dowels rule both, and what it says of one end rules that joint before all
 * else. Both come from one axis in the carcass frame.
 */
export function boreJoints(
  spec: CarcassSpec,
  carcass: Carcass,
  shop: Shop,
): Pick<BoreMap, 'bores' | 'unused' | 'crowded'> {
  const places = new JointPlacesOf(spec, carcass, shop);
  const around = surroundingsIn(shop);
  const bores = carcass.joints.flatMap((joint) => {
    const { face, end } = places.panelsOf(joint);
    return (['face', 'end'] as const).flatMap((side) => {
      const panel = side === 'face' ? face : end;
      const fitting = side === 'face' ? joint.faceFitting : joint.fitting;
      const depth = chosen(spec, panel.key, side === 'face' ? 'faceDepth' : 'endDepth')?.value ?? null;
      const here = places.in(joint, panel, fitting);
      const boring = { joint, panel, face, end, depth };
      return here.flatMap((place, index) =>
        boresAt(fitting, place, { side, index, count: here.length }, boring, around),
      );
    });
  });
  const full = (joint: Joint): readonly Micrometres[] => places.full(joint);
  const spare = shop.habits.spareHoles ? spareHoles(carcass.line, carcass, bores, full) : [];
  return { bores: [...bores, ...spare], unused: places.unused(), crowded: places.crowded };
}

/**
 * The axis of a joint: half the thickness in from the outside face of the end panel, for whichever panel is bored.
 * In the end panel's frame it runs along v through (u, half the thickness); the face panel sees the same line.
 */
function onSurface(side: Side, y: Micrometres, { joint, face, end }: Boring): OnSurface {
  const u = y - frontOf(end);
  const t = half(end.thickness);
  if (side === 'end') return { face: joint.end, u, v: t };
  const contact = toCarcass(end.pose, { u, v: joint.end === 'reference-end' ? 0 : end.length, t });
  const seen = toPanel(face.pose, contact);
  return { face: joint.face, u: seen.u, v: seen.v };
}

/** The bores of one panel at one place of a joint, by what its fitting asks for. */
function boresAt(
  fitting: Fitting,
  { y, place }: PlaceOnDepth,
  at: Omit<PlaceInJoint, 'faceThickness' | 'endThickness' | 'depth'>,
  boring: Boring,
  around: Surroundings,
): readonly Bore[] {
  const { joint, panel, face, end, depth } = boring;
  const id = `${panel.key}:${joint.id}:${at.index + 1}`;
  const inJoint = { ...at, faceThickness: face.thickness, endThickness: end.thickness, depth };
  return kindOf(fitting)
    .joint.holes(fitting, inJoint, around)
    .map(({ purpose, fitting: name, diameter, depth: deep, through, enters, beside }) => ({
      id: beside === null ? id : `${id}:${beside.tag}`,
      panel: panel.key,
      ...entered(enters, onSurface(at.side, y, boring), boring),
      purpose,
      diameter,
      depth: deep,
      through,
      group: joint.id,
      fitting: name,
      ...(beside?.meetsMain === true && { meets: id }),
      place,
    }));
}

/** Where a bore stands that is on the axis of the joint, or beside it. */
function entered(enters: HoleEntry, contact: OnSurface, { joint, end }: Boring): OnSurface {
  switch (enters.at) {
    case 'contact':
      return contact;
    case 'behind':
      return { ...contact, face: joint.face === 'inside' ? 'outside' : 'inside' };
    case 'out-of-sight': {
      const v = joint.end === 'reference-end' ? enters.fromEnd : end.length - enters.fromEnd;
      return { face: roleOf(end).hiddenFace, u: contact.u, v };
    }
  }
}
