import type { Micrometres } from '../../length/units.js';
import { counted, listed, quoted } from '../../words/english.js';
import { messages } from '../../words/message.js';
import { distinct } from '../lookups.js';
import type { CarcassRule, Found } from '../rule.js';

export const say = messages('hinge-without-room', {
  meets: ({
    hinges,
    door,
    others,
  }: {
    readonly hinges: readonly number[];
    readonly door: string;
    readonly others: readonly string[];
  }) =>
    hinges.length === 1
      ? `Hinge ${hinges[0]!} of ${door}, counted from the bottom, has no place of its own: wherever the pitch lets it stand, something is in its room, here ${listed(others)}. Move that, make the door higher, or hang it on the other hand.`
      : `Hinges ${listed(hinges.map(String))} of ${door}, counted from the bottom, have no places of their own: wherever the pitch lets them stand, something is in their room, here ${listed(others)}. Move that, make the door higher, or hang it on the other hand.`,
  tooFew: (
    {
      door,
      hinge,
      wanted,
      height,
    }: { readonly door: string; readonly hinge: string; readonly wanted: number; readonly height: Micrometres },
    show,
  ) =>
    `${door} is ${show.length(height)} high and asks for ${counted(wanted, 'hinge')}, but the pitch has no places for so many of ${quoted(hinge)}. Make the door higher, or write \`hinge: none\` and hang it otherwise.`,
});

export const hingeWithoutRoom: CarcassRule = {
  name: 'hinge-without-room',
  severity: 'error',
  about: {
    what: 'A hinge has no place where neither a panel nor another hinge stands in its way.',
    why: 'Hinge and plate need the room that the shop file gives them (`body-height`, `body-depth`), and the screws of two plates on one divider must not meet. A plate under a shelf comes to light when the door is hung.',
    remedy: 'Move the shelf, or hang the door on the other hand; on a divider, leave one of the two doors to a side.',
    example: 'kind: wall\nwidth: 600\nheight: 300\ndoors: left\nfixed-shelves: [72, 136, 200]',
  },
  check({ boring }) {
    return boring.hung.flatMap(({ door, hinge, reach, wanted, hinges }): readonly Found[] => {
      const where = { place: door.place, panel: door.key };
      if (reach !== null && hinges.length < wanted)
        return [{ ...where, message: say.tooFew({ door: door.key, hinge: hinge.name, wanted, height: door.length }) }];
      const met = hinges.flatMap((one, i) => (one.meets === null ? [] : [{ ...one, other: one.meets, number: i + 1 }]));
      if (met.length === 0) return [];
      const numbers = met.map(({ number }) => number);
      const message = say.meets({ door: door.key, hinges: numbers, others: distinct(met.map(({ other }) => other)) });
      const bores = boring.bores.filter(({ group }) => met.some(({ id }) => id === group)).map(({ id }) => id);
      return [{ ...where, message, bores }];
    });
  },
};
