import { rule } from './rule-tests.js';

rule('row-unbalanced', {
  tells: [
    {
      // last hole 10 + 21 x 32 = 682
      carcass: 'kind: base\nwidth: 600\nrow-offset: «10»',
      says: 'The rows of left and right start 10 mm from the bottom end and stop 38 mm from the top end (length 720 mm, pitch 32 mm), so one stop setting does not serve both ends: on ‘row-drill’ that takes 1 set-up and 22 min 30 s more than even rows. Change `row-offset` or `height`.',
      severity: 'warning',
      panel: 'left',
    },
    {
      // a height that balances 16 mm boards does not balance 19 mm ones: last hole 9.5 + 21 x 32
      carcass: 'kind: base\nwidth: 600\nboard: board-19\nheight: «720»',
      says: 'The rows of left and right start 9.5 mm from the bottom end and stop 38.5 mm from the top end (length 720 mm, pitch 32 mm), so one stop setting does not serve both ends: on ‘row-drill’ that takes 1 set-up and 22 min 30 s more than even rows. Change `row-offset` or `height`.',
      severity: 'warning',
      panel: 'left',
    },
  ],
  sound: [
    // Where the next spindle would stand past the end it may carry its bit: left and right share them.
    { carcass: 'kind: base\nwidth: 600\nheight: 700' },
    { carcass: 'kind: base\nwidth: 600\nheight: 720.051' },
    // 23 holes fill the 23 spindles from either end: uneven, and it costs nothing.
    { carcass: 'kind: base\nwidth: 600\nheight: 730' },
    // Balanced as nearly as a stop is set.
    { carcass: 'kind: base\nwidth: 600\nheight: 720.05' },
    // The balanced side is n pitches and one thickness long: common practice, no source (720 for 16, 723 for 19).
    { carcass: 'kind: base\nwidth: 600\nheight: 720' },
    { carcass: 'kind: base\nwidth: 600\nboard: board-19\nheight: 723' },
  ],
  repairs: [
    [
      'Make the carcass 720 mm high, 9 mm higher',
      'carcasses:\n  a: { kind: base, width: 600, height: "711" } # flow\n',
      'carcasses:\n  a: { kind: base, width: 600, height: "720" } # flow\n',
    ],
    // What is not written yet is added, and the shelf stays on the grid.
    [
      'Start the rows 19.5 mm from the ends instead of 8 mm; loose-1 moves with them',
      'carcasses:\n  a:\n    kind: base\n    width: 600\n    height: 711 # given\n    loose-shelves:\n      - at: 328 # the toaster\n',
      'carcasses:\n  a:\n    kind: base\n    width: 600\n    height: 711 # given\n    loose-shelves:\n      - at: 339.5 # the toaster\n    row-offset: 19.5\n',
    ],
  ],
});
