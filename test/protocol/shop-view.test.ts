import { expect, test } from 'vitest';
import { isShopReply } from '../../client/webview/messages/shop.js';
import type { ShopViewReply } from '../../shared-core/drawing/messages/shop-view.js';
import { type Client, demo, type Folder } from './client.js';
import { session } from './session.js';

let client: Client;
let folder: Folder;
let uri: string;
session(async (one) => {
  ({ client, folder } = one);
  uri = folder.uri('shed.shop.yaml');
  await client.open(uri, demo('shed.shop.yaml'), 'borewright-shop');
});

const ask = (of: string): Promise<ShopViewReply> => client.ask('borewright/shopView', { uri: of, width: 140 });
function shop(reply: ShopViewReply): Extract<ShopViewReply, { kind: 'shop' }> {
  expect(isShopReply(reply), 'what the client lets pass').toBe(true);
  if (reply.kind !== 'shop') throw new Error(reply.reason);
  return reply;
}

test('every machine in the order of the text, all that is drawn led back to its line', async () => {
  const { machines, ranges, title, version } = shop(await ask(uri));
  expect([title, version]).toEqual(['The shed', 1]);
  const lines = machines.map(({ source }) => ranges[source]!.start.line);
  expect(lines).toEqual([...lines].sort((a, b) => a - b));
  expect(machines.map(({ name }) => name)).toContain('borer-up');
  const text = demo('shed.shop.yaml').split('\n');
  for (const { name, scene, source } of machines) {
    expect(text[ranges[source]!.start.line]).toContain(`${name}:`);
    for (const { source: part } of scene?.shapes ?? []) {
      if (part === undefined || ranges[part] === undefined) continue;
      const keys = JSON.parse(part) as string[];
      expect(text[ranges[part].start.line]).toContain(`${keys.at(-1)!}:`);
    }
    for (const stop of scene?.shapes.filter(({ class: kind }) => kind === 'stop-standing') ?? [])
      expect(ranges[stop.source!], stop.key).toBeDefined();
  }
});

test('a machine with a fault keeps its place and says what is wrong; the others stand', async () => {
  const before = shop(await ask(uri)).machines.length;
  await client.change(uri, [{ text: demo('shed.shop.yaml').replace('spindles: 21', 'spindles: many') }]);
  const { machines } = shop(await ask(uri));
  expect(machines).toHaveLength(before);
  const [first] = machines;
  expect(first).toMatchObject({ name: 'borer-up', scene: null, kindWords: 'vertical head' });
  expect(first!.trouble).toContain('many');
  expect(machines.slice(1).every(({ trouble }) => trouble === null)).toBe(true);
});

test('a shop that says nothing of machines shows those of the built-in one', async () => {
  const empty = folder.uri('empty.shop.yaml');
  await client.open(empty, 'title: Bare\n', 'borewright-shop');
  const { machines } = shop(await ask(empty));
  expect(machines.length).toBeGreaterThan(0);
  expect(machines.every(({ kindWords }) => kindWords.endsWith(', from the built-in shop'))).toBe(true);
});

test('a job has no machines of its own', async () => {
  const job = folder.uri('kitchen.carcass.yaml');
  await client.open(job, demo('kitchen.carcass.yaml'));
  expect(await ask(job)).toMatchObject({ kind: 'nothing', reason: expect.stringContaining('shop file') as string });
});
