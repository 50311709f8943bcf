import type { HungDoor, HungHinge } from '../hung/model.js';
import type { Bore } from './model.js';
import { takesScrew } from './in-row.js';

/**
 * The bores that hinges need: a cup in the door, with the screws beside it, and the screws of the plate in the upright, all from the hinge's one centre
 * line. A screw that comes on a hole of a row that takes it needs no bore of its own.
 * @param rows the holes of the rows of the carcass
 */
export function boreHinges(hung: readonly HungDoor[], rows: readonly Bore[]): readonly Bore[] {
  return hung.flatMap((one) =>
    one.hinges.flatMap((hinge) => [cupOf(one, hinge), ...cupScrewsOf(one, hinge), ...platesOf(one, hinge, rows)]),
  );
}

function cupOf({ door, hinge: { name, cupDiameter, cupDepth } }: HungDoor, { id, cup }: HungHinge): Bore {
  return {
    id: `${id}:cup`,
    panel: door.key,
    face: 'inside',
    ...cup,
    diameter: cupDiameter,
    depth: cupDepth,
    through: false,
    purpose: 'cup',
    group: id,
    fitting: name,
    place: door.place,
  };
}

function cupScrewsOf({ door, hinge: { name, cupScrews: screws } }: HungDoor, hinge: HungHinge): readonly Bore[] {
  if (screws === null) return [];
  return hinge.cupScrews.map((at, i) => ({
    id: `${hinge.id}:cup-screw-${i + 1}`,
    panel: door.key,
    face: 'inside',
    ...at,
    diameter: screws.diameter,
    depth: screws.depth,
    through: false,
    purpose: 'cup-screw',
    group: hinge.id,
    fitting: name,
    place: door.place,
  }));
}

function platesOf(one: HungDoor, { id, screws }: HungHinge, rows: readonly Bore[]): readonly Bore[] {
  const { upright, face, hinge, door } = one;
  const screw = { panel: upright.key, face, diameter: hinge.plateDiameter, depth: hinge.plateDepth };
  return screws.flatMap(({ u, v }, i): readonly Bore[] =>
    rows.some((hole) => takesScrew(hole, { ...screw, u, v }))
      ? []
      : [
          {
            id: `${upright.key}:${id}:${i + 1}`,
            panel: upright.key,
            face,
            u,
            v,
            diameter: hinge.plateDiameter,
            depth: hinge.plateDepth,
            through: false,
            purpose: 'plate',
            group: id,
            fitting: hinge.name,
            place: door.place,
          },
        ],
  );
}
