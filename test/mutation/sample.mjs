// Which mutants of the core a sample is made of, and what it tells of all of them.
import { globSync, readFileSync } from 'node:fs';
import { createInstrumenter } from '@stryker-mutator/instrumenter';
import { createInjector } from 'typed-inject';

/** What people read, and the shape of the files as a table: compared word for word elsewhere. */
const TABLES = /\/(spoken|messages|paper-titles)\/|\/messages\.ts$|schemas?\.ts$|\.(de|fr)\.ts$/;

/** What is asked of the server; the rest of its tests are about processes. */
const ASKED = [
  'at-a-glance code-actions completion completion-typing diagnostics formatting hover hover-machines inlay-hints navigation',
  'refactors repairs-newcomer restricted semantic-tokens signature-help symbols whole-workspace wishes writing',
].flatMap((line) => line.split(' ').map((name) => `protocol/${name}.test.ts`));
const SHOWN = ['box-view', 'drawing', 'machine-view', 'set-ups', 'shop-view'].map((name) => `protocol/${name}.test.ts`);

/** Tests of a folder that has none of its own, or that others watch as well; each is below `test`. */
const WATCHED_BY = {
  book: ['core/book', 'core/boring'],
  boring: ['core/boring', 'oracles/hinges.test.ts', 'oracles/separation.test.ts'],
  derived: ['core/engine'],
  drawing: ['core/drawing', ...SHOWN],
  engine: ['core/engine', 'core/like', 'core/moves', 'protocol/refactors.test.ts'],
  findings: ['core/findings'],
  'findings/rules': ['core/findings/rules', 'core/findings/every-finding.test.ts'],
  fittings: ['core/fittings', 'core/shop', 'core/findings/rules'],
  hung: ['core/hung', 'oracles'],
  job: ['core/job', 'core/like'],
  loads: [
    'core/loads',
    ...['shelf-sags', 'shelf-tips', 'tips-when-open'].map((rule) => `core/findings/rules/${rule}.test.ts`),
  ],
  machining: ['core/machining'],
  service: ['core/service', ...ASKED, ...SHOWN],
  shop: ['core/shop', 'core/schema', 'core/job'],
  words: ['core/words', 'core/messages'],
};

/** Folders that are tested apart from the one that they lie in. */
const APART = /^(machining|findings)\/(order|plan|replay|strokes|rules)\//;

/** The concept that a file of the core is of: `machining/plan`. */
export function folderOf(file) {
  const path = file.slice('shared-core/'.length).replace(/^(engine|service)\.ts$/, '$1/');
  const [top, below] = path.split('/');
  return APART.test(path) ? `${top}/${below}` : top;
}

const below = (at) => `test/${at}${at.endsWith('.ts') ? '' : '/**/*.test.ts'}`;

/** The tests, as globs, that see of most changes that a result is another. */
export const WATCHES_ALL = below('core/recorded');

/** The tests, as globs, that most likely see a change of a folder. */
export const testsOf = (folder) => (WATCHED_BY[folder] ?? [`core/${folder}`]).map(below);

/** Every mutant of the folders, or of the whole core, that a run could try. */
export async function mutantsOf(root, folders, excludedMutations) {
  const within = folders.length === 0 ? ['shared-core'] : folders.map((folder) => `shared-core/${folder}`);
  const files = globSync('shared-core/**/*.ts', { cwd: root }).filter(
    (file) => !TABLES.test(file) && within.some((one) => file === one || file.startsWith(`${one}/`)),
  );
  const silent = { debug() {}, info() {}, warn() {}, isDebugEnabled: () => false };
  const instrumenter = createInjector().provideValue('logger', silent).injectFunction(createInstrumenter);
  const { mutants } = await instrumenter.instrument(
    files.sort().map((name) => ({ name, mutate: true, content: readFileSync(`${root}/${name}`, 'utf8') })),
    { excludedMutations, plugins: null, ignorers: [] },
  );
  return mutants.filter(({ status }) => status !== 'Ignored');
}

/** So many of a list by chance; the same seed picks the same. */
export function pick(list, count, seed) {
  const left = [...list];
  const chance = chances(seed);
  return Array.from(
    { length: Math.min(count, list.length) },
    () => left.splice(Math.floor(chance() * left.length), 1)[0],
  );
}

/** Evenly spread figures from 0 to below 1 (mulberry32). */
function chances(seed) {
  let state = seed | 0;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** Between which shares the whole lies with 95 %, when so many of a sample were caught (E. B. Wilson’s interval). */
export function wilson(caught, count) {
  const z = 1.96;
  const middle = caught + z ** 2 / 2;
  const reach = z * Math.sqrt((caught * (count - caught)) / count + z ** 2 / 4);
  return [middle - reach, middle + reach].map((share) => share / (count + z ** 2));
}
