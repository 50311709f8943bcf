import { SORTS_OF_FITTING } from '../fittings/kinds.js';
import { optional, required } from '../schema/fields.js';
import { choice, count, either, flag, length, list, name, named, number, record, text } from '../schema/schema.js';
import {
  TRIED_BACKS,
  TRIED_DOORS,
  TRIED_KINDS,
  TRIED_OF_CARCASS,
  TRIED_OF_DEFAULTS,
  TRIED_OF_JOB,
  TRIED_ROWS,
  TRIED_UNITS,
} from './tried-words.js';

const unitChoice = choice(
  'Unit of every bare number in this file.',
  {
    mm: 'Millimetres.',
    in: 'Inches, decimal or with fractions such as 23 5/8.',
  },
  {},
  TRIED_UNITS,
);

const rowChoice = choice(
  'Which rows of holes are bored.',
  {
    none: 'No rows.',
    front: 'The front row only.',
    both: 'Front and rear rows.',
  },
  {},
  TRIED_ROWS,
);

const bands = record('bands', 'Edge bands of this panel, edge by edge; `none` leaves an edge bare.', {
  front: optional(name('band', 'Band on the front edge, the reference of every bore.')),
  back: optional(name('band', 'Band on the back edge.')),
  'reference-end': optional(name('band', 'Band on the bottom end of an upright panel, or the left end of any other.')),
  'far-end': optional(name('band', 'Band on the top end of an upright panel, or the right end of any other.')),
});

const rowHoles = record('row holes', 'Which holes of the rows are bored, where not all of them are.', {
  bays: optional(
    list(
      'The bays that get rows, counted from the left. What is said of `rows` on a single panel comes first.',
      count('A bay.', 1, 20),
      20,
    ),
  ),
  from: optional(length('Height above the bottom end of the side from which on holes are bored.', 0, 5000)),
  to: optional(length('Height above the bottom end of the side up to which holes are bored.', 0, 5000)),
  'round-shelves': optional(
    count('How many holes are bored over and under that of each loose shelf; no others are then bored.', 0, 30),
  ),
});

const shelf = record('shelf', 'One shelf.', {
  at: required(
    length(
      'Height of the shelf’s holes above the bottom end of the side: centre line of a fixed shelf, pin holes of a loose one.',
      1,
    ),
  ),
  bay: optional(count('The bay it stands in, counted from the left; all bays when left out.', 1, 20)),
  board: optional(name('board', 'Board of this shelf.')),
  setback: optional(length('Shelf setback: from the front of the carcass to the front edge of the shelf.', 0, 500)),
});

const divider = record('divider', 'One divider.', {
  at: required(length('Place of its centre line, from the outside of the left side.', 1)),
  board: optional(name('board', 'Board of this divider.')),
});

const back = record('back', 'How the back is held.', {
  how: optional(
    choice(
      'How the back is held.',
      {
        grooved: 'In grooves, set in from the back edges.',
        rebated: 'In rebates of the back edges.',
        applied: 'On the back edges of the carcass.',
        none: 'No back.',
      },
      {},
      TRIED_BACKS,
    ),
  ),
  board: optional(name('board', 'Board of the back.')),
  groove: optional(length('Depth of the groove, or width of the rebate, in the sides.', 1, 30)),
  inset: optional(
    length(
      'Distance from the back edges of the sides to a back in a groove; the play of the groove is behind the back.',
      0,
      100,
    ),
  ),
  'open-from': optional(
    length(
      'Height above the bottom end of the side from which on the back is left out, for pipes or for air; up to the top where `open-to` is left out.',
      0,
      5000,
    ),
  ),
  'open-to': optional(
    length('Height up to which it is left out; from the bottom on where `open-from` is left out.', 0, 5000),
  ),
});

const load = record('load', 'What stands on each shelf and on the bottom, and how shelves are held.', {
  'on-shelf': optional(number('Kilograms, spread evenly over each shelf.', 0, 2000, 'kilograms')),
  'at-middle': optional(number('Kilograms that stand at the middle of each shelf.', 0, 1000, 'kilograms')),
  standard: optional(
    choice('A load that has a name, spread evenly; it is added to the kilograms.', {
      none: 'None.',
      books: 'Books: 59.5 kg for each metre (40 lb a running foot; common practice).',
      'a161-1':
        'The test load of ANSI/KCMA A161.1 for shelves: 73.2 kg for each square metre (15 lb/sq ft). No design load.',
    }),
  ),
  ends: optional(
    choice('How the ends of shelves are reckoned.', {
      lying: 'They lie on their supports, and turn as the shelf sags.',
      clamped: 'They cannot turn. Few joints are that stiff.',
    }),
  ),
  back: optional(
    choice('How the back edges of shelves are reckoned.', {
      free: 'Nothing holds them.',
      held: 'They are held along their whole length, as by screws through a back.',
    }),
  ),
  lipping: optional(
    length(
      'Height of a strip of solid wood along the front edge, as thick as the shelf and flush with its upper face.',
      5,
      200,
    ),
  ),
});

const hung = {
  none: 'No door.',
  left: 'One door, hung on the left.',
  right: 'One door, hung on the right.',
  pair: 'Two doors that meet in the middle, hung on the left and on the right.',
} as const;

const doors = record('doors', 'The doors, and how they hang.', {
  hung: optional(choice('What hangs before the whole front.', hung, {}, TRIED_DOORS)),
  bays: optional(
    list(
      'What hangs before each bay, from the left.',
      choice('What hangs before this bay.', hung, {}, TRIED_DOORS),
      20,
    ),
  ),
  how: optional(
    choice('How doors stand to the carcass.', {
      overlay: 'Before the front edges, which they cover.',
      inset: 'Between the panels, flush with the front edges.',
    }),
  ),
  board: optional(name('board', 'Board of the doors.')),
  band: optional(name('band', 'Band of all edges of the doors; `none` leaves them bare.')),
  hinge: optional(name('hinge', 'The hinge that the doors hang on; `none` bores for none.')),
  gap: optional(length('Gap between two doors, and all round an inset door.', 0, 20)),
  reveal: optional(
    length(
      'How much of each side an overlay door leaves to be seen: from the outside of the carcass to its edge.',
      0,
      100,
    ),
  ),
  'top-reveal': optional(length('The same at the top: from the upper end of the carcass down to the door.', 0, 500)),
  'bottom-reveal': optional(
    length('The same at the bottom: from the lower end of the carcass up to the door.', 0, 500),
  ),
  buffer: optional(length('How far an overlay door stands off the front edges, on its buffers.', 0, 20)),
});

const pullLies = {
  upright: 'Its screws stand one over the other.',
  level: 'Its screws stand side by side.',
} as const;

const pullEnd = {
  top: 'Near its top end.',
  bottom: 'Near its bottom end.',
  middle: 'In the middle of its height.',
} as const;

const pulls = record('pulls', 'The pulls or knobs of doors and drawer fronts, and where they stand.', {
  pull: optional(name('pull', 'The pull or the knob; `none` bores for none.')),
  'on-drawers': optional(name('pull', 'That of drawer fronts, where it is another one.')),
  lies: optional(choice('How pulls lie on doors; on drawer fronts they lie level.', pullLies)),
  end: optional(choice('Where in the height of a door its pull stands.', pullEnd)),
  'from-edge': optional(length('On doors: from the edge that opens to the nearest screw.', 5, 1000)),
  'from-end': optional(length('On doors: from the top or the bottom end to the nearest screw.', 5, 2000)),
  'from-top': optional(length('On drawer fronts: from the upper edge to the nearest screw.', 5, 2000)),
});

const endPanels = record('end panels', 'Loose panels beside the carcass, as deep as it is with its fronts.', {
  on: optional(
    choice('Where there are end panels.', {
      none: 'Nowhere.',
      left: 'On the left.',
      right: 'On the right.',
      both: 'On both hands.',
    }),
  ),
  board: optional(name('board', 'Board of the end panels.')),
  band: optional(name('band', 'Band of their edges that are seen; `none` leaves them bare.')),
  'to-floor': optional(flag('Whether they reach down to the floor beside a plinth.')),
});

const fillers = record('fillers', 'Strips that close what is left beside the carcass, flush with its fronts.', {
  left: optional(length('Width of a strip on the left.', 5, 600)),
  right: optional(length('Width of a strip on the right.', 5, 600)),
  board: optional(name('board', 'Board of the strips.')),
  band: optional(name('band', 'Band of their edges toward the carcass; `none` leaves them bare.')),
});

const blind = record(
  'blind',
  'In a corner, what of the front lies behind the run along the other wall, and the panel that closes it.',
  {
    left: optional(
      length(
        'How much of the front the run along the other wall covers on the left, from the outside of the side.',
        50,
        2000,
      ),
    ),
    right: optional(
      length(
        'How much of the front the run along the other wall covers on the right, from the outside of the side.',
        50,
        2000,
      ),
    ),
    strip: optional(
      length(
        'How much of the panel is left to be seen beside that run, so that pulls find room in the corner.',
        0,
        500,
      ),
    ),
    board: optional(name('board', 'Board of the panel.')),
    band: optional(name('band', 'Band of its edge toward the fronts; `none` leaves it bare.')),
  },
);

const diagonal = record(
  'diagonal',
  'Stands the carcass in a corner of the room with its front across that: from the front edge of the one side to that of the other. Its `depth` is that of both wings, its `width` the reach along the first wall. Both sides stand between bottom and top, and of these and the shelves the front corner is cut off; what is said of their front band is said of that cut.',
  {
    left: optional(
      length('How far it reaches along the other wall, with the corner of the room at its back left.', 100, 3000),
    ),
    right: optional(
      length('How far it reaches along the other wall, with the corner of the room at its back right.', 100, 3000),
    ),
  },
);

const place = record('place', 'Where the carcass stands along a wall.', {
  at: optional(length('From the left end of the wall to the outside of its left side.', 0, 100_000)),
  wall: optional(count('The wall, counted as the owner likes.', 1, 50)),
  'above-floor': optional(
    length('From the floor to its lower end; of one on a plinth, to the lower end of that.', 0, 5000),
  ),
});

const front = record('front', 'One front, in its place among those before a bay.', {
  front: required(
    choice('What stands there.', {
      drawer: 'A drawer with its front.',
      left: 'A door hung on the left.',
      right: 'A door hung on the right.',
      pair: 'Two doors that meet in the middle.',
      fixed: 'A fixed front.',
      open: 'Nothing: the place stays open.',
      appliance: 'An appliance: the place stays open, and a fixed shelf is put in under it, unless one stands there.',
    }),
  ),
  pull: optional(name('pull', 'Its pull or its knob, where it is another one; `none` bores for none.')),
  height: optional(length('Height of the front itself; those without one share what is left equally.', 10, 5000)),
  pitches: optional(
    count('The same in pitches: so high that with the gap under it it comes to so many of them.', 1, 200),
  ),
  bay: optional(count('The bay it stands before, counted from the left; all bays when left out.', 1, 20)),
});

const frontHeights = record('front heights', 'How the fronts before a bay that have no height of their own share it.', {
  how: optional(
    choice('How they share it, from the top down.', {
      equal: 'All alike, to the tenth of a millimetre.',
      'on-pitch':
        'Each a whole number of pitches with the gap under it, as alike as can be, the higher ones below. So slides and plates stand at one place behind all of them.',
      stepped: 'The same, but each higher than the one above it.',
    }),
  ),
  step: optional(count('By how many pitches each is higher than the one above it.', 1, 20)),
});

const wardrobeRail = record('wardrobe rail in a bay', 'One rail for clothes.', {
  at: required(length('Height of its centre line above the bottom end of the side.', 1)),
  bay: optional(count('The bay it stands in, counted from the left; all bays when left out.', 1, 20)),
  'from-front': optional(
    length('From the front of the carcass to its centre line; in the middle of the depth when left out.', 10, 3000),
  ),
  rail: optional(name('wardrobe-rail', 'The rail, where it is another one.')),
});

const howDrawersAreMade = record('drawers', 'How the drawers are made.', {
  slide: optional(name('slide', 'The slide that the drawers run on.')),
  board: optional(name('board', 'Board of the sides, the front and the back of the box.')),
  band: optional(name('band', 'Band of the upper edges of the box; `none` leaves them bare.')),
  bottom: optional(
    choice('How the bottom of the box is held.', {
      grooved: 'In grooves all round.',
      applied: 'Under the sides.',
    }),
  ),
  'bottom-board': optional(name('board', 'Board of the bottom.')),
  joint: optional(name('fitting', 'The fitting that holds the corners of the box.')),
  height: optional(length('Height of the box; as high as its place allows when left out.', 20, 1000)),
});

const drawers: typeof howDrawersAreMade = {
  ...howDrawersAreMade,
  counted: { key: 'fronts', item: 'drawer', not: ['doors'] },
};

const jointPlaces = (what: string) =>
  either(
    what,
    count('How many, evenly spread over the spindles.', 1, 40),
    list('Their places, counted from its front edge.', length('From the front edge.', 1, 3000)),
  );

const ownJoint = record('joint', 'The joint at one end of this panel alone, in both panels that meet there.', {
  joint: optional(name('fitting', 'The fitting that holds this joint.')),
  dowels: optional(jointPlaces('Its construction bores: how many, or their places from the front edge of this panel.')),
});

const panelChoices = record('panel', 'What differs on one panel of this carcass.', {
  board: optional(name('board', 'Board of this panel.')),
  rows: optional(rowChoice),
  'row-offset': optional(length('Distance from its bottom end to the first hole of its rows.', 1, 500)),
  joint: optional(name('fitting', 'The fitting that holds the joints of this panel.')),
  dowels: optional(
    list('Places of its construction bores, counted from its front edge.', length('From the front edge.', 1, 3000)),
  ),
  'end-dowels': optional(
    jointPlaces(
      'The construction bores in its end joints, in both panels: how many, or their places from its front edge.',
    ),
  ),
  'reference-end': optional({
    ...ownJoint,
    about: 'The joint at its bottom or left end alone, in both panels that meet there.',
  }),
  'far-end': optional({
    ...ownJoint,
    about: 'The joint at its top or right end alone, in both panels that meet there.',
  }),
  'face-depth': optional(length('Depth of its construction bores in the face.', 1, 100)),
  'end-depth': optional(length('Depth of its construction bores in the ends.', 1, 200)),
  bands: optional(bands),
  pull: optional(name('pull', 'The pull or the knob of this front; `none` bores for none.')),
  'pull-lies': optional(choice('How the pull of this front lies.', pullLies)),
  'pull-end': optional(choice('Where in the height of this door its pull stands.', pullEnd)),
  'pull-from-edge': optional(
    length('Of this door: from the edge that opens to the nearest screw of its pull.', 5, 1000),
  ),
  'pull-from-end': optional(
    length('Of this door: from the top or the bottom end to the nearest screw of its pull.', 5, 2000),
  ),
  'pull-from-top': optional(length('Of this front: from the upper edge to the nearest screw of its pull.', 5, 2000)),
});

const machines = record('machines', 'Machines for this carcass, where they are not the shop’s usual ones.', {
  faces: optional(name('machine', 'Vertical head for construction bores in faces.')),
  ends: optional(name('machine', 'Horizontal head for construction bores in ends.')),
  rows: optional(name('machine', 'Line drill for rows.')),
  clamp: optional(name('machine', 'Case clamp that the box is pressed in.')),
});

const shared = {
  height: optional(
    length('Overall height of the carcass, without the plinth. By default the rows come out balanced.', 50, 5000),
  ),
  depth: optional(
    length('Overall depth of the carcass: from the front edges to the back of the box, without fronts.', 50, 3000),
  ),
  board: optional(name('board', 'Board of sides, horizontals, dividers and shelves.')),
  band: optional(name('band', 'Band of all front edges; `none` leaves them bare.')),
  joint: optional(name('fitting', `The fitting that holds the joints: a ${SORTS_OF_FITTING} of the shop.`)),
  top: optional(
    choice('How the carcass is closed at the top.', {
      between: 'A top between the sides.',
      over: 'A top lying over the sides.',
      rails: 'A front and a back rail between the sides, instead of a top.',
    }),
  ),
  bottom: optional(
    choice('Where the bottom stands.', {
      between: 'A bottom between the sides.',
      under: 'A bottom that the sides stand on.',
    }),
  ),
  'rail-width': optional(length('Width of the rails that stand in for a top.', 40, 400)),
  plinth: optional(length('Height of the plinth under the carcass; 0 for none.', 0, 400)),
  back: optional(either('The back: a word, or a map with more about it.', back.fields.how.schema, back)),
  doors: optional(either('The doors: a word, or a map with more about them.', doors.fields.hung.schema, doors)),
  'front-heights': optional(
    either(
      'How the fronts before a bay share its height: a word, or a map with more about it.',
      frontHeights.fields.how.schema,
      frontHeights,
    ),
  ),
  drawers: optional(drawers),
  pulls: optional(either('The pulls: a name, or a map with more about them.', pulls.fields.pull.schema, pulls)),
  feet: optional(name('foot', 'The feet that the bottom and the plinth are bored for; `none` bores for none.')),
  angles: optional(
    name('angle', 'The angles that fixed fronts, blind panels and fillers are screwed on with; `none` bores for none.'),
  ),
  brackets: optional(name('bracket', 'The hanging brackets that both sides are bored for; `none` bores for none.')),
  'end-panels': optional(
    either(
      'Loose panels beside the carcass: a word, or a map with more about them.',
      endPanels.fields.on.schema,
      endPanels,
    ),
  ),
  fillers: optional(fillers),
  load: optional(
    either(
      'What stands on each shelf: kilograms spread evenly, or a map with more about it.',
      load.fields['on-shelf'].schema,
      load,
    ),
  ),
  rows: optional(rowChoice),
  'row-holes': optional(
    either(
      'Which holes of the rows are bored: how many over and under that of each loose shelf, or a map.',
      rowHoles.fields['round-shelves'].schema,
      rowHoles,
    ),
  ),
  'row-offset': optional(length('Distance from the bottom end of the side to the first hole of the rows.', 1, 500)),
  'row-setback': optional(length('Row setback: from the front edge to the front row.', 5, 300)),
  'rear-row': optional(length('Distance from the front edge to the rear row.', 20, 3000)),
  dowels: optional(
    list('Places of the construction bores, counted from the front edge.', length('From the front edge.', 1, 3000)),
  ),
  machines: optional(machines),
} as const;

function shelves(sort: 'fixed' | 'loose', height: string) {
  return either(
    `How many ${sort} shelves, or a list of their heights.`,
    count('How many.', 0, 30),
    list(`The ${sort} shelves.`, either(`A ${sort} shelf.`, length(height, 1), shelf)),
  );
}

const ownCarcass = record(
  'carcass',
  'One carcass: a box, with the doors and drawers that close it.',
  {
    kind: required(
      choice(
        'What kind of carcass it is; this chooses the defaults.',
        {
          base: 'Stands on the floor, closed by rails under a worktop.',
          wall: 'Hangs on the wall.',
          tall: 'Stands on the floor, higher than a worktop.',
          'for-drawers': 'A base carcass that drawers go into.',
          open: 'Without fronts: rows only where a loose shelf needs them.',
        },
        { drawer: 'for-drawers' },
        TRIED_KINDS,
      ),
    ),
    width: required(length('Overall width of the carcass.', 50, 5000)),
    like: optional(
      name(
        'carcass',
        'Another carcass of this file, which this one is like. What is written here takes the place of what is written there, maps key by key and lists as a whole; all else is as it is there, but for `place`, `count` and `note`.',
      ),
    ),
    mirrored: optional(
      flag(
        'Whether left and right of the other carcass are changed over. What is written here counts as it is written.',
      ),
    ),
    count: optional(
      count('How many equal ones are made. All are cut, banded and bored; they are drawn and checked once.', 1, 500),
    ),
    place: optional(
      either(
        'Where it stands along a wall: from the left end of the wall, or a map with more about it.',
        place.fields.at.schema,
        place,
      ),
    ),
    ...shared,
    dividers: optional(
      either(
        'How many dividers, evenly spread, or a list of their places.',
        count('How many.', 0, 12),
        list(
          'Dividers.',
          either('A divider.', length('Place of its centre line, from the outside of the left side.', 1), divider),
          // As many as part the bays that a shelf can name.
          19,
        ),
      ),
    ),
    'fixed-shelves': optional(shelves('fixed', 'Height of its centre line above the bottom end of the side.')),
    'loose-shelves': optional(shelves('loose', 'Height of its pin holes above the bottom end of the side.')),
    fronts: optional(
      list(
        'What closes each bay, from the top down: each a word, or a map with more about it. How fronts stand to the carcass is said under `doors`.',
        either('A front.', front.fields.front.schema, front),
        60,
      ),
    ),
    blind: optional(blind),
    diagonal: optional(diagonal),
    'wardrobe-rails': optional(
      list(
        'Rails for clothes, each between the two uprights of a bay.',
        either(
          'A rail for clothes.',
          length('Height of its centre line above the bottom end of the side.', 1),
          wardrobeRail,
        ),
        20,
      ),
    ),
    panels: optional(
      named(
        'panel',
        'What differs on single panels: left, right, top, bottom, rail-front, rail-back, divider-1, shelf-1, loose-1, door-1, drawer-1-left …',
        panelChoices,
      ),
    ),
    note: optional(text('A note for the shop papers.')),
  },
  {},
  TRIED_OF_CARCASS,
);

/** With `like` nothing else is required: the other carcass has it. */
export const carcassSchema: typeof ownCarcass = { ...ownCarcass, standIn: 'like' };

export const jobSchema = record(
  'job',
  'A cabinet job.',
  {
    title: optional(text('What the job is called on the shop papers.')),
    unit: optional(unitChoice),
    shop: optional(
      name('shop-file', 'The shop file, in the same folder. Without one, a neutral built-in shop is used.'),
    ),
    defaults: optional(
      record(
        'defaults',
        'Values for every carcass of this file that has none of its own.',
        shared,
        {},
        TRIED_OF_DEFAULTS,
      ),
    ),
    carcasses: required(named('carcass', 'The carcasses, each under its name.', carcassSchema)),
  },
  {},
  TRIED_OF_JOB,
);
