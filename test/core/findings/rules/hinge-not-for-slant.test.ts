import { rule } from './rule-tests.js';

const CORNER = 'kind: wall\nwidth: 600\ndepth: 320\ndiagonal: { right: 600 }';
const job = (doors: string): string =>
  `carcasses:\n  sink:\n    kind: wall\n    width: 600\n    depth: 320\n    diagonal: { right: 600 }\n    doors: ${doors}\n`;

rule('hinge-not-for-slant', {
  tells: [
    {
      // 280 along either wall: half of a right angle
      carcass: `${CORNER}\ndoors: «left»`,
      says: 'door-1 slants 45° away from a front square to the side, and ‘hinge-110’ is made for fronts that do not slant (`slant`). Choose a hinge that is made for it (`doors: hinge`).',
      severity: 'error',
      panel: 'door-1',
    },
    {
      // 280 along the one wall and 380 along the other: atan(380 / 280) is 53.6 degrees
      carcass:
        'kind: wall\nwidth: 600\ndepth: 320\ndiagonal: { right: 700 }\ndoors: { hung: left, hinge: «hinge-corner-45» }',
      says: 'door-1 slants 53.6° away from a front square to the side, and ‘hinge-corner-45’ is made for 45° (`slant`). Choose a hinge that is made for it (`doors: hinge`).',
      panel: 'door-1',
    },
    {
      carcass: 'kind: wall\nwidth: 600\ndepth: 320\ndoors: { hung: left, hinge: «hinge-corner-45» }',
      says: 'door-1 stands square to the side, and ‘hinge-corner-45’ is made for fronts that slant 45° (`slant`). Choose another hinge (`doors: hinge`).',
      panel: 'door-1',
    },
  ],
  sound: [
    { carcass: `${CORNER}\ndoors: { hung: left, hinge: hinge-corner-45 }` },
    { carcass: `${CORNER}\ndoors: { hung: right, hinge: hinge-corner-45 }` },
    // 280 and 288: 45.8 degrees, which the hinge takes up
    {
      carcass:
        'kind: wall\nwidth: 600\ndepth: 320\ndiagonal: { left: 608 }\ndoors: { hung: right, hinge: hinge-corner-45 }',
    },
  ],
  repairs: [
    ['Hang them on ‘hinge-corner-45’', job('left'), job('{ hung: left, hinge: hinge-corner-45 }')],
    [
      'Hang them on ‘hinge-corner-45’',
      job('{ hung: left, hinge: hinge-110 }'),
      job('{ hung: left, hinge: hinge-corner-45 }'),
    ],
  ],
});
