import { optional, orEmpty, orOwnName, required, usually } from '../schema/fields.js';
import { choice, count, flag, length, list, named, record, span, text } from '../schema/schema.js';

export const panelSpans = record('panel range', 'The panels that the machine takes.', {
  length: optional(span('Least to greatest length, along the fence.')),
  width: optional(span('Least to greatest width, away from the fence.')),
  thickness: optional(span('Least to greatest thickness.', 1, 200)),
});
const sideChoice = choice('On which hand of the spindles, as the operator stands.', {
  left: 'To the left.',
  right: 'To the right.',
});
export const stop = record('stop', 'A stop, under the name that the shop calls it by.', {
  side: required(sideChoice),
  range: required(
    span(
      'Where it can be set: from the face of the stop to the nearest spindle on its side. Stops of one hand cannot pass each other.',
    ),
  ),
  lowers: usually(flag('It can be lowered out of the way; not, unless it is said.'), false),
  stands: optional(length('Where it stands when a job begins, where it is left there.')),
});
const STANDING = 'What stays in the machine between jobs, so that only what differs is changed.';
const load = {
  bit: optional(length('Diameter of the bits that stay in its spindles.', 1, 60)),
  spindles: optional(
    list('Which spindles carry them, counted from 1, on every head; all when left out.', count('A spindle.', 1, 100)),
  ),
  depth: optional(length('What the depth stop is set to.', 0, 200)),
};
const onTable = {
  ...load,
  fence: optional(list('From the fence to the first spindle, or to each head.', length('From the fence.', 0, 3000), 6)),
  thickness: optional(length('Thickness of the boards that it is set for, where the bits come from above.', 1, 200)),
};
const standsOnTable = optional(record('standing', STANDING, onTable));
const standsLevel = optional(
  record('standing', STANDING, { ...load, height: optional(length('Spindle centres above the table.', 0, 200)) }),
);
export const clamp = record('clamp', 'A holding-down clamp.', {
  along: required(length('Along the fence from the first spindle; to the left is negative.', -5000, 5000)),
  across: required(length('From the fence, or from the plate of a horizontal head.', 0, 3000)),
  // A pad of this size is common practice, no source.
  pad: usually(length('Diameter of its pad: a panel that lies under a part of it only is not held.', 0, 500), 40_000),
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
  body: orOwnName(text('Heads with the same body are one machine whose head is turned; turning it costs time.')),
  spindles: required(count('Number of spindles in the line.', 1, 100)),
  pitch: required(length('From spindle to spindle.', 10, 100)),
  depth: required(span('Least to greatest boring depth.', 0, 200)),
  'depth-stops': optional(count('Number of places on the depth turret.', 1, 24)),
  panel: orEmpty(panelSpans),
  clamps: orEmpty(named('clamp', 'Where the panel is held down.', clamp)),
};

export const verticalHead = record(
  'vertical head',
  'A spindle line across the table, square to the fence, for bores in faces.',
  {
    ...headParts,
    stands: standsOnTable,
    fence: required(fenceChoice),
    from: required(fromChoice),
    'fence-offset': required(span('From the fence, where the front edge lies, to the first spindle.', 0, 500)),
    stops: required(named('stop', 'The end stops along the fence.', stop)),
    extension: usually(
      length(
        'How far the fence extension widens, outward, the range of the stop that reaches furthest on each hand; the others keep theirs.',
        0,
        5000,
      ),
      0,
    ),
  },
);
export const horizontalHead = record('horizontal head', 'A spindle line turned level, for bores in ends.', {
  ...headParts,
  stands: standsLevel,
  height: required(span('Spindle centres above the table.', 0, 200)),
  stops: required(named('stop', 'The squaring stops that the front edge lies against.', stop)),
});
export const lineDrill = record('line drill', 'Heads of spindles along the fence, for rows.', {
  ...headParts,
  stands: standsOnTable,
  fence: required(fenceChoice),
  from: required(fromChoice),
  heads: required(count('Number of heads.', 1, 6)),
  setback: required(span('Head setback: from the fence to the first head.', 0, 3000)),
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
  'meets-holes-twice': usually(flag('A spindle may enter a hole that is bored already.'), false),
});
export const cupBorer = record('cup borer', 'A borer for hinge cups.', {
  body: orOwnName(text('Heads with the same body are one machine.')),
  distance: required(span('From the fence to the centre of the cup.', 0, 200)),
  depth: required(span('Least to greatest boring depth.', 0, 50)),
  stops: orEmpty(named('stop', 'The end stops along the fence: without one no cup can be set out.', stop)),
  panel: orEmpty(panelSpans),
  stands: standsOnTable,
});
export const saw = record('panel saw', 'A panel saw.', {
  kerf: required(length('Width of the cut.', 0.5, 10)),
  rip: optional(length('Greatest width of a strip, between fence and blade.', 100, 10_000)),
  crosscut: optional(length('Greatest length that is cut off a strip, between stop and blade.', 100, 10_000)),
  trim: usually(length('What is taken off each edge of a sheet before anything else.', 0, 100), 0),
  stages: usually(
    count('2: strips, and pieces as wide as the strip. 3: what is cut off a strip may be cut once more.', 2, 3),
    3,
  ),
  first: usually(
    choice('Which way the first cuts run.', {
      along: 'Along the sheet.',
      across: 'Across the sheet.',
      either: 'As it comes out cheaper.',
    }),
    'either',
  ),
});
export const bander = record('edge bander', 'An edge bander.', {
  band: optional(span('Least to greatest band thickness.', 0, 10)),
  thickness: optional(span('Least to greatest panel thickness.', 1, 200)),
  'shortest-edge': optional(length('Shortest edge that it takes.', 0, 2000)),
  'narrowest-panel': optional(length('Narrowest panel that it takes.', 0, 2000)),
});
export const caseClamp = record('case clamp', 'A clamp that the box is pressed in.', {
  width: optional(span('Least to greatest width of the box.')),
  height: optional(span('Least to greatest height of the box.')),
  depth: optional(span('Least to greatest depth of the box.')),
});
