import { describe, expect, test } from 'vitest';
import type { CompletionItem } from 'vscode-languageserver-protocol';
import { type Client, demo, type Folder } from './client.js';
import { session } from './session.js';

let client: Client;
let folder: Folder;
let count = 0;
session((one) => {
  ({ client, folder } = one);
  folder.write('shed.shop.yaml', demo('shed.shop.yaml'));
  folder.write('other.shop.yaml', '');
  folder.write('notes.txt', '');
});

/** What is offered at the mark `|`, in the order in which an editor shows it. */
async function offered(marked: string, name = 'carcass', before = ''): Promise<CompletionItem[]> {
  count += 1;
  const uri = folder.uri(`at-${count}.${name}.yaml`);
  if (before !== '') await client.open(uri, before);
  await client.open(uri, marked.replace('|', ''), name === 'shop' ? 'borewright-shop' : 'borewright-job');
  const document = marked.slice(0, marked.indexOf('|')).split('\n');
  const list = await client.completion(uri, { line: document.length - 1, character: document.at(-1)!.length });
  return (list?.items ?? []).toSorted((a, b) => (a.sortText! < b.sortText! ? -1 : 1));
}
const labels = async (marked: string, name?: string, before?: string): Promise<string[]> =>
  (await offered(marked, name, before)).map(({ label }) => label);

const head = 'unit: mm\nshop: shed.shop.yaml\ncarcasses:\n';
const box = `${head}  sink:\n    kind: base\n    width: 600\n`;

describe('keys', () => {
  test('of the job, those that are there already left out', async () => {
    const found = await labels('unit: mm\n|\ncarcasses:\n  a: { kind: base, width: 600 }\n');
    expect(found).toEqual(['title', 'shop', 'defaults']);
  });

  test('of a carcass: what must be there comes first', async () => {
    const found = await labels(`${head}  sink:\n    |\n`);
    expect(found.slice(0, 2)).toEqual(['kind', 'width']);
    expect(found).toContain('loose-shelves');
    const rest = await labels(`${box}    |\n    height: 720\n`);
    expect(rest).not.toContain('kind');
    expect(rest).not.toContain('height');
    expect(rest).toContain('depth');
  });

  test('in a line that is not whole yet, with text before and after it', async () => {
    expect(
      await labels(`${head}  sink:\n    kind: base\n    wid|\n  next:\n    kind: wall\n    width: 500\n`),
    ).toContain('width');
  });

  test('of what does something where it stands, and of nothing else', async () => {
    const panel = (key: string): Promise<string[]> => labels(`${box}    panels:\n      ${key}:\n        |\n`);
    expect(await panel('bottom')).not.toContain('rows');
    expect(await panel('left')).toContain('rows');
    expect(await panel('back')).toEqual(['board', 'bands']);
    expect(await labels(`${box}    top: over\n    |\n`)).not.toContain('rail-width');
    expect(await labels(`${box}    top: rails\n    |\n`)).toContain('rail-width');
    expect(await labels(`${box}    back: { how: none, | }\n`)).toEqual([]);
  });

  test('of maps within, in block and in bracket style', async () => {
    expect(await labels(`${box}    back:\n      |\n`)).toEqual([
      'how',
      'board',
      'groove',
      'inset',
      'open-from',
      'open-to',
    ]);
    expect(await labels(`${box}    back: { how: grooved, | }\n`)).toEqual([
      'board',
      'groove',
      'inset',
      'open-from',
      'open-to',
    ]);
    // Without dividers there are no bays to choose from.
    expect(await labels(`${box}    loose-shelves:\n      - at: 328\n        |\n`)).toEqual(['board', 'setback']);
    // Of a text that never could be read nothing is known: all is offered.
    expect(await labels(`${box}    loose-shelves:\n    - at: 328\n      b|\n`)).toEqual(['bay', 'board', 'setback']);
    expect(await labels(`${box}    dividers: 1\n    loose-shelves:\n      - at: 328\n        |\n`)).toEqual([
      'bay',
      'board',
      'setback',
    ]);
    expect(await labels(`${box}    machines:\n      |\n`)).toEqual(['faces', 'ends', 'rows', 'clamp']);
  });

  test('of panels are the panels that the carcass has', async () => {
    const found = await labels(`${box}    fixed-shelves: 1\n    panels:\n      left: { rows: none }\n      |\n`);
    expect(found).toContain('rail-front');
    expect(found).toContain('shelf-1');
    // In brackets too what is there already is not offered again, whatever brackets stand between.
    const others = await labels(`${box}    fixed-shelves: 1\n    panels: { left: { rows: none }, | }\n`);
    expect(others).toContain('right');
    expect(others).not.toContain('left');
    expect(found).not.toContain('left');
    expect(found).not.toContain('top');
  });

  test('of a new carcass: a name with what must be there', async () => {
    const [item] = await offered(`${box}  |\n`);
    expect(item).toMatchObject({ label: 'new carcass', insertTextFormat: 2 });
    expect((item!.textEdit as { newText: string }).newText).toBe('carcass-1:\n  kind: $0\n  width:');
  });

  test('replace what is typed of the word', async () => {
    const item = (await offered(`${box}    dep|\n`)).find(({ label }) => label === 'depth')!;
    expect(item.textEdit).toEqual({
      newText: 'depth: ',
      range: { start: { line: 6, character: 4 }, end: { line: 6, character: 7 } },
    });
    expect(item.documentation).toMatchObject({ kind: 'markdown' });
  });
});

describe('values', () => {
  test('words of a choice', async () => {
    expect(await labels(`${head}  sink:\n    kind: |\n`)).toEqual(['base', 'wall', 'tall', 'for-drawers', 'open']);
    expect(await labels(`${head}  sink: { kind: b|, width: 600 }\n`)).toContain('base');
    expect(await labels('unit: |\n')).toEqual(['mm', 'in']);
  });

  test('names of the shop', async () => {
    expect(await labels(`${box}    board: |\n`)).toEqual(['white-16', 'birch-19', 'back-3', 'back-8']);
    expect(await labels(`${box}    band: |\n`)).toEqual(['white-1', 'birch-2', 'none']);
    expect(await labels(`${box}    joint: |\n`)).toEqual(['dowel-8x30', 'screw-7x50', 'cam-15']);
    expect(await labels(`${box}    machines: { rows: | }\n`)).toContain('row-drill');
  });

  test('shop files beside the job', async () => {
    expect(await labels('shop: |\n')).toEqual(expect.arrayContaining(['other.shop.yaml', 'shed.shop.yaml']));
    expect(await labels('shop: |\n')).not.toContain('notes.txt');
    const inside = folder.uri('jobs/x.carcass.yaml');
    await client.open(inside, 'shop: ../\n');
    const list = await client.completion(inside, { line: 0, character: 9 });
    expect(list?.items.map(({ label }) => label)).toEqual(
      expect.arrayContaining(['../other.shop.yaml', '../shed.shop.yaml']),
    );
    expect(await labels('shop: /etc/|\n')).toEqual([]);
  });

  test('heights on the pitch grid, each with its hole', async () => {
    const found = await offered(`${box}    loose-shelves: [|]\n`);
    // First hole at half of 16, then each 32: common practice, no source.
    expect(found[0]).toMatchObject({ label: '40', detail: 'hole 2 of 23, on the pitch grid' });
    expect(found.map(({ label }) => label)).toContain('328');
    // While a line is being typed the carcass cannot be worked out: the heights are those of its last good text.
    expect(await labels(`${box}    loose-shelves:\n      - { at: | }\n`, 'carcass', box)).toContain('328');
    expect(await labels(`${box}    fixed-shelves:\n      - |\n`, 'carcass', box)).toContain('328');
  });

  test('Enter behind a figure of one’s own, or behind a key that goes on below, takes no offer', async () => {
    // An editor takes the first offer that the written word leads to.
    for (const offer of await offered(`${box}    loose-shelves: [|]\n`)) expect(offer.filterText).not.toMatch(/\d/);
    expect(await labels(`${box}    loose-shelves:\n      - at: 12|\n`, 'carcass', box)).toEqual([]);
    expect(client.capabilities.completionProvider?.triggerCharacters).not.toContain(':');
  });

  test('maps and lists, begun on the lines below', async () => {
    const texts = async (marked: string): Promise<unknown[]> =>
      (await offered(marked)).map(({ textEdit }) => textEdit?.newText);
    expect(await texts(`${box}    fronts: |\n`)).toEqual(['\n  - ', '\n  - front: ', '[$0]']);
    expect(await labels(`${box}    loose-shelves: |\n`)).toEqual(['-', '- at', '[ ]']);
    expect(await texts(`${box}    fronts: [drawer]\n    drawers: |\n`)).toContain('\n  slide: ');
    // What would do nothing yet is offered where nothing else could be.
    expect(await labels(`${box}    drawers: |\n`)).toContain('slide');
    expect(await texts(`${box}    machines: |\n`)).toEqual(['\n  faces: ', '\n  ends: ', '\n  rows: ', '\n  clamp: ']);
    expect(await texts(`${box}    panels: |\n`)).toContain('\n  left:\n    ');
    expect((await texts('carcasses: |\n'))[0]).toBe('\n  carcass-1:\n    kind: $0\n    width:');
    const [item] = await offered('slides:\n  run:\n    lengths:\n      - holes: |\n', 'shop');
    expect(item!.textEdit?.newText).toBe('\n    - ');
    // Where a word may stand too, the map is one offer.
    expect(await texts(`${box}    back: |\n`)).toEqual(['grooved', 'rebated', 'applied', 'none', '\n  how: ']);
    expect(await texts(`${box}    load: |\n`)).toEqual(['\n  on-shelf: ']);
  });

  test('maps and lists in brackets where there is no room below', async () => {
    const texts = async (marked: string): Promise<unknown[]> =>
      (await offered(marked)).map(({ textEdit }) => textEdit?.newText);
    expect(await texts(`${head}  sink: { kind: base, width: 600, fronts: | }\n`)).toEqual(['[$0]']);
    expect(await texts(`${head}  sink: { kind: base, width: 600, machines: | }\n`)).toEqual(['{ faces: $0 }']);
    expect(await texts(`${box}    fronts: | # all\n`)).toEqual(['[$0]']);
    expect(await texts(`${box}    fronts: |[drawer]\n`)).toEqual([]);
    expect(await texts(`${box}    fronts: |\n      - drawer\n`)).toEqual([]);
  });

  test.each(['base|', 'ba|se', '|base', 'base |'])('in the place of one that is there: %s', async (word) => {
    const found = await offered(`${head}  sink:\n    kind: ${word}\n    width: 600\n`);
    expect(found.map(({ label }) => label)).toEqual(['base', 'wall', 'tall', 'for-drawers', 'open']);
    // An editor shows only what the written word leads to.
    for (const { filterText, textEdit } of found) {
      expect(filterText!.split(' ')).toContain('base');
      expect(textEdit).toMatchObject({ range: { start: { line: 4, character: 10 } } });
    }
    const half = await offered(`${head}  sink:\n    kind: ba|\n    width: 600\n`);
    expect(half.find(({ label }) => label === 'wall')!.filterText).toBe('wall');
  });

  test('none in a comment, and none for a plain length', async () => {
    expect(await labels(`${box}    # kind: |\n`)).toEqual([]);
    expect(await labels(`${box}    depth: |\n`)).toEqual([]);
  });
});

test('a shop file has its own keys and names', async () => {
  expect(await labels('unit: mm\nboards:\n  oak:\n    |\n', 'shop')).toEqual([
    'thickness',
    'measured',
    'sheet-length',
    'sheet-width',
    'price',
    'sheets',
    'material',
    'density',
    'modulus',
    'grain',
  ]);
  expect(await labels('boards:\n  oak: { thickness: 19 }\nhabits:\n  board: |\n', 'shop')).toEqual(['oak']);
});

describe('values straight behind a colon', () => {
  test.each([`${head}  sink:\n    kind:|\n`, `${head}  sink: { width: 600, kind:| }\n`])(
    'are written with a space: %j',
    async (marked) => {
      const found = await offered(marked);
      expect(found.map(({ label }) => label)).toContain('base');
      expect(found.map(({ textEdit }) => textEdit?.newText)).toContain(' base');
    },
  );

  test('and without one where it stands already', async () => {
    const found = await offered(`${head}  sink:\n    kind: |\n`);
    expect(found.map(({ textEdit }) => textEdit?.newText)).toContain('base');
  });
});

test('machines are those of the kind that the key is for', async () => {
  expect(await labels(`carcasses:\n  sink:\n    kind: base\n    width: 600\n    machines: { rows: | }\n`)).toEqual([
    'row-drill',
  ]);
  expect(await labels(`carcasses:\n  sink:\n    kind: base\n    width: 600\n    machines:\n      ends: |\n`)).toEqual([
    'end-head',
  ]);
});
