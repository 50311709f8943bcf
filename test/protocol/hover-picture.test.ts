import { expect, test } from 'vitest';
import { Client, demo, type Folder } from './client.js';
import { session } from './session.js';

let client: Client;
let folder: Folder;
let uri: string;
session(
  async (one) => {
    ({ client, folder } = one);
    folder.write('shed.shop.yaml', demo('shed.shop.yaml'));
    uri = folder.uri('kitchen.carcass.yaml');
    await client.open(uri, demo('kitchen.carcass.yaml'));
  },
  () => Client.start(undefined, { hoverPictures: true }),
);

const PICTURE = /!\[([^\]]*)\]\(data:image\/svg\+xml;utf8,([^)\s]*)\)/;

test('the panel under the pointer is shown in a picture of few bytes', async () => {
  const words = (await client.hover(uri, client.at(uri, 'fixed-shelves: [712]', 17)))!;
  const [, about, data] = PICTURE.exec(words)!;
  expect(about).toMatch(/^larder, shelf-1\. Inside/);
  expect(data!.length).toBeLessThan(40_000);
  const svg = decodeURIComponent(data!);
  expect(svg).toMatch(/^<svg [^>]*width="\d+" height="\d+"/);
  const { scene } = await client.drawing({ uri, carcass: 'larder', panel: 'shelf-1' }).then((reply) => {
    if (reply.kind !== 'drawing') throw new Error(reply.reason);
    return reply;
  });
  const bores = scene.shapes.filter(({ kind }) => kind === 'bore');
  expect(svg.match(/<circle class="hole-/g)).toHaveLength(bores.length);
  expect(svg).not.toContain('data-');
});

test('no picture where the text is about a whole carcass, or about many panels', async () => {
  for (const piece of ['larder:', 'width: 600'])
    expect(await client.hover(uri, client.at(uri, piece))).not.toContain('data:image');
});

test('a client that does not say that it shows pictures gets none', async () => {
  const plain = await Client.start();
  const text = demo('kitchen.carcass.yaml');
  await plain.open(uri, text);
  const words = (await plain.hover(uri, plain.at(uri, 'fixed-shelves: [712]', 17)))!;
  expect(words).toContain('**shelf-1**');
  expect(words).not.toContain('data:image');
  expect(await plain.stop()).toBe(0);
});
