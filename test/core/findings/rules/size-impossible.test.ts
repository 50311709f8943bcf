import { rule } from './rule-tests.js';

rule('size-impossible', {
  tells: [
    {
      carcass: 'kind: base\nwidth: 600\nfixed-shelves: [«900»]',
      says: 'shelf-1 at 900 mm does not fit between bottom and rails. Put it between 24 mm and 696 mm.',
      severity: 'error',
    },
  ],
  sound: [{ carcass: 'kind: base\nwidth: 600\nfixed-shelves: [360]' }],
});
