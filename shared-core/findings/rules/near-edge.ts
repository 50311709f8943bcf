import type { Bore } from '../../boring/model.js';
import { chosen } from '../../carcass/choices.js';
import type { Panel } from '../../carcass/model.js';
import type { Located } from '../../document/place.js';
import type { Micrometres } from '../../length/units.js';
import { boresNamed } from '../bores.js';
import { ownText, remove } from '../changes.js';
import { grouped, isRow, onFace, panelOf } from '../lookups.js';
import { offsetOf } from '../row-grid.js';
import type { CarcassContext, CarcassRule, Found } from '../rule.js';
import { show } from '../words.js';

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
      const edge = nearestEdge(panel, bore);
      return edge.wall < least ? [{ bore, panel, ...edge }] : [];
    });
    return grouped(close, (one) => `${one.panel.key} ${one.bore.group} ${one.edge} ${one.wall}`).map((same): Found => {
      const { bore, panel, edge, wall } = same[0]!;
      const value = blame(context, bore, edge);
      return {
        place: value?.place ?? bore.place,
        panel: panel.key,
        severity: wall < 0 ? 'error' : 'warning',
        message:
          `${boresNamed(same.map((one) => one.bore))} in ${panel.key} ${same.length === 1 ? 'lies' : 'lie'} ` +
          `${show(context, wall + bore.diameter / 2)} from the ${edge}: with a diameter of ${show(context, bore.diameter)} ` +
          (wall < 0
            ? `the edge is opened`
            : `${show(context, wall)} of wall stay, less than ${show(context, least)}`) +
          '. Move them further in.',
        bores: same.map((one) => one.bore.id),
        repairs:
          value !== undefined && ownText(value)
            ? [{ title: 'Leave this to the shop’s habit', changes: [remove(value.path)], preferred: false }]
            : [],
      };
    });
  },
};

/** The edge of the surface that a bore comes nearest to, and the material between. */
function nearestEdge(panel: Panel, bore: Bore): { readonly edge: string; readonly wall: Micrometres } {
  const across = onFace(bore) ? panel.length : panel.thickness;
  const [low, high] = onFace(bore) ? ['reference end', 'far end'] : ['outside face', 'inside face'];
  const edges = [
    { edge: 'front edge', at: bore.u },
    { edge: 'back edge', at: panel.width - bore.u },
    { edge: low!, at: bore.v },
    { edge: high!, at: across - bore.v },
  ];
  const nearest = edges.reduce((least, one) => (one.at < least.at ? one : least));
  return { edge: nearest.edge, wall: nearest.at - bore.diameter / 2 };
}

/** The written value that puts the bore there, where there is one. */
function blame(context: CarcassContext, bore: Bore, edge: string): Located<unknown> | undefined {
  const { spec } = context;
  const candidates: readonly (Located<unknown> | null | undefined)[] = isRow(bore)
    ? edge === 'front edge' || edge === 'back edge'
      ? [bore.group.endsWith('rear') ? spec.rearRow : null, spec.rowSetback]
      : [offsetOf(context, bore.panel)]
    : [chosen(spec, bore.panel, 'dowels'), spec.dowels];
  return candidates.find((value) => value?.written === true) ?? undefined;
}
