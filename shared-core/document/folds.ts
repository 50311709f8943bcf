/** Lines [from, to], counted from 0, of which all but the first can be folded away. */
export interface Fold {
  readonly from: number;
  readonly to: number;
  readonly kind: 'block' | 'remark';
}

interface Open {
  readonly line: number;
  /** Column of the key or dash; what stands further right is inside. */
  readonly column: number;
  readonly isDash: boolean;
}

/**
 * What can be folded in a text: a key with the block under it, an item of a list, brackets over several lines, and remarks
 * that fill several lines. A list may stand in the column of the key that holds it. Blank lines and remarks behind a
 * block stay in sight. Linear in the text; in the order of the lines.
 */
export function foldsOf(text: string): readonly Fold[] {
  const folds: Fold[] = [];
  const open: Open[] = [];
  let last = -1;
  let remark: number | null = null;
  const lines = text.split(/\r\n|\r|\n/);
  const close = (from: number, to: number, kind: Fold['kind']): void => {
    if (to > from) folds.push({ from, to, kind });
  };
  const endRemark = (line: number): void => {
    if (remark !== null) close(remark, line - 1, 'remark');
    remark = null;
  };
  lines.forEach((raw, line) => {
    const column = raw.search(/\S/);
    if (column >= 0 && raw[column] === '#') {
      remark ??= line;
      return;
    }
    endRemark(line);
    if (column < 0) return;
    const isDash = /^-(?:\s|$)/.test(raw.slice(column));
    const closes = /^[\]}]/.test(raw.slice(column));
    for (let top = open.at(-1); top !== undefined; top = open.at(-1)) {
      const inside = column > top.column || (isDash && !top.isDash && column === top.column);
      if (inside) break;
      open.pop();
      // A closing bracket in the column of its key ends that block.
      close(top.line, closes && column === top.column ? line : last, 'block');
    }
    if (!closes) open.push({ line, column, isDash });
    last = line;
  });
  endRemark(lines.length);
  for (const { line } of open.toReversed()) close(line, last, 'block');
  return folds.toSorted((a, b) => a.from - b.from || b.to - a.to);
}
