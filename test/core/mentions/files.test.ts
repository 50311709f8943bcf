import { expect, test } from 'vitest';
import { cutJob } from '../../../shared-core/document/cut.js';
import { mentionsInCarcass, mentionsInHead, mentionsInShop } from '../../../shared-core/mentions/files.js';
import type { Mention } from '../../../shared-core/mentions/mention.js';

const shown = (text: string, mentions: readonly Mention[], origin = 0): string[] =>
  mentions.map(
    ({ of, name, within, gives, start, end }) =>
      `${gives ? 'gives' : 'asks'} ${[...within, of].join('/')} ${name} = ${text.slice(origin + start, origin + end)}`,
  );

test('the names of a job, in its head, in a carcass, in brackets and in quotes', () => {
  const text = `shop: "shed.shop.yaml"
defaults: { band: 'white 1', machines: { rows: row-drill } }
carcasses:
  sink:
    board: birch
    back: { how: grooved, board: back-3 }
    fixed-shelves:
      - { at: 300, board: birch }
      - 400
    panels:
      left: { bands: { front: none, back: white } }
`;
  const parts = cutJob(text);
  expect(shown(text, mentionsInHead(parts))).toEqual([
    'asks shop-file shed.shop.yaml = "shed.shop.yaml"',
    "asks band white 1 = 'white 1'",
    'asks machine row-drill = row-drill',
  ]);
  expect(shown(text, mentionsInCarcass(parts.carcasses[0]!), parts.carcasses[0]!.origin)).toEqual([
    'gives carcass sink = sink',
    'asks board birch = birch',
    'asks board back-3 = back-3',
    'asks board birch = birch',
    'gives sink/panel left = left',
    'asks band white = white',
  ]);
});

test('the names of a shop; those of stops stand inside their machine', () => {
  const text = `boards:
  birch: { thickness: 19, sheets: { small: { length: 900, width: 600 } } }
line-drills:
  drill:
    stops:
      left: { side: left, range: 0 to 100 }
habits: { board: birch, machines: { rows: drill } }
`;
  expect(shown(text, mentionsInShop(text))).toEqual([
    'gives board birch = birch',
    'gives birch/sheet small = small',
    'gives machine drill = drill',
    'gives drill/stop left = left',
    'asks board birch = birch',
    'asks machine drill = drill',
  ]);
});

test('what an alias leads to stands in the text once', () => {
  const text = `carcasses:
  a: { board: &b birch }
  b: { board: *b }
`;
  const parts = cutJob(text);
  expect(parts.carcasses.flatMap((part) => shown(text, mentionsInCarcass(part)))).toEqual([
    'gives carcass a = a',
    'asks board birch = birch',
    'gives carcass b = b',
    'asks board birch = birch',
  ]);
});

test('text that no schema knows gives no names', () => {
  for (const text of ['', '- 1\n- 2', 'boards: 3', 'boards: [a]', ': x', '\n  a: [1\nb: 2\n']) {
    expect(mentionsInShop(text)).toEqual([]);
    expect(() => mentionsInHead(cutJob(text))).not.toThrow();
  }
});
