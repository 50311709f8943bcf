import { rule } from './rule-tests.js';

const job = (hand: string): string =>
  `carcasses:\n  sink:\n    kind: base\n    width: 1100\n    blind: { right: 580 }\n    doors: ${hand} # to the window\n`;

rule('door-hung-on-blind', {
  tells: [
    {
      carcass: 'kind: base\nwidth: 1100\nblind: { right: 580 }\ndoors: «right»',
      says: 'door-1 is hung on the right, beside the blind panel, where no upright stands to carry its hinges. Hang it on the left, or stand a divider at 458.5 mm (`dividers`), behind the edge of the blind panel.',
      severity: 'error',
      panel: 'door-1',
    },
    {
      carcass: 'kind: base\nwidth: 1300\nblind: { left: 580 }\ndoors: «pair»',
      says: 'door-1 is hung on the left, beside the blind panel, where no upright stands to carry its hinges. Hang it on the right, or stand a divider at 641.5 mm (`dividers`), behind the edge of the blind panel.',
      panel: 'door-1',
    },
  ],
  sound: [
    { carcass: 'kind: base\nwidth: 1100\nblind: { right: 580 }\ndoors: left' },
    // The divider carries it.
    { carcass: 'kind: base\nwidth: 1100\ndividers: [458.5]\nblind: { right: 580 }\ndoors: { bays: [right, none] }' },
  ],
  repairs: [['Hang it on the left', job('right'), job('left')]],
});
