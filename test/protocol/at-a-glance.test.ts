import { expect, test } from 'vitest';
import { demo, type Client, type Folder } from './client.js';
import { session } from './session.js';

let client: Client;
let folder: Folder;
session((one) => {
  ({ client, folder } = one);
  folder.write('shed.shop.yaml', demo('shed.shop.yaml'));
});
const job = (head: string): string => `${head}carcasses:\n  a: { kind: base, width: 24 in }\n`;
const about = (uri: string): unknown => client.changed.findLast((one) => one.uri === uri);

test('unit and shop of a file are told with its findings', async () => {
  const uri = folder.uri('own.carcass.yaml');
  await client.open(uri, job('unit: in\nshop: shed.shop.yaml\n'));
  expect(about(uri)).toMatchObject({ unit: 'in', shop: folder.uri('shed.shop.yaml') });
  await client.open(uri, job(''));
  expect(about(uri)).toMatchObject({ unit: 'mm', shop: null });
  const shop = folder.uri('inch.shop.yaml');
  await client.open(shop, 'unit: in\nboards:\n  oak: { thickness: 3/4 }\n', 'borewright-shop');
  expect(about(shop)).toMatchObject({ unit: 'in', shop: null });
});

test('the jobs of a shop file, open or on the disk', async () => {
  const open = folder.uri('open.carcass.yaml');
  await client.open(open, job('shop: shed.shop.yaml\n'));
  const closed = folder.write('closed.carcass.yaml', job('shop: ./shed.shop.yaml\n'));
  folder.write('other.carcass.yaml', job('shop: other.shop.yaml\n'));
  const jobs = await client.ask<string[]>('borewright/jobsOf', { uri: folder.uri('shed.shop.yaml') });
  expect(jobs).toEqual(expect.arrayContaining([open, closed]));
  expect(jobs.some((uri) => uri.includes('other'))).toBe(false);
  expect(await client.ask('borewright/jobsOf', { uri: 7 })).toEqual([]);
});
