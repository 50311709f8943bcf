import type { Interval } from '../../carcass/interval.js';
import { extentsOf } from '../../carcass/pose.js';
import type { WardrobeRailAt } from '../../hung/model.js';
import { half, type Micrometres } from '../../length/units.js';
import { listed } from '../../words/english.js';
import { messages } from '../../words/message.js';
import { ownText, remove } from '../changes.js';
import type { Repair } from '../finding.js';
import { grouped } from '../lookups.js';
import type { CarcassContext, CarcassRule, Found } from '../rule.js';

interface Shallow {
  readonly rails: readonly string[];
  readonly hanger: Micrometres;
  readonly before: Micrometres;
  readonly behind: Micrometres;
}

export const say = messages('clothes-without-depth', {
  shallow: ({ rails, hanger, before, behind }: Shallow, show) =>
    `Coat hangers ${show.length(hanger)} wide need ${show.length(half(hanger))} before and behind ${listed(rails)}, and there are ${show.length(before)} and ${show.length(behind)}. Move the rail, or make the carcass deeper.`,
  middle: () => 'Put the rail in the middle of the depth',
});

export const clothesWithoutDepth: CarcassRule = {
  name: 'clothes-without-depth',
  severity: 'warning',
  about: {
    what: 'Before or behind a wardrobe rail there is less room than half a coat hanger.',
    why: 'Coats then stand askew on the rail, rub against the back, or keep the door from closing. A wardrobe is deeper than most other carcasses for this alone.',
    remedy:
      'Put the rail in the middle of the depth, or make the carcass deeper (its inside as deep as `hanger` of the rail).',
    example: 'kind: tall\nwidth: 800\ndepth: 400\nwardrobe-rails: [1700]',
  },
  check(context) {
    const ofOneItem = grouped(context.boring.wardrobeRails, ({ at }) => `${at.place.part} ${at.place.start}`);
    return ofOneItem.flatMap((rails) => shallow(context, rails));
  },
};

function shallow(context: CarcassContext, all: readonly WardrobeRailAt[]): readonly Found[] {
  const [first] = all;
  if (first === undefined) return [];
  const { rail, y, at, fromFront } = first;
  const { from, to } = clearDepth(context);
  const [before, behind] = [y - from, to - y];
  if (Math.min(before, behind) >= half(rail.hanger)) return [];
  const message = say.shallow({ rails: all.map(({ key }) => key), hanger: rail.hanger, before, behind });
  const repairs: readonly Repair[] =
    fromFront !== undefined && ownText(fromFront)
      ? [{ title: say.middle(), changes: [remove(fromFront.path)], preferred: true }]
      : [];
  return [{ place: at.place, message, repairs }];
}

/** Between what closes the carcass before and behind, from its front. */
function clearDepth({ spec, carcass }: CarcassContext): Interval {
  const doors = carcass.panels.filter(({ role }) => role === 'door').map((door) => extentsOf(door).y.to);
  const back = carcass.panels.find(({ role }) => role === 'back');
  return {
    from: doors.length === 0 ? 0 : Math.max(...doors),
    to: back === undefined ? spec.depth.value : Math.min(spec.depth.value, extentsOf(back).y.from),
  };
}
