import { rule } from './rule-tests.js';

rule('machine-unknown', {
  tells: [
    {
      carcass: 'kind: base\nwidth: 600\nmachines: { rows: «row-dril» }',
      says: '‘row-dril’ is not a line drill of the shop. Use ‘row-drill’.',
      severity: 'error',
    },
    {
      carcass: 'kind: base\nwidth: 600\nmachines: { clamp: «face-head» }',
      says: '‘face-head’ is a vertical head, not a case clamp. Use ‘case-clamp’.',
      severity: 'error',
    },
  ],
  sound: [{ carcass: 'kind: base\nwidth: 600\nmachines: { rows: row-drill, clamp: case-clamp }' }],
  repairs: [
    [
      'Use ‘row-drill’',
      'carcasses:\n  a:\n    kind: base\n    width: 600\n    machines: { rows: row-dril }\n',
      'carcasses:\n  a:\n    kind: base\n    width: 600\n    machines: { rows: row-drill }\n',
    ],
  ],
});
