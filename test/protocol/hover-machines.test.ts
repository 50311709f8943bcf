import { describe, expect, test } from 'vitest';
import type { SetUpsMethod } from '../../shared-core/drawing/messages/set-ups.js';
import { type Client, demo, type Folder } from './client.js';
import { session } from './session.js';

const SET_UPS: SetUpsMethod = 'borewright/setUps';

let client: Client;
let folder: Folder;
let kitchen: string;
session(async (one) => {
  ({ client, folder } = one);
  folder.write('shed.shop.yaml', demo('shed.shop.yaml'));
  kitchen = folder.uri('kitchen.carcass.yaml');
  await client.open(kitchen, demo('kitchen.carcass.yaml'));
});

/** The order to run first: a hover waits for the letters that it gives, but not for long. */
async function over(uri: string, piece: string, on = 0): Promise<string> {
  await client.ask(SET_UPS, { uri });
  return (await client.hover(uri, client.at(uri, piece, on))) ?? '';
}

/** The cells of the Markdown table rows that begin with a word. */
function rowsOf(words: string, first: string): string[][] {
  const lines = words.split('\n').filter((line) => line.startsWith(`| ${first} |`));
  return lines.map((line) => line.split('|').slice(1, -1).map((cell) => cell.trim())); // prettier-ignore
}

test('a carcass: strokes and set-ups, each with its stops, depth and bits', async () => {
  const words = await over(kitchen, 'over-sink:');
  // 5 panels of which 4 are bored: sides 2 lines each and rows, top and bottom 2 ends each: 2 x 2 + 2 + 2 x 2 = 10 strokes.
  expect(words).toContain('**On the machines:** 10 strokes in 3 set-ups.');
  const [, stops, depth, bits, strokes] = rowsOf(words, 'row-drill-C')[0]!;
  expect([stops, depth, strokes]).toEqual(['row-left 8 mm, row-right 8 mm', '13 mm', '2']);
  // 11 pitches: 12 holes, but the set-up is shared with sides of 22 pitches, which want all 23.
  expect(bits).toMatch(/^Ø 5 mm in /);
  expect(words).toMatch(
    /the \d+ joints come out within these figures, usually \(at worst\): front edge \d\.\d\d \(\d\.\d\d\) mm, outside face/,
  );
});

test('a fixed shelf: stop settings by the shop’s own names, depth and spindles, and what its joints come out like', async () => {
  const words = await over(kitchen, 'fixed-shelves: [712]', 17);
  expect(rowsOf(words, 'left')).toEqual([
    [
      'left',
      'borer-up-C',
      'outside face down, bottom end at long-left, 712 mm',
      '12 mm',
      'Ø 8 mm in spindles 1, 3, 6, 8, 14 and 16',
    ],
  ]);
  expect(rowsOf(words, 'right')[0]).toContain('outside face down, bottom end at long-right, 712 mm');
  // Half of 16 mm above the table; 30 + 1 - 12 deep.
  expect(rowsOf(words, 'shelf-1').map((row) => [row[2], row[3]])).toEqual([
    ['outside \\(lower\\) face down, left end to the head, front edge at square-left, 21 mm', '19 mm at 8 mm height'],
    ['outside \\(lower\\) face down, right end to the head, front edge at square-right, 21 mm', '19 mm at 8 mm height'],
  ]);
  expect(words).toContain('the 2 joints come out within');
});

test('a divider: the lines in bottom and top', async () => {
  const words = await over(kitchen, 'dividers: 1', 1);
  // In the middle of 500: 250 - 16 from the left end of the bottom.
  expect(rowsOf(words, 'bottom')[0]?.[2]).toMatch(/left end at long-(left|right), 234 mm/);
  expect(rowsOf(words, 'top')[0]?.[2]).toMatch(/left end at long-(left|right), 234 mm/);
});

describe('a row', () => {
  const job = (extra: string): string =>
    `unit: mm\nshop: shed.shop.yaml\ncarcasses:\n  a:\n    kind: base\n    width: 600\n    rows: both\n${extra}`;

  test('in one stroke: all spindles, no index move, centred', async () => {
    const uri = folder.uri('row.carcass.yaml');
    await client.open(uri, job(''));
    const words = await over(uri, 'rows: both', 6);
    expect(words).toContain(
      '- left, front and rear rows: 1 stroke on `row-drill`, `row-left` at 8 mm, 13 mm deep (row-drill-A); Ø 5 mm in all 23 spindles of both heads; no index move; centred.',
    );
    expect(words).toContain('- right, front and rear rows: 1 stroke on `row-drill`, `row-right` at 8 mm');
  });

  test('in several: index moves with their lengths, a full head that ends past the panel, not centred', async () => {
    const uri = folder.uri('rows.carcass.yaml');
    // 2064 - 2 x 8 = 64 pitches: 65 holes, three strokes of 23, 23 and 19, the last four spindles in the air.
    await client.open(uri, job('').replace('base', 'tall'));
    const words = await over(uri, 'rows: both', 6);
    expect(words).toContain('65 holes');
    expect(words).toMatch(
      /left, front and rear rows: 3 strokes on `row-drill`.*all 23 spindles of both heads; 2 index moves of 736 mm each; not centred\./,
    );
  });

  test('in an even number of holes there is nothing to stand on in the middle', async () => {
    const uri = folder.uri('even.carcass.yaml');
    await client.open(uri, job('    height: 688\n'));
    expect(await over(uri, 'rows: both', 6)).toMatch(/22 holes[\s\S]*no index move; not centred/);
  });
});

test('a loose shelf says in which hole its pins stand', async () => {
  const uri = folder.uri('pins.carcass.yaml');
  const text =
    'unit: mm\nshop: shed.shop.yaml\ncarcasses:\n  a:\n    kind: base\n    width: 600\n    loose-shelves: [328]\n';
  await client.open(uri, text);
  // (328 - 8) / 32 = 10 pitches above the first hole.
  expect(await over(uri, '[328]', 1)).toContain('Its pins stand in hole 11, counted from the bottom end.');
  await client.open(uri, text.replace('328', '330'));
  expect(await over(uri, '[330]', 1)).not.toContain('pins stand');
});

test('a panel chosen by name has its machine steps', async () => {
  const uri = folder.uri('panel.carcass.yaml');
  await client.open(
    uri,
    'unit: mm\nshop: shed.shop.yaml\ncarcasses:\n  a:\n    kind: base\n    width: 600\n    panels:\n      left: { bands: { back: white-1 } }\n',
  );
  const words = await over(uri, 'left:');
  const lay = rowsOf(words, 'left').map((row) => `${row[1]!} ${row[2]!}`);
  expect(lay.some((one) => one.includes('bottom end at near-left, 8 mm'))).toBe(true);
  expect(lay.some((one) => one.includes('top end at near-right, 8 mm'))).toBe(true);
  expect(lay.some((one) => one === 'row-drill-A outside face down, bottom end at row-left, 8 mm')).toBe(true);
});

test('what the machines cannot do is not shown as if they could', async () => {
  const uri = folder.uri('past.carcass.yaml');
  await client.open(
    uri,
    'unit: mm\nshop: faults.shop.yaml\ncarcasses:\n  a:\n    kind: tall\n    width: 600\n    fixed-shelves: [1032]\n',
  );
  folder.write('faults.shop.yaml', demo('faults.shop.yaml'));
  await client.connection.sendNotification('workspace/didChangeWatchedFiles', { changes: [] });
  const words = await over(uri, '[1032]', 1);
  expect(rowsOf(words, 'left')).toEqual([]);
  expect(rowsOf(words, 'shelf-1')).toHaveLength(2);
});

test('sizes in inches where the job is, machines in millimetres where the shop file is', async () => {
  const uri = folder.uri('studio.carcass.yaml');
  await client.open(uri, demo('studio.carcass.yaml'));
  const words = await over(uri, 'paper:');
  // 19 mm board: half of it is 9.5 mm.
  expect(words).toContain('stop A 9.5 mm, stop C 9.5 mm');
  expect(words).toMatch(/front edge 0\.\d{3} \(0\.\d{3}\) in/);
});
