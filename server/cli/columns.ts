/** Cells under each other. */
export function columns(rows: readonly (readonly string[])[]): readonly string[] {
  const widths = rows[0]?.map((_, column) => Math.max(...rows.map((cells) => (cells[column] ?? '').length))) ?? [];
  return rows.map((cells) =>
    `    ${cells.map((cell, column) => cell.padEnd(widths[column] ?? 0)).join('  ')}`.trimEnd(),
  );
}
