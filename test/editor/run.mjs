// Runs the editor tests: `node test/editor/run.mjs [--pictures] [--bench] [--run NAME] [--only TEXT]`.
// Builds the suites, lays a workspace for each run, and starts the editor as any user of `@vscode/test-electron` would.
// BOREWRIGHT_EDITOR names a desktop editor to run them in instead; BOREWRIGHT_EDITOR_VERBOSE shows the editor's own log.
import { spawnSync } from 'node:child_process';
import {
  chmodSync,
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  readdirSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { runTests } from '@vscode/test-electron';
import * as esbuild from 'esbuild';
import sharp from 'sharp';
import { ensureChromium, ensureHost, ensureNode24 } from './host/ensure.mjs';

const here = dirname(fileURLToPath(import.meta.url));
const root = join(here, '..', '..');
const out = join(here, 'out');

const { values } = parseArgs({
  options: {
    pictures: { type: 'boolean' },
    bench: { type: 'boolean' },
    run: { type: 'string' },
    only: { type: 'string' },
  },
});
const { pictures = false, bench = false, run: runName, only } = values;

/**
 * One start of the editor: a folder of suites, the workspace that is opened and its name there, further arguments, whether
 * the extension is the packed one, and a folder of suites for the same window opened anew.
 */
const RUNS = [
  { name: 'suite', workspace: 'workspace', title: 'pantry', args: [], packed: false },
  { name: 'restricted', workspace: 'workspace', title: 'pantry', args: ['--restricted'], packed: false },
  { name: 'packed', workspace: 'workspace', title: 'pantry', args: [], packed: true },
  { name: 'web', workspace: 'workspace', title: 'pantry', args: ['--web'], packed: false, web: true },
  { name: 'german', workspace: 'workspace', title: 'pantry', args: ['--locale=de'], packed: false },
  { name: 'leaving', workspace: 'workspace', title: 'pantry', args: [], packed: false, reopened: 'reopened' },
];
const PICTURE_RUNS = [{ name: 'pictures', workspace: '../demo', title: 'demo', args: [], packed: false }];

const BENCH_RUNS = [{ name: 'bench', workspace: '../demo', title: 'demo', args: [], packed: false }];

/** Pictures of the window have few colours: with a palette, and packed without a loss, they take up a fifth. */
async function shrinkPictures(folder) {
  for (const file of readdirSync(folder).filter((name) => name.endsWith('.png'))) {
    const path = join(folder, file);
    const flat = await sharp(readFileSync(path)).png({ palette: true, quality: 100, dither: 0 }).toBuffer();
    writeFileSync(path.replace(/png$/, 'webp'), await sharp(flat).webp({ lossless: true, effort: 6 }).toBuffer());
    rmSync(path);
  }
}

/** Bundles the suites of one folder into one file that exports `run`, as the extension host asks for. */
async function bundleSuite(folder, web = false) {
  const files = readdirSync(join(here, folder)).filter((file) => file.endsWith('.suite.ts'));
  const outfile = join(out, `${folder}.cjs`);
  const contents = [
    ...files.sort().map((file) => `import './${folder}/${file}';`),
    `export { runRegistered as run } from './${web ? 'web-harness' : 'harness'}.js';`,
  ];
  await esbuild.build({
    stdin: { contents: contents.join('\n'), resolveDir: here, loader: 'ts' },
    outfile,
    bundle: true,
    ...(web
      ? { platform: 'browser', target: 'es2022', define: { ONLY: JSON.stringify(only) ?? 'undefined' } }
      : { platform: 'node', target: 'node22' }),
    format: 'cjs',
    external: ['vscode'],
    sourcemap: 'inline',
    logLevel: 'warning',
  });
  return outfile;
}

async function bundleLauncher() {
  const outfile = join(out, 'launch.mjs');
  await esbuild.build({
    entryPoints: [join(here, 'launch.ts')],
    outfile,
    bundle: true,
    platform: 'node',
    format: 'esm',
    target: 'node22',
    packages: 'external',
    banner: { js: '#!/usr/bin/env node' },
    logLevel: 'warning',
    plugins: [
      {
        // It finds the host beside itself, so it stays where it is.
        name: 'host-stays',
        setup(build) {
          build.onResolve({ filter: /host\/ensure\.mjs$/ }, () => ({ path: '../host/ensure.mjs', external: true }));
        },
      },
    ],
  });
  chmodSync(outfile, 0o755);
  return outfile;
}

/** A fresh copy, outside the repository, so that tests may write and no setting of the project applies. */
function layWorkspace(run) {
  const parent = mkdtempSync(join(tmpdir(), `borewright-${run.name}-`));
  const folder = join(parent, run.title);
  cpSync(join(here, run.workspace), folder, { recursive: true });
  return { folder, remove: () => rmSync(parent, { recursive: true, force: true }) };
}

/** Packs the extension as for its users, and returns the package's path. */
function pack() {
  const vsix = join(out, 'borewright.vsix');
  const options = { cwd: root, stdio: ['ignore', 'ignore', 'inherit'] };
  const { status } = spawnSync('npm', ['run', '--silent', 'package', '--', '--out', vsix], options);
  if (status !== 0) throw new Error(`packing the extension gave ${status}`);
  return vsix;
}

async function runOnce(run, launcher) {
  const results = join(out, `${run.name}.json`);
  rmSync(results, { force: true });
  const workspace = layWorkspace(run);
  const shots = pictures ? join(root, 'client', 'media', 'readme') : join(here, 'shots');
  let code;
  try {
    code = await runTests({
      vscodeExecutablePath: launcher,
      extensionDevelopmentPath: run.packed ? join(here, 'packed-host') : root,
      extensionTestsPath: await bundleSuite(run.name, run.web),
      launchArgs: [
        workspace.folder,
        ...run.args,
        ...(run.packed ? [`--install-vsix=${pack()}`] : []),
        ...(run.reopened === undefined ? [] : [`--reopenedTestsPath=${await bundleSuite(run.reopened)}`]),
      ],
      extensionTestsEnv: {
        BOREWRIGHT_EDITOR_RESULTS: results,
        BOREWRIGHT_EDITOR_SHOTS: shots,
        BOREWRIGHT_EDITOR_REPOSITORY: root,
        ...(only === undefined ? {} : { BOREWRIGHT_EDITOR_ONLY: only }),
      },
    });
  } catch (error) {
    console.error(error instanceof Error ? error.message : error);
    code = 1;
  } finally {
    workspace.remove();
  }
  const outcomes = existsSync(results) ? JSON.parse(readFileSync(results, 'utf8')) : [];
  const failures = outcomes.filter(({ status }) => status === 'failed');
  const failed = failures.length;
  const passed = outcomes.length - failed;
  // Told once more, under the editor's own log.
  for (const { name, error } of failures) console.log(`FAIL ${name}\n${error ?? ''}`);
  // An editor that ends badly without naming a failed test is a failure of its own.
  return { passed, failed: code !== 0 && failed === 0 ? 1 : failed };
}

ensureNode24();
if (process.env.BOREWRIGHT_EDITOR === undefined) {
  ensureChromium();
  ensureHost();
}
mkdirSync(out, { recursive: true });
const launcher = process.env.BOREWRIGHT_EDITOR ?? (await bundleLauncher());
const total = { passed: 0, failed: 0 };
// A desktop editor knows nothing of the launcher's own arguments.
const desktop = process.env.BOREWRIGHT_EDITOR !== undefined;
const wanted = pictures
  ? PICTURE_RUNS
  : bench
    ? BENCH_RUNS
    : RUNS.filter(({ args, packed, reopened }) => !desktop || (args.length === 0 && !packed && reopened === undefined));
for (const run of wanted) {
  if (runName !== undefined && run.name !== runName) continue;
  console.log(`\nEditor run: ${run.name}`);
  const { passed, failed } = await runOnce(run, launcher);
  total.passed += passed;
  total.failed += failed;
}
if (pictures) await shrinkPictures(join(root, 'client', 'media', 'readme'));
writeFileSync(join(out, 'total.json'), JSON.stringify(total));
console.log(`\neditor: ${total.passed} passed, ${total.failed} failed`);
process.exitCode = total.failed > 0 || total.passed === 0 ? 1 : 0;
