import manifoldModule, { type Box, type Manifold, type Mat4, type Vec3 } from 'manifold-3d';
import { cleanup, garbageCollectManifold } from 'manifold-3d/lib/garbage-collector.js';
import type { Bore } from '../../shared-core/boring/model.js';
import type { Axis, Carcass, Panel } from '../../shared-core/carcass/model.js';
import type { Shop } from '../../shared-core/shop/model.js';

/*
 * An independent check of the geometry by a general-purpose solid modeller (the Manifold library, npm `manifold-3d`).
 * Nothing here uses the core's transforms, cylinders, matching or formulas: only its data, read as their docstrings say.
 * Coordinates are micrometres as whole numbers, which the modeller's doubles hold exactly.
 *
 * Round solids are prisms of 8 sides with corners on the circle and on both axes of the section. Every pose turns panels
 * by right angles or mirrors them, which maps such a prism onto itself. So a hole never takes more wood than the round
 * one, and a pin of the same section, a little slimmer, clears it just where the round pin would clear the round hole.
 */
const library = await manifoldModule();
library.setup();
const SIDES = 8;
/** Radius 1, from z = 0 to z = 1; and a block from the origin to (1, 1, 1). Made before `cleanup` watches, so they stay. */
const prism = library.Manifold.cylinder(1, 1, 1, SIDES);
const cube = library.Manifold.cube(1);
const { Manifold: Solid } = garbageCollectManifold(library);

/** How much slimmer than its hole a pin is made; a bore misplaced by more than a twentieth of a millimetre is caught. */
const SLIMMER = 0.99;
/** Less than this is the modeller's rounding: a thousandth of a cubic millimetre, in cubic micrometres. */
const NOTHING = 1e6;
/** How far a cut starts outside the wood, so that no skin is left. */
const OUTSIDE = 100;

/** A named solid in the carcass frame, with the box around it. */
interface Part {
  readonly name: string;
  readonly solid: Manifold;
  readonly box: Box;
}

/** A dowel, screw, bolt or cam as it sits in the finished box. */
interface Connector extends Part {
  readonly kind: 'dowel' | 'screw' | 'head' | 'bolt' | 'cam';
}

export interface Assembly {
  /** Every panel with its bores and grooves. */
  readonly panels: readonly Part[];
  /** The same panels before anything is taken out of them. */
  readonly blanks: readonly Part[];
  readonly connectors: readonly Connector[];
}

const VECTOR: Readonly<Record<Axis, Vec3>> = {
  '+x': [1, 0, 0],
  '-x': [-1, 0, 0],
  '+y': [0, 1, 0],
  '-y': [0, -1, 0],
  '+z': [0, 0, 1],
  '-z': [0, 0, -1],
};

/** From (u, v, t) to the carcass. Column by column: the images of u, v and t, then the origin. */
function placing({ pose: { origin, u, v, t } }: Panel): Mat4 {
  return [...VECTOR[u], 0, ...VECTOR[v], 0, ...VECTOR[t], 0, origin.x, origin.y, origin.z, 1];
}

function block(from: Vec3, to: Vec3): Manifold {
  return cube.transform([to[0] - from[0], 0, 0, 0, 0, to[1] - from[1], 0, 0, 0, 0, to[2] - from[2], 0, ...from, 1]);
}

/** A pin on a bore's axis, in the panel's frame, from `from` to `to` counted from the surface into the wood. */
function pin({ length, thickness }: Panel, bore: Bore, diameter: number, from: number, to: number): Manifold {
  const [r, h] = [diameter / 2, to - from];
  const { u, v } = bore;
  switch (bore.face) {
    case 'outside':
      return prism.transform([r, 0, 0, 0, 0, r, 0, 0, 0, 0, h, 0, u, v, from, 1]);
    case 'inside':
      return prism.transform([r, 0, 0, 0, 0, -r, 0, 0, 0, 0, -h, 0, u, v, thickness - from, 1]);
    case 'reference-end':
      return prism.transform([r, 0, 0, 0, 0, 0, -r, 0, 0, h, 0, 0, u, from, v, 1]);
    case 'far-end':
      return prism.transform([r, 0, 0, 0, 0, 0, r, 0, 0, -h, 0, 0, u, length - from, v, 1]);
  }
}

function blankOf({ width, length, thickness, corner }: Panel): Manifold {
  const whole = block([0, 0, 0], [width, length, thickness]);
  if (corner === undefined) return whole;
  // What is kept lies behind the line from (u, 0) to (0, v), counted from the end.
  const { u, v } = corner;
  const far = corner.end === 'far-end';
  const offset = (u * v - (far ? length * u : 0)) / Math.hypot(u, v);
  return whole.trimByPlane([v, far ? -u : u, 0], offset);
}

/** A solid as it stands in the carcass: placed as the pose says, then turned about an upright line where the panel is. */
function standing(panel: Panel, solid: Manifold): Manifold {
  const placed = solid.transform(placing(panel));
  if (panel.turn === undefined) return placed;
  const { at, degrees } = panel.turn;
  return placed.translate([-at.x, -at.y, 0]).rotate([0, 0, degrees]).translate([at.x, at.y, 0]);
}

/** The panel in its own frame with everything taken out of it. */
function boredPanel(panel: Panel, bores: readonly Bore[]): Manifold {
  const holes = bores.map((bore) =>
    pin(panel, bore, bore.diameter, -OUTSIDE, bore.depth + (bore.through ? OUTSIDE : 0)),
  );
  const grooves = panel.grooves.map(({ from, to, depth, along }) => {
    const [start, stop] = along ? [along.from, along.to] : [-OUTSIDE, panel.length + OUTSIDE];
    const rear = to === panel.width ? to + OUTSIDE : to;
    return block([from, start, panel.thickness - depth], [rear, stop, panel.thickness + OUTSIDE]);
  });
  return Solid.difference([blankOf(panel), ...holes, ...grooves]);
}

function part(name: string, solid: Manifold): Part {
  return { name, solid, box: solid.boundingBox() };
}

/** A bit's way from outside the wood to its deepest, along an axis of the carcass. */
export interface BitPath {
  readonly from: Vec3;
  readonly to: Vec3;
  readonly diameter: number;
}

function swept({ from, to, diameter }: BitPath): Manifold {
  const axis = [0, 1, 2].find((one) => from[one] !== to[one])!;
  const low = from.map((at, one) => Math.min(at, to[one]!));
  const column = (one: number, size: number): number[] => [0, 1, 2].map((row) => (row === one % 3 ? size : 0));
  const [r, h] = [diameter / 2, Math.abs(from[axis]! - to[axis]!)];
  const columns = [column(axis + 1, r), column(axis + 2, r), column(axis, h)].flatMap((one) => [...one, 0]);
  return prism.transform([...columns, ...low, 1] as unknown as Mat4);
}

/** How much wood bits take from a panel that its bores leave, and the other way round: cubic micrometres, without the grooves. */
export function differenceOf(panel: Panel, bits: readonly BitPath[], bores: readonly Bore[]): number {
  const blank = blankOf(panel).transform(placing(panel));
  const box = blank.boundingBox();
  // Many bits come down beside the panel.
  const within = bits.filter(({ from, to, diameter }) => {
    const ends = [0, 1, 2].map((axis) => [from[axis]!, to[axis]!].sort((a, b) => a - b) as [number, number]);
    return !apart(box, {
      min: ends.map(([at]) => at - diameter) as Vec3,
      max: ends.map(([, at]) => at + diameter) as Vec3,
    });
  });
  const asBored = Solid.difference([blank, ...within.map(swept)]);
  const asDrawn = boredPanel({ ...panel, grooves: [] }, bores).transform(placing(panel));
  const tooMuch = asDrawn.subtract(asBored).volume();
  const tooLittle = asBored.volume() - asDrawn.volume() + tooMuch;
  return Math.max(tooMuch, tooLittle) > NOTHING ? tooMuch + tooLittle : 0;
}

/** A point of a panel's frame as it stands in the carcass, were it not turned. */
export function pointOf({ pose: { origin, ...axes } }: Panel, [u, v, t]: Vec3): Vec3 {
  const at = [origin.x, origin.y, origin.z];
  return at.map((from, i) => from + u * VECTOR[axes.u][i]! + v * VECTOR[axes.v][i]! + t * VECTOR[axes.t][i]!) as Vec3;
}

/** The finished box as solids. Only one assembly stands at a time: `clear` takes it down. */
export function assemble(carcass: Carcass, bores: readonly Bore[], shop: Shop): Assembly {
  const panels = carcass.panels.map((panel) => {
    const own = bores.filter((bore) => bore.panel === panel.key);
    return part(panel.key, standing(panel, boredPanel(panel, own)));
  });
  const blanks = carcass.panels.map((panel) => part(panel.key, standing(panel, blankOf(panel))));
  const byKey = new Map(carcass.panels.map((panel) => [panel.key, panel]));
  const connectors = bores.flatMap((bore) => connectorIn(byKey.get(bore.panel)!, bore, shop));
  return { panels, blanks, connectors };
}

/** Gives the modeller's memory back. */
export function clear(): void {
  cleanup();
}

/**
 * What is put into the box, each set out from ONE panel's bore: dowels and bolts from the end, screws from the face that
 * they enter. Whether they find their other hole is left to the solids.
 */
function connectorIn(panel: Panel, bore: Bore, shop: Shop): readonly Connector[] {
  const made = (kind: Connector['kind'], diameter: number, from: number, to: number): readonly Connector[] => {
    const solid = standing(panel, pin(panel, bore, diameter * SLIMMER, from, to));
    return [{ ...part(bore.id, solid), kind }];
  };
  const fitting = bore.fitting === null ? undefined : shop.fittings.get(bore.fitting);
  const inEnd = bore.face === 'reference-end' || bore.face === 'far-end';
  if (fitting?.kind === 'dowel' && inEnd) {
    // The glue gap is shared by both ends of the dowel.
    const deep = bore.depth - shop.habits.glueGap / 2;
    return made('dowel', fitting.diameter, deep - fitting.length, deep);
  }
  if (fitting?.kind === 'screw' && bore.purpose === 'clearance') {
    const under = fitting.recess ?? 0;
    return made('screw', fitting.pilot, under, under + fitting.length);
  }
  if (fitting?.kind === 'screw' && bore.purpose === 'recess')
    return made('head', fitting.head!, 0, fitting.recess! * SLIMMER);
  if (fitting?.kind === 'cam' && bore.purpose === 'cam-bolt')
    return made('bolt', fitting.studDiameter, -fitting.studDepth * SLIMMER, fitting.distance - fitting.camDiameter / 2);
  if (bore.purpose === 'cam') return made('cam', bore.diameter, 0, bore.depth * SLIMMER);
  return [];
}

/** How far a shelf pin stands out of its hole. */
const PIN_OUT = 6000;

/** A pin in every hole of every row; in a through hole it stands out on both sides. */
export function pinsIn(carcass: Carcass, bores: readonly Bore[]): readonly Part[] {
  const byKey = new Map(carcass.panels.map((panel) => [panel.key, panel]));
  return bores
    .filter(({ purpose }) => purpose === 'row')
    .map((bore) => {
      const panel = byKey.get(bore.panel)!;
      const to = bore.depth + (bore.through ? PIN_OUT : 0);
      return part(bore.id, pin(panel, bore, bore.diameter * SLIMMER, -PIN_OUT, to).transform(placing(panel)));
    });
}

/** The pins that a shelf lies on: under it, with less than a tenth of a millimetre between, and clear of it. */
export function pinsUnder(shelf: string, { panels }: Assembly, pins: readonly Part[]): readonly Part[] {
  const { box, solid } = panels.find(({ name }) => name === shelf)!;
  return pins.filter((one) => {
    const under = box.min[2] - one.box.max[2];
    const beneath = [0, 1].every((axis) => one.box.min[axis]! < box.max[axis]! && box.min[axis]! < one.box.max[axis]!);
    return beneath && under >= 0 && under < 100 && solid.intersect(one.solid).isEmpty();
  });
}

/** Two solids that take up the same room, in cubic micrometres. */
export interface Interference {
  readonly between: readonly [string, string];
  readonly volume: number;
}

/** Every two solids of the finished box that interfere: panels, and what joins them. Empty for a box that closes. */
export function interferences({ panels, connectors }: Assembly): readonly Interference[] {
  const found = pairsThatTouch(connectors).map(([a, b]) => overlapOf(a, b));
  for (const panel of panels) {
    const near = connectors.filter((connector) => !apart(connector.box, panel.box));
    // One cut for all of them; only a panel that they do not clear is looked at one by one.
    if (
      near.length > 0 &&
      Solid.union(near.map(({ solid }) => solid))
        .intersect(panel.solid)
        .volume() > NOTHING
    )
      found.push(...near.map((connector) => overlapOf(panel, connector)));
  }
  found.push(...pairsThatTouch(panels).map(([a, b]) => overlapOf(a, b)));
  return found.filter(({ volume }) => volume > NOTHING);
}

function overlapOf(a: Part, b: Part): Interference {
  return { between: [a.name, b.name], volume: a.solid.intersect(b.solid).volume() };
}

/** Every two whose boxes share room, found by a sweep along x. */
function pairsThatTouch(parts: readonly Part[]): readonly (readonly [Part, Part])[] {
  const sorted = [...parts].sort((a, b) => a.box.min[0] - b.box.min[0]);
  return sorted.flatMap((a, index) => {
    const pairs: (readonly [Part, Part])[] = [];
    for (let next = index + 1; next < sorted.length && sorted[next]!.box.min[0] < a.box.max[0]; next++)
      if (!apart(a.box, sorted[next]!.box)) pairs.push([a, sorted[next]!]);
    return pairs;
  });
}

/** True where two boxes at most touch. */
function apart(a: Box, b: Box): boolean {
  return [0, 1, 2].some((axis) => a.max[axis]! <= b.min[axis]! || b.max[axis]! <= a.min[axis]!);
}

/** The panels whose blanks a connector reaches into; blanks are blocks, so their boxes tell. */
export function panelsHolding({ box }: Connector, { blanks }: Assembly): readonly string[] {
  return blanks.filter((blank) => !apart(box, blank.box)).map(({ name }) => name);
}

/** How much of all connectors is outside every blank: a gap between panels, or an end that sticks out. Cubic micrometres. */
export function volumeInTheOpen({ blanks, connectors }: Assembly): number {
  if (connectors.length === 0) return 0;
  const all = Solid.union(connectors.map(({ solid }) => solid));
  const open = Solid.difference([all, ...blanks.map(({ solid }) => solid)]).volume();
  return open > NOTHING ? open : 0;
}

/** Where the mouth of a bore stands in the carcass, by its solid, and the axis that it runs along (0 for x). */
export function axisOf(panel: Panel, bore: Bore): { readonly at: Vec3; readonly along: number } {
  const { min, max } = pin(panel, bore, bore.diameter, 0, bore.depth).transform(placing(panel)).boundingBox();
  const middle = [0, 1, 2].map((axis) => (min[axis]! + max[axis]!) / 2);
  const spans = [0, 1, 2].map((axis) => Math.abs(max[axis]! - min[axis]! - bore.depth));
  const into = pin(panel, bore, bore.diameter, 0, 1).transform(placing(panel)).boundingBox();
  const along = spans.indexOf(Math.min(...spans));
  const mouth = Math.abs(into.min[along]! - min[along]!) < 1 ? min[along]! : max[along]!;
  return { at: middle.map((value, axis) => (axis === along ? mouth : value)) as Vec3, along };
}

/** A peg that starts at a point of the carcass and runs along x, a little slimmer than a hole of that diameter. */
export function pegFrom(
  [x, y, z]: readonly [number, number, number],
  along: number,
  diameter: number,
  length: number,
): Part {
  const r = (diameter / 2) * SLIMMER;
  return part('peg', prism.transform([0, r, 0, 0, 0, 0, r, 0, along * length, 0, 0, 0, x, y, z, 1]));
}

/** The same, running up or to the front. */
export function pegInto(
  [x, y, z]: readonly [number, number, number],
  along: '+z' | '-y',
  diameter: number,
  length: number,
): Part {
  const r = (diameter / 2) * SLIMMER;
  const columns =
    along === '+z' ? [r, 0, 0, 0, 0, r, 0, 0, 0, 0, length, 0] : [r, 0, 0, 0, 0, 0, r, 0, 0, -length, 0, 0];
  return part('peg', prism.transform([...columns, x, y, z, 1] as unknown as Mat4));
}

/** What lies open between solids along a line that runs along x, from one to the next, by the boxes around them. */
export function openingsAlongX(
  parts: readonly Part[],
  y: number,
  z: number,
): readonly { readonly from: number; readonly to: number }[] {
  const met = parts
    .filter(({ box: { min, max } }) => min[1] < y && y < max[1] && min[2] < z && z < max[2])
    .sort((a, b) => a.box.min[0] - b.box.min[0]);
  return met.slice(1).map(({ box }, i) => ({ from: met[i]!.box.max[0], to: box.min[0] }));
}

/** Whether a solid shares no room with any of the others. */
export function standsClearOf({ solid, box }: Part, others: readonly Part[]): boolean {
  return others.every((one) => apart(one.box, box) || solid.intersect(one.solid).volume() <= NOTHING);
}

/** Whether a block shares no room with any of the solids. */
export function standsClear({ min, max }: Box, parts: readonly Part[]): boolean {
  const body = block(min, max);
  return parts.every(({ solid, box }) => apart(box, { min, max }) || body.intersect(solid).volume() <= NOTHING);
}

/** Where a pin in a bore has its middle, as the panel stands. */
export function middleOf(panel: Panel, bore: Bore): Vec3 {
  const { min, max } = standing(panel, pin(panel, bore, bore.diameter, 0, bore.depth)).boundingBox();
  return [0, 1, 2].map((axis) => (min[axis]! + max[axis]!) / 2) as Vec3;
}

/** How much smaller than the block that it is cut of a solid is, in cubic micrometres. */
export const volumeOf = ({ solid }: Part): number => solid.volume();

/** A block of a panel, thinner by so much on every side: what it then meets the panel does more than touch. */
export function thinner({ name, box: { min, max } }: Pick<Part, 'name' | 'box'>, by: number): Part {
  const box: Box = { min: min.map((at) => at + by) as Vec3, max: max.map((at) => at - by) as Vec3 };
  return { name, box, solid: block(box.min, box.max) };
}

/**
 * The solids that a panel runs into as it is turned about an upright line: the name of each, and at how many degrees it is met
 * first. Degrees count against the clock for who looks down.
 */
export function metWhileTurning(
  panel: Part,
  others: readonly Part[],
  line: { readonly x: number; readonly y: number },
  degrees: readonly number[],
): ReadonlyMap<string, number> {
  const met = new Map<string, number>();
  for (const angle of degrees) {
    const turned = panel.solid.translate([-line.x, -line.y, 0]).rotate([0, 0, angle]).translate([line.x, line.y, 0]);
    const box = turned.boundingBox();
    for (const { name, solid, box: other } of others)
      if (!met.has(name) && !apart(box, other) && turned.intersect(solid).volume() > NOTHING) met.set(name, angle);
  }
  return met;
}

/** What some parts touch on their way, moved together by a vector in so many steps, the places at rest counted in. */
export function travelHits(moved: readonly Part[], rest: readonly Part[], by: Vec3, steps: number): readonly string[] {
  const hits = new Set<string>();
  for (let step = 0; step <= steps; step += 1) {
    const way = by.map((length) => (length * step) / steps) as Vec3;
    for (const { name, solid, box } of moved) {
      const here = { min: box.min.map((at, i) => at + way[i]!), max: box.max.map((at, i) => at + way[i]!) } as Box;
      for (const other of rest)
        if (!apart(here, other.box) && solid.translate(way).intersect(other.solid).volume() > NOTHING)
          hits.add(`${name} and ${other.name}`);
    }
  }
  return [...hits];
}

/** How much of a room is left open by panels that stand before it or in it, seen along y. Cubic micrometres. */
export function leftOpen(room: Box, before: readonly Part[]): number {
  const [min, max] = [room.min[1] - OUTSIDE, room.max[1] + OUTSIDE];
  // Doors are blocks: pulled out along y they are blocks still.
  const closed = before.map(({ box }) => block([box.min[0], min, box.min[2]], [box.max[0], max, box.max[2]]));
  return Solid.difference([block(room.min, room.max), ...closed]).volume();
}

/** The box around some panels. */
export function boundsOf(parts: readonly Part[]): Box {
  const over = (pick: (...of: number[]) => number, end: 'min' | 'max', axis: number): number =>
    pick(...parts.map(({ box }) => box[end][axis]!));
  const corner = (pick: (...of: number[]) => number, end: 'min' | 'max'): Vec3 => [
    over(pick, end, 0),
    over(pick, end, 1),
    over(pick, end, 2),
  ];
  return { min: corner(Math.min, 'min'), max: corner(Math.max, 'max') };
}
