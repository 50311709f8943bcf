import { HEADS } from './messages.js';
import { TICK, type Paper } from '../paper.js';

/**
 * The tables of a paper as CSV (RFC 4180: commas, CRLF, quotes where they are needed), each under its headings; a cell that is
 * as above is written out, so that every line stands for itself. With more than one table the heading is the first column.
 * null where the paper has no table.
 */
export function asCsv(paper: Paper<string>): string | null {
  const blocks = paper.blocks.map((block) => (block.kind === 'labels' ? block.table : block));
  const lines: (readonly string[])[] = [];
  let part = '';
  let heads = '';
  const several = blocks.filter(({ kind }) => kind === 'table').length > 1;
  for (const block of blocks) {
    if (block.kind === 'heading' && block.level < 3) part = block.text;
    if (block.kind !== 'table') continue;
    const columns = block.columns.map(({ head }) => head);
    const first = several ? [HEADS.part] : [];
    // Alike tables are one, so that a spreadsheet can sort the whole.
    if (heads !== columns.join('\n')) lines.push([...first, ...columns]);
    heads = columns.join('\n');
    let above: readonly string[] = [];
    for (const cells of block.rows) {
      above = cells.map((cell, i) => (cell === TICK ? '' : (cell ?? above[i] ?? '')));
      lines.push([...(several ? [part] : []), ...above]);
    }
  }
  return lines.length === 0 ? null : lines.map((cells) => `${cells.map(quoted).join(',')}\r\n`).join('');
}

/** Beginnings that a spreadsheet takes for a formula get an apostrophe, so that a name stays text. */
function quoted(cell: string): string {
  const text = /^[=+@\t\r]|^-(?![\d.])/.test(cell) ? `'${cell}` : cell;
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
