import { rule } from './rule-tests.js';

const job = (more: string): string =>
  `carcasses:\n  sink:\n    kind: base\n    width: 600\n    rear-row: 389\n    fronts: [drawer, drawer]\n${more}`;

rule('drawer-lower-than-slide', {
  tells: [
    {
      // The line is 30 over the lower edge, and half of the slide's 46 over that.
      carcass: 'kind: base\nwidth: 600\nrear-row: 389\nfronts: [drawer]\ndrawers: { height: 52.9 }'.replace(
        '[drawer]',
        '[«drawer»]',
      ),
      says: 'The box of drawer-1 is 52.9 mm high, and ‘slide-45’ reaches 53 mm over the lower edge. Make the front or the box higher, or use a lower slide.',
      severity: 'warning',
    },
  ],
  sound: [{ carcass: 'kind: base\nwidth: 600\nrear-row: 389\nfronts: [drawer]\ndrawers: { height: 90 }' }],
  repairs: [
    [
      'Make the boxes as high as their places allow',
      job('    drawers: { height: 45, bottom: grooved }\n'),
      job('    drawers: { bottom: grooved }\n'),
    ],
  ],
});
