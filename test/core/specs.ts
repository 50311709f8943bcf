import type { Located, Path, Place } from '../../shared-core/document/place.js';
import type { CarcassSpec, DividerSpec, ShelfSpec } from '../../shared-core/carcass/spec.js';
import type {
  BackHow,
  DoorHow,
  DrawerBottom,
  EndPanelsOn,
  FrontHeights,
  FrontWord,
  HungWord,
  JointChoice,
  PanelChoice,
  PullEnd,
  PullLies,
  RowChoice,
} from '../../shared-core/job/model.js';
import { half, type Micrometres } from '../../shared-core/length/units.js';
import type { CamFitting } from '../../shared-core/fittings/kinds/cam.js';
import type { Dowel } from '../../shared-core/fittings/kinds/dowel.js';
import type { ConnectorScrew } from '../../shared-core/fittings/kinds/screw.js';
import type { Fitting } from '../../shared-core/fittings/kinds.js';
import type {
  Band,
  Board,
  CarcassKind,
  Hinge,
  Pull,
  Angle,
  Foot,
  WardrobeRail,
  Bracket,
  Shop,
  Slide,
  VerticalHead,
} from '../../shared-core/shop/model.js';

/** Millimetres to the core's micrometres. */
export const mm = (length: number): Micrometres => Math.round(length * 1000);

const nowhere: Place = { part: 'self', start: 0, end: 0 };

function located<T>(value: T, path: Located<T>['path'] = [], written = true): Located<T> {
  return { value, place: nowhere, path, written };
}

export function board(name: string, thickness: Micrometres): Board {
  return {
    name,
    place: nowhere,
    thickness,
    nominal: thickness,
    sheetLength: null,
    sheetWidth: null,
    price: null,
    sheets: [],
    grain: 'none',
    material: 'particleboard',
    density: null,
    modulus: null,
  };
}
export function band(name: string, thickness: Micrometres): Band {
  return { name, place: nowhere, thickness, height: null, price: null };
}
export function dowel(name: string, diameter: Micrometres, length: Micrometres, inFace: Micrometres): Dowel {
  return { kind: 'dowel', name, place: nowhere, diameter, length, inFace, price: null };
}
export function screw(
  name: string,
  clearance: Micrometres,
  pilot: Micrometres,
  length: Micrometres,
  sunk: Pick<ConnectorScrew, 'head' | 'recess'> = { head: null, recess: null },
): ConnectorScrew {
  return { kind: 'screw', name, place: nowhere, clearance, pilot, length, price: null, ...sunk };
}
export function cam(name: string, sizes: Omit<CamFitting, 'kind' | 'name' | 'place' | 'price'>): CamFitting {
  return { kind: 'cam', name, place: nowhere, price: null, ...sizes };
}

export function hinge(name: string, sizes: Omit<Hinge, 'name' | 'place'>): Hinge {
  return { ...sizes, name, place: nowhere };
}

export function slide(name: string, sizes: Omit<Slide, 'name' | 'place'>): Slide {
  return { ...sizes, name, place: nowhere };
}

export function pull(name: string, sizes: Pick<Pull, 'spacing' | 'diameter'> & Partial<Pull>): Pull {
  return {
    place: nowhere,
    depth: null,
    face: 'outside',
    throughBox: true,
    length: null,
    width: mm(15),
    projection: mm(30),
    head: mm(9),
    headHeight: mm(3),
    price: null,
    ...sizes,
    name,
  };
}

export function bracketOf(name: string, holes: Bracket['holes'], sizes: Partial<Bracket> = {}): Bracket {
  return {
    place: nowhere,
    diameter: mm(10),
    depth: mm(12),
    rating: null,
    height: mm(60),
    reach: mm(40),
    width: mm(20),
    price: null,
    ...sizes,
    name,
    holes,
  };
}

export function angleOf(name: string, sizes: Partial<Angle> = {}): Angle {
  return {
    name,
    place: nowhere,
    inFront: mm(18),
    behindFront: mm(39),
    spacing: mm(32),
    fromEnd: mm(60),
    apart: mm(400),
    diameter: mm(5),
    depth: mm(8),
    frontDiameter: mm(3),
    frontDepth: mm(9),
    height: mm(50),
    reach: mm(45),
    price: null,
    ...sizes,
  };
}

export function footOf(name: string): Foot {
  return {
    name,
    place: nowhere,
    range: { min: mm(90), max: mm(150) },
    fromFront: mm(110),
    fromBack: mm(70),
    fromSide: mm(60),
    apart: mm(500),
    spacing: 0,
    diameter: mm(8),
    depth: mm(8),
    base: mm(60),
    rating: null,
    clip: { fromTop: mm(40), spacing: 0, diameter: mm(3), depth: mm(6) },
    price: null,
  };
}

export interface ShopWish {
  readonly boards: readonly Board[];
  readonly bands: readonly Band[];
  readonly fittings: readonly Fitting[];
  readonly hinges: readonly Hinge[];
  readonly slides: readonly Slide[];
  readonly pulls: readonly Pull[];
  readonly brackets: readonly Bracket[];
  readonly wardrobeRails: readonly WardrobeRail[];
  readonly feet: readonly Foot[];
  readonly angles: readonly Angle[];
  readonly spindles: number;
  readonly habits: Partial<Shop['habits']>;
}

const byName = <T extends { readonly name: string }>(things: readonly T[]): ReadonlyMap<string, T> =>
  new Map(things.map((thing) => [thing.name, thing]));

const WISH: ShopWish = {
  boards: [
    board('board-16', mm(16)),
    board('board-18', mm(18)),
    board('board-19', mm(19)),
    board('back-3', mm(3)),
    board('back-8', mm(8)),
  ],
  bands: [band('band-04', 400), band('band-1', mm(1)), band('band-2', mm(2))],
  fittings: [
    dowel('dowel-8x30', mm(8), mm(30), mm(12)),
    dowel('dowel-10x40', mm(10), mm(40), mm(12)),
    screw('screw-7x50', mm(7), mm(5), mm(50)),
    screw('screw-sunk', mm(7), mm(5), mm(50), { head: mm(10), recess: mm(4) }),
    cam('cam-15', {
      camDiameter: mm(15),
      camDepth: mm(12.5),
      distance: mm(34),
      boltDiameter: mm(8),
      studDiameter: mm(5),
      studDepth: mm(11),
      guide: 'dowel-8x30',
    }),
  ],
  hinges: [
    hinge('hinge-110', {
      cupDiameter: mm(35),
      cupDepth: mm(12),
      distance: { min: mm(20.5), max: mm(24.5) },
      usualDistance: mm(22.5),
      cupScrews: null,
      arms: [mm(5), mm(14), mm(24)],
      plates: [0, mm(2), mm(3)],
      setback: mm(37),
      platePitches: 1,
      plateDiameter: mm(5),
      plateDepth: mm(13),
      bodyHeight: mm(62),
      bodyDepth: mm(80),
      rating: null,
      slant: 0,
      opening: 110,
      axisFromEdge: 0,
      axisFromFront: 0,
      price: null,
    }),
  ],
  slides: [
    slide('slide-45', {
      sideClearance: mm(12.7),
      heightOffset: mm(30),
      boxOffset: mm(30),
      under: mm(6),
      over: mm(15),
      behind: mm(10),
      bodyHeight: mm(46),
      diameter: mm(5),
      depth: mm(13),
      boxDiameter: mm(3),
      boxDepth: mm(8),
      rating: 30,
      lengths: [250, 300, 350, 400, 450, 500].map((length) => ({
        length: mm(length),
        holes: [mm(37), mm(length - 53)],
        boxHoles: [mm(35), mm(length - 49)],
      })),
      price: null,
    }),
  ],
  pulls: [pull('bar-160', { spacing: mm(160), diameter: mm(4.5) }), pull('knob', { spacing: 0, diameter: mm(4.5) })],
  brackets: [],
  wardrobeRails: [
    {
      name: 'tube',
      place: nowhere,
      width: mm(25),
      height: mm(25),
      spacing: mm(32),
      lies: 'upright',
      diameter: mm(5),
      depth: mm(11),
      play: mm(2),
      over: mm(30),
      hanger: mm(450),
      price: null,
    },
  ],
  feet: [],
  angles: [],
  spindles: 21,
  habits: {},
};

/** An invented shop with one vertical head; the parts that geometry looks at can be given. */
export function shopOf(wish: Partial<ShopWish> = {}): Shop {
  const { boards, bands, fittings, hinges, slides, pulls, brackets, wardrobeRails, feet, angles, spindles, habits } = {
    ...WISH,
    ...wish,
  };
  const head: VerticalHead = {
    kind: 'vertical',
    name: 'face-head',
    place: nowhere,
    body: 'borer',
    spindles,
    pitch: habits.pitch ?? mm(32),
    depth: { min: 0, max: mm(60) },
    depthStops: null,
    panel: { length: null, width: null, thickness: null },
    clamps: [],
    stands: null,
    stops: [],
    fence: 'far',
    from: 'above',
    fenceOffset: { min: mm(20), max: mm(80) },
    extension: 0,
  };
  const size = { height: null, pitches: 22, depth: mm(560), batch: null };
  return {
    title: 'Test shop',
    unit: 'mm',
    neutral: false,
    boards: byName(boards),
    bands: byName(bands),
    fittings: byName(fittings),
    machines: byName([head]),
    hinges: byName(hinges),
    slides: byName(slides),
    pulls: byName(pulls),
    brackets: byName(brackets),
    wardrobeRails: byName(wardrobeRails),
    feet: byName(feet),
    angles: byName(angles),
    bits: null,
    habits: {
      board: boards[0]!.name,
      backBoard: 'back-3',
      band: bands[0]?.name ?? 'none',
      joint: fittings[0]!.name,
      sizes: { base: size, wall: size, tall: size, forDrawers: size, open: size },
      machines: { faces: head.name, ends: null, rows: null, cups: null, clamp: null, saw: null },
      pitch: mm(32),
      setback: mm(37),
      rowDiameter: mm(5),
      rowDepth: mm(13),
      rowOffset: null,
      rearMargin: mm(37),
      firstDowel: mm(53),
      dowelSpacing: mm(160),
      sharePlaces: false,
      sharedLoad: null,
      spareHoles: false,
      glueGap: mm(1),
      throughAllowance: mm(2),
      leastWall: mm(3),
      railWidth: mm(100),
      grooveDepth: mm(8),
      groovePlay: mm(0.2),
      backPlay: mm(1),
      backInset: mm(16),
      offcutLength: 600_000,
      offcutWidth: 200_000,
      bandAllowance: mm(50),
      shelfGap: mm(1),
      shelfSetback: mm(5),
      hinge: 'hinge-110',
      hingeEnd: mm(100),
      hingesByHeight: [mm(900), mm(1600), mm(2000), mm(2400)],
      doorGap: mm(3),
      doorReveal: mm(1.5),
      doorTopReveal: mm(3),
      doorBottomReveal: 0,
      hingesByWeight: [9, 15, 20, 25],
      creepFactor: 1.5,
      sagLimit: mm(2.6),
      bracketRating: null,
      hangHeight: mm(1450),
      worktopThickness: mm(38),
      doorBuffer: mm(2),
      slide: slides[0]?.name ?? 'none',
      pull: 'none',
      bracket: 'none',
      foot: 'none',
      angle: angles[0]?.name ?? 'none',
      wardrobeRail: 'tube',
      pullFromEdge: mm(40),
      pullFromEnd: mm(60),
      handHeight: mm(1050),
      twoPullsFrom: null,
      drawerGroove: mm(12),
      frontScrews: { clearance: mm(5), pilot: mm(3), depth: mm(10), fromEnd: mm(64), fromEdge: mm(32) },
      ...habits,
    },
    changeover: { stop: 0, fence: 0, bit: 0, depth: 0, turnHead: 0, extension: 0, machine: 0 },
    handling: { panel: 0, lay: 0, stroke: 0, indexMove: 0 },
    tolerances: {
      thickness: 0,
      width: 0,
      length: 0,
      squareness: 0,
      stop: 0,
      drill: 0,
      dowelPlay: 0,
      frontLimit: 0,
      stepLimit: 0,
      gapLimit: 0,
    },
    labelSheet: {
      page: 'a4',
      columns: 2,
      rows: 5,
      labelWidth: mm(90),
      labelHeight: mm(50),
      marginLeft: null,
      marginTop: null,
      gapAcross: 0,
      gapDown: 0,
    },
    rates: { hour: null, pin: null, frontScrew: null, sheet: 0, cut: 0, edge: 0, bandMetre: 0, carcass: 0, fitting: 0 },
  };
}

/** A shelf or divider as the tests write it. */
export interface Standing {
  readonly at: Micrometres;
  readonly bay?: number;
  readonly setback?: Micrometres;
  readonly board?: string;
}

export interface CarcassWish {
  readonly kind: CarcassKind;
  readonly width: Micrometres;
  readonly height: Micrometres;
  readonly depth: Micrometres;
  readonly board: string;
  readonly band: string;
  readonly joint: string;
  readonly top: 'between' | 'over' | 'rails';
  readonly bottom: 'between' | 'under';
  readonly railWidth: Micrometres;
  readonly plinth: Micrometres;
  readonly back: BackHow;
  readonly backBoard: string;
  readonly groove: Micrometres;
  readonly inset: Micrometres;
  readonly rows: RowChoice;
  readonly rowOffset: Micrometres | null;
  readonly rowSetback: Micrometres;
  readonly rowHoles: {
    readonly bays?: readonly number[];
    readonly from?: Micrometres;
    readonly to?: Micrometres;
    readonly roundShelves?: number;
  };
  readonly rearRow: Micrometres | null;
  readonly dowels: readonly Micrometres[] | null;
  readonly dividers: readonly Standing[];
  readonly fixedShelves: readonly Standing[];
  readonly looseShelves: readonly Standing[];
  readonly doors: DoorsWish;
  readonly fronts: readonly FrontWish[] | null;
  readonly backOpen?: { readonly from?: Micrometres; readonly to?: Micrometres };
  readonly blind?: { readonly left?: Micrometres; readonly right?: Micrometres; readonly strip?: Micrometres };
  readonly diagonal?: { readonly left?: Micrometres; readonly right?: Micrometres };
  readonly frontHeights?: { readonly how: FrontHeights; readonly step?: number };
  readonly drawers: DrawersWish;
  readonly pulls: PullsWish;
  readonly brackets?: string;
  readonly aboveFloor?: Micrometres;
  readonly feet?: string;
  readonly angles?: string;
  readonly wardrobeRails?: readonly Micrometres[];
  readonly endPanels: EndPanelsOn;
  readonly fillers: { readonly left?: Micrometres; readonly right?: Micrometres };
  readonly panels: Readonly<Record<string, ChoiceWish>>;
}

/** The doors as the tests write them; a word for the whole front, or one for each bay. */
export interface DoorsWish {
  readonly hung?: HungWord;
  readonly bays?: readonly HungWord[];
  readonly how?: DoorHow;
  readonly board?: string;
  readonly band?: string;
  readonly hinge?: string;
  readonly gap?: Micrometres;
  readonly reveal?: Micrometres;
  readonly topReveal?: Micrometres;
  readonly bottomReveal?: Micrometres;
  readonly buffer?: Micrometres;
}

/** The pulls as the tests write them. */
export interface PullsWish {
  readonly pull?: string;
  readonly onDrawers?: string;
  readonly lies?: PullLies;
  readonly end?: PullEnd;
  readonly fromEdge?: Micrometres;
  readonly fromEnd?: Micrometres;
  readonly fromTop?: Micrometres;
}

/** A front as the tests write it. */
export interface FrontWish {
  readonly front: FrontWord;
  readonly height?: Micrometres;
  readonly bay?: number;
  readonly pull?: string;
}

export interface DrawersWish {
  readonly slide?: string;
  readonly board?: string;
  readonly bottom?: DrawerBottom;
  readonly bottomBoard?: string;
  readonly joint?: string;
  readonly height?: Micrometres;
}

/** Of the joint at one end of a panel: its fitting, and how many bores or where. */
export interface JointWish {
  readonly joint?: string;
  readonly dowels?: number | readonly Micrometres[];
}

export interface ChoiceWish {
  readonly referenceEnd?: JointWish;
  readonly farEnd?: JointWish;
  readonly board?: string;
  readonly rows?: RowChoice;
  readonly rowOffset?: Micrometres;
  readonly joint?: string;
  readonly dowels?: readonly Micrometres[];
  readonly endDowels?: readonly Micrometres[];
  readonly faceDepth?: Micrometres;
  readonly endDepth?: Micrometres;
  readonly bands?: Readonly<Record<string, string>>;
  readonly pull?: string;
}

const PLAIN: CarcassWish = {
  kind: 'base',
  width: mm(600),
  height: mm(720),
  depth: mm(560),
  board: 'board-16',
  band: 'band-1',
  joint: 'dowel-8x30',
  top: 'between',
  bottom: 'between',
  railWidth: mm(100),
  plinth: 0,
  back: 'grooved',
  backBoard: 'back-3',
  groove: mm(8),
  inset: mm(16),
  rows: 'both',
  rowOffset: null,
  rowSetback: mm(37),
  rowHoles: {},
  rearRow: null,
  dowels: null,
  dividers: [],
  fixedShelves: [],
  looseShelves: [],
  doors: {},
  fronts: null,
  drawers: {},
  pulls: {},
  endPanels: 'none',
  fillers: {},
  panels: {},
};

/** A carcass with every default filled in, as the text layer would give it. */
export function specOf(shop: Shop, given: Partial<CarcassWish> = {}): CarcassSpec {
  const wish = { ...PLAIN, ...given };
  const shelf = (stem: string, setback: Micrometres) => {
    return (standing: Standing, index: number): ShelfSpec => ({
      key: `${stem}-${index + 1}`,
      at: located(standing.at, [stem, index, 'at']),
      bay: standing.bay === undefined ? null : located(standing.bay, [stem, index, 'bay']),
      board: located(standing.board ?? wish.board),
      setback: located(standing.setback ?? setback, [stem, index, 'setback']),
    });
  };
  return {
    name: located('test', ['name']),
    kind: located(wish.kind),
    width: located(wish.width, ['width']),
    place: { at: null, wall: located(1), aboveFloor: located(wish.aboveFloor ?? 0) },
    like: null,
    leading: 'left',
    count: located(1, ['count']),
    height: located(wish.height, ['height']),
    depth: located(wish.depth, ['depth']),
    board: located(wish.board),
    band: located(wish.band),
    joint: located(wish.joint),
    top: located(wish.top),
    bottom: located(wish.bottom),
    railWidth: located(wish.railWidth, ['rail-width']),
    plinth: located(wish.plinth),
    back: {
      how: located(wish.back),
      board: located(wish.backBoard),
      groove: located(wish.groove, ['back', 'groove']),
      inset: located(wish.inset),
      openFrom: wish.backOpen?.from === undefined ? null : located(wish.backOpen.from, ['back', 'open-from']),
      openTo: wish.backOpen?.to === undefined ? null : located(wish.backOpen.to, ['back', 'open-to']),
    },
    load: {
      onShelf: null,
      atMiddle: null,
      standard: located('none'),
      ends: located('lying'),
      back: located('free'),
      lipping: null,
    },
    doors: doorsOf(shop, wish),
    fronts: frontsOf(wish),
    frontHeights: {
      how: located(wish.frontHeights?.how ?? 'equal', ['front-heights', 'how']),
      step: located(wish.frontHeights?.step ?? 1, ['front-heights', 'step']),
    },
    drawers: drawersOf(shop, wish),
    pulls: pullsOf(shop, wish),
    wardrobeRails:
      wish.wardrobeRails === undefined ? null : located(wish.wardrobeRails.map((at) => located({ at: located(at) }))),
    angles: located(wish.angles ?? shop.habits.angle, ['angles']),
    feet: located(wish.feet ?? shop.habits.foot, ['feet']),
    brackets: located(wish.brackets ?? shop.habits.bracket, ['brackets']),
    endPanels: {
      on: located(wish.endPanels),
      board: located(wish.doors.board ?? wish.board),
      band: located(wish.band),
      toFloor: located(true),
    },
    fillers: {
      left: wish.fillers.left === undefined ? null : located(wish.fillers.left),
      right: wish.fillers.right === undefined ? null : located(wish.fillers.right),
      board: located(wish.doors.board ?? wish.board),
      band: located(wish.band),
    },
    blind: {
      left: wish.blind?.left === undefined ? null : located(wish.blind.left, ['blind', 'left']),
      right: wish.blind?.right === undefined ? null : located(wish.blind.right, ['blind', 'right']),
      strip: located(wish.blind?.strip ?? mm(60), ['blind', 'strip']),
      board: located(wish.doors.board ?? wish.board),
      band: located(wish.band),
    },
    rows: located(wish.rows, ['rows']),
    rowOffset: located(wish.rowOffset ?? half(shop.boards.get(wish.board)!.thickness)),
    rowHoles: {
      bays: wish.rowHoles.bays === undefined ? null : located(wish.rowHoles.bays.map((bay) => located(bay))),
      from: wish.rowHoles.from === undefined ? null : located(wish.rowHoles.from),
      to: wish.rowHoles.to === undefined ? null : located(wish.rowHoles.to),
      roundShelves: wish.rowHoles.roundShelves === undefined ? null : located(wish.rowHoles.roundShelves),
    },
    rowSetback: located(wish.rowSetback),
    rearRow: wish.rearRow === null ? null : located(wish.rearRow),
    dowels: wish.dowels === null ? null : located(wish.dowels.map((at, index) => located(at, ['dowels', index]))),
    machines: { faces: null, ends: null, rows: null, clamp: null },
    dividers: wish.dividers.map((standing, index): DividerSpec => ({
      key: `divider-${index + 1}`,
      at: located(standing.at, ['dividers', index]),
      board: located(standing.board ?? wish.board),
    })),
    fixedShelves: wish.fixedShelves.map(shelf('shelf', 0)),
    looseShelves: wish.looseShelves.map(shelf('loose', shop.habits.shelfSetback)),
    panels: new Map(Object.entries(wish.panels).map(([key, choice]) => [key, choiceOf(key, choice)])),
    diagonal: {
      left: wish.diagonal?.left === undefined ? null : located(wish.diagonal.left, ['diagonal', 'left']),
      right: wish.diagonal?.right === undefined ? null : located(wish.diagonal.right, ['diagonal', 'right']),
    },
    without: [],
    note: '',
  };
}

function doorsOf({ habits }: Shop, { doors, board, band }: CarcassWish): CarcassSpec['doors'] {
  const size = (value: Micrometres, key: string) => located(value, ['doors', key]);
  return {
    hung: located(doors.hung ?? 'none', ['doors', 'hung']),
    bays: doors.bays === undefined ? null : located(doors.bays.map((word, i) => located(word, ['doors', 'bays', i]))),
    how: located(doors.how ?? 'overlay', ['doors', 'how']),
    board: located(doors.board ?? board, ['doors', 'board']),
    band: located(doors.band ?? band, ['doors', 'band']),
    hinge: located(doors.hinge ?? habits.hinge, ['doors', 'hinge']),
    gap: size(doors.gap ?? habits.doorGap, 'gap'),
    reveal: size(doors.reveal ?? habits.doorReveal, 'reveal'),
    topReveal: size(doors.topReveal ?? habits.doorTopReveal, 'top-reveal'),
    bottomReveal: size(doors.bottomReveal ?? habits.doorBottomReveal, 'bottom-reveal'),
    buffer: size(doors.buffer ?? habits.doorBuffer, 'buffer'),
  };
}

function pullsOf({ habits }: Shop, { pulls }: CarcassWish): CarcassSpec['pulls'] {
  const said = <T>(value: T, key: string) => located(value, ['pulls', key]);
  return {
    pull: said(pulls.pull ?? habits.pull, 'pull'),
    onDrawers: pulls.onDrawers === undefined ? null : said(pulls.onDrawers, 'on-drawers'),
    lies: said(pulls.lies ?? 'upright', 'lies'),
    end: pulls.end === undefined ? null : said(pulls.end, 'end'),
    fromEdge: said(pulls.fromEdge ?? habits.pullFromEdge, 'from-edge'),
    fromEnd: said(pulls.fromEnd ?? habits.pullFromEnd, 'from-end'),
    fromTop: pulls.fromTop === undefined ? null : said(pulls.fromTop, 'from-top'),
  };
}

function frontsOf({ fronts }: CarcassWish): CarcassSpec['fronts'] {
  if (fronts === null) return null;
  const listed = fronts.map(({ front, height, bay, pull: named }, i) => {
    const path = ['fronts', i];
    const said = {
      front: located(front, [...path, 'front']),
      ...(height !== undefined && { height: located(height, [...path, 'height']) }),
      ...(bay !== undefined && { bay: located(bay, [...path, 'bay']) }),
      ...(named !== undefined && { pull: located(named, [...path, 'pull']) }),
    };
    return located(said, path);
  });
  return located(listed, ['fronts']);
}

function drawersOf({ habits }: Shop, { drawers, board, band, joint }: CarcassWish): CarcassSpec['drawers'] {
  return {
    slide: located(drawers.slide ?? habits.slide, ['drawers', 'slide']),
    board: located(drawers.board ?? board, ['drawers', 'board']),
    band: located(band, ['drawers', 'band']),
    bottom: located(drawers.bottom ?? 'grooved', ['drawers', 'bottom']),
    bottomBoard: located(drawers.bottomBoard ?? habits.backBoard, ['drawers', 'bottom-board']),
    joint: located(drawers.joint ?? joint, ['drawers', 'joint']),
    height: drawers.height === undefined ? null : located(drawers.height, ['drawers', 'height']),
  };
}

function jointOf({ joint, dowels }: JointWish, path: Path): Located<JointChoice> {
  return located(
    {
      ...(joint !== undefined && { joint: located(joint, [...path, 'joint']) }),
      ...(dowels !== undefined && {
        dowels:
          typeof dowels === 'number'
            ? { as: 'count' as const, is: located(dowels, [...path, 'dowels']) }
            : {
                as: 'list' as const,
                is: located(
                  dowels.map((at, index) => located(at, [...path, 'dowels', index])),
                  [...path, 'dowels'],
                ),
              },
      }),
    },
    path,
  );
}

function choiceOf(key: string, choice: ChoiceWish): PanelChoice {
  const path = ['panels', key];
  const listed = (places: readonly Micrometres[], under: string) =>
    located(places.map((at, index) => located(at, [...path, under, index])));
  const { board, rows, rowOffset, joint, dowels, endDowels, faceDepth, endDepth, bands, pull: named } = choice;
  const { referenceEnd, farEnd } = choice;
  return {
    key: located(key, path),
    ...(board !== undefined && { board: located(board) }),
    ...(rows !== undefined && { rows: located(rows) }),
    ...(rowOffset !== undefined && { rowOffset: located(rowOffset) }),
    ...(joint !== undefined && { joint: located(joint) }),
    ...(dowels !== undefined && { dowels: listed(dowels, 'dowels') }),
    ...(endDowels !== undefined && { endDowels: { as: 'list', is: listed(endDowels, 'end-dowels') } as const }),
    ...(farEnd !== undefined && { farEnd: jointOf(farEnd, [...path, 'far-end']) }),
    ...(referenceEnd !== undefined && { referenceEnd: jointOf(referenceEnd, [...path, 'reference-end']) }),
    ...(faceDepth !== undefined && { faceDepth: located(faceDepth) }),
    ...(endDepth !== undefined && { endDepth: located(endDepth) }),
    ...(named !== undefined && { pull: located(named) }),
    ...(bands && {
      bands: located(Object.fromEntries(Object.entries(bands).map(([edge, name]) => [edge, located(name)]))),
    }),
  };
}
