// A program with the command line of a desktop editor that shows the same workbench in a headless browser.
// `@vscode/test-electron` starts it as `vscodeExecutablePath`, just as it would start a desktop editor.
import { execFile, spawn, type ChildProcess } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join, relative, resolve } from 'node:path';
import { chromium, type Page } from 'playwright-core';
import { serveDriver } from './driver-server.js';
import { serveRepository } from './web-files.js';
import { SPOKEN } from './driver-protocol.js';
import { chromiumPath, hostPath, node24Path } from './host/ensure.mjs';

/** What the command line of a desktop editor says that matters here. */
interface Options {
  readonly folder: string;
  readonly extensionDevelopmentPaths: readonly string[];
  readonly extensionTestsPath: string;
  /** Tests to run after those, once the window has been left and opened anew. */
  readonly reopenedTestsPath: string | undefined;
  readonly restricted: boolean;
  /** The extension and its tests run in the browser, and are fetched as from the web. */
  readonly web: boolean;
  readonly vsix: string | undefined;
  /** The language that the editor is in. */
  readonly locale: string | undefined;
}

const RUN_LIMIT_MS = 8 * 60_000;
const START_LIMIT_MS = 90_000;
const VERBOSE = process.env.BOREWRIGHT_EDITOR_VERBOSE !== undefined;

/** The editor's native parts are not compiled, and it says so. */
const HARMLESS = /bindings file|watchdog|additional builtin extensions|AccountPolicyGate/;

/** A window with nothing in it but the files under test. */
const SETTINGS = {
  'chat.disableAIFeatures': true,
  'extensions.autoCheckUpdates': false,
  'extensions.ignoreRecommendations': true,
  'git.enabled': false,
  'security.workspace.trust.startupPrompt': 'never',
  'security.workspace.trust.banner': 'never',
  'telemetry.telemetryLevel': 'off',
  'window.commandCenter': false,
  'workbench.enableExperiments': false,
  'workbench.layoutControl.enabled': false,
  'workbench.secondarySideBar.defaultVisibility': 'hidden',
  'workbench.startupEditor': 'none',
  'workbench.tips.enabled': false,
};

function readOptions(args: readonly string[]): Options {
  const all = (name: string): string[] =>
    args.filter((arg) => arg.startsWith(`--${name}=`)).map((arg) => arg.slice(name.length + 3));
  const folder = args.find((arg) => !arg.startsWith('-'));
  const [extensionTestsPath] = all('extensionTestsPath');
  if (folder === undefined || extensionTestsPath === undefined) {
    throw new Error('usage: launch FOLDER --extensionDevelopmentPath=PATH --extensionTestsPath=PATH');
  }
  return {
    folder: resolve(folder),
    extensionDevelopmentPaths: all('extensionDevelopmentPath'),
    extensionTestsPath,
    reopenedTestsPath: all('reopenedTestsPath')[0],
    restricted: args.includes('--restricted'),
    web: args.includes('--web'),
    vsix: all('install-vsix')[0],
    locale: all('locale')[0],
  };
}

async function freePort(): Promise<number> {
  return new Promise((done, fail) => {
    const server = createServer();
    server.once('error', fail);
    server.listen(0, '127.0.0.1', () => {
      const address = server.address();
      const port = typeof address === 'object' && address !== null ? address.port : 0;
      server.close(() => done(port));
    });
  });
}

/** Starts the editor's server and waits until it answers. */
async function startServer(
  port: number,
  data: string,
  options: Options,
  env: NodeJS.ProcessEnv,
): Promise<ChildProcess> {
  const main = join(hostPath(), 'out', 'server-main.js');
  const places = ['--server-data-dir', join(data, 'server'), '--extensions-dir', join(data, 'extensions')];
  if (options.vsix !== undefined) {
    await new Promise<void>((done, fail) => {
      const install = [main, ...places, '--install-extension', options.vsix!];
      execFile(node24Path(), install, (error, stdout, stderr) =>
        error === null ? done() : fail(new Error(`installing the package failed\n${stdout}\n${stderr}`)),
      );
    });
  }
  const server = spawn(
    node24Path(),
    [
      main,
      ...['--host', '127.0.0.1', '--port', String(port), '--without-connection-token'],
      ...['--accept-server-license-terms', '--enable-smoke-test-driver', '--disable-telemetry'],
      ...(options.restricted ? [] : ['--disable-workspace-trust']),
      ...places,
    ],
    { env, stdio: ['ignore', 'pipe', 'pipe'], detached: true },
  );
  server.stdout.on('data', (chunk: Buffer) => {
    if (VERBOSE) process.stdout.write(chunk);
  });
  server.stderr.on('data', (chunk: Buffer) => {
    if (VERBOSE) process.stderr.write(chunk);
  });
  const until = Date.now() + START_LIMIT_MS;
  for (;;) {
    if (server.exitCode !== null) throw new Error(`the editor's server ended with ${server.exitCode}`);
    if (Date.now() > until) throw new Error(`the editor's server did not answer within ${START_LIMIT_MS} ms`);
    const answered = await fetch(`http://127.0.0.1:${port}/version`).then(
      (response) => response.ok,
      () => false,
    );
    if (answered) return server;
    await new Promise((done) => setTimeout(done, 100));
  }
}

/** Opens the workbench; resolves with the exit code that the run in the extension host reports. */
async function runInBrowser(
  page: Page,
  port: number,
  options: Options,
  web: string | null,
  unseen: string[],
): Promise<number> {
  let ended: (code: number) => void = () => undefined;
  await page.exposeFunction('codeAutomationExit', (code: number) => ended(code));
  await page.exposeFunction('codeAutomationLog', (_type: string, args: unknown[]) => {
    const line = args.map((arg) => (typeof arg === 'string' ? arg : JSON.stringify(arg))).join(' ');
    // The rest is the editor talking to itself.
    if (VERBOSE || line.startsWith(SPOKEN)) process.stdout.write(`${line.replaceAll(SPOKEN, '')}\n`);
    else if (!HARMLESS.test(line)) unseen.push(line);
  });
  const repository = options.extensionDevelopmentPaths[0] ?? '';
  const served = (path: string): string =>
    web === null ? `vscode-remote://127.0.0.1:${port}${resolve(path)}` : `${web}/${relative(repository, path)}`;
  if (web !== null) await developedOnTheWeb(page, new URL(web));
  const runTests = async (path: string): Promise<number> => {
    const code = new Promise<number>((done) => {
      ended = done;
    });
    const payload = [
      ...options.extensionDevelopmentPaths.map((folder) => ['extensionDevelopmentPath', served(folder)]),
      ['extensionTestsPath', served(path)],
    ];
    const query = `folder=${encodeURIComponent(options.folder)}&payload=${encodeURIComponent(JSON.stringify(payload))}`;
    await page.goto(`http://127.0.0.1:${port}/?${query}`);
    return code;
  };
  const run = async (): Promise<number> => {
    const code = await runTests(options.extensionTestsPath);
    return code !== 0 || options.reopenedTestsPath === undefined ? code : runTests(options.reopenedTestsPath);
  };
  const limit = new Promise<number>((done) => {
    setTimeout(() => {
      process.stderr.write(`the run was stopped after ${RUN_LIMIT_MS / 60_000} minutes\n`);
      done(1);
    }, RUN_LIMIT_MS).unref();
  });
  const closed = new Promise<number>((done) => page.once('crash', () => done(1)));
  return Promise.race([run(), limit, closed]);
}

/** Has the workbench take the extension from the web, where it would ask the editor's server for it. */
async function developedOnTheWeb(page: Page, { host }: URL): Promise<void> {
  await page.addInitScript((authority) => {
    const asked = Object.getOwnPropertyDescriptor(Element.prototype, 'getAttribute')!.value as (
      name: string,
    ) => string | null;
    Element.prototype.getAttribute = function (name) {
      const said = asked.call(this, name);
      if (said === null || this.id !== 'vscode-workbench-web-configuration') return said;
      const configuration = JSON.parse(said) as { readonly developmentOptions?: object };
      const extensions = [{ scheme: 'http', authority, path: '/' }];
      return JSON.stringify({
        ...configuration,
        developmentOptions: { ...configuration.developmentOptions, extensions },
      });
    };
  }, host);
}

/** Has the workbench take itself for one in another language, as with a language pack; its own words stay as they are. */
async function inLanguage(page: Page, locale: string): Promise<void> {
  await page.addInitScript((language) => {
    const fixed = { get: () => language, set: () => undefined };
    Object.defineProperty(globalThis, '_VSCODE_NLS_LANGUAGE', fixed);
  }, locale);
}

async function main(): Promise<number> {
  const options = readOptions(process.argv.slice(2));
  const data = mkdtempSync(join(tmpdir(), 'borewright-editor-'));
  mkdirSync(join(data, 'extensions'));
  for (const level of ['User', 'Machine']) {
    mkdirSync(join(data, 'server', 'data', level), { recursive: true });
    writeFileSync(join(data, 'server', 'data', level, 'settings.json'), JSON.stringify(SETTINGS));
  }
  const browser = await chromium.launch({
    executablePath: chromiumPath(),
    args: [
      ...['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run', '--disable-background-networking'],
      ...['--disable-component-update', '--disable-sync', '--force-color-profile=srgb', '--font-render-hinting=none'],
    ],
  });
  const context = await browser.newContext({
    viewport: { width: 1440, height: 900 },
    deviceScaleFactor: 1,
    reducedMotion: 'reduce',
    // The editor's own pages fetch from the web over https only.
    bypassCSP: options.web,
  });
  const page = await context.newPage();
  if (options.locale !== undefined) await inLanguage(page, options.locale);
  const driver = await serveDriver(page);
  const files = options.web ? await serveRepository(options.extensionDevelopmentPaths[0] ?? '') : null;
  let server: ChildProcess | undefined;
  try {
    const port = await freePort();
    server = await startServer(port, data, options, {
      ...process.env,
      BOREWRIGHT_EDITOR_DRIVER: driver.url,
      // No test looks for extensions outside.
      EXTENSIONS_GALLERY: JSON.stringify({ serviceUrl: '' }),
    });
    const unseen: string[] = [];
    const code = await runInBrowser(page, port, options, files?.origin ?? null, unseen);
    if (code !== 0) process.stderr.write(`The editor's own log ends with:\n${unseen.slice(-20).join('\n')}\n`);
    return code;
  } finally {
    driver.close();
    files?.close();
    await browser.close();
    // The server is the leader of its own group: its extension hosts end with it.
    if (server?.pid !== undefined && server.exitCode === null) process.kill(-server.pid, 'SIGKILL');
    rmSync(data, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 });
  }
}

main().then(
  (code) => process.exit(code),
  (error: unknown) => {
    process.stderr.write(`${error instanceof Error ? (error.stack ?? error.message) : String(error)}\n`);
    process.exit(1);
  },
);
