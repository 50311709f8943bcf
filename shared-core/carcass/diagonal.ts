import type { Micrometres } from '../length/units.js';
import type { JobCarcass } from '../job/model.js';
import type { Hand } from '../shop/model.js';
import { handsSaid } from './hands.js';
import type { CornerCut, Diagonal } from './model.js';
import type { Spot } from './turn.js';

/** Whether a carcass is to stand across a corner. */
export const isDiagonal = ({ diagonal }: Pick<JobCarcass, 'diagonal'>): boolean => handsSaid(diagonal).length > 0;

/** The figures of a carcass across a corner; null for any other. Where there is no room for a front they are not positive. */
export function diagonalOf(spec: Pick<JobCarcass, 'diagonal' | 'width' | 'depth'>): Diagonal | null {
  const [hand] = handsSaid(spec.diagonal);
  if (hand === undefined) return null;
  const [width, depth] = [spec.width.value, spec.depth.value];
  const [across, out] = [width - depth, spec.diagonal[hand]!.value - depth];
  const degrees = (Math.atan2(out, across) * 180) / Math.PI;
  return {
    hand,
    across,
    out,
    long: Math.round(Math.hypot(across, out)),
    turn: hand === 'right' ? { at: { x: 0, y: 0 }, degrees: -degrees } : { at: { x: depth, y: 0 - out }, degrees },
  };
}

/** How far a carcass across a corner reaches along the other wall, as it is written; of any other nothing is. */
export const reachOf = ({ diagonal }: Pick<JobCarcass, 'diagonal'>): JobCarcass['diagonal']['left'] =>
  diagonal.left ?? diagonal.right;

/** The front edges of a bottom across a corner, seen from above, from its left end to its right one. */
export function frontLine({ hand, across, out }: Diagonal, width: Micrometres): readonly Spot[] {
  return hand === 'right'
    ? [
        { x: 0, y: 0 },
        { x: across, y: -out },
        { x: width, y: -out },
      ]
    : [
        { x: 0, y: -out },
        { x: width - across, y: -out },
        { x: width, y: 0 },
      ];
}

/** The end of a panel that lies, at which its front corner is cut off. */
export const cutEnd = ({ hand }: Diagonal): CornerCut['end'] => (hand === 'right' ? 'reference-end' : 'far-end');

/**
 * By how many degrees the front slants away from one that is square to the side of a hand. A quarter less what it slants from the
 * other.
 */
export function slantAt({ hand, turn }: Diagonal, side: Hand): number {
  const fromFirst = Math.abs(turn.degrees);
  return side === hand ? 90 - fromFirst : fromFirst;
}

/** No saw is set finer than to a tenth of a millimetre; rounded so that less wood is left. */
const roundedUp = (length: number): Micrometres => Math.ceil(length / TENTH - 1e-6) * TENTH;
const TENTH: Micrometres = 100;

/**
 * How far from the end of the diagonal at a side a front begins, along the front, so that it leaves a reveal of that side and
 * nothing of it stands before the neighbour: its outer face lies so far before the diagonal.
 */
export function frontBegins(diagonal: Diagonal, side: Hand, reveal: Micrometres, before: Micrometres): Micrometres {
  const slant = (slantAt(diagonal, side) * Math.PI) / 180;
  return roundedUp((reveal + before * Math.sin(slant)) / Math.cos(slant));
}

/**
 * The legs of the cut of a panel whose straight edges stand so far inside those of the bottom, its slanting one so far behind the
 * diagonal: along u of the panel, and along v.
 * @param inside from the end that is cut, and from the front edge
 */
export function cutBehind(
  { across, out }: Diagonal,
  inside: { readonly end: Micrometres; readonly front: Micrometres },
  behind: Micrometres,
): { readonly u: Micrometres; readonly v: Micrometres } {
  // The line is x * out + y * across = behind * hypot, x from the end, y from the front edges of the neighbours.
  const far = behind * Math.hypot(across, out);
  return {
    u: roundedUp((far - inside.end * out) / across + out - inside.front),
    v: roundedUp((far - inside.front * across) / out + across - inside.end),
  };
}
