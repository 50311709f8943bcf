import { rule } from './rule-tests.js';

const FIGURES =
  'cup-diameter: 35, cup-depth: 12, distance: 20.5 to 24.5, usual-distance: 22.5, arms: [5, 14, 24], plates: [0, 3], setback: 37, plate-diameter: 5, plate-depth: 13, body-height: 62, body-depth: 80';

const WIDE = `hinges:\n  wide: { ${FIGURES}, opening: 165 }\nhabits: { hinge: wide }\n`;

rule('door-swing-meets', {
  tells: [
    {
      // 1 behind the outer corner: that comes out by the sine of the angle, by half a millimetre at 30 degrees.
      carcass: 'kind: wall\nwidth: 600\ndoors: { hung: «left», how: inset, gap: 0.5 }',
      shop: `hinges:\n  one: { ${FIGURES}, axis-from-front: 1 }\nhabits: { hinge: one }\n`,
      says: 'door-1, hung on the left, touches left when it stands 31° open. Make the gap or the reveal there larger, hang it on the other hand, or use a hinge that carries its edge clear.',
      severity: 'error',
      panel: 'door-1',
    },
    {
      // A leaf 50 wide and 19 thick: 50 cos 5° + 19 sin 5° is 51.47, and at 6° it is 51.71; the opening ends at 51.5.
      carcass: 'kind: wall\nwidth: 91\nboard: board-19\ndoors: { hung: «right», how: inset, gap: 1.5 }',
      says: 'door-1, hung on the right, touches left when it stands 6° open. Make the gap or the reveal there larger, hang it on the other hand, or use a hinge that carries its edge clear.',
    },
    {
      // Folded back over door-2, whose bar begins 3 + 100 - 6 beside the axis and stands out 35: its corner is 19.84° off the front.
      carcass:
        'kind: wall\nwidth: 900\ndividers: 1\ndoors: { bays: [«right», right] }\npulls: { pull: bar-160, from-edge: 100 }',
      shop: WIDE,
      says: 'door-1, hung on the right, touches ‘bar-160’ on door-2 when it stands 161° open. Put that pull further from the edge, take a flatter one, or use a hinge that opens less.',
      panel: 'door-1',
    },
    {
      // A door of 147: its bar begins 41 from the axis and stands out 35, so that its corner runs 40.5° ahead of the door.
      carcass:
        'kind: wall\nwidth: 600\ndividers: [150]\ndoors: { bays: [right, right] }\npulls: { pull: none, from-edge: 100 }\npanels: { door-1: { pull: «bar-160» } }',
      shop: WIDE,
      says: '‘bar-160’ on door-1, hung on the right, touches door-2 when the door stands 140° open. Put the pull nearer to the closing edge, take a flatter one, or use a hinge that opens less.',
      panel: 'door-1',
    },
  ],
  sound: [
    { carcass: 'kind: wall\nwidth: 600\ndoors: { hung: pair, how: inset }' },
    {
      // A hinge that opens less keeps it clear.
      carcass:
        'kind: wall\nwidth: 900\ndividers: 1\ndoors: { bays: [right, right] }\npulls: { pull: bar-160, from-edge: 100 }',
      shop: WIDE.replace('165', '160'),
    },
  ],
});
