// Changes a folder of the core a little at a time and sees whether a test fails: `npm run mutate -- FOLDER... [--tests GLOB,GLOB]`.
// Prints the score of each folder; what survived, with its place, is in test/out/mutation.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';

const here = dirname(fileURLToPath(import.meta.url));
const root = join(here, '..', '..');
const out = join(root, 'test', 'out', 'mutation');

const { values, positionals } = parseArgs({ allowPositionals: true, options: { tests: { type: 'string' } } });
if (positionals.length === 0) {
  console.error(
    'usage: npm run mutate -- FOLDER... [--tests GLOB,GLOB]; a folder or file of shared-core, such as boring',
  );
  process.exit(2);
}
mkdirSync(out, { recursive: true });
if (!existsSync(join(here, 'node_modules')))
  spawnSync('npm', ['ci', '--ignore-scripts', '--prefix', here], { stdio: 'inherit' });

const scores = [];
for (const folder of positionals) {
  const report = join(out, `${folder.replaceAll('/', '-')}.json`);
  const config = join(out, 'stryker.json');
  writeFileSync(config, JSON.stringify(optionsFor(folder, report), null, 2));
  const { status } = spawnSync(
    process.execPath,
    [join(here, 'node_modules', '@stryker-mutator', 'core', 'bin', 'stryker.js'), 'run', config],
    {
      cwd: root,
      stdio: 'inherit',
      env: {
        ...process.env,
        BOREWRIGHT_MUTATION_TESTS: values.tests ?? `test/core/${folder.replace(/\/[^/]+\.ts$/, '')}/**/*.test.ts`,
      },
    },
  );
  if (status !== 0) process.exit(status ?? 1);
  scores.push(scoreOf(folder, report));
}
for (const line of scores) console.log(line);

function optionsFor(folder, report) {
  return {
    mutate: [`shared-core/${folder}${folder.endsWith('.ts') ? '' : '/**/*.ts'}`],
    testRunner: 'vitest',
    vitest: { configFile: 'test/mutation/vitest.config.ts', related: false },
    coverageAnalysis: 'perTest',
    // A change to what a module sets up once would need every test to load it anew.
    ignoreStatic: true,
    // What is said is compared word for word elsewhere; here the sums and the conditions count.
    mutator: { excludedMutations: ['StringLiteral'] },
    reporters: ['json', 'clear-text'],
    clearTextReporter: { allowColor: false, logTests: false, reportTests: false },
    jsonReporter: { fileName: report },
    tempDirName: join('test', 'out', 'mutation', 'copies'),
    ignorePatterns: ['dist', 'test/editor', 'test/out', 'test/bench', 'client', 'server', '.git'],
    concurrency: 2,
    timeoutMS: 20000,
    checkers: [],
    allowConsoleColors: false,
  };
}

function scoreOf(folder, report) {
  const mutants = Object.values(JSON.parse(readFileSync(report, 'utf8')).files).flatMap((file) => file.mutants);
  const count = (...states) => mutants.filter(({ status }) => states.includes(status)).length;
  const [caught, left] = [count('Killed', 'Timeout'), count('Survived', 'NoCoverage')];
  const score = (100 * caught) / Math.max(1, caught + left);
  return `${folder.padEnd(24)} ${score.toFixed(1).padStart(6)} %   ${caught} caught, ${left} survived`;
}
