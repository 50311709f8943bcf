import { NEUTRAL_SHOP_TEXT } from '../../shop/neutral-text.js';

// A job and a shop in which every key stands at least once; the pages take their examples from them.

export const JOB_EXAMPLE = `title: Boathouse, north wall
unit: mm
shop: boathouse.shop.yaml

defaults:
  depth: 560
  board: ash-18
  joint: dowel-8x35

carcasses:
  workbench:
    kind: base
    width: 900
    count: 2
    place: { wall: 2, at: 350, above-floor: 0 }
    load: { on-shelf: 25, at-middle: 5, standard: none, ends: lying, back: free, lipping: 40 }
    height: 743
    band: ash-1
    top: rails
    rail-width: 110
    end-panels: { on: right, board: ash-18, band: ash-1, to-floor: yes }
    fillers: { left: 40, right: 30, board: ash-18, band: ash-1 }
    bottom: between
    plinth: 90
    back: { how: grooved, board: back-8, groove: 8, inset: 18, open-from: 420, open-to: 620 }
    doors:
      bays: [left, none]
      how: overlay
      board: ash-18
      band: ash-1
      hinge: door-hinge
      gap: 3
      reveal: 2
      top-reveal: 4
      bottom-reveal: 0
      buffer: 1.5
    rows: both
    row-offset: 9
    row-setback: 37
    rear-row: 485
    row-holes: { bays: [1, 2], from: 200, to: 600, round-shelves: 3 }
    dividers:
      - at: 450
        board: ash-18
    loose-shelves:
      - at: 361
        bay: 2
        board: ash-18
        setback: 10
    machines: { faces: bench-head, ends: bench-level, rows: slab-drill, clamp: frame }
    note: Stands on the slab, which falls to the door.
    panels:
      left:
        rows: front
        row-offset: 41
        bands: { front: ash-1, back: none, reference-end: none, far-end: ash-1 }
      bottom:
        board: ash-18
        joint: dowel-8x30
        dowels: [21, 181, 309, 469]
        face-depth: 12
        end-depth: 19
        reference-end: { joint: dowel-8x30 }
        far-end: { dowels: 5 }

  chest:
    kind: for-drawers
    width: 1000
    dividers: 1
    fronts:
      - { front: drawer, height: 157, bay: 1, pull: knob }
      - { front: drawer, pitches: 5 }
      - drawer
      - drawer
    front-heights: { how: stepped, step: 1 }
    drawers: { slide: runner, board: ash-18, band: none, bottom: grooved, bottom-board: back-8, joint: dowel-8x30, height: 80 }
    pulls: { on-drawers: bar-160, from-top: 45 }
    panels:
      drawer-2-front: { pull-from-top: 40 }

  sail-locker:
    kind: tall
    width: 600
    back: applied
    doors: { hung: pair, how: inset }
    pulls: { pull: bar-160, lies: upright, end: top, from-edge: 35, from-end: 70 }
    dowels: [29, 189, 317, 477]
    panels:
      shelf-1: { end-dowels: [60, 300, 500] }
      door-2: { pull: knob }
      door-1: { pull-lies: upright, pull-end: bottom, pull-from-edge: 40, pull-from-end: 900 }
    fixed-shelves: [1100]
    loose-shelves: 3

  oilskins:
    kind: tall
    width: 1100
    depth: 600
    dividers: 1
    wardrobe-rails:
      - { at: 1700, bay: 1, from-front: 290, rail: pole }
      - { at: 1500, bay: 2 }

  sea-chart-box:
    kind: wall
    width: 700
    brackets: hook-200

  corner-bench:
    kind: base
    width: 1150
    blind: { right: 590, strip: 70, board: ash-18, band: ash-1 }
    doors: left
    angles: brace

  left-corner:
    kind: base
    width: 1150
    blind: { left: 590 }
    doors: right

  chart-corner:
    kind: wall
    width: 640
    depth: 330
    diagonal: { right: 640 }
    loose-shelves: 2

  berth-corner:
    kind: wall
    width: 640
    depth: 330
    diagonal: { left: 640 }

  galley:
    kind: tall
    width: 600
    back: { open-from: 560, open-to: 1150 }
    fronts: [left, { front: appliance, height: 595 }, { front: drawer, height: 280 }, { front: drawer, height: 280 }]

  sea-bench:
    kind: base
    width: 1300
    plinth: 120
    feet: stub

  oar-locker:
    like: sail-locker
    mirrored: yes
    width: 450
`;

/** What the shop of that job has beside what is in the built-in shop. */
export const SHOP_EXAMPLE = `title: The boathouse
unit: mm

boards:
  ash-18:
    thickness: 18
    measured: 17.9
    sheet-length: 2500
    sheet-width: 1250
    price: 86
    material: solid-wood
    density: 680
    modulus: 10500
    grain: length
    sheets:
      left-over: { length: 1400, width: 620, price: 12, count: 3 }
  back-8: { thickness: 8 }

bands:
  ash-1: { thickness: 1, height: 23, price: 0.9 }

dowels:
  dowel-8x30: { diameter: 8, length: 30, in-face: 12, price: 0.05 }
  dowel-8x35: { diameter: 8, length: 35, in-face: 12 }

hinges:
  door-hinge:
    cup-diameter: 35
    cup-depth: 12
    distance: 20.5 to 24.5
    usual-distance: 22.5
    cup-screws: { apart: 44, behind: 9, diameter: 3, depth: 8 }
    arms: [6, 15, 24]
    plates: [0, 2, 4]
    setback: 37
    plate-pitches: 1
    plate-diameter: 5
    plate-depth: 13
    body-height: 60
    body-depth: 80
    rating: 4.5
    opening: 105
    slant: 0
    axis-from-edge: -1
    axis-from-front: -1.5
    price: 1.9

slides:
  runner:
    side-clearance: 13
    height-offset: 28
    box-offset: 28
    under: 5
    over: 14
    behind: 12
    body-height: 42
    diameter: 5
    depth: 12
    box-diameter: 3
    box-depth: 9
    rating: 25
    price: 12.4
    lengths:
      - { length: 400, holes: [37, 261], box-holes: [32, 160] }

pulls:
  bar-160:
    spacing: 160
    diameter: 5
    face: outside
    through-box: yes
    length: 184
    width: 12
    projection: 34
    head: 9
    head-height: 3
    price: 4.2
  knob: { diameter: 5, depth: 12 }

feet:
  stub:
    range: 80 to 140
    from-front: 120
    from-back: 112
    from-side: 90
    apart: 600
    spacing: 40
    diameter: 5
    depth: 12
    base: 80
    rating: 150
    clip: { from-top: 45, spacing: 20, diameter: 3, depth: 10 }
    price: 1.6

angles:
  brace:
    in-front: 22
    behind-front: 40
    spacing: 20
    from-end: 70
    apart: 500
    diameter: 5
    depth: 11
    front-diameter: 3
    front-depth: 10
    height: 40
    reach: 55
    price: 0.3

wardrobe-rails:
  pole: { width: 30, height: 30, spacing: 24, lies: level, diameter: 5, depth: 11, play: 3, over: 35, hanger: 460, price: 7.5 }

brackets:
  hook-200:
    holes:
      - { from-top: 46, from-back: 44 }
      - { from-top: 78, from-back: 44 }
    diameter: 8
    depth: 12
    rating: 200
    height: 80
    reach: 36
    width: 22
    price: 2.4

bits: [3, 5, 7, 8, 10, 15, 35]

vertical-heads:
  bench-head:
    body: bench-borer
    spindles: 24
    pitch: 32
    fence: far
    from: above
    fence-offset: 20 to 90
    depth: 0 to 60
    depth-stops: 4
    extension: 1200
    panel: { length: 180 to 2500, width: 60 to 850, thickness: 10 to 45 }
    stops:
      near-left: { side: left, range: 0 to 80, lowers: yes }
      far-left: { side: left, range: 80 to 1200, lowers: yes, stands: 350 }
      near-right: { side: right, range: 0 to 80, lowers: yes }
      far-right: { side: right, range: 80 to 1200, lowers: yes }
    clamps:
      left-hold: { along: -120, across: 60, pad: 40 }
      right-hold: { along: 120, across: 60 }
    stands: { bit: 8, spindles: [1, 6, 10, 15], depth: 12, fence: [21], thickness: 18 }

horizontal-heads:
  bench-level:
    body: bench-borer
    spindles: 24
    pitch: 32
    height: 4 to 40
    depth: 0 to 70
    stops:
      square-left: { side: left, range: 14 to 90, lowers: yes }
      square-right: { side: right, range: 14 to 90, lowers: yes }
    stands: { bit: 8, height: 9 }

line-drills:
  slab-drill:
    spindles: 25
    pitch: 32
    heads: 1
    fence: far
    from: above
    setback: 20 to 650
    throat: 690
    depth: 0 to 50
    stops:
      row-left: { side: left, range: 0 to 250, lowers: yes }
      row-right: { side: right, range: 0 to 250, lowers: yes }
    index-pins: row
    index-range: 2400

cup-borers:
  door-cups:
    body: door-borer
    distance: 20 to 25
    depth: 0 to 15
    stops:
      door-left: { side: left, range: 50 to 1100, lowers: yes }
      door-right: { side: right, range: 50 to 1100, lowers: yes }

panel-saws:
  wall-saw: { kerf: 3, rip: 1200, stages: 2, first: along }

edge-banders:
  hot-glue: { band: 0.4 to 2, shortest-edge: 140, pre-milling: 1 }

case-clamps:
  frame: { width: 200 to 1400, height: 200 to 2300, depth: 100 to 650 }

habits:
  row-offset: 9
  sizes: { base: { height: 743, batch: 6 } }
  shared-load: [1, 6, 10, 15]
  bracket-rating: 120
  two-pulls-from: 900

label-sheet:
  page: a4
  columns: 3
  rows: 8
  label-width: 63
  label-height: 34
  margin-left: 8
  margin-top: 9
  gap-across: 2.5
  gap-down: 0

rates:
  hour: 48
  pin: 0.06
  front-screw: 0.04
  sheet: 150
  cut: 20
  edge: 15
  band-metre: 6
  carcass: 1200
  fitting: 10
`;

/** Texts to look an example up in, the first that has the key first. */
export const EXAMPLES: Readonly<Record<'job' | 'shop', readonly string[]>> = {
  job: [JOB_EXAMPLE],
  shop: [NEUTRAL_SHOP_TEXT, SHOP_EXAMPLE],
};
