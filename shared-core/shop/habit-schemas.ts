import { optional, orBefore, orEmpty } from '../schema/fields.js';
import { count, flag, length, list, name, number, record } from '../schema/schema.js';

export const kindSize = record('size', 'Usual size of this kind of carcass.', {
  height: optional(length('Height, without plinth.', 50, 5000)),
  pitches: orBefore(
    count('Number of pitches in the height. To them come the thicknesses that balance the row.', 2, 200),
  ),
  depth: orBefore(length('Depth.', 50, 3000)),
  batch: optional(
    count(
      'How many of this kind are usually bored in one go. Where it is said of any kind, dowels are weighed against changed bits by the shop’s own times, and the load of bits that joints share is the one that takes the least time for such a batch; else it is the one with the fewest set-ups. It counts with `share-places: yes`.',
      1,
      1000,
    ),
  ),
});

const sizesByKind = {
  base: orEmpty(kindSize),
  wall: orEmpty(kindSize),
  tall: orEmpty(kindSize),
  'for-drawers': orEmpty(kindSize),
  open: orEmpty(kindSize),
};

const frontScrews = record('front screws', 'The screws that hold the front of a drawer to its box.', {
  clearance: orBefore(length('Diameter of the holes through the front of the box.', 1, 15)),
  pilot: orBefore(length('Diameter of the bores in the drawer front.', 1, 15)),
  depth: orBefore(length('Depth of the bores in the drawer front.', 3, 30)),
  'from-end': orBefore(length('From the ends of the front of the box to the screws.', 10, 300)),
  'from-edge': orBefore(length('From the upper edge of the box to the upper screws.', 10, 300)),
});

export const habits = record('habits', 'What the shop does unless a job says otherwise.', {
  board: orBefore(name('board', 'Usual board.')),
  'back-board': orBefore(name('board', 'Usual board of backs.')),
  band: orBefore(name('band', 'Usual band of front edges.')),
  joint: orBefore(name('fitting', 'The usual fitting that holds joints.')),
  sizes: orEmpty(record('sizes', 'Usual sizes by kind.', sizesByKind, { drawer: 'for-drawers' })),
  machines: orEmpty(
    record('machines', 'Usual machines.', {
      faces: optional(name('machine', 'Vertical head for construction bores in faces.')),
      ends: optional(name('machine', 'Horizontal head for construction bores in ends.')),
      rows: optional(name('machine', 'Line drill for rows.')),
      cups: optional(name('machine', 'Cup borer.')),
      clamp: optional(name('machine', 'Case clamp.')),
      saw: optional(name('machine', 'Panel saw.')),
    }),
  ),
  pitch: orBefore(length('Pitch of rows.', 10, 100)),
  setback: orBefore(length('Usual row setback: from the front edge to the front row.', 5, 300)),
  'row-diameter': orBefore(length('Diameter of row holes.', 2, 15)),
  'row-depth': orBefore(length('Depth of row holes.', 3, 60)),
  'row-offset': optional(
    length('First hole of a row, from the bottom end; half the nominal thickness of the board when left out.', 1, 500),
  ),
  'rear-margin': orBefore(
    length(
      'Minimum distance from the groove of the back to the rear row, from the back edge where there is none; with `share-places` every back counts as the usual one. The row stands whole pitches behind the front row.',
      5,
      500,
    ),
  ),
  'first-dowel': orBefore(length('Distance from the front edge to the first construction bore.', 8, 500)),
  'dowel-spacing': orBefore(length('Maximum distance between neighbouring construction bores.', 32, 1000)),
  'share-places': orBefore(
    flag(
      'Whether joints of all depths take their construction bores from one load of bits, which reads the same from both ends of the heads. Fewer set-ups then serve them, at the price of a few more dowels; rear rows stand as with the usual back.',
    ),
  ),
  'shared-load': optional(
    list(
      'The load of bits that joints share, where the owner has chosen one; worked out when left out. It counts with `share-places: yes`.',
      count('A spindle that carries a bit, counted from 1 at the front edge.', 1, 100),
    ),
  ),
  'spare-holes': orBefore(
    flag(
      'Whether, where places are shared, a side is bored between two rails as under a full panel, so that rails need no load of their own. Nothing enters these bores.',
    ),
  ),
  'glue-gap': orBefore(length('How much deeper the two bores of a dowel are than the dowel is long.', 0, 5)),
  'least-wall': orBefore(length('Minimum thickness of wood under a bore, beside it, and between two bores.', 0.5, 20)),
  'through-allowance': orBefore(
    length('How far a bit that bores through goes on into the board under the panel.', 0, 20),
  ),
  'rail-width': orBefore(length('Usual width of rails.', 40, 400)),
  'groove-depth': orBefore(length('Depth of the groove of a back.', 1, 30)),
  'groove-play': orBefore(length('How much wider the groove of a back is than the back is thick.', 0, 2)),
  'back-play': orBefore(
    length('How much shorter and narrower a back is than the room in its grooves or rebates.', 0, 10),
  ),
  'back-inset': orBefore(
    length('Distance from the back edges to a back in a groove; the play of the groove is behind the back.', 0, 100),
  ),
  'offcut-length': orBefore(length('Minimum length of an offcut that is kept.', 0, 5000)),
  'offcut-width': orBefore(length('Minimum width of an offcut that is kept.', 0, 5000)),
  'band-allowance': orBefore(
    length('Band that is counted beyond the length of each edge, as it overhangs at both ends.', 0, 500),
  ),
  'shelf-gap': orBefore(length('Play of a loose shelf at each end.', 0, 10)),
  'shelf-setback': orBefore(
    length('Usual shelf setback of a loose shelf: from the front of the carcass to its front edge.', 0, 100),
  ),
  hinge: orBefore(name('hinge', 'The usual hinge of doors; `none` bores for none.')),
  'hinge-end': orBefore(
    length('Usual distance from the upper and the lower end of a door to the centre of its next hinge.', 20, 1000),
  ),
  'hinges-by-height': orBefore(
    list(
      'Heights of doors, in rising order: up to the first a door has two hinges, up to the next three, and so on.',
      length('Height of a door.', 100, 5000),
      12,
    ),
  ),
  'door-gap': orBefore(length('Usual gap between two doors, and all round an inset door.', 0, 20)),
  'door-reveal': orBefore(
    length(
      'How much of each side an overlay door usually leaves to be seen: from the outside of the carcass to its edge.',
      0,
      100,
    ),
  ),
  'door-top-reveal': orBefore(
    length('The same at the top: from the upper end of the carcass down to the door.', 0, 500),
  ),
  'door-bottom-reveal': orBefore(
    length('The same at the bottom: from the lower end of the carcass up to the door.', 0, 500),
  ),
  'hinges-by-weight': orBefore(
    list(
      'Weights of doors in kilograms, in rising order: up to the first a door has two hinges, up to the next three, and so on. Of this and the height the one that asks for more counts.',
      number('Weight of a door, in kilograms.', 0.1, 500, 'kilograms'),
      12,
    ),
  ),
  'creep-factor': orBefore(
    number('How many times its first sag a shelf comes to under a load that stays for years.', 1, 10),
  ),
  'sag-limit': orBefore(length('The greatest sag of a shelf that is accepted, for each metre of its length.', 0.1, 50)),
  'bracket-rating': optional(
    number(
      'What the brackets of one wall carcass carry together, in kilograms, where the bracket does not say it; not checked when left out.',
      1,
      2000,
      'kilograms',
    ),
  ),
  'hang-height': orBefore(
    length(
      'Usual height of the lower end of a wall carcass above the floor; it shows where carcasses stand along a wall.',
      0,
      3000,
    ),
  ),
  'worktop-thickness': orBefore(
    length('Thickness of the worktop that is drawn over base carcasses along a wall; 0 for none.', 0, 200),
  ),
  'door-buffer': orBefore(length('How far an overlay door usually stands off the front edges, on its buffers.', 0, 20)),
  slide: orBefore(name('slide', 'The usual slide of drawers.')),
  pull: orBefore(name('pull', 'The usual pull of doors and drawer fronts; `none` bores for none.')),
  bracket: orBefore(name('bracket', 'The usual hanging bracket of wall carcasses; `none` bores for none.')),
  'wardrobe-rail': orBefore(name('wardrobe-rail', 'The usual rail for clothes, where a job asks for one.')),
  foot: orBefore(name('foot', 'The usual foot of carcasses on a plinth; `none` bores for none.')),
  angle: orBefore(
    name(
      'angle',
      'The usual angle that fixed fronts, blind panels and fillers are screwed on with; `none` bores for none.',
    ),
  ),
  'pull-from-edge': orBefore(
    length('Usual distance from the edge of a door that opens to the nearest screw of its pull.', 5, 1000),
  ),
  'pull-from-end': orBefore(
    length('Usual distance from the top or the bottom end of a door to the nearest screw of its pull.', 5, 2000),
  ),
  'hand-height': orBefore(
    length(
      'Height above the floor at which a door is taken hold of: where that is in its middle third, its pull stands there, else near the end that is nearer to it.',
      300,
      2000,
    ),
  ),
  'two-pulls-from': optional(
    length('Width of a drawer front from which on it has two pulls; always one when left out.', 200, 5000),
  ),
  'drawer-groove': orBefore(
    length('From the lower edge of a drawer’s sides up to the groove of its bottom, where that is grooved.', 3, 60),
  ),
  'front-screws': orEmpty(frontScrews),
});

export const changeover = record('changeover', 'What a change costs, in seconds.', {
  stop: orBefore(number('To set one stop.', 0, 3600, 'seconds')),
  fence: orBefore(number('To set a fence, a head or its height.', 0, 3600, 'seconds')),
  bit: orBefore(number('To put in or take out one bit.', 0, 3600, 'seconds')),
  depth: orBefore(number('To change the depth stop.', 0, 3600, 'seconds')),
  'turn-head': orBefore(number('To turn a head level or upright.', 0, 3600, 'seconds')),
  extension: orBefore(number('To put on or take off the fence extension.', 0, 3600, 'seconds')),
  machine: orBefore(number('To go to another machine.', 0, 3600, 'seconds')),
});

export const handling = record('handling', 'How long the boring of panels takes, in seconds.', {
  panel: orBefore(
    number('To pick up a panel, lay it against the stop for the first time, and put it away.', 0, 3600, 'seconds'),
  ),
  lay: orBefore(number('To lay it again: turned, or slid to another stop.', 0, 3600, 'seconds')),
  stroke: orBefore(number('For one stroke, with clamping.', 0, 3600, 'seconds')),
  'index-move': orBefore(number('To move a panel along by an index move.', 0, 3600, 'seconds')),
});

export const tolerances = record('tolerances', 'How far real panels and machines deviate, plus or minus.', {
  thickness: orBefore(length('Thickness of a board.', 0, 5)),
  width: orBefore(length('Width of a cut panel.', 0, 5)),
  length: orBefore(length('Length of a cut panel.', 0, 5)),
  squareness: orBefore(length('Out of square, over one metre.', 0, 10)),
  stop: orBefore(length('Repeatability of a stop or fence.', 0, 5)),
  drill: orBefore(length('How far a bit wanders from the centre of its spindle.', 0, 5)),
  'dowel-play': orBefore(length('Play of a dowel in its bores.', 0, 5)),
  'front-limit': orBefore(length('Maximum offset allowed at a front edge.', 0, 10)),
  'step-limit': orBefore(length('Maximum step allowed at an outside face.', 0, 10)),
  'gap-limit': orBefore(length('Maximum gap allowed in a joint.', 0, 10)),
});
