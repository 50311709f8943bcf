import { rule } from './rule-tests.js';

rule('tips-when-open', {
  tells: [
    {
      carcass: 'kind: tall\nwidth: 600\ndepth: 250\ndoors: left',
      says: 'Empty and with its doors open the carcass tips forward: the doors (13.4 kg) have their centre 316.5 mm before the line that it tips about, the rest (17 kg) has its own 141.98 mm behind it. Fix it to the wall before its doors are hung, or make it deeper or its doors narrower. This is an estimate from published figures, no structural approval: wall, fixing and load are for someone competent to judge.',
      severity: 'warning',
    },
  ],
  sound: [
    { carcass: 'kind: tall\nwidth: 600\ndoors: left' },
    { carcass: 'kind: tall\nwidth: 600\ndepth: 250\ndoors: pair' },
    { carcass: 'kind: wall\nwidth: 600\ndepth: 250\ndoors: left' },
  ],
});
