import type { Definition, ListedFittings } from './kinds.js';
import { fittingKinds } from './kinds.js';
import { boresOf, type BoresTold, type Purpose } from './fitting.js';
import { circle, line } from './mark.js';
import type { BorePurpose, FittingKind } from './names.js';

/** What bores are for that belong to no fitting of a joint. */
const OTHERS = {
  row: {
    nouns: ['row hole', 'row holes'],
    use: 'row',
    mark: [],
    ink: 'black',
    mate: null,
    depthChosen: false,
    driven: null,
    machine: 'rows',
  },
  cup: {
    nouns: ['cup bore', 'cup bores'],
    use: 'hinge cup',
    mark: [circle(0.75, false), line([-1, 0], [1, 0]), line([0, -1], [0, 1])],
    ink: 'green',
    mate: null,
    depthChosen: false,
    driven: null,
    machine: 'cups',
  },
  'cup-screw': {
    nouns: ['screw bore beside a cup', 'screw bores beside cups'],
    use: 'screw beside the cup',
    mark: [line([-1, 0], [1, 0]), circle(0.35, true)],
    ink: 'green',
    mate: null,
    depthChosen: false,
    driven: null,
    machine: null,
  },
  plate: {
    nouns: ['plate bore', 'plate bores'],
    use: 'hinge plate',
    mark: [line([-1, 0], [1, 0])],
    ink: 'green',
    mate: null,
    depthChosen: false,
    driven: null,
    machine: null,
  },
  slide: {
    nouns: ['slide bore', 'slide bores'],
    use: 'drawer slide',
    mark: [line([0, -1], [0, 1])],
    ink: 'green',
    mate: null,
    depthChosen: false,
    driven: null,
    machine: null,
  },
  'slide-in-box': {
    nouns: ['slide bore', 'slide bores'],
    use: 'slide on the drawer',
    mark: [line([0, -1], [0, 1]), circle(0.35, true)],
    ink: 'green',
    mate: null,
    depthChosen: false,
    driven: null,
    machine: null,
  },
  pull: {
    nouns: ['pull bore', 'pull bores'],
    use: 'pull',
    mark: [line([0, -1], [1, 0], [0, 1], [-1, 0], [0, -1])],
    ink: 'green',
    mate: null,
    depthChosen: false,
    driven: null,
    machine: null,
  },
  bracket: {
    nouns: ['bracket bore', 'bracket bores'],
    use: 'hanging bracket',
    mark: [line([-0.8, 0.6], [0, -0.6], [0.8, 0.6], [-0.8, 0.6])],
    ink: 'green',
    mate: null,
    depthChosen: false,
    driven: null,
    machine: null,
  },
  'rail-socket': {
    nouns: ['socket bore of a wardrobe rail', 'socket bores of wardrobe rails'],
    use: 'wardrobe rail',
    mark: [circle(0.6, false), line([-0.6, 0], [0.6, 0])],
    ink: 'green',
    mate: null,
    depthChosen: false,
    driven: null,
    machine: null,
  },
  foot: {
    nouns: ['foot bore', 'foot bores'],
    use: 'foot',
    mark: [circle(0.7, false), line([0, -1], [0, 1])],
    ink: 'green',
    mate: null,
    depthChosen: false,
    driven: null,
    machine: null,
  },
  'plinth-clip': {
    nouns: ['clip bore', 'clip bores'],
    use: 'clip of the plinth',
    mark: [line([-0.86, -0.5], [0.86, -0.5]), line([-0.86, 0.5], [0.86, 0.5])],
    ink: 'green',
    mate: null,
    depthChosen: false,
    driven: null,
    machine: null,
  },
  angle: {
    nouns: ['angle bore', 'angle bores'],
    use: 'angle',
    mark: [line([-0.6, 0.8], [-0.6, -0.6], [0.8, -0.6])],
    ink: 'green',
    mate: null,
    depthChosen: false,
    driven: null,
    machine: null,
  },
  'angle-in-front': {
    nouns: ['angle bore', 'angle bores'],
    use: 'angle on the front',
    mark: [line([-0.6, 0.8], [-0.6, -0.6], [0.8, -0.6]), circle(0.25, true)],
    ink: 'green',
    mate: null,
    depthChosen: false,
    driven: null,
    machine: null,
  },
  'front-clearance': {
    nouns: ['clearance hole for the front', 'clearance holes for the front'],
    use: 'screw of the front, clearance',
    mark: [line([-0.86, 0.5], [0.86, 0.5], [0, -1], [-0.86, 0.5])],
    ink: 'blue',
    mate: null,
    depthChosen: false,
    driven: null,
    machine: null,
  },
  'front-pilot': {
    nouns: ['pilot hole for the front', 'pilot holes for the front'],
    use: 'screw of the front, pilot',
    mark: [line([-0.86, -0.5], [0.86, -0.5], [0, 1], [-0.86, -0.5])],
    ink: 'blue',
    mate: null,
    depthChosen: false,
    driven: null,
    machine: null,
  },
  spare: {
    nouns: ['spare hole', 'spare holes'],
    use: 'empty spare hole',
    mark: [circle(0.35, false)],
    ink: 'black',
    mate: null,
    depthChosen: true,
    driven: null,
    machine: null,
  },
} as const satisfies Readonly<Partial<Record<BorePurpose, Purpose>>>;

type FittingPurpose = { [D in ListedFittings as D['kind']]: keyof D['purposes'] }[FittingKind];

const OF_FITTINGS = fittingKinds.flatMap((kind) =>
  Object.entries(kind.purposes).map(([purpose, about]) => [purpose, { kind, about }] as const),
);

/** All that is known of each purpose. */
export const PURPOSES: Readonly<Record<BorePurpose, Purpose>> = Object.fromEntries<Purpose>([
  ...OF_FITTINGS.map(([purpose, { about }]) => [purpose, about] as const),
  ...Object.entries(OTHERS),
]) as Readonly<Record<FittingPurpose | keyof typeof OTHERS, Purpose>>;

const KIND_OF: ReadonlyMap<string, Definition> = new Map(OF_FITTINGS.map(([purpose, { kind }]) => [purpose, kind]));

interface HasPurpose {
  readonly purpose: BorePurpose;
}

export const purposeOf = ({ purpose }: HasPurpose): Purpose => PURPOSES[purpose];

/** What a bore is for, as a sentence calls it: the fitting where it is for one, else the bore itself. */
export function boredFor(purpose: BorePurpose): string {
  return KIND_OF.get(purpose)?.item.noun ?? PURPOSES[purpose].nouns[0];
}

/** Whether a bore is a hole of a row on the pitch grid. */
export const isRow = ({ purpose }: HasPurpose): boolean => purpose === 'row';

/** Whether a bore reaches from one panel into the other, so that it must find a mate. */
export const reaches = (bore: HasPurpose): boolean => purposeOf(bore).mate !== null;

/** 'The dowel bore in bottom', 'The 4 dowel bores in bottom and top'. */
export const theBores = (bores: BoresTold): string => boresOf(PURPOSES[bores.purpose], bores);
