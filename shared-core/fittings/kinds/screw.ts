import type { Micrometres } from '../../length/units.js';
import { required } from '../../schema/fields.js';
import { length, record } from '../../schema/schema.js';
import { asWritten, besideEdge, BORE_DEEPER, type FittingDefinition, type FittingOf } from '../fitting.js';
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
    pilot: {
      nouns: ['pilot hole', 'pilot holes'],
      use: 'screw pilot',
      mark: [line([-DIAGONAL, -DIAGONAL], [DIAGONAL, DIAGONAL]), line([-DIAGONAL, DIAGONAL], [DIAGONAL, -DIAGONAL])],
      ink: 'blue',
      mate: { purpose: 'clearance', alike: 'fitting' },
      depthChosen: true,
      driven: null,
      machine: null,
    },
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
    tooShort({ name, length: long, clearance }, { end, faceThickness }, show) {
      const reach = long - faceThickness;
      const through = `${name} is ${show(long)} long and passes ${show(faceThickness)} of board`;
      if (reach <= 0) {
        const why = `${through}: it does not reach the end`;
        return [{ bore: end, why, todo: 'Take a longer screw.', severity: 'error' }];
      }
      if (reach < LEAST_HOLD * clearance) {
        const why = `${through}: it goes only ${show(reach)} into the end, less than ${LEAST_HOLD} times its width of ${show(clearance)}, and holds little`;
        return [{ bore: end, why, todo: 'Take a longer screw.', severity: 'warning' }];
      }
      if (end.depth >= reach) return [];
      const why = `${through}, so it goes ${show(reach)} into the end`;
      return [{ bore: end, why, todo: BORE_DEEPER, severity: 'error' }];
    },
  },
};
