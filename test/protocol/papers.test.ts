import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { CancellationTokenSource } from 'vscode-languageserver-protocol';
import { beforeEach, describe, expect, test } from 'vitest';
import type { PapersParams, PapersReply, ScannedReply } from '../../shared-core/papers/asked.js';
import { Client, covered, demo, type Folder } from './client.js';
import { session } from './session.js';

let client: Client;
let folder: Folder;
let kitchen: string;
const told: { readonly token: unknown; readonly message: string }[] = [];

session(async (one) => {
  ({ client, folder } = one);
  folder.write('shed.shop.yaml', demo('shed.shop.yaml'));
  kitchen = folder.write('kitchen.carcass.yaml', demo('kitchen.carcass.yaml'));
  client.connection.onNotification(
    '$/progress',
    ({ token, value }: { token: unknown; value: { message?: string } }) => {
      told.push({ token, message: value.message ?? '' });
    },
  );
  await client.open(kitchen, demo('kitchen.carcass.yaml'));
});
const SMALL = 'sheet-length: 1250, sheet-width: 1250';
beforeEach(() => told.splice(0));

const wanted = (out: string, more: Partial<PapersParams> = {}): PapersParams & { readonly workDoneToken: string } => ({
  uri: kitchen,
  folder: folder.uri(out),
  only: ['cut-list'],
  as: ['csv'],
  page: 'a4',
  seconds: null,
  workDoneToken: out,
  ...more,
});
const inside = (...path: string[]): string => join(folder.path, ...path);
const write = (params: PapersParams): Promise<PapersReply | null> => client.ask('borewright/papers', params);

describe('papers asked for by an editor', () => {
  test('are written where it says, as the text stands in the editor, and it is told how far they have come', async () => {
    const changed = demo('kitchen.carcass.yaml').replace('title:', 'title: Unsaved,');
    expect(changed).not.toBe(demo('kitchen.carcass.yaml'));
    await client.open(kitchen, changed);
    const reply = await write(wanted('one', { only: ['cut-list', 'cost'], as: ['csv', 'text'] }));
    const files = ['kitchen-cut-list.csv', 'kitchen-cut-list.txt', 'kitchen-cost.csv', 'kitchen-cost.txt'];
    expect(reply).toEqual({ kind: 'written', files, broken: [], errors: 0 });
    expect(readdirSync(inside('one')).filter((name) => !name.startsWith('.'))).toEqual(files.toSorted());
    expect(readFileSync(inside('one', 'kitchen-cost.txt'), 'utf8')).toContain('Unsaved');
    expect(told.every(({ token }) => token === 'one')).toBe(true);
    const words = told.map(({ message }) => message).join('\n');
    expect(words).toMatch(/sheets of \S+, 1 of \d boards: \d+\.\d\d m², /);
    expect(words).toContain('cost, 2 of 2 papers');
    await client.open(kitchen, demo('kitchen.carcass.yaml'));
  });

  test('leave what is not theirs, and say so', async () => {
    expect(await write(wanted('two'))).toMatchObject({ kind: 'written' });
    const file = inside('two', 'kitchen-cut-list.csv');
    writeFileSync(file, 'mine');
    const reply = await write(wanted('two'));
    expect(reply).toMatchObject({ kind: 'nothing' });
    expect(reply).toHaveProperty('reason', expect.stringContaining('was not written by Borewright'));
    expect(readFileSync(file, 'utf8')).toBe('mine');
  });

  test('that are cancelled while sheets are laid out leave nothing, and the server answers meanwhile', async () => {
    // Large pieces of many sizes on small sheets: nobody proves in seconds that a layout is the cheapest.
    folder.write('small.shop.yaml', demo('shed.shop.yaml').replaceAll(/sheet-length: \d+, sheet-width: \d+/g, SMALL));
    const some = Array.from({ length: 24 }, (_, n) => {
      const [width, depth, height] = [417 + ((n * 97) % 401), 391 + ((n * 53) % 173), 600 + ((n * 71) % 201)];
      return `  c${n}: { kind: base, width: ${width}, depth: ${depth}, height: ${height} }\n`;
    });
    const uri = folder.uri('many.carcass.yaml');
    await client.open(uri, `shop: small.shop.yaml\ncarcasses:\n${some.join('')}`);
    const source = new CancellationTokenSource();
    const params = wanted('three', { uri, only: ['sheet-layouts'], seconds: 600 });
    const asked = client.connection.sendRequest<PapersReply>('borewright/papers', params, source.token);
    await client.until(() => told.some(({ message }) => message.includes('m²')), 'a first layout');
    expect(await client.hover(kitchen, client.at(kitchen, 'plates:'))).toContain('plates');
    source.cancel();
    await expect(asked).rejects.toMatchObject({ code: -32800 });
    expect(existsSync(inside('three'))).toBe(false);
  });

  test('name the carcasses that are in none of them, and make sense of what makes none', async () => {
    const uri = folder.uri('broken.carcass.yaml');
    await client.open(uri, 'carcasses:\n  a: { kind: base, width: 600 }\n  b: { kind: base, width: 6oo }\n');
    expect(await write(wanted('four', { uri }))).toEqual({
      kind: 'written',
      files: ['broken-cut-list.csv'],
      broken: ['b'],
      errors: 1,
    });
    const odd = { uri, folder: 7 } as unknown as PapersParams;
    expect(await write(odd)).toBeNull();
    expect(await write(wanted('five', { uri: folder.uri('shed.shop.yaml') }))).toBeNull();
    expect(await write({ ...wanted('six'), folder: 'https://example.org/papers' })).toMatchObject({ kind: 'nothing' });
    const loose = { ...wanted('seven'), only: ['cut-list', 'rhymes'], seconds: 'long' } as unknown as PapersParams;
    expect(await write(loose)).toMatchObject({ files: ['kitchen-cut-list.csv'] });
  });
});

describe('the code of a label', () => {
  const scan = (text: unknown): Promise<ScannedReply | null> => client.ask('borewright/scanned', { text });

  test('leads to the panel in the job', async () => {
    const reply = await scan(' kitchen.carcass.yaml#plates/left\r\n');
    expect(reply).toMatchObject({ kind: 'found', carcass: 'plates', panel: 'left' });
    const { places } = reply as Extract<ScannedReply, { kind: 'found' }>;
    expect(places.map(({ uri }) => uri)).toEqual([kitchen]);
    expect(covered(client.text(kitchen), places[0]!.range)).toContain('plates');
  });

  test('that leads nowhere says why', async () => {
    const why = async (text: string): Promise<string> => ((await scan(text)) as { reason: string }).reason;
    expect(await why('4006381333931')).toContain('This is not the code of a panel label');
    expect(await why('kitchn.carcass.yaml#plates/left')).toContain('there is ‘kitchen.carcass.yaml’');
    expect(await why('kitchen.carcass.yaml#plates/divider-9')).toContain('The label is of an earlier text');
    expect(await why('kitchen.carcass.yaml#saucers/left')).toContain('no panel ‘left’ in a carcass ‘saucers’');
    expect(await scan(7)).toBeNull();
  });
});

test('a code leads to every job of that name in the folders of the workspace', async () => {
  const { Folder: Place } = await import('./client.js');
  const place = new Place();
  const job = 'carcasses:\n  ash: { kind: base, width: 600 }\n';
  place.write('hall.carcass.yaml', job);
  const other = await Client.start(undefined, undefined, undefined, [place.uri('')]);
  try {
    const found = await other.ask<ScannedReply>('borewright/scanned', { text: 'hall.carcass.yaml#ash/bottom' });
    expect(found).toMatchObject({ kind: 'found', places: [{ uri: place.uri('hall.carcass.yaml') }] });
  } finally {
    await other.stop();
    place.close();
  }
});
