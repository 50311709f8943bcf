// What it takes to plan one job with places of each joint’s own, with one shared load, and with holes that stay empty: the job
// read and bored, its set-ups, the order to run them, and one edit of a carcass. The machines and the kitchen are those of the
// tests, in one run on one computer.
import { readFileSync } from 'node:fs';
import { cpus } from 'node:os';
import { Engine } from '../../shared-core/engine.js';

const read = (file: string): string => readFileSync(new URL(`../fixtures/${file}`, import.meta.url), 'utf8');
const [SHOP, KITCHEN] = [read('shed.shop.yaml'), read('kitchen.carcass.yaml')];
const ROUNDS = 7;

const HABITS: readonly (readonly [called: string, lines: readonly string[]])[] = [
  ['own places', ['share-places: no']],
  ['one load', ['share-places: yes', 'spare-holes: no']],
  ['spare holes', ['share-places: yes', 'spare-holes: yes']],
];

function timed<T>(work: () => T): [T, number] {
  const began = performance.now();
  const result = work();
  return [result, performance.now() - began];
}

const median = (times: readonly number[]): number => times.toSorted((a, b) => a - b)[Math.floor(times.length / 2)]!;

function round(shop: string) {
  const engine = new Engine({ readShop: () => ({ ok: true, uri: 'file:///shed.shop.yaml', text: shop }) });
  const [job, bored] = timed(() => engine.analyse('file:///kitchen.carcass.yaml', KITCHEN));
  const [setUps, sorted] = timed(() => job.setUps());
  const [, ordered] = timed(() => job.plan());
  const before = engine.computed;
  const [, edited] = timed(() =>
    engine.analyse('file:///kitchen.carcass.yaml', KITCHEN.replace('height: 368', 'height: 400')).setUps(),
  );
  return { setUps: setUps.length, times: [bored, sorted, ordered, edited], computed: engine.computed - before };
}

console.log(`one load of bits: the kitchen, median of ${ROUNDS} (${cpus()[0]?.model ?? 'unknown processor'})`);
console.log('habit         set-ups   read and bored   set-ups     order   one edit   carcasses worked out anew');
for (const [called, lines] of HABITS) {
  const shop = SHOP.replace(/^habits:$/m, ['habits:', ...lines.map((line) => `  ${line}`)].join('\n'));
  const rounds = Array.from({ length: ROUNDS }, () => round(shop));
  const [bored, sorted, ordered, edited] = [0, 1, 2, 3].map(
    (k) => `${median(rounds.map(({ times }) => times[k]!)).toFixed(1)} ms`,
  );
  const [{ setUps, computed }] = rounds as [(typeof rounds)[number]];
  console.log(
    `${called.padEnd(13)} ${String(setUps).padStart(7)} ${bored!.padStart(16)} ${sorted!.padStart(9)} ${ordered!.padStart(9)} ${edited!.padStart(10)} ${String(computed).padStart(27)}`,
  );
}
