import { NEUTRAL_SHOP_TEXT } from '../../../../shared-core/shop/neutral-text.js';
import { rule } from './rule-tests.js';

rule('bores-collide', {
  tells: [
    {
      // with the front row, which stands 37 back; both at half a thickness from the end
      carcass: 'kind: base\nwidth: 600\ndowels: [«37», 197, 501]',
      says: 'The dowel bore for bottom (37 mm from the front edge and 8 mm from the bottom end) meets hole 1 of the front row (37 mm from the front edge and 8 mm from the bottom end) in left and right. The same is true of 3 more pairs, for the same reason. Move one of the two.',
      severity: 'error',
      panel: 'left',
      related: [
        [
          'sink',
          'Hole 1 of the front row stands 37 mm from the front edge and 8 mm from the bottom end because of this.',
        ],
      ],
    },
    {
      // Shelf-1 stands on hole 12, 8 + 11 x 32, and one pair is all there is.
      carcass:
        'kind: base\nwidth: 600\nfixed-shelves: [360]\npanels: { shelf-1: { far-end: { dowels: [«37», 200, 300, 450] } } }',
      says: 'The dowel bore for shelf-1 (37 mm from the front edge and 360 mm from the bottom end) meets hole 12 of the front row (37 mm from the front edge and 360 mm from the bottom end) in right. Move one of the two.',
      severity: 'error',
      panel: 'right',
      offers: ['Remove `dowels` of this joint of shelf-1 and bore it like the panel’s others'],
      marks: { 'shelf-1/right': 1, 'right:row-front': 1 },
    },
    {
      // As shelf-1 is 8 off the holes, 1.5 is left there; the others meet, and so it is an error.
      carcass: 'kind: base\nwidth: 600\nfixed-shelves: [368]\ndowels: [«37», 300, 480]',
      says: 'The dowel bore for bottom (37 mm from the front edge and 8 mm from the bottom end) meets hole 1 of the front row (37 mm from the front edge and 8 mm from the bottom end) in left and right. The same is true of 5 more pairs, for the same reason. Move one of the two.',
      // 5 before the rear row at 485
      also: [
        'The dowel bore for bottom (480 mm from the front edge and 8 mm from the bottom end) meets hole 1 of the rear row (485 mm from the front edge and 8 mm from the bottom end) in left and right. The same is true of 3 more pairs, for the same reason. Move one of the two.',
      ],
      severity: 'error',
      panel: 'left',
      offers: ['Remove `dowels` and use the usual places'],
    },
    {
      // dowels at 21: 8 apart less radii of 4 and 2.5
      carcass: 'kind: base\nwidth: 600\nrow-setback: «29»',
      says: 'Hole 1 of the front row (29 mm from the front edge and 8 mm from the bottom end) and the dowel bore for bottom (21 mm from the front edge and 8 mm from the bottom end) leave 1.5 mm of wood between them in left and right; the minimum is 3 mm (`least-wall`). The same is true of 3 more pairs, for the same reason. Move one of the two.',
      severity: 'warning',
      panel: 'left',
      related: [
        [
          'sink',
          'The dowel bore for bottom stands 21 mm from the front edge and 8 mm from the bottom end because of this.',
        ],
      ],
    },
    {
      // the front screw of the slide stands in the front row, 37 back, and is 3 wide
      carcass: 'kind: base\nwidth: 600\nrear-row: 389\nfronts: [«drawer»]',
      shop: NEUTRAL_SHOP_TEXT.replace('body-height: 46\n    diameter: 5', 'body-height: 46\n    diameter: 3'),
      says: 'The slide bore stands where hole 3 of the front row (37 mm from the front edge and 72 mm from the bottom end) does in left and right, but is 3 mm wide and the hole 5 mm. The same is true of 1 more pair, for the same reason. Make `diameter` of ‘slide-45’ 5 mm, so that its screws go into the holes of the row, or move one of the two.',
      also: [
        'The slide bore stands where hole 3 of the rear row (389 mm from the front edge and 72 mm from the bottom end) does in left and right, but is 3 mm wide and the hole 5 mm. The same is true of 1 more pair, for the same reason. Make `diameter` of ‘slide-45’ 5 mm, so that its screws go into the holes of the row, or move one of the two.',
      ],
      severity: 'error',
    },
    {
      carcass: 'kind: base\nwidth: 600\nrear-row: 389\nfronts: [«drawer»]',
      shop: NEUTRAL_SHOP_TEXT.replace('diameter: 5\n    depth: 13\n    box', 'diameter: 5\n    depth: 14\n    box'),
      says: 'The slide bore stands where hole 3 of the front row (37 mm from the front edge and 72 mm from the bottom end) does in left and right, but is 14 mm deep and the hole 13 mm. The same is true of 1 more pair, for the same reason. Make `depth` of ‘slide-45’ no more than 13 mm, so that its screws go into the holes of the row, or move one of the two.',
      also: [
        'The slide bore stands where hole 3 of the rear row (389 mm from the front edge and 72 mm from the bottom end) does in left and right, but is 14 mm deep and the hole 13 mm. The same is true of 1 more pair, for the same reason. Make `depth` of ‘slide-45’ no more than 13 mm, so that its screws go into the holes of the row, or move one of the two.',
      ],
      severity: 'error',
    },
  ],
  sound: [
    // 30.5 less 21, less the radii of 4 and 2.5, is 3.
    { carcass: 'kind: base\nwidth: 600\nrow-setback: 30.5' },
    { carcass: 'kind: base\nwidth: 600\nback: { how: applied, board: back-8 }' },
  ],
  repairs: [
    [
      'Remove `dowels` and use the usual places',
      'carcasses:\n  a:\n    kind: base\n    width: 600\n    dowels: [37, 197, 501]\n',
      'carcasses:\n  a:\n    kind: base\n    width: 600\n',
    ],
  ],
});
