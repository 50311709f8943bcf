import { chosen, fittingNamed } from '../carcass/choices.js';
import type { Interval } from '../carcass/interval.js';
import type { Carcass, Joint, Panel } from '../carcass/model.js';
import { sharedDepth } from '../carcass/panel.js';
import { toCarcass, toPanel } from '../carcass/pose.js';
import { spindleLine } from '../carcass/spindle-line.js';
import { roleOf } from '../carcass/roles.js';
import type { Located, Place } from '../document/place.js';
import type { CarcassSpec } from '../job/model.js';
import { half, type Micrometres } from '../length/units.js';
import type { CamFitting, ConnectorScrew, Dowel, Fitting, Shop } from '../shop/model.js';
import type { Bore, UnusedPlace } from './model.js';
import { patternPlaces } from './pattern.js';

/** By how much the pilot hole is deeper than the screw reaches (common practice, no source). */
const PILOT_CLEARANCE: Micrometres = 2000;

type Side = 'face' | 'end';

/** One place of a joint in one of its panels: y from the carcass front, and the text that put it there. */
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
 * own (dowels, end-depth) those in its end; both come from one axis in the carcass frame.
 */
export function boreJoints(
  spec: CarcassSpec,
  carcass: Carcass,
  shop: Shop,
): { bores: readonly Bore[]; unused: readonly UnusedPlace[] } {
  const panels = new Map(carcass.panels.map((panel) => [panel.key, panel]));
  const line = spindleLine(spec, shop);
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
      return boreSide(side, fitting, places, { joint, panel, face, end, depth });
    });
  });
  const unused = [...lists].filter(([at]) => !used.has(at)).map(([at, panel]) => ({ panel, at }));
  return { bores, unused };

  function placesOf(panel: Panel, joint: Joint, overlap: Interval, fitting: Fitting): readonly PlaceOnDepth[] {
    const own = chosen(spec, panel.key, 'dowels');
    if (own !== undefined) return listed(own.value, panel.key, panel.pose.origin.y, overlap);
    if (spec.dowels !== null) return listed(spec.dowels.value, null, overlap.from, overlap);
    const wish = {
      overlap,
      edge: edgeDistance(fitting, shop),
      spacing: shop.habits.dowelSpacing,
      stagger: joint.stagger,
    };
    return patternPlaces(line, wish).map((y) => ({ y, place: joint.place }));
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

  function boreSide(side: Side, fitting: Fitting, places: readonly PlaceOnDepth[], boring: Boring): readonly Bore[] {
    switch (fitting.kind) {
      case 'dowel':
        return places.map((place, index) => dowelBore(side, fitting, place, index, boring, shop));
      case 'screw':
        return places.map((place, index) => screwBore(side, fitting, place, index, boring));
      case 'cam':
        return places.flatMap((place, index) => {
          if (index === 0 || index === places.length - 1) return camBores(side, fitting, place, index, boring);
          const guide = guideOf(fitting, shop);
          return guide === null ? [] : [dowelBore(side, guide, place, index, boring, shop)];
        });
    }
  }
}

/**
 * What the centre of a bore keeps from the ends of a joint: one and a half diameters (common practice, no source), and for
 * the bore of a cam its rim and the least wall.
 */
function edgeDistance(fitting: Fitting, shop: Shop): Micrometres {
  const beside = (diameter: Micrometres): Micrometres => Math.ceil((3 * diameter) / 2);
  switch (fitting.kind) {
    case 'dowel':
      return beside(fitting.diameter);
    case 'screw':
      return beside(Math.max(fitting.clearance, fitting.pilot));
    case 'cam': {
      const guide = guideOf(fitting, shop);
      const rim = Math.ceil(fitting.camDiameter / 2);
      return Math.max(beside(Math.max(fitting.boltDiameter, guide?.diameter ?? 0)), rim + shop.habits.leastWall);
    }
  }
}

/** The dowel between two cams; null where there is none. */
function guideOf(cam: CamFitting, shop: Shop): Dowel | null {
  const guide = cam.guide === null ? null : fittingNamed(shop, cam.guide);
  return guide?.kind === 'dowel' ? guide : null;
}

/**
 * The axis of a joint: half the thickness in from the outside face of the end panel, for whichever panel is bored.
 * In the end panel's frame it runs along v through (u, half the thickness); the face panel sees the same line.
 */
function onSurface(side: Side, y: Micrometres, { joint, face, end }: Boring): Pick<Bore, 'face' | 'u' | 'v'> {
  const u = y - end.pose.origin.y;
  const t = half(end.thickness);
  if (side === 'end') return { face: joint.end, u, v: t };
  const contact = toCarcass(end.pose, { u, v: joint.end === 'reference-end' ? 0 : end.length, t });
  const seen = toPanel(face.pose, contact);
  return { face: joint.face, u: seen.u, v: seen.v };
}

function bore(
  side: Side,
  { y, place }: PlaceOnDepth,
  index: number,
  boring: Boring,
  fitting: Fitting,
  what: Pick<Bore, 'purpose' | 'diameter' | 'depth'>,
): Bore {
  const { joint, panel } = boring;
  return {
    id: `${panel.key}:${joint.id}:${index + 1}`,
    panel: panel.key,
    ...onSurface(side, y, boring),
    ...what,
    through: false,
    group: joint.id,
    fitting: fitting.name,
    place,
  };
}

function dowelBore(side: Side, dowel: Dowel, place: PlaceOnDepth, index: number, boring: Boring, shop: Shop): Bore {
  const usual = side === 'face' ? dowel.inFace : dowel.length + shop.habits.glueGap - dowel.inFace;
  return bore(side, place, index, boring, dowel, {
    purpose: 'dowel',
    diameter: dowel.diameter,
    depth: boring.depth ?? usual,
  });
}

/** The clearance hole goes through the face panel and is bored from the side that the screw enters. */
function screwBore(side: Side, screw: ConnectorScrew, place: PlaceOnDepth, index: number, boring: Boring): Bore {
  const { thickness } = boring.face;
  if (side === 'end') {
    const usual = Math.max(screw.length - thickness + PILOT_CLEARANCE, PILOT_CLEARANCE);
    return bore(side, place, index, boring, screw, {
      purpose: 'pilot',
      diameter: screw.pilot,
      depth: boring.depth ?? usual,
    });
  }
  const depth = Math.min(boring.depth ?? thickness, thickness);
  const hole = bore(side, place, index, boring, screw, { purpose: 'clearance', diameter: screw.clearance, depth });
  return { ...hole, face: boring.joint.face === 'inside' ? 'outside' : 'inside', through: depth === thickness };
}

/** Id of the bore for a cam, from that of its bolt's hole. */
export function housingId(bolt: string): string {
  return `${bolt}:cam`;
}

/** In the face the hole for the stud; in the end panel the bolt's hole, and the cam where that hole ends. */
function camBores(side: Side, cam: CamFitting, place: PlaceOnDepth, index: number, boring: Boring): readonly Bore[] {
  if (side === 'face') {
    const depth = boring.depth ?? cam.studDepth;
    return [bore(side, place, index, boring, cam, { purpose: 'cam-stud', diameter: cam.studDiameter, depth })];
  }
  const { joint, end } = boring;
  const depth = boring.depth ?? cam.distance;
  const bolt = bore(side, place, index, boring, cam, { purpose: 'cam-bolt', diameter: cam.boltDiameter, depth });
  const housing: Bore = {
    ...bolt,
    id: housingId(bolt.id),
    face: roleOf(end).hiddenFace,
    v: joint.end === 'reference-end' ? cam.distance : end.length - cam.distance,
    diameter: cam.camDiameter,
    depth: cam.camDepth,
    purpose: 'cam',
  };
  return [bolt, housing];
}
