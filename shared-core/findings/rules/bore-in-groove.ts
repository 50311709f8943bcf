import { grooveCollisions } from '../../boring/collisions.js';
import { edgeNamed, isInDrawer } from '../../carcass/roles.js';
import type { BoresTold } from '../../fittings/fitting.js';
import { theBores } from '../../fittings/purposes.js';
import type { Micrometres } from '../../length/units.js';
import type { Span } from '../../schema/schema.js';
import { inKey, verb } from '../../words/english.js';
import { messages } from '../../words/message.js';
import type { LongEdge } from '../../words/names.js';
import { boresTold } from '../bores.js';
import { backToHabit, causesOf, fittingKeyOf, type FittingKey } from '../causes.js';
import { grouped, panelOf } from '../lookups.js';
import type { CarcassRule, Found } from '../rule.js';

interface InGroove extends BoresTold {
  readonly at: Micrometres;
  /** What that is counted from. */
  readonly edge: LongEdge;
  /** What the groove holds. */
  readonly holds: 'back' | 'drawer bottom';
  readonly key: FittingKey | null;
  readonly groove: Span;
  readonly wall: Micrometres;
  readonly least: Micrometres;
}

export const say = messages('bore-in-groove', {
  meet: ({ at, edge, holds, key, groove, ...bores }: InGroove, show) =>
    `${theBores(bores)}, ${show.length(at)} from the ${edge}, ${verb(bores.count, 'meets', 'meet')} the groove of the ${holds}, which runs from ${show.span(groove)}. Move the ${verb(bores.count, 'bore', 'bores')} toward the ${edge}${inKey(key)}.`,
  thin: ({ at, edge, holds, key, groove, wall, least, ...bores }: InGroove, show) =>
    `${theBores(bores)}, ${show.length(at)} from the ${edge}, ${verb(bores.count, 'leaves', 'leave')} ${show.length(wall)} of wood before the groove of the ${holds}, which runs from ${show.span(groove)}; the minimum is ${show.length(least)} (\`least-wall\`). Move the ${verb(bores.count, 'bore', 'bores')} toward the ${edge}${inKey(key)}.`,
  grooveHere: () => 'The place of the groove is set here.',
});

export const boreInGroove: CarcassRule = {
  name: 'bore-in-groove',
  severity: 'error',
  about: {
    what: 'A bore breaks into the groove or rebate of the back or into that of a drawer’s bottom, or leaves too little wood beside it.',
    why: 'The back or the bottom does not go in over a dowel, and a pin in a hole that opens into the groove has no hold. The shop’s `least-wall` must remain between the two (3 mm unless the shop says otherwise; common practice, no source).',
    remedy:
      'Bring the bores further to the front, or set the groove further back (`inset`). In the side of a drawer, raise the `box-offset` of the slide.',
    example: 'kind: base\nwidth: 600\nrear-row: 542',
  },
  check(context) {
    const least = context.shop.habits.leastWall;
    const grooves = grooveCollisions(context.carcass, context.boring, least);
    const withCause = grooves.map((one) => {
      const causes = causesOf(context, one.bore, 'u');
      return { ...one, causes, place: causes[0]?.value.place ?? one.bore.place };
    });
    return grouped(withCause, ({ place, bore }) => `${place.part} ${place.start} ${bore.purpose}`).map(
      (same): Found => {
        const { bore, groove, wall, causes, place } = same.reduce((a, b) => (b.wall < a.wall ? b : a));
        const panel = panelOf(context, bore.panel)!;
        const inDrawer = isInDrawer(panel);
        const { inset, groove: depth } = context.spec.back;
        return {
          place,
          panel: bore.panel,
          severity: wall === 0 ? 'error' : 'warning',
          message: (wall === 0 ? say.meet : say.thin)({
            ...boresTold(same.map((one) => one.bore)),
            at: bore.u,
            edge: edgeNamed(panel, 'front'),
            holds: inDrawer ? 'drawer bottom' : 'back',
            key: fittingKeyOf(bore, 'u'),
            groove: { min: groove.from, max: groove.to },
            wall,
            least,
          }),
          related: (inDrawer ? [] : [inset, depth])
            .filter((value) => value.written)
            .slice(0, 1)
            .map((value) => ({ place: value.place, message: say.grooveHere() })),
          bores: same.map((one) => one.bore.id),
          repairs: backToHabit(causes),
        };
      },
    );
  },
};
