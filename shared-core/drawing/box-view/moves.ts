import type { Carcass } from '../../carcass/model.js';
import { panelsOfDrawer } from '../../carcass/drawers/panels.js';
import type { HungDoor } from '../../hung/model.js';
import { swingOf } from '../../hung/swing.js';
import type { BoxMove } from './scene.js';

/** How a carcass opens, closed at rest: doors turn about the line of their hinges, drawers come out as long as their slides are. */
export function movesOf(carcass: Carcass, hung: readonly HungDoor[]): readonly BoxMove[] {
  return [
    ...hung.flatMap((one): readonly BoxMove[] =>
      one.reach === null ? [] : [{ kind: 'turn', parts: [one.door.key], ...swingOf(one) }],
    ),
    ...carcass.drawers.map((drawer): BoxMove => {
      const parts = panelsOfDrawer(carcass, drawer).map(({ key }) => key);
      return { kind: 'pull', parts, travel: drawer.length.length };
    }),
  ];
}
