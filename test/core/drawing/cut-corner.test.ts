import { expect, test } from 'vitest';
import { boreMapScene, cornerNotes } from '../../../shared-core/drawing/bore-map/bore-map.js';
import { readShop } from '../../../shared-core/shop/read.js';
import { drawnOf } from './demo.js';

const [one] = drawnOf(
  'carcasses:\n  box:\n    kind: wall\n    width: 600\n    depth: 320\n    diagonal: { left: 600 }\n    loose-shelves: 1\n',
  readShop('').shop,
);
const noted = (panel: string): string => boreMapScene(one!, panel)!.notes.join('\n');

test('a panel with bores is bored before its corner is sawn off; one without is only sawn', () => {
  expect(noted('bottom')).toContain('Bore it whole, then saw off the corner of front edge and right end: 281.4 mm');
  expect(noted('loose-1')).toContain('Saw off the corner of front edge and right end');
  expect(noted('loose-1')).not.toMatch(/[Bb]ore it/);
  expect(noted('left')).not.toContain('corner');
  expect(cornerNotes(one!.carcass.panels[0]!, true, 'mm')).toEqual([]);
});
