import { describe, expect, test } from 'vitest';
import { Engine } from '../../../shared-core/engine.js';
import { explain } from '../../../shared-core/service/hover.js';
import { outlineOf } from '../../../shared-core/service/outline.js';
import { panelsOf } from '../../../shared-core/service/panels.js';
import { carcassesFor } from '../../../shared-core/service/words.js';

const TEXT = `unit: mm
carcasses:
  corner:
    kind: wall
    width: 700
    depth: 320
    diagonal: { left: 600 }
  straight: { kind: wall, width: 700, depth: 320 }
`;
const analysis = new Engine({ readShop: () => ({ ok: true, uri: 'file:///s', text: '' }) }).analyse('file:///j', TEXT);
const file = { kind: 'job', analysis } as const;

describe('the size of a carcass across a corner is its two reaches, and its depth is that of its wings', () => {
  test('in a hover', () => {
    const hover = JSON.stringify(explain(file, TEXT.indexOf('corner')));
    expect(hover).toContain(
      '700 × 752 × 600 mm over all without plinth and fronts, across a corner with wings 320 mm deep;',
    );
    const other = JSON.stringify(explain(file, TEXT.indexOf('straight')));
    expect(other).toContain('700 × 720 × 320 mm over all without plinth and fronts;');
  });

  test('in the outline, and where it is offered to be like', () => {
    expect(outlineOf(file).map(({ detail }) => detail)).toEqual(['wall 700 × 752 × 600 mm', 'wall 700 × 720 × 320 mm']);
    expect(carcassesFor(analysis, null).map(({ line }) => line)).toEqual([
      'carcass of kind wall, 700 × 752 × 600 mm',
      'carcass of kind wall, 700 × 720 × 320 mm',
    ]);
  });

  test('in the list of panels, in words and as data', () => {
    const list = panelsOf(analysis);
    const words = list.inWords();
    expect(words).toContain('corner: wall, 700 × 752 × 600 mm, across a corner with wings 320 mm deep\n');
    expect(words).toContain('straight: wall, 700 × 720 × 320 mm\n');
    const { carcasses } = list.asData() as { carcasses: readonly object[] };
    expect(carcasses[0]).toMatchObject({ width: 700, height: 752, depth: 320, diagonal: { left: 600 } });
    expect(carcasses[1]).not.toHaveProperty('diagonal');
  });
});
