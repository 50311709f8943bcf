import { mkdirSync, writeFileSync } from 'node:fs';
import { cpus } from 'node:os';
import { join } from 'node:path';
import { root } from '../protocol/client.js';
import { plotted, type Curve } from './plot.js';

export interface Outcome {
  readonly first: number;
  readonly all: number;
}

/** What was measured at one size. */
export interface Measured {
  readonly size: number;
  readonly general: Outcome;
  /** What was done, by name, in the order of doing. */
  readonly ours: Readonly<Record<string, Outcome>>;
  readonly megabytes: number;
}

const NAMES: Readonly<Record<string, string>> = {
  opened: 'a job is opened',
  body: 'a width in one carcass',
  defaults: 'a height in `defaults:`',
  changeover: 'a changeover time of the shop',
  tolerances: 'a tolerance of the shop',
  row: 'the setback of all rows, in the shop',
};

/** Writes the page of the documentation on speed, with its pictures beside it. */
export function writePage(measured: readonly Measured[]): void {
  const folder = join(root, 'test', 'bench', 'speed');
  mkdirSync(folder, { recursive: true });
  const curve = (name: string, of: (one: Measured) => number): Curve => ({
    name,
    points: measured.map((one) => [one.size, of(one)]),
  });
  const time = plotted('From opening a job to its findings', 'ms', [
    curve('general YAML server', ({ general }) => general.all),
    curve('first findings', ({ ours }) => ours.opened!.first),
    curve('all findings', ({ ours }) => ours.opened!.all),
    curve('after a key in a carcass', ({ ours }) => ours.body!.all),
  ]);
  const memory = plotted('Most memory of the server', 'MB', [curve('job opened', ({ megabytes }) => megabytes)]);
  writeFileSync(join(folder, 'time.svg'), time);
  writeFileSync(join(folder, 'memory.svg'), memory);
  writeFileSync(join(folder, 'README.md'), pageOf(measured));
}

function pageOf(measured: readonly Measured[]): string {
  const [first] = measured;
  const whole = (figure: number): string => Math.round(figure).toLocaleString('en');
  const row = (...cells: readonly string[]): string => `| ${cells.join(' | ')} |`;
  return [
    '# Speed',
    '',
    'Written by `npm run bench` (`test/bench/opening.bench.ts`) from its own figures; not edited by hand. Each size is a fresh server',
    'over stdio with the demo shop; beside it a general YAML server checks the same text against the JSON Schema of job files.',
    `Measured with ${cpus().length} cores, Node ${process.version}, on ${new Date().toISOString().slice(0, 10)}. Times are good for comparing with each other.`,
    '',
    '![Time to the findings over the number of carcasses](time.svg)',
    '',
    '![Memory over the number of carcasses](memory.svg)',
    '',
    'Milliseconds to the first findings / to all of them.',
    '',
    row('', ...measured.map(({ size }) => `${whole(size)} carcasses`)),
    row('---', ...measured.map(() => '---:')),
    row('general YAML server', ...measured.map(({ general }) => whole(general.all))),
    ...Object.keys(first?.ours ?? {}).map((key) =>
      row(NAMES[key] ?? key, ...measured.map(({ ours }) => `${whole(ours[key]!.first)} / ${whole(ours[key]!.all)}`)),
    ),
    row('most memory, MB', ...measured.map(({ megabytes }) => whole(megabytes))),
    '',
  ].join('\n');
}
