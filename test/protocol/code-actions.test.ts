import { describe, expect, test } from 'vitest';
import type { CodeAction, Diagnostic } from 'vscode-languageserver-protocol';
import { Client, demo, editsOf, type Folder } from './client.js';
import { session } from './session.js';

let client: Client;
let folder: Folder;
let count = 0;
session((one) => {
  ({ client, folder } = one);
  folder.write('shed.shop.yaml', demo('shed.shop.yaml'));
  folder.write('faults.shop.yaml', demo('faults.shop.yaml'));
});

async function opened(text: string): Promise<{ uri: string; found: Diagnostic[] }> {
  count += 1;
  const uri = folder.uri(`job-${count}.carcass.yaml`);
  return { uri, found: await client.open(uri, text) };
}
const whole = { start: { line: 0, character: 0 }, end: { line: 1e6, character: 0 } };
const counted = (found: readonly Diagnostic[]): Map<string, number> => {
  const counts = new Map<string, number>();
  for (const { code } of found) counts.set(String(code), (counts.get(String(code)) ?? 0) + 1);
  return counts;
};

const shelves = [
  'unit: mm',
  'shop: shed.shop.yaml',
  'carcasses:',
  '  one:',
  '    kind: base # under the window',
  '    width: 600',
  '    loose-shelves: [330, 490] # by eye',
  '  two:',
  '    kind: wall',
  '    width: 600',
  '    loose-shelves:',
  '      - { at: 300 } # by eye too',
  '',
].join('\n');

describe('shelves off the pitch grid', () => {
  test('each goes to either neighbour; only its own figure is changed', async () => {
    const { uri } = await opened(shelves);
    const at = client.at(uri, '330');
    const actions = await client.codeActions(uri, { start: at, end: at });
    const moves = actions.filter(({ title }) => title.includes('328') || title.includes('360'));
    expect(moves).toHaveLength(2);
    expect(moves.filter(({ isPreferred }) => isPreferred)).toHaveLength(1);
    for (const move of moves) {
      const after = client.applied(uri, move.edit!);
      expect([shelves.replace('330', '328'), shelves.replace('330', '360')]).toContain(after);
      expect(move.diagnostics?.[0]?.code).toBe('shelf-off-grid');
      expect(move.kind).toBe('quickfix');
    }
  });

  test('all in the carcass, and all in the file', async () => {
    const { uri } = await opened(shelves);
    const at = client.at(uri, '330');
    const actions = await client.codeActions(uri, { start: at, end: at });
    const inCarcass = await client.chosen(actions.find(({ title }) => title.endsWith('(this carcass)'))!);
    expect(client.applied(uri, inCarcass.edit!)).toBe(shelves.replace('330', '328').replace('490', '488'));
    const inFile = await client.chosen(actions.find(({ title }) => title.endsWith('(whole file)'))!);
    const after = client.applied(uri, inFile.edit!);
    expect(after).toBe(shelves.replace('330', '328').replace('490', '488').replace('300', '296'));
    expect((await client.open(uri, after)).map(({ code }) => code)).not.toContain('shelf-off-grid');
  });
});

describe('a job in inches', () => {
  const inInches = (shelf: string, width = '24'): string =>
    `unit: in\nshop: shed.shop.yaml\ncarcasses:\n  one:\n    kind: base\n    width: ${width}\n    loose-shelves: [${shelf}]\n`;

  test.each([
    ['with fractions', inInches('13 1/2')],
    ['with decimals', inInches('13.5', '24.5')],
  ])('%s is repaired in inches', async (_, text) => {
    const { uri, found } = await opened(text);
    expect(found.map(({ code }) => code)).toContain('shelf-off-grid');
    const [fix] = await client.codeActions(uri, whole, ['source.fixAll']);
    const after = client.applied(uri, fix!.edit!);
    const [, written] = /loose-shelves: \[(.*)\]/.exec(after)!;
    expect(written).toMatch(/^\d+\.\d{1,5}$/);
    expect(after).not.toContain('mm');
    expect((await client.open(uri, after)).map(({ code }) => code)).not.toContain('shelf-off-grid');
  });
});

test('a batch that was offered for an older text is refused', async () => {
  const { uri } = await opened(shelves);
  const at = client.at(uri, '330');
  const action = (await client.codeActions(uri, { start: at, end: at })).find(({ title }) =>
    title.endsWith('(whole file)'),
  )!;
  expect(action.edit).toBeUndefined();
  await client.change(uri, [{ text: shelves.replace('490', '500') }]);
  await expect(client.chosen(action)).rejects.toMatchObject({ code: -32801 });
});

describe('every repair of every finding', () => {
  test('makes its finding go away, brings no other, and touches nothing else', { timeout: 240_000 }, async () => {
    const text = demo('every-finding.carcass.yaml');
    const { uri, found } = await opened(text);
    const actions = (await client.codeActions(uri, whole)).filter(
      // The repair of an incomplete shop is made in the shop file: `incomplete-shop.test.ts`.
      ({ title, diagnostics }) =>
        !/\((this carcass|whole file)\)$/.test(title) && diagnostics![0]!.code !== 'shop-incomplete',
    );
    expect(actions.length).toBeGreaterThan(15);
    const before = counted(found);
    for (const { title, diagnostics, edit } of actions) {
      const [diagnostic] = diagnostics!;
      const after = await client.open(uri, client.applied(uri, edit!));
      const counts = counted(after);
      const rule = String(diagnostic!.code);
      expect(counts.get(rule) ?? 0, `${rule}: ${title}`).toBeLessThan(before.get(rule)!);
      // A carcass that could not be worked out before may show what it hid.
      const hid = [
        'key-unknown',
        'key-missing',
        'value-wrong',
        'length-impossible',
        'yaml-syntax',
        'name-duplicate',
        'size-impossible',
      ].includes(rule);
      if (!hid)
        for (const [name, number] of counts)
          expect(number, `${title} brings ${name}`).toBeLessThanOrEqual(before.get(name) ?? 0);
      await client.open(uri, text);
    }
  });
});

describe('all at once', () => {
  test('is offered where it is asked for, and takes what needs no choice', async () => {
    const { uri, found } = await opened(shelves.replace('width: 600', 'width: 600\n    band: whit-1'));
    expect(counted(found).get('shelf-off-grid')).toBe(3);
    const quick = await client.codeActions(uri, whole, ['quickfix']);
    expect(quick.every(({ kind }) => kind === 'quickfix')).toBe(true);
    const [all, ...more] = await client.codeActions(uri, whole, ['source.fixAll']);
    expect(more).toEqual([]);
    expect(all?.kind).toBe('source.fixAll.borewright');
    const after = client.applied(uri, all!.edit!);
    expect(after).toContain('# by eye too');
    expect(await client.open(uri, after)).toEqual([]);
  });

  test('has nothing to offer for a clean job', async () => {
    const { uri } = await opened(demo('kitchen.carcass.yaml'));
    expect(await client.codeActions(uri, whole)).toEqual([]);
    expect(await client.codeActions(uri, whole, ['source.fixAll'])).toEqual([]);
  });
});

describe('the edits', () => {
  test('name the version of the text that they are for', async () => {
    const { uri } = await opened(shelves);
    await client.change(uri, [{ text: `${shelves}# more\n` }]);
    const at = client.at(uri, '490');
    const [action] = await client.codeActions(uri, { start: at, end: at });
    expect(action!.edit!.documentChanges).toMatchObject([{ textDocument: { uri, version: 2 } }]);
  });

  test('are plain changes for a client that knows no others', async () => {
    const plain = await Client.start({});
    const uri = folder.uri('plain.carcass.yaml');
    await plain.open(uri, shelves);
    const at = plain.at(uri, '490');
    const [action, ...more] = await plain.codeActions(uri, { start: at, end: at });
    expect(more.every(({ edit }) => edit !== undefined)).toBe(true);
    expect(action!.edit!.documentChanges).toBeUndefined();
    expect(editsOf(uri, action!.edit!)).toHaveLength(1);
    await plain.stop();
  });

  test('keep Windows line ends', async () => {
    const { uri } = await opened(
      'carcasses:\r\n  a:\r\n    kind: base\r\n    width: 600\r\n    bord: x\r\n    band: none\r\n',
    );
    const actions: CodeAction[] = await client.codeActions(uri, whole);
    expect(actions.length).toBeGreaterThan(0);
    for (const { edit } of actions) expect(client.applied(uri, edit!).replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
  });

  test('work in a shop file', async () => {
    const uri = folder.uri('own.shop.yaml');
    await client.open(uri, 'boards:\n  oak: { thicknes: 19 }\n', 'borewright-shop');
    const [action] = await client.codeActions(uri, whole);
    expect(client.applied(uri, action!.edit!)).toBe('boards:\n  oak: { thickness: 19 }\n');
  });
});

test.each([
  ['shd.shop.yaml', 'a slip of the finger'],
  ['shed', 'a name without its ending'],
])('a shop named %s, %s, is replaced by the file beside the job', async (written) => {
  const text = `shop: ${written} # ours\ncarcasses:\n  a: { kind: base, width: 600, board: white-16 }\n`;
  const { uri, found } = await opened(text);
  expect(found.map(({ code }) => code)).toEqual(['shop-missing']);
  const [action] = await client.codeActions(uri, whole);
  expect(action).toMatchObject({ title: 'Use ‘shed.shop.yaml’', isPreferred: true });
  const after = client.applied(uri, action!.edit!);
  expect(after).toBe(text.replace(written, 'shed.shop.yaml'));
  expect(await client.open(uri, after)).toEqual([]);
});
