import { boxOf } from '../scene/boxes.js';
import type { HoleGroup } from './hole-table.js';
import { textWidth } from '../scene/lettering.js';
import type { Pen } from '../scene/pen.js';
import type { Point } from '../scene/scene.js';
import { mm } from '../scene/scale.js';
import type { PanelView } from './panel-view.js';

const HEIGHT = 2.2;
const RADIUS = 2.3;
const DIRECTIONS = 16;
const DISTANCES = [5, 6.5, 8, 10, 12.5, 15.5] as const;

/**
 * Puts the number of each line of the hole table into a small circle beside one of its bores, with a leader line to the
 * bore's rim, where both keep clear of all else. A group that finds no room keeps its number in the table only.
 */
export function placeNumbers(pen: Pen, view: PanelView, groups: readonly HoleGroup[]): void {
  for (const { line, bores } of groups) {
    const tried = [0, bores.length - 1, Math.floor(bores.length / 2), 1, 2, 3].filter(
      (index, at, all) => bores[index] !== undefined && all.indexOf(index) === at,
    );
    const place = tried
      .map((index) => findRoom(pen, view.entry(bores[index]!), mm(bores[index]!.diameter) / 2, String(line.number)))
      .find((found) => found !== null);
    if (place === undefined || place === null) continue;
    const { centre, rim, edge, radius } = place;
    const name = `${view.panel.key}:number-${line.number}`;
    pen.line({ key: `${name}:leader`, class: 'number', source: line.source }, 'thin', rim, edge);
    pen.add({
      key: `${name}:circle`,
      class: 'number',
      kind: 'circle',
      panel: view.panel.key,
      source: line.source,
      line: 'thin',
      cx: centre.x,
      cy: centre.y,
      r: radius,
    });
    pen.takeSolid(
      boxOf(
        [
          { x: centre.x - radius, y: centre.y - radius },
          { x: centre.x + radius, y: centre.y + radius },
        ],
        0,
      ),
    );
    pen.take(boxOf([rim, edge], pen.paper(0.2)));
    pen.add(
      pen.lettering(
        { key: `${name}:figure`, class: 'number', source: line.source },
        String(line.number),
        centre.x,
        centre.y + pen.paper(HEIGHT / 2),
        {
          anchor: 'middle',
          height: HEIGHT,
        },
      ),
    );
  }
}

interface Room {
  readonly centre: Point;
  readonly rim: Point;
  readonly edge: Point;
  readonly radius: number;
}

function findRoom(pen: Pen, bore: Point, r: number, text: string): Room | null {
  const radius = pen.paper(Math.max(RADIUS, textWidth(text, HEIGHT, false) / 2 + 1));
  for (const distance of DISTANCES) {
    for (let step = 0; step < DIRECTIONS; step += 1) {
      // Oblique directions first: leaders along the axes would hide in the centre lines.
      const angle = (step * 2 * Math.PI) / DIRECTIONS + Math.PI / 4;
      const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
      const reach = r + pen.paper(distance);
      const centre = { x: round(bore.x + cos * reach), y: round(bore.y + sin * reach) };
      const box = { x: centre.x - radius, y: centre.y - radius, width: 2 * radius, height: 2 * radius };
      if (!pen.isFree(box)) continue;
      const rim = { x: round(bore.x + cos * r), y: round(bore.y + sin * r) };
      const edge = { x: round(centre.x - cos * radius), y: round(centre.y - sin * radius) };
      if (pen.isOpen(rim, edge)) return { centre, rim, edge, radius };
    }
  }
  return null;
}
const round = (value: number): number => Math.round(value * 1000) / 1000;
