import { TICK, type Block, type Cell, type Paper, type Table } from '../paper.js';
import { SCHEMA_WORDS as WORDS } from './messages.js';

/** The version of the form: it grows when something is taken away or means something else. */
const VERSION = 1;

/**
 * A paper as JSON, for programs: its blocks in the order to read, all text as on paper. Cells that are as above are written out, a
 * box to tick is null. What it looks like is `paperSchema`.
 */
export function asJson({ title, blocks }: Paper<string>, name: string): string {
  return `${JSON.stringify({ form: 'borewright-paper', version: VERSION, paper: name, title, blocks: blocks.map(blockData) }, null, 2)}\n`;
}

function blockData(block: Block<string>): object {
  switch (block.kind) {
    case 'table':
      return tableData(block);
    case 'picture': {
      const { name, about, scene } = block;
      const { frame, scale } = scene;
      return { kind: 'picture', name, about, width: paper(frame.width / scale), height: paper(frame.height / scale) };
    }
    case 'labels': {
      const { width, height, places } = block.sheet;
      return { kind: 'labels', sheet: { width, height, places }, table: tableData(block.table) };
    }
    default:
      return block;
  }
}

/** To a hundredth of a millimetre of paper. */
const paper = (length: number): number => Math.round(length * 100) / 100;

function tableData({ columns, rows }: Table<string>): object {
  let above: readonly Cell<string>[] = [];
  return {
    kind: 'table',
    columns,
    rows: rows.map((cells) => {
      above = cells.map((cell, index) => cell ?? above[index] ?? '');
      return above.map((cell) => (cell === TICK ? null : cell));
    }),
  };
}

type JsonSchema = Readonly<Record<string, unknown>>;

const text = { type: 'string' } as const;
const number = { type: 'number' } as const;
const texts = { type: 'array', items: text } as const;

/** An object that has all of these, and nothing else. */
const all = (properties: Readonly<Record<string, JsonSchema>>, description?: string): JsonSchema => ({
  type: 'object',
  properties,
  required: Object.keys(properties),
  additionalProperties: false,
  ...(description !== undefined && { description }),
});
const block = (kind: Block['kind'], properties: Readonly<Record<string, JsonSchema>>): JsonSchema =>
  all({ kind: { const: kind }, ...properties }, WORDS[kind]);

/**
 * The JSON Schema (draft-07) of `asJson`.
 * @param names what papers there are
 */
export function paperSchema(names: readonly string[]): object {
  const box = all({ x: number, y: number, width: number, height: number });
  return {
    $schema: 'http://json-schema.org/draft-07/schema#',
    title: WORDS.title,
    ...all(
      {
        form: { const: 'borewright-paper' },
        version: { const: VERSION },
        paper: { enum: names },
        title: text,
        blocks: { type: 'array', items: { oneOf: KINDS.map((kind) => ({ $ref: `#/definitions/${kind}` })) } },
      },
      WORDS.about,
    ),
    definitions: {
      heading: block('heading', { level: { enum: [1, 2, 3] }, text, aside: text }),
      paragraph: block('paragraph', { text }),
      list: block('list', { items: texts }),
      cautions: block('cautions', { items: texts }),
      figures: block('figures', {
        figures: {
          type: 'array',
          items: all({ name: text, value: text, about: text, marked: { type: 'boolean' }, doing: texts }),
        },
        note: text,
      }),
      table: block('table', {
        columns: { type: 'array', items: all({ head: text, figures: { type: 'boolean' } }) },
        rows: { type: 'array', items: { type: 'array', items: { type: ['string', 'null'] } } },
      }),
      picture: block('picture', { name: text, about: text, width: number, height: number }),
      labels: block('labels', {
        sheet: all({ width: number, height: number, places: { type: 'array', items: box } }),
        table: { $ref: '#/definitions/table' },
      }),
    } satisfies Readonly<Record<Block['kind'], JsonSchema>>,
  };
}

const KINDS: readonly Block['kind'][] = [
  'heading',
  'paragraph',
  'list',
  'cautions',
  'figures',
  'table',
  'picture',
  'labels',
];
