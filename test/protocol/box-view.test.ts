import { expect, test } from 'vitest';
import { isBoxReply } from '../../client/webview/messages/box.js';
import type { BoxParams, BoxReply } from '../../shared-core/drawing/messages/box-view.js';
import { type Client, type Folder } from './client.js';
import { session } from './session.js';

let client: Client;
let folder: Folder;
let uri: string;
const TEXT = `unit: mm
carcasses:
  sink:
    kind: base
    width: 600
    plinth: 100
    doors: pair
    panels:
      left: { rows: front }
  drawers: { kind: for-drawers, width: 450, plinth: 100 }
  glasses: { kind: wall, width: 800, fixed-shelves: [360], place: 100 }
  island: { kind: base, width: 900, place: { wall: 2 } }
`;
session(async (one) => {
  ({ client, folder } = one);
  uri = folder.uri('boxes.carcass.yaml');
  await client.open(uri, TEXT, 'borewright-job');
});

const lineOf = (words: string): number => TEXT.split('\n').findIndex((line) => line.includes(words));
async function ask(params: Partial<BoxParams>): Promise<Extract<BoxReply, { kind: 'box' }>> {
  const reply: BoxReply = await client.ask('borewright/box', {
    uri,
    what: 'carcass',
    position: null,
    carcass: null,
    ...params,
  });
  expect(isBoxReply(reply), 'what the client lets pass').toBe(true);
  if (reply.kind !== 'box') throw new Error(reply.reason);
  return reply;
}

test('the carcass of the cursor, with what leads from its parts to the text and back', async () => {
  const reply = await ask({ position: { line: lineOf('kind: wall'), character: 4 } });
  expect([reply.carcass, reply.version, reply.stale]).toEqual(['glasses', 1, null]);
  expect(reply.carcasses.map(({ name }) => name)).toEqual(['sink', 'drawers', 'glasses', 'island']);
  const [box] = reply.boxes;
  expect(box!.at).toEqual([{ x: 0, y: 0, z: 0 }]);
  const shelf = box!.scene.parts.find(({ key }) => key === 'shelf-1')!;
  expect(box!.ranges[shelf.source]!.start.line).toBe(lineOf('fixed-shelves'));
});

test('lines speak of panels: all doors, the side that is different, one shelf', async () => {
  const [sink] = (await ask({ carcass: 'sink' })).boxes;
  const parts = (words: string) =>
    sink!.spoken.findLast(({ range }) => range.start.line <= lineOf(words) && lineOf(words) <= range.end.line)?.parts;
  expect(parts('doors: pair')).toEqual(['door-1', 'door-2']);
  expect(parts('left: {')).toEqual(['left']);
  expect(parts('plinth: 100')).toEqual(['plinth']);
  expect(parts('width: 600')).toBeUndefined();
});

test('a wall has all that stand along it, each where it stands, with the worktop', async () => {
  const reply = await ask({ what: 'wall', carcass: 'sink' });
  expect(reply.boxes.map(({ scene, at }) => [scene.carcass, at.map(({ x }) => x / 1000)])).toEqual([
    ['sink', [0]],
    ['drawers', [600]],
    ['glasses', [100]],
  ]);
  const ends = reply.worktops.map(({ outline }) => outline.slice(0, 2).map(({ x }) => x));
  expect(ends).toEqual([[0, 1_050_000]]);
  expect(reply.title).toBe('Wall 1, 3 carcasses, 1050 mm long');
  expect(reply.described).toContain('‘glasses’ at 100 mm, 1450 mm above the floor');
  expect((await ask({ what: 'wall', carcass: 'island' })).boxes.map(({ scene }) => scene.carcass)).toEqual(['island']);
});

test('of a carcass whose text is broken the last good one, with why', async () => {
  await client.change(uri, [{ text: TEXT.replace('width: 600', 'width: wide') }]);
  const reply = await ask({ carcass: 'sink' });
  expect(reply.stale).toContain('sink');
  expect(reply.boxes[0]!.scene.parts.length).toBeGreaterThan(5);
  await client.change(uri, [{ text: TEXT }]);
});

test('a shop file has none', async () => {
  const shop = folder.uri('boxes.shop.yaml');
  await client.open(shop, 'unit: mm\n', 'borewright-shop');
  const reply: BoxReply = await client.ask('borewright/box', {
    uri: shop,
    what: 'carcass',
    position: null,
    carcass: null,
  });
  expect(reply).toMatchObject({ kind: 'nothing' });
});
