import { rule } from './rule-tests.js';

rule('clothes-without-depth', {
  tells: [
    {
      carcass: 'kind: tall\nwidth: 800\ndepth: 440\nback: none\nrows: none\nwardrobe-rails: [«1700»]',
      says: 'Coat hangers 450 mm wide need 225 mm before and behind wardrobe-rail-1, and there are 220 mm and 220 mm. Move the rail, or make the carcass deeper.',
      severity: 'warning',
    },
    {
      // An inset door of 16 mm takes as much of 460 mm: 230 mm less 16 mm before the middle.
      carcass:
        'kind: tall\nwidth: 500\ndepth: 460\nback: none\nrows: none\ndoors: { hung: left, how: inset }\nwardrobe-rails: [«1700»]',
      says: 'Coat hangers 450 mm wide need 225 mm before and behind wardrobe-rail-1, and there are 214 mm and 230 mm. Move the rail, or make the carcass deeper.',
    },
  ],
  sound: [{ carcass: 'kind: tall\nwidth: 800\ndepth: 450\nback: none\nrows: none\nwardrobe-rails: [1700]' }],
  repairs: [
    [
      'Put the rail in the middle of the depth',
      'carcasses:\n  a:\n    kind: tall\n    width: 800\n    wardrobe-rails: [{ at: 1700, from-front: 200 }]\n',
      'carcasses:\n  a:\n    kind: tall\n    width: 800\n    wardrobe-rails: [{ at: 1700 }]\n',
    ],
  ],
});
