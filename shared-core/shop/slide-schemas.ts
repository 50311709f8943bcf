import { price } from '../fittings/price.js';
import { orEmpty, required, usually } from '../schema/fields.js';
import { length, list, number, record } from '../schema/schema.js';

const places = (about: string) => list(about, length('From the front.', 0, 2000), 20);

const slideLength = record('length of a slide', 'One length that a slide comes in, with its holes.', {
  length: required(length('Length of the slide; the drawer’s box is as long.', 100, 2000)),
  holes: required(
    places(
      'Where its screws stand in the sides of the carcass, from the front edge; behind an inset front by its thickness more.',
    ),
  ),
  'box-holes': orEmpty(places('Where its screws stand in the sides of the drawer, from their front end.')),
});

/** A pair of slides that a drawer runs on, screwed to the uprights at both sides of it. */
export const slide = record('slide', 'A pair of slides for a drawer.', {
  lengths: required(list('The lengths that it comes in.', slideLength, 30)),
  'side-clearance': required(
    length('Room that it takes at each side, from the upright to the side of the drawer.', 0, 60),
  ),
  'height-offset': required(
    length('From the lower edge of the drawer’s box up to the line of the screws in the uprights.', -50, 300),
  ),
  'box-offset': usually(
    length('From the lower edge of the drawer’s box up to the line of the screws in the sides of the drawer.', 0, 300),
    0,
  ),
  under: required(length('Minimum room under the drawer’s box.', 0, 100)),
  over: required(length('Minimum room over the drawer’s box, so that it can be lifted in.', 0, 100)),
  behind: required(length('Minimum room behind the drawer’s box.', 0, 200)),
  'body-height': required(length('Height that it needs, half of it above the line of the screws.', 5, 300)),
  diameter: required(length('Diameter of the bores in the uprights.', 1, 15)),
  depth: required(length('Depth of these bores.', 3, 60)),
  'box-diameter': usually(length('Diameter of the bores in the sides of the drawer.', 1, 15), 3000),
  'box-depth': usually(length('Depth of these bores.', 3, 60), 8000),
  rating: required(number('What the pair of them carries, drawer and load, in kilograms.', 1, 500, 'kilograms')),
  price,
});
