import type { Around } from '../hung/angles.js';
import type { FrontAngle } from '../hung/model.js';
import type { Panel } from '../carcass/model.js';
import type { Shop } from '../shop/model.js';
import { answerOf } from '../shop/watched.js';
import { half, type Micrometres } from '../length/units.js';
import { takesScrew } from './in-row.js';
import { isFace } from './surface.js';
import type { Bore } from './model.js';

/**
 * The bores for the angles of fronts that do not move: in the fronts, and in what stands behind them. A screw that comes on a hole of
 * a row that takes it needs no bore of its own. A filler narrower than the usual head takes is not bored: its screws are driven by
 * hand through the angle, when it has been fitted to the wall (common practice, no source).
 * @param rows the holes of the rows of the carcass
 */
export function boreAngles(angles: readonly FrontAngle[], rows: readonly Bore[], shop: Shop): readonly Bore[] {
  return angles.flatMap((one) => [
    ...(headTooWideFor(one.front, shop) === null ? inFront(one) : []),
    ...behind(one).filter((bore) => !isInRow(bore, rows)),
  ]);
}

/** The usual vertical head where it takes no filler of such a width, and the least that it takes; null where it takes it. */
export function headTooWideFor(
  { role, width }: Pick<Panel, 'role' | 'width'>,
  shop: Shop,
): { readonly machine: string; readonly least: Micrometres } | null {
  if (role !== 'filler') return null;
  // Of all the machines of a shop no more counts than this.
  return answerOf(shop, `taken\n${width}`, ({ machines, habits }) => {
    const head = habits.machines.faces === null ? undefined : machines.get(habits.machines.faces);
    const least = head?.kind === 'vertical' ? (head.panel.width?.min ?? 0) : 0;
    return head === undefined || width >= least ? null : { machine: head.name, least };
  });
}

const isInRow = (bore: Bore, rows: readonly Bore[]): boolean => rows.some((hole) => takesScrew(hole, bore));

function inFront({ id, angle, front, frontHoles, place }: FrontAngle): readonly Bore[] {
  return frontHoles.map((at, i) => ({
    id: `${id}:${i + 1}`,
    panel: front.key,
    face: 'inside',
    ...at,
    diameter: angle.frontDiameter,
    depth: angle.frontDepth,
    through: false,
    purpose: 'angle-in-front',
    group: id,
    fitting: angle.name,
    place,
  }));
}

function behind({ id, angle, on, face, holes, place }: FrontAngle): readonly Bore[] {
  return holes.map((at, i) => ({
    id: `${on.key}:${id}:${i + 1}`,
    panel: on.key,
    face,
    ...at,
    diameter: angle.diameter,
    depth: angle.depth,
    through: false,
    purpose: 'angle',
    group: id,
    fitting: angle.name,
    place,
  }));
}

/**
 * Whether screws in a face of a panel keep clear of the bores in its faces, or find holes of rows that take them.
 * @param bores those that the panels have already
 */
export function keepClearOf(bores: readonly Bore[], leastWall: Micrometres): Around['isFree'] {
  const inFaces = bores.filter(({ face }) => isFace(face));
  return ({ panel, face, holes, diameter, depth }) => {
    const near = inFaces.filter((bore) => bore.panel === panel.key);
    return holes.every((hole) =>
      near.every((bore) => {
        if (takesScrew(bore, { panel: panel.key, face, ...hole, diameter, depth })) return true;
        if (bore.face !== face && bore.depth + depth + leastWall <= panel.thickness) return true;
        const clear = half(bore.diameter) + half(diameter) + leastWall;
        return Math.abs(bore.u - hole.u) >= clear || Math.abs(bore.v - hole.v) >= clear;
      }),
    );
  };
}
