import { mkdirSync, symlinkSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { Client, demo, Folder } from './client.js';

// A window that is not trusted: what lies outside its folders is not read.

let outside: Folder;
let folder: Folder;
const clients: Client[] = [];
beforeAll(() => {
  [outside, folder] = [new Folder(), new Folder()];
  outside.write('other.shop.yaml', demo('shed.shop.yaml'));
  folder.write('shed.shop.yaml', demo('shed.shop.yaml'));
  symlinkSync(join(outside.path, 'other.shop.yaml'), join(folder.path, 'linked.shop.yaml'));
  mkdirSync(join(folder.path, 'jobs'));
});
afterAll(async () => {
  for (const client of clients) expect(await client.stop()).toBe(0);
  outside.close();
  folder.close();
});

const jobWith = (shop: string): string => `shop: ${shop}\ncarcasses:\n  a: { kind: base, width: 600 }\n`;
async function started(restricted: boolean, folders: readonly string[] | null): Promise<Client> {
  const client = await Client.start(undefined, { restricted }, undefined, folders);
  clients.push(client);
  return client;
}
const faultsOf = async (client: Client, shop: string, name = 'jobs/a.carcass.yaml'): Promise<readonly string[]> =>
  (await client.open(folder.uri(name), jobWith(shop)))
    .filter(({ severity }) => severity === 1)
    .map(({ message }) => (typeof message === 'string' ? message : message.value));
const away = (): string => `../../${outside.path.split('/').at(-1)!}/other.shop.yaml`;

test('a shop file of the folder is read, one outside it or behind a link out of it is not', async () => {
  const client = await started(true, [folder.uri('')]);
  expect(await faultsOf(client, '../shed.shop.yaml')).toEqual([]);
  for (const shop of [away(), '../linked.shop.yaml']) {
    const [fault, ...more] = await faultsOf(client, shop);
    expect(fault).toContain('it lies outside the folder, and this window is restricted');
    expect(more).toEqual([]);
  }
  // Nor does going to what the shop describes open it.
  const uri = folder.uri('jobs/a.carcass.yaml');
  await client.open(
    uri,
    `shop: ${away()}\ndefaults: { board: white-16 }\ncarcasses:\n  a: { kind: base, width: 600 }\n`,
  );
  const position = client.at(uri, 'white-16');
  expect(await client.ask('textDocument/definition', { textDocument: { uri }, position })).toEqual([]);
});

test('where no folder is open, that of the job is meant', async () => {
  const client = await started(true, null);
  expect(await faultsOf(client, 'shed.shop.yaml', 'b.carcass.yaml')).toEqual([]);
  expect(
    await faultsOf(client, `../${outside.path.split('/').at(-1)!}/other.shop.yaml`, 'b.carcass.yaml'),
  ).toHaveLength(1);
});

test('in a window that is trusted both are read', async () => {
  const client = await started(false, [folder.uri('')]);
  for (const shop of ['../shed.shop.yaml', away(), '../linked.shop.yaml'])
    expect(await faultsOf(client, shop)).toEqual([]);
});
