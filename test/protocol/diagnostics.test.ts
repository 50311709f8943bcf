import { describe, expect, test } from 'vitest';
import { Client, covered, demo, type Folder } from './client.js';
import { session } from './session.js';

let client: Client;
let folder: Folder;
session(
  (one) => {
    ({ client, folder } = one);
  },
  () => Client.start(undefined, { reference: 'https://example.invalid/borewright/' }),
);

describe('findings of a job', () => {
  test('each stands on the words that it is about, with rule, figures and reference', async () => {
    const uri = folder.uri('plain.carcass.yaml');
    const text = 'unit: mm\ncarcasses:\n  sink:\n    kind: base\n    width: 600\n    height: 711\n    board: bord-16\n';
    const found = await client.open(uri, text);
    const board = found.find(({ code }) => code === 'board-unknown')!;
    expect(covered(text, board.range)).toBe('bord-16');
    expect(board).toMatchObject({
      source: 'borewright',
      severity: 1,
      codeDescription: { href: 'https://example.invalid/borewright/findings.html#board-unknown' },
      data: { rule: 'board-unknown', carcass: 'sink' },
    });
    const row = found.find(({ code }) => code === 'row-unbalanced')!;
    expect(row.severity).toBe(2);
    expect(row.message).toContain('8 mm');
    const neutral = found.find(({ code }) => code === 'shop-neutral')!;
    expect(neutral.severity).toBe(3);
  });

  test('a finding that concerns another place names it', async () => {
    const uri = folder.uri('twice.carcass.yaml');
    const text = 'carcasses:\n  a: { kind: base, width: 600 }\n  a: { kind: wall, width: 600 }\n';
    const found = await client.open(uri, text);
    const twice = found.find(({ code }) => code === 'name-duplicate')!;
    expect(twice.range.start.line).toBe(2);
    expect(twice.relatedInformation).toHaveLength(1);
    expect(twice.relatedInformation![0]!.location).toMatchObject({ uri, range: { start: { line: 1, character: 2 } } });
  });

  test('positions count UTF-16 code units', async () => {
    const uri = folder.uri('wide.carcass.yaml');
    const text = 'carcasses:\n  "\u{1F6AA}\u{1F6AA}": { kind: bse, width: 600 }\n';
    const [found] = (await client.open(uri, text)).filter(({ code }) => code === 'value-wrong');
    expect(found!.range).toEqual({ start: { line: 1, character: 18 }, end: { line: 1, character: 21 } });
    expect(covered(text, found!.range)).toBe('bse');
  });

  test('Windows line ends change nothing', async () => {
    const text = demo('every-finding.carcass.yaml');
    folder.write('faults.shop.yaml', demo('faults.shop.yaml'));
    const plain = await client.open(folder.uri('unix.carcass.yaml'), text);
    const windows = await client.open(folder.uri('windows.carcass.yaml'), text.replaceAll('\n', '\r\n'));
    const bare = (found: typeof plain) => found.map(({ code, message, range }) => ({ code, message, range }));
    expect(bare(windows)).toEqual(bare(plain));
  });

  test('closing a file takes its findings away', async () => {
    const uri = folder.uri('closing.carcass.yaml');
    expect(await client.open(uri, 'carcasses:\n  a: { kind: bse, width: 600 }\n')).not.toEqual([]);
    await client.close(uri);
    await client.until(() => client.diagnostics.get(uri)?.diagnostics.length === 0, 'no findings');
  });

  test('a change is told of, with its version', async () => {
    const uri = folder.uri('told.carcass.yaml');
    await client.open(uri, 'carcasses:\n  a: { kind: base, width: 600 }\n');
    await client.change(uri, [{ text: 'carcasses:\n  a: { kind: base, width: 700 }\n' }]);
    await client.until(() => client.changed.some((one) => one.uri === uri && one.version === 2), 'told');
  });
});

describe('the shop of a job', () => {
  const job = 'shop: own.shop.yaml\ncarcasses:\n  a: { kind: base, width: 600, board: oak-19 }\n';
  const shop = 'boards:\n  oak-19: { thickness: 19 }\n';
  const codes = (uri: string) => client.diagnostics.get(uri)?.diagnostics.map(({ code }) => code) ?? [];

  test('comes from the disk, from the open document, and from the disk again', async () => {
    const jobUri = folder.uri('owner.carcass.yaml');
    const shopUri = folder.write('own.shop.yaml', shop);
    expect((await client.open(jobUri, job)).map(({ code }) => code)).not.toContain('board-unknown');
    await client.open(shopUri, shop.replace('oak-19', 'ash-19'), 'borewright-shop');
    await client.until(() => codes(jobUri).includes('board-unknown'), 'the open shop counts');
    await client.close(shopUri);
    await client.until(() => !codes(jobUri).includes('board-unknown'), 'the shop on the disk counts');
  });

  test('is read again when the disk has changed', async () => {
    const jobUri = folder.uri('watched.carcass.yaml');
    const shopUri = folder.uri('seen.shop.yaml');
    const found = await client.open(jobUri, job.replace('own.shop', 'seen.shop'));
    const missing = found.find(({ code }) => code === 'shop-missing')!;
    expect(covered(client.text(jobUri), missing.range)).toBe('seen.shop.yaml');
    folder.write('seen.shop.yaml', shop);
    await client.connection.sendNotification('workspace/didChangeWatchedFiles', {
      changes: [{ uri: shopUri, type: 1 }],
    });
    await client.until(() => !codes(jobUri).includes('shop-missing'), 'the shop is found');
    folder.write('seen.shop.yaml', 'boards: [1, 2]\n');
    await client.connection.sendNotification('workspace/didChangeWatchedFiles', {
      changes: [{ uri: shopUri, type: 2 }],
    });
    await client.until(() => codes(jobUri).includes('shop-broken'), 'the shop is broken');
    const broken = client.diagnostics.get(jobUri)!.diagnostics.find(({ code }) => code === 'shop-broken')!;
    expect(broken.relatedInformation?.[0]?.location.uri).toBe(shopUri);
  });

  test('has findings of its own', async () => {
    const uri = folder.uri('bad.shop.yaml');
    const text = 'boards:\n  oak: { thickness: -19 }\n';
    const [found] = await client.open(uri, text, 'borewright-shop');
    expect(found).toMatchObject({ code: 'length-impossible', severity: 1 });
    expect(covered(text, found!.range)).toBe('-19');
  });

  test('cannot be any file', async () => {
    folder.write('secret.txt', 'boards: {}');
    for (const reference of [
      'secret.txt',
      '/etc/passwd',
      'file:///etc/hosts',
      'https://example.invalid/a.shop.yaml',
      'C:\\a.shop.yaml',
    ]) {
      const uri = folder.uri('reach.carcass.yaml');
      const found = await client.open(
        uri,
        `shop: ${JSON.stringify(reference)}\ncarcasses:\n  a: { kind: base, width: 600 }\n`,
      );
      expect(found.map(({ code }) => code)).toContain('shop-missing');
    }
  });
});

test('a job that is not saved yet is told to be saved before it can name a shop', async () => {
  const uri = 'untitled:Untitled-1';
  const found = await client.open(uri, 'shop: x.shop.yaml\ncarcasses:\n  a: { kind: base, width: 600, board: oak }\n');
  expect(found.map(({ code }) => code)).toEqual(['shop-missing']);
  expect(found[0]!.message).toContain('Save the job');
  await client.close(uri);
});
