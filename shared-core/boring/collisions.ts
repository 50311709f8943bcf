import type { Carcass, Groove, Panel } from '../carcass/model.js';
import type { Micrometres } from '../length/units.js';
import { cylinderOf, type Cylinder } from './axis.js';
import type { Bore, BoreMap } from './model.js';
import { betweenCylinderAndBlock, betweenCylinders, isNearerThan, wallBetween, type Block } from './separation.js';

/** Two bores of one panel with too little between them. */
export interface BoreCollision {
  readonly panel: string;
  readonly bores: readonly [Bore, Bore];
  /** What stands between them; 0 where they meet. */
  readonly wall: Micrometres;
}

/** A bore with too little between it and the groove or rebate of the back. */
export interface GrooveCollision {
  readonly panel: string;
  readonly bore: Bore;
  readonly groove: Groove;
  readonly wall: Micrometres;
}

interface Solid {
  readonly bore: Bore;
  /** Which of the panel's bores it is in the bore map. */
  readonly index: number;
  readonly cylinder: Cylinder;
  /** Its run along v. */
  readonly from: Micrometres;
  readonly to: Micrometres;
}

/**
 * Bores of one panel with less than `leastWall` of wood between them. Decided on finite flat-ended cylinders in the panel's
 * frame; see `isNearerThan` for how exactly. The point of the bit is not counted. A cam and the hole of its own bolt meet
 * by design. Ordered by panel, then as the bore map is.
 */
export function boreCollisions(carcass: Carcass, boreMap: BoreMap, leastWall: Micrometres): readonly BoreCollision[] {
  return solidsByPanel(carcass.panels, boreMap).flatMap(([panel, solids]) => betweenBores(panel, solids, leastWall));
}

/** Bores with less than `leastWall` between them and a groove or rebate of their panel; else as `boreCollisions`. */
export function grooveCollisions(
  carcass: Carcass,
  boreMap: BoreMap,
  leastWall: Micrometres,
): readonly GrooveCollision[] {
  const grooved = carcass.panels.filter(({ grooves }) => grooves.length > 0);
  return solidsByPanel(grooved, boreMap).flatMap(([panel, solids]) => withGrooves(panel, solids, leastWall));
}

function solidsByPanel(panels: readonly Panel[], boreMap: BoreMap): readonly (readonly [Panel, readonly Solid[]])[] {
  const solids = new Map(panels.map((panel) => [panel.key, { panel, list: [] as Solid[] }]));
  for (const bore of boreMap.bores) {
    const of = solids.get(bore.panel);
    of?.list.push(solidOf(of.panel, bore, of.list.length));
  }
  return [...solids.values()].map(({ panel, list }) => [panel, list] as const);
}

function solidOf(panel: Panel, bore: Bore, index: number): Solid {
  const cylinder = cylinderOf(panel, bore);
  const radius = bore.diameter / 2;
  const { along, across, span } = cylinder;
  return along === 't'
    ? { bore, index, cylinder, from: across - radius, to: across + radius }
    : { bore, index, cylinder, from: span.from, to: span.to };
}

/** Sweeps along v, where rows spread out, and compares each bore with those whose run is not yet passed. */
function betweenBores(panel: Panel, solids: readonly Solid[], leastWall: Micrometres): readonly BoreCollision[] {
  const found: { readonly collision: BoreCollision; readonly order: readonly [number, number] }[] = [];
  let near: Solid[] = [];
  for (const solid of [...solids].sort((a, b) => a.from - b.from)) {
    near = near.filter((other) => other.to + leastWall >= solid.from);
    for (const other of near) {
      const beside = Math.abs(solid.bore.u - other.bore.u) - (solid.bore.diameter + other.bore.diameter) / 2;
      if (beside > leastWall || meetByDesign(solid.bore, other.bore)) continue;
      const separation = betweenCylinders(solid.cylinder, other.cylinder);
      if (!isNearerThan(separation, leastWall)) continue;
      const [first, second] = solid.index < other.index ? [solid, other] : [other, solid];
      found.push({
        collision: { panel: panel.key, bores: [first.bore, second.bore], wall: wallBetween(separation) },
        order: [first.index, second.index],
      });
    }
    near.push(solid);
  }
  return found.sort((a, b) => a.order[0] - b.order[0] || a.order[1] - b.order[1]).map(({ collision }) => collision);
}

function withGrooves(panel: Panel, solids: readonly Solid[], leastWall: Micrometres): readonly GrooveCollision[] {
  return panel.grooves.flatMap((groove) => {
    const block = blockOf(panel, groove);
    return solids.flatMap(({ bore, cylinder }) => {
      const separation = betweenCylinderAndBlock(cylinder, block);
      if (!isNearerThan(separation, leastWall)) return [];
      return [{ panel: panel.key, bore, groove, wall: wallBetween(separation) }];
    });
  });
}

/** What a groove takes out of its panel, in the panel's frame. */
function blockOf({ length, thickness }: Panel, { from, to, depth, along }: Groove): Block {
  return { u: { from, to }, v: along ?? { from: 0, to: length }, t: { from: thickness - depth, to: thickness } };
}

function meetByDesign(a: Bore, b: Bore): boolean {
  return a.meets === b.id || b.meets === a.id;
}
