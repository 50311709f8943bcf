import { asItIs } from '../../shared-core/words/told.js';
import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { expect, test } from 'vitest';
import { findingLine } from '../../server/cli/found.js';
import { readingRules } from '../../shared-core/findings/reading-rules.js';
import { rules } from '../../shared-core/findings/registry.js';

const root = resolve(import.meta.dirname, '..', '..');

interface Manifest {
  readonly main: string;
  readonly browser: string;
  readonly bin: Readonly<Record<string, string>>;
  readonly icon: string;
  readonly dependencies?: Readonly<Record<string, string>>;
  readonly contributes: {
    readonly languages: readonly { readonly id: string; readonly configuration: string }[];
    readonly grammars: readonly { readonly scopeName: string; readonly path: string; readonly language?: string }[];
    readonly commands: readonly { readonly command: string; readonly title: string }[];
    readonly menus: Readonly<Record<string, readonly { readonly command: string }[]>>;
    readonly keybindings: readonly { readonly command: string }[];
    readonly configuration: {
      readonly properties: Readonly<
        Record<
          string,
          {
            readonly description?: string;
            readonly properties?: Readonly<Record<string, { readonly description: string }>>;
          }
        >
      >;
    };
    readonly problemPatterns: readonly [{ readonly regexp: string }];
    readonly walkthroughs: readonly [
      {
        readonly steps: readonly {
          readonly description: string;
          readonly media: { readonly image: string; readonly altText: string };
          readonly completionEvents: readonly string[];
        }[];
      },
    ];
  };
}
const words = JSON.parse(readFileSync(join(root, 'package.nls.json'), 'utf8')) as Readonly<Record<string, string>>;
/** As an editor in English reads it. */
const manifest = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'), (_, value: unknown) =>
  typeof value === 'string' ? value.replace(/^%(.*)%$/, (all, key: string) => words[key] ?? all) : value,
) as Manifest;
const { contributes } = manifest;

test('every file that the manifest names under the repository is there', () => {
  const named = [
    manifest.icon,
    ...contributes.languages.map(({ configuration }) => configuration),
    ...contributes.grammars.map(({ path }) => path),
  ];
  expect(named.filter((path) => !existsSync(join(root, path)))).toEqual([]);
});

test('grammars serve languages that exist, under their own scope names', () => {
  const ids = contributes.languages.map(({ id }) => id);
  for (const { language, path, scopeName } of contributes.grammars) {
    if (language !== undefined) expect(ids).toContain(language);
    expect((JSON.parse(readFileSync(join(root, path), 'utf8')) as { scopeName: string }).scopeName).toBe(scopeName);
  }
});

test('menus and keys name commands that exist', () => {
  const known = new Set(contributes.commands.map(({ command }) => command));
  const used = [...Object.values(contributes.menus).flat(), ...contributes.keybindings].map(({ command }) => command);
  expect(used.filter((command) => !known.has(command))).toEqual([]);
});

test('every setting says what it does', () => {
  for (const [name, { description }] of Object.entries(contributes.configuration.properties)) {
    expect(name).toMatch(/^borewright\./);
    expect(description, name).toMatch(/\S.*\.$/);
  }
});

test('the severity of every rule can be set, and each says what its rule is about', () => {
  const said = contributes.configuration.properties['borewright.findings.severity']?.properties ?? {};
  const wanted = [...rules, ...readingRules].map(({ name, about }) => [name, about.what]);
  expect(Object.fromEntries(Object.entries(said).map(([name, { description }]) => [name, description]))).toEqual(
    Object.fromEntries(wanted),
  );
});

test('the problem matcher reads every line that the command line prints of a finding', () => {
  const pattern = new RegExp(contributes.problemPatterns[0].regexp);
  const shown = {
    rule: 'near-edge',
    message: asItIs('A bore: too near.'),
    range: { start: { line: 3, character: 6 }, end: { line: 3, character: 9 } },
  };
  for (const severity of ['error', 'warning', 'info'] as const) {
    const line = findingLine('C:\\jobs\\a.carcass.yaml', { ...shown, severity, carcass: 'sink', panel: 'left' });
    const [, ...parts] = pattern.exec(line) ?? [];
    expect(parts).toEqual([
      'C:\\jobs\\a.carcass.yaml',
      '4',
      '7',
      severity,
      'near-edge',
      'A bore: too near. (sink, left)',
    ]);
  }
  expect(pattern.test('2 files, 1 error, 3 warnings.')).toBe(false);
});

test('the walkthrough shows pictures that are there and commands that exist', () => {
  const known = new Set(contributes.commands.map(({ command }) => command));
  for (const { description, media, completionEvents } of contributes.walkthroughs[0].steps) {
    expect(existsSync(join(root, media.image)), media.image).toBe(true);
    expect(media.altText).not.toBe('');
    const named = [...description.matchAll(/\(command:([\w.]+)\)/g)].map(([, command]) => command!);
    expect(named.length).toBeGreaterThan(0);
    for (const command of named.filter((one) => one.startsWith('borewright.'))) expect(known).toContain(command);
    expect(completionEvents).toEqual(named.map((command) => `onCommand:${command}`));
  }
});

test('nothing is installed at run time: all that is needed is bundled', () => {
  expect(manifest.dependencies ?? {}).toEqual({});
});

test('both packages hold what runs, and nothing of the workshop', () => {
  const npmList = execFileSync('npm', ['pack', '--dry-run', '--json', '--ignore-scripts'], {
    cwd: root,
    encoding: 'utf8',
  });
  const packed = JSON.parse(npmList) as unknown;
  const [first] = Object.values(packed as Readonly<Record<string, { readonly files: readonly { path: string }[] }>>);
  const npmFiles = (first?.files ?? []).map(({ path }) => path);
  const vsce = join(root, 'node_modules', '.bin', 'vsce');
  const editorFiles = execFileSync(process.execPath, [vsce, 'ls', '--no-dependencies'], { cwd: root, encoding: 'utf8' })
    .split('\n')
    .filter((path) => path !== '');
  for (const files of [npmFiles, editorFiles]) {
    expect(files).toEqual(
      expect.arrayContaining(['package.json', 'README.md', 'LICENSE', 'CHANGELOG.md', manifest.icon]),
    );
    expect(files).toContain(manifest.main.replace('./', ''));
    expect(files).toContain(manifest.browser.replace('./', ''));
    expect(files).toContain('dist/server/worker.js');
    expect(files).toContain(manifest.bin.borewright);
    const allowed =
      /^(dist\/|syntaxes\/|package\.nls(\.(de|fr))?\.json$|client\/media\/(icon\.png|readme\/[\w-]+\.webp)$|package\.json$|README\.md$|LICENSE$|CHANGELOG\.md$)/;
    expect(files.filter((path) => !allowed.test(path))).toEqual([]);
  }
});
