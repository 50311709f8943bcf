import { optional, required, usually } from '../schema/fields.js';
import { choice, flag, length, record } from '../schema/schema.js';
import { price } from '../fittings/price.js';

/** What a door or a drawer is opened by: held by two screws, or by one. */
export const pull = record('pull', 'A pull, or a knob, of doors and drawer fronts.', {
  spacing: usually(length('From the one screw to the other; 0 for a knob, which has but one.', 0, 2000), 0),
  diameter: required(length('Diameter of the bores for its screws.', 1, 20)),
  depth: optional(length('Depth of these bores; they go through when left out.', 3, 60)),
  face: usually(
    choice('The face that they are bored from.', {
      outside: 'The outside face, so that it stays clean.',
      inside: 'The inside face.',
    }),
    'outside',
  ),
  'through-box': usually(
    flag('Whether its screws go through the front of a drawer’s box too, so that this is bored with the drawer front.'),
    true,
  ),
  length: optional(
    length('Overall length; as far as its screws stand apart, and its width more, when left out.', 3, 3000),
  ),
  width: usually(length('Overall width.', 3, 300), 15_000),
  projection: usually(length('How far it stands out from the front.', 0, 200), 30_000),
  head: usually(length('Diameter of the heads of its screws.', 2, 30), 9000),
  'head-height': usually(length('How high these heads are.', 0, 20), 3000),
  price,
});
