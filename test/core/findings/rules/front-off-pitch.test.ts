import { rule } from './rule-tests.js';

const job = (heights: string, first: string, height = '720'): string =>
  `carcasses:\n  sink:\n    kind: base\n    width: 600\n    height: ${height} # low\n    front-heights: ${heights}\n    fronts:\n      - ${first}\n      - fixed\n      - fixed\n`;

rule('front-off-pitch', {
  tells: [
    {
      // 140 and 3 are 143; 4 x 32 is 128.
      carcass:
        'kind: base\nwidth: 600\nfront-heights: on-pitch\nfronts: [{ front: fixed, height: «140» }, { front: left, pitches: 8 }, fixed, fixed]',
      says: 'A height of 140 mm and the gap of 3 mm under it come to 15 mm more than 4 pitches, so slides and plates stand otherwise behind the fronts under it than behind those above. Make it 125 mm high.',
      severity: 'warning',
    },
    {
      // 120 and 3 are 123, 5 short of 128.
      carcass:
        'kind: base\nwidth: 600\nfront-heights: on-pitch\nfronts: [{ front: fixed, height: «120» }, { front: left, pitches: 8 }, fixed, fixed]',
      says: 'A height of 120 mm and the gap of 3 mm under it come to 5 mm less than 4 pitches, so slides and plates stand otherwise behind the fronts under it than behind those above. Make it 125 mm high.',
    },
    {
      // 150 - 3 + 3 is 4.7 pitches: three stepped by 1 take 1, 2 and 3.
      carcass:
        'kind: open\nwidth: 600\nheight: 150\nrows: none\nfront-heights: «stepped»\nfronts: [fixed, fixed, fixed]',
      says: '3 fronts share 4 pitches, and stepped by 1 they need 6, so they are made alike and off the pitch. Make the carcass higher, or the step less.',
    },
    {
      carcass:
        'kind: open\nwidth: 900\ndividers: 1\nheight: 80\nrows: none\nfront-heights: «on-pitch»\nfronts: [{ front: fixed, bay: 2 }, fixed, { front: fixed, bay: 2 }]',
      says: '3 fronts before bay 2 share 2 pitches, and in whole pitches they need 3, so they are made alike and off the pitch. Make the carcass higher, or use fewer fronts.',
    },
  ],
  sound: [
    {
      carcass:
        'kind: base\nwidth: 600\nfront-heights: on-pitch\nfronts: [{ front: fixed, height: 157 }, { front: left, pitches: 8 }, fixed, fixed]',
    },
    // The lowest one takes what is left of the pitch, and may as well be given.
    {
      carcass: 'kind: base\nwidth: 600\nfront-heights: on-pitch\nfronts: [fixed, fixed, { front: fixed, height: 140 }]',
    },
  ],
  repairs: [
    [
      'Give it 4 pitches, which makes it 125 mm high',
      job('on-pitch', '{ front: fixed, height: 140 }'),
      job('on-pitch', '{ front: fixed, pitches: 4 }'),
    ],
    [
      'Make it 125 mm high',
      job('on-pitch', '{ front: fixed, height: 140 }'),
      job('on-pitch', '{ front: fixed, height: 125 }'),
    ],
    [
      'Step the fronts by 5',
      job('{ how: stepped, step: 12 }', 'fixed', '1136'),
      job('{ how: stepped, step: 5 }', 'fixed', '1136'),
    ],
    ['Divide the fronts with `on-pitch`', job('{ how: stepped, step: 9 }', 'fixed'), job('{ how: on-pitch }', 'fixed')],
    [
      'Make the carcass 1552 mm high',
      job('{ how: stepped, step: 9 }', 'fixed', '720'),
      job('{ how: stepped, step: 9 }', 'fixed', '1552'),
    ],
  ],
});
