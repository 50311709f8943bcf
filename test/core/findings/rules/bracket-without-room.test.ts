import { rule } from './rule-tests.js';

// The hook is 66 high about bores 40 and 72 from the top: from 23 to 89 under it, that is from 631 to 697 in a side of 720.
const SHOP = `brackets:
  hook: { holes: [{ from-top: 40, from-back: 48 }, { from-top: 72, from-back: 48 }], diameter: 10, depth: 12, height: 66, reach: 30, width: 18 }
  low-hook: { holes: [{ from-top: 140, from-back: 48 }], diameter: 10, depth: 12 }
habits: { bracket: none }
`;

rule('bracket-without-room', {
  tells: [
    {
      carcass: 'kind: wall\nwidth: 600\nbrackets: «hook-130»\nfixed-shelves: [648]',
      says: '‘hook-130’ has no room on left and right: shelf-1 stands where it is screwed on. Move it, or use another bracket.',
      severity: 'error',
      panel: 'left',
    },
    {
      carcass: 'kind: wall\nwidth: 600\nheight: 80\nback: none\nrows: none\nbrackets: «low-hook»',
      shop: SHOP,
      says: 'A bore of ‘low-hook’ does not stand on left and right, 80 mm high and 330 mm deep, so nothing is bored for it. Use another bracket, or a larger carcass.',
    },
  ],
  sound: [
    // The shelf of 16 mm just lies under the hook.
    { carcass: 'kind: wall\nwidth: 600\nback: none\nbrackets: hook\nrows: none\nfixed-shelves: [623]', shop: SHOP },
    { carcass: 'kind: wall\nwidth: 600\nbrackets: none\nfixed-shelves: [648]' },
  ],
});
