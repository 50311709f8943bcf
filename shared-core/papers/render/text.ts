import { tell } from '../../words/message.js';
import { say } from './messages.js';
import { TICK, type Block, type Figures, type Heading, type Paper, type Table } from '../paper.js';

/** A box to tick, in letters. */
const TEXT_TICK = '[ ]';
/** Letters in a line of running text. */
const WIDTH = 78;

/**
 * A paper as plain text, for a terminal: running text is broken at 78 letters, an item of a list and a row of a table keep
 * their line, so that they can be searched for. Pictures are named, since text cannot show them.
 */
export function asText({ title, blocks }: Paper<string>): string {
  const lines: string[] = title === '' ? [] : [title];
  let indent = '';
  blocks.forEach((block, index) => {
    const before = blocks[index - 1] ?? null;
    if (block.kind === 'heading') indent = '  '.repeat(Math.max(0, block.level - 2));
    if (lines.length > 0 && isApart(before, block)) lines.push('');
    lines.push(...blockLines(block, indent));
  });
  return `${lines.join('\n')}\n`;
}

/** Whether a blank line keeps a block apart from the one before it; `before` null for the title. */
function isApart(before: Block<string> | null, block: Block<string>): boolean {
  if (block.kind === 'heading') return true;
  if (before === null || before.kind === 'heading') return false;
  if (before.kind === 'list') return block.kind !== 'table';
  return !(before.kind === 'paragraph' && (block.kind === 'paragraph' || block.kind === 'figures'));
}

function blockLines(block: Block<string>, indent: string): readonly string[] {
  switch (block.kind) {
    case 'heading':
      return headingLines(block, indent);
    case 'paragraph':
      return wrapped(block.text, indent);
    case 'list':
      return block.items.map((item) => `${indent}${item}`);
    case 'cautions':
      return block.items.flatMap((item) => wrapped(item, `${indent}  ! `));
    case 'figures':
      return figureLines(block, indent);
    case 'table':
      return tableLines(block, `${indent}  `);
    case 'labels':
      return tableLines(block.table, `${indent}  `);
    case 'picture':
      return [`${indent}  ${tell(say.picture(block), 'mm')}`];
  }
}

function headingLines({ level, text, aside }: Heading<string>, indent: string): readonly string[] {
  const room = Math.max(aside.length + 2, WIDTH - indent.length - text.length);
  const line = `${indent}${text}${aside === '' ? '' : aside.padStart(room)}`;
  return level === 1 ? ['='.repeat(WIDTH), line, '='.repeat(WIDTH)] : [line];
}

/** Marked figures have a star. */
function figureLines({ figures, note }: Figures<string>, indent: string): readonly string[] {
  const longest = Math.max(0, ...figures.map(({ name }) => name.length));
  const under = `${indent}${' '.repeat(longest + 6)}`;
  return [
    ...figures.flatMap(({ name, value, about, marked, doing }) => [
      ...wrapped(
        about === '' ? value : `${value} ${about}`,
        `${indent}  ${marked ? '*' : ' '} ${name.padEnd(longest)}  `,
        under,
      ),
      ...doing.flatMap((sentence) => wrapped(sentence, under)),
    ]),
    ...(note === '' ? [] : wrapped(note, `${indent}    `)),
  ];
}

function tableLines({ columns, rows }: Table<string>, indent: string): readonly string[] {
  const lines = [
    columns.map(({ head }) => head),
    ...rows.map((cells) => cells.map((cell) => (cell === TICK ? TEXT_TICK : (cell ?? '')))),
  ];
  const widths = columns.map((_, index) => Math.max(...lines.map((cells) => cells[index]?.length ?? 0)));
  return lines.map((cells) => {
    const padded = cells.map((cell, index) =>
      columns[index]?.figures === true ? cell.padStart(widths[index] ?? 0) : cell.padEnd(widths[index] ?? 0),
    );
    return `${indent}${padded.join('  ')}`.trimEnd();
  });
}

/** Lines of a text, the first behind `lead`, the others behind `indent`. */
function wrapped(text: string, lead: string, indent = ' '.repeat(lead.length)): readonly string[] {
  const lines: string[] = [];
  let line = lead;
  let isEmpty = true;
  for (const word of text.split(' ')) {
    if (!isEmpty && line.length + word.length + 1 > WIDTH) {
      lines.push(line.trimEnd());
      line = indent;
      isEmpty = true;
    }
    line += isEmpty ? word : ` ${word}`;
    isEmpty = false;
  }
  return [...lines, line.trimEnd()];
}
