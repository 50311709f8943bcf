import { describe, expect, it } from 'vitest';
import { boreMapScene } from '../../../shared-core/drawing/bore-map/bore-map.js';
import { markOf } from '../../../shared-core/drawing/marks.js';
import { allPanelsScene } from '../../../shared-core/drawing/bore-map/all-panels.js';
import { toSvg } from '../../../shared-core/drawing/render/svg.js';
import type { BorePurpose } from '../../../shared-core/fittings/names.js';
import { PURPOSES } from '../../../shared-core/fittings/purposes.js';
import { demoShop, demoText, drawnOf } from './demo.js';
import { handMade, unmatched } from './panels.js';
import { all, elements, hasClass, readXml } from './read-xml.js';

describe('an SVG file', () => {
  const scene = boreMapScene(handMade([unmatched]), 'left')!;
  const root = readXml(toSvg(scene));

  it('is well-formed for every panel and carcass of the demo jobs', () => {
    const shop = demoShop();
    let files = 0;
    for (const one of ['kitchen', 'studio'].flatMap((job) => drawnOf(demoText(`${job}.carcass.yaml`), shop))) {
      for (const drawing of [allPanelsScene(one), ...one.carcass.panels.map(({ key }) => boreMapScene(one, key)!)]) {
        expect(readXml(toSvg(drawing)).tag).toBe('svg');
        files += 1;
      }
    }
    expect(files).toBeGreaterThan(120);
  });

  it('has each bore once in the drawing, with its pattern, and each line of the table', () => {
    const bores = all(root, (element) => element.attributes['data-bore'] !== undefined);
    expect(bores.map((element) => element.attributes['data-bore']).sort()).toEqual(
      scene.shapes.flatMap((shape) => (shape.kind === 'bore' ? [shape.bore] : [])).sort(),
    );
    expect(bores.every((element) => hasClass(element.children[0]!, 'rim'))).toBe(true);
    const texts = all(root, ({ tag }) => tag === 'text').map(({ text }) => text);
    for (const cell of [
      'dowel to bottom',
      'rear row',
      '8 to 712 by 32',
      'Error: The bore of bottom at 213 mm from the front edge has no mate in left.',
    ]) {
      expect(texts).toContain(cell);
    }
    expect(all(root, (element) => hasClass(element, 'finding') && hasClass(element, 'error'))).toHaveLength(1);
  });

  it('is true to the scale that its head states', () => {
    const { width, viewBox } = root.attributes;
    // One unit of the view box is a millimetre of paper, and the drawing is scaled by the scale named.
    expect(width).toBe(`${viewBox!.split(' ')[2]!}mm`);
    expect(
      all(root, ({ attributes }) => attributes.transform?.endsWith('scale(0.2)') === true && !('class' in attributes)),
    ).toHaveLength(1);
    expect(all(root, ({ text }) => text.endsWith('Scale 1:5'))).toHaveLength(1);
  });

  it('can be heard: title and description', () => {
    expect(root.attributes.role).toBe('img');
    expect(root.attributes['aria-label']).toContain('54 bores');
    expect(root.children[0]).toMatchObject({ tag: 'title', text: 'sink, left' });
  });

  it('has no style on its elements and no script, so that a strict page can show it', () => {
    for (const element of elements(root)) {
      expect(Object.keys(element.attributes).filter((name) => name === 'style' || name.startsWith('on'))).toEqual([]);
      expect(element.tag).not.toBe('script');
    }
  });

  it('stays well-formed whatever a carcass is called', () => {
    const name = 'a<b>&"c" ]]> \u0007\uD800 ünïcödé 棚';
    const hostile = readXml(toSvg(allPanelsScene({ ...handMade(), name })));
    expect(hostile.children[0]!.text).toBe('a<b>&"c" ]]>  ünïcödé 棚');
  });

  it('is the same, byte for byte, each time', () => {
    expect(toSvg(boreMapScene(handMade([unmatched]), 'left')!)).toBe(toSvg(scene));
  });

  it('has no table where a page shows its own', () => {
    const bare = toSvg(scene, { table: false });
    expect(bare).not.toContain('dowel to bottom<');
    expect(bare.length).toBeLessThan(toSvg(scene).length);
  });
});

describe('the patterns of bores', () => {
  const purposes = Object.keys(PURPOSES) as readonly BorePurpose[];

  it('differ from purpose to purpose, so that none is told by its colour alone', () => {
    const patterns = purposes.map((purpose) => JSON.stringify(markOf(purpose, 4)));
    expect(new Set(patterns).size).toBe(purposes.length);
  });

  it('stay inside the rim', () => {
    for (const purpose of purposes) {
      for (const part of markOf(purpose, 4)) {
        if (part.kind === 'circle') expect(part.r).toBeLessThan(4);
        else for (const { x, y } of part.points) expect(Math.hypot(x, y)).toBeLessThanOrEqual(4.01);
      }
    }
  });
});
