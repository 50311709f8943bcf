// The property tests at many seeds: `npm run soak -- [COUNT] [FIRST]`. Prints each seed that fails, with its tests, and how
// to run it again. `npm run soak -- documents [COUNT] [FIRST]` reads damaged files, a million unless it is told how many.
import { execFileSync, spawnSync } from 'node:child_process';
import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { readDamaged } from './fuzz/run.js';

interface Outcome {
  readonly testResults: readonly {
    readonly name: string;
    readonly assertionResults: readonly { readonly fullName: string; readonly status: string }[];
  }[];
}

const root = join(import.meta.dirname, '..');
const words = process.argv.slice(2);
if (words[0] === 'documents') {
  const [count = 1_000_000, first = Math.floor(Math.random() * 2 ** 30)] = words.slice(1).map(Number);
  process.exit((await readDamaged(count, first)) > 0 ? 1 : 0);
}
const [count = 20, first = Math.floor(Math.random() * 2 ** 31)] = words.map(Number);
const files = execFileSync('git', ['grep', '-l', 'fast-check', '--', 'test/**/*.test.ts'], {
  cwd: root,
  encoding: 'utf8',
})
  .trim()
  .split('\n');
const report = join(root, 'test', 'out', 'soak.json');
mkdirSync(join(root, 'test', 'out'), { recursive: true });

let failed = 0;
for (let seed = first; seed < first + count; seed += 1) {
  rmSync(report, { force: true });
  const { status } = spawnSync('vitest', ['run', ...files, '--reporter=json', `--outputFile.json=${report}`], {
    cwd: root,
    env: { ...process.env, BOREWRIGHT_SEED: String(seed) },
    stdio: 'ignore',
  });
  if (status === 0) continue;
  failed += 1;
  const { testResults } = JSON.parse(readFileSync(report, 'utf8')) as Outcome;
  for (const { name, assertionResults } of testResults) {
    for (const { fullName, status: outcome } of assertionResults) {
      if (outcome === 'failed')
        console.log(`BOREWRIGHT_SEED=${seed} npx vitest run ${name.slice(root.length + 1)}: ${fullName}`);
    }
  }
}
console.log(`${count} seeds from ${first}: ${failed} failed`);
process.exitCode = failed > 0 ? 1 : 0;
