import { NEUTRAL_SHOP_TEXT } from '../../../shared-core/shop/neutral-text.js';

/** A job; one that names `own.shop.yaml` with that shop beside it. */
export type Text = string | readonly [job: string, shop: string];

/** A job of one carcass with these lines. */
const carcass = (lines: string, head = ''): string =>
  `${head}carcasses:\n  sink:\n    ${lines.replaceAll('\n', '\n    ')}\n`;
export const SOUND = 'carcasses:\n  sink:\n    kind: base\n    width: 600\n  bar:\n    kind: wall\n    width: 800\n';

/** The same with the built-in shop, changed, as its own. */
const own = (lines: string, shop = NEUTRAL_SHOP_TEXT): Text => [carcass(lines, 'shop: own.shop.yaml\n'), shop];

/** The built-in shop with other words for some. */
function changed(words: string, others: string): string {
  if (!NEUTRAL_SHOP_TEXT.includes(words)) throw new Error(`The built-in shop does not say: ${words}`);
  return NEUTRAL_SHOP_TEXT.replace(words, others);
}

/** Jobs that bring up what neither the rules' own examples nor their tests do. Invented. */
export const JOBS: readonly Text[] = [
  // Lengths and numbers.
  carcass('kind: base\nwidth: 6000'),
  carcass('kind: base\nwidth: 600\ncount: 0'),
  carcass('kind: base\nwidth: 600\ncount: 1000000'),
  carcass('kind: base\nwidth: 600\ncount: two'),
  carcass('kind: base\nwidth: 600\ndowels: [53,5, 213, 405]'),
  carcass('kind: base\nwidth: 600\ndowels: [296,5]'),
  carcass('kind: base\nwidth: 600\nloose-shelves: [{ at: 360,5 }]'),
  carcass('kind: base\nwidth: 600\ndowels: [53, 53]'),
  carcass('kind: base\nwidth: 600\ndowels: 53'),
  carcass('kind: base\nwidth: 600\ndowels: { at: 53 }'),
  carcass('kind: base\nwidth: 600\nloose-shelves: { at: 300 }'),
  carcass('kind: base\nwidth: 600\nfixed-shelves: 300'),
  carcass('kind: base\nwidth: 600\nloose-shelves: [[300]]'),
  // Values of another form.
  carcass('kind: base\nwidth:'),
  carcass('kind: base\nwidth: { from: 1 }'),
  carcass('kind: base\nwidth: [600]'),
  carcass('kind: base\nwidth: 600\nback: [groove]'),
  // Doors.
  carcass('kind: base\nwidth: 600\ndoors: pair'),
  carcass('kind: base\nwidth: 600\ndividers: 1\ndoors: { hung: pair, how: inset }'),
  carcass('kind: base\nwidth: 600\ndoors: { bays: [left, right] }'),
  carcass('kind: base\nwidth: 600\ndoors: { hung: left, how: inset }\nloose-shelves: [{ at: 328, setback: 10 }]'),
  carcass('kind: base\nwidth: 60\ndoors: { hung: pair, reveal: 30 }'),
  own(
    'kind: open\nwidth: 600\ndepth: 50\nback: none\ndoors: { hung: left, how: inset, board: slab }',
    changed('boards:\n', 'boards:\n  slab: { thickness: 60 }\n'),
  ),
  // Fronts and drawers.
  carcass('kind: base\nwidth: 600\nfronts: [drawer, { front: drawer, bay: 2 }]'),
  carcass('kind: base\nwidth: 600\ndividers: 1\nfronts: [drawer, { front: drawer, bay: 3 }]'),
  carcass(
    'kind: base\nwidth: 600\nfronts: [{ front: drawer, height: 700 }, drawer, drawer, drawer, drawer, drawer, drawer]',
  ),
  carcass('kind: base\nwidth: 600\nfronts: [{ front: drawer, height: 50 }, drawer]'),
  carcass('kind: base\nwidth: 600\ndepth: 250\nfronts: [drawer]'),
  carcass('kind: base\nwidth: 90\nfronts: [drawer]'),
  carcass('kind: base\nwidth: 600\nfronts: [drawer, pair]'),
  own(
    'kind: base\nwidth: 600\nfronts: [drawer]\ndrawers: { slide: deep }',
    changed('slides:\n', 'slides:\n  deep: 3\n'),
  ),
  carcass('kind: base\nwidth: 600\nback:\n  how: { is: none }'),
  carcass('kind: base\nwidth: 600\nback: grooved'),
  carcass('kind: base\nwidth: 600\npanels: left'),
  carcass('kind: base\nwidth: 600\npanels: { left: 1 }'),
  carcass(`kind: base\nwidth: 600\ndowels: [${Array.from({ length: 200 }, (_, i) => 10 + i).join(', ')}]`),
  // Keys.
  carcass('kind: base\nwidth: 600\nwidth: 700'),
  carcass('kind: base\nwidth: 600\nxyzzy: 1'),
  'defaults:\n  depth: 560\ncarcasses:\n  a: { kind: base, width: 600, depth: 560 }\n  b: { kind: base, width: 600, depth: 560 }\n',
  'carcasses:\n  a:\n    kind: wall\n    width: 600\n    doors: left\n  b:\n    like: a\n    mirrored: yes\n',
  'carcasses:\n  a: { kind: base, width: 600, depth: 560 }\n  b: { kind: base, width: 600, depth: 560 }\n',
  carcass('- kind: base\n- width: 600'),
  'carcasses:\n  - name: sink\n    kind: base\n    width: 600\n',
  carcass('kind: base\nwidth: 600\ncolour: white'),
  carcass('kind: base\nwidth: 600\ndrawers: 3'),
  carcass('kind: base\nwidth: 600\nworktop: oak'),
  carcass('kind: base\nwidth: 600\nhinges: oak'),
  carcass('kind: base\nwidth: 600\npanels: { left:rows }'),
  carcass('kind: base\nwidth: 600\nback: how:none'),
  'title: A\ntitle: B\n' + SOUND,
  'unit:\n' + SOUND,
  'unit: cm\n' + SOUND,
  'unit: yards\n' + SOUND,
  'unit: inches\n' + SOUND,
  'carcasses:\n',
  'carcasses: none\n',
  'carcasses:\n  - kind: base\n    width: 600\n',
  'carcasses:\n  sink: 600\n',
  'carcasses:\n  : { kind: base, width: 600 }\n',
  'carcasses: { sink: { kind: base, width: 600 }, "": { kind: base, width: 600 } }\n',
  // Layout.
  'carcasses:\nsink:\n  kind: base\n  width: 600\n',
  'carcasses:\n  kind: base\n  width: 600\n',
  'carcasses:\n  sink: base\n  width: 600\n',
  'carcasses:\n  sink: 600\n  width: 600\n  depth: 500\n',
  'carcasses:\n  sink:\n  kind: base\n  width: 600\n',
  'carcasses:\n  sink:\n    kind: base\n    width: 600\ntitle: Kitchen\ndefaults:\nboard: white-16\n',
  SOUND.replace('width: 600', 'width:600'),
  SOUND.replace('width: 600', 'width 600'),
  SOUND.replace('width: 600', 'width: 600: 2'),
  SOUND.replace('    width: 600', '    - width: 600'),
  SOUND.replace('    width: 600', '      width: 600'),
  SOUND.replace('    width: 600', '   width: 600'),
  SOUND.replace('    width: 600', '\twidth: 600'),
  SOUND.replace('    kind: base', '    kind: base: x'),
  SOUND.replace('    kind: base\n', '').replace('  sink:', '  sink: base'),

  // Rules, in cases that their own tests leave out.
  own('kind: base\nwidth: 600', 'bits: [8]\n'),
  carcass('kind: base\nwidth: 600\npanels: { bottom: { dowels: [300, 310] } }'),
  carcass('kind: wall\nwidth: 600\npanels: { left: { dowels: [53, 70, 213] } }'),
  carcass('kind: wall\nwidth: 600\npanels: { back: { dowels: [53] }, bottom: { dowels: [53, 400] } }'),
  carcass('kind: wall\nwidth: 600\npanels: { bottom: { joint: dowel-8x35 } }'),
  carcass('kind: wall\nwidth: 600\npanels: { bottom: { joint: cam-15 } }'),
  carcass('kind: base\nwidth: 600\nrail-width: 30'),
  carcass('kind: base\nwidth: 600\nrow-offset: 40\nloose-shelves: [690]'),
  carcass(
    'kind: wall\nwidth: 900\njoint: screw-7x50\ndividers: 1\nfixed-shelves: [{ at: 360, bay: 1 }, { at: 360, bay: 2 }]',
  ),
  carcass('kind: base\nwidth: 600\npanels: { left: { row-offset: 40 } }\nloose-shelves: [330]'),
  carcass('kind: base\nwidth: 900\ndividers: 1\npanels: { left: { row-offset: 40 } }\nloose-shelves: [328]'),

  // What no set-up makes.
  own('kind: base\nwidth: 600', 'bits: [5]\n'),
  own('kind: base\nwidth: 600\ndepth: 890\nrear-row: 741'),
  own('kind: base\nwidth: 130'),
  own('kind: base\nwidth: 600', changed('    depth: 0 to 65', '    depth: 20 to 65')),
  own('kind: base\nwidth: 600', changed('    depth: 0 to 60', '    depth: 20 to 60')),
  own('kind: base\nwidth: 600', changed('    spindles: 24', '    spindles: 8')),
  own(
    'kind: base\nwidth: 600',
    changed(
      '      A: { side: left, range: 0 to 75, lowers: yes }\n      B: { side: left, range: 75 to 1250, lowers: yes }\n      C: { side: right, range: 0 to 75, lowers: yes }\n',
      '',
    ),
  ),
  own('kind: base\nwidth: 600\nboard: board-19', changed('    height: 4 to 40', '    height: 4 to 9')),
  own('kind: base\nwidth: 600', changed('    pitch: 32\n    # Lines', '    pitch: 25\n    # Lines')),
  own('kind: base\nwidth: 600', changed('    heads: 2', '    heads: 1')),
  own('kind: base\nwidth: 600\nrow-setback: 120\nrows: front'),
  own(
    'kind: base\nwidth: 600',
    changed('range: 0 to 280, lowers: yes }\n      H', 'range: 250 to 280, lowers: yes }\n      H').replace(
      'H: { side: right, range: 0 to 280',
      'H: { side: right, range: 250 to 280',
    ),
  ),
  own(
    'kind: tall\nwidth: 600',
    changed('    spindles: 27', '    spindles: 9').replace('    index-pins: row', '    index-pins: none'),
  ),
  own(
    'kind: tall\nwidth: 600',
    changed('    index-range: 2600', '    index-range: 100').replace('    spindles: 27', '    spindles: 5'),
  ),
  own(
    'kind: base\nwidth: 600',
    changed(
      '      G: { side: left, range: 0 to 280, lowers: yes }',
      '      G: { side: left, range: 0 to 20, lowers: no }',
    )
      .replace('      H: { side: right, range: 0 to 280, lowers: yes }\n', '')
      .replace('    spindles: 27', '    spindles: 13'),
  ),
  own('kind: base\nwidth: 600', changed('      F: { side: right, range: 14 to 100, lowers: yes }\n', '')),

  // Sizes that cannot be.
  carcass('kind: base\nwidth: 50'),
  carcass('kind: wall\nwidth: 600\nheight: 50'),
  carcass('kind: wall\nwidth: 600\ndepth: 50\nback: { inset: 60 }'),
  carcass('kind: wall\nwidth: 600\nback: { groove: 16 }'),
  carcass('kind: wall\nwidth: 600\ndividers: 40'),
  carcass('kind: wall\nwidth: 600\nloose-shelves: 40'),
  carcass('kind: wall\nwidth: 600\nfixed-shelves: [{ at: 300, bay: 2 }]'),
  carcass('kind: wall\nwidth: 600\nfixed-shelves: [300]\nloose-shelves: [300]'),
  carcass('kind: wall\nwidth: 600\ndividers: [60]\nloose-shelves: [{ at: 300, bay: 1, gap: 30 }]'),
  carcass('kind: wall\nwidth: 600\nfixed-shelves: [{ at: 300, setback: 400 }]'),
  carcass('kind: base\nwidth: 600\nfixed-shelves: [{ at: 300, setback: 100 }]'),
  carcass('kind: base\nwidth: 600\ndividers: 1\npanels: { rail-back: { board: board-19 } }'),
  carcass('kind: wall\nwidth: 600\ndividers: [590]'),
  carcass('kind: base\nwidth: 600\nplinth: 100\ndepth: 50'),
  carcass('kind: base\nwidth: 600\ndepth: 200\nrail-width: 95'),
  carcass(
    'kind: wall\nwidth: 600\nfixed-shelves: [{ at: 300, setback: 295 }]\npanels: { shelf-1: { bands: { front: band-2, back: band-2 } } }',
  ),
  own('kind: base\nwidth: 600', 'boards: {}\n'),
  own('kind: base\nwidth: 600', 'dowels: {}\nscrews: {}\ncams: {}\n'),
  own('kind: wall\nwidth: 600\nheight: 60\nfixed-shelves: [30]'),
  own(
    'kind: wall\nwidth: 600',
    'boards: { thick-60: { thickness: 60 }, back-8: { thickness: 8 } }\nhabits: { board: thick-60, back-board: back-8 }\n',
  ),
  own(
    'kind: wall\nwidth: 110',
    'boards: { thick-60: { thickness: 60 }, back-8: { thickness: 8 } }\nhabits: { board: thick-60, back-board: back-8 }\n',
  ),
  own(
    'kind: wall\nwidth: 600\nheight: 110',
    'boards: { thick-60: { thickness: 60 }, back-8: { thickness: 8 } }\nhabits: { board: thick-60, back-board: back-8 }\n',
  ),
  own('kind: base\nwidth: 600', 'habits: { board: b-16 }\n'),

  // The text itself.
  'a: [1\nb: 2\n',
  ...[
    'a: *b',
    'a: &b [*b]',
    '[a]: 1',
    'a: "x',
    'a: [1 2: 3, 4 {5}]',
    'a: [1,, 2]',
    'a: [, 1]',
    'a: "x"#y',
    'a: 1\nb',
    'a: @x',
    '  a: 1\n b: 2',
    'a:\n\tb: 1',
    'a: [1\n2 3]',
    'a: ["x" "y"]',
    'a: {"b":1 "c":2}',
    'a: [b c: d]',
    'a: &b&c 1',
    '%x\na: 1',
    'a: | text\n  b',
    'a: * 1',
    'a: "\\q"',
    'a:\n    b: 1\n   c: 2',
    'a: b: c',
    'a: [\n- b\n]',
    `a: 1\n${'x'.repeat(1100)}: 2`,
    'a:\n  - 1\n  b: 2',
    'a: 1\n"b\n c": 2',
    'a: &b &c 1',
    'a: 1\n---\nb: 2',
    'a: !b !c 1',
    'a: {\n\tb: 1 }',
    'a: ]',
    'a: "x" y',
    'a: b\n- c',
    'a:\n  - b\n   - c: d',
    '- a\nb: c',
    'a: "b": c',
    'a: ? b',
    '&a\n&b c: d',
    'a: &b\n',
    "a: 'x",
    'a: {b: 1',
    'a: [b]c',
    '{a: 1}: 2',
    'a: >x\n  y',
    'a:\n- b\nc',
    '? [a\n: b',
    'a: {b c}: d',
    'a: "b" : c',
    'a: "\n---\n"',
  ].flatMap((text) => [`${text}\n`, `carcasses:\n  sink:\n    kind: base\n    ${text.replaceAll('\n', '\n    ')}\n`]),
  `a: ${'['.repeat(80)}${']'.repeat(80)}\n`,
  `a: ${'&a '.repeat(20_000)}\n`,
  carcass(
    'kind: base\nwidth: 600\nheight: 720\nfront-heights: { how: stepped, step: 9 }\nfronts: [fixed, fixed, fixed]',
  ),
  `carcasses:\n${Array.from({ length: 5010 }, (_, i) => `  c: { width: ${i} }\n`).join('')}`,
  `# ${'x'.repeat(5_100_000)}\n`,
  `carcasses:\n  sink:\n    note: ${'x'.repeat(2_100_000)}\n`,

  '',
  'title: A\n' + SOUND + 'title: B\n',
  'carcasses:\n  sink:\n    kind: base\n    width: 600\n  height: 700\n',
  'carcasses:\n  sink:\n    kind: base\n    width: 600\n  panels:\n  left: { rows: none }\n',
  'defaults: board:board-16\n' + SOUND,
  carcass(
    'kind: base\nwidth: 600\nheight: 730\ndepth: 560\nrows: both\nrail-width: 90\ncount: 1\nloose-shelves: 1\nfixed-shelves: []\ndividers: 1\nback: { how: grooved, groove: 8, inset: 16, board: back-3 }\npanels: { left: { board: board-16, bands: { front: band-1 } } }',
  ),
  own('kind: base\nwidth: 600\nheight: 700', 'habits: { sizes: { base: { height: 700 } } }\n'),
  own(
    'kind: base\nwidth: 600',
    'boards: { a-16: { thickness: 16 }, b-16: { thickness: wide } }\nhabits: { board: b-16 }\n',
  ),
  carcass('kind: wall\nwidth: 200\ndividers: 12'),
  carcass('kind: wall\nwidth: 600\nheight: 300\nloose-shelves: 20'),
  carcass('kind: wall\nwidth: 600\nheight: 52\nboard: board-19\nfixed-shelves: [26]\nrows: none'),
  carcass('kind: wall\nwidth: 600\ndividers: [25]\nloose-shelves: [{ at: 300, bay: 1 }]'),
  own(
    'kind: base\nwidth: 600\ndepth: 60\nback: none\nplinth: { height: 100, board: thick-60 }',
    changed('  board-18:', '  thick-60: { thickness: 60 }\n  board-18:'),
  ),
  own(
    'kind: base\nwidth: 600\ndepth: 60\nback: none\nplinth: 100\npanels: { plinth: { board: thick-60 } }',
    changed('  board-18:', '  thick-60: { thickness: 60 }\n  board-18:'),
  ),
  own(
    'kind: wall\nwidth: 600\nfixed-shelves: [{ at: 300, setback: 295 }]\npanels: { shelf-1: { bands: { back: band-1 } } }',
    changed('band-1: { thickness: 1,', 'band-1: { thickness: 10,'),
  ),
  own('kind: wall\nwidth: 600\njoint: screw-7x50', changed('recess: 4', 'recess: 14')),
  carcass('kind: wall\nwidth: 600\npanels: { left: { joint: dowel-8x35 } }'),
  carcass('kind: wall\nwidth: 600\npanels: { left: { joint: screw-7x50 } }'),
  own(
    'kind: wall\nwidth: 600\npanels: { bottom: { joint: dowel-8x40 } }',
    changed('  dowel-8x35:', '  dowel-8x40: { diameter: 8, length: 40, in-face: 12 }\n  dowel-8x35:'),
  ),
  own(
    'kind: wall\nwidth: 600\npanels: { left: { joint: dowel-8x40 } }',
    changed('  dowel-8x35:', '  dowel-8x40: { diameter: 8, length: 40, in-face: 12 }\n  dowel-8x35:'),
  ),
  carcass('kind: base\nwidth: 600\npanels: { bottom: { end-dowels: [37, 197, 501] } }'),
  carcass('kind: base\nwidth: 600\npanels: { bottom: { far-end: { dowels: [37, 38, 501] } } }'),
  carcass('kind: base\nwidth: 600\npanels: { bottom: { far-end: { dowels: [2, 197, 501] } } }'),
  carcass(
    'kind: wall\nwidth: 600\nfixed-shelves: [{ at: 360, setback: 290 }]\npanels: { shelf-1: { far-end: { dowels: 2 } } }',
  ),
  carcass('kind: tall\nwidth: 800\nwardrobe-rails: [{ at: 1700, from-front: 200 }]'),
  carcass(
    'kind: base\nwidth: 600\nheight: 1136\nfront-heights: { how: stepped, step: 12 }\nfronts: [fixed, fixed, fixed]',
  ),
  carcass('kind: base\nwidth: 600\nblind: { left: 700 }'),
  carcass('kind: base\nwidth: 1100\ndividers: [458]\nblind: { right: 580 }\nfronts: [drawer]'),
  carcass('kind: wall\nwidth: 600\ndepth: 320\ndiagonal: { right: 330 }'),
  carcass('kind: wall\nwidth: 600\ndepth: 320\ndiagonal: { right: 600 }\nloose-shelves: [{ at: 328, setback: 300 }]'),
  carcass('kind: base\nwidth: 600\nback: { open-from: 0 }'),
  carcass('kind: base\nwidth: 1200\nblind: { right: 580 }\nfronts: [drawer]'),
  carcass('kind: wall\nwidth: 600\nloose-shelves: [680]'),
  carcass('kind: tall\nwidth: 600\nloose-shelves: [1900]\npanels: { left: { row-offset: 600 } }'),
  carcass('kind: wall\nwidth: 600\nloose-shelves: 2\npanels: { left: { row-offset: 50 } }'),
  'carcasses:\n  a: { kind: base, width: 600, loose-shelves: [330] }\n  b: { kind: base, width: 600, loose-shelves: [330] }\n',
  `carcasses:\n  sink:\n    note: ${'x'.repeat(500_000)}\n`,
  `a0: &a0 [x, x, x, x, x, x, x, x, x, x]\n${Array.from({ length: 8 }, (_, i) => `a${i + 1}: &a${i + 1} [${Array<string>(10).fill(`*a${i}`).join(', ')}]\n`).join('')}`,
  carcass('kind: tall\nwidth: 600\nheight: 2580\nfixed-shelves: [1290]'),
  carcass('kind: wall\nwidth: 900\ndividers: 1\nfixed-shelves: 1\nloose-shelves: 2'),
  own('kind: base\nwidth: 600\nrail-width: 70', NEUTRAL_SHOP_TEXT),
  own('kind: base\nwidth: 600\nrail-width: 90', NEUTRAL_SHOP_TEXT),
];

/** Shop files that do so. Invented. */
export const SHOPS: readonly string[] = [
  '',
  'boards: { a: { thickness: 16 }, a: { thickness: 18 } }\n',
  'boards: { a-16: { thickness: 16 } }\nhabits: { board: b-16 }\n',
  'boards: { a-16: { thickness: 16, sheet-length: 2800, sheet-width: 2070, sheets: { a-16: { length: 900, width: 600 } } } }\n',
  'boards: { a-16: { thickness: 16 }, b-18: { thickness: 18 } }\n',
  'boards: 16\n',
  'boards:\n  a-16: 16\n  b-16: { thickness: wide }\n  c-16: { thickness: 16, sheet-length: }\n  : { thickness: 3 }\n',
  changed('    height: 4 to 40', '    height: 40 to 4'),
  changed('    height: 4 to 40', '    height: 4 to'),
  changed('    height: 4 to 40', '    height: low to high'),
  changed('    height: 4 to 40', '    height: 4-40'),
  changed('    height: 4 to 40', '    height: low'),
  changed('  row-drill:', '  face-head:'),
  changed('    height: 4 to 40', '    height: 4'),
  'screws: { s-7: { clearance: 7, pilot: 5, length: 50, head: 10 }, s-8: { clearance: 7, pilot: 5, length: 50, head: 6, recess: 4 } }\n',
  'dowels: { d-8: { diameter: 8, length: 30, in-face: 30 } }\n',
  changed('    spindles: 24', '    spindles: 2.5'),
  changed('    spindles: 24', '    spindles: 0'),
  changed('    spindles: 24', '    spindles: 24\n    depth-stops: 4'),
  changed('share-places: yes', 'share-places: no'),
  changed('  stop: 30', '  stop: soon'),
  changed('  stop: 30', '  stop: -1'),
  changed('  stop: 30', '  stop: 1000000'),
  'label-sheet: { columns: 4 }\n',
];

/** Jobs whose papers say what those of the demo jobs do not. */
export const PAPERS: readonly string[] = [
  carcass('kind: base\nwidth: 600\nplinth: 100\nfeet: level-foot'),
  carcass('kind: base\nwidth: 600\nfronts: [{ front: fixed, height: 130 }, drawer]'),
  carcass('kind: base\nwidth: 600\nband: none\nback: { how: rebated }\nend-panels: left\nfillers: { right: 40 }'),
  carcass('kind: base\nwidth: 2600\nheight: 2000'),
  carcass('kind: base\nwidth: 600\ndoors: pair', 'shop: own.shop.yaml\n'),
  carcass('kind: base\nwidth: 600', 'shop: sawless.shop.yaml\n'),
  carcass('kind: base\nwidth: 600\ncount: 8', 'shop: few.shop.yaml\n'),
  'title: Empty\n',
];

/** The built-in shop without the sizes of its sheets, with a price of work and a usual pull. */
export const SHEETLESS = NEUTRAL_SHOP_TEXT.replace(/, sheet-length: \d+, sheet-width: \d+/g, '')
  .replace('\nrates:\n', '\nrates:\n  hour: 40\n')
  .replace('  pull: none', '  pull: blind')
  .replace('  bracket: none', '  bracket: hook-130')
  .replace('  foot: none', '  foot: level-foot')
  .replace('\npulls:\n', '\npulls:\n  blind: { diameter: 5, depth: 12 }\n');

/** The built-in shop with one sheet of a board left. */
export const FEW = NEUTRAL_SHOP_TEXT.replace(
  'sheet-length: 2800, sheet-width: 2070, grain: none }\n  board-18',
  'sheets: { last: { length: 2800, width: 2070, count: 1 } }, grain: none }\n  board-18',
);

/** The built-in shop without its saw. */
export const SAWLESS = NEUTRAL_SHOP_TEXT.replace(/\npanel-saws:\n.*\n/, '\n').replace(', saw: bench-saw', '');

/** A job in which nothing is bored. */
export const BARE = carcass('kind: base\nwidth: 600\njoint: none\nrows: none');

/** Jobs in whose text something is offered, hinted or explained at every place, whole and half written. */
export const OFFERED: readonly string[] = [
  carcass('kind: base\nwidth: 600\ncount: 2\nloose-shelves: [328, 520]\nband: band-1'),
  carcass('kind: base\nwidth: 600\nloose-shelves: [ ]\n'),
  carcass('kind: base\nwidth: 600\nfronts: \n'),
  carcass('kind: base\nwidth: 600\nloose-shelves: 2'),
  carcass('kind: base\nwidth: 600\nloose-shelves:\n  - '),
  carcass('kind: base\nwidth: 900\ndividers: 1\nloose-shelves: [328]'),
  carcass('kind: base\nwidth: 600\nband: \npanels:\n  left: { \n'),
  carcass('kind: base\nwidth: 600\nfixed-shelves:\n  - 200\n  \n'),
  carcass('kind: base\nwidth: 600\npanels:\n  \n'),
  carcass(
    'kind: wall\nwidth: 600\ndoors: { hung: left, hinge: hinge-110 }\npulls: knob\nbrackets: none\nplinth: 100\nfeet: none\nfillers: { left: 60 }\nangles: none',
  ),
];
