import { rule } from './rule-tests.js';

const job = (back: string): string =>
  `carcasses:\n  sink:\n    kind: tall\n    width: 600\n${back}    fronts: [left, { front: appliance, height: 595 }, { front: fixed, height: 560 }] # oven\n`;

rule('appliance-without-air', {
  tells: [
    {
      carcass:
        'kind: tall\nwidth: 600\nfronts: [left, { front: «appliance», height: 595 }, { front: fixed, height: 560 }]',
      says: 'The back is closed behind the appliance, and its heat and its pipes have no way out. Leave the back open from 563 mm to 1158 mm, or as the maker’s instructions of the appliance say.',
      severity: 'warning',
    },
    {
      // 298 of 595 are closed.
      carcass:
        'kind: tall\nwidth: 600\nback: { open-from: 861 }\nfronts: [left, { front: «appliance», height: 595 }, { front: fixed, height: 560 }]',
      says: 'The back is closed behind the appliance, and its heat and its pipes have no way out. Leave the back open from 563 mm to 1158 mm, or as the maker’s instructions of the appliance say.',
    },
  ],
  sound: [
    {
      carcass:
        'kind: tall\nwidth: 600\nback: { open-from: 860 }\nfronts: [left, { front: appliance, height: 595 }, { front: fixed, height: 560 }]',
    },
    {
      carcass:
        'kind: tall\nwidth: 600\nback: none\nfronts: [left, { front: appliance, height: 595 }, { front: fixed, height: 560 }]',
    },
  ],
  repairs: [
    [
      'Leave the back open from 563 mm to 1158 mm',
      job('    back: applied # thin\n'),
      job('    back: { how: applied, open-from: 563, open-to: 1158 } # thin\n'),
    ],
    [
      'Leave the back open from 563 mm to 1158 mm',
      job('    back: { inset: 20 }\n'),
      job('    back: { inset: 20, open-from: 563, open-to: 1158 }\n'),
    ],
  ],
});
