import { chosen } from '../carcass/choices.js';
import type { Interval } from '../carcass/interval.js';
import type { Carcass, Joint, Panel } from '../carcass/model.js';
import { frontOf, sharedDepth } from '../carcass/panel.js';
import { toCarcass, toPanel } from '../carcass/pose.js';
import { isInDrawer, roleOf } from '../carcass/roles.js';
import type { Located, Place } from '../document/place.js';
import type { CarcassSpec } from '../carcass/spec.js';
import type { HoleEntry, PlaceInJoint, Surroundings } from '../fittings/fitting.js';
import { kindOf, type Fitting } from '../fittings/kinds.js';
import { half, type Micrometres } from '../length/units.js';
import type { Shop } from '../shop/model.js';
import type { Bore, UnusedPlace } from './model.js';
import { patternPlaces } from './pattern.js';
import { spareHoles } from './spare.js';
import { surroundingsIn, wishIn } from './wish.js';

type Side = PlaceInJoint['side'];
type OnSurface = Pick<Bore, 'face' | 'u' | 'v'>;

/** One place of a joint in one of its panels: y from the carcass front or the upper edge of a drawer, and the text that put it there. */
interface PlaceOnDepth {
  readonly y: Micrometres;
  readonly place: Place;
}

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
 * own (dowels, end-depth) those in its end; its end-dowels rule both. Both come from one axis in the carcass frame.
 */
export function boreJoints(
  spec: CarcassSpec,
  carcass: Carcass,
  shop: Shop,
): { bores: readonly Bore[]; unused: readonly UnusedPlace[] } {
  const panels = new Map(carcass.panels.map((panel) => [panel.key, panel]));
  const { line } = carcass;
  const around = surroundingsIn(shop);
  const lists = new Map<Located<Micrometres>, string | null>();
  const used = new Set<Located<Micrometres>>();
  for (const at of spec.dowels?.value ?? []) lists.set(at, null);

  const bores = carcass.joints.flatMap((joint) => {
    const face = panels.get(joint.facePanel)!;
    const end = panels.get(joint.endPanel)!;
    const overlap = sharedDepth(face, end);
    return (['face', 'end'] as const).flatMap((side) => {
      const panel = side === 'face' ? face : end;
      const fitting = side === 'face' ? joint.faceFitting : joint.fitting;
      const depth = chosen(spec, panel.key, side === 'face' ? 'faceDepth' : 'endDepth')?.value ?? null;
      const places = overlap === null ? [] : placesOf(panel, joint, overlap, fitting);
      const boring = { joint, panel, face, end, depth };
      return places.flatMap((place, index) =>
        boresAt(fitting, place, { side, index, count: places.length }, boring, around),
      );
    });
  });
  const spare = shop.habits.spareHoles ? spareHoles(line, carcass, bores, fullPlaces) : [];
  const unused = [...lists].filter(([at]) => !used.has(at)).map(([at, panel]) => ({ panel, at }));
  return { bores: [...bores, ...spare], unused };

  function placesOf(panel: Panel, joint: Joint, overlap: Interval, fitting: Fitting): readonly PlaceOnDepth[] {
    const own = listFor(spec, panel, panels.get(joint.endPanel)!);
    if (own !== null) return listed(own.list, own.of.key, frontOf(own.of), overlap);
    if (spec.dowels !== null && !isInDrawer(panel)) return listed(spec.dowels.value, null, overlap.from, overlap);
    // The shared load is for depths of carcasses; heights of drawers have nothing to do with them.
    const from = isInDrawer(panel) ? { ...line, shared: null } : line;
    return patternPlaces(from, wishIn(shop, overlap, fitting, joint.stagger)).map((y) => ({ y, place: joint.place }));
  }

  /** What a panel as deep as the face panel would get in its joint with it. */
  function fullPlaces(joint: Joint): readonly Micrometres[] {
    const face = panels.get(joint.facePanel)!;
    const listed = spec.dowels ?? chosen(spec, face.key, 'dowels');
    const overlap = sharedDepth(face, face);
    return listed || overlap === null ? [] : patternPlaces(line, wishIn(shop, overlap, joint.faceFitting, false));
  }

  /** A list counts from a front edge, in any order; it holds for every joint of the panel, and each takes what falls on it. */
  function listed(
    list: readonly Located<Micrometres>[],
    panel: string | null,
    front: Micrometres,
    overlap: Interval,
  ): PlaceOnDepth[] {
    const places: PlaceOnDepth[] = [];
    for (const at of list) {
      if (!lists.has(at)) lists.set(at, panel);
      const y = front + at.value;
      if (y <= overlap.from || y >= overlap.to) continue;
      used.add(at);
      places.push({ y, place: at.place });
    }
    return places.sort((a, b) => a.y - b.y);
  }
}

/** The list that a panel's choices give for its bores in a joint, and the panel from whose front edge it counts. */
function listFor(
  spec: CarcassSpec,
  panel: Panel,
  end: Panel,
): { readonly list: readonly Located<Micrometres>[]; readonly of: Panel } | null {
  const own = chosen(spec, panel.key, 'dowels');
  if (own !== undefined) return { list: own.value, of: panel };
  const ofEnd = chosen(spec, end.key, 'endDowels');
  return ofEnd === undefined ? null : { list: ofEnd.value, of: end };
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
