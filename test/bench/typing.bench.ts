// From a change in the middle of a job of 200 carcasses to its findings: `npm run bench`. Times mean little from one machine
// to the next, so each is printed with its ratio to a cold analysis of the same text in the same run.
import { cpus } from 'node:os';
import type { EngineHost } from '../../shared-core/engine.js';
import { Engine } from '../../shared-core/engine.js';
import { asMessage } from '../in-words.js';

const CARCASSES = 200;
const KEYS = 100;
/** Keys that are typed before any is timed: equal carcasses are worked out once, so that a cold analysis warms little code. */
const WARM_UP = 300;
const COLD_RUNS = 3;
const URI = 'file:///bench.carcass.yaml';
const host: EngineHost = { readShop: () => ({ ok: false, message: asMessage('there is none') }) };

/** A job of believable carcasses, one kind after the other; invented. */
function job(): string {
  const bodies = [
    'kind: base\n    width: 600\n    plinth: 120\n    loose-shelves: 1',
    'kind: wall\n    width: 800\n    loose-shelves: 2\n    joint: cam-15',
    'kind: tall\n    width: 600\n    fixed-shelves: [712]\n    loose-shelves: 4',
    'kind: for-drawers\n    width: 900 # pans',
    'kind: base\n    width: 1000\n    top: between\n    dividers: 1\n    loose-shelves:\n      - { at: 328, bay: 1 }\n      - { at: 330, bay: 2 }',
  ];
  const blocks = Array.from(
    { length: CARCASSES },
    (_, index) => `  box-${index}:\n    ${bodies[index % bodies.length]!}\n`,
  );
  return `title: Bench\nunit: mm\n\ncarcasses:\n${blocks.join('\n')}`;
}

function timed(work: () => void): number {
  const start = performance.now();
  work();
  return performance.now() - start;
}

function quantile(sorted: readonly number[], part: number): number {
  return sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * part))]!;
}

function main(): void {
  const text = job();
  const at = text.indexOf('width: ', text.indexOf(`box-${CARCASSES / 2}:`)) + 'width: '.length;
  const typed = (width: string): string => `${text.slice(0, at)}${width}${text.slice(at + 3)}`;

  const quickCold: number[] = [];
  const allCold: number[] = [];
  const setUpsCold: number[] = [];
  let engine = new Engine(host);
  for (let run = 0; run < COLD_RUNS; run += 1) {
    engine = new Engine(host);
    quickCold.push(timed(() => engine.analyse(URI, text).known()));
    allCold.push(quickCold.at(-1)! + timed(() => engine.analyse(URI, text).findings()));
    setUpsCold.push(timed(() => engine.analyse(URI, text).setUps()));
  }

  for (let key = 0; key < WARM_UP; key += 1) engine.analyse(URI, typed(String(600 + key))).findings();
  const quickKeys: number[] = [];
  const allKeys: number[] = [];
  const setUpsKeys: number[] = [];
  const computedBefore = engine.computed;
  for (let key = 0; key < KEYS; key += 1) {
    const next = typed(String(500 + key));
    quickKeys.push(timed(() => engine.analyse(URI, next).known()));
    allKeys.push(quickKeys.at(-1)! + timed(() => engine.analyse(URI, next).findings()));
    setUpsKeys.push(timed(() => engine.analyse(URI, next).setUps()));
  }
  const computed = engine.computed - computedBefore;

  const title: number[] = [];
  for (let key = 0; key < KEYS; key += 1) {
    const next = text.replace('title: Bench', `title: Bench ${key}`);
    title.push(timed(() => engine.analyse(URI, next).findings()));
  }

  console.log(
    `${CARCASSES} carcasses, ${text.length} characters; ${cpus()[0]?.model ?? 'unknown processor'}, Node ${process.version}`,
  );
  console.log('first: what the quick rules say; all: with those that replay the set-ups and let the panels stray');
  report('cold, first', quickCold, quickCold);
  report('cold, all', allCold, allCold);
  report('key in a carcass in the middle, first', quickKeys, quickCold);
  report('key in a carcass in the middle, all', allKeys, allCold);
  report('then its set-ups, not yet in order', setUpsKeys, setUpsCold);
  report('key in the title, all', title, allCold);
  console.log(`${computed} carcasses were worked out for ${KEYS} keys in one of them`);
}

function report(name: string, times: readonly number[], cold: readonly number[]): void {
  const sorted = times.toSorted((a, b) => a - b);
  const [median, late] = [quantile(sorted, 0.5), quantile(sorted, 0.95)];
  const coldMedian = quantile(
    cold.toSorted((a, b) => a - b),
    0.5,
  );
  const figures = `median ${median.toFixed(2).padStart(8)} ms   p95 ${late.toFixed(2).padStart(8)} ms`;
  console.log(`${name.padEnd(40)} ${figures}   cold / this ${(coldMedian / median).toFixed(1).padStart(8)}`);
}

main();
