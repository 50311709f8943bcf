import { escaped } from '../../words/markup.js';
import { LettersUsed, type FaceCutter } from '../../drawing/render/embedded-face.js';
import { svgTree } from '../../drawing/render/svg.js';
import { writeNode } from '../../drawing/render/write-node.js';
import { TICK, type Block, type Figures, type Heading, type Paper, type Picture, type Table } from '../paper.js';
import { tell } from '../../words/message.js';
import { languageSpoken } from '../../words/spoken.js';
import { HEADS, say } from './messages.js';
import { labelSheetsHtml, labelStyle } from './labels-html.js';
import { PAGE_STYLE } from './html-style.js';

/**
 * A paper as one HTML page: a plain file without scripts, that reaches nothing but the pictures beside it. With more than one
 * part of its own it begins with a list of its contents.
 * @param face brings the lettering of its drawings along, once for all of them
 */
export function asHtml({ title, blocks }: Paper<string>, face: FaceCutter | null = null): string {
  const used = new LettersUsed();
  const parts = bodies(blocks, used);
  return `<!doctype html>
<html lang="${languageSpoken()}">
<meta charset="utf-8">
<meta name="viewport" content="width=device-width">
<title>${escaped(title)}</title>
<style>
${PAGE_STYLE}${blocks.flatMap((block) => (block.kind === 'labels' ? [labelStyle(block)] : [])).join('')}${face === null ? '' : used.style(face)}</style>
<h1>${escaped(title)}</h1>
${[...contents(blocks), ...parts].join('\n')}
</html>
`;
}

/** Where a heading is linked to; by its place, since two headings may say the same. */
const anchorOf = (index: number): string => `part-${index + 1}`;

function contents(blocks: readonly Block<string>[]): readonly string[] {
  const heads = blocks.flatMap((block, index) =>
    block.kind === 'heading' && block.level < 3 ? [{ block, anchor: anchorOf(index) }] : [],
  );
  if (heads.length < 2) return [];
  const items = heads.map(
    ({ block: { level, text }, anchor }) => `<li class="level-${level}"><a href="#${anchor}">${escaped(text)}</a></li>`,
  );
  return [`<nav aria-label="${escaped(tell(say.contents(), 'mm'))}">\n<ul>\n${items.join('\n')}\n</ul>\n</nav>`];
}

/** Pictures that follow each other stand side by side. */
function bodies(blocks: readonly Block<string>[], used: LettersUsed): readonly string[] {
  const isPicture = (block: Block<string> | undefined): boolean => block?.kind === 'picture';
  return blocks.map((block, index) => {
    const opens = isPicture(block) && !isPicture(blocks[index - 1]) ? '<div class="pictures">\n' : '';
    const closes = isPicture(block) && !isPicture(blocks[index + 1]) ? '\n</div>' : '';
    return `${opens}${body(block, index, used)}${closes}`;
  });
}

function body(block: Block<string>, index: number, used: LettersUsed): string {
  switch (block.kind) {
    case 'heading':
      return headingHtml(block, anchorOf(index));
    case 'paragraph':
      return `<p>${escaped(block.text)}</p>`;
    case 'list':
      return listHtml('list', block.items);
    case 'cautions':
      return listHtml('cautions', block.items);
    case 'figures':
      return figuresHtml(block);
    case 'table':
      return tableHtml(block);
    case 'picture':
      return pictureHtml(block, used);
    case 'labels':
      return labelSheetsHtml(block, used);
  }
}

function headingHtml({ level, text, aside }: Heading<string>, anchor: string): string {
  const tag = `h${level + 1}`;
  const more = aside === '' ? '' : ` <span class="aside">${escaped(aside)}</span>`;
  return `<${tag} id="${anchor}">${escaped(text)}${more}</${tag}>`;
}

function listHtml(name: string, items: readonly string[]): string {
  return `<ul class="${name}">\n${items.map((item) => `<li>${escaped(item)}</li>`).join('\n')}\n</ul>`;
}

function figuresHtml({ figures, note }: Figures<string>): string {
  const lines = figures.map(({ name, value, about, marked, doing }) => {
    const more = about === '' ? '' : ` <span class="about">${escaped(about)}</span>`;
    const done = doing.map((sentence) => `<dd class="doing">${escaped(sentence)}</dd>`).join('');
    // Not by its look alone.
    const mark = marked ? `<span class="mark" title="${escaped(HEADS.toChange)}">* </span>` : '';
    const box = marked ? ` <span class="tick">${TICK}</span>` : '';
    return `<div${marked ? ' class="marked"' : ''}><dt>${mark}${escaped(name)}</dt><dd><span class="value">${escaped(value)}</span>${more}${box}</dd>${done}</div>`;
  });
  return `<dl class="figures">\n${lines.join('\n')}\n</dl>${note === '' ? '' : `\n<p class="note">${escaped(note)}</p>`}`;
}

/** Sizes are read as one: '797 × 285.5' is not parted by the end of a line. */
const unparted = (text: string): string => text.replace(/(?<=\d) × (?=\d)/g, '\u00a0×\u00a0');

/** A cell that is not said again is one with the cell above. */
function tableHtml({ columns, rows }: Table<string>): string {
  const classOf = (index: number): string => (columns[index]?.figures === true ? ' class="figure"' : '');
  const heads = columns.map(({ head }, index) => `<th scope="col"${classOf(index)}>${escaped(head)}</th>`);
  const lines = rows.map((cells, row) => {
    const filled = cells.map((cell, index) => {
      if (cell === null) return '';
      const under = rows.slice(row + 1).findIndex((below) => below[index] !== null);
      const height = under < 0 ? rows.length - row : under + 1;
      return `<td${classOf(index)}${height > 1 ? ` rowspan="${height}"` : ''}>${unparted(escaped(cell))}</td>`;
    });
    return `<tr>${filled.join('')}</tr>`;
  });
  return `<table>\n<thead><tr>${heads.join('')}</tr></thead>\n<tbody>\n${lines.join('\n')}\n</tbody>\n</table>`;
}

function pictureHtml({ name, about, scene, file }: Picture<string>, used: LettersUsed): string {
  return `<figure>${file === null ? drawnHere(scene, used) : linked(file, about)}<figcaption>${escaped(name)}</figcaption></figure>`;
}

function linked(file: string, about: string): string {
  const link = escaped(file.split('/').map(encodeURIComponent).join('/'));
  return `<a href="${link}"><img loading="lazy" src="${link}" alt="${escaped(about)}"></a>`;
}

/** It names itself for those who cannot see it. */
function drawnHere(scene: Picture['scene'], used: LettersUsed): string {
  const tree = svgTree(scene, true, null);
  used.add(tree);
  return writeNode(tree);
}
