import type { Micrometres } from '../../length/units.js';
import { required } from '../../schema/fields.js';
import { length, record } from '../../schema/schema.js';
import { quoted, verb } from '../../words/english.js';
import { messages } from '../../words/message.js';
import {
  asWritten,
  besideEdge,
  boresOf,
  type BoresTold,
  type FittingDefinition,
  type FittingOf,
  type Purpose,
} from '../fitting.js';
import { circle, DIAGONAL, line } from '../mark.js';

const item = record('connector screw', 'A connector screw.', {
  clearance: required(length('Diameter of the clearance hole through the face.', 3, 20)),
  pilot: required(length('Diameter of the pilot hole in the end.', 2, 15)),
  length: required(length('Length of the screw under its head.', 20, 150)),
});

export type ConnectorScrew = FittingOf<'screw', typeof item.fields>;

/** By how much the pilot hole is deeper than the screw reaches (common practice, no source). */
const PILOT_CLEARANCE: Micrometres = 2000;
/** How many times its width a screw must go into the end to hold (common practice, no source). */
const LEAST_HOLD = 2;

const PILOT: Purpose = {
  nouns: ['pilot hole', 'pilot holes'],
  use: 'screw pilot',
  mark: [line([-DIAGONAL, -DIAGONAL], [DIAGONAL, DIAGONAL]), line([-DIAGONAL, DIAGONAL], [DIAGONAL, -DIAGONAL])],
  ink: 'blue',
  mate: { purpose: 'clearance', alike: 'fitting' },
  depthChosen: true,
  driven: null,
  machine: null,
};

interface InPilots extends BoresTold {
  readonly name: string;
  readonly long: Micrometres;
  /** The board that the screw goes through first. */
  readonly passed: Micrometres;
}

const say = messages('screw', {
  outOfReach: ({ name, long, passed, ...pilots }: InPilots, show) =>
    `${boresOf(PILOT, pilots)} ${verb(pilots.count, 'is', 'are')} out of reach: ${quoted(name)} is ${show.length(long)} long and passes ${show.length(passed)} of board. Use a longer screw.`,
  holdsLittle: (
    {
      name,
      long,
      passed,
      reach,
      hold,
      ...pilots
    }: InPilots & { readonly reach: Micrometres; readonly hold: Micrometres },
    show,
  ) =>
    `${boresOf(PILOT, pilots)} ${verb(pilots.count, 'takes', 'take')} only ${show.length(reach)} of ${quoted(name)}, which is ${show.length(long)} long and passes ${show.length(passed)} of board; the minimum is ${show.length(hold)}, twice its width. Use a longer screw.`,
  shallow: (
    {
      name,
      long,
      passed,
      depth,
      reach,
      ...pilots
    }: InPilots & { readonly depth: Micrometres; readonly reach: Micrometres },
    show,
  ) =>
    `${boresOf(PILOT, pilots)} ${verb(pilots.count, 'is', 'are')} ${show.exact(depth)} deep; the minimum is ${show.exact(reach)}, since ${quoted(name)} is ${show.length(long)} long and passes ${show.length(passed)} of board. Bore deeper, or leave the depth to the fitting.`,
});

/** A screw that is driven through the face panel, from its other face, into the end. */
export const screw: FittingDefinition<ConnectorScrew, typeof item.fields, 'screws', 'clearance' | 'pilot'> = {
  kind: 'screw',
  section: 'screws',
  sectionAbout: 'Connector screws.',
  item,
  companions: [],
  judged: asWritten,
  described: (one, show) =>
    `connector screw, ${show(one.length)} long, clearance Ø ${show(one.clearance)}, pilot Ø ${show(one.pilot)}`,
  purposes: {
    clearance: {
      nouns: ['clearance hole', 'clearance holes'],
      use: 'screw clearance',
      mark: [circle(0.55, false)],
      ink: 'blue',
      mate: { purpose: 'pilot', alike: 'fitting' },
      depthChosen: true,
      driven: 'screw',
      machine: null,
    },
    pilot: PILOT,
  },
  joint: {
    edgeDistance: ({ clearance, pilot }) => besideEdge(Math.max(clearance, pilot)),
    /** The clearance hole goes through the face panel and is bored from the side that the screw enters. */
    holes({ name, clearance, pilot, length: long }, { side, faceThickness, depth }) {
      const common = { fitting: name, beside: null };
      if (side === 'end') {
        const usual = Math.max(long - faceThickness, 0) + PILOT_CLEARANCE;
        return [
          {
            ...common,
            purpose: 'pilot',
            diameter: pilot,
            depth: depth ?? usual,
            through: false,
            enters: { at: 'contact' },
          },
        ];
      }
      const deep = Math.min(depth ?? faceThickness, faceThickness);
      const through = deep === faceThickness;
      return [{ ...common, purpose: 'clearance', diameter: clearance, depth: deep, through, enters: { at: 'behind' } }];
    },
    lengthInBoth: () => null,
    tooShort({ name, length: long, clearance }, { end, faceThickness }) {
      const screw = { name, long, passed: faceThickness };
      const reach = long - faceThickness;
      if (reach <= 0)
        return [{ bore: end, severity: 'error', told: (bores) => say.outOfReach({ ...bores, ...screw }) }];
      const hold = LEAST_HOLD * clearance;
      if (reach < hold)
        return [
          { bore: end, severity: 'warning', told: (bores) => say.holdsLittle({ ...bores, ...screw, reach, hold }) },
        ];
      if (end.depth >= reach) return [];
      const { depth } = end;
      return [{ bore: end, severity: 'error', told: (bores) => say.shallow({ ...bores, ...screw, depth, reach }) }];
    },
    whyDeepEnough:
      'A screw that is driven past its pilot hole splits the end of the board. How far it goes into the end is its length less the thickness that it passes; less than twice its width holds little (then this is a warning; common practice, no source).',
  },
};
