import { rule } from './rule-tests.js';

rule('clamp-too-small', {
  tells: [
    {
      carcass: 'kind: base\nwidth: «1600»',
      says: 'The box is 1600 mm wide; ‘case-clamp’ holds between 200 mm and 1500 mm. Change `width`, or choose another clamp (`machines: clamp`).',
      severity: 'error',
    },
    {
      carcass: 'kind: open\nwidth: 600\nheight: «176»',
      says: 'The box is 176 mm high; ‘case-clamp’ holds between 200 mm and 2400 mm. Change `height`, or choose another clamp (`machines: clamp`).',
      severity: 'error',
    },
    {
      // Its other wing makes it so deep.
      carcass: 'kind: base\nwidth: 900\ndiagonal: { left: «720» }',
      says: 'The box is 720 mm deep; ‘case-clamp’ holds between 100 mm and 700 mm. Change `diagonal`, or choose another clamp (`machines: clamp`).',
    },
  ],
  sound: [
    // 1500 is the widest that the clamp holds.
    { carcass: 'kind: base\nwidth: 1500' },
  ],
});
