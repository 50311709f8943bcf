import { borerOf, isForSlant } from '../../hung/hang.js';
import type { HungDoor } from '../../hung/model.js';
import { overlaysOf, reachFor, whatWouldDo, type WouldDo } from '../../hung/reach.js';
import type { Micrometres } from '../../length/units.js';
import type { Span } from '../../schema/schema.js';
import { listed, quoted, verb } from '../../words/english.js';
import { messages } from '../../words/message.js';
import type { Show } from '../../words/show.js';
import { replaceName } from '../changes.js';
import type { Repair } from '../finding.js';
import { distinct, grouped } from '../lookups.js';
import { isHungOnBlind } from './door-hung-on-blind.js';
import type { CarcassContext, CarcassRule, Found } from '../rule.js';

interface Misses {
  readonly doors: readonly string[];
  readonly uprights: readonly string[];
  readonly overlay: Micrometres;
  readonly hinge: string;
  readonly reaches: Span;
}

export const say = messages('hinge-out-of-reach', {
  byPlate: ({ arm, plates, ...misses }: Misses & { readonly arm: Micrometres; readonly plates: Span }, show) =>
    `${missed(misses, show)} A plate ${tall(plates, show)} high would do with the arm of ${show.exact(arm)}; add it to \`plates\` if the shop has one, or change the reveal or the gap.`,
  byDistance: (
    { distance, range, ...misses }: Misses & { readonly distance: Micrometres; readonly range: Span },
    show,
  ) =>
    `${missed(misses, show)} The cup would have to stand ${show.length(distance)} from the edge of the door, and its \`distance\` is ${show.span(range)}. Make the reveal or the gap larger, or use another hinge.`,
  use: ({ hinge }: { readonly hinge: string }) => `Hang the doors on ${quoted(hinge)}`,
});

function missed({ doors, uprights, overlay, hinge, reaches }: Misses, show: Show): string {
  const verbed = verb(doors.length, 'is', 'are');
  const wanted =
    overlay >= 0
      ? `${verbed} to cover ${show.length(overlay)} of ${listed(uprights)}`
      : `${verbed} to hang ${show.length(-overlay)} beside ${listed(uprights)}`;
  return `${listed(doors)} ${wanted}; ${quoted(hinge)} brings a door between ${show.length(reaches.min)} and ${show.length(reaches.max)} over it, with the arms and plates listed.`;
}

const tall = ({ min, max }: Span, show: Show): string =>
  min === max ? show.length(min) : `between ${show.length(min)} and ${show.length(max)}`;

export const hingeOutOfReach: CarcassRule = {
  name: 'hinge-out-of-reach',
  severity: 'error',
  about: {
    what: 'No arm and no plate of the hinge bring the door where it is to hang.',
    why: 'The edge of the door lies as far beyond the face under the plate as its cup stands from the edge, less arm and plate. A hinge that is off by more than its screws adjust leaves doors that rub or gape. Such a door gets no bores for hinges.',
    remedy: 'Add the plate that the message names, use another hinge, or change reveal, gap or board.',
    example: 'kind: wall\nwidth: 600\ndoors: { hung: left, reveal: 4.5 }\nboard: board-16',
  },
  check(context) {
    // Where no upright stands at all, or the hinge is made for another slant, that is told.
    const missing = context.boring.hung.filter(
      ({ reach, door, upright, hinge, slant }) =>
        reach === null &&
        isForSlant(hinge, slant) &&
        !isHungOnBlind(context.spec, door.pose.u === '+x' ? 'left' : 'right', upright),
    );
    return grouped(missing, ({ overlay, door }) => `${door.place.start} ${overlay}`).map((same): Found => {
      const one = same[0]!;
      const { door, overlay, hinge } = one;
      const misses = {
        doors: same.map((each) => each.door.key),
        uprights: distinct(same.map(({ upright }) => upright.key)),
        overlay,
        hinge: hinge.name,
        reaches: overlaysOf(hinge),
      };
      return {
        place: door.place,
        panel: door.key,
        message: toldOf(misses, whatWouldDo(hinge, overlay), hinge.distance),
        repairs: otherHinges(context, same),
      };
    });
  },
};

function toldOf(misses: Misses, would: WouldDo, range: Span) {
  return would.by === 'plate'
    ? say.byPlate({ ...misses, arm: would.arm, plates: would.plates })
    : say.byDistance({ ...misses, distance: would.reach.distance, range });
}

/** Hinges of the shop that reach all of the doors. */
function otherHinges({ shop, spec }: CarcassContext, doors: readonly HungDoor[]): readonly Repair[] {
  const borer = borerOf(shop)?.distance ?? null;
  return [...shop.hinges.values()]
    .filter((hinge) =>
      doors.every(({ overlay, slant }) => isForSlant(hinge, slant) && reachFor(hinge, overlay, borer) !== null),
    )
    .flatMap(({ name }): readonly Repair[] => {
      const change = replaceName(spec.doors.hinge, name);
      return change === null ? [] : [{ title: say.use({ hinge: name }), changes: [change], preferred: false }];
    });
}
