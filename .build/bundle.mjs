// Bundles everything that ships into dist/: the extension, the server, the command line and the page in the panel.
// `node .build/bundle.mjs [--watch] [--production]`
import { existsSync, readdirSync, rmSync } from 'node:fs';
import { chmod } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import * as esbuild from 'esbuild';

const root = join(dirname(fileURLToPath(import.meta.url)), '..');
const production = process.argv.includes('--production');
const watch = process.argv.includes('--watch');

/** Options shared by all bundles. */
const common = {
  absWorkingDir: root,
  bundle: true,
  metafile: true,
  sourcemap: production ? false : 'linked',
  minify: production,
  keepNames: true,
  legalComments: 'linked',
  logLevel: 'warning',
  charset: 'utf8',
};

// A CommonJS bundle has no import.meta: give the code that asks for its own place the same answer as in ESM.
const commonJs = {
  platform: 'node',
  format: 'cjs',
  target: 'node20',
  define: { 'import.meta.url': '__moduleUrl' },
  banner: { js: "const __moduleUrl = require('node:url').pathToFileURL(__filename).href;" },
};

const bundles = [
  { entryPoints: ['client/extension.ts'], outfile: 'dist/client/extension.cjs', external: ['vscode'], ...commonJs },
  { entryPoints: ['server/main.ts'], outfile: 'dist/server/server.cjs', ...commonJs },
  {
    entryPoints: ['server/cli.ts'],
    outfile: 'dist/server/cli.js',
    platform: 'node',
    format: 'esm',
    target: 'node20',
    // Packages written in CommonJS ask for Node's modules with require, which an ES module lacks.
    banner: {
      js: "#!/usr/bin/env node\nimport { createRequire as __createRequire } from 'node:module';\nconst require = __createRequire(import.meta.url);",
    },
  },
  {
    entryPoints: ['client/webview/main.ts', 'client/webview/main.css'],
    outdir: 'dist/webview',
    platform: 'browser',
    format: 'iife',
    target: 'es2022',
  },
];

const written = new Set();
for (const bundle of bundles) {
  const missing = bundle.entryPoints.filter((entry) => !existsSync(join(root, entry)));
  if (missing.length > 0) console.warn(`skipped, not written yet: ${missing.join(', ')}`);
  const entryPoints = bundle.entryPoints.filter((entry) => !missing.includes(entry));
  if (entryPoints.length === 0) continue;
  const options = { ...common, ...bundle, entryPoints };
  if (watch) {
    const context = await esbuild.context(options);
    await context.watch();
  } else {
    const { metafile } = await esbuild.build(options);
    for (const file of Object.keys(metafile.outputs)) written.add(join(root, file));
  }
}
const cli = join(root, 'dist/server/cli.js');
if (existsSync(cli)) await chmod(cli, 0o755);

// What ships is only what this build made.
if (!watch) {
  for (const entry of readdirSync(join(root, 'dist'), { recursive: true, withFileTypes: true })) {
    const path = join(entry.parentPath, entry.name);
    if (entry.isFile() && !written.has(path)) rmSync(path);
  }
}
