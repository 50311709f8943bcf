import { price } from '../fittings/price.js';
import { optional, required, usually } from '../schema/fields.js';
import { length, list, number, record } from '../schema/schema.js';

const bracketHole = record('bracket bore', 'One bore of a hanging bracket in the inside face of a side.', {
  'from-top': required(length('From the upper end of the side.', 1, 1000)),
  'from-back': required(length('From the back edge of the side.', 1, 1000)),
});

/** What a wall carcass hangs by: one in each side, which takes hold of something at the wall. */
export const bracket = record('bracket', 'A hanging bracket of wall carcasses: one in each side.', {
  holes: required(list('Its bores in the side.', bracketHole, 12)),
  diameter: required(length('Diameter of these bores.', 1, 40)),
  depth: required(length('Depth of these bores.', 3, 60)),
  rating: optional(
    number('What a pair of them carries, in kilograms; not checked when left out.', 1, 2000, 'kilograms'),
  ),
  height: usually(length('Overall height, its bores in the middle of it.', 3, 500), 60_000),
  reach: usually(length('Overall size from front to back, its bores in the middle of it.', 3, 500), 40_000),
  width: usually(length('How far it stands out from the side into the carcass.', 0, 200), 20_000),
  price,
});
