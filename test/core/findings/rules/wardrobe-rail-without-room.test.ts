import { rule } from './rule-tests.js';

// The rail reaches 12.5 over its centre line and needs 30 more; a shelf of 16 at 1736 begins at 1728.
rule('wardrobe-rail-without-room', {
  tells: [
    {
      carcass: 'kind: tall\nwidth: 800\nfixed-shelves: [1736]\nwardrobe-rails: [«1685.6»]',
      says: 'shelf-1 stands in the way of wardrobe-rail-1, or in the 30 mm over it that coat hangers need to be lifted off. Move the one or the other.',
      severity: 'error',
    },
    {
      carcass: 'kind: tall\nwidth: 800\nwardrobe-rails: [{ at: 1700, bay: «3» }]',
      says: 'There is no bay 3 for this rail: the carcass has one bay.',
    },
    {
      carcass: 'kind: tall\nwidth: 800\nrows: none\nwardrobe-rails: [«9»]',
      says: 'The sockets of wardrobe-rail-1 do not stand on left and right, so nothing is bored for them. Check the height and the distance from the front.',
      panel: 'left',
    },
  ],
  sound: [{ carcass: 'kind: tall\nwidth: 800\nfixed-shelves: [1736]\nwardrobe-rails: [1685.5]' }],
  repairs: [
    [
      'Lower the rail to 1685.5 mm',
      'carcasses:\n  a:\n    kind: tall\n    width: 800\n    fixed-shelves: [1736]\n    wardrobe-rails: [1700] # coats\n',
      'carcasses:\n  a:\n    kind: tall\n    width: 800\n    fixed-shelves: [1736]\n    wardrobe-rails: [1685.5] # coats\n',
    ],
  ],
});
