import { rule } from './rule-tests.js';

rule('tips-when-open', {
  tells: [
    {
      carcass: 'kind: tall\nwidth: 600\ndepth: 250\ndoors: left',
      says: 'Empty and with its doors open the carcass tips forward: the doors (13.4 kg) have their centre 316.5 mm before the line that it tips about, the rest (17 kg) has its own 141.98 mm behind it. Fix it to the wall before its doors are put in, or make it deeper or its doors narrower. This is an estimate from published figures, no structural approval: wall, fixing and load are for someone competent to judge.',
      severity: 'warning',
    },
    {
      carcass: 'kind: open\nwidth: 600\nheight: 720\nfronts: [drawer, drawer]',
      says: 'Empty and with its drawers open the carcass tips forward: the drawers (15.8 kg) have their centre 198.37 mm before the line that it tips about, the rest (10.2 kg) has its own 178.37 mm behind it. Fix it to the wall before its drawers are put in, or make it deeper. This is an estimate from published figures, no structural approval: wall, fixing and load are for someone competent to judge.',
      severity: 'warning',
    },
  ],
  sound: [
    // Under a worktop, where it would tip.
    { carcass: 'kind: for-drawers\nwidth: 600\nrows: none\nfronts: [drawer, drawer, drawer]' },
    { carcass: 'kind: tall\nwidth: 600\ndoors: left' },
    { carcass: 'kind: tall\nwidth: 600\ndepth: 250\ndoors: pair' },
    { carcass: 'kind: wall\nwidth: 600\ndepth: 250\ndoors: left' },
  ],
});
