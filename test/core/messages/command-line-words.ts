import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { check } from '../../../server/cli/check.js';
import { draw } from '../../../server/cli/draw.js';
import { layouts } from '../../../server/cli/layouts.js';
import { say } from '../../../server/cli/messages.js';
import { papers } from '../../../server/cli/papers.js';
import { CouldNotRun, oneFile, readArguments, readFormat } from '../../../server/cli/run.js';
import { say as sayPapers } from '../../../server/papers/messages.js';
import { stageWords } from '../../../server/papers/stage-words.js';
import { setUps } from '../../../server/cli/set-ups.js';
import { reference, schema, shop } from '../../../server/cli/texts.js';
import { writeMade } from '../../../server/cli/write.js';
import { documentLinks } from '../../../server/features/document-links.js';
import { rename } from '../../../server/features/rename.js';
import { say as sayServer } from '../../../server/messages.js';
import { Names } from '../../../server/names.js';
import { LastPlans } from '../../../server/last-plans.js';
import { Workspace } from '../../../server/workspace.js';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { NEUTRAL_SHOP_TEXT } from '../../../shared-core/shop/neutral-text.js';
import { tell } from '../../../shared-core/words/message.js';

const JOB = 'carcasses:\n  sink: { kind: base, width: 600 }\n';

/** Has the command line told wrong, and say so; in the folder where it runs, so that no path of this machine is an example. */
export async function sayCommandLine(): Promise<void> {
  const before = process.cwd();
  const folder = mkdtempSync(join(tmpdir(), 'borewright-'));
  process.chdir(folder);
  try {
    writeFileSync('kitchen.carcass.yaml', JOB);
    writeFileSync('bench.shop.yaml', NEUTRAL_SHOP_TEXT.replace(/^panel-saws:\n(?: .*\n|\n)+/m, ''));
    writeFileSync('sawless.carcass.yaml', `shop: bench.shop.yaml\n${JOB}`);
    mkdirSync('empty');
    await sayRefusals();
    await sayFiles();
  } finally {
    process.chdir(before);
    rmSync(folder, { recursive: true });
  }
  // Said where the program starts, and where it was not installed whole.
  const commands = ['check', 'draw'];
  tell(say.about({ version: '1.0.0' }), 'mm');
  tell(say.refused({ why: tell(say.noJobIn({ path: 'empty' }), 'mm') }), 'mm');
  tell(say.noCommand({ commands }), 'mm');
  tell(say.unknownCommand({ command: 'cheque', commands }), 'mm');
  tell(say.ownFault({ words: 'out of memory' }), 'mm');
  tell(say.notOpened({ path: 'kitchen.carcass.yaml' }), 'mm');
  tell(say.enough(), 'mm');
  tell(say.withErrors({ errors: 2, path: 'kitchen.carcass.yaml' }), 'mm');
  sayWriting();
}

/** What is said while papers are made, by whoever shows how far it has come. */
function sayWriting(): void {
  tell(sayPapers.noFont({ font: 'LiberationSans-Regular.ttf' }), 'mm');
  tell(sayPapers.noDisk(), 'mm');
  tell(sayPapers.fault({ path: 'out', fault: 'forbidden' }), 'mm');
  tell(sayPapers.stopped(), 'mm');
  const stage = { kind: 'layouts', board: 'white-16', index: 0, boards: 2, priced: true } as const;
  stageWords({ ...stage, found: null });
  stageWords({ ...stage, found: { cost: 21240, bound: 20310 } });
  stageWords({ ...stage, priced: false, found: { cost: 1160, bound: 1160 } });
  stageWords({ kind: 'paper', name: 'cut-list', index: 0, papers: 10 });
}

async function sayRefusals(): Promise<void> {
  for (const refused of [
    () => readArguments(['--speed'], []),
    () => readFormat('xml'),
    () => oneFile([], 'panels'),
    () => check([]),
    () => draw([]),
    () => reference(['all']),
    () => shop(['a', 'b', 'c']),
    () => schema([]),
    () => papers(['kitchen.carcass.yaml', '--out', 'out', '--page', 'a3']),
    () => papers(['kitchen.carcass.yaml', '--out', 'out', '--language', 'la']),
    () => papers(['kitchen.carcass.yaml', '--out', 'out', '--only', 'cuts']),
    () => papers(['kitchen.carcass.yaml', '--out', 'out', '--seconds', 'long']),
  ])
    await refusedBy(refused);
}

async function sayFiles(): Promise<void> {
  reference(['--out', 'reference']);
  await check(['empty']);
  draw(['kitchen.carcass.yaml', '--out', 'drawn']);
  await layouts(['sawless.carcass.yaml']);
  await papers(['kitchen.carcass.yaml', '--out', 'out', '--only', 'cut-list', '--as', 'csv']);
  writeFileSync('out/kitchen-cut-list.csv', 'changed');
  for (const refused of [
    () => setUps(['kitchen.carcass.yaml', '--machine', 'bore-all']),
    () => setUps(['empty']),
    () => setUps(['bench.shop.yaml']),
    () => setUps(['bath.carcass.yaml']),
    () => shop(['kitchen.carcass.yaml']),
    () => writeMade('out', [{ name: 'kitchen-cut-list.csv', content: 'anew' }]),
    () => setUps(['notes.txt']),
  ])
    await refusedBy(refused);
}

async function refusedBy(work: () => unknown): Promise<void> {
  try {
    await work();
  } catch (error) {
    if (error instanceof CouldNotRun) return;
    throw error;
  }
  throw new Error(`nothing is wrong with ${work.toString()}`);
}

/** Has the server say why it shows an older plan. */
export function sayOlderPlans(): void {
  const plans = new LastPlans();
  const workspace = new Workspace({
    read: () => ({ ok: false, fault: 'missing' }),
    beside: () => [],
    within: () => [],
    real: (uri: string) => uri,
  });
  const uri = 'file:///jobs/kitchen.carcass.yaml';
  for (const text of [JOB, JOB.replace('600', 'wide'), 'carcasses:\n  sink: [\n', 'carcasses: [\n', 'carcasses:\n']) {
    workspace.open(TextDocument.create(uri, 'borewright-job', 1, text));
    const job = workspace.job(uri);
    if (job !== null) plans.of(job);
  }
}

/** Has the server refuse other names. */
export function sayRefusedNames(): void {
  const shops = { 'file:///jobs/own.shop.yaml': NEUTRAL_SHOP_TEXT };
  const workspace = new Workspace({
    read: (uri) => {
      const text = new Map(Object.entries(shops)).get(uri);
      return text === undefined ? { ok: false, fault: 'missing' } : { ok: true, text };
    },
    beside: () => [],
    within: () => [],
    real: (uri: string) => uri,
  });
  const names = new Names(workspace);
  const attempt = (text: string, at: string, name = 'other'): void => {
    const uri = 'file:///jobs/kitchen.carcass.yaml';
    workspace.open(TextDocument.create(uri, 'borewright-job', 1, text));
    const file = workspace.file(uri)!;
    rename(file, file.document.positionAt(text.indexOf(at)), name, names, false);
  };
  const two = `${JOB}  base: { kind: base, width: 600, board: board-16 }\n`;
  attempt(JOB.replace(' }', ', panels: { left: { rows: none } } }'), 'left');
  attempt(`shop: own.shop.yaml\n${JOB}`, 'own');
  attempt(two, 'board-16');
  attempt(`shop: own.shop.yaml\n${two.replace('board-16', 'oak-16')}`, 'oak-16');
  attempt(two, 'sink', '');
  attempt(two, 'sink', 'a\nb');
  attempt(two, 'sink', 'none');
  attempt(two, 'sink', 'base');
  workspace.open(TextDocument.create('file:///jobs/own.shop.yaml', 'borewright-shop', 1, NEUTRAL_SHOP_TEXT));
  const shopped = TextDocument.create(
    'file:///jobs/hall.carcass.yaml',
    'borewright-job',
    1,
    `shop: own.shop.yaml\n${JOB}`,
  );
  workspace.open(shopped);
  documentLinks(workspace.file(shopped.uri)!, names);
  // The title of an action that every editor shows alike.
  tell(sayServer.takeRepairs(), 'mm');
}
