import { expect, test } from 'vitest';
import type { CodeAction, Diagnostic } from 'vscode-languageserver-protocol';
import { Client, covered, demo, editsOf, wordsOf, type Folder } from './client.js';
import { session } from './session.js';

let client: Client;
let folder: Folder;
session((one) => {
  ({ client, folder } = one);
});

const JOB =
  'unit: mm\nshop: bench.shop.yaml\ncarcasses:\n  chest: { kind: base, width: 500, fronts: [drawer, drawer] }\n';
/** The demo shop without its slides. */
const SHOP = demo('../demo/yard.shop.yaml').replace(/^slides:\n(?: .*\n|\n)*/m, '');
const TITLE = 'Write the slides of the built-in shop into the shop file, to be corrected';

const ofIncomplete = (found: readonly Diagnostic[]): readonly Diagnostic[] =>
  found.filter(({ code }) => code === 'shop-incomplete');

async function offered(on: Client, uri: string): Promise<CodeAction> {
  const at = on.at(uri, 'bench.shop.yaml');
  const actions = await on.codeActions(uri, { start: at, end: at });
  return actions.find(({ title }) => title === TITLE)!;
}

test('slides of the built-in shop are told where the job names its shop, and the drawers that run on them', async () => {
  folder.write('bench.shop.yaml', SHOP);
  const uri = folder.uri('told.carcass.yaml');
  const [one, ...more] = ofIncomplete(await client.open(uri, JOB));
  expect(more).toEqual([]);
  expect(covered(JOB, one!.range)).toBe('bench.shop.yaml');
  expect(one!.severity).toBe(2);
  expect(wordsOf(one!)).toBe(
    'The shop file has no slides, so ‘slide-45’ of the built-in shop is used in ‘chest’. Its figures are not those of your shop: write your own under `slides`.',
  );
  expect(
    one!.relatedInformation!.map(({ location, message }) => [location.uri, covered(JOB, location.range), message]),
  ).toEqual([[uri, 'chest', '‘slide-45’ is used here.']]);
});

test('the repair is an edit of the shop file that is not open', async () => {
  folder.write('bench.shop.yaml', SHOP);
  const uri = folder.uri('closed.carcass.yaml');
  await client.open(uri, JOB);
  const { edit, isPreferred, diagnostics } = await offered(client, uri);
  expect(isPreferred).toBeUndefined();
  expect(diagnostics!.map(({ code }) => code)).toEqual(['shop-incomplete']);
  expect(edit!.documentChanges).toMatchObject([
    { textDocument: { uri: folder.uri('bench.shop.yaml'), version: null } },
  ]);
  const [{ range, newText }] = editsOf(folder.uri('bench.shop.yaml'), edit!) as [
    { range: Diagnostic['range']; newText: string },
  ];
  expect(covered(SHOP, { start: { line: 0, character: 0 }, end: range.start })).toBe(SHOP);
  expect(newText).toMatch(/\nslides:\n {2}slide-45:\n/);
});

test('and of the version of one that is open; with it the finding is gone', async () => {
  const shopUri = folder.write('bench.shop.yaml', SHOP);
  const uri = folder.uri('open.carcass.yaml');
  await client.open(shopUri, SHOP, 'borewright-shop');
  await client.change(shopUri, [{ text: `${SHOP}# ours\n` }]);
  await client.open(uri, JOB);
  const { edit } = await offered(client, uri);
  expect(edit!.documentChanges).toMatchObject([{ textDocument: { uri: shopUri, version: 2 } }]);
  await client.change(shopUri, [{ text: client.applied(shopUri, edit!) }]);
  const again = folder.uri('again.carcass.yaml');
  expect(ofIncomplete(await client.open(again, JOB))).toEqual([]);
});

test('a client that knows no versions gets plain changes', async () => {
  folder.write('bench.shop.yaml', SHOP);
  const plain = await Client.start({});
  const uri = folder.uri('plain.carcass.yaml');
  await plain.open(uri, JOB);
  const { edit } = await offered(plain, uri);
  expect(Object.keys(edit!.changes!)).toEqual([folder.uri('bench.shop.yaml')]);
  await plain.stop();
});

test('repairing all at once does not touch the shop file', async () => {
  folder.write('bench.shop.yaml', SHOP);
  const uri = folder.uri('all.carcass.yaml');
  await client.open(uri, JOB.replace('width: 500', 'widht: 500'));
  const whole = { start: { line: 0, character: 0 }, end: { line: 9, character: 0 } };
  const all = await client.codeActions(uri, whole, ['source.fixAll']);
  expect(all.flatMap(({ edit }) => edit!.documentChanges!)).toMatchObject([{ textDocument: { uri } }]);
});
