import type { Mate } from '../boring/matings.js';
import type { Joint, Panel } from '../carcass/model.js';
import { toCarcass, toPanel } from '../carcass/pose.js';
import type { Micrometres } from '../length/units.js';
import { bore, type Stroke } from '../machining/replay/bore.js';
import { holeKey } from '../machining/replay/compare.js';
import { NOTHING } from '../machining/replay/stray.js';
import type { LoadedSpindle } from '../machining/setup-sheet.js';
import type { Dowel } from '../shop/model.js';
import { datumFor, type Datum } from './datum.js';

/** The spindle that makes a bore, and the stroke in which it does. */
export interface BoredBy {
  readonly stroke: Stroke;
  readonly spindle: LoadedSpindle;
}

/** A dowel, or whatever else holds a joint at one place, with where its two bores come from. */
export interface Tie {
  readonly face: BoredBy;
  readonly end: BoredBy;
  /** Length of a dowel, which may touch bottom in its bores; null for what cannot. */
  readonly dowelLength: Micrometres | null;
}

/** All that is needed to put one joint together out of two real panels. */
export interface JointCase {
  readonly joint: Joint;
  readonly face: Panel;
  readonly end: Panel;
  readonly ties: readonly Tie[];
  readonly front: Datum;
  readonly outside: Datum;
  /** Where the end stands on the face as drawn, along u of the end panel; null: as far as its back edge. */
  readonly contact: { readonly from: Micrometres; readonly to: Micrometres | null };
}

/** Which stroke and spindle make each hole of a panel as drawn, by the key of the hole. */
export function bitsOf(strokes: readonly Stroke[]): ReadonlyMap<string, BoredBy> {
  const found = new Map<string, BoredBy>();
  for (const stroke of strokes) {
    bore(stroke, NOTHING).forEach((hole, i) => {
      const key = holeKey(hole);
      if (!found.has(key)) found.set(key, { stroke, spindle: stroke.step.spindles[i]! });
    });
  }
  return found;
}

/** Prepares a joint; null where the strokes make no pair of bores that meet. */
export function jointCase(
  joint: Joint,
  face: Panel,
  end: Panel,
  mates: readonly Mate[],
  bits: Readonly<Record<'face' | 'end', ReadonlyMap<string, BoredBy>>>,
  dowelNamed: (name: string | null) => Dowel | null,
): JointCase | null {
  const ties = mates.flatMap((mate): Tie[] => {
    const [inFace, inEnd] = [bits.face.get(holeKey(mate.face)), bits.end.get(holeKey(mate.end))];
    if (inFace === undefined || inEnd === undefined) return [];
    const dowel = mate.end.purpose === 'dowel' ? dowelNamed(mate.end.fitting) : null;
    return [{ face: inFace, end: inEnd, dowelLength: dowel?.length ?? null }];
  });
  if (ties.length === 0) return null;
  const contact = contactOf(face, end);
  return { joint, face, end, ties, front: datumFor(face, end, 'u'), outside: datumFor(face, end, 't'), contact };
}

function contactOf(face: Panel, end: Panel): JointCase['contact'] {
  const corners = [
    { u: 0, v: 0, t: 0 },
    { u: face.width, v: face.length, t: face.thickness },
  ].map((corner) => toPanel(end.pose, toCarcass(face.pose, corner)).u);
  const to = Math.max(...corners);
  return { from: Math.max(0, Math.min(...corners)), to: to < end.width ? to : null };
}
