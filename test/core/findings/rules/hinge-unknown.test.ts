import { rule } from './rule-tests.js';

rule('hinge-unknown', {
  tells: [
    {
      carcass: 'kind: wall\nwidth: 600\ndoors: { hung: left, hinge: «hinge-101» }',
      says: '‘hinge-101’ is not a hinge of the shop. Use ‘hinge-110’ or ‘hinge-corner-45’.',
      severity: 'error',
    },
  ],
  sound: [
    { carcass: 'kind: wall\nwidth: 600\ndoors: { hung: left, hinge: hinge-110 }' },
    { carcass: 'kind: wall\nwidth: 600\ndoors: { hung: left, hinge: none }' },
  ],
});
