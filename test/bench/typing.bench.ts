// From a change in the middle of a job of 200 carcasses to its findings: `npm run bench`. Times mean little from one machine
// to the next, so each is printed with its ratio to a cold analysis of the same text in the same run.
import { cpus } from 'node:os';
import type { EngineHost } from '../../shared-core/engine.js';
import { Engine } from '../../shared-core/engine.js';

const CARCASSES = 200;
const KEYS = 200;
const COLD_RUNS = 9;
const host: EngineHost = { readShop: () => ({ ok: false, message: 'there is none' }) };

/** A job of believable carcasses, one kind after the other; invented. */
function job(): string {
  const bodies = [
    'kind: base\n    width: 600\n    plinth: 120\n    loose-shelves: 1',
    'kind: wall\n    width: 800\n    loose-shelves: 2\n    joint: cam-15',
    'kind: tall\n    width: 600\n    fixed-shelves: [712]\n    loose-shelves: 4',
    'kind: drawer\n    width: 900 # pans',
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

  const cold: number[] = [];
  for (let run = 0; run < COLD_RUNS; run += 1)
    cold.push(timed(() => new Engine(host).analyse('file:///bench', text).findings()));
  cold.sort((a, b) => a - b);

  const engine = new Engine(host);
  engine.analyse('file:///bench', text);
  const keys: number[] = [];
  const computedBefore = engine.computed;
  for (let key = 0; key < KEYS; key += 1) {
    const next = typed(String(500 + key));
    keys.push(timed(() => engine.analyse('file:///bench', next).findings()));
  }
  keys.sort((a, b) => a - b);
  const computed = engine.computed - computedBefore;

  const head: number[] = [];
  for (let key = 0; key < COLD_RUNS; key += 1) {
    const next = text.replace('title: Bench', `title: Bench ${key}`);
    head.push(timed(() => engine.analyse('file:///bench', next).findings()));
  }
  head.sort((a, b) => a - b);

  const coldMedian = quantile(cold, 0.5);
  const line = (name: string, times: readonly number[]): string => {
    const [median, late] = [quantile(times, 0.5), quantile(times, 0.95)];
    return `${name.padEnd(34)} median ${median.toFixed(2).padStart(8)} ms   p95 ${late.toFixed(2).padStart(8)} ms   cold / this ${(coldMedian / median).toFixed(1).padStart(6)}`;
  };
  console.log(
    `${CARCASSES} carcasses, ${text.length} characters; ${cpus()[0]?.model ?? 'unknown processor'}, Node ${process.version}`,
  );
  console.log(line('cold analysis', cold));
  console.log(line('key in a carcass in the middle', keys));
  console.log(line('key in the title', head));
  console.log(`${computed} carcasses were worked out for ${KEYS} keys in one of them`);
}

main();
