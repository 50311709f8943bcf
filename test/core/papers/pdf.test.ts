import { asItIs } from '../../../shared-core/words/told.js';
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import fc from 'fast-check';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { describe, expect, test } from 'vitest';
import { boreMapScene } from '../../../shared-core/drawing/bore-map/bore-map.js';
import { printedBoreMaps } from '../../../shared-core/papers/bore-maps/printed.js';
import {
  column,
  figuresColumn,
  heading,
  paragraph,
  type Block,
  type Paper,
} from '../../../shared-core/papers/paper.js';
import { PAGE_SIZES, type PageName } from '../../../shared-core/papers/render/page-size.js';
import { asPdf } from '../../../shared-core/papers/render/pdf/pdf.js';
import { handMade } from '../drawing/panels.js';

// Read back with PDF.js, which shares nothing with the library that writes the files.
const library = dirname(createRequire(import.meta.url).resolve('pdfjs-dist/package.json'));
const face = (name: string): Uint8Array => readFileSync(join(library, 'standard_fonts', `LiberationSans-${name}.ttf`));
const fonts = { regular: face('Regular'), bold: face('Bold') };
const POINTS = 72 / 25.4;

interface Word {
  readonly text: string;
  /** Millimetres from the top left corner. */
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}
interface ReadPage {
  readonly width: number;
  readonly height: number;
  readonly words: readonly Word[];
}

const print = (paper: Paper<string>, page: PageName = 'a4'): Promise<Uint8Array> =>
  asPdf(paper, { page: PAGE_SIZES[page], fonts, language: 'en' });

async function readBack(bytes: Uint8Array): Promise<readonly ReadPage[]> {
  const task = getDocument({ data: Uint8Array.from(bytes), useSystemFonts: false, verbosity: 0 });
  const document = await task.promise;
  const pages: ReadPage[] = [];
  for (let number = 1; number <= document.numPages; number += 1) {
    const page = await document.getPage(number);
    const [, , width, height] = page.view as [number, number, number, number];
    const { items } = await page.getTextContent({ disableNormalization: true });
    const words = items.flatMap((item): Word[] => {
      if (!('str' in item) || item.str.trim() === '') return [];
      const [a, b, , , x, y] = item.transform as [number, number, number, number, number, number];
      const size = Math.hypot(a, b);
      const upright = Math.abs(b) > Math.abs(a);
      // Capitals and figures, which is what these papers are made of: from the base line up to their height.
      const up = size * 0.7;
      const box = upright
        ? { left: x - up, right: x, bottom: y, top: y + item.width }
        : { left: x, right: x + item.width, bottom: y, top: y + up };
      const top = height - box.top;
      return [
        {
          text: item.str,
          left: box.left / POINTS,
          right: box.right / POINTS,
          top: top / POINTS,
          bottom: (height - box.bottom) / POINTS,
        },
      ];
    });
    pages.push({ width: width / POINTS, height: height / POINTS, words });
  }
  await task.destroy();
  return pages;
}

const textOf = (pages: readonly ReadPage[]): string =>
  pages.flatMap(({ words }) => words.map(({ text }) => text)).join(' ');

/** Less than this lies on each other by rounding alone. */
const TOUCH = 0.15;

function expectClear({ words, width, height }: ReadPage): void {
  for (const word of words) {
    expect([word.left >= 0, word.right <= width, word.top >= 0, word.bottom <= height], word.text).toEqual([
      true,
      true,
      true,
      true,
    ]);
  }
  words.forEach((a, i) => {
    for (const b of words.slice(i + 1)) {
      const across = Math.min(a.right, b.right) - Math.max(a.left, b.left);
      const down = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top);
      expect(across > TOUCH && down > TOUCH, `‘${a.text}’ lies on ‘${b.text}’`).toBe(false);
    }
  });
}

const TABLE: Block<string> = {
  kind: 'table',
  columns: [column('Panel'), figuresColumn('Length'), column('What to do')],
  rows: Array.from({ length: 90 }, (_, i) => [
    `panel-${i}`,
    String(600 + i),
    i % 7 === 0 ? 'Lay it down and press it home. '.repeat(6).trim() : 'Bore',
  ]),
};

describe('a paper as PDF', () => {
  test('has pages of the size asked for, all that the paper says, and the head of a table on each of its pages', async () => {
    for (const page of ['a4', 'letter'] as const) {
      const pages = await readBack(await print({ title: 'Öffnungen × Łódź', blocks: [TABLE] }, page));
      expect(pages.length).toBeGreaterThan(1);
      const { width, height } = PAGE_SIZES[page];
      pages.forEach((one, i) => {
        expect(one.width).toBeCloseTo(width, 2);
        expect(one.height).toBeCloseTo(height, 2);
        expect(textOf([one])).toContain(`${i + 1} / ${pages.length}`);
        expect(one.words.filter(({ text }) => text === 'What to do')).toHaveLength(1);
        expectClear(one);
      });
      const said = textOf(pages);
      expect(said).toContain('Öffnungen × Łódź');
      for (let i = 0; i < 90; i += 1) expect(said).toContain(`panel-${i}`);
    }
  });

  test('is the same file each time, with both fonts in it', async () => {
    const paper: Paper<string> = { title: 'One', blocks: [paragraph('Twelve')] };
    const bytes = await print(paper);
    expect(Buffer.from(await print(paper)).equals(Buffer.from(bytes))).toBe(true);
    const task = getDocument({ data: Uint8Array.from(bytes), verbosity: 0, fontExtraProperties: true });
    const page = await (await task.promise).getPage(1);
    await page.getOperatorList();
    const names = (await page.getTextContent()).items.flatMap((item) => ('fontName' in item ? [item.fontName] : []));
    const embedded = new Set(
      names.map((name) => {
        const font = page.commonObjs.get(name) as { name: string; missingFile?: boolean };
        return `${font.name.replace(/^.*[+]/, '')} ${font.missingFile === true ? 'missing' : 'embedded'}`;
      }),
    );
    await task.destroy();
    expect([...embedded].sort().map((one) => one.replace(/-\d+/, ''))).toEqual([
      'LiberationSans embedded',
      'LiberationSans-Bold embedded',
    ]);
  });

  test('a heading is never the last on its page', async () => {
    const blocks = Array.from({ length: 60 }, (_, i): readonly Block<string>[] => [
      heading(2, `Part ${i}`),
      paragraph(`Body ${i}: ${'words and words '.repeat(i % 9)}`),
    ]).flat();
    const pages = await readBack(await print({ title: 'Parts', blocks }));
    const placed = pages.map(({ words }) =>
      words.map(({ text }) => text).filter((text) => /^(?:Part|Body) /.test(text)),
    );
    for (const words of placed) expect(words.at(-1)).toMatch(/^Body/);
  });

  test('an empty paper has one page, and letters that the font lacks stand as a question mark', async () => {
    expect(await readBack(await print({ title: '', blocks: [] }))).toHaveLength(1);
    expect(textOf(await readBack(await print({ title: '', blocks: [paragraph('木 box')] })))).toContain('? box');
  });

  test('no two texts of a bore map lie on each other and none leaves its page', async () => {
    const drawn = handMade();
    const scenes = drawn.carcass.panels.flatMap(({ key }) => boreMapScene(drawn, key) ?? []);
    for (const page of await readBack(await print(printedBoreMaps([{ name: drawn.name, scenes }], asItIs('Maps')))))
      expectClear(page);
  });

  test('tables of any words stay on the page and clear of each other', async () => {
    const word = fc.string({
      minLength: 1,
      maxLength: 60,
      unit: fc.constantFrom('a', 'b', ' ', 'W', '-', '5', '/', 'Ä', 'Ł', 'Ж'),
    });
    const tables = fc.integer({ min: 1, max: 7 }).chain((count) =>
      fc.record({
        heads: fc.array(word, { minLength: count, maxLength: count }),
        rows: fc.array(fc.array(word, { minLength: count, maxLength: count }), { maxLength: 8 }),
      }),
    );
    await fc.assert(
      fc.asyncProperty(tables, async ({ heads, rows }) => {
        const table: Block<string> = {
          kind: 'table',
          columns: heads.map((head, i) => ({ head, figures: i % 2 === 1 })),
          rows,
        };
        for (const page of await readBack(await print({ title: 'T', blocks: [table] }))) expectClear(page);
      }),
      { numRuns: 12 },
    );
  });
});
