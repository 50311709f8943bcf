import { boreCollisions, type BoreCollision } from '../../boring/collisions.js';
import type { Bore } from '../../boring/model.js';
import type { Place } from '../../document/place.js';
import { isRow } from '../../fittings/purposes.js';
import type { BorePurpose } from '../../fittings/names.js';
import { backToHabit, causesOf } from '../causes.js';
import type { Micrometres } from '../../length/units.js';
import { counted, listed, quoted, sentence } from '../../words/english.js';
import { messages, type Message } from '../../words/message.js';
import type { Show } from '../../words/show.js';
import { boreAt, boreTold, theBore, type BoreTold } from '../bores.js';
import { distinct, grouped } from '../lookups.js';
import type { CarcassContext, CarcassRule, Found } from '../rule.js';

interface Collision {
  readonly panels: readonly string[];
  readonly first: BoreTold;
  readonly second: BoreTold;
  /** Pairs that do the same for the same reason. */
  readonly more: number;
  readonly wall: Micrometres;
  readonly least: Micrometres;
}

/** A screw at a hole of a row that it would go into, were it not for one figure of its fitting. */
interface NotTaken {
  readonly panels: readonly string[];
  readonly bore: BoreTold;
  readonly hole: BoreTold;
  readonly more: number;
  readonly differs: 'diameter' | 'depth';
  readonly own: Micrometres;
  readonly ofRow: Micrometres;
  readonly key: string;
  readonly fitting: string;
}

export const say = messages('bores-collide', {
  meet: ({ panels, first, second, more }: Collision, show) =>
    [
      `${sentence(placed(first, show))} meets ${placed(second, show)} in ${listed(panels)}.`,
      ...alike(more),
      'Move one of the two.',
    ].join(' '),
  notTaken: ({ panels, bore, hole, more, differs, own, ofRow, key, fitting }: NotTaken, show) =>
    [
      `${sentence(theBore(bore))} stands where ${placed(hole, show)} does in ${listed(panels)}, but is ${show.length(own)} ${differs === 'depth' ? 'deep' : 'wide'} and the hole ${show.length(ofRow)}.`,
      ...alike(more),
      differs === 'depth'
        ? `Make \`${key}\` of ${quoted(fitting)} no more than ${show.length(ofRow)}, so that its screws go into the holes of the row, or move one of the two.`
        : `Make \`${key}\` of ${quoted(fitting)} ${show.length(ofRow)}, so that its screws go into the holes of the row, or move one of the two.`,
    ].join(' '),
  thin: ({ panels, first, second, more, wall, least }: Collision, show) =>
    [
      `${sentence(placed(first, show))} and ${placed(second, show)} leave ${show.length(wall)} of wood between them in ${listed(panels)}; the minimum is ${show.length(least)} (\`least-wall\`).`,
      ...alike(more),
      'Move one of the two.',
    ].join(' '),
  setHere: (bore: BoreTold, show) => `${sentence(theBore(bore))} stands ${boreAt(bore, show)} because of this.`,
});

const placed = (bore: BoreTold, show: Show): string => `${theBore(bore)} (${boreAt(bore, show)})`;

const alike = (more: number): readonly string[] =>
  more === 0 ? [] : [`The same is true of ${counted(more, 'more pair')}, for the same reason.`];

export const boresCollide: CarcassRule = {
  name: 'bores-collide',
  severity: 'error',
  about: {
    what: 'Two bores in one panel meet, or leave too little wood between them.',
    why: 'A dowel that breaks into a row hole has no glue where it matters, and a bit that runs into a hole wanders. Bores are taken as cylinders in the panel, whatever faces they enter; the shop’s `least-wall` is what must remain between two (3 mm unless the shop says otherwise; common practice, no source).',
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
      return {
        place: first.place,
        panel,
        severity: same.some((one) => one.wall === 0) ? 'error' : 'warning',
        message:
          notTaken(context, same, first.bore, second.bore) ??
          (wall === 0 ? say.meet : say.thin)({
            panels: distinct(same.map((one) => one.panel)),
            first: boreTold(context, first.bore),
            second: boreTold(context, second.bore),
            more: same.length - 1,
            wall,
            least: context.shop.habits.leastWall,
          }),
        related: samePlace(first.place, second.place)
          ? []
          : [
              {
                place: second.place,
                message: say.setHere(boreTold(context, second.bore)),
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

/** The keys of the fittings whose screws go into holes of rows. */
const SCREW_KEYS: Partial<Readonly<Record<BorePurpose, Readonly<Record<'diameter' | 'depth', string>>>>> = {
  slide: { diameter: 'diameter', depth: 'depth' },
  angle: { diameter: 'diameter', depth: 'depth' },
  plate: { diameter: 'plate-diameter', depth: 'plate-depth' },
};

/** The message for a screw that stands at a hole of a row and does not go into it; null for other pairs. */
function notTaken(
  context: CarcassContext,
  same: readonly BoreCollision[],
  ...pair: readonly [Bore, Bore]
): Message | null {
  const [hole, bore] = isRow(pair[0]) ? pair : [pair[1], pair[0]];
  const keys = SCREW_KEYS[bore.purpose];
  if (!isRow(hole) || keys === undefined || bore.fitting === null) return null;
  if (hole.u !== bore.u || hole.v !== bore.v || hole.face !== bore.face) return null;
  const differs = hole.diameter === bore.diameter ? 'depth' : 'diameter';
  return say.notTaken({
    panels: distinct(same.map((one) => one.panel)),
    bore: boreTold(context, bore),
    hole: boreTold(context, hole),
    more: same.length - 1,
    differs,
    own: bore[differs],
    ofRow: hole[differs],
    key: keys[differs],
    fitting: bore.fitting,
  });
}

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
  if (!isRow(bore)) return bore.place;
  return [...causesOf(context, bore, 'u'), ...causesOf(context, bore, 'v')][0]?.value.place ?? bore.place;
}

function causeKey(context: CarcassContext, { bores }: BoreCollision): string {
  return blamed(context, bores)
    .map(({ bore, place }) => `${place.part} ${place.start} ${bore.purpose}`)
    .join(' ');
}
