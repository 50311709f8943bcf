import { extentsOf, meet, type Extents } from '../../carcass/pose.js';
import type { WardrobeRailAt } from '../../hung/model.js';
import type { Micrometres } from '../../length/units.js';
import { listed } from '../../words/english.js';
import { messages } from '../../words/message.js';
import { ownText, setLength } from '../changes.js';
import type { Repair } from '../finding.js';
import { boresOfGroups, distinct, grouped } from '../lookups.js';
import type { CarcassContext, CarcassRule, Found } from '../rule.js';

interface Meets {
  readonly rails: readonly string[];
  readonly others: readonly string[];
  readonly over: Micrometres;
}
interface OffUpright {
  readonly rails: readonly string[];
  readonly uprights: readonly string[];
}

export const say = messages('wardrobe-rail-without-room', {
  meets: ({ rails, others, over }: Meets, show) =>
    `${listed(others)} ${others.length === 1 ? 'stands' : 'stand'} in the way of ${listed(rails)}, or in the ${show.length(over)} over it that coat hangers need to be lifted off. Move the one or the other.`,
  off: ({ rails, uprights }: OffUpright) =>
    `The sockets of ${listed(rails)} do not stand on ${listed(uprights)}, so nothing is bored for them. Check the height and the distance from the front.`,
  noBay: ({ bay, bays }: { readonly bay: number; readonly bays: number }) =>
    `There is no bay ${bay} for this rail: the carcass has ${bays === 1 ? 'one bay' : `${bays} bays`}.`,
  lower: ({ at }: { readonly at: Micrometres }, show) => `Lower the rail to ${show.exact(at)}`,
});

export const wardrobeRailWithoutRoom: CarcassRule = {
  name: 'wardrobe-rail-without-room',
  severity: 'error',
  about: {
    what: 'A wardrobe rail has no place between its uprights.',
    why: 'A panel or a drawer stands in its way or too near over it, its sockets do not stand on the uprights, or its bay is not there. A coat hanger is lifted over the rail to be put on. Under a shelf that is too near it cannot be, and that is seen when the first coat is hung; the sides are bored by then.',
    remedy: 'Lower the rail or move the shelf.',
    example: 'kind: tall\nwidth: 800\nfixed-shelves: [1736]\nwardrobe-rails: [1712]',
  },
  check(context) {
    const { wardrobeRails } = context.boring;
    const bays = context.carcass.bays.length;
    const noBay = (context.spec.wardrobeRails?.value ?? []).flatMap(({ value: { bay } }): readonly Found[] =>
      bay === undefined || bay.value <= bays
        ? []
        : [{ place: bay.place, message: say.noBay({ bay: bay.value, bays }), repairs: [] }],
    );
    const ofOneItem = grouped(wardrobeRails, ({ at }) => `${at.place.part} ${at.place.start}`);
    return [
      ...noBay,
      ...ofOneItem.flatMap((rails) => {
        const off = offUprights(rails);
        return off.length > 0 ? off : meeting(context, rails);
      }),
    ];
  },
};

function offUprights(all: readonly WardrobeRailAt[]): readonly Found[] {
  const off = all.flatMap((one) => one.sockets.flatMap(({ upright, isOn }) => (isOn ? [] : [{ one, upright }])));
  const [first] = off;
  if (first === undefined) return [];
  const rails = distinct(off.map(({ one }) => one.key));
  const message = say.off({ rails, uprights: distinct(off.map(({ upright }) => upright.key)) });
  return [{ place: first.one.at.place, panel: first.upright.key, message, repairs: [] }];
}

function meeting(context: CarcassContext, all: readonly WardrobeRailAt[]): readonly Found[] {
  const met = all.map((one) => ({ one, others: inWayOf(context, one) })).filter(({ others }) => others.length > 0);
  const [first] = met;
  if (first === undefined) return [];
  const { at, rail } = first.one;
  const others = met.flatMap(({ others: some }) => some);
  const message = say.meets({
    rails: met.map(({ one }) => one.key),
    others: distinct(others.map(({ key }) => key)),
    over: rail.over,
  });
  const bores = boresOfGroups(context, new Set(met.map(({ one }) => one.key)));
  const lowest = Math.min(...others.map(({ run }) => run.z.from));
  const by = Math.max(...met.map(({ one }) => one.body.z.to)) + rail.over - lowest;
  return [{ place: at.place, message, bores, repairs: lowered(context, at, by) }];
}

/** So that the room over the rail ends under what stands there. */
function lowered(context: CarcassContext, at: WardrobeRailAt['at'], by: Micrometres): readonly Repair[] {
  const to = at.value - by;
  if (!ownText(at) || to <= 0) return [];
  return [{ title: say.lower({ at: to }), changes: [setLength(context, at.path, to)], preferred: true }];
}

interface InWay {
  readonly key: string;
  readonly run: Extents;
}

function inWayOf({ carcass, boring }: CarcassContext, { body, rail, sockets }: WardrobeRailAt): readonly InWay[] {
  const room = { ...body, z: { from: body.z.from, to: body.z.to + rail.over } };
  const uprights = sockets.map(({ upright }) => upright.key);
  const panels = carcass.panels
    .filter(({ key, role }) => !uprights.includes(key) && role !== 'door')
    .map((panel) => ({ key: panel.key, run: extentsOf(panel) }));
  const slides = boring.running.flatMap(({ drawer, slides: both }) =>
    both.map((slide) => ({ key: drawer.key, run: slide.body })),
  );
  return [...panels, ...slides].filter(({ run }) => meet(run, room));
}
