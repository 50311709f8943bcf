import { wallsAround, type Border } from '../../boring/walls.js';
import { half } from '../../length/units.js';
import { boresNamed } from '../bores.js';
import { backToHabit, causesOf } from '../causes.js';
import { distinct, grouped, onFace, panelOf } from '../lookups.js';
import type { CarcassRule, Found } from '../rule.js';
import { listed, show, verb } from '../words.js';

export const nearEdge: CarcassRule = {
  name: 'near-edge',
  severity: 'error',
  about: {
    what: 'A bore lies too near an edge of the surface that it enters.',
    why: 'Chipboard and plywood burst between a bore and an edge. The shop’s `least-wall` is what must stay beside a bore (3 mm unless the shop says otherwise; common practice, no source). A small part that bursts under the head is thrown: hold it down, keep hands away, and follow the machine’s manual.',
    remedy: 'Move the bores further in, or take a thinner fitting or a thicker board.',
    example: 'kind: base\nwidth: 600\nrow-offset: 4',
  },
  check(context) {
    const least = context.shop.habits.leastWall;
    const close = context.boring.bores.flatMap((bore) => {
      const panel = panelOf(context, bore.panel);
      if (panel === undefined) return [];
      const nearest = wallsAround(panel, bore).beside.reduce((a, b) => (b.wall < a.wall ? b : a));
      if (nearest.wall >= least) return [];
      const axis = onFace(bore) && nearest.border !== 'front' && nearest.border !== 'back' ? 'v' : 'u';
      const causes = causesOf(context, bore, axis);
      return [{ bore, ...nearest, causes, place: causes[0]?.value.place ?? bore.place }];
    });
    const cause = ({ place, bore, border, wall }: (typeof close)[number]): string =>
      `${place.part} ${place.start} ${bore.purpose} ${bore.diameter} ${border} ${wall}`;
    return grouped(close, cause).map((same): Found => {
      const { bore, border, wall, causes, place } = same[0]!;
      const fromEdge = wall + bore.diameter - half(bore.diameter);
      const away =
        fromEdge < 0
          ? `${show(context, -fromEdge)} beyond the ${BORDERS[border]}`
          : `${show(context, fromEdge)} from the ${BORDERS[border]}`;
      return {
        place,
        panel: bore.panel,
        severity: wall <= 0 ? 'error' : 'warning',
        message:
          `${boresNamed(same.map((one) => one.bore))} in ${listed(distinct(same.map((one) => one.bore.panel)))} ${verb(same.length, 'stands', 'stand')} ` +
          `${away} and ${verb(same.length, 'is', 'are')} ${show(context, bore.diameter)} wide: ` +
          (wall <= 0
            ? fromEdge < 0
              ? 'the panel does not reach so far'
              : 'the edge is opened'
            : `${show(context, wall)} of wood stays, less than ${show(context, least)}`) +
          '. Move them further in.',
        bores: same.map((one) => one.bore.id),
        repairs: backToHabit(causes),
      };
    });
  },
};

const BORDERS: Readonly<Record<Border, string>> = {
  front: 'front edge',
  back: 'back edge',
  'reference-end': 'reference end',
  'far-end': 'far end',
  outside: 'outside face',
  inside: 'inside face',
};
