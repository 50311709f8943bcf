import { optional, required } from '../../schema/fields.js';
import { length, name, record } from '../../schema/schema.js';
import { dowel, isDowel, type Dowel } from './dowel.js';
import {
  asWritten,
  besideEdge,
  BORE_DEEPER,
  type BoredHole,
  type FittingDefinition,
  type FittingOf,
  type Hole,
  type MatedBores,
  type ShowLength,
  type Surroundings,
  type TooShort,
} from '../fitting.js';
import { circle, line, sector } from '../mark.js';

const item = record('cam fitting', 'A cam fitting.', {
  'cam-diameter': required(length('Diameter of the bore for the cam.', 8, 50)),
  'cam-depth': required(length('Depth of the bore for the cam.', 4, 40)),
  distance: required(length('From the end of the panel to the centre of the cam.', 10, 100)),
  'bolt-diameter': required(length('Diameter of the bore in the end for the bolt.', 4, 15)),
  'stud-diameter': required(length('Diameter of the bore in the face that the bolt is turned into.', 3, 15)),
  'stud-depth': required(length('Depth of that bore.', 4, 40)),
  guide: optional(name('fitting', 'Dowel that stands at the places between the cams.')),
});

export type CamFitting = FittingOf<'cam', typeof item.fields>;

/** A bolt that is turned into the face, goes into the end, and is drawn home by a cam in the face of the end panel. */
export const cam: FittingDefinition<CamFitting, typeof item.fields, 'cams', 'cam' | 'cam-bolt' | 'cam-stud'> = {
  kind: 'cam',
  section: 'cams',
  sectionAbout: 'Cam fittings.',
  item,
  companions: [{ key: 'guide', kind: 'dowel', named: ({ guide }) => guide }],
  judged: asWritten,
  described: ({ camDiameter, distance, guide }, show) =>
    `cam fitting, Ø ${show(camDiameter)}, ${show(distance)} from the end${guide === null ? '' : `, guide ${guide}`}`,
  purposes: {
    cam: {
      nouns: ['cam bore', 'cam bores'],
      use: 'cam',
      mark: [sector(0, 2)],
      ink: 'violet',
      mate: null,
      depthChosen: false,
      driven: null,
      machine: null,
    },
    'cam-bolt': {
      nouns: ['bolt bore', 'bolt bores'],
      use: 'cam bolt',
      mark: [line([-0.45, -0.89], [-0.45, 0.89]), line([0.45, -0.89], [0.45, 0.89])],
      ink: 'violet',
      mate: { purpose: 'cam-stud', alike: 'fitting' },
      depthChosen: true,
      driven: null,
      machine: null,
    },
    'cam-stud': {
      nouns: ['stud bore', 'stud bores'],
      use: 'cam stud',
      mark: [circle(0.45, true)],
      ink: 'violet',
      mate: { purpose: 'cam-bolt', alike: 'fitting' },
      depthChosen: true,
      driven: null,
      machine: null,
    },
  },
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
    tooShort: (one, mates, show) => [
      ...shortBolt(one, mates, show),
      ...shortCam(one, mates, show),
      ...shortStud(one, mates, show),
    ],
  },
};

/** The dowel between two cams; null where there is none. */
function guideOf({ guide }: CamFitting, around: Surroundings): Dowel | null {
  const found = guide === null ? null : around.named(guide);
  return found !== null && isDowel(found) ? found : null;
}

/** The bolt's bore must open into the cam's with its whole width: where its rim meets the round of the cam. */
function shortBolt<B extends BoredHole>(
  one: CamFitting,
  { end }: MatedBores<B>,
  show: ShowLength,
): readonly TooShort<B>[] {
  const short = one.distance - end.depth;
  if (short <= 0 || 4 * short ** 2 <= one.camDiameter ** 2 - one.boltDiameter ** 2) return [];
  const why = `the cam of ${one.name} stands ${show(one.distance)} from the end`;
  return [{ bore: end, why, todo: BORE_DEEPER, severity: 'error' }];
}

/** The cam must reach past the whole of the bolt, which is at least as thick as its stud and lies in the middle of the board. */
function shortCam<B extends BoredHole>(
  one: CamFitting,
  { crossing, endThickness }: MatedBores<B>,
  show: ShowLength,
): readonly TooShort<B>[] {
  return crossing
    .filter(({ bore, under }) => 2 * bore.depth < 2 * under + one.studDiameter)
    .map(({ bore, under }) => ({
      bore,
      why: `the bolt of ${one.name} lies ${show(under)} under the face of a board of ${show(endThickness)}, where the cam does not catch it`,
      todo: 'Take a fitting that is made for this thickness, or a thinner board.',
      severity: 'error',
    }));
}

function shortStud<B extends BoredHole>(
  one: CamFitting,
  { face }: MatedBores<B>,
  show: ShowLength,
): readonly TooShort<B>[] {
  if (face.depth >= one.studDepth) return [];
  const why = `the stud of ${one.name} goes in ${show(one.studDepth)}`;
  return [{ bore: face, why, todo: BORE_DEEPER, severity: 'error' }];
}
