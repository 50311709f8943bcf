import { isFace } from './surface.js';
import type { EdgeName } from '../job/model.js';
import type { CornerCut, Panel } from '../carcass/model.js';
import { half, type Micrometres } from '../length/units.js';
import type { Bore } from './model.js';

/** What bounds the surface that a bore enters: four edges of a face, and that of a cut corner; two edges and two faces of an end. */
export type Border = EdgeName | 'cut' | 'outside' | 'inside';

/** Wood between the rim of a bore and a border of its surface. Negative where the bore runs out of it. */
export interface WallBeside {
  readonly border: Border;
  /** Rounded down to the micrometre. */
  readonly wall: Micrometres;
}

/** The wood from a bore's rim to each border of the surface that it enters, in micrometres of the panel's frame; grooves are not counted. */
export function wallsBeside(panel: Panel, bore: Bore): readonly WallBeside[] {
  const rim = bore.diameter - half(bore.diameter);
  const onFace = isFace(bore.face);
  const across = onFace ? panel.length : panel.thickness;
  const walls: WallBeside[] = [
    { border: 'front', wall: bore.u - rim },
    { border: 'back', wall: panel.width - bore.u - rim },
    { border: onFace ? 'reference-end' : 'outside', wall: bore.v - rim },
    { border: onFace ? 'far-end' : 'inside', wall: across - bore.v - rim },
  ];
  if (onFace && panel.corner !== undefined)
    walls.push({ border: 'cut', wall: Math.floor(fromCut(panel, panel.corner, bore)) - rim });
  return walls;
}

/** The wood from a bore's floor to the other side, in micrometres; negative where it comes out there, null for a through bore. */
export function wallUnder({ thickness, length }: Panel, { face, depth, through }: Bore): Micrometres | null {
  return through ? null : (isFace(face) ? thickness : length) - depth;
}

/** How far behind the line of the cut a place of a face stands; negative in what is cut off. */
function fromCut({ length }: Panel, { end, u, v }: CornerCut, at: Pick<Bore, 'u' | 'v'>): number {
  const fromEnd = end === 'reference-end' ? at.v : length - at.v;
  return (at.u * v + fromEnd * u - u * v) / Math.hypot(u, v);
}
