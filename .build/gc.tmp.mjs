// Bundles TypeScript files and runs them under Node, one after the other: `node .build/run.mjs FILE.ts... [-- ARGS...]`.
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { spawnSync } from 'node:child_process';
import { basename, dirname, join, resolve } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import * as esbuild from 'esbuild';

const root = join(dirname(fileURLToPath(import.meta.url)), '..');
const words = process.argv.slice(2);
const end = words.includes('--') ? words.indexOf('--') : words.length;
const files = words.slice(0, end).map((file) => resolve(file));
if (files.length === 0) {
  console.error('usage: node .build/run.mjs FILE.ts... [-- ARGS...]');
  process.exit(2);
}

// Each source finds its data beside itself, not beside the bundle.
const besideSource = {
  name: 'beside-source',
  setup(build) {
    build.onLoad({ filter: /\.ts$/ }, ({ path }) => ({
      loader: 'ts',
      contents: readFileSync(path, 'utf8')
        .replaceAll('import.meta.url', JSON.stringify(pathToFileURL(path).href))
        .replaceAll('import.meta.dirname', JSON.stringify(dirname(path))),
    }));
  },
};

// Inside the project, so that packages left outside the bundle are found.
const folder = mkdtempSync(join(root, 'node_modules', '.run-'));
try {
  for (const file of files) {
    const outfile = join(folder, `${basename(file, '.ts')}.mjs`);
    await esbuild.build({
      absWorkingDir: root,
      entryPoints: [file],
      outfile,
      bundle: true,
      platform: 'node',
      format: 'esm',
      target: 'node22',
      packages: 'external',
      sourcemap: 'inline',
      logLevel: 'warning',
      plugins: [besideSource],
    });
    const args = ['--trace-gc-nvp', outfile, ...words.slice(end + 1)];
    const { status } = spawnSync(process.execPath, args, { stdio: 'inherit' });
    if (status !== 0) process.exitCode = status ?? 1;
  }
} finally {
  rmSync(folder, { recursive: true, force: true });
}
