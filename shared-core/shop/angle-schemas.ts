import { price } from '../fittings/price.js';
import { required, usually } from '../schema/fields.js';
import { length, record } from '../schema/schema.js';

/** What fronts that do not move are screwed on with: it lies in the corner behind them, one leg on the front. */
export const angle = record('angle', 'An angle that a front which does not move is screwed on with, from inside.', {
  'in-front': required(
    length('From the face of the upright, or of the bottom or top, to its screws in the front.', 3, 200),
  ),
  'behind-front': required(
    length('From the inside face of the front to its screws in the upright, or in the bottom or top.', 3, 200),
  ),
  spacing: usually(length('From screw to screw of one leg, along the corner; 0 where it has but one.', 0, 200), 0),
  'from-end': required(length('From an end of the front to the middle of the next one, or a little more.', 10, 500)),
  apart: required(length('Greatest distance between two of them; higher fronts have more of them.', 50, 3000)),
  diameter: required(length('Diameter of its bores in the upright, or in the bottom or top.', 1, 20)),
  depth: required(length('Depth of these bores.', 3, 40)),
  'front-diameter': required(length('Diameter of its bores in the front.', 1, 20)),
  'front-depth': required(length('Depth of its bores in the front.', 3, 40)),
  height: usually(length('Overall size along the corner, its screws in the middle of it.', 3, 500), 52_000),
  reach: usually(length('How far its legs reach from the corner.', 3, 300), 50_000),
  price,
});
