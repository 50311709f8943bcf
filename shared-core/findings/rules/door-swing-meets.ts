import { swingHits, type SwingHit } from '../../hung/swing-hits.js';
import { listed, quoted } from '../../words/english.js';
import { messages } from '../../words/message.js';
import { distinct, grouped } from '../lookups.js';
import type { CarcassRule, Found } from '../rule.js';

interface Hits {
  readonly door: string;
  readonly hung: 'left' | 'right';
  readonly others: readonly string[];
  readonly angle: number;
}

export const say = messages('door-swing-meets', {
  meets: ({ door, hung, others, angle }: Hits) =>
    `${door}, hung on the ${hung}, touches ${listed(others)} when it stands ${angle}° open. Make the gap or the reveal there larger, hang it on the other hand, or use a hinge that carries its edge clear.`,
  byPull: ({ door, hung, pull, others, angle }: Hits & { readonly pull: string }) =>
    `${quoted(pull)} on ${door}, hung on the ${hung}, touches ${listed(others)} when the door stands ${angle}° open. Put the pull nearer to the closing edge, take a flatter one, or use a hinge that opens less.`,
  onPull: ({ door, hung, pull, others, angle }: Hits & { readonly pull: string }) =>
    `${door}, hung on the ${hung}, touches ${quoted(pull)} on ${listed(others)} when it stands ${angle}° open. Put that pull further from the edge, take a flatter one, or use a hinge that opens less.`,
});

export const doorSwingMeets: CarcassRule = {
  name: 'door-swing-meets',
  severity: 'error',
  about: {
    what: 'A door or its pull touches something of its own carcass as it opens, all else closed.',
    why: 'The corners of a door run on arcs about the axis of its hinges: a thick narrow door comes further out at its closing edge than it is wide, and beside the axis its edge comes over the gap. Doors that rub there do not open, or leave marks at the first pull. One that folds back over its neighbour meets the pull on that, or its own pull does the neighbour. The axis is taken from the shop file (`axis-from-edge`, `axis-from-front`, `opening`).',
    remedy: 'Make the gap larger, hang the door on the other hand, put the pull elsewhere, or use another hinge.',
    example: 'kind: wall\nwidth: 91\nboard: board-19\ndoors: { hung: right, how: inset, gap: 1.5 }',
  },
  check({ boring, carcass }) {
    return boring.hung.flatMap((one): readonly Found[] => {
      const { door } = one;
      const hung = door.pose.u === '+x' ? 'left' : 'right';
      // With pulls that are off their fronts another rule deals.
      const pulls = boring.pulls.filter(({ isOn }) => isOn);
      const all = one.reach === null ? [] : swingHits(one, carcass, pulls);
      return grouped(all, ({ by, on }) => `${by?.id} ${on?.pull.name}`).map((hits): Found => {
        const [{ by, on, angle }] = hits as [SwingHit];
        const others = distinct(hits.map(({ panel }) => panel.key));
        const told = { door: door.key, hung, others, angle } as const;
        const message =
          by !== null
            ? say.byPull({ ...told, pull: by.pull.name })
            : on !== null
              ? say.onPull({ ...told, pull: on.pull.name })
              : say.meets(told);
        return { place: by?.place ?? door.place, panel: door.key, message };
      });
    });
  },
};
