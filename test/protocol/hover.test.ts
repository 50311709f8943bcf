import { describe, expect, test } from 'vitest';
import { type Client, demo, type Folder } from './client.js';
import { session } from './session.js';

let client: Client;
let folder: Folder;
let kitchen: string;
let studio: string;
session(async (one) => {
  ({ client, folder } = one);
  folder.write('shed.shop.yaml', demo('shed.shop.yaml'));
  kitchen = folder.uri('kitchen.carcass.yaml');
  studio = folder.uri('studio.carcass.yaml');
  await client.open(kitchen, demo('kitchen.carcass.yaml'));
  await client.open(studio, demo('studio.carcass.yaml'));
});

const over = async (uri: string, piece: string, on = 0, nth = 0): Promise<string> =>
  (await client.hover(uri, client.at(uri, piece, on, nth))) ?? '';

describe('a hover over a job', () => {
  test('a name: the box, and every panel with its sizes', async () => {
    const words = await over(kitchen, 'corner-base:');
    expect(words).toContain(
      '**corner-base**: base carcass, 900 × 720 × 560 mm over all without plinth and fronts, on a plinth of 120 mm',
    );
    // Sides are 720 long; what lies between them is 900 less two boards of 16; a band of 1 comes off one edge.
    expect(words).toContain('| left | white-16 | 720 × 560 × 16 | 720 × 559 |');
    expect(words).toContain('| bottom | white-16 | 868 × 560 × 16 | 868 × 559 |');
  });

  test('a line of shelves: the panels, and where each is bored', async () => {
    const words = await over(kitchen, 'loose-shelves: 1');
    expect(words).toContain('**loose-shelves**: How many loose shelves');
    expect(words).toContain('**loose-1**: `white-16`, finished');
    expect(words).toContain('Nothing is bored in it.');
    const rails = await over(kitchen, 'fixed-shelves: [712]', 17);
    expect(rails).not.toContain('712 mm =');
    expect(rails).toContain('**shelf-1**');
    expect(rails).toContain('Joined to left and right by `dowel-8x30`.');
    expect(rails).toContain('left end');
  });

  test('a row: setback, first hole, count, balance, in the unit of the file', async () => {
    const uri = folder.uri('rows.carcass.yaml');
    await client.open(
      uri,
      'unit: mm\ncarcasses:\n  a:\n    kind: base\n    width: 600\n    rows: both\n    height: 730\n',
    );
    const words = await over(uri, 'rows: both', 6);
    expect(words).toContain('`both`: Front and rear rows.');
    expect(words).toContain(
      'left, front row: 23 holes Ø 5 mm every 32 mm, 37 mm from the front edge; first hole 8 mm from the bottom end, last 18 mm from the top end: not balanced.',
    );
    await client.open(uri, client.text(uri).replace('730', '720'));
    expect(await over(uri, 'rows: both', 6)).toContain('last 8 mm from the top end: balanced.');
  });

  test('a plain key: what it means, and what it is when it is left out, without the tables', async () => {
    const uri = folder.uri('plain.carcass.yaml');
    await client.open(
      uri,
      'unit: mm\ncarcasses:\n  a:\n    kind: base\n    width: 900\n    depth: 500\n    loose-shelves: [{ at: 328, bay: 1 }]\n',
    );
    const depth = await over(uri, 'depth: 500');
    expect(depth.indexOf('**depth**')).toBe(0);
    expect(depth).toContain('When left out: 560 mm, the shop’s usual depth for `kind: base`.');
    expect(depth).toContain('900 × 720 × 500 mm over all');
    for (const words of [depth, await over(uri, 'kind: base'), await over(uri, 'width: 900')])
      expect(words.split('\n').filter((line) => line.startsWith('|'))).toEqual([]);
    expect(await over(uri, '900')).not.toContain('35.43');
    expect(await over(uri, 'bay: 1')).toContain('When left out: one in every bay.');
    expect(await over(uri, 'bay: 1')).toContain('It counts only where dividers part the carcass into bays.');
  });

  test('inches in a file in inches', async () => {
    const words = await over(studio, '15 3/4');
    expect(words).toContain('15 3/4 in = 400.05 mm');
    expect(words).toContain('× 22 in over all');
    expect(await over(studio, 'desk-right')).toContain('Finished, in');
  });

  test('names of the shop say what they name', async () => {
    expect(await over(kitchen, 'joint: cam-15', 8)).toContain(
      '`cam-15`: cam fitting, Ø 15 mm, 34 mm from the end, guide dowel-8x30',
    );
    expect(await over(kitchen, 'board: birch-19', 8)).toContain(
      '`birch-19`: board, 19 mm thick, sheet 2500 mm × 1250 mm, grain along',
    );
  });

  test('keys of the head, and words of a choice', async () => {
    expect(await over(kitchen, 'unit')).toContain('Unit of every bare number in this file.');
    expect(await over(kitchen, 'kind: for-drawers', 7)).toContain('`for-drawers`: A base carcass that drawers go into');
  });

  test('a comment and a blank line have none', async () => {
    expect(await client.hover(kitchen, client.at(kitchen, '# A small'))).toBeNull();
  });

  test('while the text is broken it says so, and still explains the key', async () => {
    const uri = folder.uri('broken.carcass.yaml');
    await client.open(uri, 'carcasses:\n  a:\n    kind: base\n    width: 6oo\n');
    const words = await over(uri, 'width');
    expect(words).toContain('Overall width of the carcass.');
    expect(words).toContain('cannot be worked out');
  });

  test('names that look like Markdown do no harm', async () => {
    const uri = folder.uri('marks.carcass.yaml');
    await client.open(uri, 'carcasses:\n  "**a** | <b>":\n    kind: base\n    width: 600\n');
    expect(await over(uri, '**a**')).toContain('\\*\\*a\\*\\* \\| \\<b\\>');
  });
});

test('a hover over a shop explains its keys', async () => {
  const uri = folder.uri('shed.shop.yaml');
  await client.open(uri, demo('shed.shop.yaml'), 'borewright-shop');
  expect(await over(uri, 'throat')).toContain('Maximum distance from the fence to a row.');
  expect(await over(uri, 'joint: dowel-8x30', 8)).toContain('dowel, Ø 8 mm, 30 mm long');
});
