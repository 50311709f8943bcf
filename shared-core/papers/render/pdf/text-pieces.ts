import { CAP_HEIGHT } from '../../../drawing/scene/lettering.js';
import type { Block, Figures, Heading } from '../../paper.js';
import type { Piece } from './flow.js';
import type { Fonts } from './fonts.js';
import { hex, INK, TICK_SIDE } from './pen.js';

/** Font sizes in millimetres: running text of 9 1/2 points, headings above it. */
export const TEXT = 3.35;
export const LEAD = 1.38;
const HEADINGS = { 1: 6.4, 2: 4.8, 3: 3.9 } as const;
const ABOVE = { 1: 8, 2: 6, 3: 4 } as const;
const NAME_WIDTH = 38;
/** The room kept for a box to tick. */
const TICK_ROOM = 8;
const QUIET = hex('#555555');

type TextBlock = Exclude<Block<string>, { kind: 'table' | 'picture' | 'labels' }>;

export function textPieces(block: TextBlock, fonts: Fonts, width: number): readonly Piece[] {
  switch (block.kind) {
    case 'heading':
      return [headingPiece(block, fonts, width)];
    case 'paragraph':
      return [linesPiece(fonts.wrapped(block.text, TEXT, false, width), 1.6)];
    case 'list':
      return block.items.map((item) => itemPiece(item, '–', fonts, width));
    case 'cautions':
      return [cautionsPiece(block.items, fonts, width)];
    case 'figures':
      return figurePieces(block, fonts, width);
  }
}

export function headingPiece({ level, text, aside }: Heading<string>, fonts: Fonts, width: number): Piece {
  const size = HEADINGS[level];
  const beside = aside === '' ? 0 : fonts.width(aside, TEXT, false) + 4;
  const isBeside = beside < width / 2;
  const lines = fonts.wrapped(text, size, true, isBeside ? width - beside : width);
  const under = !isBeside && aside !== '' ? fonts.wrapped(aside, TEXT, false, width) : [];
  const height = lines.length * size * LEAD + under.length * TEXT * LEAD + (level === 1 ? 1.6 : 0);
  return {
    height,
    above: ABOVE[level],
    leads: true,
    opensPage: level === 1,
    mark: { level, text },
    draw(pen, x, y) {
      lines.forEach((line, i) => pen.text(line, x, y + (i + 0.8) * size * LEAD, { size, strong: true }));
      const base = y + 0.8 * size * LEAD;
      if (isBeside) pen.text(aside, x + width, base, { size: TEXT, anchor: 'end', colour: QUIET });
      under.forEach((line, i) => {
        pen.text(line, x, y + lines.length * size * LEAD + (i + 0.8) * TEXT * LEAD, { size: TEXT, colour: QUIET });
      });
      if (level === 1) pen.line(x, y + height, x + width, y + height, { width: 0.5, colour: INK });
    },
  };
}

function linesPiece(lines: readonly string[], above: number, inset = 0): Piece {
  return {
    height: lines.length * TEXT * LEAD,
    above,
    leads: false,
    draw(pen, x, y) {
      lines.forEach((line, i) => pen.text(line, x + inset, y + (i + 0.8) * TEXT * LEAD, { size: TEXT }));
    },
  };
}

function itemPiece(item: string, sign: string, fonts: Fonts, width: number): Piece {
  const lines = linesPiece(fonts.wrapped(item, TEXT, false, width - 5), 1, 5);
  return {
    ...lines,
    draw(pen, x, y) {
      pen.text(sign, x + 1, y + 0.8 * TEXT * LEAD, { size: TEXT });
      lines.draw(pen, x, y);
    },
  };
}

/** In a frame, so that it is seen before anything is done. */
function cautionsPiece(items: readonly string[], fonts: Fonts, width: number): Piece {
  const inner = items.map((item) => itemPiece(item, '!', fonts, width - 8));
  const height = inner.reduce((sum, one) => sum + one.above + one.height, 0) + 4;
  return {
    height,
    above: 3,
    leads: false,
    draw(pen, x, y) {
      pen.rectangle(x, y, width, height, { stroke: { width: 0.6, colour: hex('#8a5a00') } });
      let at = y + 1.5;
      for (const one of inner) {
        one.draw(pen, x + 4, at + one.above);
        at += one.above + one.height;
      }
    },
  };
}

/** Capitals of 3.5 mm (ISO 3098), which are read at arm's length. */
const FIGURE = 3.5 / CAP_HEIGHT;

/** Names to the left, figures in bold and large; a star before what is to be changed, and a box to tick behind it. */
function figurePieces({ figures, note }: Figures<string>, fonts: Fonts, width: number): readonly Piece[] {
  const room = width - NAME_WIDTH - TICK_ROOM;
  const rows = figures.map(({ name, value, about, marked, doing }): Piece => {
    const names = fonts.wrapped(name, TEXT, false, NAME_WIDTH - 6);
    const values = fonts.wrapped(value, FIGURE, true, room);
    // Behind a figure on one line, else under it.
    const beside = NAME_WIDTH + fonts.width(values[0]!, FIGURE, true) + 3;
    const isBeside = values.length === 1 && beside + fonts.width(about, TEXT, false) <= width - TICK_ROOM;
    const rest = [...(about === '' || isBeside ? [] : [about]), ...doing].flatMap((words) =>
      fonts.wrapped(words, TEXT, false, room),
    );
    const high = values.length * FIGURE * LEAD;
    return {
      height: Math.max(names.length * TEXT * LEAD, high + rest.length * TEXT * LEAD),
      above: 0.8,
      leads: false,
      draw(pen, x, y) {
        const base = y + 0.8 * FIGURE * LEAD;
        const under = (line: number): number => y + high + (line + 0.8) * TEXT * LEAD;
        if (marked) {
          pen.text('*', x, base, { size: FIGURE, strong: true });
          pen.tick(x + width - TICK_SIDE, base - TICK_SIDE + 0.5);
        }
        names.forEach((line, i) => pen.text(line, x + 3, base + i * TEXT * LEAD, { size: TEXT }));
        values.forEach((line, i) =>
          pen.text(line, x + NAME_WIDTH, base + i * FIGURE * LEAD, { size: FIGURE, strong: true }),
        );
        if (isBeside) pen.text(about, x + beside, base, { size: TEXT, colour: QUIET });
        rest.forEach((line, i) => pen.text(line, x + NAME_WIDTH, under(i), { size: TEXT, colour: QUIET }));
      },
    };
  });
  return note === '' ? rows : [...rows, linesPiece(fonts.wrapped(note, TEXT, false, width), 1.4)];
}
