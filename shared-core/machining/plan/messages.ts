import type { Micrometres } from '../../length/units.js';
import { KIND_WORDS } from '../../shop/kind-words.js';
import type { Hand, MachineKind } from '../../shop/model.js';
import type { Span } from '../../schema/schema.js';
import { counted, quoted, verb } from '../../words/english.js';
import { messages } from '../../words/message.js';
import type { Show } from '../../words/show.js';

interface OnMachine {
  readonly machine: string;
  /** What the shop file allows. */
  readonly range: Span;
  /** The distance, depth or height that is needed. */
  readonly needed: Micrometres;
}

interface ByStops {
  readonly machine: string;
  readonly side: Hand;
  readonly needed: Micrometres;
}

interface LongRow {
  readonly machine: string;
  readonly holes: number;
  readonly spindles: number;
}

/** What keeps a machine from making bores: the fact with its figures, the key of the shop file, and what to do. */
export const say = messages('no-set-up', {
  outsidePanel: () =>
    'A bore must stand within its panel, and a blind one must end in it. Move it, or make it shallower.',
  noMachine: ({ kind }: { readonly kind: MachineKind }) =>
    `The shop file has no ${KIND_WORDS[kind]}. Add one if the shop has it.`,
  panelSize: (
    { machine, measure, range, needed }: OnMachine & { readonly measure: 'length' | 'width' | 'thickness' },
    show,
  ) =>
    `${quoted(machine)} takes panels between ${between(range, show)} ${LONG[measure]} (\`panel\`); this one is ${show.length(needed)} ${LONG[measure]}. Change its size, or choose another machine (\`machines\`).`,
  noBit: ({ bit }: { readonly bit: Micrometres }, show) =>
    `The shop file lists no bit of ${show.nominal(bit)} (\`bits\`). Use another fitting, or add the bit if the shop has it.`,
  depth: ({ machine, range, needed }: OnMachine, show) =>
    `${quoted(machine)} bores between ${between(range, show)} deep (\`depth\`); ${show.length(needed)} is needed. Change the depth of the bores (\`face-depth\`, \`end-depth\`, or the fitting). ${BY_MANUAL}`,
  rowDepth: ({ machine, range, needed }: OnMachine, show) =>
    `${quoted(machine)} bores between ${between(range, show)} deep (\`depth\`); ${show.length(needed)} is needed. Change the depth of the rows (\`row-depth\` in the shop file). ${BY_MANUAL}`,

  // Vertical heads.
  faceTooFar: ({ machine, spindles, most, needed }: LongLine, show) =>
    `The ${counted(spindles, 'spindle')} of ${quoted(machine)} ${verb(spindles, 'reaches', 'reach')} at most ${show.length(most)} from the fence (\`spindles\`); ${show.length(needed)} is needed. Move the bores toward the front (\`dowels\`), or choose a head with more spindles (\`machines: faces\`).`,
  fenceOffset: ({ machine, range, needed }: OnMachine, show) =>
    `No fence offset of ${quoted(machine)} between ${between(range, show)} (\`fence-offset\`) puts spindles over these bores, the first ${show.length(needed)} from the front edge. Move the bores to places under the spindles (\`dowels\`). ${BY_MANUAL}`,
  faceStops: ({ machine, side, needed }: ByStops, show) =>
    `No stop of ${quoted(machine)} on the ${side} can be set ${show.length(needed)} from the spindles (\`stops\`). Move the bores, or list the stop if the machine has one there.`,

  // Horizontal heads.
  height: ({ machine, range, needed }: OnMachine, show) =>
    `The spindles of ${quoted(machine)} can be set between ${between(range, show)} above the table (\`height\`); ${show.length(needed)} is needed. Use a board of another thickness, or choose another head (\`machines: ends\`). ${BY_MANUAL}`,
  endTooFar: ({ machine, spindles, most, needed }: LongLine, show) =>
    `The ${counted(spindles, 'spindle')} of ${quoted(machine)} ${verb(spindles, 'reaches', 'reach')} at most ${show.length(most)} from the squaring stop (\`spindles\`); ${show.length(needed)} is needed. Move the bores toward the front (\`dowels\`), or choose a head with more spindles (\`machines: ends\`).`,
  noSquaringStop: ({ machine, side }: Omit<ByStops, 'needed'>) =>
    `${quoted(machine)} has no squaring stop on the ${side}, where the front edge comes to lie (\`stops\`). Add it to the shop file if the machine has one.`,
  squaringStops: ({ machine, side, needed }: ByStops, show) =>
    `No squaring stop of ${quoted(machine)} on the ${side} (\`stops\`) puts spindles over these bores, the first ${show.length(needed)} from the front edge. Move the bores (\`dowels\`), or list the stop if the machine has one there.`,

  // Line drills.
  pitch: (
    { machine, has, needed }: { readonly machine: string; readonly has: Micrometres; readonly needed: Micrometres },
    show,
  ) =>
    `The spindles of ${quoted(machine)} stand ${show.nominal(has)} apart (\`pitch\`); the row needs ${show.nominal(needed)}. Choose a drill with that pitch (\`machines: rows\`).`,
  throat: (
    { machine, most, needed }: { readonly machine: string; readonly most: Micrometres; readonly needed: Micrometres },
    show,
  ) =>
    `The heads of ${quoted(machine)} reach at most ${show.length(most)} from the front edge (\`throat\`); ${show.length(needed)} is needed. Move the row toward the front (\`rear-row\`). ${BY_MANUAL}`,
  heads: ({ machine, heads, range, needed }: OnMachine & { readonly heads: number }, show) =>
    `${quoted(machine)} has ${counted(heads, 'head')} (\`heads\`), which ${verb(heads, 'stands', 'stand')} between ${between(range, show)} from the front edge; ${show.length(needed)} is needed. Leave the rear row out (\`rows: front\`), or choose a drill with more heads (\`machines: rows\`).`,
  setback: ({ machine, range, needed }: OnMachine, show) =>
    `The first head of ${quoted(machine)} can be set between ${between(range, show)} from the front edge (\`setback\`), and no head reaches ${show.length(needed)}. Move the row (\`row-setback\`). ${BY_MANUAL}`,
  headDistance: ({ machine, range, needed }: OnMachine, show) =>
    `The heads of ${quoted(machine)} can be set between ${between(range, show)} apart (\`head-distance\`); ${show.length(needed)} is needed. Move the rear row (\`rear-row\`). ${BY_MANUAL}`,
  rowStops: ({ machine, side, needed }: ByStops, show) =>
    `No stop of ${quoted(machine)} on the ${side} (\`stops\`) puts a spindle over the first hole, ${show.length(needed)} from that end. Change \`row-offset\`, or list the stop if the machine has one there.`,
  noIndexPins: ({ machine, holes, spindles }: LongRow) =>
    `The row has ${holes} holes, more than the ${counted(spindles, 'spindle')} of ${quoted(machine)} ${verb(spindles, 'bores', 'bore')} from its stops, and the drill has no index pins (\`index-pins\`). Make the row shorter, or choose a drill with index pins (\`machines: rows\`).`,
  indexRange: (
    {
      machine,
      holes,
      spindles,
      most,
      needed,
    }: LongRow & { readonly most: Micrometres | null; readonly needed: Micrometres },
    show,
  ) =>
    `The row has ${holes} holes, more than the ${counted(spindles, 'spindle')} of ${quoted(machine)} ${verb(spindles, 'bores', 'bore')} in one stroke. The panel would have to be moved along by ${show.length(needed)}${most === null ? '' : `; the maximum is ${show.length(most)}`} (\`index-range\`). Make the row shorter (\`height\`, \`row-offset\`). ${BY_MANUAL}`,
  stopHeld: ({ machine }: { readonly machine: string }) =>
    `The stop of ${quoted(machine)} that the panel lies against cannot be lowered for the index move (\`lowers\`). Write \`lowers: yes\` beside it in the shop file if the machine allows it.`,

  // Cup borers.
  cupDistance: ({ machine, range, needed }: OnMachine, show) =>
    `The fence of ${quoted(machine)} can be set between ${between(range, show)} from the cup (\`distance\`); ${show.length(needed)} is needed. Move the cups (\`reveal\` or \`gap\` of the doors). ${BY_MANUAL}`,
  cupNoStops: ({ machine }: { readonly machine: string }) =>
    `${quoted(machine)} has no stops in the shop file (\`stops\`), so nothing says where along the edge a cup comes. Add its stops.`,
  cupStops: ({ machine, ends: [near, far] }: CupStops, show) =>
    `The cup stands ${show.length(near)} from one end of the door and ${show.length(far)} from the other, and no stop of ${quoted(machine)} can be set there (\`stops\`). List the stop if the machine has one there, or have lower doors, one over another (\`fronts\`).`,
});

interface CupStops {
  readonly machine: string;
  /** How far a cup is from either end of its door, the nearer one first. */
  readonly ends: readonly [Micrometres, Micrometres];
}

interface LongLine {
  readonly machine: string;
  readonly spindles: number;
  readonly most: Micrometres;
  readonly needed: Micrometres;
}

const LONG = { length: 'long', width: 'wide', thickness: 'thick' } as const;

const BY_MANUAL = 'Widen the range in the shop file only if the machine’s manual allows it.';

function between({ min, max }: Span, show: Show): string {
  return `${show.length(min)} and ${show.length(max)}`;
}
