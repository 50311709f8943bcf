import { rule } from './rule-tests.js';

rule('pull-unknown', {
  tells: [
    {
      carcass: 'kind: base\nwidth: 600\ndoors: left\npulls: «bar-106»',
      says: '‘bar-106’ is not a pull of the shop. Use ‘bar-160’ or ‘knob’.',
      severity: 'error',
    },
    {
      carcass: 'kind: base\nwidth: 600\nrear-row: 389\nfronts: [{ front: drawer, pull: «nob» }, drawer]',
      says: '‘nob’ is not a pull of the shop. Use ‘bar-160’ or ‘knob’.',
      severity: 'error',
    },
  ],
  sound: [
    { carcass: 'kind: base\nwidth: 600\ndoors: left\npulls: bar-160' },
    { carcass: 'kind: base\nwidth: 600\ndoors: left\npulls: none' },
  ],
});
