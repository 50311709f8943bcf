import type { Panel } from '../carcass/model.js';
import { toCarcass, toPanel } from '../carcass/pose.js';
import type { Micrometres } from '../length/units.js';

/** Where an end stands on a face as drawn, along u of the end panel; `to` null: as far as its back edge. */
export interface Contact {
  readonly from: Micrometres;
  readonly to: Micrometres | null;
}

/** Where the end of one panel stands on a face of another, both as drawn. */
export function contactOf(face: Panel, end: Panel): Contact {
  const corners = [
    { u: 0, v: 0, t: 0 },
    { u: face.width, v: face.length, t: face.thickness },
  ].map((corner) => toPanel(end.pose, toCarcass(face.pose, corner)).u);
  const to = Math.max(...corners);
  return { from: Math.max(0, Math.min(...corners)), to: to < end.width ? to : null };
}
