import type { Infer } from '../schema/schema.js';
import {
  choice,
  count,
  flag,
  length,
  list,
  name,
  named,
  number,
  optional,
  record,
  required,
  span,
  text,
} from '../schema/schema.js';

const board = record('board', 'A sheet material.', {
  thickness: required(length('Nominal thickness.', 2, 100)),
  measured: optional(
    length(
      'Thickness as measured on the present batch; panels and their joints are set out on this, rows and heights on the nominal one.',
      2,
      100,
    ),
  ),
  'sheet-length': optional(length('Length of a sheet.', 100, 10_000)),
  'sheet-width': optional(length('Width of a sheet.', 100, 10_000)),
  grain: optional(
    choice('Direction of the grain.', { none: 'No grain: panels may be turned.', length: 'Along the sheet.' }),
  ),
});

const band = record('band', 'An edge band.', {
  thickness: required(length('Thickness.', 0.1, 10)),
  height: optional(length('Width of the tape as bought.', 5, 110)),
});

const dowel = record('dowel', 'A dowel.', {
  diameter: required(length('Diameter of the dowel and of its bores.', 3, 30)),
  length: required(length('Length.', 10, 200)),
  'in-face': required(
    length('Depth of the bore in the face; the end takes the rest of the dowel and the glue gap.', 2, 60),
  ),
});
const screw = record('connector screw', 'A connector screw.', {
  clearance: required(length('Diameter of the clearance hole through the face.', 3, 20)),
  pilot: required(length('Diameter of the pilot hole in the end.', 2, 15)),
  length: required(length('Length of the screw under its head.', 20, 150)),
});
const cam = record('cam fitting', 'A cam fitting.', {
  'cam-diameter': required(length('Diameter of the bore for the cam.', 8, 50)),
  'cam-depth': required(length('Depth of the bore for the cam.', 4, 40)),
  distance: required(length('From the end of the panel to the centre of the cam.', 10, 100)),
  'bolt-diameter': required(length('Diameter of the bore in the end for the bolt.', 4, 15)),
  'stud-diameter': required(length('Diameter of the bore in the face that the bolt is turned into.', 3, 15)),
  'stud-depth': required(length('Depth of that bore.', 4, 40)),
  guide: optional(name('fitting', 'Dowel that stands at the places between the cams.')),
});

const panelSpans = record('panel range', 'The panels that the machine takes.', {
  length: optional(span('Least to greatest length, along the fence.')),
  width: optional(span('Least to greatest width, away from the fence.')),
  thickness: optional(span('Least to greatest thickness.', 1, 200)),
});
const sideChoice = choice('On which hand of the spindles, as the operator stands.', {
  left: 'To the left.',
  right: 'To the right.',
});
const stop = record('stop', 'A stop, under the name that the shop calls it by.', {
  side: required(sideChoice),
  range: required(span('Where it can be set: from the face of the stop to the nearest spindle on its side.')),
  lowers: optional(flag('It can be lowered out of the way; not, unless it is said.')),
});
const clamp = record('clamp', 'A holding-down clamp.', {
  along: required(length('Along the fence from the first spindle; to the left is negative.', -5000, 5000)),
  across: required(length('From the fence.', 0, 3000)),
});
const fenceChoice = choice('Where the fence lies, as the operator stands.', {
  far: 'At the far side of the table.',
  near: 'At the near side.',
});
const fromChoice = choice('From where the bits come.', {
  above: 'From above: the face that is bored lies up.',
  below: 'From below: the face that is bored lies down.',
});

const headParts = {
  body: optional(text('Heads with the same body are one machine whose head is turned; turning it costs time.')),
  spindles: required(count('Number of spindles in the line.', 1, 100)),
  pitch: required(length('From spindle to spindle.', 10, 100)),
  depth: required(span('Least to greatest boring depth.', 0, 200)),
  'depth-stops': optional(count('Number of places on the depth turret.', 1, 24)),
  panel: optional(panelSpans),
  clamps: optional(named('clamp', 'Where the panel is held down.', clamp)),
};

const verticalHead = record(
  'vertical head',
  'A spindle line across the table, square to the fence, for bores in faces.',
  {
    ...headParts,
    fence: required(fenceChoice),
    from: required(fromChoice),
    'fence-offset': required(span('From the fence, where the front edge lies, to the first spindle.', 0, 500)),
    stops: required(named('stop', 'The end stops along the fence.', stop)),
    extension: optional(length('How far the fence extension sets the stops beyond their range.', 0, 5000)),
  },
);
const horizontalHead = record('horizontal head', 'A spindle line turned level, for bores in ends.', {
  ...headParts,
  height: required(span('Spindle centres above the table.', 0, 200)),
  stops: required(named('stop', 'The squaring stops that the front edge lies against.', stop)),
});
const lineDrill = record('line drill', 'Heads of spindles along the fence, for rows.', {
  ...headParts,
  fence: required(fenceChoice),
  from: required(fromChoice),
  heads: required(count('Number of heads.', 1, 6)),
  setback: required(span('From the fence to the first head.', 0, 3000)),
  'head-distance': optional(span('From one head to the next.', 0, 3000)),
  throat: required(length('The deepest row that a head reaches, from the fence.', 10, 5000)),
  stops: required(named('stop', 'The end stops along the fence.', stop)),
  'index-pins': required(
    choice('What a panel registers on to go on past one stroke.', {
      row: 'A pin in a hole of the row.',
      fence: 'Pins in the fence.',
      none: 'No index move.',
    }),
  ),
  'index-range': optional(length('How far a panel can be moved along in all.', 0, 20_000)),
  'meets-holes-twice': optional(flag('A spindle may enter a hole that is bored already.')),
});
const cupBorer = record('cup borer', 'A borer for hinge cups.', {
  body: optional(text('Heads with the same body are one machine.')),
  distance: required(span('From the fence to the centre of the cup.', 0, 200)),
  depth: required(span('Least to greatest boring depth.', 0, 50)),
  stops: optional(named('stop', 'The end stops along the fence.', stop)),
  panel: optional(panelSpans),
});
const saw = record('panel saw', 'A panel saw.', {
  kerf: required(length('Width of the cut.', 0.5, 10)),
  rip: optional(length('Greatest rip cut.', 100, 10_000)),
  crosscut: optional(length('Greatest cross-cut.', 100, 10_000)),
});
const bander = record('edge bander', 'An edge bander.', {
  band: optional(span('Least to greatest band thickness.', 0, 10)),
  thickness: optional(span('Least to greatest panel thickness.', 1, 200)),
  'shortest-edge': optional(length('Shortest edge that it takes.', 0, 2000)),
  'narrowest-panel': optional(length('Narrowest panel that it takes.', 0, 2000)),
});
const caseClamp = record('case clamp', 'A clamp that the box is pressed in.', {
  width: optional(span('Least to greatest width of the box.')),
  height: optional(span('Least to greatest height of the box.')),
  depth: optional(span('Least to greatest depth of the box.')),
});

const kindSize = record('size', 'Usual size of this kind of carcass.', {
  height: optional(length('Height, without plinth.', 50, 5000)),
  pitches: optional(
    count('Pitches in the height: the height is so many pitches and the thicknesses that balance the row.', 2, 200),
  ),
  depth: optional(length('Depth.', 50, 3000)),
});

const habits = record('habits', 'What the shop does unless a job says otherwise.', {
  board: optional(name('board', 'Usual board.')),
  'back-board': optional(name('board', 'Usual board of backs.')),
  band: optional(name('band', 'Usual band of front edges.')),
  joint: optional(name('fitting', 'Usual fitting of joints.')),
  sizes: optional(
    record('sizes', 'Usual sizes by kind.', {
      base: optional(kindSize),
      wall: optional(kindSize),
      tall: optional(kindSize),
      drawer: optional(kindSize),
      open: optional(kindSize),
    }),
  ),
  machines: optional(
    record('machines', 'Usual machines.', {
      faces: optional(name('machine', 'Vertical head for construction bores in faces.')),
      ends: optional(name('machine', 'Horizontal head for construction bores in ends.')),
      rows: optional(name('machine', 'Line drill for rows.')),
      cups: optional(name('machine', 'Cup borer.')),
      clamp: optional(name('machine', 'Case clamp.')),
    }),
  ),
  pitch: optional(length('Pitch of rows.', 10, 100)),
  setback: optional(length('Front row, from the front edge.', 5, 300)),
  'row-diameter': optional(length('Diameter of row holes.', 2, 15)),
  'row-depth': optional(length('Depth of row holes.', 3, 60)),
  'row-offset': optional(
    length(
      'First hole of a row, from the reference end; half the nominal thickness of the board when left out.',
      1,
      500,
    ),
  ),
  'rear-margin': optional(length('Least distance from the back edge to the rear row.', 5, 500)),
  'first-dowel': optional(length('First construction bore, from the front edge.', 8, 500)),
  'dowel-spacing': optional(length('Greatest distance between neighbouring construction bores.', 32, 1000)),
  'glue-gap': optional(length('By how much the two bores of a dowel are deeper than the dowel is long.', 0, 5)),
  'least-wall': optional(length('Least material left under a bore, beside it, and between two bores.', 0.5, 20)),
  'rail-width': optional(length('Usual width of rails.', 40, 400)),
  'groove-depth': optional(length('Depth of the groove of a back.', 1, 30)),
  'back-inset': optional(length('From the back edges to the groove of a back.', 0, 100)),
  'shelf-gap': optional(length('Play of a loose shelf at each end.', 0, 10)),
  'shelf-setback': optional(length('How far a loose shelf stands back from the front.', 0, 100)),
});

const changeover = record('changeover', 'What a change costs, in seconds.', {
  stop: optional(number('To set one stop.', 0, 3600)),
  fence: optional(number('To set a fence, a head or its height.', 0, 3600)),
  bit: optional(number('To put in or take out one bit.', 0, 3600)),
  depth: optional(number('To change the depth stop.', 0, 3600)),
  'turn-head': optional(number('To turn a head level or upright.', 0, 3600)),
  extension: optional(number('To put on or take off the fence extension.', 0, 3600)),
  machine: optional(number('To go to another machine.', 0, 3600)),
});

const tolerances = record('tolerances', 'How far real panels and machines stray, each plus or minus.', {
  thickness: optional(length('Thickness of a board.', 0, 5)),
  width: optional(length('Width of a cut panel.', 0, 5)),
  length: optional(length('Length of a cut panel.', 0, 5)),
  squareness: optional(length('Out of square, over one metre.', 0, 10)),
  stop: optional(length('Repeatability of a stop or fence.', 0, 5)),
  drill: optional(length('Wander of a bit from its spindle’s centre.', 0, 5)),
  'dowel-play': optional(length('Play of a dowel in its bores.', 0, 5)),
  'front-limit': optional(length('Greatest offset allowed at a front edge.', 0, 10)),
  'step-limit': optional(length('Greatest step allowed at an outside face.', 0, 10)),
  'gap-limit': optional(length('Greatest gap allowed in a joint.', 0, 10)),
});

export const shopSchema = record('shop', 'A workshop: its machines, materials and habits.', {
  title: optional(text('What the shop is called on its papers.')),
  unit: optional(
    choice('Unit of every bare number in this file.', {
      mm: 'Millimetres.',
      in: 'Inches, decimal or with fractions such as 23 5/8.',
    }),
  ),
  boards: optional(named('board', 'Sheet materials.', board)),
  bands: optional(named('band', 'Edge bands.', band)),
  dowels: optional(named('dowel', 'Dowels.', dowel)),
  screws: optional(named('connector screw', 'Connector screws.', screw)),
  cams: optional(named('cam fitting', 'Cam fittings.', cam)),
  bits: optional(list('Diameters of the bits that the shop has.', length('Diameter.', 1, 60))),
  'vertical-heads': optional(named('vertical head', 'Heads for bores in faces.', verticalHead)),
  'horizontal-heads': optional(named('horizontal head', 'Heads for bores in ends.', horizontalHead)),
  'line-drills': optional(named('line drill', 'Heads for rows.', lineDrill)),
  'cup-borers': optional(named('cup borer', 'Borers for hinge cups.', cupBorer)),
  'panel-saws': optional(named('panel saw', 'Panel saws.', saw)),
  'edge-banders': optional(named('edge bander', 'Edge banders.', bander)),
  'case-clamps': optional(named('case clamp', 'Case clamps.', caseClamp)),
  habits: optional(habits),
  changeover: optional(changeover),
  tolerances: optional(tolerances),
});

export type ShopInput = Infer<typeof shopSchema>;
export { habits as habitsSchema };
