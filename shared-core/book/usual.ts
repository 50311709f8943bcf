import type { Surroundings } from '../fittings/fitting.js';
import { kindOf, type Fitting } from '../fittings/kinds.js';
import { half, type Micrometres } from '../length/units.js';
import { takenByBack, USUAL_BACK } from '../shop/back.js';
import { CARCASS_KINDS, sizeOfKind } from '../shop/habits.js';
import type { HorizontalHead, Shop, VerticalHead } from '../shop/model.js';
import { usuallyHasRails } from '../shop/usual-top.js';
import { railSpan, rearsOfRail } from './rails.js';

/** All of a shop that bears on its loads, as plain data; counted in whole pitches from the first place, if it is no length. */
export interface LoadTask {
  readonly places: Places;
  /** The load that the owner wrote. */
  readonly own: readonly number[] | null;
  readonly spindles: number;
  readonly longest: number;
  readonly tail: number;
  /** Spindles over a rail behind the first one. */
  readonly span: number;
  /** Last place in a rail, in front of the end of both heads. */
  readonly railRoom: number;
  readonly depths: readonly UsualDepth[];
  /** Seconds; null where no batch is told, and the fewest set-ups are wanted whatever they cost in dowels. */
  readonly times: LoadTimes | null;
}

/** Seconds for one bit in or out, and for one fitting put in. */
export interface LoadTimes {
  readonly bit: number;
  readonly fitting: number;
}

/** What usual carcasses of one depth ask of a load. */
export interface UsualDepth {
  readonly depth: Micrometres;
  /** Last place over the wood of a joint with the usual back, and of all its joints: without a back and in rails too. */
  readonly room: number;
  readonly rooms: readonly number[];
  /** Last places of those joints that may stand back to back with others: rails never do. */
  readonly deep: readonly number[];
  /** Spindles over the wood behind a last place. */
  readonly behind: readonly number[];
  /** Where its rear rails may stand, best first; null where it has none that could share a load. */
  readonly rears: readonly number[] | null;
  /** The rearmost place of rear rails; null where two rails do not fit. */
  readonly rearmost: number | null;
  readonly hasRails: boolean;
  /** Ends in a batch of the shop: of panels as deep as the carcass, and of rails. */
  readonly ends: { readonly full: number; readonly rails: number };
}

/** Usual carcasses have two panels between their sides, or one and two rails; each panel has two ends. */
const FULL_ENDS = { withRails: 2, withTop: 4 };
const RAIL_ENDS = 4;

/**
 * What the loads of a shop have to serve, with joints held by a fitting: those of usual depths, with and without the usual back,
 * and rails in kinds that usually have them.
 * @returns null where the heads have unlike pitches
 */
export function loadTask(faces: VerticalHead, ends: HorizontalHead, shop: Shop, fitting: Fitting): LoadTask | null {
  if (faces.pitch !== ends.pitch) return null;
  const { dowelSpacing, firstDowel, railWidth, sharedLoad, sizes } = shop.habits;
  const { pitch } = faces;
  const most = Math.min(faces.spindles, ends.spindles) - 1;
  const places = { ...measuresOf(fitting, shop), first: firstDowel, pitch, most };
  const own = sharedLoad?.map((spindle) => spindle - 1).filter((k) => k < ends.spindles);
  const isBatched = Object.values(sizes).some(({ batch }) => batch !== null);
  return {
    places,
    own: own?.toSorted((a, b) => a - b) ?? null,
    spindles: ends.spindles,
    longest: Math.max(1, Math.floor(dowelSpacing / pitch)),
    // A last bore is nearer to the back than the spacing also where the wood goes on for all but a pitch.
    tail: Math.max(0, Math.floor((dowelSpacing - places.edge) / pitch) - 1),
    span: railSpan(railWidth, firstDowel, pitch),
    railRoom: lastIn(railWidth, places),
    depths: [...new Set(CARCASS_KINDS.map((kind) => sizeOfKind(shop.habits, kind).depth))].map((depth) =>
      usualDepth(depth, shop, places),
    ),
    times: isBatched ? { bit: shop.changeover.bit, fitting: shop.rates.fitting } : null,
  };
}

function usualDepth(depth: Micrometres, shop: Shop, places: Places): UsualDepth {
  const { railWidth, spareHoles } = shop.habits;
  const kinds = CARCASS_KINDS.filter((kind) => sizeOfKind(shop.habits, kind).depth === depth);
  const inBatch = (of: (kind: (typeof kinds)[number]) => number): number =>
    kinds.reduce((sum, kind) => sum + of(kind) * (sizeOfKind(shop.habits, kind).batch ?? 0), 0);
  const clear = usualClearDepth(depth, shop);
  const hasRails = kinds.some(usuallyHasRails);
  const woods = [[clear, depth], [depth, depth], ...(hasRails ? [[railWidth, railWidth]] : [])] as const;
  const within = (extents: readonly Micrometres[]): readonly number[] => [
    ...new Set(extents.map((extent) => lastIn(extent, places)).filter((room) => room >= 0)),
  ];
  const allRears = rearsOfRail(clear, railWidth, places.pitch);
  const rears = allRears.filter((rear) => rear + railSpan(railWidth, places.first, places.pitch) <= places.most);
  return {
    depth,
    room: lastIn(clear, places),
    rooms: within(woods.map(([room]) => room)),
    deep: within([clear, depth]),
    behind: [...new Set(woods.flatMap(([room, wood]) => behind(room, wood, places)))],
    // Only where bores may stay empty can a side with rails share its load with one that a full panel meets.
    rears: hasRails && spareHoles ? rears : null,
    rearmost: allRears[0] ?? null,
    hasRails,
    ends: {
      full: inBatch((kind) => (usuallyHasRails(kind) ? FULL_ENDS.withRails : FULL_ENDS.withTop)),
      rails: inBatch((kind) => (usuallyHasRails(kind) ? RAIL_ENDS : 0)),
    },
  };
}

/** Places for bores from a front edge on, as far as both heads go: lengths in micrometres, and the last place. */
interface Places extends Measures {
  readonly first: Micrometres;
  readonly pitch: Micrometres;
  readonly most: number;
}

/** The last one over the wood of a joint; a deep panel may end behind the last spindle of either head. Negative for none. */
export const lastIn = (extent: Micrometres, places: Places): number =>
  Math.min(upTo(extent - places.edge, places), places.most);

/** Those behind the last place of a joint at which a bit would still bore the wood. */
function behind(room: Micrometres, wood: Micrometres, places: Places): readonly number[] {
  const from = Math.max(1, upTo(room - places.edge, places) + 1);
  const to = Math.min(upTo(wood + places.radius - 1, places), places.most);
  return Array.from({ length: Math.max(0, to - from + 1) }, (_, index) => from + index);
}

const upTo = (extent: Micrometres, { first, pitch }: Places): number => Math.floor((extent - first) / pitch);

/** What is left of a depth in front of the usual back. */
export function usualClearDepth(depth: Micrometres, { boards, habits }: Shop): Micrometres {
  return depth - takenByBack(USUAL_BACK, boards.get(habits.backBoard)?.thickness ?? 0, habits.backInset);
}

interface Measures {
  /** What a place keeps from the rear end of its joint. */
  readonly edge: Micrometres;
  /** Half the bore that is made there. */
  readonly radius: Micrometres;
}

function measuresOf(fitting: Fitting, { fittings, habits }: Shop): Measures {
  const around: Surroundings = {
    glueGap: habits.glueGap,
    leastWall: habits.leastWall,
    named: (name) => fittings.get(name) ?? fitting,
  };
  const { joint } = kindOf(fitting);
  const anywhere = { side: 'face', index: 0, count: 2, faceThickness: 0, endThickness: 0, depth: null } as const;
  const diameters = joint.holes(fitting, anywhere, around).map(({ diameter }) => diameter);
  return { edge: joint.edgeDistance(fitting, around), radius: half(Math.max(0, ...diameters)) };
}
