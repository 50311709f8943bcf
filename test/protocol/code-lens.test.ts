import type { CodeLens } from 'vscode-languageserver-protocol';
import { expect, test } from 'vitest';
import { type Client, covered, demo, type Folder } from './client.js';
import { session } from './session.js';

let client: Client;
let folder: Folder;
let kitchen: string;
session(async (one) => {
  ({ client, folder } = one);
  folder.write('shed.shop.yaml', demo('shed.shop.yaml'));
  kitchen = folder.uri('kitchen.carcass.yaml');
  await client.open(kitchen, demo('kitchen.carcass.yaml'));
});

const lenses = (uri: string): Promise<CodeLens[]> => client.ask('textDocument/codeLens', { textDocument: { uri } });
const resolved = (lens: CodeLens): Promise<CodeLens> => client.ask('codeLens/resolve', lens);

test('over each carcass: panels, bores, strokes and set-ups; it opens the machine view', async () => {
  const all = await lenses(kitchen);
  expect(all).toHaveLength(16);
  const plates = all.find(({ range }) => covered(client.text(kitchen), range) === 'plates')!;
  expect(plates.command).toEqual({
    title: '7 panels · 132 bores · 22 strokes · 6 set-ups',
    command: 'borewright.showMachineView',
    arguments: [kitchen, 'plates'],
  });
});

test('over the file, when it is looked at: set-ups and changeover time; it opens their list', async () => {
  const [head] = await lenses(kitchen);
  expect(head!.command).toBeUndefined();
  expect(client.text(kitchen).split('\n')[head!.range.start.line]).toMatch(/^title:/);
  const { command } = await resolved(head!);
  expect(command).toEqual({
    title: '22 set-ups · changeovers 2 h 14 min 30 s',
    tooltip: 'No order that goes to each machine once takes less.',
    command: 'borewright.showSetupList',
    arguments: [kitchen],
  });
});

test('over the file: a lens that writes its papers', async () => {
  const [head, papers] = await lenses(kitchen);
  expect(papers!.range).toEqual(head!.range);
  expect(papers!.command).toEqual({
    title: 'Write shop papers',
    command: 'borewright.writePapers',
    arguments: [kitchen],
  });
});

test('while a carcass is typed at its last lens stays over it, and so does the one over the file', async () => {
  const uri = folder.uri('typed.carcass.yaml');
  const text = 'carcasses:\n  ash:\n    kind: base\n    width: 600\n  birch: { kind: base, width: 500 }\n';
  const seen = async (now: string): Promise<string[]> => {
    await client.open(uri, now);
    return (await lenses(uri)).map(
      ({ range, command }) =>
        `${range.start.line} ${String(command?.arguments?.[1] ?? 'file')} ${command?.title ?? ''}`,
    );
  };
  const good = await seen(text);
  expect(good).toHaveLength(4);
  for (const [from, to] of [
    ['width: 600', 'width: '],
    ['width: 600', 'width: [600'],
    ['  ash:', '  ash'],
    ['  ash:', '  ashes: {'],
  ] as const) {
    expect((await seen(text.replace(from, to))).sort(), to).toEqual(good);
    expect(await seen(text)).toEqual(good);
  }
  // A line above moves it, and a carcass that is gone takes it along.
  expect(await seen(`# note\n${text.replace('600', '')}`)).toContain(good[2]!.replace('1', '2'));
  expect(await seen('carcasses:\n  birch: { kind: base, width: 500 }\n')).toHaveLength(3);
});

test('a lens of an older text is not completed by a newer one', async () => {
  const uri = folder.uri('moving.carcass.yaml');
  await client.open(uri, 'carcasses:\n  a: { kind: base, width: 600 }\n');
  const [head] = await lenses(uri);
  await client.open(uri, 'carcasses:\n  a: { kind: base, width: 700 }\n');
  await expect(resolved(head!)).rejects.toMatchObject({ code: -32801 });
});

test('a search for an order keeps nobody waiting', async () => {
  const uri = folder.uri('many.carcass.yaml');
  // Carcasses of many depths, setbacks and shelves, so that few set-ups can be shared and the search takes long.
  const some = Array.from(
    { length: 40 },
    (_, n) =>
      `  c${n}: { kind: base, width: 600, depth: ${500 + 3 * n}, row-setback: ${37 + (n % 9)}, fixed-shelves: [${200 + 7 * n}] }\n`,
  );
  await client.open(uri, `unit: mm\nshop: shed.shop.yaml\ncarcasses:\n${some.join('')}`);
  const [head] = await lenses(uri);
  let done = false;
  const order = resolved(head!).then((lens) => {
    done = true;
    return lens;
  });
  const words = await client.hover(uri, client.at(uri, 'c7:'));
  expect(words).toContain('c7');
  const early = done;
  const { command } = await order;
  expect(early).toBe(false);
  expect(command?.title).toMatch(/^\d+ set-ups · changeovers /);
});

test('none over what cannot be worked out, and none over a second carcass of one name', async () => {
  const uri = folder.uri('broken.carcass.yaml');
  await client.open(
    uri,
    'carcasses:\n  a: { kind: base, width: 600 }\n  b: { kind: base, width: 6oo }\n  a: { kind: wall, width: 600 }\n',
  );
  const own = (await lenses(uri)).filter(({ command }) => command?.arguments?.length === 2);
  expect(own.map(({ range }) => range.start.line)).toEqual([1]);
  const empty = folder.uri('empty.carcass.yaml');
  await client.open(empty, '');
  expect(await lenses(empty)).toEqual([]);
});
