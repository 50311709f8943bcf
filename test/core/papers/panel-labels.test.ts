import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import jsQR from 'jsqr';
import { describe, expect, test } from 'vitest';
import { coverSolver } from '../../../server/cover-solver.js';
import type { Panel } from '../../../shared-core/carcass/model.js';
import { contains, grow } from '../../../shared-core/drawing/scene/boxes.js';
import { isLegible, shapeBox } from '../../../shared-core/drawing/scene/extent.js';
import type { Box, CodeShape, Shape } from '../../../shared-core/drawing/scene/scene.js';
import type { JobAnalysis } from '../../../shared-core/engine.js';
import { codeText, readCode } from '../../../shared-core/papers/panel-labels/code-text.js';
import { codeSquares } from '../../../shared-core/papers/panel-labels/code.js';
import { labelShapes } from '../../../shared-core/papers/panel-labels/label.js';
import { seenOutside } from '../../../shared-core/papers/panel-labels/standing.js';
import type { Labels } from '../../../shared-core/papers/paper.js';
import { papersOf } from '../../../shared-core/service.js';
import { readShop } from '../../../shared-core/shop/read.js';
import { analyse } from '../findings/jobs.js';
import { handMade } from '../drawing/panels.js';
import { inWords } from '../../in-words.js';
import { expectClear, print, readBack, textOf } from './read-pdf.js';

const demo = (name: string): string => readFileSync(join(import.meta.dirname, '../../demo', name), 'utf8');
const yard = { 'yard.shop.yaml': demo('yard.shop.yaml') };
const DEMOS = ['kitchen', 'studio'].map((name) => [name, analyse(demo(`${name}.carcass.yaml`), yard)] as const);

async function labelsOf(job: JobAnalysis): Promise<Labels> {
  const paper = await papersOf(job, coverSolver)('panel-labels');
  return paper!.blocks.find((block): block is Labels => block.kind === 'labels')!;
}

/** Eight dots for a millimetre, as a plain office printer has them (200 for an inch). */
const DOTS = 8;

/** A picture of a label as a camera sees it: every thing on it that is not the code is a black block. */
function decoded(shapes: readonly Shape[], { width, height }: Pick<Box, 'width' | 'height'>): string | null {
  const [across, down] = [Math.ceil(width * DOTS), Math.ceil(height * DOTS)];
  const dots = new Uint8ClampedArray(across * down * 4).fill(255);
  const blacken = (box: Box): void => {
    for (let y = Math.round(box.y * DOTS); y < Math.round((box.y + box.height) * DOTS); y += 1)
      for (let x = Math.round(box.x * DOTS); x < Math.round((box.x + box.width) * DOTS); x += 1)
        dots.fill(0, (y * across + x) * 4, (y * across + x) * 4 + 3);
  };
  for (const shape of shapes) {
    if (shape.kind !== 'code') blacken(shapeBox(shape, 1));
    else
      shape.dark.forEach((row, r) =>
        row.forEach((isDark, c) => {
          const side = shape.size / shape.dark.length;
          if (isDark) blacken({ x: shape.x + c * side, y: shape.y + r * side, width: side, height: side });
        }),
      );
  }
  return jsQR(dots, across, down)?.data ?? null;
}

function expectLegible(shapes: readonly Shape[], width: number, height: number): void {
  const page = grow({ x: 0, y: 0, width, height }, 1e-9);
  const out = shapes.filter((shape) => !contains(page, shapeBox(shape, 1))).map(({ key }) => key);
  expect(out).toEqual([]);
  expect(isLegible(shapes, 1)).toBe(true);
}

// Decoded with jsQR, which shares nothing with the library that writes the codes.
describe('the code of a label', () => {
  test.each(DEMOS)('of %s leads back to every panel, from the label as it is printed', async (name, job) => {
    const { labels, sheet } = await labelsOf(job);
    const read = labels.map(({ shapes }) => readCode(decoded(shapes, sheet.places[0]!) ?? ''));
    const all = job.carcasses.flatMap(({ name: carcass, carcass: box }) =>
      box!.panels.flatMap(({ key: panel }) =>
        Array.from({ length: box!.count }, () => ({ file: 'job.carcass.yaml', carcass, panel })),
      ),
    );
    expect(all.length).toBeGreaterThan(20);
    expect(read).toHaveLength(all.length);
    const key = (one: unknown): string => JSON.stringify(one);
    expect(read.map(key).sort(), name).toEqual(all.map(key).sort());
  });

  test('holds any names', () => {
    const name = fc.string({ minLength: 1, maxLength: 40, unit: 'grapheme' }).filter((one) => !/\p{Cs}/u.test(one));
    fc.assert(
      fc.property(fc.record({ file: name, carcass: name, panel: name }), (of) => {
        const text = codeText(of);
        expect(readCode(text)).toEqual(of);
        const dark = codeSquares(text)!;
        const code: CodeShape = {
          kind: 'code',
          key: 'c',
          class: 'code',
          panel: '',
          x: 4,
          y: 4,
          size: dark.length,
          dark,
        };
        const side = dark.length + 8;
        expect(decoded([code], { width: side, height: side })).toBe(text);
      }),
      { numRuns: 40 },
    );
  });

  test('is left out where the names are too long for one, and a text that is no reference leads nowhere', () => {
    expect(codeSquares('x'.repeat(2331))).not.toBeNull();
    expect(codeSquares('x'.repeat(2332))).toBeNull();
    for (const text of ['', 'kitchen', 'a#b', 'a#b/c/d', 'a#%/c', '#b/c']) expect(readCode(text)).toBeNull();
    expect(readCode(' a#b/c\n')).toEqual({ file: 'a', carcass: 'b', panel: 'c' });
  });
});

describe('labels', () => {
  test.each(DEMOS)('of %s are printed on their places, legible and clear of each other', async (_, job) => {
    const labels = await labelsOf(job);
    for (const { shapes } of labels.labels) {
      const { width, height } = labels.sheet.places[0]!;
      expectLegible(shapes, width, height);
    }
    const pages = await readBack(await print((await papersOf(job, coverSolver)('panel-labels'))!));
    expect(pages).toHaveLength(Math.ceil(labels.labels.length / labels.sheet.places.length));
    for (const page of pages) {
      expectClear(page);
      const { places } = labels.sheet;
      for (const { text, left, right, top, bottom } of page.words) {
        const box = { x: left, y: top, width: right - left, height: bottom - top };
        expect(
          places.some((place) => contains(place, box)),
          text,
        ).toBe(true);
      }
    }
    expect(textOf(pages)).toContain('Next: ');
  });

  test('of random long names, sizes in inch fractions and labels of any size are legible and on their label', () => {
    const word = fc.string({
      minLength: 1,
      maxLength: 60,
      unit: fc.constantFrom('a', 'W', 'm', '-', 'Ł', 'ö', '5', ' '),
    });
    const line = fc.record({ text: word, height: fc.constantFrom(2.2, 2.5, 3, 4), strong: fc.boolean() });
    const { panels } = handMade().carcass;
    fc.assert(
      fc.property(
        fc.array(line, { minLength: 1, maxLength: 9 }),
        fc.constantFrom(...panels),
        fc.integer({ min: 60, max: 280 }),
        fc.integer({ min: 30, max: 280 }),
        (lines, panel, width, height) => {
          const size = { text: '23 13/16 × 22 1/16 × 5/8 in', height: 3, strong: true };
          const shapes = labelShapes({ panel, lines: [size, ...lines], code: codeSquares('job#a/b') }, width, height);
          expectLegible(shapes, width, height);
        },
      ),
      { numRuns: 150 },
    );
  });

  test('say what comes next, in the order to run, and number pieces that are equal', async () => {
    const job = analyse('carcasses:\n  sink: { kind: base, width: 600, count: 2, back: none }');
    const { table } = await labelsOf(job);
    const left = table.rows.filter((row) => row[1] === 'sink' && row[2] === 'left');
    expect(left.map((row) => row[3])).toEqual(['1 of 2', '2 of 2']);
    const setUps = job.plan().setUps.filter(({ setUp: { runs } }) => runs.some(({ panel }) => panel === 'left'));
    expect(left[0]![8]).toBe(['band', ...setUps.map(({ setUp: { id } }) => id), 'assemble'].join(', '));
    expect(setUps.length).toBeGreaterThan(1);
  });
});

// By hand: who stands outside the left side sees its front at his right; under the bottom he lies with his feet to the front.
test('a panel is drawn as it is seen from outside', () => {
  const { panels } = handMade().carcass;
  const seen = (key: string): ReturnType<typeof seenOutside> =>
    seenOutside(panels.find((one: Panel) => one.key === key)!);
  expect(seen('left')).toEqual({
    edges: { front: 'right', back: 'left', 'reference-end': 'foot', 'far-end': 'top' },
    looks: 'aside',
    front: 'right',
  });
  expect(seen('right')).toMatchObject({ edges: { front: 'left', 'far-end': 'top' }, front: 'left' });
  // From below, right and left are exchanged.
  expect(seen('bottom')).toEqual({
    edges: { front: 'foot', back: 'top', 'reference-end': 'right', 'far-end': 'left' },
    looks: 'down',
    front: 'foot',
  });
});

describe('the sheet of labels', () => {
  const sheet = (lines: string): ReturnType<typeof readShop> => readShop(`label-sheet: { ${lines} }`);

  test('is the shop’s own, its labels in the middle where no margin is given', async () => {
    const shop =
      'label-sheet: { columns: 3, rows: 8, label-width: 60, label-height: 30, gap-across: 2, gap-down: 1, margin-top: 20 }';
    const job = analyse('shop: s.shop.yaml\ncarcasses:\n  sink: { kind: base, width: 600 }', { 's.shop.yaml': shop });
    const { sheet: page } = await labelsOf(job);
    expect(page).toMatchObject({ width: 210, height: 297 });
    expect(page.places).toHaveLength(24);
    // (210 - 3 x 60 - 2 x 2) / 2 = 13; the second row 20 + 30 + 1 down, its third label 13 + 2 x 62 across.
    expect(page.places[0]).toEqual({ x: 13, y: 20, width: 60, height: 30 });
    expect(page.places[5]).toEqual({ x: 137, y: 51, width: 60, height: 30 });
  });

  test.each([
    ['columns: 3, label-width: 70, gap-across: 0', null],
    ['columns: 3, label-width: 70.1, gap-across: 0', '3 labels reach 210.3 mm across the page, which is 210 mm wide.'],
    ['rows: 7, label-height: 42, gap-down: 0, margin-top: 3', null],
    [
      'rows: 7, label-height: 42, gap-down: 0, margin-top: 4',
      '7 labels reach 298 mm down the page, which is 297 mm high.',
    ],
    ['page: letter, rows: 7, label-height: 42, gap-down: 0', '7 labels reach'],
  ])('%s', (lines, told) => {
    const { findings, shop } = sheet(lines);
    const found = findings.filter(({ rule }) => rule === 'length-impossible').map(({ message }) => inWords(message));
    if (told === null) expect(found).toEqual([]);
    else {
      expect(found).toHaveLength(1);
      expect(found[0]).toContain(told);
      expect(shop.labelSheet).toEqual(readShop('title: x').shop.labelSheet);
    }
  });
});

test('a corner that is sawn off is banded after that, and its band is named', async () => {
  const corner = analyse(
    'unit: mm\ncarcasses:\n  box: { kind: wall, width: 600, depth: 320, diagonal: { left: 600 }, loose-shelves: 1 }\n',
  );
  const { table } = await labelsOf(corner);
  const cells = (panel: string) => {
    const row = table.rows.find((one) => one[2] === panel)!;
    return [row[7], row[8]].map(String);
  };
  const [bands, done] = cells('bottom');
  expect(bands).toBe('slanting edge band-1');
  expect(done).toMatch(/, saw off the corner, band, assemble$/);
  expect(cells('loose-1')).toEqual(['slanting edge band-1', 'saw off the corner, band, assemble']);
});
