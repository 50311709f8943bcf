import { tell } from '../../words/message.js';
import { say } from './messages.js';
import { isFace } from '../../boring/surface.js';
import type { Panel } from '../../carcass/model.js';
import type { EdgeName } from '../../job/model.js';
import { boxOf, grow } from '../scene/boxes.js';
import type { Drawn } from '../drawn.js';
import { aboutBore } from '../about-bore.js';
import type { Point } from '../scene/scene.js';
import { mm } from '../scene/scale.js';

import type { SceneHole } from './scene.js';
import type { Stage } from './stage.js';
import type { StrokeHole } from './strokes.js';

/** The panel as it lies, its banded edges marked inside the outline, where no fence hides the mark. */
export function drawPanelOnTable(stage: Stage, panel: Panel): void {
  stage.pen.rectangle({ key: 'panel', class: 'panel' }, 'outline', stage.panel, 'board');
  if (panel.corner !== undefined) {
    // What is sawn off once all is bored.
    const { end, u, v } = panel.corner;
    const at = (along: number): number => (end === 'reference-end' ? along : panel.length - along);
    stage.pen.line({ key: 'cut', class: 'cut-off' }, 'phantom', stage.onPanel(0, at(v)), stage.onPanel(u, at(0)));
  }
  const off = stage.sign(1);
  for (const edge of ['front', 'back', 'reference-end', 'far-end'] as const) {
    if (panel.bands[edge] === null) continue;
    const [a, b] = edgeLine(stage, panel, edge, off);
    stage.pen.line({ key: `band:${edge}`, class: 'band' }, 'band', a, b);
    stage.pen.take(boxOf([a, b], stage.p(0.8)));
  }
}

/** An edge of the panel on the page, moved inward. */
export function edgeLine(stage: Stage, panel: Panel, edge: EdgeName, inward: number): readonly [Point, Point] {
  const { length, width } = panel;
  const [a, b]: readonly [Point, Point] = {
    front: [stage.onPanel(0, 0), stage.onPanel(0, length)] as const,
    back: [stage.onPanel(width, 0), stage.onPanel(width, length)] as const,
    'reference-end': [stage.onPanel(0, 0), stage.onPanel(width, 0)] as const,
    'far-end': [stage.onPanel(0, length), stage.onPanel(width, length)] as const,
  }[edge];
  const { x, y, width: wide, height: high } = stage.panel;
  const middle = { x: x + wide / 2, y: y + high / 2 };
  const toward = (from: number, to: number): number => from + Math.sign(to - from) * inward;
  return Math.abs(a.y - b.y) < Math.abs(a.x - b.x)
    ? [
        { x: a.x, y: toward(a.y, middle.y) },
        { x: b.x, y: toward(b.y, middle.y) },
      ]
    : [
        { x: toward(a.x, middle.x), y: a.y },
        { x: toward(b.x, middle.x), y: b.y },
      ];
}

const holeKeyOf = ({ bore }: StrokeHole): string => `hole:${bore.id}`;

/** Every bore of the panel: made, made in this stroke, still to come; dashed where it is not seen from above. */
export function drawHoles(stage: Stage, panel: Panel): void {
  const { pen, acted } = stage;
  for (const hole of acted.holes) {
    const { bore, state } = hole;
    const what = { key: holeKeyOf(hole), class: `hole-${state}` } as const;
    const r = mm(bore.diameter) / 2;
    if (isFace(bore.face)) {
      const [tx, ty] = acted.place(bore.u, bore.v, 0);
      if (stage.inBreak(tx, ty)) continue;
      const { x, y } = stage.at(tx, ty);
      const hidden = !bore.through && bore.face !== acted.layout.up;
      pen.add({ ...what, kind: 'circle', panel: pen.panel, line: hidden ? 'hidden' : 'fine', cx: x, cy: y, r });
      pen.takeSolid(grow({ x: x - r, y: y - r, width: 2 * r, height: 2 * r }, stage.p(0.3)));
      continue;
    }
    const [mouth, floor] = bore.face === 'reference-end' ? [0, bore.depth] : [panel.length, panel.length - bore.depth];
    const half = bore.diameter / 2;
    const points = [
      stage.onPanel(bore.u - half, mouth),
      stage.onPanel(bore.u - half, floor),
      stage.onPanel(bore.u + half, floor),
      stage.onPanel(bore.u + half, mouth),
    ];
    pen.path(what, state === 'now' ? 'fine' : 'hidden', points, 'none', false);
    pen.takeSolid(boxOf(points, stage.p(0.3)));
  }
}

/** Every hole of the panel in words, with how far it is. */
export function aboutHoles(stage: Stage, drawn: Drawn, panel: Panel): SceneHole[] {
  const sayOf = { made: say.holeMade, now: say.holeNow, 'to-come': say.holeToCome } as const;
  return stage.acted.holes.map((hole) => ({
    key: holeKeyOf(hole),
    bore: hole.bore.id,
    state: hole.state,
    about: tell(
      sayOf[hole.state]({ bore: aboutBore(drawn.carcass, drawn.boring, panel, hole.bore, drawn.reader) }),
      drawn.reader,
    ),
  }));
}
