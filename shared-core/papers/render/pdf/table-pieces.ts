import { TICK, type Table } from '../../paper.js';
import { heightOf, type Piece, type Room } from './flow.js';
import { BREAKS, type Fonts } from './fonts.js';
import { hex, TICK_SIDE } from './pen.js';
import { TEXT } from './text-pieces.js';

const SIZE = TEXT * 0.94;
const LINE = SIZE * 1.32;
const GAP = 3;
const RULE = { width: 0.15, colour: hex('#aaaaaa') };
const HEAD_RULE = { width: 0.4, colour: hex('#1f1f1f') };

/** A table that takes up no more of a page than this is not parted. */
const SHORT_PART = 1 / 3;

/** The head, which comes again on every page, and a piece for each row. */
export function tablePieces({ columns, rows }: Table<string>, fonts: Fonts, { width, height }: Room): readonly Piece[] {
  const heads = columns.map(({ head }) => head);
  const isFigures = columns.map(({ figures }) => figures);
  const said = rows.map((cells) => cells.map((cell) => cell ?? ''));
  const widths = columnWidths([heads, ...said], fonts, width);
  const line = (cells: readonly string[], strong: boolean): Piece =>
    rowPiece(cells, widths, isFigures, strong, fonts, width);
  const head: Piece = { ...line(heads, true), above: 2.5, leads: true };
  const body = said.map((cells): Piece => ({ ...line(cells, false), again: head }));
  const isShort = heightOf([head, ...body]) <= SHORT_PART * height;
  return [head, ...body.map((row, i) => (isShort && i < body.length - 1 ? { ...row, leads: true } : row))];
}

function rowPiece(
  cells: readonly string[],
  widths: readonly number[],
  isFigures: readonly boolean[],
  strong: boolean,
  fonts: Fonts,
  width: number,
): Piece {
  const lines = cells.map((cell, i) => fonts.wrapped(cell, SIZE, strong, widths[i]! + 0.01));
  const least = cells.includes(TICK) ? TICK_SIDE + 1.2 : 0;
  const height = Math.max(least, Math.max(1, ...lines.map((one) => one.length)) * LINE + 1.4);
  return {
    height,
    above: 0,
    leads: false,
    draw(pen, x, y) {
      let left = x;
      lines.forEach((words, i) => {
        const right = isFigures[i] === true;
        if (cells[i] === TICK) {
          pen.tick(left, y + 0.6);
          left += widths[i]! + GAP;
          return;
        }
        words.forEach((text, at) => {
          const base = y + 0.4 + (at + 0.82) * LINE;
          pen.text(text, right ? left + widths[i]! : left, base, {
            size: SIZE,
            strong,
            anchor: right ? 'end' : 'start',
          });
        });
        left += widths[i]! + GAP;
      });
      pen.line(x, y + height, x + width, y + height, strong ? HEAD_RULE : RULE);
    },
  };
}

/**
 * As wide as the widest cell where all go on the page; else all that are wider than their longest word by more than some length
 * give way down to it, the same length for all, so that no one column pays for the others.
 */
function columnWidths(rows: readonly (readonly string[])[], fonts: Fonts, width: number): readonly number[] {
  const count = rows[0]?.length ?? 0;
  const room = width - GAP * Math.max(0, count - 1);
  const widest = (index: number, of: (cell: string) => readonly string[]): number =>
    Math.max(
      0,
      ...rows.flatMap((cells, row) =>
        of(cells[index] ?? '').map((part) => (part === TICK ? TICK_SIDE : fonts.width(part, SIZE, row === 0))),
      ),
    );
  const least = Array.from({ length: count }, (_, i) =>
    Math.min(
      widest(i, (cell) => cell.split(BREAKS)),
      room / count,
    ),
  );
  const more = least.map((one, i) => Math.max(0, widest(i, (cell) => [cell]) - one));
  const over = room - sum(least);
  if (over < 0) return least.map((one) => (one * room) / sum(least));
  const most = levelOf(more, over);
  return least.map((one, i) => one + Math.min(more[i]!, most));
}

/** The length that each may have at the most, so that together they have no more than `room`. */
function levelOf(lengths: readonly number[], room: number): number {
  let left = room;
  let waiting = lengths.length;
  for (const length of lengths.toSorted((a, b) => a - b)) {
    if (length * waiting > left) return left / waiting;
    left -= length;
    waiting -= 1;
  }
  return Infinity;
}

const sum = (values: readonly number[]): number => values.reduce((all, one) => all + one, 0);
