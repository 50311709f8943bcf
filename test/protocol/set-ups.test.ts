import { expect, test } from 'vitest';
import type { ListedSetUp, SetUpsMethod, SetUpsReply } from '../../shared-core/drawing/messages/set-ups.js';
import { isSetUpsReply } from '../../client/webview/messages/set-ups.js';
import { type Client, covered, demo, type Folder } from './client.js';
import { session } from './session.js';

const SET_UPS: SetUpsMethod = 'borewright/setUps';
let client: Client;
let folder: Folder;
let kitchen: string;
session(async (one) => {
  ({ client, folder } = one);
  folder.write('shed.shop.yaml', demo('shed.shop.yaml'));
  kitchen = folder.uri('kitchen.carcass.yaml');
  await client.open(kitchen, demo('kitchen.carcass.yaml'));
});

type Listed = Extract<SetUpsReply, { kind: 'set-ups' }>;
async function list(uri: string): Promise<Listed> {
  const reply = await client.ask<SetUpsReply>(SET_UPS, { uri });
  if (reply.kind !== 'set-ups') throw new Error(reply.reason);
  expect(isSetUpsReply(reply), 'what the client lets pass').toBe(true);
  return reply;
}
const named = ({ setUps }: Listed, id: string): ListedSetUp => setUps.find((one) => one.id === id)!;

test('the set-ups of the demo job in the order to run, with totals', async () => {
  const reply = await list(kitchen);
  expect(reply).toMatchObject({
    version: 1,
    stale: null,
    title: 'Kitchen and back workshop',
    unit: 'mm',
    unbored: [],
    broken: [],
  });
  const { totals, setUps } = reply;
  expect(setUps).toHaveLength(22);
  expect(totals).toMatchObject({ setUps: 22, leastSetUps: 22, seconds: 8070 });
  expect(setUps.reduce((sum, one) => sum + one.seconds, 0)).toBe(totals.seconds);
  expect(setUps.reduce((sum, one) => sum + one.holes, 0)).toBe(totals.holes);
  expect(setUps.reduce((sum, one) => sum + one.strokes, 0)).toBe(totals.strokes);
  expect(totals.words).toContain(
    'Changeovers take 2 h 14 min 30 s in all. No order that goes to each machine once takes less.',
  );
});

test('one set-up: what is changed, what stands, how the panels lie', async () => {
  const setUp = named(await list(kitchen), 'borer-up-C');
  expect(setUp).toMatchObject({ machine: 'borer-up', kind: 'vertical', kindWords: 'vertical head', depth: 12_000, height: null });
  expect(setUp.changes).toContain('Set long-left to 712 mm and long-right to 712 mm.');
  expect(setUp.settings.map(({ name }) => name)).toEqual(['fence', 'near-left', 'long-left', 'near-right', 'long-right', 'depth', 'bits']);
  expect(setUp.settings.at(-1)).toMatchObject({ value: 'Ø 8 mm in spindles 1, 3, 6, 8, 14 and 16' });
  const run = setUp.runs.find(({ carcass, panel }) => carcass === 'larder' && panel === 'left')!;
  expect(run.size).toBe('2064 × 560 × 16 mm');
  expect(run.steps.map(({ words }) => words).join('; ')).toContain('bottom end at long-left');
  expect(covered(client.text(kitchen), run.range!)).toBe('larder');
  expect(setUp.lay.join(' ')).toContain('The outside face lies down in every stroke; only the front edge touches the fence.');
  expect(setUp.cautions[0]).toContain('isolate it from power');
  expect(setUp.cautions.at(-1)).toContain('manual');
}); // prettier-ignore

test('every set-up carries the standing cautions; one that bores through says what stands under the panel', async () => {
  const { setUps } = await list(kitchen);
  for (const { cautions } of setUps) expect(cautions.length).toBeGreaterThanOrEqual(5);
  const through = setUps.filter((one) => one.through);
  expect(through.length).toBeGreaterThan(0);
  for (const { cautions } of through) expect(cautions.join(' ')).toContain('spoil board');
});

test('a set-up keeps its content over an edit elsewhere, and not over one of its own', async () => {
  const uri = folder.uri('edits.carcass.yaml');
  const text =
    'unit: mm\nshop: shed.shop.yaml\ncarcasses:\n  a: { kind: tall, width: 600, fixed-shelves: [712] }\n  b: { kind: open, width: 600, rows: none, depth: 300 }\n';
  await client.open(uri, text);
  const before = await list(uri);
  const content = ({ setUps }: Listed, position: number): string[] =>
    setUps.filter(({ stops }) => stops.some((stop) => stop.position === position)).map((one) => one.content);
  await client.open(uri, `# a remark\n${text}`);
  expect((await list(uri)).setUps.map((one) => one.content)).toEqual(before.setUps.map((one) => one.content));
  await client.open(uri, text.replace('712', '744'));
  expect(content(await list(uri), 744_000)).not.toEqual(content(before, 712_000));
});

test('holes that no machine makes are told with the reason', async () => {
  const uri = folder.uri('far.carcass.yaml');
  folder.write('faults.shop.yaml', demo('faults.shop.yaml'));
  await client.open(
    uri,
    'unit: mm\nshop: faults.shop.yaml\ncarcasses:\n  a: { kind: tall, width: 600, fixed-shelves: [1032] }\n',
  );
  const { unbored } = await list(uri);
  expect(unbored.map(({ carcass, panel, count, machine }) => [carcass, panel, count, machine])).toEqual([
    ['a', 'left', 5, 'upright'],
    ['a', 'right', 5, 'upright'],
  ]);
  expect(unbored[0]!.reason).toContain('can be set 1032 mm from the spindles');
});

test('where there is nothing to plan it says why', async () => {
  const uri = folder.uri('nothing.carcass.yaml');
  await client.open(uri, 'carcasses:\n  a:\n    kind: base\n');
  const reply = await client.ask<SetUpsReply>(SET_UPS, { uri });
  expect(reply).toMatchObject({ kind: 'nothing', version: 1 });
  expect(reply.kind === 'nothing' && reply.reason).toContain('width');
  const empty = folder.uri('empty.carcass.yaml');
  await client.open(empty, '');
  expect(await client.ask<SetUpsReply>(SET_UPS, { uri: empty })).toMatchObject({ kind: 'nothing' });
  const shop = folder.uri('shed.shop.yaml');
  await client.open(shop, demo('shed.shop.yaml'), 'borewright-shop');
  expect(await client.ask<SetUpsReply>(SET_UPS, { uri: shop })).toMatchObject({ kind: 'nothing' });
});

test('requests without a document, or with anything in its place, harm nothing', async () => {
  expect(await client.ask(SET_UPS, { uri: 'file:///nowhere.carcass.yaml' })).toBeNull();
  expect(await client.ask(SET_UPS, { uri: 42 })).toBeNull();
  expect(await client.ask(SET_UPS, {})).toBeNull();
});
