import type { Micrometres } from '../../length/units.js';
import { counted } from '../../words/english.js';
import { messages } from '../../words/message.js';
import { labels } from '../../words/told.js';

export const HEADS = labels('hardware-heads', { count: 'Count', what: 'What', for: 'For' });

/** What no shop file names. */
export const THINGS = labels('hardware-things', { pins: 'shelf pins', frontScrews: 'screws of drawer fronts' });

/** What the hardware list says. */
export const say = messages('hardware-list', {
  hinge: ({ arm, plate }: { readonly arm: Micrometres; readonly plate: Micrometres }, show) =>
    `with the arm of ${show.exact(arm)} and a plate ${show.exact(plate)} high`,
  slides: ({ long, rating }: { readonly long: Micrometres; readonly rating: number }, show) =>
    `pairs, ${show.exact(long)} long, for ${rating} kg each`,
  pulls: ({ screws, through }: { readonly screws: number; readonly through: Micrometres }, show) =>
    `with ${counted(screws, 'screw')} through ${show.exact(through)} of wood`,
  pullsBlind: ({ screws, depth }: { readonly screws: number; readonly depth: Micrometres }, show) =>
    `with ${counted(screws, 'bore')} ${show.exact(depth)} deep`,
  brackets: ({ rating }: { readonly rating: number | null }) =>
    `one in each side${rating === null ? '' : `, a pair for ${rating} kg`}; what holds them at the wall is not counted`,
  wardrobeRails: ({ long }: { readonly long: Micrometres }, show) => `cut ${show.exact(long)} long, with two sockets`,
  feet: ({ high, hasClip }: { readonly high: Micrometres; readonly hasClip: boolean }, show) =>
    `to be set to ${show.exact(high)}${hasClip ? ', with a clip for the plinth' : ''}`,
  angles: ({ screws }: { readonly screws: number }) =>
    `for fronts that do not move, with ${counted(screws, 'screw')} each`,
  frontScrews: ({ pilot, depth }: { readonly pilot: Micrometres; readonly depth: Micrometres }, show) =>
    `for pilot holes of ${show.nominal(pilot)}, ${show.exact(depth)} deep`,
  pins: ({ diameter }: { readonly diameter: Micrometres }, show) => `for holes of ${show.nominal(diameter)}`,
});
