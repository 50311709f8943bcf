import { swingHits } from '../../hung/swing-hits.js';
import { listed } from '../../words/english.js';
import { messages } from '../../words/message.js';
import { distinct } from '../lookups.js';
import type { CarcassRule, Found } from '../rule.js';

export const say = messages('door-swing-meets', {
  meets: ({
    door,
    hung,
    others,
    angle,
  }: {
    readonly door: string;
    readonly hung: 'left' | 'right';
    readonly others: readonly string[];
    readonly angle: number;
  }) =>
    `${door}, hung on the ${hung}, touches ${listed(others)} when it stands ${angle}° open. Make the gap or the reveal there larger, hang it on the other hand, or use a hinge that carries its edge clear.`,
});

export const doorSwingMeets: CarcassRule = {
  name: 'door-swing-meets',
  severity: 'error',
  about: {
    what: 'A door touches something of its own carcass as it opens, all else closed.',
    why: 'The corners of a door run on arcs about the axis of its hinges: a thick narrow door comes further out at its closing edge than it is wide, and beside the axis its edge comes over the gap. Doors that rub there do not open, or leave marks at the first pull. The axis is taken from the shop file (`axis-from-edge`, `axis-from-front`, `opening`).',
    remedy: 'Make the gap larger, hang the door on the other hand, or use another hinge.',
    example: 'kind: wall\nwidth: 91\nboard: board-19\ndoors: { hung: right, how: inset, gap: 1.5 }',
  },
  check({ boring, carcass }) {
    return boring.hung.flatMap((one): readonly Found[] => {
      const hits = one.reach === null ? [] : swingHits(one, carcass);
      if (hits.length === 0) return [];
      const { door } = one;
      const message = say.meets({
        door: door.key,
        hung: door.pose.u === '+x' ? 'left' : 'right',
        others: distinct(hits.map(({ panel }) => panel.key)),
        angle: hits[0]!.angle,
      });
      return [{ place: door.place, panel: door.key, message }];
    });
  },
};
