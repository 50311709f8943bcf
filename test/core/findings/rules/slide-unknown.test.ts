import { rule } from './rule-tests.js';

rule('slide-unknown', {
  tells: [
    {
      carcass: 'kind: base\nwidth: 600\nfronts: [drawer, drawer]\ndrawers: { slide: «slide-54» }',
      says: '‘slide-54’ is not a slide of the shop. Use ‘slide-45’.',
      severity: 'error',
    },
  ],
  sound: [{ carcass: 'kind: base\nwidth: 600\nrear-row: 389\nfronts: [drawer, drawer]\ndrawers: { slide: slide-45 }' }],
});
