import { rule } from './rule-tests.js';

const job = (fronts: string): string =>
  `carcasses:\n  sink:\n    kind: base\n    width: 600\n    fronts:\n      - { front: left, height: 143 }\n      - ${fronts}\n`;

rule('fronts-leave-open', {
  tells: [
    {
      // 720 less 3 at the top is 717; 143 + 3 + 560 is 706.
      carcass: 'kind: base\nwidth: 600\nfronts: [{ front: left, height: 143 }, { front: left, height: «560» }]',
      says: 'The fronts leave 11 mm open at the bottom, because each has a height of its own. Leave out the height of one, or make one higher by as much.',
      severity: 'warning',
    },
    {
      // Between bottom and front rail there are 688; less a gap of 3 at either end 682.
      carcass:
        'kind: base\nwidth: 900\ndividers: 1\ndoors: { how: inset }\nfronts: [{ front: left, height: «680», bay: 2 }]',
      says: 'The fronts before bay 2 leave 2 mm open at the bottom, because each has a height of its own. Leave out the height of one, or make one higher by as much.',
    },
    {
      // Under the rails there are 704; 104 is the appliance, and a gap of 3 and the reveal of 0 at the bottom leave 597.
      carcass:
        'kind: base\nwidth: 600\nback: none\nfronts: [{ front: appliance, height: 104 }, { front: left, height: «590» }]',
      says: 'The fronts leave 7 mm open at the bottom, because each has a height of its own. Leave out the height of one, or make one higher by as much.',
    },
  ],
  sound: [
    { carcass: 'kind: base\nwidth: 600\nfronts: [{ front: left, height: 243 }, { front: left, height: 471 }]' },
    { carcass: 'kind: base\nwidth: 600\nfronts: [{ front: left, height: 300 }, open]' },
    { carcass: 'kind: base\nwidth: 600\nfronts: [{ front: left, height: 300 }, { front: open, height: 300 }]' },
  ],
  repairs: [
    ['Let the lowest front take what is left', job('{ front: left, height: 560 }'), job('{ front: left }')],
    ['Make the lowest front 571 mm high', job('{ front: left, height: 560 }'), job('{ front: left, height: 571 }')],
  ],
});
