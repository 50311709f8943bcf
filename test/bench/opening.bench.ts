// From opening a job, or an edit of its defaults or its shop file, to its findings, through the server over stdio, beside a
// general YAML server with the JSON Schema of job files on the same text: `npm run bench`. A fresh process for every size and
// server. `BOREWRIGHT_SIZES=20,200` names other sizes.
import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { MessageConnection } from 'vscode-jsonrpc/node';
import { Client, demo, Folder, root } from '../protocol/client.js';
import { jobOf } from './jobs.js';
import { writePage, type Measured, type Outcome } from './page.js';

const SIZES = (process.env.BOREWRIGHT_SIZES ?? '20,200,2000,10000').split(',').map(Number);
const GENERAL = join(root, 'test', 'bench', 'general-server');
const LIMIT_MS = 600_000;

/** Waits, as long as it takes, until `done` says when. */
async function waited(done: () => boolean): Promise<number> {
  const start = performance.now();
  while (!done()) {
    if (performance.now() - start > LIMIT_MS) throw new Error('nothing came');
    await new Promise((next) => setTimeout(next, 1));
  }
  return performance.now() - start;
}

/** Runs what changes a document, and times the first findings of it that come and the last. */
async function timed(client: Client, uri: string, work: () => Promise<void>): Promise<Outcome> {
  const before = client.changed.length;
  const told = (): typeof client.changed => client.changed.slice(before).filter((one) => one.uri === uri);
  const start = performance.now();
  await work();
  await waited(() => told().length > 0);
  const first = performance.now() - start;
  await waited(() => told().some(({ complete }) => complete));
  return { first, all: performance.now() - start };
}

/** Asks one thing again and again while findings are worked out, and gives the longest that an answer took. */
async function longestAnswer(client: Client, uri: string, work: Promise<unknown>): Promise<number> {
  let [longest, isDone] = [0, false];
  const ended = work.finally(() => (isDone = true));
  while (!isDone) {
    const start = performance.now();
    await client.hover(uri, { line: 8, character: 6 });
    longest = Math.max(longest, performance.now() - start);
    await new Promise((next) => setTimeout(next, 10));
  }
  await ended;
  return longest;
}

const residentMegabytes = (pid: number): number =>
  Number(/VmHWM:\s*(\d+)/.exec(readFileSync(`/proc/${pid}/status`, 'utf8'))?.[1] ?? 0) / 1024;

async function ours(size: number): Promise<Pick<Measured, 'ours' | 'megabytes'>> {
  const folder = new Folder();
  const shop = folder.write('shed.shop.yaml', demo('shed.shop.yaml'));
  const client = await Client.start();
  const uri = folder.uri('bench.carcass.yaml');
  const text = jobOf(size);
  const opened = await timed(client, uri, () => client.opened(uri, text));
  const memory = residentMegabytes(client.process.pid!);
  const edit = (of: string, content: string): (() => Promise<void>) => {
    return () => client.type(of, [{ text: content }]);
  };
  const body = await timed(client, uri, edit(uri, text.replace('width: 400', 'width: 401')));
  const defaults = await timed(client, uri, edit(uri, text.replace('plinth: 100\n\ncar', 'plinth: 90\n\ncar')));
  await timed(client, uri, () => client.opened(shop, demo('shed.shop.yaml'), 'borewright-shop'));
  const priced = demo('shed.shop.yaml').replace(/changeover: \{ stop: (\d+)/, 'changeover: { stop: 1$1');
  if (priced === demo('shed.shop.yaml')) throw new Error('the shop of the demo has no such line');
  const changeover = await timed(client, uri, edit(shop, priced));
  const wider = demo('shed.shop.yaml').replace(/tolerances:\n {2}thickness: [\d.]+/, 'tolerances:\n  thickness: 0.35');
  const tolerances = await timed(client, uri, edit(shop, wider));
  const again = timed(client, uri, edit(shop, demo('shed.shop.yaml').replace('habits:\n', 'habits:\n  setback: 38\n')));
  const hover = await longestAnswer(client, uri, again);
  const row = await again;
  await client.stop();
  folder.close();
  console.log(
    `${String(size).padStart(6)} carcasses: ${memory.toFixed(0)} MB at most when opened; a hover took ${hover.toFixed(0)} ms at most while a key of the shop was followed`,
  );
  return { megabytes: memory, ours: { opened, body, defaults, changeover, tolerances, row } };
}

async function general(size: number): Promise<Outcome> {
  const folder = new Folder();
  const schema = join(folder.path, 'job.schema.json');
  execFileSync('bash', ['-c', `node ${join(root, 'dist/server/cli.js')} schema job > ${schema}`]);
  const settings = {
    yaml: {
      schemas: { [pathToFileURL(schema).href]: '*.carcass.yaml' },
      validate: true,
      schemaStore: { enable: false },
    },
  };
  const answers = (connection: MessageConnection): void => {
    connection.onRequest('workspace/configuration', ({ items }: { items: readonly { section: string }[] }) =>
      items.map(({ section }) => (section === 'yaml' ? settings.yaml : null)),
    );
  };
  const command = [join(GENERAL, 'node_modules', 'yaml-language-server', 'bin', 'yaml-language-server'), '--stdio'];
  const capabilities = { workspace: { configuration: true, didChangeConfiguration: { dynamicRegistration: true } } };
  const client = await Client.start(capabilities, undefined, command, null, answers);
  await client.connection.sendNotification('workspace/didChangeConfiguration', { settings });
  await new Promise((next) => setTimeout(next, 500));
  const uri = folder.uri('bench.carcass.yaml');
  const start = performance.now();
  // One wrong value shows that the schema is held against the text.
  const text = jobOf(size).replace('kind: wall', 'kind: wail');
  await client.opened(uri, text, 'yaml');
  await waited(() => (client.diagnostics.get(uri)?.diagnostics.length ?? 0) > 0);
  const all = performance.now() - start;
  client.process.kill();
  folder.close();
  return { first: all, all };
}

function ensureGeneral(): void {
  if (existsSync(join(GENERAL, 'node_modules'))) return;
  execFileSync('npm', ['ci', '--ignore-scripts', '--no-audit', '--no-fund', '--loglevel=error'], { cwd: GENERAL });
}

async function main(): Promise<void> {
  ensureGeneral();
  console.log('ms to the first findings / to all of them; in brackets, how many times the general server’s');
  const measured: Measured[] = [];
  for (const size of SIZES) {
    const beside = await general(size);
    const found = await ours(size);
    measured.push({ size, general: beside, ...found });
    const line = (name: string, { first, all }: Outcome): void =>
      console.log(
        `${String(size).padStart(6)}  ${name.padEnd(24)} ${first.toFixed(0).padStart(7)} / ${all.toFixed(0).padStart(7)}   (${(first / beside.first).toFixed(1)} / ${(all / beside.all).toFixed(1)})`,
      );
    line('general server', beside);
    for (const [name, outcome] of Object.entries(found.ours)) line(name, outcome);
  }
  // Other sizes are for trying something out.
  if (process.env.BOREWRIGHT_SIZES === undefined) writePage(measured);
}

await main();
