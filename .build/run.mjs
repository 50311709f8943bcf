// Bundles one TypeScript file and runs it under Node: `node .build/run.mjs FILE.ts [ARGS...]`.
import { mkdtempSync, rmSync } from 'node:fs';
import { spawnSync } from 'node:child_process';
import { basename, dirname, join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import * as esbuild from 'esbuild';

const root = join(dirname(fileURLToPath(import.meta.url)), '..');
const [file, ...args] = process.argv.slice(2);
if (file === undefined) {
  console.error('usage: node .build/run.mjs FILE.ts [ARGS...]');
  process.exit(2);
}
// Inside the project, so that packages left outside the bundle are found.
const folder = mkdtempSync(join(root, 'node_modules', '.run-'));
try {
  const outfile = join(folder, `${basename(file, '.ts')}.mjs`);
  await esbuild.build({
    absWorkingDir: root,
    entryPoints: [resolve(file)],
    outfile,
    bundle: true,
    platform: 'node',
    format: 'esm',
    target: 'node22',
    packages: 'external',
    sourcemap: 'inline',
    logLevel: 'warning',
    // Scripts find their data beside their source, not beside the bundle.
    define: {
      'import.meta.url': JSON.stringify(`file://${resolve(file)}`),
      'import.meta.dirname': JSON.stringify(dirname(resolve(file))),
    },
  });
  const { status } = spawnSync(process.execPath, ['--enable-source-maps', outfile, ...args], { stdio: 'inherit' });
  process.exitCode = status ?? 1;
} finally {
  rmSync(folder, { recursive: true, force: true });
}
