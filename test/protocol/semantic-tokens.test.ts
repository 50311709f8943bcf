import { expect, test } from 'vitest';
import type { SemanticTokens, SemanticTokensDelta, SemanticTokensLegend } from 'vscode-languageserver-protocol';
import { type Client, demo, type Folder } from './client.js';
import { session } from './session.js';

const SHOP = `unit: mm
boards:
  oak-18: { thickness: 18 }
bands:
  oak-1: { thickness: 1, height: 22 }
habits:
  board: oak-18
  band: elm-1
vertical-heads:
  bench:
    spindles: 9
    pitch: 32
    depth-stops: 4
    fence: far
    from: above
    fence-offset: 20 to 80
    depth: 2 to 60
    stops:
      near: { side: left, range: 0 to 60 }
    clamps:
      hold: { along: 0, across: 60 }
`;
const JOB = `shop: yard.shop.yaml
defaults:
  board: oak-18
carcasses:
  desk: # two drawers
    kind: base
    width: 600
    top: over
    rail-width: 90
    band: "oak-1"
    machines: { faces: bench, rows: stool }
    joint: dowel-8x30
    panels:
      left: { board: oak-18 }
      roof: { board: elm-18 }
`;

let client: Client;
let folder: Folder;
let job: string;
let shop: string;
session(async (one) => {
  ({ client, folder } = one);
  shop = folder.write('yard.shop.yaml', SHOP);
  job = folder.uri('desk.carcass.yaml');
  await client.open(job, JOB);
  await client.open(shop, SHOP, 'borewright-shop');
});

const legend = (): SemanticTokensLegend => client.capabilities.semanticTokensProvider!.legend;
const ask = (uri: string): Promise<SemanticTokens> =>
  client.ask('textDocument/semanticTokens/full', { textDocument: { uri } });

/** 'desk class declaration', of every token in the order of the text. */
function told(uri: string, data: readonly number[]): string[] {
  const lines = client.text(uri).split('\n');
  const words: string[] = [];
  let line = 0;
  let start = 0;
  for (let i = 0; i < data.length; i += 5) {
    const [down, along, length, type, bits] = data.slice(i, i + 5) as [number, number, number, number, number];
    line += down;
    start = down === 0 ? start + along : along;
    const modifiers = legend().tokenModifiers.filter((_, bit) => (bits & (1 << bit)) !== 0);
    words.push([lines[line]!.slice(start, start + length), legend().tokenTypes[type], ...modifiers].join(' '));
  }
  return words;
}

test('a job: names by what they name, a name that nothing has not at all, and a key that does nothing', async () => {
  expect(told(job, (await ask(job)).data)).toEqual([
    'oak-18 type',
    'desk class declaration',
    'rail-width property unused',
    '"oak-1" enumMember',
    'bench function',
    'dowel-8x30 interface defaultLibrary',
    'left variable',
    'oak-18 type',
  ]);
});

test('a shop file: what it describes and what its habits ask for', async () => {
  expect(told(shop, (await ask(shop)).data)).toEqual([
    'oak-18 type declaration',
    'oak-1 enumMember declaration',
    'oak-18 type',
    'bench function declaration',
    'depth-stops property unused',
    'near parameter declaration',
    'hold parameter declaration',
  ]);
});

test('a range has the tokens that touch it', async () => {
  const at = client.at(job, 'machines: {', 0);
  const range = { start: { ...at, character: 0 }, end: { line: at.line + 1, character: 0 } };
  const part = await client.ask<SemanticTokens>('textDocument/semanticTokens/range', {
    textDocument: { uri: job },
    range,
  });
  expect(told(job, part.data)).toEqual(['bench function']);
});

test('edits of the last result make the next one, and all is told where another id is named', async () => {
  let before = await ask(job);
  const at = (text: string): { line: number; character: number } => client.at(job, text, 0);
  const inserted = [
    { at: () => at('  desk:'), text: '  chest: { kind: wall, width: 500 }\n' },
    { at: () => at('"oak-1"'), text: 'none # ' },
    { at: () => ({ line: 0, character: 0 }), text: '# above all\n' },
    { at: () => at('    rail-width'), text: '    ' },
  ];
  for (const one of inserted) {
    const position = one.at();
    await client.type(job, [{ range: { start: position, end: position }, text: one.text }]);
    const delta = await client.ask<SemanticTokensDelta>('textDocument/semanticTokens/full/delta', {
      textDocument: { uri: job },
      previousResultId: before.resultId,
    });
    const data = [...before.data];
    for (const { start, deleteCount, data: put = [] } of delta.edits) data.splice(start, deleteCount, ...put);
    expect(delta.resultId).not.toBe(before.resultId);
    before = { data, resultId: delta.resultId! };
    const whole = await ask(job);
    expect(told(job, data), one.text).toEqual(told(job, whole.data));
    before = whole;
  }
  const other = await client.ask<SemanticTokens>('textDocument/semanticTokens/full/delta', {
    textDocument: { uri: job },
    previousResultId: 'nobody’s',
  });
  expect(other.data).toEqual(before.data);
});

test('a carcass that is being typed at keeps the colour of its panels', async () => {
  await client.open(job, JOB);
  await client.change(job, [{ text: JOB.replace('width: 600', 'width: ') }]);
  expect(told(job, (await ask(job)).data)).toContain('left variable');
});

test('tokens stand in order and apart, whatever the text', async () => {
  const uri = folder.uri('all.carcass.yaml');
  folder.write('faults.shop.yaml', demo('faults.shop.yaml'));
  for (const text of [
    demo('every-finding.carcass.yaml'),
    demo('kitchen.carcass.yaml').slice(0, 700),
    'carcasses: [',
    '',
  ]) {
    await client.open(uri, text);
    const { data } = await ask(uri);
    for (let i = 5; i < data.length; i += 5)
      expect(data[i]! > 0 || data[i + 1]! >= data[i - 3]!, `token ${i / 5}`).toBe(true);
    expect(told(uri, data).every((words) => !words.startsWith(' '))).toBe(true);
  }
});
