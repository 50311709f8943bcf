import { lineEnd as endOfLine, lineStart as startOfLine } from '../lines.js';
import type { TextEdit } from '../pieces.js';
import type { Quotes } from '../scalar-text.js';
import type { MapEntry, TreeNode } from '../tree.js';

/** A text by its lines, and what stands beside its keys and items. Offsets are in UTF-16 code units. */
export class TextLines {
  readonly eol: string;

  constructor(readonly text: string) {
    this.eol = /\r?\n/.exec(text)?.[0] ?? '\n';
  }

  /** The whole lines from that of `start` to that of `end`. */
  wholeLines(start: number, end: number): TextEdit {
    const from = this.lineStart(start);
    const newline = this.text.indexOf('\n', end);
    if (newline !== -1) return { start: from, end: newline + 1, text: '' };
    // At the end of a text without a last newline the one before goes.
    return { start: /\r?\n?$/.exec(this.text.slice(0, from))!.index, end: this.text.length, text: '' };
  }

  /** Start of the line; behind a byte order mark. */
  lineStart(offset: number): number {
    const start = startOfLine(this.text, offset);
    return start === 0 && this.text.startsWith('\uFEFF') ? 1 : start;
  }

  /** End of the line, before its line break. */
  lineEnd(offset: number): number {
    const end = endOfLine(this.text, offset);
    return end > offset && end < this.text.length && this.text[end - 1] === '\r' ? end - 1 : end;
  }

  column(offset: number): number {
    return offset - this.lineStart(offset);
  }

  /** Offset behind the colon of a key, or null where none follows it at once. */
  colonEnd(entry: MapEntry): number | null {
    const colon = /^[ \t]*:/.exec(this.text.slice(entry.keyPlace.end, entry.keyPlace.end + 1000));
    return colon === null ? null : entry.keyPlace.end + colon[0].length;
  }

  /** Offset of the dash before an item of a block list, be it on a line above; null where none is found. */
  dashOf(item: TreeNode): number | null {
    let end = (item.alias ?? item.place).start;
    for (;;) {
      const line = this.lineStart(end);
      const before = this.text.slice(line, end).replace(/(?:^|\s)#[^\n]*$/, '');
      const dash = /-\s*(?:[&!]\S*\s+)*$/.exec(before);
      if (dash !== null) return line + dash.index;
      if (before.trim() !== '' || line <= 1) return null;
      end = line - 1;
    }
  }

  quotesAt(start: number, end: number): Quotes {
    const first = this.text[start];
    return end > start && (first === "'" || first === '"') ? first : '';
  }
}

/** By how much the first map inside a map is indented. */
export function usualIndent(node: TreeNode | null, lines: TextLines): number | null {
  if (node === null || node.kind === 'scalar' || node.flow || node.alias !== undefined) return null;
  const children = node.kind === 'map' ? node.entries.map((entry) => entry.value) : node.items;
  for (const child of children) {
    if (node.kind === 'map' && child?.kind === 'map' && !child.flow && child.alias === undefined) {
      const step = lines.column(child.place.start) - lines.column(node.place.start);
      if (step > 0) return step;
    }
    const deeper = usualIndent(child, lines);
    if (deeper !== null) return deeper;
  }
  return null;
}
