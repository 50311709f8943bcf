import { expect, test } from 'vitest';
import type { MessageConnection } from 'vscode-jsonrpc/node';
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
          items.map(() => ({ findings: { severity } })),
        );
      },
    ),
);

async function set(wanted: Readonly<Record<string, string>>): Promise<void> {
  severity = wanted;
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
