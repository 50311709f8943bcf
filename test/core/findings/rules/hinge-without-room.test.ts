import { rule } from './rule-tests.js';

rule('hinge-without-room', {
  tells: [
    {
      carcass: 'kind: wall\nwidth: 600\nheight: 336\ndoors: «left»\nfixed-shelves: [88, 136, 184, 232]',
      says: 'Hinge 1 of door-1, counted from the bottom, has no place of its own: wherever the pitch lets it stand, something is in its room, here shelf-4. Move that, make the door higher, or hang it on the other hand.',
      severity: 'error',
    },
    {
      carcass: 'kind: wall\nwidth: 600\nheight: 100\ndoors: «left»',
      says: 'Hinges 1 and 2 of door-1, counted from the bottom, have no places of their own: wherever the pitch lets them stand, something is in their room, here top. Move that, make the door higher, or hang it on the other hand.',
      severity: 'error',
    },
    {
      carcass: 'kind: wall\nwidth: 600\nheight: 70\ndoors: «left»',
      says: 'door-1 is 67 mm high and asks for 2 hinges, but the pitch has no places for so many of ‘hinge-110’. Make the door higher, or write `hinge: none` and hang it otherwise.',
      severity: 'error',
    },
  ],
  sound: [{ carcass: 'kind: wall\nwidth: 600\nheight: 336\ndoors: left\nfixed-shelves: [168]' }],
});
