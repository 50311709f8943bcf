// The main job on the demo jobs: `npm run demo`. Speaks to the real server over stdio as an editor would, prints what it
// finds, and writes the bore map of every panel as SVG with one page to look at them, into demo-out/.
import { asItIs } from '../../shared-core/words/told.js';
import { spawn } from 'node:child_process';
import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { basename, join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { createMessageConnection, StreamMessageReader, StreamMessageWriter } from 'vscode-jsonrpc/node';
import type { Diagnostic, PublishDiagnosticsParams } from 'vscode-languageserver-protocol';
import type { DrawingMethod, DrawingParams, DrawingReply } from '../../shared-core/drawing/messages/drawing.js';
import { toSvg } from '../../shared-core/drawing/render/svg.js';
import { boreMapsPaper, type DrawnJob, type DrawnPanel } from '../../shared-core/papers/bore-maps/paper.js';
import { asHtml } from '../../shared-core/papers/render/html.js';

const root = resolve(import.meta.dirname, '..', '..');
const out = join(root, 'demo-out');
const FAULTY = join('..', 'fixtures', 'every-finding.carcass.yaml');
const JOBS = [
  'kitchen.carcass.yaml',
  'studio.carcass.yaml',
  'office.carcass.yaml',
  'seeds.carcass.yaml',
  'canteen.carcass.yaml',
  FAULTY,
];
const ANSWER_LIMIT_MS = 60_000;
const SEVERITIES = ['', 'error', 'warning', 'information', 'hint'];

interface JobReport extends DrawnJob {
  readonly errors: number;
}

const DRAWING: DrawingMethod = 'borewright/drawing';

/** The language server as a client sees it; `close` lets it end as the protocol asks. */
async function startServer() {
  const server = spawn(process.execPath, [join(root, 'dist', 'server', 'server.cjs'), '--stdio'], {
    stdio: ['pipe', 'pipe', 'inherit'],
  });
  const connection = createMessageConnection(
    new StreamMessageReader(server.stdout),
    new StreamMessageWriter(server.stdin),
  );
  const waiting = new Map<string, (diagnostics: Diagnostic[]) => void>();
  const found = new Map<string, Diagnostic[]>();
  connection.onNotification('textDocument/publishDiagnostics', (params: PublishDiagnosticsParams) => {
    found.set(params.uri, params.diagnostics);
  });
  // What slow rules say comes a little later; then the findings are complete.
  connection.onNotification('borewright/changed', ({ uri, complete }: { uri: string; complete: boolean }) => {
    if (complete) waiting.get(uri)?.(found.get(uri) ?? []);
  });
  // The server may ask for settings or register features; the demo has none to give.
  connection.onRequest((method: string, params: unknown) =>
    method === 'workspace/configuration' ? (params as { items: unknown[] }).items.map(() => null) : null,
  );
  connection.listen();
  await connection.sendRequest('initialize', {
    processId: process.pid,
    rootUri: null,
    workspaceFolders: null,
    capabilities: { textDocument: { publishDiagnostics: { relatedInformation: true, versionSupport: true } } },
  });
  await connection.sendNotification('initialized', {});

  return {
    /** Opens a document and resolves with what the server finds in it. */
    check: (uri: string, languageId: string, text: string): Promise<Diagnostic[]> =>
      new Promise((done, fail) => {
        const limit = setTimeout(() => fail(new Error(`no findings for ${uri} in time`)), ANSWER_LIMIT_MS);
        waiting.set(uri, (diagnostics) => {
          clearTimeout(limit);
          done(diagnostics);
        });
        connection
          .sendNotification('textDocument/didOpen', { textDocument: { uri, languageId, version: 1, text } })
          .catch(fail);
      }),
    draw: (params: DrawingParams): Promise<DrawingReply> => connection.sendRequest<DrawingReply>(DRAWING, params),
    close: async (): Promise<void> => {
      await connection.sendRequest('shutdown');
      await connection.sendNotification('exit');
      connection.dispose();
    },
  };
}
type Server = Awaited<ReturnType<typeof startServer>>;

async function runJob(server: Server, file: string): Promise<JobReport> {
  const path = join(root, 'test', 'demo', file);
  const uri = pathToFileURL(path).href;
  const diagnostics = await server.check(uri, 'borewright-job', readFileSync(path, 'utf8'));
  const findings = diagnostics.map(({ range, severity, code, message }) => {
    const place = `${basename(file)}:${range.start.line + 1}:${range.start.character + 1}`;
    const words = typeof message === 'string' ? message : message.value;
    return asItIs(`${place} ${SEVERITIES[severity ?? 1] ?? ''} ${code ?? ''}: ${words}`);
  });
  const name = basename(file, '.carcass.yaml');
  mkdirSync(join(out, name), { recursive: true });
  const ask = (carcass: string | null, panel: string | null): Promise<DrawingReply> =>
    server.draw({ uri, view: 'panel', position: null, carcass, panel });
  const carcasses = [];
  for (const carcass of (await ask(null, null)).carcasses) {
    const panels: DrawnPanel[] = [];
    for (const panel of carcass.panels) {
      const reply = await ask(carcass.name, panel);
      if (reply.kind === 'nothing') throw new Error(`${carcass.name}, ${panel}: ${reply.reason}`);
      const svg = `${name}/${`${carcass.name}-${panel}`.replace(/[^\w-]/g, '_')}.svg`;
      writeFileSync(join(out, svg), toSvg(reply.scene));
      panels.push({ name: panel, file: svg, scene: reply.scene });
    }
    carcasses.push({ name: carcass.name, panels });
  }
  const errors = diagnostics.filter(({ severity }) => severity === 1).length;
  return { file, findings, errors, carcasses };
}

/** How a job stands, in plain words. */
function inShort({ file, findings, errors }: JobReport): string {
  const count = findings.length === 1 ? '1 finding' : `${findings.length} findings`;
  if (file === FAULTY) return `${basename(file)}: ${count}, all on purpose.`;
  if (errors > 0) return `${file}: not to be bored yet: ${count}, of which ${errors} must be put right first.`;
  return findings.length === 0 ? `${file}: clean.` : `${file}: clean of errors; ${count} worth knowing.`;
}

async function main(): Promise<number> {
  rmSync(out, { recursive: true, force: true });
  mkdirSync(out, { recursive: true });
  const server = await startServer();
  const reports: JobReport[] = [];
  for (const file of JOBS) {
    const report = await runJob(server, file);
    reports.push(report);
    const panels = report.carcasses.flatMap((carcass) => carcass.panels);
    const bores = panels.flatMap(({ scene }) => scene.table).reduce((sum, { count }) => sum + count, 0);
    if (file === FAULTY)
      console.log(`\n${file} is wrong on purpose: it shows every finding at least once. Nothing in it is to be built.`);
    console.log(`\n${report.file}: ${report.carcasses.length} carcasses, ${panels.length} panels, ${bores} bores`);
    console.log(report.findings.length === 0 ? '  no findings' : report.findings.map((line) => `  ${line}`).join('\n'));
  }
  await server.close();
  writeFileSync(join(out, 'index.html'), asHtml(boreMapsPaper(reports)));
  const sound = reports.filter(({ file }) => file !== FAULTY);
  console.log('\nIn short');
  for (const report of reports) console.log(`  ${inShort(report)}`);
  console.log(`  To look at the bore map of every panel, open ${join(out, 'index.html')} in a browser.`);
  return sound.some(({ errors }) => errors > 0) ? 1 : 0;
}

process.exitCode = await main();
