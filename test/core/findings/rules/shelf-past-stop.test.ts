import { rule } from './rule-tests.js';

rule('shelf-past-stop', {
  tells: [
    {
      carcass: 'kind: tall\nwidth: 600\nfixed-shelves: [«1032»]',
      shop: 'faults.shop.yaml',
      says: 'The line of shelf-1 in left and right stands 1032 mm from the bottom end and 1032 mm from the top end. On ‘upright’, the 2 stops on the left reach 700 mm (900 mm with the extension) and the 2 stops on the right reach 700 mm (900 mm with the extension). Move it nearer to an end, or give the machine an extension of 332 mm or a stop that reaches 1032 mm.',
      severity: 'error',
      panel: 'left',
    },
    {
      // 0.1 past stop and extension; from the top end it is farther
      carcass: 'kind: tall\nwidth: 600\nfixed-shelves: [«900.1»]',
      shop: 'faults.shop.yaml',
      says: 'The line of shelf-1 in left and right stands 900.1 mm from the bottom end and 1163.9 mm from the top end. On ‘upright’, the 2 stops on the left reach 700 mm (900 mm with the extension) and the 2 stops on the right reach 700 mm (900 mm with the extension). Move it nearer to an end, or give the machine an extension of 200.1 mm or a stop that reaches 900.1 mm.',
      panel: 'left',
    },
    {
      // the bottom is 1968 long and starts 16 in
      carcass: 'kind: base\nwidth: 2000\ndividers: [«1000»]',
      shop: 'faults.shop.yaml',
      says: 'The line of divider-1 in bottom, rail-front and rail-back stands 984 mm from the left end and 984 mm from the right end. On ‘upright’, the 2 stops on the right reach 700 mm (900 mm with the extension) and the 2 stops on the left reach 700 mm (900 mm with the extension). Move it nearer to an end, or give the machine an extension of 284 mm or a stop that reaches 984 mm.',
      severity: 'error',
      panel: 'bottom',
    },
  ],
  sound: [
    // Hole 28 stands 872 from the bottom end: less than the 900 of stop and extension.
    { carcass: 'kind: tall\nwidth: 600\nfixed-shelves: [872]', shop: 'faults.shop.yaml' },
    // Just the 700 of the stop and the 200 of the extension.
    { carcass: 'kind: tall\nwidth: 600\nfixed-shelves: [900]', shop: 'faults.shop.yaml' },
  ],
  repairs: [
    [
      // 1032 - 872 = 160 down, and the next that a stop of the other hand reaches, 2064 - 1192 = 872 from the top, 160 up
      'Move shelf-1 up to 1192 mm (hole 38), where a stop reaches',
      'shop: faults.shop.yaml\ncarcasses:\n  a:\n    kind: tall\n    width: 600\n    fixed-shelves: [1032]\n',
      'shop: faults.shop.yaml\ncarcasses:\n  a:\n    kind: tall\n    width: 600\n    fixed-shelves: [1192]\n',
    ],
    [
      'Move shelf-1 down to 872 mm (hole 28), where a stop reaches',
      'shop: faults.shop.yaml\ncarcasses:\n  a:\n    kind: tall\n    width: 600\n    fixed-shelves: [1032]\n',
      'shop: faults.shop.yaml\ncarcasses:\n  a:\n    kind: tall\n    width: 600\n    fixed-shelves: [872]\n',
    ],
  ],
});
