import { rule } from './rule-tests.js';

rule('panel-unknown', {
  tells: [
    {
      carcass: 'kind: base\nwidth: 600\npanels:\n  «botom»: { rows: none }',
      says: 'The carcass has no panel ‘botom’. Did you mean `bottom`?',
      severity: 'error',
    },
    // Rails stand in the place of the top.
    {
      carcass: 'kind: base\nwidth: 600\npanels:\n  «top»: { rows: none }',
      says: 'The carcass has no panel ‘top’. Its panels are left, right, bottom, rail-front, rail-back and back.',
      severity: 'error',
    },
  ],
  sound: [
    { carcass: 'kind: base\nwidth: 600\ntop: between\npanels:\n  top: { bands: { back: band-1 } }' },
    { carcass: 'kind: base\nwidth: 600\npanels:\n  bottom: { bands: { back: band-1 } }' },
  ],
  repairs: [
    [
      'Rename to bottom',
      'carcasses:\n  a:\n    kind: base\n    width: 600\n    panels:\n      botom: # under the sink\n        rows: none\n',
      'carcasses:\n  a:\n    kind: base\n    width: 600\n    panels:\n      bottom: # under the sink\n        rows: none\n',
    ],
  ],
});
