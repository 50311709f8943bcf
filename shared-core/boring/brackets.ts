import type { SideBracket } from '../hung/model.js';
import { takesScrew } from './in-row.js';
import type { Bore } from './model.js';

/**
 * The bores for hanging brackets in the inside faces of the sides. One that comes on a hole of a row that takes its screw needs no
 * bore of its own.
 * @param rows the holes of the rows of the carcass
 */
export function boreBrackets(brackets: readonly SideBracket[], rows: readonly Bore[]): readonly Bore[] {
  return brackets
    .filter(({ isOn }) => isOn)
    .flatMap(({ id, side, bracket, holes, place }) =>
      holes.map((at, i): Bore => ({
        id: `${id}:${i + 1}`,
        panel: side.key,
        face: 'inside',
        ...at,
        diameter: bracket.diameter,
        depth: bracket.depth,
        through: false,
        purpose: 'bracket',
        group: id,
        fitting: bracket.name,
        place,
      })),
    )
    .filter((bore) => !rows.some((hole) => takesScrew(hole, bore)));
}
