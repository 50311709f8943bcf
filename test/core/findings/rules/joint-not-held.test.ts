import { rule } from './rule-tests.js';

rule('joint-not-held', {
  tells: [
    {
      // 560 deep, the last cam at 363: 197 bare behind it, with 192 allowed
      carcass: 'kind: wall\nwidth: 600\ndepth: 560\njoint: cam-15\ndowels: [53, 213, 363]',
      says: 'The joints of bottom and left, of bottom and right and 2 more have no bore for 197 mm behind the one at 363 mm (limit 192 mm, `dowel-spacing`). Add places with `dowels`, or choose a head with more spindles.',
      severity: 'warning',
      panel: 'bottom',
    },
    {
      // 60 of depth takes one spindle of 21, 53, ... with 12 beside it
      carcass: 'kind: base\nwidth: 600\nrail-width: 60',
      says: 'The joints of rail-front and left, of rail-front and right and 2 more, 60 mm deep, have one bore only, at 21 mm, and the panel can turn about it. Give two places with `end-dowels` of the panel (under `panels`), or make the panel wider.',
      severity: 'warning',
      panel: 'rail-front',
    },
  ],
  sound: [
    { carcass: 'kind: wall\nwidth: 600\njoint: dowel-10x40\nboard: board-19' },
    { carcass: 'kind: for-drawers\nwidth: 800' },
  ],
});
