import type { Micrometres } from '../../length/units.js';
import { optional, required } from '../../schema/fields.js';
import { length, name, record } from '../../schema/schema.js';
import { quoted, verb } from '../../words/english.js';
import { messages } from '../../words/message.js';
import type { Show } from '../../words/show.js';
import { dowel, isDowel, type Dowel } from './dowel.js';
import {
  asWritten,
  besideEdge,
  boresOf,
  type BoredHole,
  type BoresTold,
  type FittingDefinition,
  type FittingOf,
  type Hole,
  type MatedBores,
  type Purpose,
  type Surroundings,
  type TooShort,
} from '../fitting.js';
import { circle, line, sector } from '../mark.js';
import { price } from '../price.js';

const item = record('cam fitting', 'A cam fitting.', {
  'cam-diameter': required(length('Diameter of the bore for the cam.', 8, 50)),
  'cam-depth': required(length('Depth of the bore for the cam.', 4, 40)),
  distance: required(length('From the end of the panel to the centre of the cam.', 10, 100)),
  'bolt-diameter': required(length('Diameter of the bore in the end for the bolt.', 4, 15)),
  'stud-diameter': required(length('Diameter of the bore in the face that the bolt is screwed into.', 3, 15)),
  'stud-depth': required(length('Depth of that bore.', 4, 40)),
  guide: optional(name('fitting', 'Dowel that stands at the places between the cams.')),
  price,
});

export type CamFitting = FittingOf<'cam', typeof item.fields>;

const CAM: Purpose = {
  nouns: ['cam bore', 'cam bores'],
  use: 'cam',
  mark: [sector(0, 2)],
  ink: 'violet',
  mate: null,
  depthChosen: false,
  driven: null,
  machine: null,
};

const BOLT: Purpose = {
  nouns: ['bolt bore', 'bolt bores'],
  use: 'cam bolt',
  mark: [line([-0.45, -0.89], [-0.45, 0.89]), line([0.45, -0.89], [0.45, 0.89])],
  ink: 'violet',
  mate: { purpose: 'cam-stud', alike: 'fitting' },
  depthChosen: true,
  driven: null,
  machine: null,
};

const STUD: Purpose = {
  nouns: ['stud bore', 'stud bores'],
  use: 'cam stud',
  mark: [circle(0.45, true)],
  ink: 'violet',
  mate: { purpose: 'cam-bolt', alike: 'fitting' },
  depthChosen: true,
  driven: null,
  machine: null,
};

interface TooShallow extends BoresTold {
  readonly name: string;
  readonly depth: Micrometres;
  readonly least: Micrometres;
}

export const say = messages('cam', {
  described: ({ camDiameter, distance, guide }: Pick<CamFitting, 'camDiameter' | 'distance' | 'guide'>, show) =>
    `cam fitting, Ø ${show.nominal(camDiameter)}, ${show.nominal(distance)} from the end${guide === null ? '' : `, guide ${guide}`}`,
  shortBolt: ({ name, depth, least, distance, ...bolts }: TooShallow & { readonly distance: Micrometres }, show) =>
    `${shallow(BOLT, depth, least, bolts, show)}, to open into the cam of ${quoted(name)} ${show.length(distance)} from the end. Bore deeper, or leave the depth to the fitting.`,
  shortCam: (
    {
      name,
      depth,
      least,
      under,
      board,
      ...cams
    }: TooShallow & { readonly under: Micrometres; readonly board: Micrometres },
    show,
  ) =>
    `${shallow(CAM, depth, least, cams, show)} in a board ${show.length(board)} thick, where the bolt of ${quoted(name)} lies ${show.length(under)} under the face. Use a fitting made for this thickness, or a thinner board.`,
  shortStud: ({ name, depth, least, ...studs }: TooShallow, show) =>
    `${shallow(STUD, depth, least, studs, show)}, the depth that the stud of ${quoted(name)} goes in. Bore deeper, or leave the depth to the fitting.`,
});

const shallow = (purpose: Purpose, depth: Micrometres, least: Micrometres, bores: BoresTold, show: Show): string =>
  `${boresOf(purpose, bores)} ${verb(bores.count, 'is', 'are')} ${show.exact(depth)} deep; the minimum is ${show.exact(least)}`;

/** A bolt that is turned into the face, goes into the end, and is drawn home by a cam in the face of the end panel. */
export const cam: FittingDefinition<CamFitting, typeof item.fields, 'cams', 'cam' | 'cam-bolt' | 'cam-stud'> = {
  kind: 'cam',
  section: 'cams',
  sectionAbout: 'Cam fittings.',
  item,
  companions: [{ key: 'guide', kind: 'dowel', named: ({ guide }) => guide }],
  judged: asWritten,
  described: say.described,
  purposes: { cam: CAM, 'cam-bolt': BOLT, 'cam-stud': STUD },
  joint: {
    /** Of the bore for the cam its rim and the least wall. */
    edgeDistance(one, around) {
      const guide = guideOf(one, around);
      const rim = Math.ceil(one.camDiameter / 2);
      return Math.max(besideEdge(Math.max(one.boltDiameter, guide?.diameter ?? 0)), rim + around.leastWall);
    },
    /** Cams stand at the first and the last place, guides between. */
    holes(one, at, around) {
      if (at.index > 0 && at.index < at.count - 1) {
        const guide = guideOf(one, around);
        return guide === null ? [] : dowel.joint.holes(guide, at, around);
      }
      const main = { fitting: one.name, through: false, enters: { at: 'contact' }, beside: null } as const;
      if (at.side === 'face')
        return [{ ...main, purpose: 'cam-stud', diameter: one.studDiameter, depth: at.depth ?? one.studDepth }];
      const bolt: Hole = {
        ...main,
        purpose: 'cam-bolt',
        diameter: one.boltDiameter,
        depth: at.depth ?? one.distance,
      };
      const housing: Hole = {
        ...main,
        purpose: 'cam',
        diameter: one.camDiameter,
        depth: one.camDepth,
        enters: { at: 'out-of-sight', fromEnd: one.distance },
        beside: { tag: 'cam', meetsMain: true },
      };
      return [bolt, housing];
    },
    lengthInBoth: () => null,
    tooShort: (one, mates) => [...shortBolt(one, mates), ...shortCam(one, mates), ...shortStud(one, mates)],
    whyDeepEnough:
      'A cam cannot catch a bolt whose bore stops short of it, or a bolt that lies deeper in a thick board than the cam reaches. A stud that is not home holds the joint apart.',
  },
};

/** The dowel between two cams; null where there is none. */
function guideOf({ guide }: CamFitting, around: Surroundings): Dowel | null {
  const found = guide === null ? null : around.named(guide);
  return found !== null && isDowel(found) ? found : null;
}

/** The bolt's bore must open into the cam's with its whole width: where its rim meets the round of the cam. */
/** A minimum that is shown must not fall below the true one. */
const toHundredthsUp = (least: Micrometres): Micrometres => Math.ceil(least / 10) * 10;

function shortBolt<B extends BoredHole>(one: CamFitting, { end }: MatedBores<B>): readonly TooShort<B>[] {
  const { name, distance, camDiameter, boltDiameter } = one;
  // By Pythagoras in half micrometres, rounded so that the least depth is the shallowest that does.
  const least = distance - Math.floor(Math.sqrt(Math.max(0, camDiameter ** 2 - boltDiameter ** 2)) / 2);
  if (end.depth >= least) return [];
  const { depth } = end;
  return [
    {
      bore: end,
      severity: 'error',
      told: (bores) => say.shortBolt({ ...bores, name, depth, least: toHundredthsUp(least), distance }),
    },
  ];
}

/** The cam must reach past the whole of the bolt, which is at least as thick as its stud and lies in the middle of the board. */
function shortCam<B extends BoredHole>(
  { name, studDiameter }: CamFitting,
  { crossing, endThickness: board }: MatedBores<B>,
): readonly TooShort<B>[] {
  return crossing.flatMap(({ bore, under }) => {
    const { depth } = bore;
    const least = under + Math.ceil(studDiameter / 2);
    if (depth >= least) return [];
    return [{ bore, severity: 'error', told: (bores) => say.shortCam({ ...bores, name, depth, least, under, board }) }];
  });
}

function shortStud<B extends BoredHole>(
  { name, studDepth }: CamFitting,
  { face }: MatedBores<B>,
): readonly TooShort<B>[] {
  const { depth } = face;
  if (depth >= studDepth) return [];
  return [
    { bore: face, severity: 'error', told: (bores) => say.shortStud({ ...bores, name, depth, least: studDepth }) },
  ];
}
