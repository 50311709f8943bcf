import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import type { EngineHost, ShopReading } from '../../../shared-core/engine.js';
import { Engine } from '../../../shared-core/engine.js';
import { cursorAt, panelsAt } from '../../../shared-core/engine/cursor.js';
import { asMessage } from '../../in-words.js';

const demo = (file: string): string => readFileSync(join(import.meta.dirname, '..', '..', 'fixtures', file), 'utf8');
const URI = 'file:///jobs/demo.carcass.yaml';
const noShop: EngineHost = { readShop: () => ({ ok: false, message: asMessage('There is no such file.') }) };
const demoShop: EngineHost = {
  readShop: (_, reference) => ({ ok: true, uri: `file:///jobs/${reference}`, text: demo(reference) }),
};

const three = [
  'unit: mm',
  'carcasses:',
  '  sink:',
  '    kind: base',
  '    width: 600',
  '  # the wall',
  '  plates:',
  '    kind: wall',
  '    width: 800',
  '    loose-shelves: 2',
  '  larder:',
  '    kind: tall',
  '    width: 600',
  '',
].join('\n');

function ruleNames(engine: Engine, text: string): string[] {
  return engine
    .analyse(URI, text)
    .findings()
    .map(({ finding }) => finding.rule);
}

test('an edit that leaves all carcasses as they are plans nothing anew', () => {
  const engine = new Engine(noShop);
  const before = engine.analyse(URI, three);
  expect(engine.analyse(URI, `title: Larder\n${three}`).setUps()).toBe(before.setUps());
  expect(engine.analyse(URI, three.replace('width: 800', 'width: 801')).setUps()).not.toBe(before.setUps());
  const swapped = three.replace('  sink:', '  basin:');
  expect(engine.analyse(URI, swapped).setUps()).not.toBe(before.setUps());
});

describe('what an edit recomputes', () => {
  const apart: EngineHost = {
    readShop: (_, reference) => {
      const text = demo(reference).replace(/^habits:$/m, 'habits:\n  share-places: no');
      return { ok: true, uri: `file:///jobs/${reference}`, text };
    },
  };

  test.each([
    ['with one load for all', demoShop],
    ['with places of their own', apart],
  ])('an edit in one carcass works that one out, and leaves the others as they are, %s', (_, host) => {
    const engine = new Engine(host);
    const text = demo('kitchen.carcass.yaml');
    const before = engine.analyse(URI, text);
    expect(engine.computed).toBe(before.carcasses.length);
    const after = engine.analyse(URI, text.replace('height: 368', 'height: 400'));
    expect(engine.computed).toBe(before.carcasses.length + 1);
    const changed = after.carcasses.flatMap((carcass, index) =>
      carcass === before.carcasses[index] ? [] : [carcass.name],
    );
    expect(changed).toEqual(['over-sink']);
    expect(after.carcasses.find(({ name }) => name === 'over-sink')?.spec?.height.value).toBe(400_000);
  });

  test('the same text is not worked out again', () => {
    const engine = new Engine(demoShop);
    const text = demo('kitchen.carcass.yaml');
    expect(engine.analyse(URI, text)).toBe(engine.analyse(URI, text));
  });

  test('a title, a comment, and a change of order work out nothing', () => {
    const engine = new Engine(noShop);
    engine.analyse(URI, three);
    const known = engine.computed;
    engine.analyse(URI, `# our kitchen\ntitle: Ours\n${three}`);
    const [atSink, atWall] = [three.indexOf('  sink'), three.indexOf('  # the wall')];
    const [head, sink, rest] = [three.slice(0, atSink), three.slice(atSink, atWall), three.slice(atWall)];
    expect(engine.computed).toBe(known);
    const turned = engine.analyse(URI, `${head}${rest}${sink}`);
    expect(turned.carcasses.map(({ name }) => name)).toEqual(['plates', 'larder', 'sink']);
    // The comment before plates stood in the text of sink; it is in the head now.
    expect(engine.computed).toBe(known + 1);
  });

  test('the unit, the defaults and the shop each work out every carcass', () => {
    const engine = new Engine(noShop);
    engine.analyse(URI, three);
    const count = (text: string): number => {
      const before = engine.computed;
      engine.analyse(URI, text);
      return engine.computed - before;
    };
    expect(count(three.replace('unit: mm', 'unit: in'))).toBe(3);
    expect(count(`defaults:\n  depth: 500\n${three}`)).toBe(3);
    let shop = 'boards:\n  own-16: { thickness: 16 }\n';
    const shops = new Engine({ readShop: () => ({ ok: true, uri: 'file:///jobs/own.shop.yaml', text: shop }) });
    const text = `shop: own.shop.yaml\n${three}`;
    shops.analyse(URI, text);
    shop = shop.replace('thickness: 16', 'thickness: 19');
    expect(shops.analyse(URI, text).carcasses[0]?.carcass?.panels[0]?.thickness).toBe(19_000);
    expect(shops.computed).toBe(6);
  });

  test('places of the defaults follow the head', () => {
    const engine = new Engine(noShop);
    const text = `defaults:\n  board: bord-16\n${three}`;
    const show = (whole: string): string[] => {
      const analysis = engine.analyse(URI, whole);
      return analysis
        .findings()
        .filter(({ finding }) => finding.rule === 'board-unknown')
        .map(({ finding, carcass }) => {
          const { start, end } = analysis.locate(finding.place, carcass);
          return whole.slice(start, end);
        });
    };
    expect(show(text)).toEqual(['bord-16']);
    const known = engine.computed;
    expect(show(`title: A longer head\n${text}`)).toEqual(['bord-16']);
    expect(engine.computed).toBe(known);
  });
});

describe('findings of the job as a whole', () => {
  test('no shop, a missing one, and a broken one', () => {
    const readings: Record<string, ShopReading> = {
      'gone.shop.yaml': { ok: false, message: asMessage('It is gone.') },
      'bad.shop.yaml': { ok: true, uri: 'file:///jobs/bad.shop.yaml', text: 'boards:\n  a: { thickness: -1 }\n' },
    };
    const engine = new Engine({ readShop: (_, reference) => readings[reference]! });
    expect(ruleNames(engine, three)).toEqual(['shop-neutral']);
    expect(ruleNames(engine, `shop: gone.shop.yaml\n${three}`)).toEqual(['shop-missing']);
    const broken = engine.analyse(URI, `shop: bad.shop.yaml\n${three}`);
    const [finding] = broken.findings();
    expect(finding?.finding.rule).toBe('shop-broken');
    const related = finding!.finding.related[0]!;
    const where = broken.locate(related.place, null);
    expect(where.file).toBe('shop');
    expect(broken.used.text.slice(where.start, where.end)).toBe('-1');
  });

  test('a name written twice is told at the second, with the first beside it', () => {
    const engine = new Engine(noShop);
    const text = three.replace('plates:', 'sink:');
    const analysis = engine.analyse(URI, text);
    const { finding, carcass } = analysis.findings().find(({ finding: { rule } }) => rule === 'name-duplicate')!;
    const here = analysis.locate(finding.place, carcass);
    expect(text.slice(here.start, here.end)).toBe('sink');
    expect(here.start).toBe(text.lastIndexOf('sink'));
    const [first] = finding.related;
    expect(analysis.locate(first!.place, first!.carcass ?? carcass).start).toBe(text.indexOf('sink'));
  });

  test('the demo jobs are clean', () => {
    const engine = new Engine(demoShop);
    expect(ruleNames(engine, demo('kitchen.carcass.yaml'))).toEqual([]);
    expect(ruleNames(engine, demo('studio.carcass.yaml'))).toEqual(['shop-neutral']);
  });
});

describe('broken text', () => {
  test('a broken carcass keeps the others and its own last good drawing', () => {
    const engine = new Engine(noShop);
    const before = engine.analyse(URI, three);
    const after = engine.analyse(URI, three.replace('width: 800', 'width: 8oo'));
    expect(after.carcasses[1]?.spec).toBeNull();
    expect(after.carcasses[0]).toBe(before.carcasses[0]);
    expect(after.drawable(1)).toEqual({ carcass: before.carcasses[1], stale: true });
    expect(after.drawable(0)?.stale).toBe(false);
    expect(engine.analyse(URI, three).drawable(1)?.stale).toBe(false);
  });

  test('a line without its colon is remembered under its name', () => {
    const engine = new Engine(noShop);
    engine.analyse(URI, three);
    const after = engine.analyse(URI, three.replace('    kind: wall', '    kind wall'));
    expect(after.carcasses[1]?.name).toBe('plates');
    expect(after.drawable(1)?.stale).toBe(true);
  });

  test('a carcass that is taken out is not remembered', () => {
    const engine = new Engine(noShop);
    engine.analyse(URI, three);
    const after = engine.analyse(URI, three.slice(0, three.indexOf('  larder')));
    expect([...after.lastGood().keys()]).toEqual(['sink', 'plates']);
  });

  test('what was never good cannot be drawn', () => {
    const analysis = new Engine(noShop).analyse(URI, three.replace('width: 800', ''));
    expect(analysis.drawable(1)).toBeNull();
    expect(analysis.drawable(99)).toBeNull();
  });
});

describe('what stands under a cursor', () => {
  const analysis = new Engine(noShop).analyse(URI, three);
  const at = (part: string, skip = 0) => cursorAt(analysis, three.indexOf(part) + skip);

  test('keys, values, names and the head', () => {
    expect(at('unit')).toMatchObject({ part: 'head', carcass: null, path: ['unit'], key: { name: 'unit' } });
    expect(at('plates')).toMatchObject({ part: 'self', carcass: 1, path: [], key: { name: 'plates' } });
    expect(at('loose-shelves: 2', 15)).toMatchObject({
      carcass: 1,
      path: ['loose-shelves'],
      key: null,
      scalar: { text: '2' },
    });
    // In the indentation the line counts.
    expect(at('    width: 800')).toMatchObject({ carcass: 1, path: ['width'] });
  });

  test('a line of shelves speaks of the shelves, a name of all panels', () => {
    const plates = analysis.carcasses[1]!;
    expect(panelsAt(plates, ['loose-shelves']).map(({ key }) => key)).toEqual(['loose-1', 'loose-2']);
    expect(panelsAt(plates, ['loose-shelves', 1]).map(({ key }) => key)).toEqual(['loose-2']);
    expect(panelsAt(plates, ['back']).map(({ key }) => key)).toEqual(['back']);
    expect(panelsAt(plates, ['row-offset']).map(({ key }) => key)).toEqual(['left', 'right']);
    expect(panelsAt(plates, [])).toEqual(plates.carcass?.panels);
  });

  test('no offset is too far', () => {
    for (const offset of [0, three.length, three.length + 10]) expect(() => cursorAt(analysis, offset)).not.toThrow();
    expect(analysis.locate({ part: 'self', start: -5, end: 1e9 }, 2)).toEqual({
      file: 'job',
      start: expect.any(Number) as number,
      end: three.length,
    });
  });
});
