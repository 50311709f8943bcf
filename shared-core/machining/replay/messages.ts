import type { Micrometres } from '../../length/units.js';
import type { Span } from '../../schema/schema.js';
import { counted, quoted } from '../../words/english.js';
import { messages } from '../../words/message.js';
import type { Show } from '../../words/show.js';
import type { Hole } from './bore.js';
import type { Side } from './solid.js';

interface OutOfRange {
  readonly machine: string;
  readonly value: Micrometres;
  readonly range: Span;
}

interface StopAt {
  readonly stop: string;
  readonly position: Micrometres;
}

interface Spindle {
  readonly spindle: number;
  /** Null on a machine with one head. */
  readonly head: number | null;
}

interface HoleIn {
  readonly hole: Hole;
  readonly depth: Micrometres;
  readonly deep: Micrometres;
}

/** Why a set-up cannot be carried out, or does not make the holes that it should. Heads and spindles count from 1. */
export const say = messages('replay', {
  // The setting of the machine.
  depthOutOfRange: (one: OutOfRange, show) => `The depth of ${show.exact(one.value)} ${isOutOfRange(one, show)}`,
  heightOutOfRange: (one: OutOfRange, show) => `The height of ${show.exact(one.value)} ${isOutOfRange(one, show)}`,
  fenceOutOfRange: (one: OutOfRange, show) =>
    `The fence distance of ${show.exact(one.value)} ${isOutOfRange(one, show)}`,
  setbackOutOfRange: (one: OutOfRange, show) =>
    `The head setback of ${show.exact(one.value)} ${isOutOfRange(one, show)}`,
  headsOutOfRange: (one: OutOfRange, show) =>
    `The distance of two heads of ${show.exact(one.value)} ${isOutOfRange(one, show)}`,
  headsOutOfOrder: ({ machine }: { readonly machine: string }) =>
    `The heads of ${quoted(machine)} do not stand in order from front to rear.`,
  throat: (
    { machine, value, throat }: { readonly machine: string; readonly value: Micrometres; readonly throat: Micrometres },
    show,
  ) =>
    `A head stands ${show.exact(value)} from the fence; the throat of ${quoted(machine)} is ${show.exact(throat)} deep.`,
  noExtension: ({ machine }: { readonly machine: string }) => `${quoted(machine)} has no fence extension.`,
  noHeight: ({ machine }: { readonly machine: string }) => `${quoted(machine)} has no height to set.`,
  heightMissing: ({ machine }: { readonly machine: string }) => `The set-up gives no height for ${quoted(machine)}.`,
  fenceCount: ({
    machine,
    wanted,
    given,
  }: {
    readonly machine: string;
    readonly wanted: number;
    readonly given: number;
  }) => `${quoted(machine)} takes ${counted(wanted, 'fence distance')}; the set-up gives ${given}.`,
  headCount: ({
    machine,
    heads,
    given,
  }: {
    readonly machine: string;
    readonly heads: number;
    readonly given: number;
  }) => `${quoted(machine)} has ${counted(heads, 'head')}; the set-up sets ${given}.`,
  stopMissing: ({ machine, stop }: { readonly machine: string; readonly stop: string }) =>
    `${quoted(machine)} has no stop ${quoted(stop)}.`,
  stopSide: ({
    machine,
    stop,
    is,
    given,
  }: {
    readonly machine: string;
    readonly stop: string;
    readonly is: string;
    readonly given: string;
  }) => `Stop ${quoted(stop)} of ${quoted(machine)} is on the ${is}, not on the ${given}.`,
  stopOutOfRange: ({ stop, ...one }: OutOfRange & { readonly stop: string }, show) =>
    `Stop ${quoted(stop)} at ${show.exact(one.value)} ${isOutOfRange(one, show)}`,
  stopPastExtension: ({ stop, ...one }: OutOfRange & { readonly stop: string }, show) =>
    `With the extension, stop ${quoted(stop)} at ${show.exact(one.value)} ${isOutOfRange(one, show)}`,
  stopsCross: ({ inner, outer }: { readonly inner: StopAt; readonly outer: StopAt }, show) =>
    `Stop ${quoted(inner.stop)} at ${show.exact(inner.position)} would have to pass ${quoted(outer.stop)} at ${show.exact(outer.position)}, which stands further out on the same fence.`,
  panelOutOfRange: ({ measure, ...one }: OutOfRange & { readonly measure: 'length' | 'width' | 'thickness' }, show) =>
    `The panel’s ${measure} of ${show.exact(one.value)} ${isOutOfRange(one, show)}`,

  // One stroke.
  stopNotSet: ({ stop }: { readonly stop: string }) =>
    `The panel is to lie against stop ${quoted(stop)}, which is not set.`,
  otherSideAtStop: ({
    stop,
    hand,
    comes,
    wanted,
  }: {
    readonly stop: string;
    readonly hand: string;
    readonly comes: Side;
    readonly wanted: Side;
  }) => `The ${SIDE_WORDS[comes]} comes to stop ${quoted(stop)} on the ${hand}, not the ${SIDE_WORDS[wanted]}.`,
  noSpindle: () => 'No spindle is loaded.',
  headNotSet: ({ machine, head, heads }: { readonly machine: string; readonly head: number; readonly heads: number }) =>
    `Head ${head} is not set: ${quoted(machine)} has ${counted(heads, 'head')} set.`,
  spindleMissing: ({
    machine,
    spindle,
    spindles,
  }: {
    readonly machine: string;
    readonly spindle: number;
    readonly spindles: number;
  }) => `${quoted(machine)} has spindles 1 to ${spindles}, not ${spindle}.`,
  twoBits: (one: Spindle) => `${spindleName(one)} carries two bits.`,
  bitImpossible: ({ diameter, ...one }: Spindle & { readonly diameter: Micrometres }, show) =>
    `${spindleName(one)} carries a bit of ${show.exact(diameter)}.`,
  moveNotOnLineDrill: ({ machine }: { readonly machine: string }) =>
    `${quoted(machine)} is no line drill and makes no index moves.`,
  moveWithoutPins: ({ machine, moved }: { readonly machine: string; readonly moved: Micrometres }, show) =>
    `${quoted(machine)} has no index pins for an index move of ${show.exact(moved)}.`,
  moveOffPitch: ({ moved, pitch }: { readonly moved: Micrometres; readonly pitch: Micrometres }, show) =>
    `An index move of ${show.exact(moved)} is not a whole number of pitches of ${show.exact(pitch)}.`,
  movePastRange: (
    { machine, moved, most }: { readonly machine: string; readonly moved: Micrometres; readonly most: Micrometres },
    show,
  ) => `An index move of ${show.exact(moved)} is too long; the maximum of ${quoted(machine)} is ${show.exact(most)}.`,
  noHoleForPins: () => 'No hole of the row is bored yet for the index pins.',
  besidePanel: () => 'Every bit comes down beside the panel.',
  stopInTheWay: ({ stop, position }: StopAt, show) =>
    `The panel lies over stop ${quoted(stop)} at ${show.exact(position)}, or ends at it, and the stop does not lower.`,

  // The holes.
  cutsEdge: (
    { hole, across, along }: { readonly hole: Hole; readonly across: Micrometres; readonly along: Micrometres },
    show,
  ) =>
    `${theHole(hole, show)} cuts into an edge of the panel, which measures ${show.exact(across)} by ${show.exact(along)} there.`,
  throughLength: ({ hole }: { readonly hole: Hole }, show) =>
    `${theHole(hole, show)} would have to go through the whole length of the panel.`,
  notThrough: ({ hole, depth, deep }: HoleIn, show) =>
    `${theHole(hole, show)} must go through ${show.exact(deep)}, but the depth stop is at ${show.exact(depth)}.`,
  comesOut: ({ hole, depth, deep }: HoleIn, show) =>
    `${theHole(hole, show)} comes out on the other side: it is ${show.exact(depth)} deep in ${show.exact(deep)}.`,
  boredTwice: ({ hole }: { readonly hole: Hole }, show) => `${theHole(hole, show)} is bored twice.`,
  missing: ({ missing }: { readonly missing: readonly Hole[] }, show) =>
    `${counted(missing.length, 'hole is', 'holes are')} not bored: ${holesListed(missing, show)}.`,
  extra: ({ extra }: { readonly extra: readonly Hole[] }, show) =>
    `${counted(extra.length, 'hole is', 'holes are')} bored that no bore map shows: ${holesListed(extra, show)}.`,
  missingAndExtra: ({ missing, extra }: { readonly missing: readonly Hole[]; readonly extra: readonly Hole[] }, show) =>
    `${counted(missing.length, 'hole is', 'holes are')} not bored: ${holesListed(missing, show)}. ${counted(extra.length, 'hole is', 'holes are')} bored that no bore map shows: ${holesListed(extra, show)}.`,
});

const SIDE_WORDS: Readonly<Record<Side, string>> = {
  front: 'front edge',
  back: 'back edge',
  'reference-end': 'bottom or left end',
  'far-end': 'top or right end',
  inside: 'inside face',
  outside: 'outside face',
};

function isOutOfRange({ machine, range }: OutOfRange, show: Show): string {
  return `is outside the range of ${quoted(machine)}, ${show.exact(range.min)} to ${show.exact(range.max)}.`;
}

function spindleName({ head, spindle }: Spindle): string {
  return head === null ? `Spindle ${spindle}` : `Spindle ${spindle} of head ${head}`;
}

/** 'The 8 mm hole at 53 mm, 8 mm in the inside face': u and v. */
function theHole({ face, u, v, diameter }: Hole, show: Show): string {
  return `The ${show.exact(diameter)} hole at ${show.exact(u)}, ${show.exact(v)} in the ${SIDE_WORDS[face]}`;
}

/** '8 mm × 12 mm at 53 mm, 8 mm in the inside face' */
function holeWords({ face, u, v, diameter, depth, through }: Hole, show: Show): string {
  const deep = through ? 'through' : `× ${show.exact(depth)}`;
  return `${show.exact(diameter)} ${deep} at ${show.exact(u)}, ${show.exact(v)} in the ${SIDE_WORDS[face]}`;
}

const MOST_LISTED = 3;

function holesListed(holes: readonly Hole[], show: Show): string {
  const shown = holes.slice(0, MOST_LISTED).map((hole) => holeWords(hole, show));
  const more = holes.length - shown.length;
  return [...shown, ...(more > 0 ? [`and ${more} more`] : [])].join('; ');
}
