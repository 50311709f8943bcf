import { grooveCollisions } from '../../boring/collisions.js';
import { boresNamed } from '../bores.js';
import { backToHabit, causesOf } from '../causes.js';
import { distinct, grouped } from '../lookups.js';
import type { CarcassRule, Found } from '../rule.js';
import { listed, show, verb } from '../words.js';

export const boreInGroove: CarcassRule = {
  name: 'bore-in-groove',
  severity: 'error',
  about: {
    what: 'A bore breaks into the groove or rebate of the back, or leaves too little wood beside it.',
    why: 'The back does not go in over a dowel, and a pin in a hole that opens into the groove has no hold. The shop’s `least-wall` must stay between the two (3 mm unless the shop says otherwise; common practice, no source).',
    remedy: 'Bring the bores further to the front, or set the groove further back (`inset`).',
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
        const { inset, groove: depth } = context.spec.back;
        return {
          place,
          panel: bore.panel,
          severity: wall === 0 ? 'error' : 'warning',
          message:
            `${boresNamed(same.map((one) => one.bore))} in ${listed(distinct(same.map((one) => one.bore.panel)))} ${verb(same.length, 'stands', 'stand')} ` +
            `${show(context, bore.u)} from the front edge and ${verb(same.length, 'is', 'are')} ${show(context, bore.diameter)} wide; the groove of the back runs from ` +
            `${show(context, groove.from)} to ${show(context, groove.to)}: ` +
            (wall === 0
              ? 'they meet'
              : `${show(context, wall)} of wood stays between, less than ${show(context, least)}`) +
            '. Bring the bores further to the front.',
          related: [inset, depth]
            .filter((value) => value.written)
            .slice(0, 1)
            .map((value) => ({ place: value.place, message: 'This is what puts the groove there.' })),
          bores: same.map((one) => one.bore.id),
          repairs: backToHabit(causes),
        };
      },
    );
  },
};
