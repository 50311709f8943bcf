/**
 * The shop that stands in where a job names none, as the file that its owner could write. Pitch, setback, row holes, board
 * thicknesses and dowel sizes are common practice, no source; machines, times and tolerances are invented.
 */
export const NEUTRAL_SHOP_TEXT = `# A neutral workshop: a starting point. Put your own machines, materials and habits in its place.
title: Neutral workshop
unit: mm

boards:
  board-16: { thickness: 16, sheet-length: 2800, sheet-width: 2070, grain: none }
  board-18: { thickness: 18, sheet-length: 2800, sheet-width: 2070, grain: none }
  board-19: { thickness: 19, sheet-length: 2800, sheet-width: 2070, grain: none }
  back-3: { thickness: 3, sheet-length: 2800, sheet-width: 2070, grain: none }
  back-8: { thickness: 8, sheet-length: 2800, sheet-width: 2070, grain: none }

bands:
  band-1: { thickness: 1, height: 23 }
  band-04: { thickness: 0.4, height: 23 }
  band-2: { thickness: 2, height: 23 }

dowels:
  dowel-8x30: { diameter: 8, length: 30, in-face: 12 }
  dowel-8x35: { diameter: 8, length: 35, in-face: 12 }
  dowel-10x40: { diameter: 10, length: 40, in-face: 12 }

screws:
  screw-7x50: { clearance: 7, pilot: 5, length: 50 }

cams:
  cam-15:
    cam-diameter: 15
    cam-depth: 12.5
    distance: 34
    bolt-diameter: 8
    stud-diameter: 5
    stud-depth: 11
    guide: dowel-8x30

vertical-heads:
  face-head:
    body: borer
    spindles: 21
    pitch: 32
    fence: far
    from: above
    fence-offset: 20 to 80
    depth: 0 to 60
    depth-stops: 4
    extension: 1200
    panel: { length: 200 to 2600, width: 50 to 900, thickness: 10 to 50 }
    stops:
      A: { side: left, range: 0 to 60, lowers: yes }
      B: { side: left, range: 60 to 1300, lowers: yes }
      C: { side: right, range: 0 to 60, lowers: yes }
      D: { side: right, range: 60 to 1300, lowers: yes }

horizontal-heads:
  end-head:
    body: borer
    spindles: 21
    pitch: 32
    height: 4 to 40
    depth: 0 to 80
    depth-stops: 4
    panel: { length: 150 to 2600, width: 50 to 900, thickness: 10 to 50 }
    stops:
      E: { side: left, range: 20 to 80, lowers: yes }
      F: { side: right, range: 20 to 80, lowers: yes }

line-drills:
  row-drill:
    spindles: 23
    pitch: 32
    heads: 2
    fence: far
    from: above
    setback: 20 to 80
    head-distance: 96 to 640
    throat: 700
    depth: 0 to 60
    depth-stops: 4
    panel: { length: 200 to 2800, width: 100 to 900, thickness: 10 to 50 }
    stops:
      G: { side: left, range: 0 to 300, lowers: yes }
      H: { side: right, range: 0 to 300, lowers: yes }
    index-pins: row
    index-range: 3000
    meets-holes-twice: no

cup-borers:
  hinge-borer:
    distance: 3 to 10
    depth: 0 to 15
    panel: { length: 200 to 2800, width: 150 to 900, thickness: 15 to 30 }

panel-saws:
  bench-saw: { kerf: 3.2, rip: 1300, crosscut: 3200 }

edge-banders:
  edge-bander: { band: 0.4 to 3, thickness: 8 to 50, shortest-edge: 120, narrowest-panel: 60 }

case-clamps:
  case-clamp: { width: 200 to 1500, height: 200 to 2400, depth: 100 to 700 }

habits:
  board: board-16
  back-board: back-3
  band: band-1
  joint: dowel-8x30
  sizes:
    base: { pitches: 22, depth: 560 }
    wall: { pitches: 22, depth: 330 }
    tall: { pitches: 64, depth: 560 }
    drawer: { pitches: 22, depth: 560 }
    open: { pitches: 22, depth: 330 }
  machines: { faces: face-head, ends: end-head, rows: row-drill, cups: hinge-borer, clamp: case-clamp }
  pitch: 32
  setback: 37
  row-diameter: 5
  row-depth: 13
  rear-margin: 37
  # Half a pitch from the rows, so that dowels never meet row holes.
  first-dowel: 53
  dowel-spacing: 160
  glue-gap: 1
  least-wall: 3
  rail-width: 100
  groove-depth: 8
  back-inset: 16
  shelf-gap: 1
  shelf-setback: 5

# Seconds.
changeover:
  stop: 30
  fence: 60
  bit: 45
  depth: 20
  turn-head: 90
  extension: 120
  machine: 60

tolerances:
  thickness: 0.2
  width: 0.2
  length: 0.2
  squareness: 0.3
  stop: 0.05
  drill: 0.05
  dowel-play: 0.1
  front-limit: 0.5
  step-limit: 0.5
  gap-limit: 0.5
`;
