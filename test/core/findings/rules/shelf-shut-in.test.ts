import { rule } from './rule-tests.js';

const job = (shelves: string): string =>
  `carcasses:\n  sink:\n    kind: base\n    width: 1100\n    blind: { right: 580 }\n    fixed-shelves: [264, 456]\n    loose-shelves: ${shelves} # trays\n    doors: left\n`;

rule('shelf-shut-in', {
  tells: [
    {
      // 1100 less two sides; less 580, a strip of 60 and a side; between shelves of 16 about 264 and 456.
      carcass:
        'kind: base\nwidth: 1100\nblind: { right: 580 }\nfixed-shelves: [264, 456]\nloose-shelves: [«328»]\ndoors: left',
      says: 'loose-1 is 1066 mm × 535 mm, and beside the blind panel 444 mm × 176 mm are open: it goes through neither flat nor lifted at an edge or an end. Put it in before the blind panel is screwed on, or leave more room over it or under it.',
      severity: 'warning',
      panel: 'loose-1',
    },
  ],
  sound: [
    // On edge, its end first.
    { carcass: 'kind: base\nwidth: 1100\nblind: { right: 580 }\nloose-shelves: [328]\ndoors: left' },
    // Behind a divider at the edge of the blind panel it is no longer than the opening.
    {
      carcass:
        'kind: base\nwidth: 1100\nblind: { right: 580 }\ndividers: [452]\nfixed-shelves: [{ at: 264, bay: 1 }, { at: 456, bay: 1 }]\nloose-shelves: [{ at: 328, bay: 1 }]\ndoors: { bays: [left, none] }',
    },
  ],
  repairs: [['Remove loose-1', job('[328, 584]'), job('[584]')]],
});
