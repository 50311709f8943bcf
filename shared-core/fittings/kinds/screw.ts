import type { Micrometres } from '../../length/units.js';
import { optional, required } from '../../schema/fields.js';
import { length, record } from '../../schema/schema.js';
import { quoted, verb } from '../../words/english.js';
import { messages } from '../../words/message.js';
import {
  besideEdge,
  boresOf,
  type BoresTold,
  type FittingDefinition,
  type FittingOf,
  type Hole,
  type Purpose,
} from '../fitting.js';
import { circle, DIAGONAL, line } from '../mark.js';
import { price } from '../price.js';

const item = record('connector screw', 'A connector screw.', {
  clearance: required(length('Diameter of the clearance hole through the face.', 3, 20)),
  pilot: required(length('Diameter of the pilot hole in the end.', 2, 15)),
  length: required(length('Length of the screw under its head.', 20, 150)),
  head: optional(
    length('Diameter of the recess that its head goes into; leave it out for a head that stays proud.', 5, 30),
  ),
  recess: optional(length('Depth of that recess, from the face that the screw enters.', 0.5, 30)),
  price,
});

export type ConnectorScrew = FittingOf<'screw', typeof item.fields>;

/** By how much the pilot hole is deeper than the screw reaches (common practice, no source). */
const PILOT_CLEARANCE: Micrometres = 2000;
/** How many times its width a screw must go into the end to hold (common practice, no source). */
const LEAST_HOLD = 2;
/** What must stay of the board under the head of a screw (common practice, no source). */
const LEAST_UNDER_HEAD: Micrometres = 6000;

const CLEARANCE: Purpose = {
  nouns: ['clearance hole', 'clearance holes'],
  use: 'screw clearance',
  mark: [circle(0.55, false)],
  ink: 'blue',
  mate: { purpose: 'pilot', alike: 'fitting' },
  depthChosen: true,
  driven: 'screw',
  machine: null,
};

const RECESS: Purpose = {
  nouns: ['screw-head recess', 'screw-head recesses'],
  use: 'screw-head recess',
  mark: [circle(0.85, false), circle(0.55, false)],
  ink: 'blue',
  mate: null,
  depthChosen: false,
  driven: null,
  machine: null,
};

/** How far under the face the head lies; nothing for a screw whose head stays proud. */
const recessOf = ({ head, recess }: ConnectorScrew): Micrometres => (head === null ? 0 : (recess ?? 0));

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

export const say = messages('screw', {
  described: (
    {
      length: long,
      clearance,
      pilot,
      head,
    }: Pick<ConnectorScrew, 'length' | 'clearance' | 'pilot'> & {
      readonly head: { readonly diameter: Micrometres; readonly recess: Micrometres } | null;
    },
    show,
  ) =>
    `connector screw, ${show.nominal(long)} long, clearance Ø ${show.nominal(clearance)}, pilot Ø ${show.nominal(pilot)}${head === null ? '' : `, head Ø ${show.nominal(head.diameter)} in a recess of ${show.nominal(head.recess)}`}`,
  noRecess: ({ key }: { readonly key: 'head' | 'recess' }) =>
    key === 'head'
      ? 'A head that goes into a recess needs its depth. Write `recess` too.'
      : 'A recess needs its diameter. Write `head` too.',
  narrowHead: ({ head, clearance }: { readonly head: Micrometres; readonly clearance: Micrometres }, show) =>
    `A head of ${show.exact(head)} finds no hold over a clearance hole of ${show.exact(clearance)}. Write a greater \`head\`, or a smaller \`clearance\`.`,
  headThrough: (
    {
      name,
      recess,
      least,
      board,
      ...bores
    }: BoresTold & {
      readonly name: string;
      readonly recess: Micrometres;
      readonly least: Micrometres;
      readonly board: Micrometres;
    },
    show,
  ) =>
    `${boresOf(CLEARANCE, bores)} ${verb(bores.count, 'has', 'have')} too little wood under the head of ${quoted(name)}: its recess is ${show.exact(recess)} deep in a board of ${show.exact(board)}, and ${show.exact(least)} must stay. Use a thicker board, or a screw with a flatter head.`,
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
export const screw: FittingDefinition<ConnectorScrew, typeof item.fields, 'screws', 'clearance' | 'recess' | 'pilot'> =
  {
    kind: 'screw',
    section: 'screws',
    sectionAbout: 'Connector screws.',
    item,
    companions: [],
    judged(said) {
      const { head, recess, clearance } = said;
      const lone = head === undefined ? recess : recess === undefined ? head : undefined;
      const isNarrow = head !== undefined && head.value <= clearance.value;
      if (lone === undefined && !isNarrow) return { said, faults: [] };
      const faults = [
        ...(lone === undefined
          ? []
          : [{ at: lone, message: say.noRecess({ key: head === undefined ? 'recess' : 'head' }) }]),
        ...(isNarrow ? [{ at: head, message: say.narrowHead({ head: head.value, clearance: clearance.value }) }] : []),
      ];
      const { head: _head, recess: _recess, ...flat } = said;
      return { said: flat, faults };
    },
    described: (one) =>
      say.described({ ...one, head: one.head === null ? null : { diameter: one.head, recess: recessOf(one) } }),
    purposes: { clearance: CLEARANCE, recess: RECESS, pilot: PILOT },
    joint: {
      /** Of the head its rim and the least wall. */
      edgeDistance: ({ clearance, pilot, head }, { leastWall }) =>
        Math.max(besideEdge(Math.max(clearance, pilot)), head === null ? 0 : Math.ceil(head / 2) + leastWall),
      /** The clearance hole goes through the face panel and is bored from the side that the screw enters; so is the recess. */
      holes(one, { side, faceThickness, depth }) {
        const common = { fitting: one.name, beside: null };
        if (side === 'end') {
          const usual = Math.max(one.length - faceThickness + recessOf(one), 0) + PILOT_CLEARANCE;
          return [
            {
              ...common,
              purpose: 'pilot',
              diameter: one.pilot,
              depth: depth ?? usual,
              through: false,
              enters: { at: 'contact' },
            },
          ];
        }
        const deep = Math.min(depth ?? faceThickness, faceThickness);
        const clearance: Hole = {
          ...common,
          purpose: 'clearance',
          diameter: one.clearance,
          depth: deep,
          through: deep === faceThickness,
          enters: { at: 'behind' },
        };
        const recess = recessOf(one);
        // One that leaves nothing under the head is told, and not bored.
        if (one.head === null || recess >= faceThickness) return [clearance];
        return [
          clearance,
          {
            ...common,
            purpose: 'recess',
            diameter: one.head,
            depth: recess,
            through: false,
            enters: { at: 'behind' },
            beside: { tag: 'recess', meetsMain: true },
          },
        ];
      },
      lengthInBoth: () => null,
      tooShort(one, { face, end, faceThickness: board }) {
        const { name, length: long, clearance } = one;
        const recess = recessOf(one);
        const least = LEAST_UNDER_HEAD;
        if (recess > 0 && board - recess < least)
          return [
            {
              bore: face,
              severity: 'error',
              told: (bores) => say.headThrough({ ...bores, name, recess, least, board }),
            },
          ];
        const passed = board - recess;
        const screw = { name, long, passed };
        const reach = long - passed;
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
        'A screw that is driven past its pilot hole splits the end of the board. How far it goes into the end is its length less the thickness that it passes under its head; less than twice its width holds little (then this is a warning; common practice, no source).',
    },
  };
