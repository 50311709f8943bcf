import { extentsOf, meet } from '../../carcass/pose.js';
import type { Panel } from '../../carcass/model.js';
import { isBack } from '../../carcass/roles.js';
import type { SideBracket } from '../../hung/model.js';
import type { Micrometres } from '../../length/units.js';
import { listed, quoted } from '../../words/english.js';
import { messages } from '../../words/message.js';
import { otherBrackets } from '../bracket-choices.js';
import { boresOfGroups, distinct } from '../lookups.js';
import type { CarcassContext, CarcassRule, Found } from '../rule.js';

interface Off {
  readonly bracket: string;
  readonly sides: readonly string[];
  readonly high: Micrometres;
  readonly deep: Micrometres;
}
interface Meets {
  readonly bracket: string;
  readonly sides: readonly string[];
  readonly others: readonly string[];
}

export const say = messages('bracket-without-room', {
  off: ({ bracket, sides, high, deep }: Off, show) =>
    `A bore of ${quoted(bracket)} does not stand on ${listed(sides)}, ${show.length(high)} high and ${show.length(deep)} deep, so nothing is bored for it. Use another bracket, or a larger carcass.`,
  meets: ({ bracket, sides, others }: Meets) =>
    `${quoted(bracket)} has no room on ${listed(sides)}: ${listed(others)} ${others.length === 1 ? 'stands' : 'stand'} where it is screwed on. Move ${others.length === 1 ? 'it' : 'them'}, or use another bracket.`,
});

export const bracketWithoutRoom: CarcassRule = {
  name: 'bracket-without-room',
  severity: 'error',
  about: {
    what: 'A hanging bracket does not stand on its side, or a panel or a slide stands where it is screwed on.',
    why: 'Brackets sit high up at the back of the sides. A shelf that stands there, or a side too small for the bores, is seen when the bracket goes on: the carcass is glued by then, and hangs by what is found instead.',
    remedy: 'Move the shelf, or use a bracket that fits.',
    example: 'kind: wall\nwidth: 600\nbrackets: hook-130\nfixed-shelves: [648]',
  },
  check(context) {
    const { brackets } = context.boring;
    const off = brackets.filter(({ isOn }) => !isOn);
    const met = brackets.flatMap((one) => (one.isOn ? [{ one, others: inRoomOf(context, one) }] : []));
    const without = met.filter(({ others }) => others.length > 0);
    return [...offSides(context, off), ...meeting(context, without)];
  },
};

function offSides(context: CarcassContext, off: readonly SideBracket[]): readonly Found[] {
  const [first] = off;
  if (first === undefined) return [];
  const { side, bracket, place } = first;
  const sides = off.map((one) => one.side.key);
  const message = say.off({ bracket: bracket.name, sides, high: side.length, deep: side.width });
  return [{ place, panel: side.key, message, repairs: otherBrackets(context, bracket, null) }];
}

function meeting(
  context: CarcassContext,
  met: readonly { readonly one: SideBracket; readonly others: readonly string[] }[],
): readonly Found[] {
  const [first] = met;
  if (first === undefined) return [];
  const { side, bracket, place } = first.one;
  const message = say.meets({
    bracket: bracket.name,
    sides: met.map(({ one }) => one.side.key),
    others: distinct(met.flatMap(({ others }) => others)),
  });
  const bores = boresOfGroups(context, new Set(met.map(({ one }) => one.id)));
  return [{ place, panel: side.key, message, bores, repairs: otherBrackets(context, bracket, null) }];
}

/** Panels and slides in the room of a bracket. A bracket reaches through the back, which is cut out for it. */
function inRoomOf({ carcass, boring }: CarcassContext, { side, body }: SideBracket): readonly string[] {
  const isInWay = (panel: Panel): boolean => panel !== side && !isBack(panel) && meet(extentsOf(panel), body);
  const slides = boring.running.flatMap(({ drawer, slides: both }) =>
    both.some((slide) => meet(slide.body, body)) ? [drawer.key] : [],
  );
  return distinct([...carcass.panels.filter(isInWay).map(({ key }) => key), ...slides]);
}
