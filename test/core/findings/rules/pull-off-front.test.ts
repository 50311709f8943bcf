import { rule } from './rule-tests.js';

const DOOR = 'carcasses:\n  sink:\n    kind: base\n    width: 600\n    doors: left\n';
const NARROW = 'carcasses:\n  sink:\n    kind: base\n    width: 180\n    fronts: [{ front: fixed, pull: bar-160 }]\n';

rule('pull-off-front', {
  tells: [
    {
      // The front is 120 less its two reveals of 1.5 wide, and the screws stand 160 apart.
      carcass: 'kind: base\nwidth: 120\nfronts: [fixed]\npanels: { fixed-1: { pull: «bar-160» } }',
      says: '‘bar-160’, with screws 160 mm apart, does not stand on fixed-1, which is 117 mm wide and 717 mm high, so that fixed-1 is not bored for it. Put it further in, let it lie the other way, or use a shorter pull.',
      severity: 'error',
      panel: 'fixed-1',
    },
    {
      // Its last screw is 5 from the edge, and it reaches (180 - 160) / 2 further.
      carcass: 'kind: base\nwidth: 600\ndoors: left\npulls: { pull: «bar-160», lies: level, from-edge: 5 }',
      says: '‘bar-160’ is 180 mm long and reaches 5 mm past the edge of door-1, which is 597 mm wide and 717 mm high. Put it further in, or use a shorter pull.',
      severity: 'warning',
      panel: 'door-1',
    },
    {
      // The front is 355.5 wide before it is turned: 280 × √2 is the diagonal.
      carcass:
        'kind: wall\nwidth: 600\ndepth: 320\ndiagonal: { right: 600 }\ndoors: { hung: left, hinge: hinge-corner-45 }\npulls: { pull: «bar-160», lies: level, from-edge: 5 }',
      says: '‘bar-160’ is 180 mm long and reaches 5 mm past the edge of door-1, which is 355.5 mm wide and 749 mm high. Put it further in, or use a shorter pull.',
    },
  ],
  sound: [
    {
      carcass:
        'kind: wall\nwidth: 600\ndepth: 320\ndiagonal: { right: 600 }\ndoors: { hung: left, hinge: hinge-corner-45 }\npulls: knob',
    },
    {
      carcass: 'kind: base\nwidth: 600\ndoors: left\npulls: { pull: bar-160, lies: level, from-edge: 10 }',
      besides: ['pull-screw-meets'],
    },
    { carcass: 'kind: base\nwidth: 300\nfronts: [{ front: fixed, pull: bar-160 }]' },
  ],
  repairs: [
    [
      'Remove `from-edge` and put the pull at its usual place',
      `${DOOR}    pulls: { pull: bar-160, lies: level, from-edge: 5 }\n`,
      `${DOOR}    pulls: { pull: bar-160, lies: level }\n`,
    ],
    ['Use ‘knob’ there', NARROW, NARROW.replace('bar-160', 'knob')],
  ],
});
