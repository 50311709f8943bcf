/** The rows of the table under a heading of a reference page, cell by cell. */
export function tableUnder(page: string, heading: string): string[][] {
  const [, section = ''] = page.split(`\n## ${heading}\n`);
  const lines = (section.split('\n## ')[0] ?? '').split('\n').filter((line) => line.startsWith('|'));
  return lines.slice(2).map((line) =>
    line
      .split('|')
      .slice(1, -1)
      .map((cell) => cell.trim()),
  );
}
