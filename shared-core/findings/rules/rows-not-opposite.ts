import type { Row } from '../../boring/model.js';
import { chosen } from '../../carcass/choices.js';
import type { Panel, Point3 } from '../../carcass/model.js';
import { setsGrid } from '../../carcass/roles.js';
import { extentsOf, toCarcass, UNIT } from '../../carcass/pose.js';
import { messages } from '../../words/message.js';
import type { CarcassContext, QuickRule, Found } from '../rule.js';

export const say = messages('rows-not-opposite', {
  apart: ({ left, right }: { readonly left: string; readonly right: string }) =>
    `The rows of ${left} and ${right} do not stand opposite each other, so a shelf between them would not lie level. The fault is Borewright’s, not yours: do not bore these panels.`,
});

export const rowsNotOpposite: QuickRule = {
  name: 'rows-not-opposite',
  severity: 'error',
  about: {
    what: 'The rows of two panels that face each other do not stand opposite, though nobody asked for that. This is a fault of Borewright, not of the job.',
    why: 'Where the holes of rows stand is worked out once more from how the panels stand, hole by hole: a loose shelf lies level only on pins at one height. If you ever see this, do not bore the panels.',
    remedy: 'Report it with the job file and the shop file.',
    example: '# No job shows this: it must never be seen.',
  },
  check(context) {
    const { carcass, boring, spec } = context;
    const panels = new Map(carcass.panels.map((panel) => [panel.key, panel]));
    const lines = boring.rows
      .filter(({ panel }) => !isChosen(context, panel))
      .map((row) => ({ row, ...standing(panels.get(row.panel)!, row) }));
    return lines.flatMap((one) => {
      if (one.looks !== 1) return [];
      const other = lines
        .filter(({ looks, x, row }) => looks === -1 && x > one.x && row.line === one.row.line)
        .toSorted((a, b) => a.x - b.x)[0];
      if (other === undefined || isParted(carcass.panels, one.x, other.x)) return [];
      if (areOpposite(one.holes, other.holes)) return [];
      const found: Found = {
        place: spec.name.place,
        panel: one.row.panel,
        message: say.apart({ left: one.row.panel, right: other.row.panel }),
      };
      return [found];
    });
  },
};

/**
 * What an owner sets on one panel alone is his to answer for; other findings speak of its shelves. A divider keeps to the grid of
 * one side, so it goes with what is set there.
 */
function isChosen({ spec, carcass }: CarcassContext, key: string): boolean {
  const panel = carcass.panels.find((one) => one.key === key);
  const setBy = panel === undefined || setsGrid(panel) ? [key] : [key, spec.leading];
  return chosen(spec, key, 'rows') !== undefined || setBy.some((one) => chosen(spec, one, 'rowOffset') !== undefined);
}

/** Where the holes of a row open in the carcass frame, and which way along x their face looks. */
function standing({ pose, thickness }: Panel, row: Row): { looks: number; x: number; holes: readonly Point3[] } {
  const t = row.face === 'inside' ? thickness : 0;
  const holes = Array.from({ length: row.count }, (_, k) =>
    toCarcass(pose, { u: row.u, v: row.offset + k * row.pitch, t }),
  );
  return { looks: UNIT[pose.t].x * (row.face === 'inside' ? 1 : -1), x: holes[0]!.x, holes };
}

/** Another upright stands between. */
function isParted(panels: readonly Panel[], from: number, to: number): boolean {
  return panels.some((panel) => {
    const { x, z } = extentsOf(panel);
    return x.from >= from && x.to <= to && x.to - x.from < z.to - z.from && UNIT[panel.pose.t].x !== 0;
  });
}

/** At one depth, and at the same heights as far up as both go. */
function areOpposite(a: readonly Point3[], b: readonly Point3[]): boolean {
  const heights = (points: readonly Point3[]): readonly number[] => points.map(({ z }) => z);
  const from = Math.max(Math.min(...heights(a)), Math.min(...heights(b)));
  const to = Math.min(Math.max(...heights(a)), Math.max(...heights(b)));
  const within = (points: readonly Point3[]): string =>
    points
      .filter(({ z }) => z >= from && z <= to)
      .map(({ y, z }) => `${y} ${z}`)
      .join('\n');
  return within(a) === within(b);
}
