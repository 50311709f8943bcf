import { rule } from './rule-tests.js';

rule('shelf-tips', {
  tells: [
    {
      // 541 of clear depth less 5 in front and 1 behind; 293 - 37 = 256 is less than half of it.
      carcass: 'kind: base\nwidth: 600\nrear-row: «293»\nloose-shelves: 2',
      says: 'loose-1 and loose-2 tip: the pins, 37 mm and 293 mm from the front edge, stand 256 mm apart, and the minimum is half the depth of 535 mm. Move the rear row toward the back (`rear-row`), or make the shelf a fixed one.',
      severity: 'warning',
      panel: 'loose-1',
    },
    {
      // too shallow for two rows that hold it: 131 clear, so 37 and 69
      carcass: 'kind: wall\nwidth: 600\ndepth: 150\nloose-shelves: [«328»]',
      says: 'loose-1 tips: the pins, 37 mm and 69 mm from the front edge, stand 32 mm apart, and the minimum is half the depth of 125 mm. Move the rear row toward the back (`rear-row`), or make the shelf a fixed one.',
      severity: 'warning',
      panel: 'loose-1',
    },
  ],
  sound: [
    // 288 apart under 535 of shelf
    { carcass: 'kind: base\nwidth: 600\nrear-row: 325\nloose-shelves: 1' },
    // 256 apart under 512 of shelf: just half
    { carcass: 'kind: base\nwidth: 600\nrear-row: 293\nloose-shelves: [{ at: 360, setback: 28 }]' },
  ],
  repairs: [
    [
      'Remove `rear-row` and use the usual place of the rear row',
      'carcasses:\n  a:\n    kind: base\n    width: 600\n    rear-row: 293\n    loose-shelves: 2\n',
      'carcasses:\n  a:\n    kind: base\n    width: 600\n    loose-shelves: 2\n',
    ],
  ],
});
