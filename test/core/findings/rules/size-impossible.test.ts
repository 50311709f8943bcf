import { rule } from './rule-tests.js';

rule('size-impossible', {
  tells: [
    {
      carcass: 'kind: base\nwidth: 600\nfixed-shelves: [«900»]',
      says: 'shelf-1 does not find room at 900 mm between bottom and rails. Give a height from 24 mm to 696 mm.',
      severity: 'error',
    },
  ],
  sound: [{ carcass: 'kind: base\nwidth: 600\nfixed-shelves: [360]' }],
});
