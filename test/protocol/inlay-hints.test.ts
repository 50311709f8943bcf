import type { InlayHint } from 'vscode-languageserver-protocol';
import { expect, test, vi } from 'vitest';
import { CAPABILITIES, Client, demo, type Folder } from './client.js';
import { session } from './session.js';

let client: Client;
let folder: Folder;
/** What the editor answers when it is asked for the setting. */
let setting: unknown = 'all';
let refreshed = 0;
const workspace = {
  ...CAPABILITIES.workspace,
  configuration: true,
  didChangeConfiguration: { dynamicRegistration: true },
  inlayHint: { refreshSupport: true },
};
session(
  (one) => {
    ({ client, folder } = one);
    folder.write('shed.shop.yaml', demo('shed.shop.yaml'));
  },
  async () => {
    const started = await Client.start({ ...CAPABILITIES, workspace });
    started.connection.onRequest('workspace/configuration', ({ items }: { items: readonly { section: string }[] }) =>
      items.map(({ section }) => (section === 'borewright' ? { inlayHints: setting } : null)),
    );
    started.connection.onRequest('workspace/inlayHint/refresh', () => {
      refreshed += 1;
      return null;
    });
    return started;
  },
);

const EVERYWHERE = { start: { line: 0, character: 0 }, end: { line: 10_000, character: 0 } };

/** Each hint with what stands before it on its line. */
async function hints(uri: string, range = EVERYWHERE): Promise<string[]> {
  const all = await client.ask<InlayHint[] | null>('textDocument/inlayHint', { textDocument: { uri }, range });
  const lines = client.text(uri).split('\n');
  return (all ?? []).map(
    ({ position: { line, character }, label }) => `${lines[line]!.slice(0, character).trim()} | ${label as string}`,
  );
}

test('stop positions by the shop’s own names, and hole numbers, behind the values that cause them', async () => {
  const uri = folder.uri('kitchen.carcass.yaml');
  await client.open(uri, demo('kitchen.carcass.yaml'));
  const all = await hints(uri);
  expect(all).toContain('fixed-shelves: [712 | long-left and long-right 712 mm');
  expect(all).toContain('dividers: 1 | long-left and long-right 234 mm');
  // From the top end: 2064 - 1704 in the side; the divider ends 16 mm lower.
  expect(all).toContain(
    'fixed-shelves: [1704 | long-left and long-right 360 mm (left and right), long-left and long-right 344 mm (divider-1)',
  );
  expect(all).toContain('- { at: 361.5 | hole 12 in left, 11 in divider-1');
  // Two shelves of 720: on the grid at 232 and 456 mm, (232 - 8) / 32 = 7 pitches above the first hole.
  expect(all).toContain('loose-shelves: 2 | holes 8 and 15');
  expect(all.filter((one) => one.startsWith('larder'))).toEqual([]);
  const tip = await client.ask<InlayHint[]>('textDocument/inlayHint', { textDocument: { uri }, range: EVERYWHERE });
  expect(tip.find(({ label }) => label === 'long-left and long-right 712 mm')?.tooltip).toContain(
    'left: outside face down, bottom end at long-left, 712 mm (borer-up)',
  );
});

test('rows: behind the offset where it is written, else behind the rows', async () => {
  const uri = folder.uri('rows.carcass.yaml');
  const text = 'unit: mm\nshop: shed.shop.yaml\ncarcasses:\n  a:\n    kind: base\n    width: 600\n    rows: both\n';
  await client.open(uri, text);
  expect(await hints(uri)).toEqual(['rows: both | row-left and row-right 8 mm']);
  await client.open(uri, `${text}    height: 752\n    row-offset: 40\n`);
  expect(await hints(uri)).toEqual(['row-offset: 40 | row-left and row-right 40 mm']);
  await client.open(uri, `${text}    panels:\n      left: { row-offset: 20 }\n`);
  expect(await hints(uri)).toEqual([
    'rows: both | row-left 20 mm (left), row-right 8 mm (right)',
    'left: { row-offset: 20 | row-left 20 mm',
  ]);
});

test('only those of the lines asked for', async () => {
  const uri = folder.uri('kitchen.carcass.yaml');
  const { line } = client.at(uri, 'fixed-shelves: [712]');
  const range = { start: { line, character: 0 }, end: { line: line + 1, character: 0 } };
  expect(await hints(uri, range)).toEqual(['fixed-shelves: [712 | long-left and long-right 712 mm']);
});

test('none for a shelf off the grid, while the text is broken, or in a shop file', async () => {
  const uri = folder.uri('off.carcass.yaml');
  const text = 'unit: mm\ncarcasses:\n  a:\n    kind: base\n    width: 600\n    loose-shelves: [330]\n';
  await client.open(uri, text);
  expect(await hints(uri)).toEqual([]);
  await client.open(uri, text.replace('600', '6oo'));
  expect(await hints(uri)).toEqual([]);
  const shop = folder.uri('shed.shop.yaml');
  await client.open(shop, demo('shed.shop.yaml'), 'borewright-shop');
  expect(await hints(shop)).toEqual([]);
});

test('the editor’s setting chooses, and a change of it is shown at once', async () => {
  const uri = folder.uri('kitchen.carcass.yaml');
  const set = async (value: unknown): Promise<void> => {
    const before = refreshed;
    setting = value;
    await client.connection.sendNotification('workspace/didChangeConfiguration', { settings: null });
    await client.until(() => refreshed > before, 'a refresh of the hints');
  };
  await set('stops');
  expect((await hints(uri)).some((one) => one.includes('hole'))).toBe(false);
  await set('holes');
  expect((await hints(uri)).every((one) => one.includes('hole'))).toBe(true);
  await set('none');
  expect(await hints(uri)).toEqual([]);
  // What the setting cannot be is as if it were not set.
  await set(42);
  expect((await hints(uri)).some((one) => one.includes('long-left'))).toBe(true);
});

test('a change of the shop refreshes the hints of its jobs', async () => {
  const uri = folder.uri('kitchen.carcass.yaml');
  const shop = folder.uri('shed.shop.yaml');
  const before = refreshed;
  await client.open(shop, demo('shed.shop.yaml').replaceAll('long-left', 'far-stop'), 'borewright-shop');
  await client.until(() => refreshed > before, 'a refresh of the hints');
  // On a busy machine the first refresh comes before all is worked out, and one more after it.
  await vi.waitFor(
    async () => expect(await hints(uri)).toContain('fixed-shelves: [712 | far-stop and long-right 712 mm'),
    { timeout: 10_000, interval: 100 },
  );
});

test('hints of a long job stay where they are while its shop is followed, and are asked for again when they are known', async () => {
  setting = 'all';
  const kitchen = demo('kitchen.carcass.yaml');
  const [head, bodies] = [
    kitchen.slice(0, kitchen.indexOf('carcasses:')),
    kitchen.slice(kitchen.indexOf('carcasses:')),
  ];
  const others = Array.from({ length: 60 }, (_, i) => `  more-${i}: { kind: base, width: ${400 + i} }\n`).join('');
  const uri = folder.uri('long.carcass.yaml');
  const shop = folder.uri('shed.shop.yaml');
  await client.open(uri, `${head}${bodies.trimEnd()}\n${others}`);
  await client.open(shop, demo('shed.shop.yaml'), 'borewright-shop');
  await client.until(() => client.changed.some((one) => one.uri === uri && one.complete), 'all findings');
  const before = await hints(uri);
  expect(before).toContain('fixed-shelves: [712 | long-left and long-right 712 mm');
  const told = client.changed.length;
  const asked = refreshed;
  const text = demo('shed.shop.yaml').replaceAll('long-left', 'near-stop');
  await client.type(shop, [{ text }]);
  await client.type(uri, [{ text: `# One line more.\n${client.text(uri)}` }]);
  expect(await hints(uri)).toEqual(before);
  const isKnown = (): boolean => client.changed.slice(told).some((one) => one.uri === uri && one.complete);
  expect(isKnown()).toBe(false);
  await client.until(() => isKnown() && refreshed > asked + 1, 'the hints asked for again');
  const after = await hints(uri);
  expect(after).toEqual(before.map((one) => one.replaceAll('long-left', 'near-stop')));
});
