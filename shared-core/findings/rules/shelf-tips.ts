import type { Row } from '../../boring/model.js';
import type { Panel } from '../../carcass/model.js';
import { extentsOf } from '../../carcass/pose.js';
import type { Place } from '../../document/place.js';
import type { ShelfSpec } from '../../carcass/spec.js';
import type { Micrometres } from '../../length/units.js';
import { half } from '../../length/units.js';
import { backToHabit } from '../causes.js';
import { besides, boresOfGroups, distinct, grouped, panelsOfShelf } from '../lookups.js';
import type { CarcassContext, CarcassRule, Found } from '../rule.js';
import { listed, verb } from '../../words/english.js';
import { messages } from '../../words/message.js';

interface Tips {
  readonly shelves: readonly string[];
  readonly deep: Micrometres;
  readonly apart: Micrometres;
  readonly front: Micrometres;
  readonly rear: Micrometres;
}

export const say = messages('shelf-tips', {
  tips: ({ shelves, deep, apart, front, rear }: Tips, show) =>
    `${listed(shelves)} ${verb(shelves.length, 'tips', 'tip')}: the pins, ${show.length(front)} and ${show.length(rear)} from the front edge, stand ${show.length(apart)} apart, and the minimum is half the depth of ${show.length(deep)}. Move the rear row toward the back (\`rear-row\`), or make the shelf a fixed one.`,
});

export const shelfTips: CarcassRule = {
  name: 'shelf-tips',
  severity: 'warning',
  about: {
    what: 'The front and rear pins of a loose shelf stand too close together for its depth.',
    why: 'A loose shelf only lies on its pins. Where they stand less than half of its depth apart, so much of it overhangs at the front or the back that a load there tips it, and what is on it slides off (half: common practice, no source).',
    remedy:
      'Bring the rear row further back (`rear-row`), make the shelf less deep (`setback`), or make it a fixed one.',
    example: 'kind: base\nwidth: 600\nrear-row: 197\nloose-shelves: 1',
  },
  check(context) {
    const tipping = context.spec.looseShelves.flatMap((shelf) =>
      panelsOfShelf(context, shelf).flatMap((panel) => {
        const pins = closestPins(context, panel);
        return pins === null ? [] : [{ shelf, panel, ...pins }];
      }),
    );
    return grouped(tipping, ({ shelf, apart, deep }) => {
      const { part, start } = placeOf(context, shelf);
      return `${part} ${start} ${apart} ${deep}`;
    }).map((same) => found(context, same));
  },
};

interface Tipping {
  readonly shelf: ShelfSpec;
  readonly panel: Panel;
  readonly rows: readonly Row[];
  readonly apart: Micrometres;
  readonly deep: Micrometres;
}

/** The side on which the shelf's pins stand closest together, where that is too close; null where it lies well on both. */
function closestPins(context: CarcassContext, panel: Panel): Pick<Tipping, 'rows' | 'apart' | 'deep'> | null {
  const { from, to } = extentsOf(panel).y;
  const deep = to - from;
  const sides = besides(context, panel).flatMap(({ rows }) => {
    const front = rows.find(({ line }) => line === 'front');
    const rear = rows.find(({ line }) => line === 'rear');
    // Where a row is missing another rule says so.
    return front && rear ? [{ rows: [front, rear], apart: rear.u - front.u, deep }] : [];
  });
  const tight = sides.filter(({ apart }) => apart < half(deep));
  return tight.length === 0 ? null : tight.reduce((a, b) => (b.apart < a.apart ? b : a));
}

function placeOf({ spec }: CarcassContext, shelf: ShelfSpec): Place {
  return spec.rearRow?.written ? spec.rearRow.place : shelf.at.place;
}

function found(context: CarcassContext, same: readonly Tipping[]): Found {
  const { shelf, panel, rows, apart, deep } = same[0]!;
  const shelves = distinct(same.map((one) => one.panel.key));
  const [front, rear] = rows;
  const { rearRow } = context.spec;
  return {
    place: placeOf(context, shelf),
    panel: panel.key,
    message: say.tips({ shelves, deep, apart, front: front!.u, rear: rear!.u }),
    bores: boresOfGroups(context, new Set(same.flatMap((one) => one.rows.map(({ id }) => id)))),
    repairs: rearRow === null ? [] : backToHabit([{ value: rearRow, what: 'rear-row' }]),
  };
}
