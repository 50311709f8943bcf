import { rule } from './rule-tests.js';

/** Screws 80 in from the upright, 3 thick with 3 of wood beside them: fillers of 84.5 and more take them. */
const SHOP =
  'angles: { wide: { in-front: 80, behind-front: 39, from-end: 64, apart: 600, diameter: 5, depth: 11, front-diameter: 3, front-depth: 10 } }\n';
const SMALL =
  'angles: { small: { in-front: 20, behind-front: 39, from-end: 64, apart: 600, diameter: 5, depth: 11, front-diameter: 3, front-depth: 10, reach: 30 } }\n';
const filler = (width: string): string =>
  `kind: base\nwidth: 600\ndoors: { hung: left, reveal: 3 }\nfillers: { right: ${width} }`;

rule('front-not-held', {
  tells: [
    {
      carcass: filler('«84.4»'),
      shop: SHOP,
      says: 'No ‘wide’ finds a place behind filler-right, so nothing holds it. Make it larger, clear the corner behind, or use another angle.',
      severity: 'warning',
      panel: 'filler-right',
    },
    {
      // The shelf fills the whole corner behind a front that is no higher than it.
      carcass:
        'kind: tall\nwidth: 600\nfixed-shelves: [1096, 1160]\nfronts: [left, { front: «fixed», height: 60 }, { front: left, height: 1100 }]',
      says: 'No ‘angle-32’ finds a place behind fixed-1, so nothing holds it. Make it larger, clear the corner behind, or use another angle.',
    },
    {
      // Its leg would stand in the wall.
      carcass: filler('«49»'),
      says: 'No ‘angle-32’ finds a place behind filler-right, so nothing holds it. Make it larger, clear the corner behind, or use another angle.',
    },
    {
      // The built-in head takes panels of 50 and more.
      carcass: filler('«49»'),
      shop: SMALL,
      says: 'Bores for ‘small’ are made in what stands behind filler-right, but not in it: 49 mm wide, and ‘face-head’ takes 50 mm and more (`panel`). Drive the screws by hand through the angles, once it is fitted to the wall.',
      severity: 'info',
      panel: 'filler-right',
    },
    {
      carcass: 'kind: wall\nwidth: 600\ndepth: 320\ndiagonal: { left: 600 }\nfronts: [«fixed»]',
      says: 'fixed-1 slants across the corner, and ‘angle-32’ is made for a square one, so nothing holds it. Write `angles: none`, and screw it on from inside, to bottom and top.',
      panel: 'fixed-1',
    },
  ],
  sound: [
    { carcass: filler('84.5'), shop: SHOP },
    { carcass: filler('80') },
    { carcass: filler('80'), shop: SMALL },
    { carcass: `${filler('84.4')}\nangles: none`, shop: SHOP },
    { carcass: 'kind: wall\nwidth: 600\ndepth: 320\ndiagonal: { left: 600 }\nfronts: [fixed]\nangles: none' },
  ],
});
