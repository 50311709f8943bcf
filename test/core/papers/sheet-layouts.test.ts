import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { coverSolver } from '../../../server/cover-solver.js';
import { contains, grow } from '../../../shared-core/drawing/scene/boxes.js';
import { shapeBox } from '../../../shared-core/drawing/scene/extent.js';
import type { PrintedScene } from '../../../shared-core/drawing/scene/scene.js';
import type { Block, Paper } from '../../../shared-core/papers/paper.js';
import { papersOf } from '../../../shared-core/service.js';
import { analyse } from '../findings/jobs.js';

const demo = (name: string): string => readFileSync(join(import.meta.dirname, '../../demo', name), 'utf8');
const job = analyse(demo('kitchen.carcass.yaml'), { 'yard.shop.yaml': demo('yard.shop.yaml') });
const paper: Paper = (await papersOf(job, coverSolver, () => ({ rounds: 0, mayGoOn: () => false }))('sheet-layouts'))!;

const pictures = paper.blocks.filter((block) => block.kind === 'picture');
const tables = paper.blocks.filter((block) => block.kind === 'table');
const texts = ({ shapes }: PrintedScene) => shapes.filter((shape) => shape.kind === 'text');

test('every piece that is drawn has its letter inside it, however narrow it is', () => {
  let narrow = 0;
  let inOneLine = 0;
  for (const { scene } of pictures) {
    const pieces = scene.shapes.filter((shape) => shape.key.endsWith(':piece'));
    expect(pieces.length).toBeGreaterThan(0);
    for (const piece of pieces) {
      const box = shapeBox(piece, scene.scale);
      const named = texts(scene).filter((text) => text.key.startsWith(piece.key.replace(/piece$/, 'text')));
      expect(named[0]?.text, piece.key).toMatch(/^[A-Z]+\b/);
      for (const text of named) expect(contains(grow(box, 1e-6), shapeBox(text, scene.scale)), text.text).toBe(true);
      if (named.length === 1 && / {2}./.test(named[0]!.text)) inOneLine += 1;
      if (Math.min(box.width, box.height) / scene.scale < 5) narrow += 1;
    }
  }
  expect(narrow).toBeGreaterThan(3);
  // One too low for two lines that is long enough has both in one.
  expect(inOneLine).toBeGreaterThan(3);
});

test('sheets are counted through, and what is kept of them has a name in the drawing, in the cuts and in a list', () => {
  const heads = paper.blocks.filter((block) => block.kind === 'heading');
  const boards = heads.filter(({ level }) => level === 2).map(({ text }) => text);
  for (const board of boards) {
    const from = paper.blocks.findIndex((block) => block.kind === 'heading' && block.text === board);
    const after = paper.blocks.slice(from + 1);
    const to = after.findIndex((block) => block.kind === 'heading' && block.level === 2);
    const blocks: readonly Block[] = to < 0 ? after : after.slice(0, to);
    const numbers = blocks.flatMap((block) =>
      block.kind === 'heading' ? [/^Sheets? (\d+)(?: to (\d+))? of (\d+): /.exec(block.text)!] : [],
    );
    let next = 1;
    for (const [, first, last = first] of numbers) {
      expect(Number(first)).toBe(next);
      next = Number(last) + 1;
    }
    expect(next - 1).toBe(Number(numbers[0]![3]));
    const list = blocks.find((block) => block.kind === 'table' && block.columns[0]?.head === 'Offcut');
    const names = list?.kind === 'table' ? list.rows.map(([name]) => String(name)) : [];
    expect(names).toEqual(names.map((_, i) => `R${i + 1}`));
    const said = (words: string): readonly string[] => words.match(/\bR\d+\b/g) ?? [];
    const drawn = blocks.flatMap((block) =>
      block.kind === 'picture' ? texts(block.scene).flatMap(({ text }) => said(text)) : [],
    );
    expect(drawn.toSorted()).toEqual(names.toSorted());
  }
  expect(tables.some(({ columns }) => columns[0]?.head === 'Offcut')).toBe(true);
});

test('the cuts name every piece as often as the list has it, and no waste', () => {
  const cells = tables.filter(({ columns }) => columns[1]?.head === 'Gives').flatMap(({ rows }) => rows);
  expect(cells.length).toBeGreaterThan(50);
  for (const [, gives] of cells) expect(gives).toMatch(/^(?:[A-Z]{1,2}|part|offcut R\d+(?:, R\d+)*)$/);
});
