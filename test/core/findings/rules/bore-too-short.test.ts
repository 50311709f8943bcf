import { rule } from './rule-tests.js';

/** Cams in boards of 20.001: the bolts lie half of that from the outside face, rounded down. */
const oddBoards = (camDepth: number): string =>
  `boards: { back-3: { thickness: 3 }, odd: { thickness: 20.001 } }
habits: { board: odd }
cams: { cam-15: { cam-diameter: 15, cam-depth: ${camDepth}, distance: 34, bolt-diameter: 8, stud-diameter: 5, stud-depth: 11 } }`;

rule('bore-too-short', {
  tells: [
    {
      // 50 less the 12 that the side has under the head
      carcass: 'kind: wall\nwidth: 600\njoint: screw-7x50\npanels:\n  bottom: { end-depth: «37» }',
      says: 'The 8 pilot holes in bottom are 37 mm deep; the minimum is 38 mm, since ‘screw-7x50’ is 50 mm long and passes 12 mm of board. Bore deeper, or leave the depth to the fitting.',
      severity: 'error',
      panel: 'bottom',
      offers: ['> Leave the depth in bottom to the fitting'],
      marks: { 'bottom/left': 4, 'bottom/right': 4 },
    },
    {
      // each depth by itself
      carcass:
        'kind: wall\nwidth: 600\njoint: screw-7x50\npanels:\n  bottom: { end-depth: «37» }\n  top: { end-depth: 36 }',
      says: 'The 8 pilot holes in bottom are 37 mm deep; the minimum is 38 mm, since ‘screw-7x50’ is 50 mm long and passes 12 mm of board. Bore deeper, or leave the depth to the fitting.',
      also: [
        'The 8 pilot holes in top are 36 mm deep; the minimum is 38 mm, since ‘screw-7x50’ is 50 mm long and passes 12 mm of board. Bore deeper, or leave the depth to the fitting.',
      ],
      marks: { 'bottom/left': 4, 'bottom/right': 4 },
    },
    {
      // half of 25 and half of the stud's 5 make 15, and the cam goes 12.5
      carcass: 'kind: wall\nwidth: 600\njoint: cam-15\nboard: heavy',
      shop: 'boards: { back-3: { thickness: 3 }, heavy: { thickness: 25 } }\nhabits: { board: heavy }\ncams: { cam-15: { cam-diameter: 15, cam-depth: 12.5, distance: 34, bolt-diameter: 8, stud-diameter: 5, stud-depth: 11 } }',
      says: 'The 8 cam bores in bottom and top are 12.5 mm deep; the minimum is 15 mm in a board 25 mm thick, where the bolt of ‘cam-15’ lies 12.5 mm under the face. Use a fitting made for this thickness, or a thinner board.',
      severity: 'error',
      panel: 'bottom',
    },
    {
      // 10 from the outside face is 10.001 from the inside face, where the cams of a side are, and half of the stud 2.5
      carcass: 'kind: wall\nwidth: 600\njoint: cam-15\nbottom: under\ntop: over',
      shop: oddBoards(12.5),
      says: 'The 8 cam bores in left and right are 12.5 mm deep; the minimum is 12.501 mm in a board 20 mm thick, where the bolt of ‘cam-15’ lies 10 mm under the face. Use a fitting made for this thickness, or a thinner board.',
      severity: 'error',
      panel: 'left',
      offers: [],
    },
    {
      // and of a bottom at the outside face
      carcass: 'kind: wall\nwidth: 600\njoint: cam-15',
      shop: oddBoards(12.499),
      says: 'The 8 cam bores in bottom and top are 12.499 mm deep; the minimum is 12.5 mm in a board 20 mm thick, where the bolt of ‘cam-15’ lies 10 mm under the face. Use a fitting made for this thickness, or a thinner board.',
      severity: 'error',
      panel: 'bottom',
    },
    {
      // a bolt of 8 opens into a cam of 15 no deeper than sqrt(7.5^2 - 4^2) = 6.34 before its centre
      carcass: 'kind: wall\nwidth: 600\njoint: cam-15\npanels:\n  bottom: { end-depth: «27.6» }',
      says: 'The 4 bolt bores in bottom are 27.6 mm deep; the minimum is 27.66 mm, to open into the cam of ‘cam-15’ 34 mm from the end. Bore deeper, or leave the depth to the fitting.',
      severity: 'error',
      panel: 'bottom',
    },
    {
      carcass: 'kind: wall\nwidth: 600\njoint: cam-15\npanels:\n  left: { face-depth: «10.5» }',
      says: 'The 4 stud bores in left are 10.5 mm deep; the minimum is 11 mm, the depth that the stud of ‘cam-15’ goes in. Bore deeper, or leave the depth to the fitting.',
      severity: 'error',
      panel: 'left',
    },
    {
      carcass: 'kind: wall\nwidth: 600',
      shop: 'boards: { back-3: { thickness: 3 }, heavy: { thickness: 25 } }\nscrews: { stub: { clearance: 5, pilot: 3, length: 25 } }\nhabits: { board: heavy, joint: stub }',
      says: 'The 16 pilot holes in bottom and top are out of reach: ‘stub’ is 25 mm long and passes 25 mm of board. Use a longer screw.',
      severity: 'error',
      panel: 'bottom',
    },
    {
      // 50 less 40; twice 7 is 14
      carcass: 'kind: wall\nwidth: 600\njoint: screw-7x50',
      shop: 'boards: { back-3: { thickness: 3 }, block: { thickness: 40 } }\nscrews: { screw-7x50: { clearance: 7, pilot: 5, length: 50 } }\nhabits: { board: block, joint: screw-7x50 }',
      says: 'The 16 pilot holes in bottom and top take only 10 mm of ‘screw-7x50’, which is 50 mm long and passes 40 mm of board; the minimum is 14 mm, twice its width. Use a longer screw.',
      severity: 'warning',
      panel: 'bottom',
    },
  ],
  sound: [
    { carcass: 'kind: wall\nwidth: 600\njoint: screw-7x50' },
    { carcass: 'kind: wall\nwidth: 600\njoint: screw-7x50\npanels:\n  bottom: { end-depth: 38 }' },
    {
      carcass: 'kind: wall\nwidth: 600\njoint: cam-15\nbottom: under\ntop: over',
      shop: oddBoards(12.501),
      besides: ['joint-not-held'],
    },
    { carcass: 'kind: wall\nwidth: 600\njoint: cam-15', shop: oddBoards(12.5), besides: ['joint-not-held'] },
  ],
  repairs: [
    [
      'Leave the depth in bottom to the fitting',
      'carcasses:\n  a:\n    kind: wall\n    width: 600\n    joint: screw-7x50\n    panels:\n      bottom: { end-depth: 37 }\n',
      'carcasses:\n  a:\n    kind: wall\n    width: 600\n    joint: screw-7x50\n',
    ],
  ],
});
