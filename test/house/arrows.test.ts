import { execFileSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';

// The rules are tried on a small house laid for the purpose, with the project's own configuration: some files in order, and
// for each rule a file that breaks it.
const root = resolve(import.meta.dirname, '..', '..');

const importing = (specifier: string): string => `import * as it from '${specifier}';\nexport const all = it;\n`;

const IN_ORDER: Readonly<Record<string, string>> = {
  'shared-core/length/good.ts': 'export const good = 1;\n',
  'shared-core/boring/good.ts': importing('../length/good.js'),
  'shared-core/engine.ts': importing('./boring/good.js'),
  'shared-core/service/good.ts': importing('../engine.js'),
  'shared-core/service.ts': importing('./service/good.js'),
  'server/good.ts': `${importing('../shared-core/service.js')}export * from 'vscode-languageserver/node';\n`,
  'server/cli/good.ts': importing('../../shared-core/service.js'),
  'client/good.ts': `import type { good } from '../shared-core/length/good.js';\nexport type Good = typeof good;\n`,
  'client/webview/good.ts': importing('../../shared-core/length/good.js'),
  'shared-core/drawing/bore-map/good.ts': importing('../../length/good.js'),
  'shared-core/machining/described.ts': importing('../length/good.js'),
  'shared-core/machining/plan/good.ts': importing('../../boring/good.js'),
  'shared-core/machining/replay/good.ts': importing('../../boring/good.js'),
};

/** What is wrong, the rule that says so, the file that is wrong, and what it imports. */
const FAULTS: readonly (readonly [string, string, string, string])[] = [
  ['an arrow to the right', 'arrow-length', 'shared-core/length/a.ts', '../boring/good.js'],
  ['words that see a carcass', 'arrow-words', 'shared-core/words/a.ts', '../boring/good.js'],
  ['a rule that sees the engine', 'arrow-findings', 'shared-core/findings/a.ts', '../engine.js'],
  ['an engine that sees the service', 'arrow-engine', 'shared-core/engine/a.ts', '../service.js'],
  ['a server that sees a room of the core', 'server-asks-the-service', 'server/c.ts', '../shared-core/length/good.js'],
  ['a server that sees the engine', 'server-asks-the-service', 'server/features/a.ts', '../../shared-core/engine.js'],
  ['a server that sees behind the service', 'server-asks-the-service', 'server/d.ts', '../shared-core/service/good.js'],
  [
    'a command that sees a room of the core',
    'server-asks-the-service',
    'server/cli/a.ts',
    '../../shared-core/length/good.js',
  ],
  ['a core that sees the server', 'core-is-pure', 'shared-core/job/a.ts', '../../server/good.js'],
  ['a core that sees the protocol', 'core-is-pure', 'shared-core/job/b.ts', 'vscode-languageserver-types'],
  ['a core that sees Node', 'core-has-no-node', 'shared-core/document/a.ts', 'node:fs'],
  ['a core with a package', 'core-packages', 'shared-core/document/b.ts', 'fast-check'],
  ['a writer of DXF with another package', 'dxf-packages', 'shared-core/papers/render/dxf/a.ts', 'fast-check'],
  ['a writer of PDF with another package', 'pdf-packages', 'shared-core/papers/render/pdf/a.ts', 'fast-check'],
  ['a replay that sees the plan', 'replay-knows-no-plan', 'shared-core/machining/replay/a.ts', '../plan/good.js'],
  ['a plan that sees the replay', 'plan-knows-no-replay', 'shared-core/machining/strokes/a.ts', '../replay/good.js'],
  [
    'a plan that reads what is described',
    'nothing-is-worked-out-from-descriptions',
    'shared-core/machining/order/a.ts',
    '../described.js',
  ],
  ['a scene that sees a view', 'scene-knows-no-view', 'shared-core/drawing/scene/a.ts', '../bore-map/good.js'],
  [
    'a machine view that sees a bore map',
    'bore-map-and-machine-view-are-strangers',
    'shared-core/drawing/machine-view/a.ts',
    '../bore-map/good.js',
  ],
  ['a server that sees the client', 'server-sees-core-only', 'server/a.ts', '../client/good.js'],
  ['a server with a package', 'server-packages', 'server/b.ts', 'fast-check'],
  ['a client that sees the server', 'client-sees-no-server', 'client/a.ts', '../server/good.js'],
  ['an extension that computes', 'extension-computes-nothing', 'client/b.ts', '../shared-core/boring/good.js'],
  ['a page that sees the extension', 'webview-stands-alone', 'client/webview/a.ts', '../good.js'],
  ['another page with solids', 'only-the-box-view-is-solid', 'client/webview/c.ts', 'three'],
  ['a page that sees Node', 'webview-has-no-node', 'client/webview/b.ts', 'node:path'],
  ['a cycle', 'no-cycles', 'shared-core/carcass/a.ts', './b.js'],
  ['a cycle of types', 'no-cycles-of-types', 'shared-core/tolerance/a.ts', './b.js'],
  ['an import of nothing', 'not-resolvable', 'shared-core/shop/a.ts', './missing.js'],
];
const ORPHAN = 'shared-core/tolerance/orphan.ts';

interface Report {
  readonly summary: {
    readonly violations: readonly { readonly from: string; readonly rule: { readonly name: string } }[];
  };
}
let house: string;
let broken: Report['summary']['violations'];

beforeAll(() => {
  house = mkdtempSync(join(tmpdir(), 'borewright-house-'));
  for (const file of ['.dependency-cruiser.cjs', 'tsconfig.json']) cpSync(join(root, file), join(house, file));
  symlinkSync(join(root, 'node_modules'), join(house, 'node_modules'));
  const files: Record<string, string> = {
    'package.json': '{ "type": "module" }',
    ...IN_ORDER,
    ...Object.fromEntries(FAULTS.map(([, , file, specifier]) => [file, importing(specifier)])),
    // A cycle is told once, so its other half is no case of its own.
    'shared-core/carcass/b.ts': importing('./a.js'),
    'shared-core/tolerance/b.ts': "import type { all } from './a.js';\nexport type All = typeof all;\n",
    [ORPHAN]: 'export const lonely = 1;\n',
  };
  for (const [path, text] of Object.entries(files)) {
    mkdirSync(dirname(join(house, path)), { recursive: true });
    writeFileSync(join(house, path), text);
  }
  const depcruise = join(root, 'node_modules', '.bin', 'depcruise');
  const options = ['--config', '.dependency-cruiser.cjs', '--output-type', 'json'];
  const report = execFileSync(process.execPath, [depcruise, 'shared-core', 'server', 'client', ...options], {
    cwd: house,
    encoding: 'utf8',
  });
  broken = (JSON.parse(report) as Report).summary.violations;
});
afterAll(() => rmSync(house, { recursive: true, force: true }));

test.each(Object.keys(IN_ORDER))('%s is in order', (file) => {
  expect(broken.filter(({ from }) => from === file)).toEqual([]);
});

test.each(FAULTS)('%s is caught by %s', (_, rule, file) => {
  expect(broken.filter(({ from }) => from === file).map((violation) => violation.rule.name)).toContain(rule);
});

test('a file that nobody knows is caught', () => {
  expect(broken.filter(({ from }) => from === ORPHAN).map(({ rule }) => rule.name)).toEqual(['no-orphans']);
});
