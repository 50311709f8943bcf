import { openFront } from '../../carcass/fronts/blind.js';
import { otherHand } from '../../carcass/hands.js';
import type { Panel } from '../../carcass/model.js';
import type { CarcassSpec } from '../../carcass/spec.js';
import { extentsOf } from '../../carcass/pose.js';
import { half, type Micrometres } from '../../length/units.js';
import type { Hand } from '../../shop/model.js';
import { messages } from '../../words/message.js';
import { setWord } from '../changes.js';
import { panelOf } from '../lookups.js';
import type { CarcassRule, Found } from '../rule.js';

export const say = messages('door-hung-on-blind', {
  hung: ({ door, hand, at }: { readonly door: string; readonly hand: Hand; readonly at: Micrometres }, show) =>
    `${door} is hung on the ${hand}, beside the blind panel, where no upright stands to carry its hinges. Hang it on the ${otherHand(hand)}, or stand a divider at ${show.length(at)} (\`dividers\`), behind the edge of the blind panel.`,
  hang: ({ hand }: { readonly hand: Hand }) => `Hang it on the ${hand}`,
});

/** Whether an upright that is to carry a door on a hand stands wholly behind the blind panel there. */
export function isHungOnBlind(spec: CarcassSpec, hung: Hand, upright: Panel): boolean {
  const open = openFront(spec);
  const { x } = extentsOf(upright);
  return spec.blind[hung] !== null && (hung === 'left' ? x.to <= open.from : x.from >= open.to);
}

export const doorHungOnBlind: CarcassRule = {
  name: 'door-hung-on-blind',
  severity: 'error',
  about: {
    what: 'A door is hung at the edge of the blind panel of a corner carcass, away from every upright.',
    why: 'Plates are screwed to an upright. At the edge of the blind panel there is none, unless a divider stands behind it; and a door hung there opens against the pulls of the run along the other wall.',
    remedy: 'Hang the door on the other hand, or stand a divider behind the edge of the blind panel.',
    example: 'kind: base\nwidth: 1100\nblind: { right: 580 }\ndoors: right',
  },
  check(context) {
    const { spec, carcass } = context;
    const open = openFront(spec);
    return carcass.doors.flatMap(({ key, hung, upright }): readonly Found[] => {
      const door = panelOf(context, key)!;
      if (!isHungOnBlind(spec, hung, panelOf(context, upright)!)) return [];
      const to = otherHand(hung);
      const { gap } = spec.doors;
      const at = hung === 'left' ? open.from + half(gap.value) : open.to - half(gap.value);
      const { part, start, end } = door.place;
      // Only a front that is one door is written as the hand of it.
      const written = carcass.doors.filter((one) => {
        const { place } = panelOf(context, one.key)!;
        return place.part === part && place.start === start && place.end === end;
      });
      const repairs =
        part === 'self' && written.length === 1 && spec.blind[to] === null
          ? [{ title: say.hang({ hand: to }), changes: [setWord(door.path, to)], preferred: true }]
          : [];
      return [{ place: door.place, panel: key, message: say.hung({ door: key, hand: hung, at }), repairs }];
    });
  },
};
