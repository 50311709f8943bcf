import type { Panel } from '../../carcass/model.js';
import { footprintOf } from '../../carcass/footprint.js';
import { extentsOf, signOf, toPanel } from '../../carcass/pose.js';
import type { Drawn, Sources } from '../drawn.js';
import type { Pen } from '../scene/pen.js';
import { mm } from '../scene/scale.js';
import type { SceneShelf } from '../scene/scene.js';
import { tell } from '../../words/message.js';
import { say } from './messages.js';
import type { PanelView } from './panel-view.js';

/**
 * Where the loose shelves stand at an upright, end on, by the line that ISO 128-2 has for what may be moved (05.1). They lie on
 * the face that is seen, and may stand at any hole of its rows.
 */
export function drawLooseShelves(pen: Pen, view: PanelView, drawn: Drawn, sources: Sources): readonly SceneShelf[] {
  const { panel } = view;
  const row = drawn.boring.rows.find((one) => one.panel === panel.key);
  if (row === undefined || row.pitch <= 0) return [];
  const beside = drawn.carcass.panels.filter((one) => one.role === 'loose-shelf' && liesAgainst(one, view, drawn));
  return beside.map((shelf): SceneShelf => {
    const run = onUpright(shelf, panel);
    const key = `shelf:${shelf.key}`;
    const points = [
      view.at(run.u[0], run.v[0]),
      view.at(run.u[0], run.v[1]),
      view.at(run.u[1], run.v[1]),
      view.at(run.u[1], run.v[0]),
    ];
    pen.path({ key, class: 'loose-shelf', source: sources.key(shelf.place) }, 'phantom', points, 'none');
    // It lies on its pins, so the hole of these is the last one below it.
    const hole = Math.min(Math.max(Math.floor((run.v[0] * 1000 - row.offset) / row.pitch), 0), row.count - 1);
    const [a, b] = [view.at(0, 0), view.at(0, mm(row.pitch))];
    return {
      key,
      panel: shelf.key,
      step: { x: b.x - a.x, y: b.y - a.y },
      hole: hole + 1,
      holes: row.count,
      about: tell(say.shelfOnHole({ shelf: shelf.key, hole: hole + 1, of: row.count }), drawn.reader),
    };
  });
}

/** Whether a shelf stands against the face of an upright that is seen. */
function liesAgainst(shelf: Panel, { panel, seen }: PanelView, { carcass }: Drawn): boolean {
  if (panel.role === 'corner-back') return seen === 'inside';
  const { x } = extentsOf(shelf);
  const bay = carcass.bays.find((one) => one.from <= x.from && x.to <= one.to);
  if (bay === undefined) return false;
  if (panel.role !== 'divider') return seen === 'inside' && (bay.left === panel.key || bay.right === panel.key);
  const towardRight = signOf(panel.pose.t) > 0 === (seen === 'inside');
  return (towardRight ? bay.left : bay.right) === panel.key;
}

/** The edge of a shelf that stands against an upright, end on in the frame of that, in millimetres; ascending. */
function onUpright(shelf: Panel, panel: Panel): Readonly<Record<'u' | 'v', readonly [number, number]>> {
  const { z } = extentsOf(shelf);
  const corners = footprintOf(shelf).map((spot) => toPanel(panel.pose, { ...spot, z: z.from }));
  const off = ({ t }: { readonly t: number }): number => Math.abs(t - panel.thickness / 2);
  const nearest = Math.min(...corners.map(off));
  const us = corners.filter((corner) => off(corner) <= nearest).map(({ u }) => u);
  const low = corners[0]!.v;
  return {
    u: [mm(Math.min(...us)), mm(Math.max(...us))],
    v: [mm(low), mm(low + z.to - z.from)],
  };
}
