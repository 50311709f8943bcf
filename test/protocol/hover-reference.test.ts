import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import type { Folder } from './client.js';
import { Client } from './client.js';
import { session } from './session.js';

const JOB = `shop: yard.shop.yaml
defaults:
  rail-width: 110
carcasses:
  desk:
    kind: base
    width: 600
    back: { how: grooved, inset: 18 }
    loose-shelves:
      - { at: 300, setback: 10 }
    panels:
      left: { bands: { back: none } }
`;
const SHOP =
  'habits:\n  sizes: { base: { pitches: 20 } }\nvertical-heads:\n  bench:\n    stops:\n      far-left: { side: left }\n';

let client: Client;
let folder: Folder;
let job: string;
let shop: string;
session(async (one) => {
  ({ client, folder } = one);
  job = folder.uri('desk.carcass.yaml');
  shop = folder.uri('yard.shop.yaml');
  await client.open(job, JOB);
  await client.open(shop, SHOP, 'borewright-shop');
});

test.each([
  ['job', 'shop:', 'job-files.md', 'Job: `shop`'],
  ['job', 'rail-width', 'job-files.md', 'Carcass: `rail-width`'],
  ['job', 'desk', 'job-files.md', 'Carcass'],
  ['job', 'inset', 'job-files.md', 'Back: `inset`'],
  ['job', 'grooved', 'job-files.md', 'Back: `how`'],
  ['job', 'setback', 'job-files.md', 'Shelf: `setback`'],
  ['job', 'back: none', 'job-files.md', 'Bands: `back`'],
  ['shop', 'pitches', 'shop-files.md', 'Size: `pitches`'],
  ['shop', 'side', 'shop-files.md', 'Stop: `side`'],
  ['shop', 'far-left', 'shop-files.md', 'Stop'],
])('in a %s file, %s is linked to its heading', async (kind, piece, page, heading) => {
  const uri = kind === 'job' ? job : shop;
  const words = await client.hover(uri, client.at(uri, piece, 1));
  const link = /\[More in the reference\]\((.*)\)$/.exec(words ?? '')?.[1];
  expect(link, words ?? 'no hover').toBeDefined();
  const { hash, pathname } = new URL(link!);
  expect(pathname.endsWith(`/${page}`)).toBe(true);
  const lines = readFileSync(fileURLToPath(link!.replace(/#.*/, '')), 'utf8').split('\n');
  const found = lines.find((line) => /^##/.test(line) && line.replace(/^#+ /, '') === heading);
  expect(found).toBeDefined();
  expect(hash).toBe(`#${heading.toLowerCase().replaceAll(/[:`]/g, '').replaceAll(' ', '-')}`);
});

test('a client that has a command for it is given that command, and nothing that only looks like one', async () => {
  const linkWith = async (referenceCommand: unknown): Promise<string> => {
    const other = await Client.start(undefined, { referenceCommand, reference: 'https://example.invalid/pages' });
    await other.open(job, JOB);
    const words = await other.hover(job, other.at(job, 'inset', 1));
    expect(await other.stop()).toBe(0);
    return /\[More in the reference\]\((.*)\)$/.exec(words ?? '')![1]!;
  };
  const command = await linkWith('editor.open');
  expect(command.startsWith('command:editor.open?')).toBe(true);
  expect(JSON.parse(decodeURIComponent(command.slice(command.indexOf('?') + 1)))).toEqual(['job-files', 'back-inset']);
  for (const none of [7, 'a)b', ''])
    expect(await linkWith(none)).toBe('https://example.invalid/pages/job-files.html#back-inset');
});
