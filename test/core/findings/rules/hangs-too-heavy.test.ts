import { rule } from './rule-tests.js';

rule('hangs-too-heavy', {
  tells: [
    {
      carcass: 'kind: wall\nwidth: 400\nback: none\nload: 10\nfixed-shelves: 1',
      shop: 'habits: { bracket-rating: 25 }\n',
      says: 'The carcass weighs 9.13 kg, and 20 kg stand in it; its brackets carry 25 kg together (`bracket-rating`). Make it smaller or of lighter board, put less in it, or use other brackets. This is an estimate from published figures, no structural approval: wall, fixing and load are for someone competent to judge.',
      severity: 'error',
    },
    {
      carcass: 'kind: wall\nwidth: 400\nback: none\nload: 10\nfixed-shelves: 1\nbrackets: light',
      shop: 'brackets:\n  light: { holes: [{ from-top: 40, from-back: 48 }], diameter: 10, depth: 12, rating: 20 }\n  strong: { holes: [{ from-top: 40, from-back: 48 }], diameter: 10, depth: 12, rating: 60 }\nhabits: { bracket-rating: 500 }\n',
      says: 'The carcass weighs 9.13 kg, and 20 kg stand in it; its brackets carry 20 kg together (‘light’). Make it smaller or of lighter board, put less in it, or use other brackets. This is an estimate from published figures, no structural approval: wall, fixing and load are for someone competent to judge.',
      severity: 'error',
    },
  ],
  sound: [
    { carcass: 'kind: wall\nwidth: 400\nload: 10\nfixed-shelves: 1', shop: 'habits: { bracket-rating: 40 }\n' },
    { carcass: 'kind: base\nwidth: 400\nload: 10\nfixed-shelves: 1', shop: 'habits: { bracket-rating: 3 }\n' },
    { carcass: 'kind: wall\nwidth: 400\nload: 10\nfixed-shelves: 1' },
  ],
});
