import fc from 'fast-check';
import type { CarcassSpec } from '../../shared-core/carcass/spec.js';
import type { FrontWord, HungWord } from '../../shared-core/job/model.js';
import type { Micrometres } from '../../shared-core/length/units.js';
import type { Fitting } from '../../shared-core/fittings/kinds.js';
import type { HorizontalHead, Shop } from '../../shared-core/shop/model.js';
import {
  band,
  board,
  cam,
  dowel,
  mm,
  pull,
  screw,
  shopOf,
  specOf,
  type CarcassWish,
  type ChoiceWish,
  type FrontWish,
  type Standing,
} from './specs.js';

const nowhere = { part: 'shop', start: 0, end: 0 } as const;

/** A job that can be built and bored without a problem, in a shop of its own. */
export interface Job {
  readonly shop: Shop;
  /** What the job says, so that a test can say it in another way. */
  readonly wish: Partial<CarcassWish>;
  readonly spec: CarcassSpec;
}

/** Any whole number of micrometres between two lengths in millimetres, odd ones too. */
const between = (low: number, high: number): fc.Arbitrary<Micrometres> => fc.integer({ min: mm(low), max: mm(high) });

/** Thicknesses as nominal boards and as measured ones. */
const thickness = fc.oneof(fc.constantFrom(mm(16), mm(18), mm(19), mm(22)), between(15, 25));

/** Fittings that leave enough wood in the thinnest board. */
function fittingsFor(thinnest: Micrometres): readonly Fitting[] {
  const inFace = Math.min(mm(12), thinnest - mm(4));
  return [
    dowel('dowel-8', mm(8), mm(30), inFace),
    dowel('dowel-10', mm(10), mm(40), inFace - 1),
    dowel('dowel-odd', 6351, 31_753, inFace),
    screw('screw', mm(7), mm(5), mm(50)),
    cam('cam', {
      camDiameter: mm(15),
      camDepth: thinnest - mm(3),
      distance: mm(34),
      boltDiameter: mm(8),
      studDiameter: mm(5),
      studDepth: Math.min(mm(11), thinnest - mm(4)),
      guide: 'dowel-8',
    }),
  ];
}

const shopArbitrary: fc.Arbitrary<Shop> = fc
  .record({
    thicknesses: fc.tuple(thickness, thickness, thickness),
    back: between(2.5, 9),
    pitch: fc.constantFrom(mm(32), mm(32), mm(25), 31_750),
    setback: between(30, 45),
    spacing: between(96, 320),
    glueGap: between(0.5, 2),
    spindles: fc.integer({ min: 9, max: 25 }),
    railWidth: between(80, 120),
    shelfGap: between(0, 2),
    bandThickness: between(0.3, 2),
    shared: fc.option(
      fc.record({
        spindles: fc.integer({ min: 5, max: 30 }),
        nearest: between(0, 60),
        spare: fc.boolean(),
        batches: fc.tuple(fc.option(fc.integer({ min: 1, max: 40 })), fc.option(fc.integer({ min: 1, max: 40 }))),
        wallDepth: between(250, 400),
      }),
    ),
  })
  .map(
    ({ thicknesses, back, pitch, setback, spacing, glueGap, spindles, railWidth, shelfGap, bandThickness, shared }) => {
      const shop = shopOf({
        boards: [...thicknesses.map((value, index) => board(`board-${index}`, value)), board('back', back)],
        bands: [band('band', bandThickness)],
        fittings: fittingsFor(Math.min(...thicknesses)),
        spindles,
        habits: {
          pitch,
          setback,
          backBoard: 'back',
          // Half a pitch from the rows, so that they never meet.
          firstDowel: setback + Math.floor(pitch / 2),
          dowelSpacing: spacing,
          glueGap,
          railWidth,
          shelfGap,
          sharePlaces: shared !== null,
          spareHoles: shared?.spare === true,
        },
      });
      if (shared === null) return shop;
      const { base } = shop.habits.sizes;
      const sizes = {
        ...shop.habits.sizes,
        base: { ...base, batch: shared.batches[0] },
        wall: { ...base, depth: shared.wallDepth, batch: shared.batches[1] },
      };
      return withEndHead({ ...shop, habits: { ...shop.habits, sizes } }, shared);
    },
  );

/** The shop with a head for ends, which a load of bits that all joints share is made for too. */
function withEndHead(shop: Shop, { spindles, nearest }: { spindles: number; nearest: Micrometres }): Shop {
  const range = { min: nearest, max: mm(120) };
  const stop = { place: nowhere, range, lowers: true, stands: null };
  const head: HorizontalHead = {
    kind: 'horizontal',
    name: 'end-head',
    place: nowhere,
    body: 'ends',
    spindles,
    pitch: shop.habits.pitch,
    depth: { min: 0, max: mm(90) },
    depthStops: null,
    panel: { length: null, width: null, thickness: null },
    clamps: [],
    stands: null,
    stops: [
      { ...stop, name: 'E', side: 'left' },
      { ...stop, name: 'F', side: 'right' },
    ],
    height: { min: mm(2), max: mm(40) },
  };
  const machines = new Map([...shop.machines, [head.name, head]]);
  return { ...shop, machines, habits: { ...shop.habits, machines: { ...shop.habits.machines, ends: head.name } } };
}

const aBoard = fc.constantFrom('board-0', 'board-1', 'board-2');
/** Which of the shelf levels, counted from below, carries what. */
const level = fc.constantFrom('none', 'none', 'fixed', 'loose');

const shape = fc.record({
  board: aBoard,
  other: aBoard,
  joint: fc.constantFrom('dowel-8', 'dowel-8', 'dowel-10', 'dowel-odd', 'screw', 'cam'),
  top: fc.constantFrom('between', 'over', 'rails'),
  bottom: fc.constantFrom('between', 'under'),
  back: fc.constantFrom('grooved', 'rebated', 'applied', 'none'),
  groove: between(4, 9),
  inset: fc.oneof(fc.constant(0), between(8, 25)),
  depth: between(300, 650),
  plinth: fc.oneof(fc.constant(0), between(60, 150)),
  rows: fc.constantFrom('none', 'front', 'both'),
  endPanels: fc.constantFrom('none', 'none', 'none', 'left', 'right', 'both'),
  filler: fc.option(between(20, 90), { freq: 1 }),
  rowHoles: fc.oneof(
    { weight: 4, arbitrary: fc.constant({}) },
    {
      weight: 1,
      arbitrary: fc.record(
        {
          bays: fc.uniqueArray(fc.integer({ min: 1, max: 4 }), { minLength: 1, maxLength: 3 }),
          from: between(0, 300),
          to: between(200, 900),
          roundShelves: fc.integer({ min: 0, max: 4 }),
        },
        { requiredKeys: [] },
      ),
    },
  ),
  bays: fc.array(fc.record({ width: between(180, 600), board: aBoard }), { minLength: 1, maxLength: 4 }),
  levels: fc.array(fc.record({ kind: level, bay: fc.nat({ max: 4 }), board: aBoard, setback: between(0, 60) }), {
    maxLength: 5,
  }),
  /** Height beyond whole pitches, which unbalances the row. */
  extra: fc.oneof(fc.constant(0), between(0, 20)),
  /** Panels that are made of the other board. */
  swapped: fc.subarray(['left', 'right', 'top', 'bottom', 'plinth']),
  bared: fc.subarray(['left', 'rail-front', 'bottom']),
});

const level0 = { kind: 'none', bay: 0, setback: 0 } as const;

/** Pitches from one shelf level to the next; three of the least pitch leave room between boards. */
const LEVEL = 3;

function wishFor(shop: Shop, drawn: Drawn): Partial<CarcassWish> {
  const thick = (name: string): Micrometres => shop.boards.get(name)!.thickness;
  const own = (key: string): string => (drawn.swapped.includes(key) ? drawn.other : drawn.board);
  const { pitch } = shop.habits;

  const dividers: Standing[] = [];
  let x = thick(own('left')) + drawn.bays[0]!.width;
  for (const bay of drawn.bays.slice(1)) {
    dividers.push({ at: x + Math.floor(thick(bay.board) / 2), board: bay.board });
    x += thick(bay.board) + bay.width;
  }
  const offset = Math.floor(thick(drawn.board) / 2);
  const standing = (kind: string, setback: boolean): Standing[] =>
    drawn.levels.flatMap((one, index) =>
      one.kind !== kind
        ? []
        : [
            {
              at: offset + (index + 1) * LEVEL * pitch,
              board: one.board,
              ...(setback && { setback: one.setback }),
              ...(one.bay > 0 && { bay: 1 + ((one.bay - 1) % drawn.bays.length) }),
            },
          ],
    );
  const there = (key: string): boolean =>
    key === 'top'
      ? drawn.top !== 'rails'
      : key === 'rail-front'
        ? drawn.top === 'rails'
        : key !== 'plinth' || drawn.plinth > 0;
  const swapped = drawn.swapped.filter(there).map((key): [string, ChoiceWish] => [key, { board: drawn.other }]);
  const bared = drawn.bared
    .filter(there)
    .map((key): [string, ChoiceWish] => [key, { bands: { front: 'none', 'far-end': 'band' } }]);
  const panels: Record<string, ChoiceWish> = {};
  for (const [key, choice] of [...swapped, ...bared]) panels[key] = { ...panels[key], ...choice };

  return {
    width: x + thick(own('right')),
    height:
      (drawn.levels.length + 2) * LEVEL * pitch +
      thick(drawn.board) +
      (drawn.top === 'over' ? thick(own('top')) : 0) +
      (drawn.bottom === 'under' ? thick(own('bottom')) : 0) +
      drawn.extra,
    depth: drawn.depth,
    board: drawn.board,
    band: 'band',
    joint: drawn.joint,
    top: drawn.top,
    bottom: drawn.bottom,
    railWidth: shop.habits.railWidth,
    plinth: drawn.plinth,
    back: drawn.back,
    backBoard: 'back',
    groove: drawn.groove,
    inset: drawn.inset,
    rows: drawn.rows,
    rowHoles: drawn.rowHoles,
    endPanels: drawn.endPanels,
    fillers: drawn.filler === null ? {} : { left: drawn.filler },
    rowOffset: offset,
    rowSetback: shop.habits.setback,
    dividers,
    fixedShelves: standing('fixed', true),
    looseShelves: standing('loose', false),
    panels,
  };
}
type Drawn = typeof shape extends fc.Arbitrary<infer T> ? T : never;

/** Random valid carcasses in random shops: all constructions, odd micrometres, boards and pitches of any size. */
export const jobArbitrary: fc.Arbitrary<Job> = fc.tuple(shopArbitrary, shape).map(([shop, drawn]) => {
  const wish = wishFor(shop, drawn);
  return { shop, wish, spec: specOf(shop, wish) };
});

const word: fc.Arbitrary<HungWord> = fc.constantFrom('left', 'right', 'pair');

/** Doors whose reveals and gaps are less than half of the thinnest board, so that they close what they hang before. */
const hanging = fc.record({
  how: fc.constantFrom('overlay', 'inset'),
  whole: word,
  bays: fc.option(fc.array(fc.oneof(fc.constant<HungWord>('none'), word), { minLength: 1, maxLength: 4 })),
  board: aBoard,
  gap: between(1, 7),
  reveal: between(0, 7),
  topReveal: between(0, 7),
  bottomReveal: between(0, 7),
  buffer: between(0, 4),
});

/** Hinges of any size, the screws of the plate now in line with the front rows and now not. */
const hinging = fc.record({
  inRow: fc.boolean(),
  setback: between(30, 60),
  arms: fc.array(between(0, 30), { minLength: 1, maxLength: 3 }),
  plates: fc.array(between(0, 9), { minLength: 1, maxLength: 3 }),
  reach: between(3, 12),
  platePitches: fc.integer({ min: 1, max: 3 }),
  bodyHeight: between(40, 90),
  bodyDepth: between(40, 120),
  cupScrews: fc.option(
    fc.record({ apart: between(38, 60), behind: between(0, 12), diameter: between(2, 8), depth: between(5, 12) }),
  ),
  opening: fc.integer({ min: 80, max: 170 }),
  axisFromEdge: between(0, 8),
  axisFromFront: between(0, 8),
});

function withHinge(shop: Shop, drawn: typeof hinging extends fc.Arbitrary<infer T> ? T : never): Shop {
  const { inRow, setback, reach, ...sizes } = drawn;
  const [usual] = shop.hinges.values();
  const one = {
    ...usual!,
    ...sizes,
    setback: inRow ? shop.habits.setback : setback,
    distance: { min: mm(20.5), max: mm(20.5) + reach },
    plateDepth: shop.habits.rowDepth,
  };
  return { ...shop, hinges: new Map([[one.name, one]]) };
}

/** A pull of any size, where and how it may stand. */
const pulling = fc.record({
  spacing: fc.constantFrom(0, mm(96), mm(128), 160_001),
  diameter: between(3, 6),
  depth: fc.option(between(8, 12), { freq: 1 }),
  face: fc.constantFrom('outside', 'inside'),
  throughBox: fc.boolean(),
  lies: fc.constantFrom('upright', 'level'),
  end: fc.option(fc.constantFrom('top', 'bottom', 'middle')),
  fromEdge: between(10, 80),
  fromEnd: between(10, 120),
  fromTop: fc.option(between(10, 60)),
  two: fc.boolean(),
});

function withPull(
  shop: Shop,
  { two, lies, end, fromEdge, fromEnd, fromTop, ...sizes }: typeof pulling extends fc.Arbitrary<infer T> ? T : never,
): { readonly shop: Shop; readonly pulls: CarcassWish['pulls'] } {
  const one = pull('pull', sizes);
  const pulls = new Map([...shop.pulls, [one.name, one]]);
  const wish = { pull: one.name, lies, fromEdge, fromEnd, ...(end && { end }), ...(fromTop !== null && { fromTop }) };
  return { shop: { ...shop, pulls, habits: { ...shop.habits, twoPullsFrom: two ? mm(600) : null } }, pulls: wish };
}

/** The same, with doors; shelves stand back behind inset ones. */
export const jobWithDoorsArbitrary: fc.Arbitrary<Job> = fc
  .tuple(shopArbitrary, shape, hanging, hinging, pulling)
  .map(([plainShop, drawn, { whole, bays, ...rest }, ofHinge, ofPull]) => {
    const { shop, pulls } = withPull(withHinge(plainShop, ofHinge), ofPull);
    const plain = wishFor(shop, drawn);
    // Inset doors cannot hang before dividers.
    const asked = bays ?? (rest.how === 'inset' && drawn.bays.length > 1 ? [whole, whole] : null);
    const behind = rest.how === 'inset' ? shop.boards.get(rest.board)!.thickness : 0;
    const back = (shelf: Standing): Standing => ({ ...shelf, setback: (shelf.setback ?? 0) + behind });
    const wish: Partial<CarcassWish> = {
      ...plain,
      fixedShelves: plain.fixedShelves!.map(back),
      looseShelves: plain.looseShelves!.map(back),
      pulls,
      doors: { ...rest, ...(asked === null ? { hung: whole } : { bays: asked.slice(0, drawn.bays.length) }) },
    };
    return { shop, wish, spec: specOf(shop, wish) };
  });

/** Slides of any size, their screws now in line with the rows and now not. */
const sliding = fc.record({
  clearance: between(8, 16),
  offset: between(5, 60),
  inRow: fc.boolean(),
  hole: between(30, 60),
  under: between(0, 12),
  over: between(0, 20),
  behind: between(0, 15),
  bottom: fc.constantFrom('grooved', 'applied'),
});

const front = fc.constantFrom<FrontWord>('drawer', 'drawer', 'drawer', 'left', 'right', 'fixed', 'open');

/** A chest without shelves, of one to three bays, with drawers and other fronts before each. */
export const jobWithDrawersArbitrary: fc.Arbitrary<Job> = fc
  .tuple(
    shopArbitrary,
    shape,
    hanging,
    sliding,
    fc.array(front, { minLength: 1, maxLength: 3 }),
    fc.option(between(120, 180), { freq: 2 }),
    fc.boolean(),
    pulling,
  )
  .map(([plainShop, drawn, { whole: _whole, bays: _bays, ...doors }, slides, words, height, isOwnBay, ofPull]) => {
    const { hole, inRow, clearance, offset, under, over, behind, bottom } = slides;
    const [usual] = plainShop.slides.values();
    const holes = (length: Micrometres): readonly Micrometres[] => [
      inRow ? plainShop.habits.setback : hole,
      Math.min(length - mm(20), (inRow ? plainShop.habits.setback : hole) + 4 * plainShop.habits.pitch),
    ];
    const slide = {
      ...usual!,
      sideClearance: clearance,
      heightOffset: offset,
      boxOffset: offset,
      under,
      over,
      behind,
      bodyHeight: mm(10),
      depth: plainShop.habits.rowDepth,
      lengths: [200, 250, 300, 350, 400, 450, 500].map((length) => ({
        length: mm(length),
        holes: holes(mm(length)),
        boxHoles: [mm(30), mm(length - 60)],
      })),
    };
    const { shop, pulls } = withPull({ ...plainShop, slides: new Map([[slide.name, slide]]) }, ofPull);
    const tall = { ...drawn, levels: Array.from({ length: 6 }, () => ({ ...level0, board: drawn.board })) };
    const plain = wishFor(shop, { ...tall, depth: Math.max(drawn.depth, mm(320)), bays: drawn.bays.slice(0, 3) });
    const fronts = words.map((word, i): FrontWish => ({
      front: word,
      ...(word === 'fixed' && isOwnBay && { pull: 'pull' }),
      ...(i === 0 && words.length > 1 && height !== null && { height }),
      ...(isOwnBay && i === 0 && words.length > 1 && { bay: 1 }),
    }));
    const wish: Partial<CarcassWish> = { ...plain, doors, fronts, pulls, drawers: { board: drawn.board, bottom } };
    return { shop, wish, spec: specOf(shop, wish) };
  });

/** Carcasses across a corner of either hand, the wings alike or not, with a door whose hinge is made for the slant of the front. */
export const diagonalJobArbitrary: fc.Arbitrary<Job> = fc
  .tuple(
    shopArbitrary,
    shape,
    fc.record({
      hand: fc.constantFrom('left' as const, 'right' as const),
      across: between(180, 420),
      out: between(180, 420),
      alike: fc.boolean(),
      depth: between(250, 450),
      back: fc.constantFrom('applied', 'applied', 'none'),
      thickBack: fc.boolean(),
      hung: fc.constantFrom<HungWord>('none', 'left', 'right'),
      reveal: between(0, 4),
    }),
    hinging,
  )
  .map(([plainShop, drawn, corner, ofHinge]) => {
    const { hand, across, alike, depth, back, thickBack, hung, reveal } = corner;
    const out = alike ? across : corner.out;
    const slant =
      (Math.atan2(...(hung === hand ? ([across, out] as const) : ([out, across] as const))) * 180) / Math.PI;
    const { hinges, ...shop } = withHinge(plainShop, { ...ofHinge, arms: ofHinge.arms.map((arm) => arm + mm(15)) });
    const slanting = new Map([...hinges].map(([name, one]) => [name, { ...one, slant }]));
    const plain = wishFor(plainShop, {
      ...drawn,
      depth,
      back,
      top: 'over',
      bottom: 'under',
      plinth: 0,
      endPanels: 'none',
      filler: null,
      bays: drawn.bays.slice(0, 1),
      // High enough for two hinges that do not meet.
      levels: [...drawn.levels, ...Array.from({ length: 4 }, () => ({ ...level0, board: drawn.board }))],
      swapped: drawn.swapped.filter((key) => key !== 'plinth'),
    });
    const wish: Partial<CarcassWish> = {
      ...plain,
      width: depth + across,
      diagonal: { [hand]: depth + out },
      fixedShelves: [],
      backBoard: thickBack ? drawn.board : 'back',
      doors: { hung, reveal },
    };
    const own = { ...shop, hinges: slanting };
    return { shop: own, wish, spec: specOf(own, wish) };
  });

/** Plain carcasses, several in one shop. */
export const jobsArbitrary = (
  most: number,
): fc.Arbitrary<{ readonly shop: Shop; readonly specs: readonly CarcassSpec[] }> =>
  fc.tuple(shopArbitrary, fc.array(shape, { minLength: 1, maxLength: most })).map(([shop, drawn]) => ({
    shop,
    specs: drawn.map((one) => specOf(shop, wishFor(shop, one))),
  }));
