import type { Micrometres } from '../../length/units.js';
import { counted, listed, runsOfNumbers, sentence, verb } from '../../words/english.js';
import { messages } from '../../words/message.js';
import type { Show } from '../../words/show.js';
import { labels } from '../../words/told.js';
import type { Sign } from './scene.js';

interface Lie {
  /** 'inside face', as the panel calls it. */
  readonly up: string;
  readonly edge: string;
  readonly end: string;
  readonly stop: string;
}

export const NAMES = labels('on-machine', {
  spindle: 'the spindle',
  head: 'head',
  frontHead: 'front head',
  rearHead: 'rear head',
  table: 'Table',
  overTable: 'Over the table',
  operator: 'Operator',
  keepClear: 'Keep hands clear',
});

/** What stands on the table and how far a hole is, for the list of signs. */
export const SIGNS: Readonly<Record<Sign, string>> = labels('signs', {
  'spindle-loaded': 'spindle with bit',
  'spindle-empty': 'spindle, empty',
  'hole-made': 'hole made before',
  'hole-now': 'hole of this stroke',
  'hole-to-come': 'hole still to come',
  'stop-used': 'stop used',
  'stop-standing': 'stop set',
  'stop-lowered': 'stop lowered',
  clamp: 'clamp',
  'hands-clear': 'hands clear',
  band: 'banded edge',
});

/** Spindles by their numbers: of a machine with one, of a lone head, of two heads alike, or head by head. */
export type SpindlesTold =
  | { readonly kind: 'one' }
  | { readonly kind: 'alone' | 'on-both'; readonly numbers: readonly number[] }
  | {
      readonly kind: 'on-heads';
      readonly byHead: readonly { readonly head: string; readonly numbers: readonly number[] }[];
    };

/** 'spindles 1, 6 and 10'; 'spindles 1 to 23 of both heads'; 'spindles 1 to 9 of the front head, 1 and 2 of the rear head'. */
function spindlesTold(spindles: SpindlesTold): string {
  switch (spindles.kind) {
    case 'one':
      return 'the spindle';
    case 'alone':
      return `${verb(spindles.numbers.length, 'spindle', 'spindles')} ${runsOfNumbers(spindles.numbers)}`;
    case 'on-both':
      return `spindles ${runsOfNumbers(spindles.numbers)} of both heads`;
    case 'on-heads': {
      const count = spindles.byHead.reduce((sum, { numbers }) => sum + numbers.length, 0);
      const lists = spindles.byHead.map(({ head, numbers }) => `${runsOfNumbers(numbers)} of the ${head}`);
      return `${verb(count, 'spindle', 'spindles')} ${lists.join(', ')}`;
    }
  }
}

type Way = 'left' | 'right';

/** A panel that is moved along by whole pitches, and what then holds it. */
export interface IndexMove {
  readonly by: Micrometres;
  readonly way: Way;
  readonly pitches: number;
  readonly on: 'row' | 'fence' | 'none';
}

export const PINS: Readonly<Record<IndexMove['on'], string>> = labels('pins', {
  row: ', onto the pins in the row',
  fence: ', to the pins in the fence',
  none: '',
});

/** '736 mm to the left, 23 pitches, onto the pins in the row' */
export function indexMoveWords({ by, way, pitches, on }: IndexMove, show: Show): string {
  return `${show.exact(by)} to the ${way}, ${counted(pitches, 'pitch', 'pitches')}${PINS[on]}`;
}

/** How far an end lies from its stop: pushed over it, or not up to it. */
export interface OffStop {
  readonly by: Micrometres;
  readonly past: boolean;
  readonly stop: string;
}

/** '736 mm past row-left' */
export function offStopWords({ by, past, stop }: OffStop, show: Show): string {
  return `${show.exact(by)} ${past ? 'past' : 'short of'} ${stop}`;
}

/** What the machine view says of one stroke. */
export const say = messages('machine-view', {
  // How the panel lies.
  liesAtHead: ({ up, edge, end, stop }: Lie) =>
    `${sentence(up)} up, ${end} pressed against the head, ${edge} against ${stop}.`,
  liesAtStop: ({ up, edge, end, stop }: Lie) => `${sentence(up)} up, ${edge} at the fence, ${end} against ${stop}.`,
  liesMoved: ({ up, edge, end, stop, by, past }: Lie & OffStop, show) =>
    `${sentence(up)} up, ${edge} at the fence, ${end} ${offStopWords({ by, past, stop }, show)}.`,

  // Names.
  head: ({ number }: { readonly number: number }) => `head ${number}`,
  spindle: ({ number }: { readonly number: number }) => `spindle ${number}`,
  spindleOfHead: ({ head, number }: { readonly head: string; readonly number: number }) => `${head}, spindle ${number}`,

  // On the drawing.
  indexArrow: ({ by, way }: { readonly by: string; readonly way: Way }) => `Index move ${by} to the ${way}`,
  halfTurn: ({ face }: { readonly face: string }) => `Turned through 180°, ${face} still down`,

  // Of one hole or spindle.
  holeMade: ({ bore }: { readonly bore: string }) => `${bore} Made.`,
  holeNow: ({ bore }: { readonly bore: string }) => `${bore} Made in this stroke.`,
  holeToCome: ({ bore }: { readonly bore: string }) => `${bore} Still to come.`,
  spindleEmpty: ({ spindle }: { readonly spindle: string }) => `${sentence(spindle)}: empty.`,
  spindleBeside: (
    {
      spindle,
      diameter,
      comes,
    }: { readonly spindle: string; readonly diameter: Micrometres; readonly comes: 'down' | 'up' | 'out' },
    show,
  ) => `${sentence(spindle)}: loaded with Ø ${show.nominal(diameter)}; comes ${comes} beside the panel.`,
  spindleBores: (
    { spindle, diameter, bore }: { readonly spindle: string; readonly diameter: Micrometres; readonly bore: string },
    show,
  ) => `${sentence(spindle)}: loaded with Ø ${show.nominal(diameter)}. ${bore}`,

  // The whole, for a reader who cannot see it.
  step: ({
    carcass,
    panel,
    machine,
    step,
    of,
  }: {
    readonly carcass: string;
    readonly panel: string;
    readonly machine: string;
    readonly step: number;
    readonly of: number;
  }) => `${carcass}, ${panel}, on ${machine}, step ${step} of ${of}.`,
  size: (
    {
      length,
      width,
      thickness,
    }: { readonly length: Micrometres; readonly width: Micrometres; readonly thickness: Micrometres },
    show,
  ) => `${show.exact(length)} by ${show.exact(width)} by ${show.exact(thickness)}.`,
  stops: (
    {
      stops,
    }: {
      readonly stops: readonly {
        readonly name: string;
        readonly side: Way;
        readonly at: Micrometres;
        readonly used: boolean;
        readonly lowered: boolean;
      }[];
    },
    show,
  ) => {
    const told = stops.map(({ name, side, at, used, lowered }) => {
      const state = [...(used ? ['used'] : []), ...(lowered ? ['lowered'] : [])];
      return `${name} on the ${side} at ${show.exact(at)}${state.length > 0 ? `, ${listed(state)}` : ''}`;
    });
    return `Stops: ${listed(told)}.`;
  },
  headsFromFence: ({ places }: { readonly places: readonly Micrometres[] }, show) =>
    `${listed(places.map((place, head) => `head ${head + 1} ${show.exact(place)} from the fence`))}.`,
  firstSpindleFromFence: ({ place }: { readonly place: Micrometres }, show) =>
    `first spindle ${show.exact(place)} from the fence.`,
  spindlesHigh: ({ height }: { readonly height: Micrometres }, show) =>
    `Spindles ${show.exact(height)} over the table.`,
  clamps: ({ clamps }: { readonly clamps: readonly { readonly name: string; readonly holds: boolean }[] }) =>
    `Clamps: ${listed(clamps.map(({ name, holds }) => `${name} ${holds ? 'holds the panel' : 'comes down beside the panel'}`))}.`,
  madeBefore: ({ made, of }: { readonly made: number; readonly of: number }) =>
    `${made} of its ${of} holes were made before.`,
  keepClear: () => 'Keep hands clear of spindles and clamps.',

  // How it comes there.
  pushThenMove: ({ stop, ...move }: IndexMove & { readonly stop: string }, show) =>
    `Push it against ${stop}, then make an index move: ${indexMoveWords(move, show)}.`,
  turnOver: ({ face, edge }: { readonly face: string; readonly edge: string }) =>
    `Turn it over: the ${face} comes up, the ${edge} stays the reference.`,
  turnHalfToHead: ({ face, end, edge, stop }: Omit<Lie, 'up'> & { readonly face: string }) =>
    `Turn it through 180 degrees on the table: the ${face} stays down, the ${end} comes to the head, the ${edge} to ${stop}.`,
  turnHalf: ({ face, end, stop }: Pick<Lie, 'end' | 'stop'> & { readonly face: string }) =>
    `Turn it through 180 degrees on the table: the ${face} stays down, the ${end} comes to ${stop}.`,
  turnQuarter: ({ face, end, edge, stop }: Omit<Lie, 'up'> & { readonly face: string }) =>
    `Turn it through 90 degrees on the table: the ${face} stays down, the ${edge} comes to the fence, the ${end} to ${stop}.`,
  slideToHead: ({ end, edge, stop }: Omit<Lie, 'up'>) =>
    `Slide it along, do not turn it: the ${end} comes to the head, the ${edge} to ${stop}.`,
  slide: ({ end, stop }: Pick<Lie, 'end' | 'stop'>) => `Slide it along, do not turn it: the ${end} comes to ${stop}.`,
  leave: () => 'Leave it where it is.',
  indexMove: (move: IndexMove, show) => `Index move: ${indexMoveWords(move, show)}.`,

  // What is bored.
  bores: (
    {
      parts,
      depth,
      through,
      upward,
    }: {
      readonly parts: readonly {
        readonly spindles: SpindlesTold;
        readonly count: number;
        readonly diameter: Micrometres;
      }[];
      readonly depth: Micrometres;
      readonly through: boolean;
      readonly upward: boolean;
    },
    show,
  ) =>
    `${sentence(listed(parts.map(({ spindles, count, diameter }) => `${spindlesTold(spindles)} ${verb(count, 'bores', 'bore')} ${counted(count, 'hole')} Ø ${show.nominal(diameter)}`)))}, ${through ? 'through' : `${show.exact(depth)} deep`}${upward ? ', from below' : ''}.`,

  // What else is to be seen to.
  lower: ({ stops }: { readonly stops: readonly string[] }) => `Lower ${listed(stops)}, out of the panel’s way.`,
  beside: ({
    spindles,
    count,
    comes,
  }: {
    readonly spindles: SpindlesTold;
    readonly count: number;
    readonly comes: 'down' | 'up' | 'out';
  }) =>
    `${sentence(spindlesTold(spindles))} ${verb(count, 'is loaded too, and comes', 'are loaded too, and come')} ${comes} beside the panel.`,
  unheld: () => 'No clamp comes down on the panel: hold it in a fixture.',
  extension: () => 'The fence extension is on.',
  done: () => 'After this stroke the panel has all its holes.',
  open: ({ holes }: { readonly holes: number }) => `${counted(holes, 'hole is', 'holes are')} still to come.`,
});
