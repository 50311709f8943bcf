import { asItIs } from '../../../shared-core/words/told.js';
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
import { PAGE_SIZES } from '../../../shared-core/papers/render/page-size.js';
import { handMade } from '../drawing/panels.js';
import { expectClear, print, readBack, textOf } from './read-pdf.js';

const TABLE: Block<string> = {
  kind: 'table',
  columns: [column('Panel'), figuresColumn('Length'), column('What to do')],
  rows: Array.from({ length: 90 }, (_, i) => [
    `panel-${i}`,
    String(600 + i),
    i % 7 === 0 ? 'Lay it down and press it home. '.repeat(6).trim() : 'Bore',
  ]),
};

/** The scale that stands under the drawing of a panel. */
const scaleOf = (pages: Parameters<typeof textOf>[0], title: string): string =>
  new RegExp(`${title} – scale 1:(\\d+)`).exec(textOf(pages))![1]!;

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
    const document = await task.promise;
    const { info } = await document.getMetadata();
    expect(info).toMatchObject({ Title: 'One', Producer: 'Borewright', Creator: 'Borewright', Language: 'en' });
    const page = await document.getPage(1);
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
    const begins = placed.findIndex((words) => words.some((text) => text.startsWith('Body')));
    for (const words of placed.slice(begins)) expect(words.at(-1)).toMatch(/^Body/);
  });

  test('a long paper lists its parts with their pages, links and bookmarks that lead there', async () => {
    const blocks = Array.from({ length: 70 }, (_, i): readonly Block<string>[] => [
      heading(i % 7 === 0 ? 1 : i % 2 === 0 ? 3 : 2, `Teil ${i} – Łódź`),
      ...Array.from({ length: 1 + (i % 5) * 4 }, (_, n) => paragraph(`Body ${i}.${n}`)),
    ]).flat();
    const bytes = await print({ title: 'Parts', blocks: [paragraph('Before all'), ...blocks] });
    const pages = await readBack(bytes);
    const pageOf = (text: string, from: number): number =>
      pages.findIndex(({ words }, page) => page >= from && words.some((word) => word.text === text));
    const task = getDocument({ data: Uint8Array.from(bytes), verbosity: 0 });
    const document = await task.promise;
    type Mark = Awaited<ReturnType<typeof document.getOutline>>[number];
    const flat = (marks: readonly Mark[]): readonly Mark[] => marks.flatMap((mark) => [mark, ...flat(mark.items)]);
    const outline = await document.getOutline();
    const marks = flat(outline);
    expect(marks.map(({ title }) => title)).toEqual([
      'Parts',
      ...Array.from({ length: 70 }, (_, i) => `Teil ${i} – Łódź`),
    ]);
    // Parts of the second and the third level are under those before them.
    expect(outline.map(({ title }) => title)).toEqual([
      'Parts',
      ...Array.from({ length: 10 }, (_, i) => `Teil ${i * 7} – Łódź`),
    ]);
    const target = async (dest: Mark['dest']): Promise<number> =>
      document.getPageIndex((dest as [Parameters<typeof document.getPageIndex>[0]])[0]);
    // The list of parts is over where the first part begins.
    const begins = pages.findIndex(({ words }) => words.some(({ text }) => text === 'Body 0.0'));
    expect(begins).toBeGreaterThan(0);
    for (const { title, dest } of marks.slice(1)) expect(await target(dest), title).toBe(pageOf(title, begins));
    const listed = pages.slice(0, begins).flatMap(({ words }) => words.map(({ text }) => text));
    for (const { title, dest } of marks.slice(1)) {
      const number = Number(/\d+/.exec(title));
      const isListed = number % 7 === 0 || number % 2 === 1;
      expect(listed.includes(title), title).toBe(isListed);
      if (isListed) expect(listed[listed.indexOf(title) + 1]).toBe(String((await target(dest)) + 1));
    }
    interface Link {
      readonly dest: Mark['dest'];
      readonly rect: readonly [number, number, number, number];
    }
    const links = (await (await document.getPage(1)).getAnnotations()) as readonly Link[];
    expect(links.length).toBeGreaterThan(30);
    expect(await target(links[0]!.dest)).toBe(begins);
    // A link lies over one line of the list, from the name to the page that it leads to.
    const { words, width, height } = pages[0]!;
    for (const { dest, rect } of links) {
      const [left, bottom, right, top] = rect.map((points) => (points / 72) * 25.4) as [number, number, number, number];
      expect(left).toBeGreaterThan(0);
      expect(right).toBeLessThan(width);
      const under = words.filter(
        (word) =>
          word.left >= left - 0.1 &&
          word.right <= right + 0.1 &&
          word.top >= height - top &&
          word.bottom <= height - bottom,
      );
      expect(under.map(({ text }) => text)).toEqual([
        expect.stringMatching(/^Teil /),
        String((await target(dest)) + 1),
      ]);
    }
    await task.destroy();
    for (const page of pages) expectClear(page);
  });

  test('a short table is never parted, nor from what is said before it', async () => {
    const rows = ['a', 'b', 'c', 'd'].map((name) => [`row ${name}`, '1']);
    const short: Block<string> = { kind: 'table', columns: [column('Short'), column('Figure')], rows };
    for (let above = 30; above < 46; above += 1) {
      const before = Array.from({ length: above }, (_, i) => paragraph(`Line ${i}`));
      const pages = await readBack(await print({ title: 'T', blocks: [...before, paragraph('Measure:'), short] }));
      const on = ['Measure:', 'Short', 'row a', 'row d'].map((text) =>
        pages.findIndex(({ words }) => words.some((word) => word.text === text)),
      );
      expect(new Set(on).size, `${above} lines before it`).toBe(1);
    }
  });

  test('parts that go on one page together share it, and none of them is parted', async () => {
    const lines = (part: number, count: number): readonly Block<string>[] => [
      heading(1, `Part ${part}`),
      ...Array.from({ length: count }, (_, i) => paragraph(`Line ${part}.${i}`)),
    ];
    const lengths = [5, 12, 8, 30, 30, 10, 60, 3];
    const blocks = lengths.flatMap((count, part) => lines(part, count));
    const pages = await readBack(await print({ title: '', blocks }));
    const pagesOf = (part: number): readonly number[] =>
      pages.flatMap(({ words }, page) => (words.some(({ text }) => text.startsWith(`Line ${part}.`)) ? [page] : []));
    // 38 lines go on a page with their heading, as a line takes 6.22 mm of 261.
    expect(lengths.map((_, part) => pagesOf(part))).toEqual([[0], [0], [0], [1], [2], [3], [4, 5], [6]]);
    for (const page of pages) expectClear(page);
  });

  test('a long paper of few parts lists what is in them', async () => {
    const blocks = ['left', 'right'].flatMap((part): readonly Block<string>[] => [
      heading(2, part),
      ...Array.from({ length: 12 }, (_, i): readonly Block<string>[] => [
        heading(3, `${part} ${i}`),
        ...Array.from({ length: 12 }, (_line, n) => paragraph(`Line ${n}`)),
      ]).flat(),
    ]);
    const pages = await readBack(await print({ title: 'Parts', blocks }));
    const words = pages[0]!.words.map(({ text }) => text);
    expect(words).toContain('Contents');
    for (const part of ['left', 'right'])
      for (let i = 0; i < 12; i += 1) {
        const listed = Number(words[words.indexOf(`${part} ${i}`) + 1]);
        expect(pages[listed - 1]!.words.map(({ text }) => text)).toContain(`${part} ${i}`);
      }
  });

  test('columns of long texts share the width, and none pays for the others', async () => {
    const long = 'word '.repeat(40).trim();
    const table: Block<string> = { kind: 'table', columns: ['A', 'B', 'C'].map(column), rows: [[long, long, '1']] };
    const [page] = await readBack(await print({ title: 'T', blocks: [table] }));
    const lefts = ['A', 'B', 'C'].map((head) => page!.words.find(({ text }) => text === head)!.left);
    expect(lefts[1]! - lefts[0]!).toBeCloseTo(lefts[2]! - lefts[1]!, 0);
  });

  test('a drawing that goes on no page at its scale is printed at the next whole one, which it names', async () => {
    const drawn = handMade();
    const scenes = drawn.carcass.panels.flatMap(({ key }) => boreMapScene(drawn, key) ?? []);
    const said = textOf(await readBack(await print(printedBoreMaps([{ name: drawn.name, scenes }], asItIs('Maps')))));
    expect(said).not.toContain('not to scale');
    expect(said.match(/ – scale 1:\d+/g)).toHaveLength(scenes.length);
  });

  test('what stands before a picture is never parted from it', async () => {
    const drawn = handMade();
    const scenes = drawn.carcass.panels.flatMap(({ key }) => boreMapScene(drawn, key) ?? []);
    const fill = Array.from({ length: 30 }, (_, i): Block<string> => paragraph(`Before ${i}`));
    const { blocks } = printedBoreMaps([{ name: drawn.name, scenes: [...scenes, ...scenes] }], asItIs('Maps'));
    for (let lines = 0; lines < fill.length; lines += 6) {
      const pages = await readBack(await print({ title: 'Maps', blocks: [...fill.slice(0, lines), ...blocks] }));
      const of = (title: string): readonly number[] =>
        pages.flatMap(({ words }, page) =>
          // The contents name them, too.
          words.some(({ text }) => text === 'Contents')
            ? []
            : words.flatMap(({ text }) => (text === title ? [page] : [])),
        );
      for (const { title } of scenes) expect(of(title)).toEqual(of(`${title} – scale 1:${scaleOf(pages, title)}`));
    }
  });

  test('a panel without bores is named among the bore maps, and has no picture', async () => {
    const drawn = handMade();
    const [scene, ...others] = drawn.carcass.panels.flatMap(({ key }) => boreMapScene(drawn, key) ?? []);
    const scenes = [{ ...scene!, table: [], findings: [], notes: scene!.notes.slice(0, 1) }, ...others];
    const said = textOf(await readBack(await print(printedBoreMaps([{ name: drawn.name, scenes }], asItIs('Maps')))));
    expect(said.match(/ – scale 1:\d+/g)).toHaveLength(others.length);
    expect(said).toContain(`Without bores: ${scene!.title} (${scene!.facts[0]!.value}).`);
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
