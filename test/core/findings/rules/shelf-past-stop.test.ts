import { rule } from './rule-tests.js';

/** A shop with one vertical head and no other machine. */
const withHead = (stops: string, how: { readonly from?: string; readonly fence?: string } = {}): string =>
  `vertical-heads:
  upright: { spindles: 24, pitch: 32, fence: ${how.fence ?? 'far'}, from: ${how.from ?? 'above'}, fence-offset: 18 to 96, depth: 0 to 60,
    stops: { ${stops} } }
`;
/** Further on the left than on the right. */
const UNEVEN = 'A: { side: left, range: 0 to 700, lowers: yes }, B: { side: right, range: 0 to 300, lowers: yes }';
/** A head that reaches 900, and a cup borer with stops of its own. */
const withCups = (range: string): string =>
  `${withHead('A: { side: left, range: 0 to 900, lowers: yes }, B: { side: right, range: 0 to 900, lowers: yes }')}
cup-borers:
  press: { distance: 18 to 26, depth: 5 to 15, stops: { C: { side: left, range: ${range} }, D: { side: right, range: ${range} } } }
hinges:
  hinge-110: { cup-diameter: 35, cup-depth: 12, cup-screws: { apart: 45, behind: 9.5, diameter: 8, depth: 12 }, distance: 20.5 to 24.5,
    usual-distance: 22.5, arms: [5, 14, 24], plates: [0, 2, 3], setback: 37, plate-pitches: 1, plate-diameter: 5, plate-depth: 13,
    body-height: 62, body-depth: 80, opening: 110 }
`;
const shelf500 = (panel: 'left' | 'right'): string =>
  `The line of shelf-1 in ${panel} stands 500 mm from the bottom end and 1564 mm from the top end. On ‘upright’, the stop on the right reaches 300 mm and the stop on the left reaches 700 mm. Move it nearer to an end, or give the machine an extension of 200 mm or a stop that reaches 500 mm.`;

rule('shelf-past-stop', {
  tells: [
    {
      carcass: 'kind: tall\nwidth: 600\nfixed-shelves: [«1032»]',
      shop: 'faults.shop.yaml',
      says: 'The line of shelf-1 in left and right stands 1032 mm from the bottom end and 1032 mm from the top end. On ‘upright’, the 2 stops on the left reach 700 mm (900 mm with the extension) and the 2 stops on the right reach 700 mm (900 mm with the extension). Move it nearer to an end, or give the machine an extension of 332 mm or a stop that reaches 1032 mm.',
      severity: 'error',
      panel: 'left',
      offers: [
        '> Move shelf-1 down to 872 mm (hole 28), where a stop reaches',
        'Move shelf-1 up to 1192 mm (hole 38), where a stop reaches',
      ],
      marks: { 'shelf-1/left': 5, 'shelf-1/right': 5 },
    },
    {
      // Nearer to the top, and to the hole above; the next is told by itself.
      carcass: 'kind: tall\nwidth: 600\nfixed-shelves: [«1100», 1150]',
      shop: 'faults.shop.yaml',
      says: 'The line of shelf-1 in left and right stands 964 mm from the top end and 1100 mm from the bottom end. On ‘upright’, the 2 stops on the right reach 700 mm (900 mm with the extension) and the 2 stops on the left reach 700 mm (900 mm with the extension). Move it nearer to an end, or give the machine an extension of 264 mm or a stop that reaches 964 mm.',
      also: [
        'The line of shelf-2 in left and right stands 914 mm from the top end and 1150 mm from the bottom end. On ‘upright’, the 2 stops on the right reach 700 mm (900 mm with the extension) and the 2 stops on the left reach 700 mm (900 mm with the extension). Move it nearer to an end, or give the machine an extension of 214 mm or a stop that reaches 914 mm.',
      ],
      panel: 'left',
      offers: [
        '> Move shelf-1 up to 1192 mm (hole 38), where a stop reaches',
        'Move shelf-1 down to 872 mm (hole 28), where a stop reaches',
      ],
    },
    {
      // no holes to move it to
      carcass: 'kind: tall\nwidth: 600\nrows: none\nfixed-shelves: [«1100»]',
      shop: 'faults.shop.yaml',
      says: 'The line of shelf-1 in left and right stands 964 mm from the top end and 1100 mm from the bottom end. On ‘upright’, the 2 stops on the right reach 700 mm (900 mm with the extension) and the 2 stops on the left reach 700 mm (900 mm with the extension). Move it nearer to an end, or give the machine an extension of 264 mm or a stop that reaches 964 mm.',
      offers: [],
    },
    {
      // A line of the sides' own: a rail's screws, 16 over and under its middle.
      carcass: 'kind: tall\nwidth: 600\nwardrobe-rails: [«1032»]',
      shop: 'faults.shop.yaml',
      says: 'A line of bores in left and right stands 1016 mm from the bottom end and 1048 mm from the top end. On ‘upright’, the 2 stops on the left reach 700 mm (900 mm with the extension) and the 2 stops on the right reach 700 mm (900 mm with the extension). Move it nearer to an end, or give the machine an extension of 316 mm or a stop that reaches 1016 mm.',
      also: [
        'A line of bores in left and right stands 1016 mm from the top end and 1048 mm from the bottom end. On ‘upright’, the 2 stops on the right reach 700 mm (900 mm with the extension) and the 2 stops on the left reach 700 mm (900 mm with the extension). Move it nearer to an end, or give the machine an extension of 316 mm or a stop that reaches 1016 mm.',
      ],
      offers: [],
    },
    // A right side lies the other way about than a left one, so its bottom end comes to the right.
    ...(
      [
        [{}, 'right'],
        [{ from: 'below' }, 'left'],
        [{ fence: 'near' }, 'left'],
        [{ from: 'below', fence: 'near' }, 'right'],
      ] as const
    ).map(([how, panel]) => ({
      carcass: 'kind: tall\nwidth: 600\nfixed-shelves: [«500»]',
      shop: withHead(UNEVEN, how),
      says: shelf500(panel),
      panel,
      // 8 + 9 x 32 = 296 and 2064 - 1768 = 296: not 488, which the stop on the left reaches.
      offers: [
        '> Move shelf-1 down to 296 mm (hole 10), where a stop reaches',
        'Move shelf-1 up to 1768 mm (hole 56), where a stop reaches',
      ],
    })),
    {
      // Screws go in from the outside, which lies up then.
      carcass: 'kind: tall\nwidth: 600\njoint: screw-7x50\nfixed-shelves: [«500»]',
      shop: withHead(UNEVEN),
      says: shelf500('left'),
      panel: 'left',
    },
    {
      // Nothing on the left: what must lie there cannot be bored, of each side another end.
      carcass: 'kind: tall\nwidth: 600\nrows: none\nfixed-shelves: [«800»]\ntop: over\nbottom: under',
      shop: withHead('B: { side: right, range: 0 to 700, lowers: yes }'),
      says: 'The line of shelf-1 in left stands 800 mm from the bottom end and 1264 mm from the top end. On ‘upright’, there is no stop on the left and the stop on the right reaches 700 mm. Move it nearer to an end, or give the machine a stop on the left whose range holds 800 mm.',
      also: [
        'The line of shelf-1 in right stands 800 mm from the bottom end and 1264 mm from the top end. On ‘upright’, the stop on the right reaches 700 mm and there is no stop on the left. Move it nearer to an end, or give the machine an extension of 100 mm or a stop that reaches 800 mm.',
      ],
    },
    {
      // Too near: the bottom of the left side and the top of the right one, which are not one line.
      carcass: 'kind: tall\nwidth: 600\nrows: none',
      shop: withHead(
        'A: { side: left, range: 8.001 to 2000, lowers: yes }, B: { side: right, range: 8 to 2000, lowers: yes }',
      ),
      says: 'The line of bottom in left stands 8 mm from the bottom end and 2056 mm from the top end. On ‘upright’, the stop on the left reaches 2000 mm and the stop on the right reaches 2000 mm. Give the machine a stop on the left whose range holds 8 mm.',
      also: [
        'The line of top in right stands 8 mm from the top end and 2056 mm from the bottom end. On ‘upright’, the stop on the left reaches 2000 mm and the stop on the right reaches 2000 mm. Give the machine a stop on the left whose range holds 8 mm.',
      ],
    },
    {
      // A shelf too near, not too far.
      carcass: 'kind: tall\nwidth: 600\nrows: none\nfixed-shelves: [«100»]\ntop: over\nbottom: under',
      shop: withHead(
        'A: { side: left, range: 150 to 2000, lowers: yes }, B: { side: right, range: 150 to 900, lowers: yes }',
      ),
      says: 'The line of shelf-1 in left stands 100 mm from the bottom end and 1964 mm from the top end. On ‘upright’, the stop on the left reaches 2000 mm and the stop on the right reaches 900 mm. Move it farther from the end, or give the machine a stop on the left whose range holds 100 mm.',
    },
    {
      // A shelf under an appliance stands where the fronts leave it room.
      carcass:
        'kind: tall\nwidth: 600\nfronts:\n  - fixed\n  - { front: «appliance», height: 595 }\n  - { front: drawer, height: 700 }',
      shop: withHead(
        'A: { side: left, range: 0 to 600, lowers: yes }, B: { side: right, range: 0 to 600, lowers: yes }',
      ),
      says: 'The line of shelf-1 in left and right stands 695 mm from the bottom end and 1369 mm from the top end. On ‘upright’, the stop on the left reaches 600 mm and the stop on the right reaches 600 mm. Give the machine an extension of 95 mm or a stop that reaches 695 mm.',
      offers: [],
    },
    {
      // A knob has keys that say its place. The cups at its door are bored on the cup borer.
      carcass: 'kind: tall\nwidth: 600\ndoors: left\npulls: { pull: «knob», end: middle }',
      shop: 'faults.shop.yaml',
      says: 'A line of bores in door-1 stands 1030.5 mm from the bottom end and 1030.5 mm from the top end. On ‘upright’, the 2 stops on the left reach 700 mm (900 mm with the extension) and the 2 stops on the right reach 700 mm (900 mm with the extension). Move it nearer to an end, or give the machine an extension of 330.5 mm or a stop that reaches 1030.5 mm.',
      offers: [],
    },
    {
      // The screws beside the cups are bored on the head, and have no place of their own: the middle hinge is 1016 from the bottom end.
      carcass: 'kind: tall\nwidth: 600\ndoors: «left»',
      shop: withCups('0 to 1500'),
      says: 'A line of bores in door-1 stands 993.5 mm from the bottom end and 1067.5 mm from the top end. On ‘upright’, the stop on the right reaches 900 mm and the stop on the left reaches 900 mm. Give the machine an extension of 93.5 mm or a stop that reaches 993.5 mm.',
      also: [
        'A line of bores in door-1 stands 1022.5 mm from the top end and 1038.5 mm from the bottom end. On ‘upright’, the stop on the left reaches 900 mm and the stop on the right reaches 900 mm. Give the machine an extension of 122.5 mm or a stop that reaches 1022.5 mm.',
      ],
      marks: { 'door-1:hinge-3': 1 },
      offers: [],
    },
    {
      // 0.1 past stop and extension; from the top end it is farther
      carcass: 'kind: tall\nwidth: 600\nfixed-shelves: [«900.1»]',
      shop: 'faults.shop.yaml',
      says: 'The line of shelf-1 in left and right stands 900.1 mm from the bottom end and 1163.9 mm from the top end. On ‘upright’, the 2 stops on the left reach 700 mm (900 mm with the extension) and the 2 stops on the right reach 700 mm (900 mm with the extension). Move it nearer to an end, or give the machine an extension of 200.1 mm or a stop that reaches 900.1 mm.',
      panel: 'left',
    },
    {
      // the bottom is 1968 long and starts 16 in
      carcass: 'kind: base\nwidth: 2000\ndividers: [«1000»]',
      shop: 'faults.shop.yaml',
      says: 'The line of divider-1 in bottom, rail-front and rail-back stands 984 mm from the left end and 984 mm from the right end. On ‘upright’, the 2 stops on the right reach 700 mm (900 mm with the extension) and the 2 stops on the left reach 700 mm (900 mm with the extension). Move it nearer to an end, or give the machine an extension of 284 mm or a stop that reaches 984 mm.',
      severity: 'error',
      panel: 'bottom',
      offers: [],
    },
  ],
  sound: [
    // no head that is known
    {
      carcass: 'kind: base\nwidth: 600\nfixed-shelves: [360]\nmachines: { faces: nothing }',
      shop: 'faults.shop.yaml',
      besides: ['machine-unknown'],
    },
    // Hole 28 stands 872 from the bottom end: less than the 900 of stop and extension.
    { carcass: 'kind: tall\nwidth: 600\nfixed-shelves: [872]', shop: 'faults.shop.yaml' },
    // The middle one of five cups stands 1016 from an end: past the stops of the head, which does not bore it.
    {
      carcass: 'kind: tall\nwidth: 600\ndoors: left',
      shop: withCups('0 to 1500').replace(/cup-screws: [{].*?[}], /, ''),
      // Nothing bores the rows, and the ends of bottom and top.
      besides: ['cannot-be-bored', 'cannot-be-bored'],
    },
    // Just the 700 of the stop and the 200 of the extension.
    { carcass: 'kind: tall\nwidth: 600\nfixed-shelves: [900]', shop: 'faults.shop.yaml' },
  ],
  repairs: [
    [
      // 1032 - 872 = 160 down, and the next that a stop of the other hand reaches, 2064 - 1192 = 872 from the top, 160 up
      'Move shelf-1 up to 1192 mm (hole 38), where a stop reaches',
      'shop: faults.shop.yaml\ncarcasses:\n  a:\n    kind: tall\n    width: 600\n    fixed-shelves: [1032]\n',
      'shop: faults.shop.yaml\ncarcasses:\n  a:\n    kind: tall\n    width: 600\n    fixed-shelves: [1192]\n',
    ],
    [
      'Move shelf-1 down to 872 mm (hole 28), where a stop reaches',
      'shop: faults.shop.yaml\ncarcasses:\n  a:\n    kind: tall\n    width: 600\n    fixed-shelves: [1032]\n',
      'shop: faults.shop.yaml\ncarcasses:\n  a:\n    kind: tall\n    width: 600\n    fixed-shelves: [872]\n',
    ],
  ],
});
