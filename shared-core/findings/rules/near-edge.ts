import { wallsBeside, type Border } from '../../boring/walls.js';
import { half } from '../../length/units.js';
import type { Panel } from '../../carcass/model.js';
import { edgeNamed, endNamed } from '../../carcass/roles.js';
import { inKey, verb } from '../../words/english.js';
import { messages } from '../../words/message.js';
import { CUT_EDGE, type SideName } from '../../words/names.js';
import type { BoresTold } from '../../fittings/fitting.js';
import { theBores } from '../../fittings/purposes.js';
import type { Micrometres } from '../../length/units.js';
import { boresTold } from '../bores.js';
import { backToHabit, causesOf, fittingKeyOf, type FittingKey } from '../causes.js';
import { grouped, onFace, panelOf } from '../lookups.js';
import type { CarcassRule, Found } from '../rule.js';

interface NearEdge extends BoresTold {
  readonly border: SideName;
  readonly key: FittingKey | null;
  readonly fromEdge: Micrometres;
  readonly diameter: Micrometres;
  readonly wall: Micrometres;
  readonly least: Micrometres;
}

export const say = messages('near-edge', {
  beyond: ({ border, key, fromEdge, ...bores }: NearEdge, show) =>
    `${theBores(bores)} ${verb(bores.count, 'stands', 'stand')} ${show.length(fromEdge)} beyond the ${border}, where there is no panel. Move ${verb(bores.count, 'it', 'them')} further in${inKey(key)}.`,
  opens: ({ border, key, fromEdge, diameter, ...bores }: NearEdge, show) =>
    `${theBores(bores)} ${verb(bores.count, 'opens', 'open')} the ${border}: ${verb(bores.count, 'it stands', 'they stand')} ${show.length(fromEdge)} from it and ${verb(bores.count, 'is', 'are')} ${show.length(diameter)} wide. Move ${verb(bores.count, 'it', 'them')} further in${inKey(key)}.`,
  thin: ({ border, key, fromEdge, diameter, wall, least, ...bores }: NearEdge, show) =>
    `${theBores(bores)}, ${show.length(fromEdge)} from the ${border} and ${show.length(diameter)} wide, ${verb(bores.count, 'leaves', 'leave')} ${show.length(wall)} of wood; the minimum is ${show.length(least)} (\`least-wall\`). Move ${verb(bores.count, 'it', 'them')} further in${inKey(key)}.`,
});

export const nearEdge: CarcassRule = {
  name: 'near-edge',
  severity: 'error',
  about: {
    what: 'A bore lies too near an edge of the surface that it enters, or in a corner that is cut off.',
    why: 'Chipboard and plywood split between a bore and an edge that is too close. The shop’s `least-wall` is what must remain beside a bore (3 mm unless the shop says otherwise; common practice, no source). A small part that splits under the head is thrown: hold it down, keep hands away, and follow the machine’s manual.',
    remedy: 'Move the bores further in, or take a thinner fitting or a thicker board.',
    example: 'kind: base\nwidth: 600\nrow-offset: 4',
  },
  check(context) {
    const least = context.shop.habits.leastWall;
    const close = context.boring.bores.flatMap((bore) => {
      const panel = panelOf(context, bore.panel);
      if (panel === undefined) return [];
      const nearest = wallsBeside(panel, bore).reduce((a, b) => (b.wall < a.wall ? b : a));
      if (nearest.wall >= least) return [];
      const axis: 'u' | 'v' =
        onFace(bore) && (nearest.border === 'reference-end' || nearest.border === 'far-end') ? 'v' : 'u';
      const causes = causesOf(context, bore, axis);
      return [{ panel, bore, axis, ...nearest, causes, place: causes[0]?.value.place ?? bore.place }];
    });
    const cause = ({ place, bore, border, wall }: (typeof close)[number]): string =>
      `${place.part} ${place.start} ${bore.purpose} ${bore.diameter} ${border} ${wall}`;
    return grouped(close, cause).map((same): Found => {
      const { panel, bore, axis, border, wall, causes, place } = same[0]!;
      const fromEdge = wall + bore.diameter - half(bore.diameter);
      return {
        place,
        panel: bore.panel,
        severity: wall <= 0 ? 'error' : 'warning',
        message: (fromEdge < 0 ? say.beyond : wall <= 0 ? say.opens : say.thin)({
          ...boresTold(same.map((one) => one.bore)),
          border: borderOf(panel, border),
          key: fittingKeyOf(bore, axis),
          fromEdge: Math.abs(fromEdge),
          diameter: bore.diameter,
          wall,
          least,
        }),
        bores: same.map((one) => one.bore.id),
        repairs: backToHabit(causes),
      };
    });
  },
};

function borderOf(panel: Panel, border: Border): SideName {
  switch (border) {
    case 'front':
    case 'back':
      return edgeNamed(panel, border);
    case 'cut':
      return CUT_EDGE;
    case 'inside':
    case 'outside':
      return `${border} face`;
    case 'reference-end':
    case 'far-end':
      return endNamed(panel, border);
  }
}
