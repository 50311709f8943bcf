import type { Micrometres } from '../../length/units.js';
import { messages } from '../../words/message.js';
import { labels } from '../../words/told.js';

export const HEADS = labels({ count: 'Count', what: 'What', for: 'For' });

/** What no shop file names. */
export const THINGS = labels({ pins: 'shelf pins' });

/** What the hardware list says. */
export const say = messages('hardware-list', {
  hinge: ({ arm, plate }: { readonly arm: Micrometres; readonly plate: Micrometres }, show) =>
    `with the arm of ${show.exact(arm)} and a plate ${show.exact(plate)} high`,
  pins: ({ diameter }: { readonly diameter: Micrometres }, show) => `for holes of ${show.nominal(diameter)}`,
});
