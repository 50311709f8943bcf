import { rule } from './rule-tests.js';

const CORNER = 'kind: wall\nwidth: 600\ndepth: 320\ndiagonal: { right: 600 }';
const job = (line: string): string =>
  `carcasses:\n  sink:\n    kind: wall\n    width: 600\n    depth: 320\n    diagonal: { right: 600 }\n${line}`;
const told = (line: string, says: string) => ({ carcass: `${CORNER}\n${line}`, says });

rule('not-in-diagonal', {
  tells: [
    {
      ...told(
        'dividers: «1»',
        'A carcass across a corner is made without dividers, as the bays beside them would have no front of their own. Remove them, or stand another carcass beside it.',
      ),
      severity: 'error',
    },
    told(
      'fixed-shelves: [«328»]',
      'A carcass across a corner is made without fixed shelves, as one of its sides would meet them at their front edge, which is not bored. Make them `loose-shelves`.',
    ),
    told(
      'fronts: [«drawer»]',
      'A drawer cannot run between the sides of a carcass across a corner, which stand square to each other. Put a door there, and the drawer into a carcass beside it.',
    ),
    told(
      'fronts: [«appliance»]',
      'An appliance cannot stand between the sides of a carcass across a corner. Give it a carcass of its own.',
    ),
    told('blind: { left: «300» }', 'A carcass across a corner has no blind end. Remove `blind`, or remove `diagonal`.'),
    told(
      'wardrobe-rails: [«400»]',
      'No rail for clothes runs between the sides of a carcass across a corner, which do not face each other. Remove it.',
    ),
    told(
      'plinth: «100»',
      'A carcass across a corner is made without a plinth of its own. Carry the plinth of the run through under it, and say how high that is with `plinth: 0` and `place: { above-floor: … }`.',
    ),
    told(
      'end-panels: «left»',
      'A carcass across a corner is made without end panels, as a neighbour stands at both of its sides. Give them to the last carcass of each run.',
    ),
    told(
      'fillers: { right: «40» }',
      'A carcass across a corner is made without fillers, as its front does not lie in the plane of its neighbours. Give them to the neighbours.',
    ),
    told('top: «rails»', 'Both sides of a carcass across a corner stand under its top. Write `top: over`.'),
    told('bottom: «between»', 'Both sides of a carcass across a corner stand on its bottom. Write `bottom: under`.'),
    told(
      'back: «grooved»',
      'The backs of a carcass across a corner lie on the back edges: a groove or a rebate cannot run along both of its walls. Write `applied`, or `none`.',
    ),
    told(
      'back: { open-to: «200» }',
      'The backs of a carcass across a corner are whole. Remove it, and cut out what is needed at the wall.',
    ),
    told(
      'doors: { how: «inset» }',
      'The front across a corner lies before its edges: between sides that stand square to each other it finds no room. Write `overlay`.',
    ),
    {
      carcass: 'kind: wall\nwidth: 600\ndepth: 320\ndiagonal: { left: 600, right: «600» }',
      says: 'A carcass stands across one corner, and `diagonal` says both `left` and `right`. Remove one of them; `left` counts.',
    },
  ],
  sound: [
    { carcass: CORNER },
    { carcass: `${CORNER}\nloose-shelves: 2\ndoors: { hung: left, hinge: hinge-corner-45 }` },
    { carcass: `${CORNER}\ntop: over\nbottom: under\nback: none\ndividers: 0` },
  ],
  repairs: [
    ['Remove `dividers`', job('    dividers: 1\n'), job('')],
    ['Write `top: over`', job('    top: rails # under it\n'), job('    top: over # under it\n')],
    ['Write `how: applied`', job('    back: { how: rebated }\n'), job('    back: { how: applied }\n')],
    ['Write `plinth: 0`', job('    plinth: 100\n'), job('    plinth: 0\n')],
  ],
});
