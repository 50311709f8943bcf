import { price } from '../fittings/price.js';
import { required, usually } from '../schema/fields.js';
import { choice, length, record } from '../schema/schema.js';

/** What clothes hang on: a rail between two sockets, one on each of two uprights. */
export const wardrobeRail = record(
  'wardrobe rail',
  'A rail for clothes, between two sockets that are screwed to uprights.',
  {
    width: required(length('Size of the rail from front to back.', 5, 100)),
    height: required(length('Height of the rail itself.', 5, 100)),
    spacing: usually(length('From the one screw of a socket to the other; 0 where it has but one.', 0, 200), 0),
    lies: usually(
      choice('How the two screws of a socket stand.', {
        upright: 'One over the other.',
        level: 'One behind the other.',
      }),
      'upright',
    ),
    diameter: required(length('Diameter of the bores for these screws.', 1, 20)),
    depth: required(length('Depth of these bores.', 3, 60)),
    play: usually(
      length('How much shorter than the opening the rail is at each end, for the floor of its socket.', 0, 50),
      2000,
    ),
    over: usually(length('Room over the rail that is needed to lift a coat hanger off it.', 0, 300), 30_000),
    hanger: usually(length('Width of the coat hangers, across which the carcass must be deep.', 0, 1000), 450_000),
    price,
  },
);
