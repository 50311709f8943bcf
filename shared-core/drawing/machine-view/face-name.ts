import type { Panel } from '../../carcass/model.js';
import { contains, overlap } from '../scene/boxes.js';
import { textBox, textWidth } from '../scene/lettering.js';
import { wider, WIDER } from '../scene/wider.js';
import type { Box, Point } from '../scene/scene.js';
import { say } from '../messages.js';
import { tell } from '../../words/message.js';
import { surfaceWord } from '../words.js';
import { outward } from './outward.js';
import type { Stage } from './stage.js';
import { zoneBorders } from './table.js';

/** Which face is up, and whose panel it is, where the panel has room for it: across the page, or else up it; else beside it. */
export function nameFace(stage: Stage, { role }: Pick<Panel, 'role'>, title: string, table: Box): void {
  const { pen, panel, acted } = stage;
  const up = tell(say.faceUp({ face: surfaceWord({ role }, acted.layout.up) }), 'mm');
  const face = { key: 'panel:face', class: 'panel-name' } as const;
  const put = (x: number, y: number, turn: 0 | -90, named: boolean): void => {
    const at = (by: number): [number, number] => (turn === 0 ? [x, y + by] : [x + by, y]);
    const style = { anchor: 'middle', turn } as const;
    const lines = [pen.text(face, up, ...at(stage.p(named ? -0.4 : 1.75)), { ...style, height: 3.5, strong: true })];
    if (named) lines.push(pen.text({ key: 'panel:name', class: 'label' }, title, ...at(stage.p(3.8)), style));
    if (turn === 0) for (const line of lines) pen.takeSolid(wider(textBox(line, pen.scale)));
  };
  const shortest = WIDER * stage.p(textWidth(up, 3.5, true));
  const longest = Math.max(shortest, WIDER * stage.p(textWidth(title, 2.5, false)));
  for (const named of [true, false]) {
    const [long, high] = named ? [longest, stage.p(8.4)] : [shortest, stage.p(4.8)];
    for (const turn of [0, -90] as const) {
      const [width, height] = turn === 0 ? [long, high] : [high, long];
      const place = freePlace(stage, panel, width, height);
      if (place === null) continue;
      put(place.x, place.y, turn, named);
      return;
    }
  }
  const strip = longest + stage.p(10);
  for (const x of [panel.x - strip, panel.x + panel.width]) {
    const area = { x, y: panel.y, width: strip, height: panel.height };
    const place = contains(table, { ...area, height: 0 }) ? freePlace(stage, area, longest, stage.p(8.4)) : null;
    if (place === null) continue;
    put(place.x, place.y, 0, true);
    return;
  }
  for (const named of [true, false]) {
    const place = besidePanel(stage, table, named ? longest : shortest, stage.p(named ? 8.4 : 4.8));
    if (place === null) continue;
    put(place.x, place.y, 0, named);
    return;
  }
}

/** On the table, across the outline of the panel only where there is no other room. */
function besidePanel(stage: Stage, table: Box, width: number, height: number): Point | null {
  return (
    placeIn(stage, table, width, height, [...zoneBorders(stage), stage.panel]) ??
    placeIn(stage, table, width, height, [stage.panel]) ??
    placeIn(stage, table, width, height, [])
  );
}

const FROM_MIDDLE = outward(15);

/** Middle of the free room in an area for a box of this size, from the middle outward; across no border of the zone if it can be. */
function freePlace(stage: Stage, area: Box, width: number, height: number): Point | null {
  return placeIn(stage, area, width, height, zoneBorders(stage)) ?? placeIn(stage, area, width, height, []);
}

function placeIn(stage: Stage, area: Box, width: number, height: number, avoid: readonly Box[]): Point | null {
  for (const down of FROM_MIDDLE) {
    for (const right of FROM_MIDDLE) {
      const x = area.x + area.width * (0.5 + right);
      const y = area.y + area.height * (0.5 + down);
      const box = { x: x - width / 2, y: y - height / 2, width, height };
      if (!contains(area, box) || avoid.some((border) => overlap(border, box))) continue;
      if (stage.pen.isFree(box, 0.8)) return { x, y };
    }
  }
  return null;
}
