import type { RailSocket, WardrobeRailAt } from '../hung/model.js';
import type { Micrometres } from '../length/units.js';
import { takesScrew } from './in-row.js';
import type { Bore } from './model.js';

/**
 * The bores for the sockets of wardrobe rails, in the uprights. A screw that comes on a hole of a row that takes it needs no bore of
 * its own. Where two rails want one place of a divider from both faces, one bore goes through for both; nothing is bored beside an
 * upright.
 * @param rows the holes of the rows of the carcass
 */
export function boreWardrobeRails(rails: readonly WardrobeRailAt[], rows: readonly Bore[]): readonly Bore[] {
  const all = rails.flatMap((one) => one.sockets.flatMap((socket, end) => inUpright(one, socket, end)));
  const made: Bore[] = [];
  for (const { bore, thickness } of all) {
    if (rows.some((hole) => takesScrew(hole, bore)) || made.some((hole) => takesScrew(hole, bore))) continue;
    const across = all.some((other) => isBehind(other.bore, bore));
    made.push(across ? { ...bore, face: 'inside', depth: thickness, through: true } : bore);
  }
  return made;
}

function isBehind(other: Bore, { panel, face, u, v, diameter }: Bore): boolean {
  return other.panel === panel && other.face !== face && other.u === u && other.v === v && other.diameter === diameter;
}

interface Wanted {
  readonly bore: Bore;
  readonly thickness: Micrometres;
}

function inUpright(
  { key, rail, at }: WardrobeRailAt,
  { upright, face, holes, isOn }: RailSocket,
  end: number,
): readonly Wanted[] {
  if (!isOn) return [];
  return holes.map((hole, i) => ({
    thickness: upright.thickness,
    bore: {
      id: `${upright.key}:${key}:${end === 0 ? 'left' : 'right'}-${i + 1}`,
      panel: upright.key,
      face,
      ...hole,
      diameter: rail.diameter,
      depth: rail.depth,
      through: false,
      purpose: 'rail-socket',
      group: key,
      fitting: rail.name,
      place: at.place,
    },
  }));
}
