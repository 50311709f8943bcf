import { escaped } from '../../words/markup.js';
import { anchorOf } from './keys.js';

const STYLE = `
:root { color-scheme: light dark; }
body { font: 1rem/1.5 system-ui, sans-serif; max-width: 46rem; margin: 2rem auto; padding: 0 1rem; }
h2 { margin-top: 3rem; border-top: 1px solid; padding-top: 1rem; }
h3 { margin-top: 2rem; }
code, pre { font-family: ui-monospace, monospace; font-size: 0.9em; }
pre { padding: 0.75rem 1rem; border: 1px solid; overflow-x: auto; }
nav ul { columns: 16rem; }
`;

/**
 * A page of the reference for a browser, from the Markdown that it is written in: headings, paragraphs, lists, fenced texts,
 * and within a line code, links and bold words. Links between pages lead to their forms for a browser.
 */
export function htmlOf(markdown: string): string {
  const lines = markdown.split('\n');
  const title = lines.find((line) => line.startsWith('# '))?.slice(2) ?? '';
  const sections = lines.filter((line) => line.startsWith('## ')).map((line) => line.slice(3));
  const contents = sections.map((heading) => `<li><a href="#${anchorOf(heading)}">${inline(heading)}</a></li>`);
  const [head, ...rest] = blocksOf(lines).map(blockHtml);
  return [
    '<!doctype html>',
    '<html lang="en">',
    `<head><meta charset="utf-8"><meta name="viewport" content="width=device-width"><title>${escaped(title)}</title><style>${STYLE}</style></head>`,
    '<body><main>',
    head ?? '',
    ...(contents.length === 0 ? [] : [`<nav><ul>${contents.join('')}</ul></nav>`]),
    ...rest,
    '</main></body>',
    '</html>',
    '',
  ].join('\n');
}

type Block =
  | { readonly as: 'heading'; readonly level: number; readonly text: string }
  | { readonly as: 'fenced' | 'list' | 'paragraph'; readonly lines: readonly string[] };

function blocksOf(lines: readonly string[]): readonly Block[] {
  const blocks: Block[] = [];
  for (let at = 0; at < lines.length; at += 1) {
    const line = lines[at]!;
    const heading = /^(#{1,3}) (.*)$/.exec(line);
    if (line === '') continue;
    if (heading !== null) {
      blocks.push({ as: 'heading', level: heading[1]!.length, text: heading[2]! });
    } else if (line.startsWith('```')) {
      const end = lines.indexOf('```', at + 1);
      blocks.push({ as: 'fenced', lines: lines.slice(at + 1, end) });
      at = end;
    } else {
      const end = lines.findIndex((other, i) => i > at && other === '');
      const all = lines.slice(at, end === -1 ? lines.length : end);
      blocks.push({ as: all.every((one) => one.startsWith('- ')) ? 'list' : 'paragraph', lines: all });
      at += all.length - 1;
    }
  }
  return blocks;
}

function blockHtml(block: Block): string {
  switch (block.as) {
    case 'heading':
      return `<h${block.level} id="${anchorOf(block.text)}">${inline(block.text)}</h${block.level}>`;
    case 'fenced':
      return `<pre><code>${block.lines.map(escaped).join('\n')}</code></pre>`;
    case 'list':
      return `<ul>${block.lines.map((line) => `<li>${inline(line.slice(2))}</li>`).join('')}</ul>`;
    case 'paragraph':
      return `<p>${block.lines.map(inline).join('<br>')}</p>`;
  }
}

/** What stands between backticks is code, and nothing in it is a mark. */
function inline(text: string): string {
  return escaped(text)
    .split(/(`[^`]+`)/)
    .map((part) =>
      /^`.+`$/.test(part) ? `<code>${part.slice(1, -1)}</code>` : part.replace(/\*\*(.+?)\*\*/g, '<b>$1</b>'),
    )
    .join('')
    .replace(
      /\[([^\]]+)\]\(([^()\s]+)\)/g,
      (_, words: string, to: string) => `<a href="${to.replace(/\.md(?=#|$)/, '.html')}">${words}</a>`,
    );
}
