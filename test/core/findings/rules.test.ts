import { describe, expect, test } from 'vitest';
import type { Severity } from '../../../shared-core/findings/finding.js';
import { analyse } from './jobs.js';
import { inWords } from '../../in-words.js';

/** One carcass, what must be said of it, and at which words. Figures were worked by hand from the rules of construction. */
interface Case {
  readonly rule: string;
  /** Lines of a carcass called `sink`; the built-in shop unless `shop` says otherwise. */
  readonly carcass: string;
  readonly at: string;
  readonly says: readonly string[];
  readonly severity?: Severity;
  readonly panel?: string;
  readonly unit?: 'mm' | 'in';
  readonly shop?: string;
  /** The words of the places that explain it. */
  readonly related?: readonly string[];
}

const ONE_HEAD = `line-drills:
  single: { spindles: 23, pitch: 32, heads: 1, fence: far, from: above, setback: 20 to 80, throat: 700, depth: 0 to 60, stops: {}, index-pins: row }`;
/** Heads in a chain: with the first at 20 to 80 and one left empty between, rows 192 to 480 apart can be bored in one stroke. */
const HEADS = (heads: number): string => `line-drills:
  chain: { spindles: 23, pitch: 32, heads: ${heads}, fence: far, from: above, setback: 20 to 80, head-distance: 96 to 240, throat: 700, depth: 0 to 60, index-pins: row,
    stops: { G: { side: left, range: 0 to 300 }, H: { side: right, range: 0 to 300 } } }`;
const HIGH_FENCE = `vertical-heads:
  upright: { spindles: 21, pitch: 32, fence: far, from: above, fence-offset: 60 to 80, depth: 0 to 60, stops: { A: { side: left, range: 0 to 1300 }, B: { side: right, range: 0 to 1300 } } }
horizontal-heads:
  level: { spindles: 21, pitch: 32, height: 4 to 40, depth: 0 to 80, stops: { E: { side: left, range: 20 to 80 }, F: { side: right, range: 20 to 80 } } }`;
const THIN =
  'boards: { thin: { thickness: 12 }, back-3: { thickness: 3 } }\nhabits: { board: thin, back-board: back-3 }';

const cases: readonly Case[] = [
  // A base is 560 deep: back groove from 541 to 544, rear row at 37 + 14 x 32 = 485.
  {
    rule: 'row-past-reach',
    carcass: 'kind: base\nwidth: 600\ndepth: 800\nrear-row: 741',
    at: '741',
    says: ['rear row of left and right', '741 mm', '41 mm past', '700 mm'],
    severity: 'error',
    panel: 'left',
  },
  {
    rule: 'row-past-reach', // 900 deep: clear 881, less the margin of 37: 37 + 25 x 32 = 837
    carcass: 'kind: base\nwidth: 600\ndepth: 900',
    at: '900',
    says: ['837 mm', '137 mm', '700 mm'],
  },
  {
    rule: 'row-past-reach', // 29 in = 736.6 mm
    carcass: 'kind: base\nwidth: 24\ndepth: 32\nrear-row: 29',
    unit: 'in',
    at: '29',
    says: ['29 in', '27.559 in'],
  },
  {
    rule: 'row-distance',
    carcass: 'kind: base\nwidth: 600\nrear-row: 101',
    at: '101',
    says: ['101 mm', '64 mm behind', '96 mm to 640 mm apart (`head-distance` in the shop file)'],
    severity: 'error',
  },
  {
    rule: 'row-distance', // the first head can be set to it, in a second set-up
    carcass: 'kind: base\nwidth: 600\nrear-row: 78',
    at: '78',
    says: ['41 mm behind', 'set-up of its own'],
    severity: 'warning',
  },
  {
    rule: 'row-distance', // 37 + 448 = 485: two heads reach 80 + 240
    carcass: 'kind: base\nwidth: 600',
    shop: HEADS(2),
    at: 'sink',
    says: ['448 mm behind the front row; the heads of chain stand 96 mm to 240 mm apart'],
    severity: 'error',
  },
  {
    rule: 'row-distance', // 300 - 37 is too far apart, but with the first head at 60 and empty the second stands at 300
    carcass: 'kind: base\nwidth: 600\nrear-row: 300',
    shop: HEADS(2),
    at: '300',
    says: ['263 mm behind', 'set-up of its own'],
    severity: 'warning',
  },
  {
    rule: 'boring-depth-out-of-range', // front and rear rows of both sides: one cause, one finding
    carcass: 'kind: base\nwidth: 600',
    shop: HEADS(3).replace('depth: 0', 'depth: 20'),
    at: 'sink',
    says: ['The 92 row holes in left and right are 13 mm deep', '20 mm to 60 mm', '`row-depth`'],
  },
  {
    rule: 'row-distance',
    carcass: 'kind: base\nwidth: 600\nrow-setback: 90',
    at: '90',
    says: ['front row', '90 mm', '20 mm to 80 mm'],
  },
  {
    rule: 'row-distance',
    carcass: 'kind: base\nwidth: 600',
    shop: ONE_HEAD,
    at: 'sink',
    says: [
      '485 mm',
      'one head (`heads` in the shop file)',
      '20 mm to 80 mm from the fence (`setback`)',
      '`rows: front`',
    ],
  },
  {
    rule: 'row-distance',
    carcass: 'kind: base\nwidth: 600\nrow-setback: 90\nrows: front',
    at: '90',
    says: ['90 mm', '20 mm to 80 mm from the fence (`setback` in the shop file)', '`row-setback`'],
    severity: 'error',
  },
  {
    // 541 of clear depth less 5 in front and 1 behind; 293 - 37 = 256 is less than half of it.
    rule: 'shelf-tips',
    carcass: 'kind: base\nwidth: 600\nrear-row: 293\nloose-shelves: 2',
    at: '293',
    says: ['loose-1 and loose-2 are 535 mm deep', '256 mm apart', '37 mm and 293 mm', 'less than half', '`rear-row`'],
    severity: 'warning',
    panel: 'loose-1',
  },
  {
    rule: 'shelf-tips', // too shallow for two rows that hold it: 131 clear, so 37 and 69
    carcass: 'kind: wall\nwidth: 600\ndepth: 150\nloose-shelves: [328]',
    at: '328',
    says: ['125 mm deep', '32 mm apart'],
  },
  {
    rule: 'cannot-be-bored', // 80 and 20 pitches of 32 are 720; the upright head is long enough
    carcass: 'kind: wall\nwidth: 600\ndepth: 800\nrows: none\nback: none\ndowels: [53, 181, 309, 437, 565, 725]',
    shop: HIGH_FENCE.replace('spindles: 21', 'spindles: 30').replace('60 to 80', '20 to 80'),
    at: '725',
    says: [
      'The 4 dowel bores in bottom and top cannot be bored on level: its spindle line does not reach so far from the squaring stop',
      '720 mm with 21 spindles, 725 mm is needed',
    ],
  },
  {
    rule: 'cannot-be-bored',
    carcass: 'kind: wall\nwidth: 600\ndowels: [53, 213, 277]\nrows: none',
    shop: HIGH_FENCE,
    at: '53',
    says: [
      'on upright',
      '`fence-offset` in the shop file: it allows 60 mm to 80 mm',
      '53 mm is needed. First move the bores',
    ],
  },
  {
    rule: 'row-unbalanced', // last hole 8 + 22 x 32 = 712
    carcass: 'kind: base\nwidth: 600\nheight: 730',
    at: '730',
    says: ['left and right', 'start 8 mm', 'stop 18 mm', '730 mm', '32 mm'],
    severity: 'warning',
  },
  {
    rule: 'row-unbalanced', // by more than the 0.05 mm that a stop is set to
    carcass: 'kind: base\nwidth: 600\nheight: 720.051',
    at: '720.051',
    says: ['stop 8.051 mm', '720.051 mm'],
  },
  {
    rule: 'row-unbalanced', // last hole 10 + 21 x 32 = 682
    carcass: 'kind: base\nwidth: 600\nrow-offset: 10',
    at: '10',
    says: ['start 10 mm', 'stop 38 mm', '720 mm'],
  },
  {
    rule: 'row-unbalanced', // a height that balances 16 mm boards does not balance 19 mm ones: last hole 9.5 + 21 x 32
    carcass: 'kind: base\nwidth: 600\nboard: board-19\nheight: 720',
    at: '720',
    says: ['start 9.5 mm', 'stop 38.5 mm'],
  },
  {
    rule: 'index-unbalanced', // 2032 = 63 x 32 + 16
    carcass: 'kind: tall\nwidth: 600\nheight: 2032',
    at: '2032',
    says: ['64 holes, an even count', '3 strokes', '23 spindles', 'odd number'],
    severity: 'info',
  },
  {
    rule: 'loose-shelf-without-row',
    carcass: 'kind: base\nwidth: 600\nrows: front\nloose-shelves: 1',
    at: 'front',
    says: ['loose-1', 'no rear row on left and right', 'rows: front'],
    severity: 'error',
    panel: 'loose-1',
    related: ['1'],
  },
  {
    rule: 'loose-shelf-without-row',
    carcass: 'kind: base\nwidth: 600\nloose-shelves: [328, 488]\npanels:\n  right: { rows: none }',
    at: 'none',
    says: ['loose-1 and loose-2', 'no front and rear rows on right', 'rows: none'],
    related: ['328', '488'],
  },
  {
    rule: 'loose-shelf-without-row', // 104 + 19 x 32 = 712
    carcass: 'kind: base\nwidth: 600\nrow-offset: 104\nloose-shelves: [72]',
    at: '72',
    says: ['72 mm', '104 mm to 712 mm'],
    panel: 'loose-1',
  },
  {
    rule: 'loose-shelf-without-row', // 120 deep: clear 101, so no second row before 64
    carcass: 'kind: open\nwidth: 600\ndepth: 120\nloose-shelves: [328]',
    at: '328',
    says: ['no rear row on left and right', 'no room behind the front row'],
  },
  {
    rule: 'shelf-off-grid', // 8 + 10 x 32 = 328
    carcass: 'kind: base\nwidth: 600\nloose-shelves: [330]',
    at: '330',
    says: ['loose-1', '330 mm', '328 mm and 360 mm', 'first hole 8 mm, pitch 32 mm'],
    severity: 'warning',
    panel: 'loose-1',
  },
  {
    rule: 'shelf-off-grid',
    carcass: 'kind: base\nwidth: 900\nrow-offset: 24\ndividers: 1\nfixed-shelves:\n  - { at: 340, bay: 2 }',
    at: '340',
    says: ['shelf-1', '340 mm', '312 mm and 344 mm', 'first hole 24 mm'],
    panel: 'shelf-1-bay-2',
    related: ['24'],
  },
  {
    rule: 'shelf-past-stop',
    carcass: 'kind: tall\nwidth: 600\nfixed-shelves: [1032]',
    shop: 'faults.shop.yaml',
    at: '1032',
    says: [
      'left and right',
      'the line of shelf-1',
      '1032 mm',
      '700 mm',
      '900 mm with the extension',
      'extension of 332 mm',
    ],
    severity: 'error',
  },
  {
    rule: 'shelf-past-stop', // the bottom is 1968 long and starts 16 in
    carcass: 'kind: base\nwidth: 2000\ndividers: [1000]',
    shop: 'faults.shop.yaml',
    at: '1000',
    says: ['bottom, rail-front and rail-back', 'the line of divider-1', '984 mm', 'extension of 284 mm'],
  },
  // A wall carcass is 330 deep: clear 311, dowels at 53, 181 and 277.
  {
    rule: 'dowels-unmatched',
    carcass: 'kind: wall\nwidth: 600\npanels:\n  left: { dowels: [53, 117, 245] }',
    at: '[53, 117, 245]',
    says: ['left and bottom and top', '117 mm and 245 mm in left', '181 mm and 277 mm in bottom'],
    severity: 'error',
    panel: 'left',
    related: ['sink', 'sink'],
  },
  {
    rule: 'dowels-unmatched',
    carcass: 'kind: wall\nwidth: 600\npanels:\n  bottom: { dowels: [53, 277] }',
    at: '[53, 277]',
    says: ['bottom and left and right', 'bottom has 2 bores and left has 3', 'none in bottom and 181 mm in left'],
  },
  {
    rule: 'dowels-unmatched', // counted from the shelf's own front edge, which stands 20 back
    carcass:
      'kind: wall\nwidth: 600\nfixed-shelves:\n  - { at: 360, setback: 20 }\npanels:\n  shelf-1: { dowels: [53, 213] }',
    at: '[53, 213]',
    says: ['73 mm and 233 mm in shelf-1'],
    related: ['sink', 'sink'],
  },
  {
    rule: 'dowels-unmatched',
    carcass: 'kind: wall\nwidth: 600\npanels:\n  left: { joint: dowel-10x40 }\n  bottom: { joint: dowel-8x30 }',
    at: 'dowel-10x40',
    says: ['face of left are 10 mm', 'end of bottom 8 mm'],
  },
  {
    rule: 'dowels-unmatched',
    carcass: 'kind: wall\nwidth: 600\npanels:\n  left: { joint: screw-7x50 }\n  bottom: { joint: dowel-8x30 }',
    at: 'screw-7x50',
    says: ['left is bored for a connector screw', 'bottom for a dowel'],
  },
  {
    rule: 'dowel-depths',
    carcass: 'kind: wall\nwidth: 600\npanels:\n  bottom: { end-depth: 15 }',
    at: '15',
    says: ['12 mm in the face of left', '15 mm in the end of bottom', '27 mm', '30 mm long', '3 mm longer'],
    severity: 'error',
    panel: 'bottom',
    related: ['sink', 'sink'],
  },
  {
    rule: 'dowel-depths',
    carcass: 'kind: wall\nwidth: 600\npanels:\n  left: { face-depth: 10 }',
    at: '10',
    says: ['10 mm in the face of left', '19 mm in the end of bottom', '29 mm', '1 mm longer'],
  },
  {
    rule: 'dowel-depths', // 12 + 18.4 - 30
    carcass: 'kind: wall\nwidth: 600\npanels:\n  bottom: { end-depth: 18.4 }',
    at: '18.4',
    says: ['leaves 0.4 mm, too little'],
  },
  {
    rule: 'dowel-depths',
    carcass: 'kind: wall\nwidth: 600\npanels:\n  bottom: { end-depth: 20.1 }',
    at: '20.1',
    says: ['leaves 2.1 mm, too much'],
  },
  {
    rule: 'dowel-place-unused',
    carcass: 'kind: wall\nwidth: 600\ndowels: [53, 213, 373]',
    at: '373',
    says: ['373 mm', 'nothing is bored there'],
    severity: 'warning',
  },
  {
    rule: 'screws-hidden',
    carcass: 'kind: wall\nwidth: 900\njoint: screw-7x50\ndividers: 1\nfixed-shelves: [360]',
    at: '360',
    says: ['6 screws of shelf-1-bay-1 and shelf-1-bay-2', 'divider-1', 'pitch of 32 mm', 'another fitting'],
    severity: 'warning',
    panel: 'shelf-1-bay-2',
  },
  {
    rule: 'screws-hidden', // one count, one finding
    carcass: 'kind: tall\nwidth: 1200\ndepth: 330\njoint: screw-7x50\ndividers: 2\nfixed-shelves: 2',
    at: '2',
    says: ['24 screws of shelf-1-bay-1', 'shelf-2-bay-3', 'divider-1 and divider-2'],
  },
  {
    rule: 'break-through', // the groove leaves 2 of 16
    carcass: 'kind: wall\nwidth: 600\nback: { groove: 14 }',
    at: '14',
    says: ['groove', '14 mm deep', 'left, right, bottom and top', '16 mm thick', '2 mm of wood', 'less than 3 mm'],
    severity: 'warning',
  },
  {
    rule: 'bore-too-short', // 50 less the side of 16
    carcass: 'kind: wall\nwidth: 600\njoint: screw-7x50\npanels:\n  bottom: { end-depth: 33 }',
    at: '33',
    says: ['pilot holes in bottom', '33 mm deep', '50 mm long and passes 16 mm of board', '34 mm into the end'],
    severity: 'error',
    panel: 'bottom',
  },
  {
    rule: 'bore-too-short', // a bolt of 8 opens into a cam of 15 no deeper than sqrt(7.5^2 - 4^2) = 6.34 before its centre
    carcass: 'kind: wall\nwidth: 600\njoint: cam-15\npanels:\n  bottom: { end-depth: 27.6 }',
    at: '27.6',
    says: ['bolt bores in bottom', '27.6 mm deep', 'stands 34 mm from the end'],
  },
  {
    rule: 'bore-too-short',
    carcass: 'kind: wall\nwidth: 600\njoint: cam-15\npanels:\n  left: { face-depth: 10.5 }',
    at: '10.5',
    says: ['stud bores in left', '10.5 mm deep', 'goes in 11 mm'],
  },
  {
    rule: 'bore-too-short',
    carcass: 'kind: wall\nwidth: 600',
    shop: 'boards: { back-3: { thickness: 3 }, heavy: { thickness: 25 } }\nscrews: { stub: { clearance: 5, pilot: 3, length: 25 } }\nhabits: { board: heavy, joint: stub }',
    at: 'sink',
    says: ['25 mm long and passes 25 mm', 'does not reach the end', 'longer screw'],
  },
  {
    rule: 'bore-too-short', // 50 less 40; twice 7 is 14
    carcass: 'kind: wall\nwidth: 600\njoint: screw-7x50',
    shop: 'boards: { back-3: { thickness: 3 }, block: { thickness: 40 } }\nscrews: { screw-7x50: { clearance: 7, pilot: 5, length: 50 } }\nhabits: { board: block, joint: screw-7x50 }',
    at: 'sink',
    says: ['passes 40 mm', 'goes only 10 mm into the end', '7 mm, and holds little', 'longer screw'],
    severity: 'warning',
  },
  {
    rule: 'bore-too-short', // half of 25 and half of the stud's 5 make 15, and the cam goes 12.5
    carcass: 'kind: wall\nwidth: 600\njoint: cam-15\nboard: heavy',
    shop: 'boards: { back-3: { thickness: 3 }, heavy: { thickness: 25 } }\nhabits: { board: heavy }\ncams: { cam-15: { cam-diameter: 15, cam-depth: 12.5, distance: 34, bolt-diameter: 8, stud-diameter: 5, stud-depth: 11 } }',
    at: 'sink',
    says: ['8 cam bores in bottom and top', '12.5 mm deep', '12.5 mm under the face', '25 mm', 'does not catch it'],
    severity: 'error',
  },
  {
    rule: 'dowels-unmatched',
    carcass: 'kind: wall\nwidth: 600\njoint: screw-7x50\npanels:\n  left: { face-depth: 10 }',
    at: '10',
    says: ['left and bottom and top', '10 mm deep in left', '16 mm thick', 'do not come through'],
  },
  {
    rule: 'joint-not-held', // 560 deep, the second cam at 373: 187 bare behind it, with 160 allowed
    carcass: 'kind: wall\nwidth: 600\ndepth: 560\njoint: cam-15\ndowels: [53, 213, 373]',
    at: 'sink',
    says: ['nothing holds the joint for 187 mm behind 373 mm from the front', '`dowel-spacing` is 160 mm'],
    severity: 'warning',
  },
  {
    rule: 'joint-not-held', // 60 of depth takes one spindle of 21, 53, ... with 12 beside it
    carcass: 'kind: base\nwidth: 600\nrail-width: 60',
    at: 'sink',
    says: [
      'Between rail-front and left, between rail-front and right and in 2 more joints there is one bore only, 21 mm from the front',
      '60 mm deep',
      'turn about it',
    ],
    severity: 'warning',
  },
  {
    rule: 'loose-shelf-without-row',
    carcass: 'kind: base\nwidth: 600\nloose-shelves: [{ at: 360, setback: 40 }]',
    at: '40',
    says: ['from 40 mm to 540 mm', 'front row of left stands 37 mm', 'tips', 'setback smaller'],
    severity: 'error',
  },
  {
    rule: 'loose-shelf-without-row', // 560 less the play of 1; the pin's hole reaches to 559.5
    carcass: 'kind: base\nwidth: 600\nback: none\nrear-row: 557\nloose-shelves: 1',
    at: '557',
    says: ['from 5 mm to 559 mm', 'rear row of left stands 557 mm', 'rear pins', 'further to the front'],
  },
  {
    rule: 'row-distance',
    carcass: 'kind: base\nwidth: 600\nrear-row: 25',
    at: '25',
    says: ['12 mm in front of the front row', '96 mm to 640 mm'],
    severity: 'error',
  },
  {
    rule: 'near-edge',
    carcass: 'kind: wall\nwidth: 600\nrear-row: 400',
    at: '400',
    says: ['70 mm beyond the back edge', 'does not reach so far'],
    severity: 'error',
  },
  {
    rule: 'near-edge', // a hole of 5 whose rim just meets the end
    carcass: 'kind: base\nwidth: 600\nrow-offset: 2.5',
    at: '2.5',
    says: ['2.5 mm from the reference end', '5 mm wide', 'the edge is opened'],
    severity: 'error',
  },
  {
    rule: 'bores-collide', // with the front row, which stands 37 back; both at half a thickness from the end
    carcass: 'kind: base\nwidth: 600\ndowels: [37, 197, 501]',
    at: '37',
    says: ['left and right', 'dowel bore for bottom', 'hole 1 of the front row', '37 mm', '8 mm', 'meet'],
    severity: 'error',
    panel: 'left',
    related: ['sink'],
  },
  {
    rule: 'bores-collide', // dowels at 53: 8 apart less radii of 4 and 2.5
    carcass: 'kind: base\nwidth: 600\nrow-setback: 45',
    at: '45',
    says: ['1.5 mm of wood', 'less than 3 mm'],
    severity: 'warning',
  },
  {
    rule: 'bore-in-groove',
    carcass: 'kind: base\nwidth: 600\nrear-row: 542',
    at: '542',
    says: ['46 row holes in left and right', '542 mm', '541 mm to 544 mm', 'meet'],
    severity: 'error',
  },
  {
    rule: 'bore-in-groove',
    carcass: 'kind: base\nwidth: 600\nrear-row: 537\nback: { how: grooved, inset: 16 }',
    at: '537',
    says: ['1.5 mm of wood', 'less than 3 mm'],
    severity: 'warning',
    related: ['16'],
  },
  {
    rule: 'break-through',
    carcass: 'kind: wall\nwidth: 600\npanels:\n  left: { face-depth: 14 }',
    at: '14',
    says: ['6 dowel bores in left', '14 mm deep', '16 mm thick', '2 mm of wood', 'less than 3 mm'],
    severity: 'warning',
    panel: 'left',
  },
  {
    rule: 'break-through',
    carcass: 'kind: wall\nwidth: 600\npanels:\n  left: { face-depth: 16 }',
    at: '16',
    says: ['16 mm deep', '16 mm thick', 'comes out on the other side'],
    severity: 'error',
  },
  {
    rule: 'near-edge',
    carcass: 'kind: wall\nwidth: 600\nrow-offset: 4',
    at: '4',
    says: ['4 row holes in left and right', '4 mm from the reference end', '5 mm wide', '1.5 mm of wood', '3 mm'],
    severity: 'warning',
  },
  {
    rule: 'near-edge',
    carcass: 'kind: wall\nwidth: 600\nrow-offset: 2',
    at: '2',
    says: ['2 mm from the reference end', 'edge is opened'],
    severity: 'error',
  },
  {
    rule: 'boring-depth-out-of-range',
    carcass: 'kind: base\nwidth: 600\npanels:\n  bottom: { end-depth: 90 }',
    at: '90',
    says: ['dowel bores in bottom', '90 mm deep', '0 mm to 80 mm'],
    severity: 'error',
  },
  {
    rule: 'bit-missing',
    carcass: 'kind: wall\nwidth: 600\njoint: dowel-10x40',
    shop: 'bits: [5, 8]',
    at: 'dowel-10x40',
    says: ['10 mm', '5 mm and 8 mm'],
    severity: 'error',
  },
  {
    rule: 'panel-past-sheet', // banding takes 1 mm off the width to cut
    carcass: 'kind: tall\nwidth: 600\nheight: 2512\nback: none',
    shop: 'boards: { board-16: { thickness: 16, sheet-length: 2440, sheet-width: 1220 } }',
    at: '2512',
    says: ['left and right are to be cut 2512 x 559 mm', 'a sheet of board-16 is 2440 x 1220 mm', 'not come out of it'],
    severity: 'error',
    panel: 'left',
  },
  {
    rule: 'panel-past-sheet', // along the grain only
    carcass: 'kind: wall\nwidth: 1100\nheight: 592',
    shop: 'boards: { board-16: { thickness: 16, sheet-length: 800, sheet-width: 1200, grain: length } }',
    at: '1100',
    says: ['bottom and top are to be cut 1068 x 329 mm', '800 x 1200 mm, its grain along the first'],
    severity: 'error',
    panel: 'bottom',
  },
  {
    rule: 'panel-out-of-range', // 3000 less two sides of 16
    carcass: 'kind: open\nwidth: 3000',
    at: '3000',
    says: ['bottom and top are 2968 mm long', '150 mm to 2600 mm', '368 mm too large'],
    severity: 'error',
    panel: 'bottom',
  },
  {
    rule: 'panel-out-of-range',
    carcass: 'kind: base\nwidth: 600\nrail-width: 55',
    at: '55',
    says: ['rail-front', '55 mm wide across a banded edge', '60 mm and more', '5 mm too small'],
  },
  {
    rule: 'band-missing',
    carcass: 'kind: open\nwidth: 600\nband: none',
    at: 'none',
    says: ['left, right, bottom and top'],
    severity: 'warning',
  },
  {
    rule: 'band-missing',
    carcass: 'kind: base\nwidth: 600\npanels:\n  bottom: { bands: { front: none } }',
    at: 'none',
    says: ['front edge of bottom has no band'],
    panel: 'bottom',
  },
  {
    rule: 'clamp-too-small',
    carcass: 'kind: base\nwidth: 1600',
    at: '1600',
    says: ['1600 mm in width', '200 mm to 1500 mm', '100 mm too large'],
    severity: 'error',
  },
  {
    rule: 'clamp-too-small',
    carcass: 'kind: open\nwidth: 600\nheight: 176',
    at: '176',
    says: ['176 mm in height', '24 mm too small'],
  },
  {
    rule: 'board-unknown',
    carcass: 'kind: base\nwidth: 600\nloose-shelves:\n  - { at: 328, board: bord-18 }',
    at: 'bord-18',
    says: ['bord-18', 'board-16', 'board-18'],
    severity: 'error',
  },
  {
    rule: 'band-unknown',
    carcass: 'kind: base\nwidth: 600\npanels:\n  left: { bands: { back: bnad-2 } }',
    at: 'bnad-2',
    says: ['bnad-2', 'band-2'],
    severity: 'error',
  },
  {
    rule: 'fitting-unknown',
    carcass: 'kind: base\nwidth: 600\njoint: dowl-8x30',
    at: 'dowl-8x30',
    says: ['dowl-8x30', 'dowel-8x30', 'cam-15'],
    severity: 'error',
  },
  {
    rule: 'machine-unknown',
    carcass: 'kind: base\nwidth: 600\nmachines: { rows: row-dril }',
    at: 'row-dril',
    says: ['no line drill', 'row-drill'],
    severity: 'error',
  },
  {
    rule: 'machine-unknown',
    carcass: 'kind: base\nwidth: 600\nmachines: { clamp: face-head }',
    at: 'face-head',
    says: ['no case clamp', 'vertical head', 'case-clamp'],
  },
  {
    rule: 'panel-unknown',
    carcass: 'kind: base\nwidth: 600\npanels:\n  botom: { rows: none }',
    at: 'botom',
    says: ['botom', 'bottom'],
    severity: 'error',
  },
  {
    rule: 'size-impossible',
    carcass: 'kind: base\nwidth: 600\nfixed-shelves: [900]',
    at: '900',
    says: ['900 mm', 'shelf-1'],
    severity: 'error',
  },
];

function check({ carcass, unit = 'mm', shop }: Case) {
  const named = shop?.endsWith('.yaml') === true;
  const head = shop === undefined ? '' : `shop: ${named ? shop : 'bench.shop.yaml'}\n`;
  const text = `unit: ${unit}\n${head}carcasses:\n  sink:\n    ${carcass.replaceAll('\n', '\n    ')}\n`;
  return analyse(text, shop === undefined || named ? {} : { 'bench.shop.yaml': shop });
}

describe('one fault, one finding, at the words that cause it, with the figures', () => {
  test.each(cases.map((one) => [one.rule, one.carcass.replaceAll('\n', ' '), one] as const))(
    '%s: %s',
    (_rule, _body, one) => {
      const job = check(one);
      const found = job.findings().filter(({ finding }) => finding.rule === one.rule);
      const wordsAt = (place: Parameters<typeof job.locate>[0]): string => {
        const { start, end } = job.locate(place, 0);
        return job.text.slice(start, end);
      };
      expect(found.map(({ finding }) => wordsAt(finding.place))).toEqual([one.at]);
      const { finding } = found[0]!;
      for (const words of one.says) expect(inWords(finding.message)).toContain(words);
      if (one.severity !== undefined) expect(finding.severity).toBe(one.severity);
      if (one.panel !== undefined) expect(finding.panel).toBe(one.panel);
      if (one.related !== undefined) expect(finding.related.map(({ place }) => wordsAt(place))).toEqual(one.related);
    },
  );
});

describe('what is right is not found fault with', () => {
  const sound = [
    'kind: base\nwidth: 600\nheight: 720.05', // balanced as nearly as a stop is set
    // The balanced side is n pitches and one thickness long: common practice, no source (720 for 16, 723 for 19).
    'kind: base\nwidth: 600\nheight: 720',
    'kind: base\nwidth: 600\nboard: board-19\nheight: 723',
    'kind: base\nwidth: 600\nloose-shelves: 2',
    'kind: wall\nwidth: 600\nloose-shelves: [328, 488]',
    // 288 apart under 535 of shelf.
    'kind: base\nwidth: 600\nrear-row: 325\nloose-shelves: 1',
    'kind: tall\nwidth: 600\nfixed-shelves: 2\nloose-shelves: 4',
    'kind: drawer\nwidth: 800',
    'kind: open\nwidth: 800\nfixed-shelves: 2',
    'kind: wall\nwidth: 600\njoint: cam-15\nloose-shelves: 1',
    'kind: wall\nwidth: 600\njoint: screw-7x50',
    'kind: wall\nwidth: 600\njoint: dowel-10x40\nboard: board-19',
    'kind: base\nwidth: 600\ntop: over\nbottom: under',
    'kind: base\nwidth: 900\ndividers: 1\nloose-shelves: 1',
    'kind: base\nwidth: 900\ndividers: 1\nfixed-shelves: 1',
    // One pitch apart, and with one of the two on dowels, screws through a divider can be driven.
    'kind: wall\nwidth: 900\njoint: screw-7x50\ndividers: 1\nfixed-shelves: [{ at: 360, bay: 1 }, { at: 392, bay: 2 }]',
    'kind: wall\nwidth: 900\njoint: screw-7x50\ndividers: 1\nfixed-shelves: [360]\npanels:\n  shelf-1-bay-2: { joint: dowel-8x30 }',
    'kind: base\nwidth: 600\nback: { how: applied, board: back-8 }',
    'kind: base\nwidth: 600\nback: rebated',
    'kind: base\nwidth: 600\nback: none',
    // 12 + 20 and 12 + 18.5 leave 2 and 0.5 for the glue: the bounds are inside.
    'kind: wall\nwidth: 600\npanels:\n  bottom: { end-depth: 20 }',
    'kind: wall\nwidth: 600\npanels:\n  bottom: { end-depth: 18.5 }',
    // 1500 is the widest that the clamp holds, 37 + 20 x 32 = 677 the deepest row that the heads reach.
    'kind: base\nwidth: 1500',
    'kind: base\nwidth: 600\ndepth: 740\nback: none\nrear-row: 677\nmachines: { clamp: case-clamp }\nheight: 720',
  ];
  test.each(sound.map((body) => [body.replaceAll('\n', ' '), body] as const))('%s', (_name, carcass) => {
    const said = check({ rule: '', carcass, at: '', says: [] })
      .findings()
      .map(({ finding }) => `${finding.rule}: ${inWords(finding.message)}`)
      .filter((line) => !line.startsWith('shop-neutral'));
    const expected = carcass.includes('depth: 740')
      ? [expect.stringMatching(/^clamp-too-small: .*740 mm in depth/)]
      : [];
    expect(said).toEqual(expected);
  });
});

test('a row beyond the back edge is not said to be one that can be bored', () => {
  const job = check({ rule: '', carcass: 'kind: wall\nwidth: 600\nrear-row: 690', at: '', says: [] });
  const rules = job.findings().map(({ finding }) => finding.rule);
  expect(rules).toContain('near-edge');
  expect(rules).not.toContain('row-distance');
});

test.each([
  ['front and rear with a head left empty between', 'kind: base\nwidth: 600', 3],
  ['a front row alone, past the first head', 'kind: base\nwidth: 600\nrows: front\nrow-setback: 180', 2],
])('rows that later heads of a drill reach are not found fault with: %s', (_what, carcass, heads) => {
  const job = check({ rule: '', carcass, shop: HEADS(heads), at: '', says: [] });
  expect(job.findings().filter(({ finding }) => finding.rule === 'row-distance')).toEqual([]);
  const missed = job.carcasses[0]!.operations!.unreachable.flatMap(({ bores }) => bores);
  expect(missed.filter(({ purpose }) => purpose === 'row')).toEqual([]);
});

test('a board thinner than the row holes are deep is told once, at the carcass’s name', () => {
  const job = check({ rule: '', carcass: 'kind: open\nwidth: 600\nloose-shelves: 1', shop: THIN, at: '', says: [] });
  const found = job.findings().filter(({ finding }) => finding.rule === 'break-through');
  const messages = found
    .map(({ finding }) => inWords(finding.message))
    .filter((message) => message.includes('row hole'));
  expect(messages.every((message) => message.includes('13 mm deep') && message.includes('12 mm thick'))).toBe(true);
  expect(messages).toHaveLength(1);
});
