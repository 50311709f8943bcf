import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';

// The command line as its users get it: from the checkout through npx, and from the packed package.
const root = resolve(import.meta.dirname, '..', '..');
const demo = join(root, 'test', 'demo', 'kitchen.carcass.yaml');
let folder: string;

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'borewright-package-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function npx(cwd: string, ...args: string[]): { status: number | null; stdout: string; stderr: string } {
  const { status, stdout, stderr } = spawnSync('npx', ['--yes', '--offline', 'borewright', ...args], {
    cwd,
    encoding: 'utf8',
  });
  return { status, stdout, stderr };
}

test('npx borewright works in the checkout', () => {
  const { status, stdout, stderr } = npx(root, 'check', demo, '--format', 'json');
  expect(stderr).toBe('');
  expect(JSON.parse(stdout)).toMatchObject({ files: [{ findings: [] }] });
  expect(status).toBe(0);
});

test('npx borewright works where the packed package is installed, with nothing but itself', () => {
  execFileSync('npm', ['pack', '--ignore-scripts', '--pack-destination', folder], { cwd: root, stdio: 'pipe' });
  const tarball = readdirSync(folder).find((name) => name.endsWith('.tgz'));
  expect(tarball).toBeDefined();
  writeFileSync(join(folder, 'package.json'), '{ "private": true }');
  execFileSync('npm', ['install', '--offline', '--no-audit', '--no-fund', `./${tarball!}`], {
    cwd: folder,
    stdio: 'pipe',
  });
  expect(readdirSync(join(folder, 'node_modules')).filter((name) => !name.startsWith('.'))).toEqual(['borewright']);
  const { status, stdout } = npx(folder, 'check', demo);
  expect(stdout).not.toBe('');
  expect(status).toBe(0);
  expect(npx(folder, 'check', join(folder, 'not-there.carcass.yaml')).status).toBe(2);
});
