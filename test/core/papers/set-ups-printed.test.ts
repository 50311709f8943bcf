import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { coverSolver } from '../../../server/cover-solver.js';
import { contains, grow } from '../../../shared-core/drawing/scene/boxes.js';
import { shapeBox } from '../../../shared-core/drawing/scene/extent.js';
import { asCsv } from '../../../shared-core/papers/render/csv.js';
import { asHtml } from '../../../shared-core/papers/render/html.js';
import { asText } from '../../../shared-core/papers/render/text.js';
import { TICK, type Block, type Paper, type Table } from '../../../shared-core/papers/paper.js';
import { papersOf } from '../../../shared-core/service.js';
import { analyse } from '../findings/jobs.js';
import { expectClear, print, readBack, textOf } from './read-pdf.js';

const demo = (name: string): string => readFileSync(join(import.meta.dirname, '../../demo', name), 'utf8');
const yard = { 'yard.shop.yaml': demo('yard.shop.yaml') };
const kitchen = analyse(demo('kitchen.carcass.yaml'), yard);
const studio = analyse(demo('studio.carcass.yaml'), yard);
const paperFor = async (job: typeof kitchen): Promise<Paper> => (await papersOf(job, coverSolver)('set-ups'))!;

/** The blocks of each set-up. */
function parts({ blocks }: Paper): readonly (readonly Block[])[] {
  const made: Block[][] = [];
  for (const block of blocks) {
    if (block.kind === 'heading' && block.level === 1) made.push([]);
    made.at(-1)?.push(block);
  }
  return made;
}
const tables = (blocks: readonly Block[]): readonly Table[] =>
  blocks.filter((block): block is Table => block.kind === 'table');

describe('the printed set-up list', () => {
  test('has the machine drawn, limits to measure and boxes to tick for every set-up', async () => {
    const plan = kitchen.plan();
    const sheets = parts(await paperFor(kitchen));
    expect(sheets).toHaveLength(plan.setUps.length);
    sheets.forEach((blocks, index) => {
      const { setUp } = plan.setUps[index]!;
      const pictures = blocks.filter((block) => block.kind === 'picture');
      const stops = new Set(setUp.runs.flatMap(({ steps }) => steps.map(({ stop }) => stop)));
      expect(pictures).toHaveLength(Math.min(2, stops.size));
      for (const { scene } of pictures) {
        const frame = grow(scene.frame, 1e-6);
        expect(scene.shapes.filter((shape) => !contains(frame, shapeBox(shape, scene.scale)))).toEqual([]);
        expect(scene.shapes.some((shape) => shape.class === 'stop-used')).toBe(true);
        expect(scene.shapes.some((shape) => shape.class === 'spindle-loaded')).toBe(true);
      }
      const [checks, runs] = tables(blocks);
      // A single hole that goes through has its place along and across, and no depth.
      expect(checks!.rows.length).toBeGreaterThanOrEqual(2);
      for (const row of checks!.rows) expect(row.at(-1)).toBe(TICK);
      // A box for each line of panels, however many strokes it has.
      for (const row of runs!.rows) expect(row.at(-1)).toBe(row[0] === null ? '' : TICK);
    });
  });

  test('limits stand on both sides of what is drawn, and those of a plain row are as worked by hand', async () => {
    const sheets = parts(await paperFor(kitchen));
    let limited = 0;
    for (const blocks of sheets) {
      for (const [, drawn, from, to] of tables(blocks)[0]!.rows) {
        if (from === '') continue;
        limited += 1;
        expect(Number(from)).toBeLessThan(Number(drawn));
        expect(Number(to)).toBeGreaterThan(Number(drawn));
        expect(Number(from) + Number(to)).toBeCloseTo(2 * Number(drawn), 1);
      }
    }
    expect(limited).toBeGreaterThan(100);
    // The yard: stop and fence 0.05, bit 0.05; the end of a side out of square by 0.2 over 1000, so by 0.0074 at 37 and 0.097 at 485.
    const row = sheets.map((blocks) => tables(blocks)[0]!.rows.slice(0, 4)).find((rows) => rows[1]?.[1] === '485')!;
    expect(row.map((cells) => cells.slice(0, 4))).toEqual([
      ['front edge to nearest hole', '37', '36.90', '37.10'],
      ['front edge to furthest hole', '485', '484.90', '485.10'],
      ['bottom end to nearest hole', '8', '7.80', '8.20'],
      ['bottom end to furthest hole', '712', '711.80', '712.20'],
    ]);
  });

  test.each([
    ['kitchen', kitchen],
    ['studio', studio],
  ])('of %s: no two texts lie on each other and none leaves its page', async (_, job) => {
    const pages = await readBack(await print(await paperFor(job), job === kitchen ? 'a4' : 'letter'));
    const clear = pages.map((page) => ({ ...page, words: page.words.filter(({ text }) => !/^_+$/.test(text)) }));
    for (const page of clear) expectClear(page);
    expect(textOf(pages)).toContain('First piece');
  });

  test('a set-up with one picture and a few strokes stands on one page', async () => {
    const list = await paperFor(kitchen);
    const pages = await readBack(await print(list));
    const pageOf = (text: string): number => pages.findIndex(({ words }) => words.some((word) => word.text === text));
    const sheets = parts(list);
    const begins = sheets.map(([title]) => (title?.kind === 'heading' ? pageOf(title.text) : -1));
    const last = (i: number): number => (begins[i + 1] ?? pages.length) - 1;
    const small = sheets.flatMap((blocks, i) =>
      blocks.filter(({ kind }) => kind === 'picture').length === 1 && tables(blocks)[1]!.rows.length <= 2 ? [i] : [],
    );
    expect(small.length).toBeGreaterThan(5);
    for (const i of small) expect(Math.max(last(i), begins[i]!), `set-up ${i + 1}`).toBe(begins[i]);
  });

  test('a box to tick is a sign of its own in every form', async () => {
    const paper = await paperFor(studio);
    expect(asText(paper)).toContain('[ ]');
    expect(asHtml(paper)).toContain(`<td>${TICK}</td>`);
    expect(asCsv(paper)).not.toContain(TICK);
  });
});
