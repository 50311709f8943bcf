import { boreCollisions, type BoreCollision } from '../../boring/collisions.js';
import type { Bore } from '../../boring/model.js';
import type { Place } from '../../document/place.js';
import { backToHabit, causesOf } from '../causes.js';
import { boreAt, boreCalled } from '../bores.js';
import { distinct, grouped } from '../lookups.js';
import type { CarcassContext, CarcassRule, Found } from '../rule.js';
import { listed, show } from '../words.js';

export const boresCollide: CarcassRule = {
  name: 'bores-collide',
  severity: 'error',
  about: {
    what: 'Two bores in one panel meet, or leave too little wood between them.',
    why: 'A dowel that breaks into a row hole has no glue where it matters, and a bit that runs into a hole wanders. Bores are taken as cylinders in the panel, whatever faces they enter; the shop’s `least-wall` is what must stay between two (3 mm unless the shop says otherwise; common practice, no source).',
    remedy:
      'Move one of the two: the rows (`row-setback`, `row-offset`, `rear-row`), the places of the dowels, or the shelf.',
    example: 'kind: base\nwidth: 600\ndowels: [37, 181, 485]   # the first one in the line of the rows',
  },
  check(context) {
    const bores = boreCollisions(context.carcass, context.boring, context.shop.habits.leastWall);
    return grouped(bores, (one) => causeKey(context, one)).map((same): Found => {
      const { bores: pair, panel, wall } = worst(same);
      const [first, second] = blamed(context, pair);
      const causes = pair.flatMap((bore) => [...causesOf(context, bore, 'u'), ...causesOf(context, bore, 'v')]);
      const more = same.length - 1;
      return {
        place: first.place,
        panel,
        severity: same.some((one) => one.wall === 0) ? 'error' : 'warning',
        message:
          `In ${listed(distinct(same.map((one) => one.panel)))} ${boreCalled(context, first.bore)} (${boreAt(context, first.bore)}) and ` +
          `${boreCalled(context, second.bore)} (${boreAt(context, second.bore)}) ` +
          (wall === 0
            ? 'meet'
            : `leave ${show(context, wall)} of wood between them, less than ${show(context, context.shop.habits.leastWall)}`) +
          (more === 0 ? '' : `, and ${more} more ${more === 1 ? 'pair does' : 'pairs do'} for the same reason`) +
          '. Move one of the two.',
        related: samePlace(first.place, second.place)
          ? []
          : [
              {
                place: second.place,
                message: `This is what puts ${boreCalled(context, second.bore)} ${boreAt(context, second.bore)}.`,
              },
            ],
        bores: distinct(same.flatMap((one) => one.bores.map((bore) => bore.id))),
        repairs: backToHabit(
          causes.filter((cause, index) => causes.findIndex((other) => other.value === cause.value) === index),
        ),
      };
    });
  },
};

const samePlace = (a: Place, b: Place): boolean => a.part === b.part && a.start === b.start;

function worst(same: readonly BoreCollision[]): BoreCollision {
  return same.reduce((least, one) => (one.wall < least.wall ? one : least));
}

interface Blamed {
  readonly bore: Bore;
  readonly place: Place;
}

/** The two bores, first the one whose place the job writes most plainly. */
function blamed(context: CarcassContext, [a, b]: BoreCollision['bores']): readonly [Blamed, Blamed] {
  const [first, second] = [a, b].map((bore) => ({ bore, place: placeOf(context, bore) })) as [Blamed, Blamed];
  return samePlace(first.place, context.spec.name.place) ? [second, first] : [first, second];
}

function placeOf(context: CarcassContext, bore: Bore): Place {
  if (bore.purpose !== 'row') return bore.place;
  return [...causesOf(context, bore, 'u'), ...causesOf(context, bore, 'v')][0]?.value.place ?? bore.place;
}

function causeKey(context: CarcassContext, { bores }: BoreCollision): string {
  return blamed(context, bores)
    .map(({ bore, place }) => `${place.part} ${place.start} ${bore.purpose}`)
    .join(' ');
}
