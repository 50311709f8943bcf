import { rule } from './rule-tests.js';

rule('dowel-place-unused', {
  tells: [
    {
      carcass: 'kind: wall\nwidth: 600\ndowels: [53, 213, «373»]',
      says: 'The place 373 mm from the front edge is not bored because no two panels meet there. Move it, or remove it from the list.',
      severity: 'warning',
    },
  ],
  sound: [{ carcass: 'kind: wall\nwidth: 600\ndowels: [53, 181, 277]' }],
  repairs: [
    [
      'Remove 373 mm from the list',
      'carcasses:\n  a:\n    kind: wall\n    width: 600\n    dowels: [53, 213, 373]\n',
      'carcasses:\n  a:\n    kind: wall\n    width: 600\n    dowels: [53, 213]\n',
    ],
  ],
});
