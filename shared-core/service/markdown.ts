import { withoutControls } from '../words/controls.js';

const onOneLine = (text: string): string => withoutControls(text).replace(/\s+/g, ' ');

/** A text of the owner's as Markdown that shows it as it is, on one line; an address in it is no link. */
export function plain(text: string): string {
  return onOneLine(text)
    .replace(/[\\`*_{}[\]()#+!|<>~$&]/g, '\\$&')
    .replace(/:(?=\/\/)|(?<=\bwww)\.|@/gi, '\\$&');
}

/** A text in letters of one width. */
export function code(text: string): string {
  const line = onOneLine(text);
  const longest = Math.max(0, ...[...line.matchAll(/`+/g)].map(([run]) => run.length));
  const fence = '`'.repeat(longest + 1);
  const pad = line.startsWith('`') || line.endsWith('`') ? ' ' : '';
  return `${fence}${pad}${line}${pad}${fence}`;
}

/** A text of ours with words of the files in backticks. */
export function withCode(text: string): string {
  return text
    .split('`')
    .map((part, index) => (index % 2 === 1 ? code(part) : plain(part)))
    .join('');
}

/** A table; figures stand to the right. Cells are plain text. */
export function table(
  heads: readonly { readonly title: string; readonly figures?: boolean }[],
  rows: readonly (readonly string[])[],
): string {
  const line = (cells: readonly string[]): string => `| ${cells.join(' | ')} |`;
  return [
    line(heads.map(({ title }) => title)),
    line(heads.map(({ figures }) => (figures === true ? '---:' : ':---'))),
    ...rows.map((cells) => line(cells.map(plain))),
  ].join('\n');
}

/** Paragraphs; empty ones are left out. */
export function paragraphs(...parts: readonly string[]): string {
  return parts.filter((part) => part !== '').join('\n\n');
}
