import { rule } from './rule-tests.js';

rule('joint-crowded', {
  tells: [
    {
      carcass: 'kind: base\nwidth: 600\npanels:\n  rail-front:\n    far-end: { dowels: «6» }',
      says: '6 places of rail-front/right are asked for, and the spindles have room for 3. Ask for fewer, or make the panel wider.',
      severity: 'warning',
      panel: 'rail-front',
    },
  ],
  sound: [{ carcass: 'kind: base\nwidth: 600\npanels:\n  rail-front:\n    far-end: { dowels: 3 }' }],
  repairs: [
    [
      'Bore 3 places',
      'carcasses:\n  a:\n    kind: base\n    width: 600\n    panels:\n      rail-front:\n        end-dowels: 7 # strong\n',
      'carcasses:\n  a:\n    kind: base\n    width: 600\n    panels:\n      rail-front:\n        end-dowels: 3 # strong\n',
    ],
  ],
});
