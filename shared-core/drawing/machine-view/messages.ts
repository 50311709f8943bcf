import type { Micrometres } from '../../length/units.js';
import { counted, listed, sentence, verb } from '../../words/english.js';
import { messages } from '../../words/message.js';

interface Lie {
  /** 'inside face', as the panel calls it. */
  readonly up: string;
  readonly edge: string;
  readonly end: string;
  readonly stop: string;
}

/** What the machine view says of one stroke. */
export const say = messages('machine-view', {
  // How the panel lies.
  liesAtHead: ({ up, edge, end, stop }: Lie) =>
    `${sentence(up)} up, ${end} pressed against the head, ${edge} against ${stop}.`,
  liesAtStop: ({ up, edge, end, stop }: Lie) => `${sentence(up)} up, ${edge} at the fence, ${end} against ${stop}.`,
  liesMoved: ({ up, edge, end, stop, by, past }: Lie & { readonly by: Micrometres; readonly past: boolean }, show) =>
    `${sentence(up)} up, ${edge} at the fence, ${end} ${show.exact(by)} ${past ? 'past' : 'short of'} ${stop}.`,

  // How it comes there.
  pushThenMove: ({ stop, move }: { readonly stop: string; readonly move: string }) =>
    `Push it against ${stop}, then an index move: ${move}.`,
  turnOver: ({ face, edge }: { readonly face: string; readonly edge: string }) =>
    `Turn it over: the ${face} face comes up, the ${edge} stays the reference.`,
  turnHalfToHead: ({ face, end, edge, stop }: Omit<Lie, 'up'> & { readonly face: string }) =>
    `Turn it by 180 degrees on the table: the ${face} face stays down, the ${end} comes to the head, the ${edge} to ${stop}.`,
  turnHalf: ({ face, end, stop }: Pick<Lie, 'end' | 'stop'> & { readonly face: string }) =>
    `Turn it by 180 degrees on the table: the ${face} face stays down, the ${end} comes to ${stop}.`,
  slideToHead: ({ end, edge, stop }: Omit<Lie, 'up'>) =>
    `Slide it along, do not turn it: the ${end} comes to the head, the ${edge} to ${stop}.`,
  slide: ({ end, stop }: Pick<Lie, 'end' | 'stop'>) => `Slide it along, do not turn it: the ${end} comes to ${stop}.`,
  leave: () => 'Leave it where it is.',
  indexMove: ({ move }: { readonly move: string }) => `Index move: ${move}.`,

  // What is bored.
  bores: (
    {
      parts,
      depth,
      through,
      upward,
    }: {
      readonly parts: readonly { readonly spindles: string; readonly count: number; readonly diameter: Micrometres }[];
      readonly depth: Micrometres;
      readonly through: boolean;
      readonly upward: boolean;
    },
    show,
  ) =>
    `${sentence(listed(parts.map(({ spindles, count, diameter }) => `${spindles} ${verb(count, 'bores', 'bore')} ${counted(count, 'hole')} Ø ${show.nominal(diameter)}`)))}, ${through ? 'through' : `${show.exact(depth)} deep`}${upward ? ', from below' : ''}.`,

  // What else is to be seen to.
  lower: ({ stops }: { readonly stops: readonly string[] }) => `Lower ${listed(stops)}, out of the panel’s way.`,
  beside: ({
    spindles,
    count,
    comes,
  }: {
    readonly spindles: string;
    readonly count: number;
    readonly comes: 'down' | 'up' | 'out';
  }) =>
    `${sentence(spindles)} ${verb(count, 'is loaded too, and comes', 'are loaded too, and come')} ${comes} beside the panel.`,
  unheld: () => 'No clamp comes down on the panel: hold it in a fixture.',
  extension: () => 'The fence extension is on.',
  done: () => 'After this stroke the panel has all its holes.',
  open: ({ holes }: { readonly holes: number }) => `${counted(holes, 'hole is', 'holes are')} still to come.`,
});
