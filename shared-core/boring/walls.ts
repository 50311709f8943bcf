import { isFace } from './surface.js';
import type { EdgeName } from '../job/model.js';
import type { CornerCut, Panel } from '../carcass/model.js';
import { half, type Micrometres } from '../length/units.js';
import type { Bore } from './model.js';

/** What bounds the surface that a bore enters: four edges of a face, and that of a cut corner; two edges and two faces of an end. */
export type Border = EdgeName | 'cut' | 'outside' | 'inside';

/** Wood left around one bore of a panel. Negative where the bore runs out of it. Grooves are not counted. */
export interface Walls {
  /** From the bore's rim to each border of the surface that it enters, rounded down to the micrometre. */
  readonly beside: readonly { readonly border: Border; readonly wall: Micrometres }[];
  /** From the bore's floor to the other side; null for a through bore. */
  readonly under: Micrometres | null;
}

/** The wood between a bore and all that bounds it, in micrometres of the panel's frame. */
export function wallsAround(panel: Panel, bore: Bore): Walls {
  const rim = bore.diameter - half(bore.diameter);
  const onFace = isFace(bore.face);
  const [low, high]: readonly [Border, Border] = onFace ? ['reference-end', 'far-end'] : ['outside', 'inside'];
  const across = onFace ? panel.length : panel.thickness;
  const deep = onFace ? panel.thickness : panel.length;
  return {
    beside: [
      { border: 'front', wall: bore.u - rim },
      { border: 'back', wall: panel.width - bore.u - rim },
      { border: low, wall: bore.v - rim },
      { border: high, wall: across - bore.v - rim },
      ...(onFace && panel.corner !== undefined
        ? [{ border: 'cut' as const, wall: Math.floor(fromCut(panel, panel.corner, bore)) - rim }]
        : []),
    ],
    under: bore.through ? null : deep - bore.depth,
  };
}

/** How far behind the line of the cut a place of a face stands; negative in what is cut off. */
function fromCut({ length }: Panel, { end, u, v }: CornerCut, at: Pick<Bore, 'u' | 'v'>): number {
  const fromEnd = end === 'reference-end' ? at.v : length - at.v;
  return (at.u * v + fromEnd * u - u * v) / Math.hypot(u, v);
}
