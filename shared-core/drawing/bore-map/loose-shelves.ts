import type { Panel } from '../../carcass/model.js';
import { extentsOf, signOf, toPanel, type Extents } from '../../carcass/pose.js';
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
    const run = onUpright(extentsOf(shelf), panel);
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

/** Whether a shelf ends at the face of an upright that is seen. */
function liesAgainst(shelf: Panel, { panel, seen }: PanelView, { carcass }: Drawn): boolean {
  const { x } = extentsOf(shelf);
  const bay = carcass.bays.find((one) => one.from <= x.from && x.to <= one.to);
  if (bay === undefined) return false;
  const towardRight = signOf(panel.pose.t) > 0 === (seen === 'inside');
  return (towardRight ? bay.left : bay.right) === panel.key;
}

/** The ends of a shelf in the frame of an upright, in millimetres; ascending. */
function onUpright({ x, y, z }: Extents, panel: Panel): Readonly<Record<'u' | 'v', readonly [number, number]>> {
  const near = toPanel(panel.pose, { x: x.from, y: y.from, z: z.from });
  const far = toPanel(panel.pose, { x: x.to, y: y.to, z: z.to });
  const run = (axis: 'u' | 'v'): readonly [number, number] => [
    mm(Math.min(near[axis], far[axis])),
    mm(Math.max(near[axis], far[axis])),
  ];
  return { u: run('u'), v: run('v') };
}
