import { blindHands, openFront } from '../../carcass/fronts/blind.js';
import { extentsOf } from '../../carcass/pose.js';
import type { Micrometres } from '../../length/units.js';
import type { Hand } from '../../shop/model.js';
import { quoted } from '../../words/english.js';
import { messages } from '../../words/message.js';
import { setLength } from '../changes.js';
import { boresOfGroups } from '../lookups.js';
import { movedPull } from '../pull-places.js';
import type { CarcassContext, CarcassRule, Found } from '../rule.js';

interface Meets {
  readonly pull: string;
  readonly front: string;
  readonly projection: Micrometres;
  readonly room: Micrometres;
}

export const say = messages('pull-meets-corner', {
  meets: ({ pull, front, projection, room }: Meets, show) =>
    `${quoted(pull)} on ${front} stands out ${show.length(projection)}, and between the run in the corner and the next front there are ${show.length(room)}: with such pulls on both runs, neither opens past those of the other. Make the \`strip\` of the blind panel wider, and the filler of the other run as wide.`,
  wider: ({ to }: { readonly to: Micrometres }, show) => `Leave ${show.exact(to)} of the blind panel to be seen`,
});

/** What a pull passes another by (common practice, no source). */
const PASSES: Micrometres = 5_000;

export const pullMeetsCorner: CarcassRule = {
  name: 'pull-meets-corner',
  severity: 'warning',
  about: {
    what: 'The pulls of the two runs that meet in a corner stand further out than the strip of the blind panel is wide.',
    why: 'The fronts of one run open across those of the other. What stands out of them meets the edge of the next door or drawer, or the pull on it, as soon as the strip between is narrower than the pulls are deep. It is noticed when the kitchen stands. The pulls of the other run are taken to be like these.',
    remedy: 'Make the strip wider than the pulls stand out, on both runs; or use flatter pulls.',
    example: 'kind: base\nwidth: 1100\nblind: { right: 580, strip: 20 }\ndoors: left\npulls: bar-160',
  },
  check(context) {
    const { spec, boring } = context;
    const { strip } = spec.blind;
    const rooms = blindHands(spec).flatMap((hand) => roomBeside(context, hand));
    if (rooms.length === 0) return [];
    const room = Math.min(...rooms);
    const furthest = boring.pulls.toSorted((a, b) => b.pull.projection - a.pull.projection)[0];
    if (furthest === undefined || furthest.pull.projection <= room) return [];
    const { front, pull, id } = furthest;
    const millimetre = 1000;
    const to = Math.ceil((pull.projection + PASSES - (room - strip.value)) / millimetre) * millimetre;
    const found: Found = {
      place: strip.written ? strip.place : (spec.blind.right ?? spec.blind.left)!.place,
      panel: front.key,
      message: say.meets({ pull: pull.name, front: front.key, projection: pull.projection, room }),
      bores: boresOfGroups(context, new Set([id])),
      repairs: [
        { title: say.wider({ to }), changes: [setLength(context, strip.path, to)], preferred: true },
        ...movedPull(context, furthest),
      ],
    };
    return [found];
  },
};

/** From what the run along the other wall covers to the nearest front that opens; an inset one may hang beside a divider further on. */
function roomBeside({ spec, carcass }: CarcassContext, hand: Hand): readonly Micrometres[] {
  const open = openFront(spec);
  const strip = spec.blind.strip.value;
  const fronts = carcass.panels
    .filter(({ role }) => role === 'door' || role === 'drawer-front')
    .map((one) => extentsOf(one).x);
  if (fronts.length === 0) return [];
  return hand === 'left'
    ? [Math.min(...fronts.map(({ from }) => from)) - open.from + strip]
    : [open.to - Math.max(...fronts.map(({ to }) => to)) + strip];
}
