import { rule } from './rule-tests.js';

const FIXED = 'kind: base\nwidth: 600\nfronts: [{ front: fixed, height: 140 }, pair]\n';

rule('angle-unknown', {
  tells: [
    {
      carcass: `${FIXED}angles: «angle-23»`,
      says: '‘angle-23’ is not an angle of the shop. Use ‘angle-32’.',
      severity: 'error',
    },
  ],
  sound: [{ carcass: `${FIXED}angles: angle-32` }, { carcass: `${FIXED}angles: none` }],
});
