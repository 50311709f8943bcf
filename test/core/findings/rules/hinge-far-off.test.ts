import { rule } from './rule-tests.js';

// A hinge of the built-in shop is 62 high, and stands at 24 + 32 k over the bottom end of a side; an even spacing is 517 on a door of
// 717 for a base carcass.
rule('hinge-far-off', {
  tells: [
    {
      // 62 find no room between shelves 96 apart and 16 thick, but on the pitch; loose ones lie 2.5 over their holes.
      carcass: 'kind: base\nwidth: 600\nloose-shelves: [328, 424, 520, «616»]\ndoors: left',
      says: 'The top hinge of door-1 stands 437 mm from the top end, where 100 mm is usual (`hinge-end`). loose-1, loose-2, loose-3 and loose-4 are in the way nearer to it. Leave 94 mm of height clear there: that holds a hinge wherever the pitch is.',
      severity: 'warning',
      panel: 'door-1',
      marks: { 'door-1:hinge-2': 1 },
    },
    {
      // Of both doors once; the shelf that is nearest to the usual place is the one to move.
      carcass: 'kind: base\nwidth: 600\nloose-shelves: [«616», 520]\ndoors: pair',
      says: 'The top hinges of door-1 and door-2 stand 245 mm from the top end, where 100 mm is usual (`hinge-end`). loose-2 and loose-1 are in the way nearer to it. Leave 94 mm of height clear there: that holds a hinge wherever the pitch is.',
      marks: { 'door-1:hinge-2': 1, 'door-2:hinge-2': 1 },
    },
    {
      carcass: 'kind: base\nwidth: 600\nrow-offset: 296\ndoors: «left»',
      says: 'The bottom hinge of door-1 stands 312 mm from the bottom end, where 100 mm is usual (`hinge-end`). The pitch has no place nearer to it. Begin the rows nearer to the end (`row-offset`).',
      panel: 'door-1',
    },
    {
      // The shelf that the next hinge gave way to first.
      carcass:
        'kind: tall\nwidth: 600\ndoors: left\nfixed-shelves: [1000, 1080, 1160, 1240, 1320, 1400, 1480, «1560», 1640, 1720, 1800, 1880, 1960]',
      says: 'Above the hinge that is 952 mm from the bottom end of door-1, the next one comes after 1056 mm, where 465.25 mm would be even. shelf-1, shelf-2, shelf-3, shelf-4, shelf-5, shelf-6, shelf-7, shelf-8, shelf-9, shelf-10, shelf-11, shelf-12 and shelf-13 are in the way between them. Leave 94 mm of height clear there: that holds a hinge wherever the pitch is.',
      severity: 'warning',
    },
  ],
  sound: [
    // One shelf at each of the places of the five hinges moves them by two pitches at most.
    { carcass: 'kind: tall\nwidth: 600\nfixed-shelves: [100, 568, 1032, 1496, 1960]\ndoors: left' },
    { carcass: 'kind: base\nwidth: 600\nloose-shelves: [616]\ndoors: left' },
    // Low doors.
    { carcass: 'kind: wall\nwidth: 600\nheight: 300\ndoors: left' },
  ],
});
