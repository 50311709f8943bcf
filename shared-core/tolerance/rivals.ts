import type { Carcass } from '../carcass/model.js';
import type { Stray } from '../machining/replay/stray.js';
import { amountOf, excessBetween, facesOf, meet, total, type Met, type Stand, type Sum } from './faces.js';
import type { LoneJoint } from './lone-joint.js';

/** A joint among the others of its carcass. */
export interface JointCase extends LoneJoint {
  readonly rivals: readonly Rival[];
  /** The joints whose stands the rivals ask for, by id. */
  readonly standing: ReadonlyMap<string, LoneJoint>;
}

/**
 * Panels with their ends on the same two faces must share one clear width, and the faces are where other panels hold them.
 * A panel that is too short for the width at its place stands off a face; one that is too long keeps the faces off whatever
 * else ends there.
 *
 * In the frame of a panel that both faces meet, a face is either where that panel's end stands against it, or where the
 * bores of its own panel put it (its outside face; the inside face by its thickness further on). The outermost panels that
 * both faces meet set the width, which runs straight between them.
 */
export interface Rival {
  /** Which corner of the end it opens: 0 at the front of the contact, 1 at the back. */
  readonly corner: 0 | 1;
  /** The corner of the same end that touches meanwhile; null where it is not this panel that holds the faces. */
  readonly touching: 0 | 1 | null;
  /** What holds open counts up. */
  readonly shares: Sum;
}

/** How far a rival holds a joint open at least, in micrometres; negative where it leaves it room. */
export function heldOpen({ shares }: Rival, stray: Stray, standOf: (joint: string) => Stand): number {
  return amountOf(shares, stray, standOf);
}

/** The rivals at every joint that has any, by the joint's id. */
export function rivalsOf({ joints, panels }: Carcass): ReadonlyMap<string, readonly Rival[]> {
  const byKey = new Map(panels.map((panel) => [panel.key, panel]));
  const byId = new Map(joints.map((joint) => [joint.id, joint]));
  const rivals = new Map<string, Rival[]>();
  for (const faces of facesOf(joints, byKey)) {
    const met = panels.flatMap((panel) => meet(panel, faces, byId) ?? []);
    const excessOf = excessBetween(met, faces.way);
    if (excessOf === null) continue;
    const excesses = new Map(
      met.flatMap((one): [Met, Excess][] => {
        if (one.corners === null) return [];
        return [[one, [excessOf(one, one.corners[0]), excessOf(one, one.corners[1])]]];
      }),
    );
    for (const [one, excess] of excesses) {
      const found = [...excesses].flatMap(([other, holding]) => rivalsBetween(excess, holding, one === other));
      if (found.length === 0) continue;
      for (const { id, how } of [one.near, one.far])
        if (how === 'against-end') rivals.set(id, [...(rivals.get(id) ?? []), ...found]);
    }
  }
  return rivals;
}

/** By how much a panel is too long for its place, at both corners of its end. */
type Excess = readonly [front: Sum, back: Sum];

/** Each corner with the other one. */
const CORNERS = [
  [0, 1],
  [1, 0],
] as const;

/** What opens the ends of a panel while another one holds the faces; with itself: while the faces are where they are held. */
function rivalsBetween(excess: Excess, holding: Excess, itself: boolean): Rival[] {
  const sameAtBoth = holding.every((sum) => sum.every(({ kind }) => kind !== 'stand'));
  return CORNERS.flatMap(([corner, touching]): Rival[] => {
    const own = excess[corner];
    if (itself) {
      return [
        { corner, touching: null, shares: total([own, -1]) },
        { corner, touching, shares: total([excess[touching], 1], [own, -1]) },
      ];
    }
    return (sameAtBoth ? [holding[0]] : holding).flatMap((sum) =>
      sum.length === 0 ? [] : [{ corner, touching: null, shares: total([sum, 1], [own, -1]) }],
    );
  }).filter(({ shares }) => shares.length > 0);
}

/** Puts a joint among the others of its carcass. */
export function amongOthers(
  joint: LoneJoint,
  rivals: readonly Rival[],
  others: ReadonlyMap<string, LoneJoint>,
): JointCase {
  const asked = rivals.flatMap(({ shares }) => shares.flatMap(({ kind, of }) => (kind === 'stand' ? [of] : [])));
  const standing = [...new Set(asked)].flatMap((id): [string, LoneJoint][] => {
    const other = others.get(id);
    return other === undefined ? [] : [[id, other]];
  });
  return { ...joint, rivals, standing: new Map(standing) };
}
