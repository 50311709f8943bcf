import { NEUTRAL_SHOP_TEXT } from '../../../shared-core/shop/neutral-text.js';
import { OFFERED, type Text } from '../messages/texts.js';

/** One carcass with these lines. */
const carcass = (lines: string, head = ''): string =>
  `${head}carcasses:\n  sink:\n    ${lines.replaceAll('\n', '\n    ')}\n`;

/** Jobs with faults that no rule's example has, as they bring the core to what it seldom does. Invented. */
export const SELDOM: readonly Text[] = [
  // Names that are like no other, like their own, and like one that is written twice.
  'carcasses:\n  sinks: { like: sinkz, width: 500 }\n  bar: { kind: base, width: 600 }\n',
  'carcasses:\n  "": { kind: base, width: 600 }\n  bar: { like: zzzz }\n  low: { kind: wall, width: 600 }\n',
  // One that is like itself, and lacks what it must say to stand alone.
  'carcasses:\n  sink: { like: sink, kind: base }\n  bar: { like: bar, width: 600 }\n  low: { like: low, kind: base, width: 600, mirrored: yes }\n',
  [
    carcass('kind: wall\nwidth: 640\ndiagonal: { left: 660 }\nloose-shelves: 1', 'shop: own.shop.yaml\n'),
    NEUTRAL_SHOP_TEXT.replace('narrowest-panel: 60', 'narrowest-panel: 700'),
  ],
  // Fronts whose shares come to no more than the gap under them.
  [
    carcass(
      'kind: base\nwidth: 600\nheight: 463\nback: none\nrows: none\ndoors: { gap: 20, top-reveal: 0 }\nfront-heights: on-pitch\nfronts: [{ front: fixed, height: 403 }, fixed, fixed]',
      'shop: own.shop.yaml\n',
    ),
    NEUTRAL_SHOP_TEXT.replace('  pitch: 32\n  # From the front edge', '  pitch: 20\n  # From the front edge'),
  ],
];

/** Texts that somebody is about to go on with. Invented. */
export const HALF_WRITTEN: readonly string[] = [
  ...OFFERED,
  '',
  'unit: \n',
  'shop: \ncarcasses:\n',
  'carcasses:\n  sink:\n      kind: base\n      width: 600\n\n    \n  bar:\n    kind: wall\n     \n',
  'carcasses:\n  sink:\n    kind: base\n    width: 600\n    loose-shelves:\n      - at: 300\n        \n      -   at: 400\n          \n    panels:\n      left:\n         rows: none\n        \n  \n',
  'defaults:\n   board: board-16\n  \n   \ncarcasses:\n  sink: { kind: base, width: 600, doors: { hung: left,  } }\n',
  'carcasses:\n  sink:\n    kind: base\n    width: 600\n  bar:\n    like: \n    fronts: [drawer, { front: left, }, ]\n    back:\n      how: \n    doors:\n',
];
