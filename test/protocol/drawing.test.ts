import { expect, test } from 'vitest';
import { isMoveShelfReply, isPicture, isReply } from '../../client/webview/messages/preview.js';
import type { DrawingReply } from '../../shared-core/drawing/messages/drawing.js';
import type { MoveShelfReply } from '../../shared-core/drawing/messages/shelves.js';
import { type Client, covered, demo, type Folder } from './client.js';
import { session } from './session.js';

let client: Client;
let folder: Folder;
let uri: string;
session(async (one) => {
  ({ client, folder } = one);
  folder.write('shed.shop.yaml', demo('shed.shop.yaml'));
  uri = folder.uri('kitchen.carcass.yaml');
  await client.open(uri, demo('kitchen.carcass.yaml'));
});

function drawn(reply: DrawingReply): Extract<DrawingReply, { kind: 'drawing' }> {
  if (reply.kind !== 'drawing') throw new Error(reply.reason);
  expect(isReply(reply), 'what the client lets pass').toBe(true);
  return reply;
}

test('the panel whose text the cursor stands in', async () => {
  const shelf = drawn(await client.drawing({ uri, position: client.at(uri, '712') }));
  expect(shelf).toMatchObject({ carcass: 'larder', panel: 'shelf-1', stale: null, version: 1 });
  expect(shelf.scene.view).toBe('panel');
  const first = drawn(await client.drawing({ uri, position: client.at(uri, 'glasses') }));
  expect(first).toMatchObject({ carcass: 'glasses', panel: 'left' });
  expect(first.carcasses).toHaveLength(14);
  expect(first.carcasses[0]?.panels).toContain('bottom');
});

test('a carcass and a panel by name, and the first where the names are unknown', async () => {
  expect(drawn(await client.drawing({ uri, carcass: 'larder', panel: 'right' }))).toMatchObject({
    carcass: 'larder',
    panel: 'right',
  });
  expect(drawn(await client.drawing({ uri, carcass: 'nobody', panel: 'nothing' }))).toMatchObject({
    carcass: 'pan-drawers',
    panel: 'left',
  });
  // A cursor in the head follows nothing: what was chosen stays.
  const head = { line: 1, character: 0 };
  expect(drawn(await client.drawing({ uri, position: head, carcass: 'sink', panel: 'bottom' }))).toMatchObject({
    carcass: 'sink',
    panel: 'bottom',
  });
});

test('all panels of a carcass', async () => {
  const all = drawn(await client.drawing({ uri, view: 'all-panels', position: client.at(uri, 'plates') }));
  expect(all.scene.view).toBe('all-panels');
  expect(all.panel).toBeNull();
});

test('every bore leads back to the text that causes it', async () => {
  const { scene, ranges } = drawn(await client.drawing({ uri, carcass: 'larder', panel: 'left' }));
  const bores = scene.shapes.filter(({ kind }) => kind === 'bore');
  expect(bores.length).toBeGreaterThan(100);
  for (const { source } of bores) expect(ranges[source!], source).toBeDefined();
  const words = new Set(bores.map(({ source }) => covered(client.text(uri), ranges[source!]!)));
  expect(words).toContain('712');
  expect(words).toContain('larder');
});

test('places of the defaults lead to the head', async () => {
  const own = folder.uri('defaults.carcass.yaml');
  await client.open(
    own,
    'title: x\ndefaults:\n  rows: both\n  board: bord\ncarcasses:\n  a:\n    kind: open\n    width: 600\n',
  );
  const { ranges } = drawn(await client.drawing({ uri: own, carcass: 'a', panel: 'left' }));
  const words = Object.values(ranges).map((range) => covered(client.text(own), range));
  expect(words).toContain('both');
  expect(words).toContain('bord');
});

test('while the text is broken the last good drawing stays, and says so', async () => {
  const own = folder.uri('stale.carcass.yaml');
  const text = 'carcasses:\n  a:\n    kind: base\n    width: 600\n';
  await client.open(own, text);
  const good = drawn(await client.drawing({ uri: own, carcass: 'a', panel: 'bottom' }));
  await client.open(own, text.replace('600', '6oo'));
  const stale = drawn(await client.drawing({ uri: own, carcass: 'a', panel: 'bottom' }));
  expect(stale.stale).toContain('last good drawing');
  expect(stale.version).toBe(2);
  expect(stale.scene).toEqual(good.scene);
  await client.open(own, 'carcasses: [');
  expect(drawn(await client.drawing({ uri: own, carcass: 'a', panel: 'bottom' })).stale).not.toBeNull();
  await client.open(own, text);
  expect(drawn(await client.drawing({ uri: own, carcass: 'a', panel: 'bottom' })).stale).toBeNull();
});

test('where there is nothing to draw it says why', async () => {
  const own = folder.uri('nothing.carcass.yaml');
  await client.open(own, 'carcasses:\n  a:\n    kind: base\n');
  const reply = await client.drawing({ uri: own });
  expect(reply).toMatchObject({ kind: 'nothing', version: 1 });
  expect(reply.kind === 'nothing' && reply.reason).toContain('width');
});

test('the same on paper, as a file of its own under a name for it', async () => {
  const picture = await client.picture({ uri, view: 'panel', carcass: 'larder', panel: 'left' });
  expect(isPicture(picture), 'what the client lets pass').toBe(true);
  if (picture.kind !== 'picture') throw new Error(picture.reason);
  expect(picture.name).toBe('larder-left');
  expect(picture.svg).toMatch(/^<\?xml [^>]*\?>\n<svg [^>]*width="[\d.]+mm" height="[\d.]+mm"/);
  // ISO 5455: reduction scales.
  expect(picture.svg).toMatch(/Scale 1:(1|2|5|10|20|50)\b/);
  const { scene } = drawn(await client.drawing({ uri, carcass: 'larder', panel: 'left' }));
  expect(picture.svg.match(/data-bore=/g)).toHaveLength(scene.shapes.filter(({ kind }) => kind === 'bore').length);
  const all = await client.picture({ uri, view: 'all-panels', carcass: 'larder', panel: null });
  expect(all).toMatchObject({ kind: 'picture', name: 'larder-all-panels' });
});

test('a shop file gives no picture, and says why', async () => {
  const shop = folder.uri('shed.shop.yaml');
  await client.open(shop, demo('shed.shop.yaml'), 'borewright-shop');
  const none = await client.picture({ uri: shop, view: 'panel', carcass: null, panel: null });
  expect(none.kind === 'nothing' && none.reason).toContain('Open a job file');
  await client.close(shop);
});

test('a loose shelf that is moved on the drawing is one change of the present text', async () => {
  const asked = { uri, carcass: 'glasses', shelf: 'loose-1', holes: 1 };
  const reply = await client.ask<MoveShelfReply>('borewright/moveShelf', asked);
  expect(isMoveShelfReply(reply), 'what the client lets pass').toBe(true);
  expect(reply.version).toBe(1);
  expect(reply.edits).toHaveLength(1);
  expect(await client.ask('borewright/moveShelf', { ...asked, holes: 'far' })).toMatchObject({ edits: [] });
  expect(await client.ask('borewright/moveShelf', { ...asked, shelf: 'left' })).toMatchObject({ edits: [] });
});
