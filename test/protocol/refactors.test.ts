import { expect, test } from 'vitest';
import { type Client, type Folder } from './client.js';
import { session } from './session.js';

let client: Client;
let folder: Folder;
let count = 0;
session((one) => {
  ({ client, folder } = one);
});

/** Title and outcome of every refactor at a piece of a text. */
async function outcomes(text: string, piece: string, kind = 'carcass'): Promise<[string, string][]> {
  count += 1;
  const uri = folder.uri(`refactor-${count}.${kind}.yaml`);
  await client.open(uri, text, kind === 'shop' ? 'borewright-shop' : 'borewright-job');
  const at = client.at(uri, piece, 1);
  const actions = await client.codeActions(uri, { start: at, end: at }, ['refactor']);
  return actions.map(({ title, edit }) => [title, client.applied(uri, edit!)]);
}

const job = `carcasses:
  sink:
    kind: base # under the window
    width: 609.6
    loose-shelves: [328, 424]
  # the next one
  hob:
    kind: base
    width: 600
    loose-shelves:
      - 328 # low
`;

test('a carcass is duplicated below itself under a free name, its remarks with it', async () => {
  const lines = `    kind: base # under the window\n    width: 609.6\n    loose-shelves: [328, 424]\n`;
  expect(await outcomes(job, 'sink')).toEqual([
    ['Duplicate sink as sink-2', job.replace(lines, `${lines}  sink-2:\n${lines}`)],
  ]);
  const [[title] = []] = await outcomes(job.replace('hob:', 'sink-2:'), 'sink');
  expect(title).toBe('Duplicate sink as sink-3');
  const windows = job.replaceAll('\n', '\r\n');
  const after = (await outcomes(windows, 'hob'))[0]?.[1] ?? '';
  expect(after.replaceAll('\r\n', '')).not.toContain('\n');
  expect(after.endsWith('      - 328 # low\r\n')).toBe(true);
});

test('a length is written in the other unit, and back', async () => {
  const inInches = job.replace('609.6', '24 in');
  expect(await outcomes(job, '609.6')).toEqual([['Write it as 24 in', inInches]]);
  expect(await outcomes(inInches, '24 in')).toEqual([['Write it as 609.6 mm', job]]);
  const whole = `unit: in\n${job.replaceAll(/328|424|600|609\.6/g, '24')}`;
  expect(await outcomes(whole, '24')).toEqual([['Write it as 609.6 mm', whole.replace('24', '609.6 mm')]]);
  const [[title] = []] = await outcomes(job, '600');
  expect(title).toBe('Write it as 23.62205 in');
});

const shop = `boards:
  white-16: { thickness: 16, sheet-length: 2800, sheet-width: 2070 }
line-drills:
  comb: # the old one
    spindles: 29
    pitch: 1.25 in
    stops:
      comb-left: { side: left, range: 0 to 260 }
      comb-left-2: { side: right, range: 0 to 260 }
`;

test('a shop file, too: its things are duplicated, and its lengths written in the other unit', async () => {
  const board = '  white-16: { thickness: 16, sheet-length: 2800, sheet-width: 2070 }\n';
  expect(await outcomes(shop, 'white-16', 'shop')).toEqual([
    ['Duplicate white-16 as white-16-2', shop.replace(board, board + board.replace('white-16', 'white-16-2'))],
  ]);
  const drill = shop.slice(shop.indexOf('  comb:'));
  expect(await outcomes(shop, 'comb: #', 'shop')).toEqual([
    ['Duplicate comb as comb-2', shop + drill.replace('comb:', 'comb-2:')],
  ]);
  const stop = '      comb-left: { side: left, range: 0 to 260 }\n';
  expect(await outcomes(shop, 'comb-left:', 'shop')).toEqual([
    ['Duplicate comb-left as comb-left-3', shop.replace(stop, stop + stop.replace('left:', 'left-3:'))],
  ]);
  expect(await outcomes(shop, '1.25 in', 'shop')).toEqual([['Write it as 31.75 mm', shop.replace('1.25 in', '31.75')]]);
  expect(await outcomes(shop, '2800', 'shop')).toEqual([
    ['Write it as 110.23622 in', shop.replace('2800', '110.23622 in')],
  ]);
  expect(await outcomes(shop.replace('boards', 'unit: ft\nboards'), '2800', 'shop')).toEqual([]);
});

test('shelves are spread evenly where nothing else is said of them', async () => {
  const found = await outcomes(job, 'loose-shelves: [');
  expect(found).toEqual([
    ['Spread the 2 shelves evenly', job.replace('[328, 424]', '2')],
    ['Give the loose shelves equal openings: 232 mm and 456 mm', job.replace('[328, 424]', '[232, 456]')],
  ]);
  const one = await outcomes(job, 'loose-shelves:\n');
  expect(one.filter(([title]) => !title.startsWith('Give')).map(([, after]) => after)).toEqual([
    job.replace('loose-shelves:\n      - 328 # low', 'loose-shelves: 1 # low'),
  ]);
  // A remark between two of them would be lost.
  const remarked = await outcomes(`${job}      - 392\n`, 'loose-shelves:\n');
  expect(remarked.map(([title]) => title)).toEqual([expect.stringMatching(/^Give the loose shelves/)]);
});

test('templates of new files are snippets', async () => {
  const template = await client.ask<string>('borewright/template', { kind: 'shop', unit: 'in' });
  expect(template).toContain('unit: in');
  expect(template).toContain('${1:');
  expect(await client.ask<string>('borewright/template', { kind: 'job', unit: 'mm' })).toContain('  ${2:base-1}:');
});

test('a value that all carcasses have moves to the defaults', async () => {
  const text = job.replace('width: 609.6', 'width: 600').replaceAll('width: 600\n', 'width: 600\n    depth: 560\n');
  const [[title, after] = []] = (await outcomes(text, 'depth')).filter(([one]) => one.startsWith('Move'));
  expect(title).toBe('Move ‘depth: 560’ of 2 carcasses to the defaults');
  expect(after).toBe(`defaults:\n  depth: 560\n${text.replaceAll('    depth: 560\n', '')}`);
});

test('carcasses are mirrored, written as variants of others, and written out in full', async () => {
  const text = `carcasses:
  left:
    kind: tall
    width: 600
    doors: left
  right: # by the wall
    kind: tall
    width: 600
    doors: right
`;
  const variant = text.replace(/kind: tall\n {4}width: 600\n {4}doors: right/, 'like: left\n    mirrored: yes');
  const titles = await outcomes(text, 'right: #');
  expect(titles).toEqual([
    ['Write it as a mirrored variant of ‘left’ (`like`, `mirrored`)', variant],
    ['Change left and right over', text.replace('doors: right', 'doors: left')],
    ['Duplicate right as right-2', expect.stringContaining('  right-2: # by the wall\n')],
  ]);
  const [[title, after] = []] = await outcomes(variant, 'like: left');
  expect([title, after]).toEqual(['Write it out in full, without ‘left’', text]);
});
