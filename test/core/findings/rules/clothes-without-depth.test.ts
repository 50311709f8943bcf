import { rule } from './rule-tests.js';

rule('clothes-without-depth', {
  tells: [
    {
      carcass: 'kind: tall\nwidth: 800\ndepth: 440\nback: none\nrows: none\nwardrobe-rails: [«1700»]',
      says: 'Coat hangers 450 mm wide need 225 mm before and behind wardrobe-rail-1, and there are 220 mm and 220 mm. Move the rail, or make the carcass deeper.',
      severity: 'warning',
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
