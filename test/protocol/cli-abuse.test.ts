import { spawnSync } from 'node:child_process';
import { existsSync, openSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { Folder } from './client.js';
import { borewright, CLI, type Ran } from './command-line.js';

let folder: Folder;
beforeAll(() => {
  folder = new Folder();
  folder.write('good.carcass.yaml', 'carcasses:\n  ok: { kind: base, width: 600 }\n');
  folder.write(
    'odd.carcass.yaml',
    'title: "a\\e[2Jb\\0c"\ncarcasses:\n  "x\\e[31m\\x9by": { kind: base, width: 5 }\n  ok: { kind: base, width: 600, note: "\\e]0;t\\a<b>" }\n',
  );
});
afterAll(() => folder.close());

const run = (...args: string[]): Ran => borewright(folder.path, ...args);
const OBEYED = /[\u0000-\u0008\u000b-\u001f\u007f-\u009f]/;

test('control characters of a job reach neither the terminal nor a page', () => {
  const commands = [
    ['check', 'odd.carcass.yaml'],
    ['check', 'odd.carcass.yaml', '--format', 'json'],
    ['panels', 'odd.carcass.yaml'],
    ['panels', 'odd.carcass.yaml', '--format', 'json'],
    ['setups', 'odd.carcass.yaml'],
  ];
  for (const command of commands) {
    const { out, err } = run(...command);
    expect(out, command.join(' ')).not.toMatch(OBEYED);
    expect(err, command.join(' ')).not.toMatch(OBEYED);
    expect(out).toContain('x');
  }
  const parsed = JSON.parse(run('check', 'odd.carcass.yaml', '--format', 'json').out) as {
    readonly files: readonly [{ readonly findings: readonly { readonly carcass?: string }[] }];
  };
  expect(parsed.files[0].findings.map(({ carcass }) => carcass)).toContain('x\u001b[31m\u009by');
  expect(run('papers', 'odd.carcass.yaml', '--out', 'papers', '--as', 'html', '--only', 'panels').err).not.toMatch(
    OBEYED,
  );
  expect(run('draw', 'odd.carcass.yaml', '--out', 'maps').code).toBe(1);
  const page = readFileSync(join(folder.path, 'maps', 'index.html'), 'utf8');
  expect(page).not.toMatch(OBEYED);
});

test('a job may come by standard input', () => {
  const input = 'carcasses:\n  a: { kind: base, width: 6000 }\n';
  const { status, stdout } = spawnSync(process.execPath, [CLI, 'check', '-'], {
    cwd: folder.path,
    input,
    encoding: 'utf8',
  });
  expect(status).toBe(1);
  expect(stdout).toContain('-:2:27: error length-impossible');
});

test('output that cannot be written is told of, and is exit 2', () => {
  const full = openSync('/dev/full', 'w');
  const { status, stderr } = spawnSync(process.execPath, [CLI, 'check', 'good.carcass.yaml'], {
    cwd: folder.path,
    stdio: ['ignore', full, 'pipe'],
    encoding: 'utf8',
  });
  expect(stderr).toBe('borewright: The output cannot be written: the disk is full.\n');
  expect(status).toBe(2);
});

test('a link that leads back to itself is told of in plain words', () => {
  symlinkSync('loop.carcass.yaml', join(folder.path, 'loop.carcass.yaml'));
  const { code, err } = run('check', 'loop.carcass.yaml');
  expect(err).toBe('borewright: loop.carcass.yaml: it is a link that leads back to itself.\n');
  expect(code).toBe(2);
});

test('draw overwrites what it has drawn, and nothing else, also not through a link', () => {
  expect(run('draw', 'good.carcass.yaml', '--out', 'drawn').code).toBe(0);
  expect(run('draw', 'good.carcass.yaml', '--out', 'drawn').code).toBe(0);
  const map = join(folder.path, 'drawn', 'ok-left.svg');
  writeFileSync(map, 'mine');
  const refused = run('draw', 'good.carcass.yaml', '--out', 'drawn');
  expect(refused.code).toBe(2);
  expect(refused.err).toContain('was not written by Borewright');
  expect(readFileSync(map, 'utf8')).toBe('mine');
  folder.write('precious.txt', 'precious');
  run('check', 'good.carcass.yaml');
  const linked = new Folder();
  symlinkSync(join(folder.path, 'precious.txt'), join(linked.path, 'ok-left.svg'));
  expect(run('draw', 'good.carcass.yaml', '--out', linked.path).code).toBe(2);
  expect(readFileSync(join(folder.path, 'precious.txt'), 'utf8')).toBe('precious');
  linked.close();
});

test('a folder that can never be made is told of', () => {
  const { code, err } = run('draw', 'good.carcass.yaml', '--out', '/proc/none/x');
  expect(err).toMatch(/^borewright: \/proc\/none\/x: /);
  expect(code).toBe(2);
  expect(existsSync('/proc/none')).toBe(false);
});
