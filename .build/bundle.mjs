// Bundles everything that ships into dist/: the extension, the server, the command line and the page in the panel.
// `node .build/bundle.mjs [--watch] [--production]`
import { execFileSync } from 'node:child_process';
import { chmodSync, copyFileSync, mkdirSync, readdirSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import * as esbuild from 'esbuild';
import { writeNotices } from './notices.mjs';
import { writePacked } from './packed.mjs';
import { shortNamesInPackages, withoutPackedFonts } from './packages.mjs';

const root = join(dirname(fileURLToPath(import.meta.url)), '..');
const production = process.argv.includes('--production');
const watch = process.argv.includes('--watch');

/** Options shared by all bundles. */
const common = {
  absWorkingDir: root,
  bundle: true,
  metafile: true,
  sourcemap: production ? false : 'linked',
  // Names stay what they are, for traces of faults. `keepNames` would do it too, but takes a third of the server's time.
  minifyWhitespace: production,
  minifySyntax: production,
  plugins: [withoutPackedFonts, ...(production ? [shortNamesInPackages] : [])],
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
  { entryPoints: ['client/desktop.ts'], outfile: 'dist/client/extension.cjs', external: ['vscode'], ...commonJs },
  {
    entryPoints: ['client/browser.ts'],
    outfile: 'dist/client/browser.cjs',
    external: ['vscode'],
    platform: 'browser',
    format: 'cjs',
    target: 'es2022',
  },
  { entryPoints: ['server/main.ts'], outfile: 'dist/server/server.cjs', ...commonJs },
  // Read only by those who speak the language.
  {
    entryPoints: ['de', 'fr'].map((language) => ({ in: `server/spoken/${language}.ts`, out: `words-${language}` })),
    outdir: 'dist/server',
    outExtension: { '.js': '.cjs' },
    ...commonJs,
  },
  {
    entryPoints: ['server/main-worker.ts'],
    outfile: 'dist/server/worker.js',
    platform: 'browser',
    format: 'iife',
    target: 'es2022',
  },
  {
    // The command line and the threads of the server share one core.
    entryPoints: ['cli', 'server-thread', 'orders-thread', 'papers-thread', 'check-thread'].map(
      (name) => `server/${name}.ts`,
    ),
    outdir: 'dist/server',
    // What only some need is a file of its own, read when it is asked for.
    splitting: true,
    chunkNames: 'shared-[name]-[hash]',
    platform: 'node',
    format: 'esm',
    target: 'node20',
    // Packages written in CommonJS ask for Node's modules with require, which an ES module lacks.
    banner: {
      js: "#!/usr/bin/env node\nimport { createRequire as __createRequire } from 'node:module';\nconst require = __createRequire(import.meta.url);",
    },
  },
  {
    entryPoints: ['de', 'fr'].map((language) => ({
      in: `client/webview/words/${language}.ts`,
      out: `words-${language}`,
    })),
    outdir: 'dist/webview',
    platform: 'browser',
    format: 'iife',
    target: 'es2022',
  },
  {
    entryPoints: ['preview', 'box', 'machine', 'shop'].flatMap((page) =>
      ['ts', 'css'].map((kind) => ({ in: `client/webview/${page}/${page}.${kind}`, out: page })),
    ),
    outdir: 'dist/webview',
    platform: 'browser',
    format: 'iife',
    target: 'es2022',
  },
];

const written = new Set();
// The library's compiled code, beside the bundle that it is in.
written.add(
  writePacked(join(root, 'node_modules', 'highs', 'build', 'highs.wasm'), join(root, 'dist', 'server'), production),
);
// Its widths are those of the faces that drawings are laid out for.
for (const name of ['LiberationSans-Regular.ttf', 'LiberationSans-Bold.ttf', 'LICENSE_LIBERATION']) {
  const font = join(root, 'dist', 'server', 'fonts', name);
  mkdirSync(dirname(font), { recursive: true });
  copyFileSync(join(root, 'node_modules', 'pdfjs-dist', 'standard_fonts', name), font);
  written.add(font);
}
// What cuts those faces down to the letters of one drawing; its own JavaScript is not needed.
const subsetter = join(root, 'node_modules', 'harfbuzzjs', 'dist', 'harfbuzz-subset.wasm');
written.add(writePacked(subsetter, join(root, 'dist', 'server'), production));
const bundled = new Set([join('node_modules', 'harfbuzzjs')]);
for (const bundle of bundles) {
  const options = { ...common, ...bundle };
  if (watch) {
    const context = await esbuild.context(options);
    await context.watch();
  } else {
    const { metafile } = await esbuild.build(options);
    for (const file of Object.keys(metafile.outputs)) written.add(join(root, file));
    for (const file of Object.keys(metafile.inputs)) {
      const folder = /^(?:.*\/)?node_modules\/(?:@[^/]+\/)?[^/]+(?=\/)/.exec(file)?.[0];
      if (folder !== undefined) bundled.add(folder);
    }
  }
}

if (!watch) {
  const cli = join(root, 'dist', 'server', 'cli.js');
  chmodSync(cli, 0o755);
  // `npx borewright` finds it here. Left to itself npx keeps a link of its own, broken for good if it was made before a build.
  const link = join(root, 'node_modules', '.bin', 'borewright');
  rmSync(link, { force: true });
  if (process.platform !== 'win32') symlinkSync(cli, link);
  // Made from the schema and the rules by the program itself, so that what is published is what it does.
  const made = [
    ['schema/carcass.schema.json', 'schema', 'job'],
    ['schema/shop.schema.json', 'schema', 'shop'],
    ['schema/paper.schema.json', 'schema', 'paper'],
    ['reference/findings.md', 'reference', 'findings'],
    ['reference/job-files.md', 'reference', 'job-files'],
    ['reference/shop-files.md', 'reference', 'shop-files'],
  ];
  for (const [file, ...command] of made) {
    const path = join(root, 'dist', file);
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(path, execFileSync(process.execPath, [cli, ...command], { encoding: 'utf8' }));
    written.add(path);
  }

  for (const path of writeNotices(root, bundled)) written.add(path);

  // What ships is only what this build made.
  for (const entry of readdirSync(join(root, 'dist'), { recursive: true, withFileTypes: true })) {
    const path = join(entry.parentPath, entry.name);
    if (entry.isFile() && !written.has(path)) rmSync(path);
  }
}
