import { optional, required, usually } from '../schema/fields.js';
import { count, length, list, number, record, span } from '../schema/schema.js';
import { price } from '../fittings/price.js';

const cupScrews = record('cup screws', 'The two screws beside the cup that hold the hinge to the door.', {
  apart: required(
    length('From the one to the other, along the edge of the door; half of it to each side of the cup.', 10, 120),
  ),
  behind: required(length('How much further from the edge of the door than the centre of the cup.', 0, 40)),
  diameter: required(length('Diameter of their bores.', 1, 15)),
  depth: required(length('Depth of these bores.', 2, 30)),
});

/** A hinge whose cup is bored into the door, and whose plate is screwed onto the upright. */
export const hinge = record('hinge', 'A hinge with a cup in the door and a plate on the side.', {
  'cup-diameter': required(length('Diameter of the cup.', 10, 60)),
  'cup-depth': required(length('Depth of the cup’s bore.', 3, 40)),
  distance: required(span('Minimum to maximum distance from the edge of the door to the centre of the cup.', 5, 100)),
  'usual-distance': required(length('The distance that is taken unless the overlay asks for another one.', 5, 100)),
  arms: required(
    list(
      'For each arm that the hinge comes with: how far the centre of the cup stands from the face under the plate, with a plate of height 0; of a front that slants, along that.',
      length('From the face under the plate to the centre of the cup.', -50, 100),
      6,
    ),
  ),
  plates: required(list('Heights of the plates that the shop has.', length('Height of a plate.', 0, 40), 12)),
  'cup-screws': optional(cupScrews),
  setback: required(
    length('From the front edge to the screws of the plate; behind an inset door by its thickness more.', 5, 200),
  ),
  'plate-pitches': usually(count('How many pitches the two screws of the plate stand apart.', 1, 3), 1),
  'plate-diameter': required(length('Diameter of the bores for the screws of the plate.', 1, 15)),
  'plate-depth': required(length('Depth of these bores.', 3, 60)),
  'body-height': required(length('Height that hinge and plate need, half of it above the centre of the cup.', 10, 300)),
  'body-depth': required(length('How far hinge and plate reach back from the door.', 10, 300)),
  rating: optional(
    number(
      'How heavy a door may be for each hinge that it hangs on, in kilograms; not checked when left out.',
      0.1,
      200,
      'kilograms',
    ),
  ),
  slant: usually(
    number(
      'By how many degrees the fronts that it is made for slant away from one square to the side, as across a corner; 0 for those that do not.',
      0,
      80,
      'degrees',
    ),
    0,
  ),
  opening: usually(number('How far the door opens, in degrees.', 30, 270, 'degrees'), 110),
  'axis-from-edge': usually(
    length('From the hinge edge of the door to the line that it turns about; negative beyond the edge.', -60, 60),
    0,
  ),
  'axis-from-front': usually(
    length(
      'From the outside face of the door to the line that it turns about; negative in front of the door.',
      -60,
      60,
    ),
    0,
  ),
  price,
});
