// Everything that must hold, in one go: `npm run verify`. Fetches what is missing, builds, checks, runs all tests, and
// closes with the total. Written for Node 20, since it is what puts Node 24 in place.
import { spawn } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { delimiter, dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { ensureNode24, node24Path } from '../test/editor/host/ensure.mjs';

const root = join(dirname(fileURLToPath(import.meta.url)), '..');
const outcomes = [];

ensureNode24();

const bin = join(root, 'node_modules', '.bin');
const env = { ...process.env, PATH: [dirname(node24Path()), bin, process.env.PATH].join(delimiter) };

/** A step that takes longer than this hangs. */
const LIMIT_MINUTES = 40;

const running = new Set();
for (const signal of ['SIGINT', 'SIGTERM']) {
  process.on(signal, () => {
    for (const { pid } of running) if (pid !== undefined) process.kill(-pid, 'SIGKILL');
    process.exit(1);
  });
}

/** Runs one command and resolves with its exit code. */
function run(command, args) {
  console.log(`\n> ${command} ${args.join(' ')}`);
  return new Promise((done) => {
    // The leader of its own group, so that one that hangs ends with all that it started.
    const child = spawn(command, args, { cwd: root, env, stdio: ['ignore', 'inherit', 'inherit'], detached: true });
    running.add(child);
    const limit = setTimeout(() => {
      console.error(`stopped after ${LIMIT_MINUTES} minutes`);
      process.kill(-child.pid, 'SIGKILL');
    }, LIMIT_MINUTES * 60_000);
    child.once('error', (error) => {
      clearTimeout(limit);
      running.delete(child);
      console.error(error.message);
      done(1);
    });
    child.once('exit', (code) => {
      clearTimeout(limit);
      running.delete(child);
      done(code ?? 1);
    });
  });
}

/** A check that passes or fails as one. */
async function check(name, command, args) {
  const code = await run(command, args);
  outcomes.push({ name, passed: code === 0 ? 1 : 0, failed: code === 0 ? 0 : 1 });
  return code === 0;
}

/** A suite that leaves its counts in a file. One that ends badly without naming a failed test has failed all the same. */
async function suite(name, file, count, command, args) {
  rmSync(file, { force: true });
  const code = await run(command, args);
  const { passed, failed } = existsSync(file)
    ? count(JSON.parse(readFileSync(file, 'utf8')))
    : { passed: 0, failed: 0 };
  const silent = failed === 0 && (code !== 0 || passed === 0);
  outcomes.push({ name, passed, failed: silent ? 1 : failed });
}

const out = join(root, 'test', 'out');
mkdirSync(out, { recursive: true });

// The editor and its browser are fetched meanwhile: only the last suite needs them.
const fetched = run('node', ['test/editor/host/ensure.mjs']);
// Without the bundles nothing else means anything.
if (await check('build', 'node', ['.build/bundle.mjs', '--production'])) {
  // Each of the two keeps one core busy.
  await Promise.all([
    check('types', 'npm', ['run', '--silent', 'typecheck']),
    check('lint', 'npm', ['run', '--silent', 'lint']),
  ]);
  const vitest = join(out, 'vitest.json');
  await suite(
    'core and protocol',
    vitest,
    ({ numPassedTests, numFailedTests }) => ({ passed: numPassedTests, failed: numFailedTests }),
    'vitest',
    ['run', '--reporter=default', '--reporter=json', `--outputFile.json=${vitest}`],
  );
  // What is missing is told by the suite itself, which looks once more.
  await fetched;
  await suite('editor', join(root, 'test', 'editor', 'out', 'total.json'), (total) => total, 'node', [
    'test/editor/run.mjs',
  ]);
}

console.log('');
for (const { name, passed, failed } of outcomes) console.log(`${name}: ${passed} passed, ${failed} failed`);
const passed = outcomes.reduce((sum, one) => sum + one.passed, 0);
const failed = outcomes.reduce((sum, one) => sum + one.failed, 0);
console.log(`${passed} passed, ${failed} failed`);
process.exitCode = failed > 0 || passed === 0 ? 1 : 0;
