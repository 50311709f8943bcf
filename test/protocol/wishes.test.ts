import { expect, test } from 'vitest';
import type { MessageConnection } from 'vscode-jsonrpc/node';
import type { SetUpsReply } from '../../shared-core/drawing/messages/set-ups.js';
import { Client } from './client.js';
import { session } from './session.js';

/** A dowel in the row: bores that collide, in a panel that is drawn. */
const JOB = `carcasses:
  desk:
    kind: base
    width: 600
    fixed-shelves: [361]
    dowels: [37]
`;

let severity: Readonly<Record<string, string>> = {};
let lengths: Readonly<Record<string, string>> = {};
let client: Client;
let job: string;
session(
  async (one) => {
    client = one.client;
    job = one.folder.uri('desk.carcass.yaml');
    await client.open(job, JOB);
  },
  () =>
    Client.start(
      { workspace: { configuration: true } },
      undefined,
      undefined,
      null,
      (connection: MessageConnection) => {
        connection.onRequest('workspace/configuration', ({ items }: { items: readonly unknown[] }) =>
          items.map(() => ({ findings: { severity }, lengths })),
        );
      },
    ),
);

async function set(wanted: typeof severity, shown: typeof lengths = {}): Promise<void> {
  severity = wanted;
  lengths = shown;
  const told = client.changed.length;
  await client.connection.sendNotification('workspace/didChangeConfiguration', { settings: null });
  await client.until(() => client.changed.length > told, 'the findings by the new settings');
}

const params = () => ({ uri: job, carcass: 'desk', panel: 'left', position: null, view: 'panel' as const });
interface Shown {
  readonly rule: string;
  readonly severity: string;
}
async function drawn(): Promise<readonly Shown[]> {
  const reply = await client.drawing(params());
  if (reply?.kind !== 'drawing') throw new Error('nothing was drawn');
  return reply.scene.findings.map(({ rule, severity: loud }) => ({ rule, severity: loud }));
}
const printed = async (): Promise<string> => JSON.stringify(await client.picture(params()));

test('a rule that is off is off in the text, on the bore map, in its list, and in what is copied of it', async () => {
  const before = await drawn();
  const { rule } = before.find((one) => one.severity === 'error')!;
  expect(client.diagnostics.get(job)!.diagnostics.map(({ code }) => code)).toContain(rule);
  const marked = await printed();
  await set({ [rule]: 'off' });
  const after = await drawn();
  expect(after).toEqual(before.filter((one) => one.rule !== rule));
  expect(client.diagnostics.get(job)!.diagnostics.map(({ code }) => code)).not.toContain(rule);
  expect(await printed()).not.toBe(marked);
  await set({});
  expect(await drawn()).toEqual(before);
  expect(await printed()).toBe(marked);
});

test('a severity that is set is that of the marks too', async () => {
  const before = await drawn();
  const { rule } = before.find((one) => one.severity === 'error')!;
  await set({ [rule]: 'information' });
  expect((await drawn()).filter((one) => one.rule === rule).map((one) => one.severity)).toContain('info');
  expect((await drawn()).filter((one) => one.rule === rule && one.severity === 'error')).toEqual([]);
  await set({});
});

test('a unit that is set is that of hovers, hints, findings and drawings at once, and goes again', async () => {
  const messages = (): string => JSON.stringify(client.diagnostics.get(job)!.diagnostics.map(({ message }) => message));
  const said = async (): Promise<readonly string[]> => {
    // The letters of set-ups are known when the order to run is.
    await client.ask('borewright/setUps', { uri: job });
    return [
      (await client.hover(job, { line: 1, character: 3 }))!,
      messages(),
      JSON.stringify(((await client.drawing(params())) as { scene: { facts: unknown } }).scene.facts),
    ];
  };
  const before = await said();
  for (const words of before) expect(words).toMatch(/\d mm/);
  await set({}, { unit: 'inches', inches: 'decimals' });
  for (const words of await said()) {
    expect(words).toMatch(/\d in\b/);
    expect(words).not.toMatch(/\d+\/\d|600 mm/);
  }
  await set({}, { unit: 'parsecs', inches: 'roman' });
  expect(await said()).toEqual(before);
});

test('the plan of an older text is told in the unit that is wanted now', async () => {
  await set({});
  const stops = async (): Promise<readonly string[]> => {
    const reply = await client.ask<SetUpsReply>('borewright/setUps', { uri: job });
    if (reply.kind !== 'set-ups') throw new Error(reply.reason);
    return reply.setUps.flatMap(({ settings }) =>
      settings.filter(({ name }) => name === 'depth').map(({ value }) => value),
    );
  };
  await client.open(job, JOB.replace('dowels: [37]', 'count: 1'));
  const before = await stops();
  expect(before.length).toBeGreaterThan(0);
  expect(before.filter((value) => !value.endsWith(' mm'))).toEqual([]);
  await client.open(job, JOB.replace('width: 600', 'width: wide'));
  expect(await stops()).toEqual(before);
  await set({}, { unit: 'inches' });
  const after = await stops();
  expect(after).toHaveLength(before.length);
  expect(after.filter((value) => !value.endsWith(' in'))).toEqual([]);
  await client.open(job, JOB);
  await set({});
});
