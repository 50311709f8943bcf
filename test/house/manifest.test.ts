import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { expect, test } from 'vitest';

const root = resolve(import.meta.dirname, '..', '..');

interface Manifest {
  readonly main: string;
  readonly bin: Readonly<Record<string, string>>;
  readonly icon: string;
  readonly dependencies?: Readonly<Record<string, string>>;
  readonly contributes: {
    readonly languages: readonly { readonly id: string; readonly configuration: string }[];
    readonly grammars: readonly { readonly scopeName: string; readonly path: string; readonly language?: string }[];
    readonly commands: readonly { readonly command: string; readonly title: string }[];
    readonly menus: Readonly<Record<string, readonly { readonly command: string }[]>>;
    readonly keybindings: readonly { readonly command: string }[];
    readonly configuration: { readonly properties: Readonly<Record<string, { readonly description?: string }>> };
  };
}
const manifest = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as Manifest;
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
    expect(files).toContain(manifest.bin.borewright);
    const allowed =
      /^(dist\/|syntaxes\/|client\/media\/(icon|readme\/[\w-]+)\.png$|package\.json$|README\.md$|LICENSE$|CHANGELOG\.md$)/;
    expect(files.filter((path) => !allowed.test(path))).toEqual([]);
  }
});
