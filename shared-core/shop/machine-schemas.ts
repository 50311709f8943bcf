import { optional, orEmpty, orOwnName, required, usually } from '../schema/fields.js';
import {
  choice,
  count,
  flag,
  length,
  list,
  named,
  record,
  span,
  spanUpTo,
  text,
  type SpanSchema,
} from '../schema/schema.js';

export const panelSpans = record('panel range', 'The panels that the machine takes.', {
  length: optional(span('Minimum to maximum length, along the fence.')),
  width: optional(span('Minimum to maximum width, away from the fence.')),
  thickness: optional(span('Minimum to maximum thickness.', 1, 200)),
});
const boringDepth = (maxMm: number): SpanSchema =>
  spanUpTo('Minimum to maximum boring depth; one length alone is the maximum, and the minimum is 0.', 0, maxMm);
const sideChoice = choice('On which side of the spindles, as seen by the operator.', {
  left: 'To the left.',
  right: 'To the right.',
});
export const stop = record('stop', 'A stop, under the name that the shop uses for it.', {
  side: required(sideChoice),
  range: required(
    span(
      'Where it can be set: from the face of the stop to the nearest spindle on its side. Stops on the same side cannot pass each other.',
    ),
  ),
  lowers: usually(flag('Whether it can be lowered out of the way.'), false),
  stands: optional(length('Where it stands when a job begins, if it is left set between jobs.')),
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
  pad: usually(length('Diameter of its pad. A panel that lies under only a part of it is not held.', 0, 500), 40_000),
});
const fenceChoice = choice('Where the fence lies, as seen by the operator.', {
  far: 'At the far side of the table.',
  near: 'At the near side.',
});
const fromChoice = choice('Where the bits come from.', {
  above: 'From above: the face that is bored lies up.',
  below: 'From below: the face that is bored lies down.',
});

const headParts = {
  body: orOwnName(text('Heads with the same body are one machine whose head is turned; turning it costs time.')),
  spindles: required(count('Number of spindles in the line.', 1, 100)),
  pitch: required(length('From spindle to spindle.', 10, 100)),
  depth: required(boringDepth(200)),
  'depth-stops': optional(count('Number of places on the depth turret.', 1, 24)),
  panel: orEmpty(panelSpans),
  clamps: orEmpty(named('clamp', 'Where the machine holds the panel down.', clamp)),
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
        'How far the fence extension widens the range of the outermost stop on each side, outward; the other stops keep their ranges.',
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
  throat: required(length('Maximum distance from the fence to a row.', 10, 5000)),
  stops: required(named('stop', 'The end stops along the fence.', stop)),
  'index-pins': required(
    choice('What a panel registers on when it is moved along for the next stroke.', {
      row: 'A pin in a hole of the row.',
      fence: 'Pins in the fence.',
      none: 'No index move.',
    }),
  ),
  'index-range': optional(length('Maximum distance that a panel can be moved along in all.', 0, 20_000)),
  'meets-holes-twice': usually(flag('Whether a spindle may enter a hole that is already bored.'), false),
});
export const cupBorer = record('cup borer', 'A borer for hinge cups.', {
  body: orOwnName(text('Heads with the same body are one machine.')),
  distance: required(span('From the fence to the centre of the cup.', 0, 200)),
  depth: required(boringDepth(50)),
  stops: orEmpty(named('stop', 'The end stops along the fence: without one no cup can be set out.', stop)),
  panel: orEmpty(panelSpans),
  stands: standsOnTable,
});
export const saw = record('panel saw', 'A panel saw.', {
  kerf: required(length('Width of the cut.', 0.5, 10)),
  rip: optional(length('Maximum width of a strip, between fence and blade.', 100, 10_000)),
  crosscut: optional(length('Maximum length that is cut off a strip, between stop and blade.', 100, 10_000)),
  trim: usually(length('What is cut off each edge of a sheet first.', 0, 100), 0),
  stages: usually(
    count('2: strips, and pieces as wide as the strip. 3: what is cut off a strip may be cut once more.', 2, 3),
    3,
  ),
  first: usually(
    choice('Which way the first cuts run.', {
      along: 'Along the sheet.',
      across: 'Across the sheet.',
      either: 'Whichever is cheaper.',
    }),
    'either',
  ),
});
export const bander = record('edge bander', 'An edge bander.', {
  band: optional(span('Minimum to maximum band thickness.', 0, 10)),
  thickness: optional(span('Minimum to maximum panel thickness.', 1, 200)),
  'shortest-edge': optional(length('Shortest edge that it takes.', 0, 2000)),
  'narrowest-panel': optional(length('Narrowest panel that it takes.', 0, 2000)),
  'pre-milling': usually(
    length('What it mills off an edge before the band is glued on. Panels are cut so much larger.', 0, 10),
    0,
  ),
});
export const caseClamp = record('case clamp', 'A clamp that the box is pressed in.', {
  width: optional(span('Minimum to maximum width of the box.')),
  height: optional(span('Minimum to maximum height of the box.')),
  depth: optional(span('Minimum to maximum depth of the box.')),
});
