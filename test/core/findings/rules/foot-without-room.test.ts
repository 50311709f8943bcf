import { rule } from './rule-tests.js';

/** Front feet of 70 mm about so far behind the front; the plinth stands from 50 to 66 behind it. */
const shop = (fromFront: number): string =>
  `feet: { near: { range: 90 to 150, from-front: ${fromFront}, from-back: 50, from-side: 60, apart: 700, diameter: 10, depth: 11, base: 70 } }\n`;

rule('foot-without-room', {
  tells: [
    {
      carcass: 'kind: base\nwidth: 600\nplinth: 120\nfeet: «near»',
      shop: shop(100),
      says: 'foot-1 and foot-2 (‘near’) stand 1 mm in the plinth. Stand the front feet further back (`from-front` of the foot).',
      severity: 'error',
      panel: 'plinth',
    },
    {
      carcass: 'kind: base\nwidth: 600\ndepth: 160\nback: none\nrows: none\nplinth: 120\nfeet: «near»',
      shop: shop(158),
      says: 'The bores of foot-1 and foot-2 (‘near’) do not stand on the bottom, so they are not made. Use another foot, or a larger carcass.',
      panel: 'bottom',
    },
  ],
  sound: [{ carcass: 'kind: base\nwidth: 600\nplinth: 120\nfeet: near', shop: shop(101) }],
});
