import { counted } from '../../words/english.js';
import { messages } from '../../words/message.js';
import { ownText, remove, setWord } from '../changes.js';
import type { Repair } from '../finding.js';
import { distinct, grouped } from '../lookups.js';
import type { CarcassRule } from '../rule.js';

interface Crowded {
  readonly joints: readonly string[];
  readonly count: number;
  readonly room: number;
}

export const say = messages('joint-crowded', {
  fewer: ({ joints, count, room }: Crowded) =>
    `${counted(count, 'place')} of ${joints.join(', ')} are asked for, and the spindles have room for ${room === 0 ? 'none' : room}. Ask for fewer, or make the panel wider.`,
  take: ({ room }: { readonly room: number }) => `Bore ${counted(room, 'place')}`,
  remove: () => 'Remove the number and use the usual places',
});

export const jointCrowded: CarcassRule = {
  name: 'joint-crowded',
  severity: 'warning',
  about: {
    what: 'More places are asked for in a joint than the spindles have room for.',
    why: 'Places stand on the pitch of the head that bores the faces, between the edges that the fitting needs. Those that find no room are not bored, so the joint is weaker than it was meant to be.',
    remedy: 'Ask for fewer, or list the places where the joint is to be bored off the pitch.',
    example: 'kind: base\nwidth: 600\npanels:\n  rail-front:\n    far-end: { dowels: 6 }',
  },
  check(context) {
    return grouped(context.boring.crowded, ({ count, room }) => `${count.place.part} ${count.place.start} ${room}`).map(
      (same) => {
        const { count, panel } = same[0]!;
        const room = Math.min(...same.map((one) => one.room));
        const repairs: readonly Repair[] = !ownText(count)
          ? []
          : room > 0
            ? [{ title: say.take({ room }), changes: [setWord(count.path, String(room))], preferred: true }]
            : [{ title: say.remove(), changes: [remove(count.path)], preferred: true }];
        const joints = distinct(same.map(({ joint }) => joint));
        return { place: count.place, panel, message: say.fewer({ joints, count: count.value, room }), repairs };
      },
    );
  },
};
