import { EDGES, INNER_EDGES } from '../../words/names.js';
import type { Located } from '../../document/place.js';
import type { Micrometres } from '../../length/units.js';
import { keyBeside } from '../../job/panel-key.js';
import type { Hand } from '../../shop/model.js';
import { boardFor } from '../choices.js';
import { heightOf } from '../fronts/places.js';
import { HANDS, handsSaid } from '../hands.js';
import { extent, type Interval } from '../interval.js';
import type { Layout } from '../layout.js';
import type { Outline } from '../panel.js';
import type { Role } from '../role.js';
import type { CarcassSpec } from '../spec.js';

const beside = {
  stands: 'upright',
  rows: 'none',
  belongs: 'beside-box',
  hiddenFace: 'inside',
  looks: null,
  meetings: () => [],
} satisfies Partial<Role>;

const endHands = ({ endPanels: { on } }: CarcassSpec): readonly Hand[] =>
  HANDS.filter((hand) => on.value === hand || on.value === 'both');
const fillerHands = ({ fillers }: CarcassSpec): readonly Hand[] => handsSaid(fillers);

/** A loose panel against the outside of a side, its own outside face away from it, u from the plane of the fronts back. */
export const endPanel: Role = {
  ...beside,
  called: 'end panel',
  edges: EDGES,
  names: (spec) => endHands(spec).map((hand) => keyBeside('end', hand)),
  keys: { 'end-panels': 'all' },
  sizes: { length: ({ height }) => height, width: ({ depth }) => depth },
  materials: ({ endPanels }) => endPanels,
  outlines: (layout) => endHands(layout.box.spec).map((hand) => endOutline(layout, hand)),
};

function endOutline(layout: Layout, hand: Hand): Outline {
  const { spec, shop } = layout.box;
  const { board, band, on, toFloor } = spec.endPanels;
  const key = keyBeside('end', hand);
  const own = boardFor(spec, shop, key, board);
  const front = frontPlane(layout);
  const foot = toFloor.value ? 0 - spec.plinth.value : 0;
  return {
    key,
    board: own,
    length: spec.height.value - foot,
    width: spec.depth.value - front,
    // One that hangs is seen from below, and one over the height of a worktop from above.
    seen: spec.kind.value === 'wall' ? ['front', 'reference-end', 'far-end'] : ['front'],
    band,
    grooves: [],
    cause: on,
    pose: {
      origin: { x: outsideOf(spec, hand, own.thickness), y: front, z: foot },
      u: '+y',
      v: '+z',
      t: hand === 'left' ? '+x' : '-x',
    },
  };
}

/** A strip beside the carcass, or its end panel, in the plane of the fronts, u from its edge toward the carcass. */
export const filler: Role = {
  ...beside,
  called: 'filler',
  edges: INNER_EDGES,
  names: (spec) => fillerHands(spec).map((hand) => keyBeside('filler', hand)),
  keys: { fillers: 'all' },
  sizes: { length: ({ height }) => height, width: widthGiven },
  materials: ({ fillers }) => fillers,
  outlines: (layout) => fillerHands(layout.box.spec).map((hand) => fillerOutline(layout, hand)),
};

function widthGiven({ fillers, width }: CarcassSpec, { key }: { readonly key: string }): Located<unknown> {
  return fillers[key === keyBeside('filler', 'left') ? 'left' : 'right'] ?? width;
}

function fillerOutline(layout: Layout, hand: Hand): Outline {
  const { spec, shop } = layout.box;
  const { board, band } = spec.fillers;
  const key = keyBeside('filler', hand);
  const asked = spec.fillers[hand]!;
  const end = endHands(spec).includes(hand)
    ? boardFor(spec, shop, keyBeside('end', hand), spec.endPanels.board).thickness
    : 0;
  const z = alongFronts(layout);
  return {
    key,
    board: boardFor(spec, shop, key, board),
    length: extent(z),
    width: asked.value,
    // Its ends are too short for an edge bander.
    seen: ['front'],
    band,
    grooves: [],
    cause: asked,
    pose: {
      origin: { x: outsideOf(spec, hand, end), y: frontPlane(layout), z: z.from },
      u: hand === 'left' ? '-x' : '+x',
      v: '+z',
      t: '+y',
    },
  };
}

/** So far outside of the side. */
const outsideOf = ({ width }: CarcassSpec, hand: Hand, by: Micrometres): Micrometres =>
  hand === 'left' ? 0 - by : width.value + by;

/** Where what closes the carcass has its outside face, in the carcass frame; its front edges where nothing stands before them. */
function frontPlane({ doors, drawers, fixedFronts, blindPanels }: Layout): Micrometres {
  const fronts = [...doors, ...drawers.map(({ front }) => front), ...fixedFronts, ...blindPanels];
  return Math.min(0, ...fronts.map(({ front }) => front));
}

/** As high as overlay fronts, else as the carcass. */
function alongFronts(layout: Layout): Interval {
  const { box, doors, drawers, fixedFronts, blindPanels } = layout;
  const hasFronts = doors.length + drawers.length + fixedFronts.length + blindPanels.length > 0;
  return hasFronts && box.spec.doors.how.value === 'overlay' ? heightOf(box) : { from: 0, to: box.spec.height.value };
}
