import { rule } from './rule-tests.js';

rule('band-missing', {
  tells: [
    {
      carcass: 'kind: open\nwidth: 600\nband: «none»',
      says: 'The front edges of left, right, bottom and top have no band. Name one with `band`.',
      severity: 'warning',
      panel: 'left',
    },
    {
      carcass: 'kind: base\nwidth: 600\npanels:\n  bottom: { bands: { front: «none» } }',
      says: 'The front edge of bottom has no band. Name one with `band`.',
      severity: 'warning',
      panel: 'bottom',
    },
  ],
  sound: [{ carcass: 'kind: open\nwidth: 600\nband: band-2' }],
  repairs: [
    // In the defaults of the file, where it is written.
    [
      'Band the front edge with ‘band-1’ (1 mm)',
      'defaults:\n  band: none # to do\ncarcasses:\n  a:\n    kind: open\n    width: 600\n',
      'defaults:\n  band: band-1 # to do\ncarcasses:\n  a:\n    kind: open\n    width: 600\n',
    ],
  ],
});
