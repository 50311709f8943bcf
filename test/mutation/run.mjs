// Changes the core a little at a time and sees whether a test fails.
// `npm run mutate -- FOLDER... [--tests GLOB,GLOB]` goes through all changes of a folder, with its own tests.
// `npm run mutate -- --sample COUNT [--seed N] [FOLDER...]` tries as many, by chance, of the whole core or of the folders, and tells
// how sure the score is. What survived, with its place, is in test/out/mutation.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';

const here = dirname(fileURLToPath(import.meta.url));
const root = join(here, '..', '..');
const out = join(root, 'test', 'out', 'mutation');

// What is said is compared word for word elsewhere; here the sums and the conditions count.
const EXCLUDED = ['StringLiteral'];

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: { tests: { type: 'string' }, sample: { type: 'string' }, seed: { type: 'string', default: '1' } },
});
if (positionals.length === 0 && values.sample === undefined) {
  console.error(
    `usage: npm run mutate -- FOLDER... [--tests GLOB,GLOB]
       npm run mutate -- --sample COUNT [--seed N] [FOLDER...]
a folder or file of shared-core, such as boring`,
  );
  process.exit(2);
}
mkdirSync(out, { recursive: true });
if (!existsSync(join(here, 'node_modules')))
  spawnSync('npm', ['ci', '--ignore-scripts', '--prefix', here], { stdio: 'inherit' });

function wholeFolders() {
  const lines = positionals.map((folder) => {
    const mutate = [`shared-core/${folder}${folder.endsWith('.ts') ? '' : '/**/*.ts'}`];
    const tests = values.tests ?? `test/core/${folder.replace(/\/[^/]+\.ts$/, '')}/**/*.test.ts`;
    return scoreLine(folder, run(folder, tests, { mutate, reporters: ['json', 'clear-text'] }) ?? []);
  });
  for (const line of lines) console.log(line);
}

async function sample(count, seed) {
  const { folderOf, mutantsOf, pick, testsOf, WATCHES_ALL, wilson } = await import('./sample.mjs');
  const { keyOf } = await import('./chosen.mjs');
  const all = await mutantsOf(root, positionals, EXCLUDED);
  const chosen = pick(all, count, seed);
  const statuses = new Map();
  const untested = [];
  const attempt = (name, mutants, tests) => {
    const list = join(out, 'chosen.json');
    writeFileSync(list, JSON.stringify(mutants.map(keyOf)));
    process.env.BOREWRIGHT_CHOSEN_MUTANTS = list;
    const found = run(name, tests, {
      mutate: mutants.map(rangeOf),
      reporters: ['json'],
      plugins: ['@stryker-mutator/vitest-runner', join(here, 'chosen.mjs')],
      checkers: ['chosen'],
    });
    if (found === null) untested.push(name);
    for (const one of found ?? []) if (isCaught(one) || isLeft(one)) statuses.set(keyOf(asInstrumented(one)), one);
  };
  const statusOf = (mutant) => statuses.get(keyOf(mutant)) ?? {};
  // All at once against the tests that see most; what is left then goes to the tests of its folder.
  if (values.tests === undefined) attempt('first', chosen, WATCHES_ALL);
  const left = Object.groupBy(
    chosen.filter((mutant) => !isCaught(statusOf(mutant))),
    ({ fileName }) => folderOf(fileName),
  );
  for (const [folder, mutants] of Object.entries(left)) {
    attempt(folder, mutants, values.tests ?? testsOf(folder).join());
    console.log(`${folder}: ${mutants.filter((mutant) => isLeft(statusOf(mutant))).length} of ${mutants.length} left`);
  }
  const tried = chosen.flatMap((mutant) => statuses.get(keyOf(mutant)) ?? []);
  const survivors = tried.filter(isLeft).map(told).join('\n');
  writeFileSync(join(out, 'survivors.txt'), `${survivors}\n`);
  console.log(`\n${survivors}\n`);
  for (const [folder, of] of Object.entries(Object.groupBy(tried, ({ file }) => folderOf(file))))
    console.log(scoreLine(folder, of));
  if (untested.length > 0) console.log(`without the tests of ${untested.join(', ')}, which could not be run`);
  const caught = tried.filter(isCaught).length;
  const [least, most] = wilson(caught, caught + tried.filter(isLeft).length);
  console.log(`${scoreLine('all', tried)}; with 95 % ${percent(least)} to ${percent(most)}, of ${all.length} changes`);
}

/** A mutant of a report as it was listed: there lines and columns count from nought. */
function asInstrumented({ file, location: { start, end }, ...mutant }) {
  const fromNought = ({ line, column }) => ({ line: line - 1, column: column - 1 });
  return { fileName: file, location: { start: fromNought(start), end: fromNought(end) }, ...mutant };
}

/** Where a mutant lies, as Stryker asks for it: lines from one, columns from nought. */
const rangeOf = ({ fileName, location: { start, end } }) =>
  `${fileName}:${start.line + 1}:${start.column}-${end.line + 1}:${end.column}`;

const isCaught = ({ status }) => status === 'Killed' || status === 'Timeout';
const isLeft = ({ status }) => status === 'Survived' || status === 'NoCoverage';
const percent = (share) => `${(100 * share).toFixed(1)} %`;

/** A survivor in two lines: its place, and what it was changed to. */
const told = ({ file, location: { start }, mutatorName, status, replacement }) =>
  `${file}:${start.line}:${start.column} ${mutatorName}${status === 'NoCoverage' ? ' (no test comes here)' : ''}\n    ${replacement}`;

/** The mutants of a run of Stryker with these tests; null where it did not come to its end. */
function run(folder, tests, options) {
  const report = join(out, `${folder.replaceAll('/', '-')}.json`);
  const config = join(out, 'stryker.json');
  writeFileSync(config, JSON.stringify({ ...optionsFor(report), ...options }, null, 2));
  const { status } = spawnSync(
    process.execPath,
    [join(here, 'node_modules', '@stryker-mutator', 'core', 'bin', 'stryker.js'), 'run', config],
    { cwd: root, stdio: 'inherit', env: { ...process.env, BOREWRIGHT_MUTATION_TESTS: tests } },
  );
  if (status !== 0) {
    process.exitCode = 1;
    return null;
  }
  return Object.entries(JSON.parse(readFileSync(report, 'utf8')).files).flatMap(([file, { mutants }]) =>
    mutants.map((mutant) => ({ file, ...mutant })),
  );
}

function optionsFor(report) {
  return {
    testRunner: 'vitest',
    vitest: { configFile: 'test/mutation/vitest.config.ts', related: false },
    coverageAnalysis: 'perTest',
    // A change to what a module sets up once would need every test to load it anew.
    ignoreStatic: true,
    mutator: { excludedMutations: EXCLUDED },
    clearTextReporter: { allowColor: false, logTests: false, reportTests: false },
    jsonReporter: { fileName: report },
    tempDirName: join('test', 'out', 'mutation', 'copies'),
    ignorePatterns: ['dist', 'test/out', '.git'],
    concurrency: 2,
    // A loaded machine is no fault: what never ends is mostly told by how often it comes by, not by the clock.
    timeoutFactor: 4,
    timeoutMS: 60000,
    checkers: [],
    allowConsoleColors: false,
  };
}

function scoreLine(name, mutants) {
  const [caught, left] = [mutants.filter(isCaught).length, mutants.filter(isLeft).length];
  const slow = mutants.filter(({ status }) => status === 'Timeout').length;
  const score = percent(caught / Math.max(1, caught + left)).padStart(8);
  return `${name.padEnd(24)} ${score}   ${caught} caught, ${slow} of them by never ending; ${left} survived`;
}

if (values.sample === undefined) wholeFolders();
else await sample(Number(values.sample), Number(values.seed));
