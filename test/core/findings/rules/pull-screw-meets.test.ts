import { rule } from './rule-tests.js';

const CORNER = (setback: number): string =>
  `kind: wall\nwidth: 600\ndepth: 320\ndiagonal: { right: 600 }\ndoors: { hung: left, hinge: hinge-corner-45 }\nloose-shelves: [{ at: 360, setback: ${setback} }]`;
const TALL = 'carcasses:\n  sink:\n    kind: tall\n    width: 600\n    fixed-shelves: [1032]\n    doors: left\n';

rule('pull-screw-meets', {
  tells: [
    {
      // The middle of a door of 2061 is at 1030, the shelf lies from 1024 to 1040; the buffers leave 2.
      carcass: 'kind: tall\nwidth: 600\nfixed-shelves: [1032]\ndoors: left\npulls: { pull: «knob», end: middle }',
      says: 'The head of a screw of ‘knob’ in door-1 comes to lie before shelf-1, where there is room of 2 mm for its 3 mm. Put the pull elsewhere, or take a pull with screws from outside.',
      severity: 'error',
      panel: 'door-1',
    },
    {
      // The door covers 14.5 of the right side, and a head of 9 reaches 4.5 to each side of its screw.
      carcass: 'kind: base\nwidth: 600\ndoors: left\npulls: { pull: «knob», from-edge: 18.9 }',
      says: 'The head of a screw of ‘knob’ in door-1 comes to lie before right, where there is room of 2 mm for its 3 mm. Put the pull elsewhere, or take a pull with screws from outside.',
      severity: 'error',
    },
    {
      // Across a corner: the shelf ends on the diagonal, the middle of the door is 2.5 under it.
      carcass: `${CORNER(0)}\npulls: { pull: «knob», end: middle, from-edge: 170 }`,
      says: 'The head of a screw of ‘knob’ in door-1 comes to lie before loose-1, where there is room of 2 mm for its 3 mm. Put the pull elsewhere, or take a pull with screws from outside.',
      panel: 'door-1',
    },
  ],
  sound: [
    // It stands two behind that, square to the slanting edge.
    { carcass: `${CORNER(2)}\npulls: { pull: knob, end: middle, from-edge: 170 }` },
    { carcass: 'kind: tall\nwidth: 600\nfixed-shelves: [1032]\ndoors: left\npulls: knob' },
    { carcass: 'kind: base\nwidth: 600\ndoors: left\npulls: { pull: knob, from-edge: 19 }' },
    {
      // Buffers of 3 leave the head its room.
      carcass: 'kind: base\nwidth: 600\ndoors: { hung: left, buffer: 3 }\npulls: { pull: knob, from-edge: 18.9 }',
    },
  ],
  repairs: [
    [
      'Remove `end` and put the pull at its usual place',
      `${TALL}    pulls: { pull: knob, end: middle }\n`,
      `${TALL}    pulls: { pull: knob }\n`,
    ],
  ],
});
