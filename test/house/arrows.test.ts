import { execFileSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';

// The rules are tried on small houses laid for the purpose, each with the project's own configuration.
const root = resolve(import.meta.dirname, '..', '..');
let house: string;

beforeEach(() => {
  house = mkdtempSync(join(tmpdir(), 'borewright-house-'));
  cpSync(join(root, '.dependency-cruiser.cjs'), join(house, '.dependency-cruiser.cjs'));
  cpSync(join(root, 'tsconfig.json'), join(house, 'tsconfig.json'));
  writeFileSync(join(house, 'package.json'), '{ "type": "module" }');
  symlinkSync(join(root, 'node_modules'), join(house, 'node_modules'));
});
afterEach(() => rmSync(house, { recursive: true, force: true }));

interface Report {
  readonly summary: {
    readonly violations: readonly { readonly from: string; readonly rule: { readonly name: string } }[];
  };
}

/** Names of the rules broken by a house of these files. */
function broken(files: Readonly<Record<string, string>>): string[] {
  for (const [path, text] of Object.entries(files)) {
    mkdirSync(dirname(join(house, path)), { recursive: true });
    writeFileSync(join(house, path), text);
  }
  const folders = [...new Set(Object.keys(files).map((path) => path.split('/')[0]!))];
  const report = execFileSync(
    process.execPath,
    [
      join(root, 'node_modules', '.bin', 'depcruise'),
      ...[...folders, '--config', '.dependency-cruiser.cjs', '--output-type', 'json'],
    ],
    { cwd: house, encoding: 'utf8' },
  );
  return [...new Set((JSON.parse(report) as Report).summary.violations.map(({ rule }) => rule.name))].sort();
}

const value = 'export const value = 1;\n';
const importing = (path: string): string => `import { value } from '${path}';\nexport const again = value;\n`;

test('a house in order breaks no rule', () => {
  expect(
    broken({
      'shared-core/length/a.ts': value,
      'shared-core/boring/b.ts': importing('../length/a.js'),
      'shared-core/engine.ts': importing('./boring/b.js').replace('{ value }', '{ again as value }'),
      'server/main.ts': `import * as rpc from 'vscode-languageserver/node';\n${importing('../shared-core/length/a.js')}void rpc;\n`,
      'client/extension.ts': `import type { value } from '../shared-core/length/a.js';\nexport type V = typeof value;\n`,
      'client/webview/main.ts': importing('../../shared-core/length/a.js'),
    }),
  ).toEqual([]);
});

test.each([
  ['an arrow to the right', 'arrow-length', 'shared-core/length/a.ts', '../boring/b.js', 'shared-core/boring/b.ts'],
  [
    'a core that sees the engine',
    'arrow-findings',
    'shared-core/findings/a.ts',
    '../engine.js',
    'shared-core/engine.ts',
  ],
  ['a core that sees the server', 'core-is-pure', 'shared-core/job/a.ts', '../../server/b.js', 'server/b.ts'],
  [
    'a replay that sees the plan',
    'replay-knows-no-plan',
    'shared-core/machining/replay/a.ts',
    '../plan/b.js',
    'shared-core/machining/plan/b.ts',
  ],
  [
    'a plan that sees the replay',
    'plan-knows-no-replay',
    'shared-core/machining/strokes/a.ts',
    '../replay/b.js',
    'shared-core/machining/replay/b.ts',
  ],
  ['a server that sees the client', 'server-sees-core-only', 'server/a.ts', '../client/b.js', 'client/b.ts'],
  ['a client that sees the server', 'client-sees-no-server', 'client/a.ts', '../server/b.js', 'server/b.ts'],
  ['a page that sees the extension', 'webview-stands-alone', 'client/webview/a.ts', '../b.js', 'client/b.ts'],
  [
    'an extension that computes',
    'extension-computes-nothing',
    'client/a.ts',
    '../shared-core/boring/b.js',
    'shared-core/boring/b.ts',
  ],
])('%s is caught', (_, rule, from, specifier, to) => {
  expect(broken({ [from]: importing(specifier), [to]: value })).toContain(rule);
});

test.each([
  ['core-has-no-node', 'shared-core/document/a.ts', 'node:fs'],
  ['core-is-pure', 'shared-core/document/a.ts', 'vscode-languageserver-types'],
  ['core-packages', 'shared-core/document/a.ts', 'fast-check'],
  ['webview-has-no-node', 'client/webview/a.ts', 'node:path'],
  ['server-packages', 'server/a.ts', 'fast-check'],
])('%s: %s may not import %s', (rule, from, specifier) => {
  expect(broken({ [from]: `import * as it from '${specifier}';\nexport const all = it;\n` })).toContain(rule);
});

test('a cycle is caught', () => {
  expect(
    broken({
      'shared-core/boring/a.ts': `import { b } from './b.js';\nexport const a = (): number => b();\n`,
      'shared-core/boring/b.ts': `import { a } from './a.js';\nexport const b = (): number => a();\n`,
    }),
  ).toContain('no-cycles');
});

test('a file that nobody knows is caught', () => {
  expect(broken({ 'shared-core/boring/a.ts': value })).toContain('no-orphans');
});
