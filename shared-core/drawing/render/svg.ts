import { tell } from '../../words/message.js';
import { say } from '../messages.js';
import { SCALES } from '../scene/scale.js';
import { describe, tableCells } from '../bore-map/hole-table.js';
import { CAP_HEIGHT, fitText, textWidth } from '../scene/lettering.js';
import type { PrintedScene } from '../scene/scene.js';
import { sentence } from '../../words/english.js';
import { LettersUsed, type FaceCutter } from './embedded-face.js';
import { WIDE_LINE } from './print-look.js';
import { lookClass, printStyle } from './print-style.js';
import { asWideAs, boreClass, coordinate, fileNodes, patternNodes, type SvgNode } from './svg-tree.js';
import { writeNode } from './write-node.js';

/** What stands about the drawing in a file: its head, and the hole table with the notes. */
export interface SvgOptions {
  /** Draws the hole table and the notes under the drawing; left out where a page shows them itself. */
  readonly table?: boolean;
  /** Brings the lettering along; null where whoever shows the drawing has it. */
  readonly face?: FaceCutter | null;
}

const MARGIN = 6;
const ROW = 5.2;
const TEXT = 2.5;

/**
 * A file of its own: ink on light paper, sizes in millimetres of paper, so that a print at 100 % is true to the scale that
 * its head states. Same scene, same bytes.
 */
export function toSvg(scene: PrintedScene, { table = true, face = null }: SvgOptions = {}): string {
  return `<?xml version="1.0" encoding="UTF-8"?>\n${writeNode(svgTree(scene, table, face))}\n`;
}

/** The same as a tree, for a page that it stands in. */
export function svgTree(scene: PrintedScene, withTable: boolean, face: FaceCutter | null): SvgNode {
  const { scale, frame } = scene;
  const paper = (length: number): number => length / scale;
  const head = headNodes(scene);
  const table = withTable ? tableNodes(scene) : { nodes: [], width: 0, height: 0 };
  const width = Math.max(paper(frame.width), table.width, head.width) + 2 * MARGIN;
  const top = MARGIN + head.height;
  const drawn = paper(frame.height);
  const height = top + drawn + (withTable ? 4 + table.height : 0) + MARGIN;
  const shift = MARGIN + (width - 2 * MARGIN - paper(frame.width)) / 2;
  const place = (key: string, x: number, y: number, children: readonly SvgNode[], more = ''): SvgNode => ({
    tag: 'g',
    key,
    attributes: { transform: `translate(${coordinate(x)} ${coordinate(y)})${more}` },
    children,
  });
  const drawing = place(
    'drawing',
    shift - paper(frame.x),
    top - paper(frame.y),
    fileNodes(scene),
    ` scale(${coordinate6(1 / scale)})`,
  );
  const parts = [
    place('head', MARGIN, MARGIN, head.nodes),
    drawing,
    ...(withTable ? [place('table', MARGIN, top + drawn + 4, table.nodes)] : []),
  ];
  return {
    tag: 'svg',
    key: 'root',
    attributes: {
      xmlns: 'http://www.w3.org/2000/svg',
      class: `borewright-drawing ${lookClass(scale, WIDE_LINE[scene.view])}`,
      width: `${coordinate(width)}mm`,
      height: `${coordinate(height)}mm`,
      viewBox: `0 0 ${coordinate(width)} ${coordinate(height)}`,
      role: 'img',
      'aria-label': describe(scene),
    },
    children: [
      { tag: 'title', key: 'title', attributes: {}, children: [], text: scene.title },
      {
        tag: 'style',
        key: 'style',
        attributes: {},
        children: [],
        text: faceStyle(parts, face) + printStyle(scale, WIDE_LINE[scene.view]),
      },
      { tag: 'rect', key: 'paper', attributes: { class: 'paper', width: '100%', height: '100%' }, children: [] },
      ...parts,
    ],
  };
}

function faceStyle(nodes: readonly SvgNode[], face: FaceCutter | null): string {
  if (face === null) return '';
  const used = new LettersUsed();
  nodes.forEach((node) => used.add(node));
  return used.style(face);
}

/** Six decimals: a scale of 1:20 is 0.05, of 1:3 would need more than a coordinate has. */
function coordinate6(value: number): string {
  return String(Math.round(value * 1e6) / 1e6);
}

interface Block {
  readonly nodes: readonly SvgNode[];
  readonly width: number;
  readonly height: number;
}

function text(key: string, x: number, y: number, words: string, height = TEXT, strong = false, more = ''): SvgNode {
  return {
    tag: 'text',
    key,
    attributes: {
      class: `text plain anchor-start${strong ? ' strong' : ''}${more}`,
      'font-size': coordinate(height / CAP_HEIGHT),
      x: coordinate(x),
      y: coordinate(y),
      ...asWideAs(words, height, strong, 1),
    },
    children: [],
    text: words,
  };
}

/** A scene that is lettered for a screen has no scale that a ruler could use. */
function scaleText({ scale }: PrintedScene): string {
  return tell(SCALES.some((one) => one === scale) ? say.scale({ scale }) : say.notToScale(), 'mm');
}

function headNodes(scene: PrintedScene): Block {
  const facts = [...scene.facts.map(({ word, value }) => `${word} ${value}`), scaleText(scene)].join('   ·   ');
  const lines = [scene.title, facts, scene.caption];
  const nodes = [
    text('title', 0, 3.5, scene.title, 3.5, true),
    text('facts', 0, 9.3, facts),
    text('caption', 0, 14.3, scene.caption),
  ];
  const width = Math.max(...lines.map((line, index) => textWidth(line, index === 0 ? 3.5 : TEXT, index === 0)));
  return { nodes, width, height: 19 };
}

/** Widest a cell gets, in millimetres. */
const MOST_CELL = 70;

/** The hole table, and under it what is found and noted. */
function tableNodes(scene: PrintedScene): Block {
  const heads = ['', ...scene.heads];
  const ofAll = scene.view === 'all-panels';
  const rows = scene.table.map((line) =>
    ['', ...tableCells(line)].map((cell, index) => (ofAll && index === 3 ? `${line.panel}, ${cell}` : cell)),
  );
  const columns = heads.map((head, index) =>
    index === 0
      ? 6
      : 3 +
        Math.max(
          textWidth(head, TEXT, true),
          ...rows.map((row) => Math.min(textWidth(row[index] ?? '', TEXT, false), MOST_CELL)),
        ),
  );
  const starts = columns.map((_, index) => columns.slice(0, index).reduce((sum, width) => sum + width, 0));
  const width = columns.reduce((sum, column) => sum + column, 0);
  const holes = rows.length === 0 ? NO_BLOCK : holeRows(scene, heads, rows, { starts, width });
  const noteWidth = Math.max(width, 150);
  const notes = noteLines(scene, noteWidth, holes.height);
  return {
    nodes: [...holes.nodes, ...notes.nodes],
    width: Math.max(width, scene.notes.length > 0 ? noteWidth : 0),
    height: notes.height + 2,
  };
}

const NO_BLOCK: Block = { nodes: [], width: 0, height: 0 };

function holeRows(
  scene: PrintedScene,
  heads: readonly string[],
  rows: readonly (readonly string[])[],
  { starts, width }: { readonly starts: readonly number[]; readonly width: number },
): Block {
  const rule = (key: string, y: number, line: string): SvgNode => ({
    tag: 'path',
    key,
    attributes: { class: `rule ${line}`, d: `M0 ${coordinate(y)}H${coordinate(width)}` },
    children: [],
  });
  const nodes = heads.flatMap((head, index) =>
    head === '' ? [] : [text(`head-${index}`, starts[index]!, 3.2, head, TEXT, true)],
  );
  let y = 4.8;
  nodes.push(rule('rule-head', y, 'wide'));
  rows.forEach((row, at) => {
    nodes.push(signNode(`sign-${at}`, scene.table[at]!.purpose, y + ROW / 2, scene.scale));
    row.forEach((cell, index) => {
      if (cell !== '')
        nodes.push(text(`cell-${at}-${index}`, starts[index]!, y + ROW - 1.6, fitText(cell, TEXT, false, MOST_CELL)));
    });
    y += ROW;
    nodes.push(rule(`rule-${at}`, y, 'narrow'));
  });
  return { nodes, width, height: y + 3 };
}

/** How the bores of a line are drawn. */
function signNode(key: string, purpose: PrintedScene['table'][number]['purpose'], y: number, scale: number): SvgNode {
  return {
    tag: 'g',
    key,
    attributes: {
      class: boreClass(purpose),
      transform: `translate(2.2 ${coordinate(y)}) scale(${coordinate6(1 / scale)})`,
    },
    children: [
      { tag: 'circle', key: 'rim', attributes: { class: 'rim', r: coordinate(1.6 * scale) }, children: [] },
      ...patternNodes(purpose, 1.6 * scale),
    ],
  };
}

/** Findings and notes in lines of a width, from `top` down; the height is that of their last line. */
function noteLines({ findings, notes }: PrintedScene, width: number, top: number): Block {
  const nodes: SvgNode[] = [];
  let y = top;
  const all = [...findings.map(({ severity, message }) => `${sentence(severity)}: ${message}`), ...notes];
  all.forEach((note, index) => {
    wrap(note, width).forEach((line, at) => {
      y += 4.4;
      nodes.push(text(`note-${index}-${at}`, 0, y, line, TEXT, false, ' note'));
    });
  });
  return { nodes, width, height: y };
}

/** Breaks a sentence into lines of no more than `room` millimetres. */
function wrap(sentence: string, room: number): string[] {
  const lines: string[] = [];
  for (const word of sentence.split(' ')) {
    const last = lines.at(-1);
    if (last !== undefined && textWidth(`${last} ${word}`, TEXT, false) <= room)
      lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}
