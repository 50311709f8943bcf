import { price } from '../fittings/price.js';
import { optional, required, usually } from '../schema/fields.js';
import { length, number, record, span } from '../schema/schema.js';

const clip = record('plinth clip', 'What holds the plinth to the front feet.', {
  'from-top': required(length('From the upper edge of the plinth to its screws.', 5, 300)),
  spacing: usually(length('From the one screw to the other, side by side; 0 where it has but one.', 0, 200), 0),
  diameter: required(length('Diameter of the bores for its screws.', 1, 20)),
  depth: required(length('Depth of these bores.', 3, 40)),
});

/** What a carcass on a plinth stands on: two rows of them under its bottom. */
export const foot = record('foot', 'A foot under the bottom of carcasses that have a plinth.', {
  range: required(span('Least and greatest height that it can be set to.', 5, 500)),
  'from-front': required(length('From the front of the carcass to the centres of the front feet.', 5, 500)),
  'from-back': required(length('From the back of the carcass to the centres of the rear feet.', 5, 500)),
  'from-side': required(length('From the outside of the carcass to the centres of the outer feet.', 5, 500)),
  apart: required(length('Greatest distance between two feet of a row; wider carcasses have more of them.', 100, 3000)),
  spacing: usually(
    length('From screw to screw of a foot, which has four in a square; 0 where it has one bore.', 0, 200),
    0,
  ),
  diameter: required(length('Diameter of its bores in the bottom.', 1, 40)),
  depth: required(length('Depth of these bores.', 3, 60)),
  base: usually(length('Diameter of the room that it takes under the bottom.', 5, 300), 60_000),
  rating: optional(number('What one foot carries, in kilograms; not checked when left out.', 1, 2000, 'kilograms')),
  clip: optional(clip),
  price,
});
