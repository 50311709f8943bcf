/**
 * The shop that stands in where a job names none, as the file that its owner could write. Pitch, setback, row holes, board
 * thicknesses, dowel sizes, play of backs, gaps and hinges of doors, places of pulls, screws of drawer fronts, sag and creep of shelves, heights along a wall and limits of joints are common practice, no source; machines, slides, times,
 * tolerances and the label sheet are invented.
 */
export const NEUTRAL_SHOP_TEXT = `# A neutral workshop: a starting point. Put your own machines, materials and habits in its place.
# Every figure of a machine here is invented. Measure your own, with the machine switched off and locked, and check it
# against the machine's manual; where the two differ, write the narrower range.
title: Neutral workshop
unit: mm

# material: says how heavy and how stiff a board is; write 'density' and 'modulus' where your supplier tells them.
# thickness: as sold; add 'measured: 15.8' when a batch is otherwise (calliper, away from the edge).
boards:
  board-16: { thickness: 16, sheet-length: 2800, sheet-width: 2070, grain: none }
  board-18: { thickness: 18, sheet-length: 2800, sheet-width: 2070, grain: none }
  board-19: { thickness: 19, sheet-length: 2800, sheet-width: 2070, grain: none }
  back-3: { thickness: 3, sheet-length: 2800, sheet-width: 2070, grain: none, material: mdf }
  back-8: { thickness: 8, sheet-length: 2800, sheet-width: 2070, grain: none, material: mdf }

# thickness: of the tape as glued. height: width of the tape as bought.
bands:
  band-1: { thickness: 1, height: 23 }
  band-04: { thickness: 0.4, height: 23 }
  band-2: { thickness: 2, height: 23 }

# in-face: how deep the bore in the face of a panel is; the rest of the dowel stands in the end of the other.
dowels:
  dowel-8x30: { diameter: 8, length: 30, in-face: 12 }
  dowel-8x35: { diameter: 8, length: 35, in-face: 12 }
  dowel-10x40: { diameter: 10, length: 40, in-face: 12 }

# clearance: hole through the face. pilot: hole in the end. length: under the head.
# head, recess: diameter and depth of the hole that the head goes into; leave both out for a head that stays proud.
screws:
  screw-7x50: { clearance: 7, pilot: 5, length: 50, head: 10, recess: 4 }

# From the maker's figures for the fitting. distance: from the end of the panel to the centre of the cam.
cams:
  cam-15:
    cam-diameter: 15
    cam-depth: 12.5
    distance: 34
    bolt-diameter: 8
    stud-diameter: 5
    stud-depth: 11
    guide: dowel-8x30

# From the maker's figures for the hinge. distance: from the edge of the door to the centre of the cup.
# arms, plates: hang a door and measure from the face under the plate to the centre of the cup: that is arm and plate together.
# body: what hinge and plate need in height, and how far they reach back.
hinges:
  hinge-110:
    cup-diameter: 35
    cup-depth: 12
    distance: 20.5 to 24.5
    usual-distance: 22.5
    # Of the screws beside the cup: 'cup-screws: { apart: ..., behind: ..., diameter: ..., depth: ... }'; left out, they are not bored.
    arms: [5, 14, 24]
    plates: [0, 2, 3]
    setback: 37
    plate-pitches: 1
    plate-diameter: 5
    plate-depth: 13
    body-height: 62
    body-depth: 80
    # Degrees. Where the line that the door turns about is not its outer corner, write axis-from-edge and axis-from-front.
    opening: 110
  # For a front across a corner. slant: by how many degrees that slants away from a front square to the side.
  hinge-corner-45:
    slant: 45
    cup-diameter: 35
    cup-depth: 12
    distance: 20.5 to 24.5
    usual-distance: 22.5
    arms: [14, 19]
    plates: [0, 2, 3]
    setback: 37
    plate-pitches: 1
    plate-diameter: 5
    plate-depth: 13
    body-height: 62
    body-depth: 80
    opening: 95

# From the maker's figures for the slide. holes: from the front edge of the carcass; box-holes: from the front of the drawer's box.
# height-offset: from the lower edge of the box up to the line of the screws. under, over, behind: the room that the box needs.
# rating: what a pair carries, in kilograms.
slides:
  slide-45:
    side-clearance: 12.7
    height-offset: 30
    box-offset: 30
    under: 6
    over: 15
    behind: 10
    body-height: 46
    diameter: 5
    depth: 13
    box-diameter: 3
    box-depth: 8
    rating: 30
    lengths:
      - { length: 250, holes: [37, 197], box-holes: [35, 131, 227] }
      - { length: 300, holes: [37, 229], box-holes: [35, 163, 259] }
      - { length: 350, holes: [37, 261], box-holes: [35, 163, 291] }
      - { length: 400, holes: [37, 293], box-holes: [35, 195, 355] }
      - { length: 450, holes: [37, 357], box-holes: [35, 227, 387] }
      - { length: 500, holes: [37, 389], box-holes: [35, 227, 451] }

# spacing: from screw to screw; left out for a knob. diameter: of the bores; they go through unless a depth is written.
pulls:
  bar-160: { spacing: 160, diameter: 4.5, length: 180, width: 12, projection: 35 }
  knob: { diameter: 4.5, width: 30, projection: 28 }

# holes: in the side, from its upper end and its back edge. rating: what a pair carries by its maker; what the wall and the screws
# in it carry is for someone competent to judge.
brackets:
  hook-130:
    holes: [{ from-top: 40, from-back: 48 }, { from-top: 72, from-back: 48 }]
    diameter: 10
    depth: 12
    rating: 130
    height: 66
    reach: 30
    width: 18

# Fixed fronts, blind panels and fillers are screwed on with them from inside. behind-front: 37 and the buffers, so that the screws
# find holes of the front row behind an overlay front; spacing: a pitch. front-: their bores in the front.
angles:
  angle-32: { in-front: 18, behind-front: 39, spacing: 32, from-end: 64, apart: 600, diameter: 5, depth: 11, front-diameter: 3, front-depth: 10 }

# range: heights that it can be set to. The distances are those of the feet under the bottom; apart: the greatest along the front.
feet:
  level-foot:
    range: 90 to 160
    from-front: 110
    from-back: 70
    from-side: 60
    apart: 650
    spacing: 32
    diameter: 8
    depth: 11
    base: 70
    rating: 120
    clip: { from-top: 40, spacing: 32, diameter: 3, depth: 10 }

# spacing: from screw to screw of a socket, which stand one over the other; left out for one screw.
wardrobe-rails:
  tube-25: { width: 25, height: 25, spacing: 32, diameter: 5, depth: 11, play: 2, over: 30, hanger: 450 }

vertical-heads:
  face-head:
    # Where one machine turns its head level, give both heads the same 'body: NAME'; these are two machines.
    # Count them along the line.
    spindles: 24
    # From the centre of one spindle to the next.
    pitch: 32
    # Where the fence lies as you stand at the machine, far or near, and from where the bits come, above or below.
    fence: far
    from: above
    # From the fence to the centre of the first spindle: least to greatest setting.
    fence-offset: 18 to 96
    # From the face of the panel to the tip of the bit: least to greatest setting of the depth stop.
    depth: 0 to 65
    # By how much the fence extension widens the range of the furthest stop of each hand; leave out without one.
    extension: 1150
    # Smallest to greatest panel that lies safely and is held: length along the fence, width away from it.
    panel: { length: 200 to 2600, width: 50 to 900, thickness: 10 to 50 }
    # range: from the face of the stop to the nearest spindle on its side, at both ends of its travel.
    # side: left or right of the spindles as you stand at the machine. lowers: can it be lowered out of the way?
    # stands: where it stands when a job begins, if it is left there.
    stops:
      A: { side: left, range: 0 to 75, lowers: yes }
      B: { side: left, range: 75 to 1250, lowers: yes }
      C: { side: right, range: 0 to 75, lowers: yes }
      D: { side: right, range: 75 to 1250, lowers: yes }

horizontal-heads:
  end-head:
    spindles: 22
    pitch: 32
    # From the table, where the panel lies, to the centre of the spindles: least to greatest setting.
    height: 4 to 40
    # From the end of the panel to the tip of the bit.
    depth: 0 to 80
    panel: { length: 150 to 2600, width: 50 to 900, thickness: 10 to 50 }
    # range: from the face of the stop, where the front edge lies, to the nearest spindle on its side.
    stops:
      E: { side: left, range: 14 to 100, lowers: yes }
      F: { side: right, range: 14 to 100, lowers: yes }

line-drills:
  row-drill:
    # Of one head.
    spindles: 27
    pitch: 32
    # Lines that bore in one stroke: one, or two for the front and the rear row.
    heads: 2
    fence: far
    from: above
    # From the fence to the centre line of the first head's spindles.
    setback: 20 to 80
    # Between the centre lines of the two heads.
    head-distance: 96 to 640
    # From the fence to the deepest row that a head reaches before the frame is in the way.
    throat: 700
    depth: 0 to 60
    panel: { length: 200 to 2800, width: 100 to 900, thickness: 10 to 50 }
    # range: from the face of the stop to the nearest spindle on its side.
    stops:
      G: { side: left, range: 0 to 280, lowers: yes }
      H: { side: right, range: 0 to 280, lowers: yes }
    # What a panel registers on to go on past one stroke: a hole of the row (row), pins in the fence (fence), or none.
    index-pins: row
    # Maximum distance that a panel can be moved along in all.
    index-range: 2600
    # May a spindle enter a hole that is bored already?
    meets-holes-twice: no
    # What stays in it between jobs, so that it is not set anew: the bit in its spindles, also fence, depth and thickness.
    stands: { bit: 5 }

cup-borers:
  hinge-borer:
    # From the fence, where the edge of the door lies, to the centre of the cup: about 20 to 25 for cups of 35.
    distance: 20 to 25
    # From the face of the panel to the floor of the cup.
    depth: 0 to 15
    # From the end of the door to the centre of the cup.
    stops:
      cup-left: { side: left, range: 50 to 1200, lowers: yes }
      cup-right: { side: right, range: 50 to 1200, lowers: yes }
    panel: { length: 200 to 2800, width: 150 to 900, thickness: 15 to 30 }

# kerf: width of the cut, measured in a scrap.
# rip: widest strip. crosscut: longest part cut off it. trim: taken off each edge of a sheet first.
# stages: 3 where what is cut off a strip may be cut once more.
panel-saws:
  bench-saw: { kerf: 3.2, rip: 1300, crosscut: 3200, trim: 8, stages: 3 }

# band: thinnest to thickest tape. shortest-edge, narrowest-panel: the least that its feed holds.
edge-banders:
  edge-bander: { band: 0.4 to 3, thickness: 8 to 50, shortest-edge: 120, narrowest-panel: 60 }

# Of the box that fits in, outside to outside: closed to fully open.
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
    for-drawers: { pitches: 22, depth: 560 }
    open: { pitches: 22, depth: 330 }
  machines: { faces: face-head, ends: end-head, rows: row-drill, cups: hinge-borer, clamp: case-clamp, saw: bench-saw }
  # Of the rows: hole to hole.
  pitch: 32
  # From the front edge to the centre of the front row.
  setback: 37
  row-diameter: 5
  row-depth: 13
  # Least distance from the back edge to the centre of the rear row.
  rear-margin: 37
  # Half a pitch from the rows, so that dowels never meet row holes.
  first-dowel: 21
  # Greatest distance between neighbouring dowels.
  dowel-spacing: 192
  # Whether joints of all depths share one load of bits: fewer set-ups, a few more dowels.
  share-places: yes
  # Where they do: whether sides may have bores between two rails that nothing enters, so that rails need no load of their own.
  spare-holes: yes
  # By how much the two bores together are deeper than the dowel is long.
  glue-gap: 1
  # Least wood left under a bore, beside it, and between two bores.
  least-wall: 3
  # How far bits go on under a bore that goes through: their points, and boards that are a little thick.
  through-allowance: 2
  rail-width: 100
  groove-depth: 8
  # By how much the groove is wider than the back is thick, so that the back slides in: try it with your own boards.
  groove-play: 0.2
  # By how much the back is shorter and narrower than its grooves or rebates would let it be.
  back-play: 1
  # From the back edge to the groove of the back.
  back-inset: 16
  # The least offcut that is kept.
  offcut-length: 600
  offcut-width: 200
  # What a band hangs over its edge, both ends together, before it is trimmed.
  band-allowance: 50
  # Play of a loose shelf at each end.
  shelf-gap: 1
  # How far a loose shelf stands back from the front edge.
  shelf-setback: 5
  hinge: hinge-110
  # From the ends of a door to the centres of its outer hinges: about 100; they go to the nearest place on the pitch.
  hinge-end: 100
  # A door up to the first height has two hinges, up to the next three, and so on.
  hinges-by-height: [900, 1600, 2000, 2400]
  # The same by the weight of the door in kilograms.
  hinges-by-weight: [9, 15, 20, 25]
  # Shelves: how many times the first sag they come to in years, and the greatest sag for each metre.
  creep-factor: 1.5
  sag-limit: 2.6
  # Of two doors side by side, and all round an inset one.
  door-gap: 3
  # From the outside of the carcass to the edge of an overlay door: half a gap, so that neighbours leave a whole one.
  door-reveal: 1.5
  # Under a worktop, or under the carcass above.
  door-top-reveal: 3
  door-bottom-reveal: 0
  # From the floor to the lower end of wall carcasses, and the thickness of the worktop: as they are drawn along a wall.
  hang-height: 1450
  worktop-thickness: 38
  # What the buffers hold an overlay door off the front edges.
  door-buffer: 2
  slide: slide-45
  # 'none', or the pull that doors and drawer fronts usually have.
  pull: none
  # 'none', or the hanging bracket that the sides of wall carcasses are usually bored for.
  bracket: none
  wardrobe-rail: tube-25
  # 'none', or the foot that bottoms of carcasses on a plinth are usually bored for.
  foot: none
  # 'none', or the angle that fronts which do not move are usually screwed on with.
  angle: angle-32
  # From the edge that opens, and from the end of the door, to the nearest screw; tall doors have it at the height of the hand.
  pull-from-edge: 40
  pull-from-end: 60
  hand-height: 1050
  # From the lower edge of a drawer's sides up to the groove of its bottom.
  drawer-groove: 12
  # Of the front of a drawer: through the front of its box, and into the front itself.
  front-screws: { clearance: 5, pilot: 3, depth: 10, from-end: 64, from-edge: 32 }

# Seconds that a change takes: time a few with a watch.
changeover:
  stop: 30
  fence: 60
  bit: 45
  depth: 20
  turn-head: 90
  extension: 120
  machine: 60

# Seconds that the boring of a panel takes: time ten panels with a watch.
handling:
  # To take one up, lay it against the stop, and put it away.
  panel: 15
  # To turn it, or to slide it to another stop.
  lay: 8
  # One stroke, clamping counted.
  stroke: 6
  index-move: 8

# Each plus or minus: cut, set or bore ten times, measure, and take half the spread. squareness: over one metre.
# The limits are the greatest offset, step and gap that you accept in a joint: what a finger feels at a banded edge, and an
# eye sees at a joint, begins at about 0.3 mm (common practice, no source).
tolerances:
  # Within one delivery; a delivery as a whole is told by the board's 'measured'.
  thickness: 0.1
  width: 0.2
  length: 0.1
  squareness: 0.2
  stop: 0.05
  drill: 0.05
  dowel-play: 0.1
  front-limit: 0.3
  step-limit: 0.3
  gap-limit: 0.3

# The sheets that panel labels are printed on; measure one. margin-left and margin-top are left out where the labels stand in
# the middle of the sheet.
label-sheet:
  page: a4
  columns: 2
  rows: 6
  label-width: 92
  label-height: 42
  gap-across: 4
  gap-down: 2

# Seconds that work takes beside boring: time a few with a watch. For money write the price of an 'hour' of work, of a shelf 'pin',
# of a 'front-screw' of drawers, and a 'price' with boards, bands and fittings.
rates:
  # To lay a sheet on the saw, and to clear away what is left.
  sheet: 180
  cut: 25
  # To bring an edge to the bander, and what a metre of it takes.
  edge: 20
  band-metre: 8
  # To lay out a carcass, close it in the clamp and take it out; and each fitting in it.
  carcass: 900
  fitting: 12
`;
