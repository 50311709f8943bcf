import { gridOn } from '../carcass/grid.js';
import type { Carcass, Panel } from '../carcass/model.js';
import type { Diagonal } from '../carcass/model.js';
import { slantAt } from '../carcass/diagonal.js';
import { overlaps } from '../carcass/interval.js';
import { frontOf } from '../carcass/panel.js';
import { extentsOf, spanning, straightExtents, toCarcass, toPanel, type Extents } from '../carcass/pose.js';
import { isInDrawer, isOfBox } from '../carcass/roles.js';
import type { CarcassSpec } from '../carcass/spec.js';
import { placeAt, type GridLine } from '../length/grid.js';
import { half, type Micrometres } from '../length/units.js';
import { weightOf } from '../loads/weight.js';
import { NO_HINGE } from '../shop/habits.js';
import type { CupBorer, Hand, Hinge, Shop } from '../shop/model.js';
import type { HungDoor, HungHinge, OnFace, Reach, RunningDrawer } from './model.js';
import type { Screws } from './on-face.js';
import { reachFor } from './reach.js';

/** A hinge before its place in the height is known. */
interface Hanging {
  readonly carcass: Carcass;
  readonly running: readonly RunningDrawer[];
  readonly shop: Shop;
  readonly door: Panel;
  readonly upright: Panel;
  readonly face: HungDoor['face'];
  readonly hinge: Hinge;
  readonly reach: Reach;
  readonly grid: GridLine;
  /** How far back the closed door reaches into the carcass; 0 for an overlay door. */
  readonly behind: Micrometres;
}

/**
 * The doors of a carcass on their hinges. Hinges stand on the pitch grid of the upright, so that their plates find holes of a
 * row where there is one: the outer ones as near as can be to the usual distance from the ends of the door, those between
 * evenly spread, each moved on by whole pitches where something stands in its room.
 */
export function hangDoors(
  spec: CarcassSpec,
  carcass: Carcass,
  shop: Shop,
  running: readonly RunningDrawer[],
): readonly HungDoor[] {
  const hinge = carcass.doors.length === 0 ? null : hingeNamed(shop, spec.doors.hinge.value);
  if (hinge === null) return [];
  const panels = new Map(carcass.panels.map((panel) => [panel.key, panel]));
  const hung: HungDoor[] = [];
  for (const { key, hung: hand, upright: on } of carcass.doors) {
    const [door, upright] = [panels.get(key)!, panels.get(on)!];
    const { overlay, face, slant } = standsTo(door, upright, hand, carcass.diagonal);
    const reach = reachFor(hinge, overlay, borerOf(shop)?.distance ?? null);
    const wanted = hingesWanted(door, shop);
    const behind = door.turn === undefined ? Math.max(0, extentsOf(door).y.to) : 0;
    const grid = gridOn(spec, carcass, shop, upright);
    const hanging = { carcass, running, shop, door, upright, face, hinge, grid, behind } as const;
    const hinges = reach === null ? [] : placeHinges({ ...hanging, reach }, wanted, hung);
    hung.push({ door, upright, face, hinge, overlay, slant, reach, wanted, hinges });
  }
  return hung;
}

/** How a door that is hung on a hand stands to its upright. A door across a corner reaches over the side there as it would were both
 * straight, but for what it turns away: counted at its inside face, where the cup opens. */
function standsTo(
  door: Panel,
  upright: Panel,
  hand: Hand,
  diagonal: Diagonal | null,
): Pick<HungDoor, 'overlay' | 'face' | 'slant'> {
  const isLeft = hand === 'left';
  const edge = straightExtents(door);
  if (door.turn === undefined || diagonal === null) {
    const side = extentsOf(upright).x;
    const overlay = isLeft ? side.to - edge.x.from : edge.x.to - side.from;
    return { overlay, face: upright.pose.t === (isLeft ? '+x' : '-x') ? 'inside' : 'outside', slant: 0 };
  }
  const { at } = door.turn;
  const begins = isLeft ? edge.x.from - at.x : at.x + diagonal.long - edge.x.to;
  const slant = slantAt(diagonal, hand);
  const angle = (slant * Math.PI) / 180;
  const before = at.y - edge.y.to;
  const reached = (upright.thickness + before * Math.sin(angle)) / Math.cos(angle);
  return { overlay: Math.round(reached) - begins, face: 'inside', slant };
}

/** Hinges take up so much of a slant, in degrees (common practice, no source). */
const SLANT_TAKEN = 1;

/** Whether a hinge is made for fronts that slant so. */
export const isForSlant = ({ slant }: Hinge, wanted: number): boolean => Math.abs(slant - wanted) <= SLANT_TAKEN;

/** How many hinges the shop has on a door of this height and this weight. */
function hingesWanted(door: Panel, { habits }: Shop): number {
  const weight = weightOf(door);
  const byHeight = habits.hingesByHeight.filter((height) => door.length > height).length;
  const byWeight = habits.hingesByWeight.filter((most) => weight > most).length;
  return 2 + Math.max(byHeight, byWeight);
}

/** The hinge of a name, the usual one where the shop has none of it; null for none. */
export function hingeNamed({ hinges, habits }: Shop, name: string): Hinge | null {
  return hinges.get(name) ?? (name === NO_HINGE ? null : (hinges.get(habits.hinge) ?? null));
}

/** The cup borer that the shop uses. */
export function borerOf({ machines, habits }: Shop): CupBorer | null {
  const named = habits.machines.cups === null ? undefined : machines.get(habits.machines.cups);
  if (named?.kind === 'cup') return named;
  return [...machines.values()].find((machine) => machine.kind === 'cup') ?? null;
}

/** So many hinges from the bottom up, or as many as there are places for. */
function placeHinges(hanging: Hanging, wanted: number, before: readonly HungDoor[]): readonly HungHinge[] {
  const { door, shop } = hanging;
  const steps = stepsOf(hanging);
  if (steps.length < wanted) return [];
  const { from, to } = extentsOf(door).z;
  const { hingeEnd } = shop.habits;
  const ends = [from + hingeEnd, Math.max(from + hingeEnd, to - hingeEnd)] as const;
  // Middle hinges are set out from where the outer ones come to stand.
  const order = [0, wanted - 1, ...Array.from({ length: wanted - 2 }, (_, i) => i + 1)];
  const placed = new Map<number, HungHinge>();
  for (const index of order) {
    const [low, high] = [placed.get(0)?.z ?? ends[0], placed.get(wanted - 1)?.z ?? ends[1]];
    const aim = low + Math.round(((high - low) * index) / (wanted - 1));
    const id = `${door.key}:hinge-${index + 1}`;
    const others = [
      ...before.flatMap((one) => one.hinges.map((hinge) => ({ one, hinge }))),
      ...[...placed.values()].map((hinge) => ({ one: hanging, hinge })),
    ];
    const tries = steps
      .map((step) => hingeAt(hanging, id, step))
      .toSorted((a, b) => Math.abs(a.z - aim) - Math.abs(b.z - aim) || a.z - b.z)
      .map((hinge) => ({ ...hinge, meets: inTheWay(hanging, hinge, others) }));
    const free = tries.findIndex(({ meets }) => meets === null);
    const gaveWayTo = tries.slice(0, Math.max(0, free)).flatMap(({ meets }) => meets ?? []);
    placed.set(index, { ...tries[Math.max(0, free)]!, gaveWayTo: [...new Set(gaveWayTo)] });
  }
  return [...placed.values()].toSorted((a, b) => a.z - b.z);
}

/** The holes of the grid that the lowest screw of a plate may stand at, so that all of them and the cup are in wood. */
function stepsOf(hanging: Hanging): readonly number[] {
  const { grid, hinge, door, shop } = hanging;
  const last = grid.count - 1 - hinge.platePitches;
  const { cupScrews, cupDiameter } = hinge;
  const reach = cupScrews === null ? 0 : half(cupScrews.apart + cupScrews.diameter) + 1;
  const margin = Math.max(half(cupDiameter), reach) + shop.habits.leastWall;
  return Array.from({ length: Math.max(0, last + 1) }, (_, k) => k).filter((k) => {
    const { v } = hingeAt(hanging, '', k).cup;
    return v >= margin && v <= door.length - margin;
  });
}

function hingeAt({ upright, face, door, hinge, reach, grid, behind }: Hanging, id: string, k: number): HungHinge {
  const low = placeAt(grid, k);
  const along = low + half(hinge.platePitches * grid.pitch);
  const z = upright.pose.origin.z + along;
  const far = reach.arm + reach.plate + half(hinge.cupDiameter);
  const front = behind - frontOf(upright);
  // From the face under the plate into the opening.
  const [foot, inOpening] = face === 'inside' ? [upright.thickness, upright.thickness + far] : [0, 0 - far];
  const corner = (u: Micrometres, v: Micrometres, t: Micrometres) => toCarcass(upright.pose, { u, v, t });
  // A plate has two screws, whatever the pitches between.
  const cup = { u: reach.distance, v: toPanel(door.pose, { x: 0, y: 0, z }).v };
  const screws = [0, hinge.platePitches].map((i): OnFace => ({
    u: hinge.setback + front,
    v: low + i * grid.pitch,
  }));
  return {
    id,
    z,
    cup,
    cupScrews: besideCup(cup, hinge),
    screws,
    body: spanning(
      corner(front, along - half(hinge.bodyHeight), foot),
      corner(front + hinge.bodyDepth, along + half(hinge.bodyHeight), inOpening),
    ),
    meets: null,
    gaveWayTo: [],
  };
}

function besideCup({ u, v }: OnFace, { cupScrews }: Hinge): readonly OnFace[] {
  if (cupScrews === null) return [];
  const [low, behind] = [v - half(cupScrews.apart), u + cupScrews.behind];
  return [
    { u: behind, v: low },
    { u: behind, v: low + cupScrews.apart },
  ];
}

interface Other {
  readonly one: Pick<HungDoor, 'upright' | 'face' | 'hinge'>;
  readonly hinge: HungHinge;
}

const screwsOf = ({ one: { upright, face, hinge }, hinge: { screws } }: Other): Screws => ({
  panel: upright,
  face,
  holes: screws,
  diameter: hinge.plateDiameter,
  depth: hinge.plateDepth,
});

/** The panel, the drawer or the hinge that stands in the room of a hinge, or whose screws would meet its own in the upright. */
function inTheWay(
  { carcass, running, shop, upright, face, hinge }: Hanging,
  at: HungHinge,
  others: readonly Other[],
): string | null {
  const panel = carcass.panels.find(
    (one) => (isOfBox(one) || isInDrawer(one)) && one.key !== upright.key && meet(extentsOf(one), at.body),
  );
  if (panel !== undefined) return panel.key;
  const slide = running.find(({ slides }) => slides.some(({ body }) => meet(body, at.body)));
  if (slide !== undefined) return slide.drawer.key;
  const { leastWall } = shop.habits;
  const meetsScrews = (on: Screws): boolean => {
    if (on.panel.key !== upright.key) return false;
    const isThrough = hinge.plateDepth + on.depth + leastWall > upright.thickness;
    if (on.face !== face && !isThrough) return false;
    const clear = half(hinge.plateDiameter) + half(on.diameter) + leastWall;
    return at.screws.some((a) => on.holes.some((b) => Math.abs(a.u - b.u) < clear && Math.abs(a.v - b.v) < clear));
  };
  const ofSlides = running.find(({ drawer: { slide: one }, slides }) =>
    slides.some((side) => meetsScrews({ ...side, ...one, panel: side.upright })),
  );
  if (ofSlides !== undefined) return ofSlides.drawer.key;
  return others.find((other) => meet(other.hinge.body, at.body) || meetsScrews(screwsOf(other)))?.hinge.id ?? null;
}

function meet(a: Extents, b: Extents): boolean {
  return overlaps(a.x, b.x) && overlaps(a.y, b.y) && overlaps(a.z, b.z);
}
